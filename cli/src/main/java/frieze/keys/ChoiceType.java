package frieze.keys;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.Node;

/** One of several words, each of which may have other spellings. */
public record ChoiceType<T>(List<Word<T>> words) implements Type<T> {
  public ChoiceType {
    words = List.copyOf(words);
  }

  /**
   * A word and what it stands for.
   *
   * @param spellings the first is the one to show
   */
  public record Word<T>(T value, List<String> spellings) {
    public Word {
      spellings = List.copyOf(spellings);
    }

    public static <T> Word<T> of(T value, String... spellings) {
      return new Word<>(value, List.of(spellings));
    }
  }

  @Override
  public Optional<T> read(Node node, Reading reading) {
    Optional<String> text = Types.scalar(node, "one of " + shown(), reading);
    if (text.isEmpty()) {
      return Optional.empty();
    }
    for (Word<T> word : words) {
      if (word.spellings().contains(text.get())) {
        return Optional.of(word.value());
      }
    }
    reading.error(
        JobCode.UNKNOWN_WORD,
        node,
        "\"" + text.get() + "\" is not one of " + shown(),
        Suggestion.nearest(text.get(), spellings())
            .map(near -> "did you mean \"" + near + "\"?")
            .orElse(""));
    return Optional.empty();
  }

  private String shown() {
    return String.join(", ", words.stream().map(word -> word.spellings().get(0)).toList());
  }

  private List<String> spellings() {
    List<String> all = new ArrayList<>();
    words.forEach(word -> all.addAll(word.spellings()));
    return all;
  }

  @Override
  public String describe() {
    List<String> each = new ArrayList<>();
    for (Word<T> word : words) {
      List<String> more = word.spellings().subList(1, word.spellings().size());
      each.add(
          "`"
              + word.spellings().get(0)
              + "`"
              + (more.isEmpty() ? "" : " (or `" + String.join("`, `", more) + "`)"));
    }
    return "one of " + String.join(", ", each);
  }

  @Override
  public Map<String, Object> schema() {
    return Map.of("enum", spellings());
  }
}
