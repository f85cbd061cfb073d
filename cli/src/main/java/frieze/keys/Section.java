package frieze.keys;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A group of keys.
 *
 * @param name unique in the table, such as {@code panel}
 * @param doc what it is for
 */
public record Section(String name, String doc, List<Key<?>> keys) {
  public Section {
    keys = List.copyOf(keys);
  }

  Optional<Key<?>> key(String written) {
    for (Key<?> key : keys) {
      if (key.names().contains(written)) {
        return Optional.of(key);
      }
    }
    return Optional.empty();
  }

  /** A link to its heading on the reference page, in Markdown. */
  String link() {
    return "[" + name + "](#" + name.toLowerCase(Locale.ROOT).replace(' ', '-') + ")";
  }

  /** The names of all keys. */
  List<String> names() {
    return keys.stream().map(Key::name).toList();
  }
}
