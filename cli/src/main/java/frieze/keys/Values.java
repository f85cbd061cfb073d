package frieze.keys;

import frieze.diagnostic.SourceSpan;
import java.util.Map;
import java.util.Optional;

/** What stands in one section of a file, by key. */
public final class Values {
  private final SourceSpan where;
  private final Map<String, Located<?>> byName;

  Values(SourceSpan where, Map<String, Located<?>> byName) {
    this.where = where;
    this.byName = Map.copyOf(byName);
  }

  /** Where the section starts. */
  public SourceSpan where() {
    return where;
  }

  /** Where a key's value stands; where the section starts if it is not written. */
  public SourceSpan where(Key<?> key) {
    Located<?> found = byName.get(key.name());
    return found == null ? where : found.where();
  }

  public boolean has(Key<?> key) {
    return byName.containsKey(key.name());
  }

  /** The value of an optional key. */
  public <T> Optional<T> find(Key<T> key) {
    Located<?> found = byName.get(key.name());
    if (found == null) {
      return Optional.empty();
    }
    // Only SectionType fills the map, and it stores what the key's own type has read.
    @SuppressWarnings("unchecked")
    T value = (T) found.value();
    return Optional.of(value);
  }

  /**
   * The value of a key that is required or has a default.
   *
   * @throws IllegalStateException if it is missing; a file with errors gets no that far
   */
  public <T> T get(Key<T> key) {
    return find(key).orElseThrow(() -> new IllegalStateException("no value for " + key.name()));
  }
}
