package frieze.design;

import java.util.OptionalDouble;

/**
 * How a groove runs out: its depth falls evenly towards one end of its line, or both, as a vein of
 * a leaf does from root to tip. Lines run the way they were drawn.
 *
 * @param ends where it runs out
 * @param toMm the depth at such an end, from 0
 * @param overMm the length over which the depth changes; empty for the whole line, or half of it
 *     towards each end. No longer than that is used on a short line.
 */
public record Fade(Ends ends, double toMm, OptionalDouble overMm) {
  /** Which ends of a line. */
  public enum Ends {
    START,
    END,
    BOTH
  }

  public Fade {
    if (!(toMm >= 0) || !Double.isFinite(toMm)) {
      throw new IllegalArgumentException("toMm must be >= 0 but was " + toMm + " mm");
    }
    if (overMm.isPresent() && !(overMm.getAsDouble() > 0)) {
      throw new IllegalArgumentException(
          "overMm must be > 0 but was " + overMm.getAsDouble() + " mm");
    }
  }

  /**
   * The depth at a place on a line.
   *
   * @param atMm the length from the line's start
   * @param lengthMm the length of the line, above 0
   * @param depthMm the depth where it does not run out
   */
  public double depthMm(double atMm, double lengthMm, double depthMm) {
    double over = lengthOverMm(lengthMm);
    double fromEnd =
        switch (ends) {
          case START -> atMm;
          case END -> lengthMm - atMm;
          case BOTH -> Math.min(atMm, lengthMm - atMm);
        };
    return fromEnd >= over ? depthMm : toMm + (depthMm - toMm) * Math.max(0, fromEnd) / over;
  }

  /** The length at an end over which the depth changes on a line of a length. */
  public double lengthOverMm(double lengthMm) {
    double most = ends == Ends.BOTH ? lengthMm / 2 : lengthMm;
    return Math.min(most, overMm.orElse(most));
  }
}
