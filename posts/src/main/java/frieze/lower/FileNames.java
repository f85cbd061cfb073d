package frieze.lower;

import java.text.Normalizer;
import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/**
 * Gives the programs of a job names that their controller can show.
 *
 * <p><i>Guarantees:</i> every name differs from all others even where capitals do not count; within
 * one title they sort in running order; only ASCII letters, digits and hyphens stand before the
 * point. Not safe for use by several threads.
 */
public final class FileNames {
  private static final int DIGITS = 2;
  private static final int MOST = 99;

  private final Capabilities.Files files;
  private final Set<String> taken = new HashSet<>();

  public FileNames(Capabilities.Files files) {
    this.files = files;
  }

  /** The next free name for a title, such as {@code front-apron-1.nc}. */
  public String next(String title) {
    String words = words(title);
    for (int number = 1; number <= MOST; number++) {
      String name = name(words, number);
      if (taken.add(name.toLowerCase(Locale.ROOT))) {
        return name + files.extension();
      }
    }
    throw new IllegalArgumentException("more than " + MOST + " programs named " + title);
  }

  /** Names with the same ones taken; what is taken from either is still free in the other. */
  public FileNames copy() {
    FileNames copy = new FileNames(files);
    copy.taken.addAll(taken);
    return copy;
  }

  private String name(String words, int number) {
    String digits = String.format(Locale.ROOT, "%0" + DIGITS + "d", number);
    boolean tight = files.upperCase();
    int room = files.maxNameLength() - DIGITS - (tight ? 0 : 1);
    String start = words.substring(0, Math.min(words.length(), room));
    while (start.endsWith("-")) {
      start = start.substring(0, start.length() - 1);
    }
    String name = tight ? start + digits : start + "-" + digits;
    return tight ? name.toUpperCase(Locale.ROOT) : name;
  }

  private String words(String title) {
    String plain =
        Normalizer.normalize(title, Normalizer.Form.NFKD)
            .toLowerCase(Locale.ROOT)
            .replaceAll("\\p{M}", "")
            .replaceAll("[^a-z0-9]+", files.upperCase() ? "" : "-")
            .replaceAll("^-+|-+$", "");
    return plain.isEmpty() ? "panel" : plain;
  }
}
