package frieze.job;

import java.util.List;
import java.util.Optional;

/**
 * A group of keys.
 *
 * @param name unique in the table, such as {@code panel}
 * @param doc what it is for
 */
record Section(String name, String doc, List<Key<?>> keys) {
  Section {
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

  /** The names of all keys. */
  List<String> names() {
    return keys.stream().map(Key::name).toList();
  }
}
