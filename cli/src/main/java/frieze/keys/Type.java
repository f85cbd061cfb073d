package frieze.keys;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** What the value of a key may be: how it is read, described and put into a JSON schema. */
public interface Type<T> {
  /** Reads a value; empty after it has reported an error. */
  Optional<T> read(Node node, Reading reading);

  /** In words for the reference page, such as {@code a length, more than 0}. */
  String describe();

  /** As a JSON schema; sections are referred to by name. */
  Map<String, Object> schema();

  /** The sections that a value of this type holds. */
  default List<Section> sections() {
    return List.of();
  }
}
