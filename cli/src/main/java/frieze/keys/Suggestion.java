package frieze.keys;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import org.apache.commons.text.similarity.LevenshteinDistance;

/** Finds the word that somebody may have meant. */
public final class Suggestion {
  private static final int LISTED_AT_MOST = 12;

  /** Fewer letters are held by many a word that has nothing to do with them. */
  private static final int LEAST_PART = 3;

  private Suggestion() {}

  /** The known word nearest to a written one, if it is near enough to be worth a question. */
  static Optional<String> nearest(String written, Collection<String> known) {
    String plain = written.toLowerCase(Locale.ROOT);
    int limit = Math.max(1, (plain.length() + 2) / 3);
    LevenshteinDistance distance = new LevenshteinDistance(limit);
    record Candidate(String word, int distance) {}
    return known.stream()
        .map(word -> new Candidate(word, distance.apply(plain, word.toLowerCase(Locale.ROOT))))
        .filter(candidate -> candidate.distance() >= 0)
        .min(Comparator.comparingInt(Candidate::distance).thenComparing(Candidate::word))
        .map(Candidate::word);
  }

  /** A hint: the nearest word, or those that hold what was written, or else what is known. */
  public static String hint(String written, Collection<String> known) {
    return nearest(written, known)
        .map(word -> "did you mean \"" + word + "\"?")
        .orElseGet(() -> holding(written, known).orElseGet(() -> listed(known)));
  }

  private static Optional<String> holding(String written, Collection<String> known) {
    String part = written.strip().toLowerCase(Locale.ROOT);
    List<String> words =
        part.length() < LEAST_PART
            ? List.of()
            : known.stream()
                .filter(word -> word.toLowerCase(Locale.ROOT).contains(part))
                .sorted()
                .limit(LISTED_AT_MOST)
                .map(word -> '"' + word + '"')
                .toList();
    return words.isEmpty()
        ? Optional.empty()
        : Optional.of("did you mean " + String.join(" or ", words) + "?");
  }

  private static String listed(Collection<String> known) {
    if (known.isEmpty()) {
      return "none is known";
    }
    var sorted = new TreeSet<>(known);
    String first = String.join(", ", sorted.stream().limit(LISTED_AT_MOST).toList());
    return "known: " + first + (sorted.size() > LISTED_AT_MOST ? ", ..." : "");
  }
}
