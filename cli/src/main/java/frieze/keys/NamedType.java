package frieze.keys;

import frieze.diagnostic.SourceSpan;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;

/** Things with names that the user chooses, in the order of the file. */
public record NamedType<T>(String what, Type<T> type) implements Type<Map<String, Located<T>>> {
  /** Joins signs into one, as in some emoji; it is not seen. */
  private static final int ZERO_WIDTH_JOINER = 0x200D;

  @Override
  public Optional<Map<String, Located<T>>> read(Node node, Reading reading) {
    if (!(node instanceof MappingNode mapping)) {
      reading.error(
          JobCode.WRONG_KIND,
          node,
          "expected the name of " + what + " with a colon but found " + Types.kindOf(node),
          "write the name, a colon, and its keys");
      return Optional.empty();
    }
    if (mapping.getValue().isEmpty()) {
      reading.error(JobCode.NOTHING_TO_DO, node, "expected at least one name of " + what, "");
    }
    Map<String, Located<T>> named = new LinkedHashMap<>();
    Map<String, SourceSpan> seen = new LinkedHashMap<>();
    for (NodeTuple tuple : mapping.getValue()) {
      readOne(tuple, reading, named, seen);
    }
    return named.size() == mapping.getValue().size() && !named.isEmpty()
        ? Optional.of(named)
        : Optional.empty();
  }

  private void readOne(
      NodeTuple tuple,
      Reading reading,
      Map<String, Located<T>> named,
      Map<String, SourceSpan> seen) {
    Node nameNode = tuple.getKeyNode();
    Optional<String> name = Types.scalar(nameNode, "the name of " + what, reading);
    if (name.isEmpty()) {
      return;
    }
    if (name.get().chars().anyMatch(NamedType::isUnprintable)) {
      reading.error(
          JobCode.UNKNOWN_WORD,
          nameNode,
          "the name of " + what + " has a character that can't be printed",
          "use letters, digits, spaces and hyphens");
      return;
    }
    SourceSpan where = reading.span(nameNode);
    SourceSpan before = seen.putIfAbsent(name.get(), where);
    if (before != null) {
      reading.error(
          JobCode.DUPLICATE_KEY,
          nameNode,
          "\"" + name.get() + "\" is given twice; first in line " + before.line(),
          "give it another name");
      return;
    }
    type.read(tuple.getValueNode(), reading)
        .ifPresent(value -> named.put(name.get(), new Located<>(value, where)));
  }

  private static boolean isUnprintable(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || (type == Character.FORMAT && c != ZERO_WIDTH_JOINER);
  }

  @Override
  public String describe() {
    return "for each name of " + what + ": " + type.describe();
  }

  @Override
  public Map<String, Object> schema() {
    return Map.of("type", "object", "minProperties", 1, "additionalProperties", type.schema());
  }

  @Override
  public List<Section> sections() {
    return type.sections();
  }
}
