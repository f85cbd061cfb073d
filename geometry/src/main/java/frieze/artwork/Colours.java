package frieze.artwork;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Colours as SVG and people write them. Source: CSS Color 3, 4. */
public final class Colours {
  private static final Pattern RGB =
      Pattern.compile(
          "rgba?\\(\\s*([\\d.]+%?)[\\s,]+([\\d.]+%?)[\\s,]+([\\d.]+%?)(?:[\\s,/]+[\\d.]+%?)?\\s*\\)");
  private static final Pattern LONG = Pattern.compile("#[0-9a-f]{6}(?:[0-9a-f]{2})?");
  private static final Pattern SHORT = Pattern.compile("#[0-9a-f]{3,4}");
  private static final Map<String, String> NAMED = named();

  private Colours() {}

  private static Map<String, String> named() {
    Map<String, String> names = new HashMap<>();
    try (InputStream in = Colours.class.getResourceAsStream("colours.txt")) {
      if (in == null) {
        throw new IllegalStateException("the list of colour names is missing");
      }
      BufferedReader lines = new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
      lines
          .lines()
          .filter(line -> !line.startsWith("# "))
          .map(line -> line.split(" ", -1))
          .forEach(pair -> names.put(pair[0], pair[1]));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return Map.copyOf(names);
  }

  /** The colour as {@code #rrggbb}, without its opacity; empty if the text is none. */
  public static Optional<String> hex(String text) {
    String t = text.strip().toLowerCase(Locale.ROOT);
    String named = NAMED.get(t);
    if (named != null) {
      return Optional.of(named);
    }
    if (LONG.matcher(t).matches()) {
      return Optional.of(t.substring(0, 7));
    }
    if (SHORT.matcher(t).matches()) {
      StringBuilder twice = new StringBuilder("#");
      for (char c : t.substring(1, 4).toCharArray()) {
        twice.append(c).append(c);
      }
      return Optional.of(twice.toString());
    }
    Matcher rgb = RGB.matcher(t);
    return rgb.matches()
        ? Optional.of(hex(part(rgb.group(1)), part(rgb.group(2)), part(rgb.group(3))))
        : Optional.empty();
  }

  /** The colour of three parts from 0 to 255. */
  public static String hex(int red, int green, int blue) {
    return String.format(Locale.ROOT, "#%02x%02x%02x", red, green, blue);
  }

  private static int part(String text) {
    boolean percent = text.endsWith("%");
    String digits = percent ? text.substring(0, text.length() - 1) : text;
    try {
      double value = Double.parseDouble(digits) * (percent ? 2.55 : 1);
      return (int) Math.rint(Math.max(0, Math.min(255, value)));
    } catch (NumberFormatException e) {
      return 0;
    }
  }
}
