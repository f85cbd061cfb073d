package frieze.keys;

import frieze.diagnostic.SourceSpan;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** The keys of a section, each at most once. */
public record SectionType(Section section) implements Type<Values> {

  @Override
  public Optional<Values> read(Node node, Reading reading) {
    Optional<MappingNode> mapping = mapping(node, reading);
    if (mapping.isEmpty()) {
      return Optional.empty();
    }
    Map<String, Located<?>> found = new HashMap<>();
    Map<String, SourceSpan> seen = new HashMap<>();
    boolean good = true;
    for (NodeTuple tuple : mapping.get().getValue()) {
      good &= readTuple(tuple, reading, found, seen);
    }
    for (Key<?> key : section.keys()) {
      if (!seen.containsKey(key.name())) {
        good &= fillIn(key, node, reading, found);
      }
    }
    return good ? Optional.of(new Values(reading.span(node), found)) : Optional.empty();
  }

  private Optional<MappingNode> mapping(Node node, Reading reading) {
    if (node instanceof MappingNode mapping) {
      return Optional.of(mapping);
    }
    reading.error(
        JobCode.WRONG_KIND,
        node,
        "expected the keys of \"" + section.name() + "\" but found " + Types.kindOf(node),
        "its keys: " + String.join(", ", section.names()));
    return Optional.empty();
  }

  private boolean readTuple(
      NodeTuple tuple,
      Reading reading,
      Map<String, Located<?>> found,
      Map<String, SourceSpan> seen) {
    Node nameNode = tuple.getKeyNode();
    String written = nameNode instanceof ScalarNode scalar ? scalar.getValue() : "";
    Optional<Key<?>> key = section.key(written);
    if (key.isEmpty()) {
      Optional<String> near = Suggestion.nearest(written, section.names());
      near.ifPresent(name -> seen.putIfAbsent(name, reading.span(nameNode)));
      reading.error(
          JobCode.UNKNOWN_KEY,
          nameNode,
          "unknown key \"" + written + "\" in \"" + section.name() + "\"",
          near.map(name -> "did you mean \"" + name + "\"?")
              .orElse("its keys: " + String.join(", ", section.names())));
      return false;
    }
    SourceSpan before = seen.putIfAbsent(key.get().name(), reading.span(nameNode));
    if (before != null) {
      reading.error(
          JobCode.DUPLICATE_KEY,
          nameNode,
          "\"" + written + "\" is given twice; first in line " + before.line(),
          "keep one of them");
      return false;
    }
    return readValue(key.get(), tuple.getValueNode(), reading, found);
  }

  private static <T> boolean readValue(
      Key<T> key, Node node, Reading reading, Map<String, Located<?>> found) {
    Optional<T> value = key.type().read(node, reading);
    value.ifPresent(v -> found.put(key.name(), new Located<>(v, reading.span(node))));
    return value.isPresent();
  }

  private boolean fillIn(Key<?> key, Node node, Reading reading, Map<String, Located<?>> found) {
    if (key.required()) {
      reading.error(
          JobCode.MISSING_KEY,
          node,
          "\"" + section.name() + "\" needs \"" + key.name() + "\": " + key.doc(),
          "");
      return false;
    }
    if (key.need() == Key.Need.DEFAULT) {
      readDefault(key, node, reading, found);
    }
    return true;
  }

  private <T> void readDefault(
      Key<T> key, Node section, Reading reading, Map<String, Located<?>> found) {
    Node node =
        YamlText.parse("default", key.fallback().getBytes(StandardCharsets.UTF_8)).orElseThrow();
    T value =
        key.type()
            .read(node, reading)
            .orElseThrow(() -> new IllegalStateException("bad default of " + key.name()));
    found.put(key.name(), new Located<>(value, reading.span(section)));
  }

  @Override
  public String describe() {
    return section.link();
  }

  @Override
  public Map<String, Object> schema() {
    return Map.of("$ref", "#/$defs/" + section.name());
  }

  @Override
  public List<Section> sections() {
    return List.of(section);
  }
}
