package frieze.keys;

import java.util.List;

/**
 * One row of the table of keys.
 *
 * @param name as written in a file
 * @param also another spelling that is accepted; empty for none
 * @param need whether it must be there
 * @param fallback what counts when it is missing: YAML for a default, words for an optional key
 * @param doc one or two sentences for the reference page
 */
public record Key<T>(
    String name, String also, Type<T> type, Need need, String fallback, String doc) {

  /** Whether a key must be there. */
  public enum Need {
    REQUIRED,
    OPTIONAL,
    /** A missing key counts as if its default were written. */
    DEFAULT
  }

  public static <T> Key<T> required(String name, Type<T> type, String doc) {
    return new Key<>(name, "", type, Need.REQUIRED, "", doc);
  }

  public static <T> Key<T> optional(String name, Type<T> type, String without, String doc) {
    return new Key<>(name, "", type, Need.OPTIONAL, without, doc);
  }

  public static <T> Key<T> withDefault(String name, Type<T> type, String yaml, String doc) {
    return new Key<>(name, "", type, Need.DEFAULT, yaml, doc);
  }

  public Key<T> alsoCalled(String other) {
    return new Key<>(name, other, type, need, fallback, doc);
  }

  public List<String> names() {
    return also.isEmpty() ? List.of(name) : List.of(name, also);
  }

  public boolean required() {
    return need == Need.REQUIRED;
  }
}
