package frieze.wood;

import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.util.Locale;
import java.util.Optional;

/**
 * Moisture contents in per cent of the dry wood's weight.
 *
 * @param nowPct when it is cut
 * @param lowestPct in use, in the driest season
 * @param highestPct in use, in the dampest season
 */
public record Moisture(double nowPct, double lowestPct, double highestPct) {
  /** The linear rule of Table 13-5 holds from here ... */
  public static final double RULE_FROM_PCT = 6;

  /** ... to here. */
  public static final double RULE_TO_PCT = 14;

  /** Above about this the cell walls are full and wood moves no more. */
  private static final double SATURATED_PCT = 30;

  public Moisture {
    for (double pct : new double[] {nowPct, lowestPct, highestPct}) {
      if (!(pct >= 0 && pct <= SATURATED_PCT)) {
        throw new IllegalArgumentException(
            "moisture must be from 0 to " + SATURATED_PCT + " % but was " + pct + " %");
      }
    }
    if (lowestPct > highestPct) {
      throw new IllegalArgumentException(
          "lowestPct must not be above highestPct but was " + lowestPct + " > " + highestPct);
    }
  }

  /** The driest that the panel will be, counting from now. */
  public double driestPct() {
    return Math.min(nowPct, lowestPct);
  }

  /** The wettest that the panel will be, counting from now. */
  public double wettestPct() {
    return Math.max(nowPct, highestPct);
  }

  /** Whether the linear rule is stretched beyond the range for which it was published. */
  public boolean beyondRule() {
    return driestPct() < RULE_FROM_PCT || wettestPct() > RULE_TO_PCT;
  }

  /** A warning that the rule is stretched, with the figures; empty where it holds. */
  public Optional<Diagnostic> beyondRule(SourceSpan where) {
    return beyondRule()
        ? Optional.of(
            Diagnostic.warning(
                WoodCode.BEYOND_RULE,
                where,
                String.format(
                    Locale.ROOT,
                    "moisture from %.1f to %.1f %% is an extrapolation: the rule is published for"
                        + " %.0f to %.0f %%",
                    driestPct(),
                    wettestPct(),
                    RULE_FROM_PCT,
                    RULE_TO_PCT),
                ""))
        : Optional.empty();
  }

  /**
   * Calculates the moisture that wood takes on in air that stays as it is.
   *
   * <p><em>Source:</em> Wood Handbook, FPL-GTR-282 (2021), equation 4-5, in its Fahrenheit form.
   * Table 4-2, to which it was fitted, spans 30 to 270 °F and 5 to 95 % relative humidity.
   *
   * @param relativeHumidity from 0 to 1
   * @return per cent
   */
  public static double equilibriumPct(double fahrenheit, double relativeHumidity) {
    if (!(relativeHumidity >= 0 && relativeHumidity < 1)) {
      throw new IllegalArgumentException(
          "relativeHumidity must be from 0 to below 1 but was " + relativeHumidity);
    }
    double t = fahrenheit;
    double w = 330 + 0.452 * t + 0.00415 * t * t;
    double k = 0.791 + 0.000463 * t - 0.000000844 * t * t;
    double k1 = 6.34 + 0.000775 * t - 0.0000935 * t * t;
    double k2 = 1.09 + 0.0284 * t - 0.0000904 * t * t;
    double kh = k * relativeHumidity;
    double hydrates = k1 * kh + k1 * k2 * kh * kh;
    return 1800 / w * (kh / (1 - kh) + (hydrates + k1 * k2 * kh * kh) / (1 + hydrates));
  }
}
