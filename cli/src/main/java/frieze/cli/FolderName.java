package frieze.cli;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Makes names of folders from what people call a job or a panel. Not for several threads. */
final class FolderName {
  private final Set<String> taken = new HashSet<>();

  /** A name of small letters, digits and hyphens, not given before. */
  String next(String title) {
    String words = of(title);
    String name = words;
    for (int number = 2; !taken.add(name); number++) {
      name = words + "-" + number;
    }
    return name;
  }

  static String of(String title) {
    String words =
        Normalizer.normalize(title, Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", "-")
            .replaceAll("^-+|-+$", "");
    return words.isEmpty() ? "job" : words;
  }
}
