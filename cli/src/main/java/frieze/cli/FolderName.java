package frieze.cli;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;

/** Makes names of folders from what people call a job or a panel. Not for several threads. */
final class FolderName {
  /** Long enough to tell panels apart, short enough for every file system, with what is added. */
  private static final int LONGEST = 60;

  /** Names of devices, which some systems do not take as names of folders. */
  private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

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
    if (words.isEmpty()) {
      return "unnamed";
    }
    if (DEVICE.matcher(words).matches()) {
      return "the-" + words;
    }
    return words.length() <= LONGEST ? words : words.substring(0, LONGEST).replaceAll("-$", "");
  }
}
