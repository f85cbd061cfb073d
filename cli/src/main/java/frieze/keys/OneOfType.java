package frieze.keys;

import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;

/** Exactly one key of a section whose keys are all optional, such as one operation. */
public record OneOfType(Section section) implements Type<Values> {

  @Override
  public Optional<Values> read(Node node, Reading reading) {
    if (node instanceof MappingNode mapping && mapping.getValue().size() > 1) {
      SourceSpan second = reading.span(mapping.getValue().get(1).getKeyNode());
      reading
          .diagnostics()
          .error(
              JobCode.KEYS_EXCLUDE,
              second,
              "only one of \"" + section.name() + "\" can stand in one item of the list",
              "start a new item with \"- \"");
      return Optional.empty();
    }
    Optional<Values> values = new SectionType(section).read(node, reading);
    if (values.isPresent() && section.keys().stream().noneMatch(values.get()::has)) {
      reading.error(
          JobCode.MISSING_KEY, node, "expected one of " + String.join(", ", section.names()), "");
      return Optional.empty();
    }
    return values;
  }

  @Override
  public String describe() {
    return "one of " + section.link();
  }

  @Override
  public Map<String, Object> schema() {
    return Map.of(
        "allOf",
        List.of(
            Map.of("$ref", "#/$defs/" + section.name()),
            Map.of("minProperties", 1, "maxProperties", 1)));
  }

  @Override
  public List<Section> sections() {
    return List.of(section);
  }
}
