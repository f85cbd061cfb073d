package frieze.keys;

import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads quantities of the command line, written as in a job file. */
public final class OptionText {
  private static final Pattern BETWEEN = Pattern.compile("\\s*[x×,]\\s*");
  private static final Pattern BETWEEN_WORDS = Pattern.compile("[\\s,]+");
  private static final Pattern UNIT_AT_END = Pattern.compile("[a-zA-Z\"'″′]+$");

  private OptionText() {}

  /**
   * Reads lengths with {@code x} or commas between them. A unit behind the last counts for those
   * that have none: {@code 18 x 5-1/2 x 3/4 in}.
   *
   * @param inches whether a bare number is in inches
   * @throws IllegalArgumentException with a message for the user, if it can't be read
   */
  public static List<Double> lengthsMm(String text, boolean inches, int count) {
    String[] parts = BETWEEN.split(text.strip(), -1);
    if (parts.length != count) {
      throw new IllegalArgumentException(
          "\"" + text + "\" must have " + count + " lengths but has " + parts.length);
    }
    Matcher unit = UNIT_AT_END.matcher(parts[count - 1]);
    String common = unit.find() ? " " + unit.group() : "";
    List<Double> lengths = new ArrayList<>();
    for (String part : parts) {
      boolean bare = !part.isEmpty() && Character.isDigit(part.charAt(part.length() - 1));
      lengths.add(lengthMm(bare ? part + common : part, inches));
    }
    return lengths;
  }

  /**
   * Reads one length above 0.
   *
   * @param inches whether a bare number is in inches
   * @throws IllegalArgumentException with a message for the user, if it is none
   */
  public static double heightMm(String text, boolean inches) {
    double mm = lengthMm(text.strip(), inches);
    if (!(mm > 0)) {
      throw new IllegalArgumentException("\"" + text + "\" must be a height above 0");
    }
    return mm;
  }

  /**
   * Reads a share such as {@code 40%}.
   *
   * @throws IllegalArgumentException with a message for the user, if it is none
   */
  public static double share(String text) {
    try {
      return QuantityText.read(text.strip(), UnitKind.SHARE, false);
    } catch (QuantityText.NotAQuantity e) {
      throw new IllegalArgumentException(e.text() + "; " + e.hint(), e);
    }
  }

  private static double lengthMm(String text, boolean inches) {
    try {
      return QuantityText.read(text, UnitKind.LENGTH, inches);
    } catch (QuantityText.NotAQuantity e) {
      throw new IllegalArgumentException(e.text() + "; " + e.hint(), e);
    }
  }

  /**
   * Reads where zero is, such as {@code left front top}.
   *
   * @throws IllegalArgumentException with a message for the user, if it can't be read
   */
  public static Zero zero(String text) {
    String[] words = BETWEEN_WORDS.split(text.strip().toLowerCase(Locale.ROOT), -1);
    if (words.length == 3) {
      try {
        return new Zero(
            word(Zero.AlongX.class, words[0]),
            word(Zero.AlongY.class, words[1]),
            word(Zero.AlongZ.class, words[2]));
      } catch (IllegalArgumentException e) {
        // Told below, with all words that there are.
      }
    }
    throw new IllegalArgumentException(
        "\""
            + text
            + "\" must be three words: left, centre or right; front, centre or back; top or bed");
  }

  private static <E extends Enum<E>> E word(Class<E> type, String word) {
    String british = word.equals("center") ? "centre" : word;
    return Enum.valueOf(type, british.toUpperCase(Locale.ROOT));
  }
}
