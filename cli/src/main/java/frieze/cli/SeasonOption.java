package frieze.cli;

import frieze.wood.Moisture;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the air of a season, such as {@code 21 C, 30%}, and tells what wood takes on in it. */
final class SeasonOption {
  private static final Pattern AIR =
      Pattern.compile("(-?\\d+(?:\\.\\d+)?)\\s*([cf])\\s*[,\\s]\\s*(\\d+(?:\\.\\d+)?)\\s*%");
  private static final double FREEZING_F = 32;
  private static final double F_PER_C = 1.8;
  private static final double BOILING_F = 212;
  private static final double PER_CENT = 100;

  private SeasonOption() {}

  /**
   * The moisture of wood that lies in such air for weeks.
   *
   * @return per cent
   * @throws IllegalArgumentException with a message for the user, if it can't be read
   */
  static double moisturePct(String text) {
    Matcher air = AIR.matcher(text.strip().toLowerCase(Locale.ROOT));
    if (!air.matches()) {
      throw new IllegalArgumentException(
          "\"" + text + "\" must be a temperature and a relative humidity, such as 21 C, 30%");
    }
    double degrees = Double.parseDouble(air.group(1));
    double fahrenheit = air.group(2).equals("f") ? degrees : degrees * F_PER_C + FREEZING_F;
    double humidity = Double.parseDouble(air.group(3)) / PER_CENT;
    if (fahrenheit < FREEZING_F || fahrenheit > BOILING_F || humidity >= 1) {
      throw new IllegalArgumentException(
          "\"" + text + "\" must be air above freezing and below 100% of humidity");
    }
    return Moisture.equilibriumPct(fahrenheit, humidity);
  }
}
