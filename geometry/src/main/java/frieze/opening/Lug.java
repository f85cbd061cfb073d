package frieze.opening;

import frieze.diagnostic.SourceSpan;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * Something welded into an opening that the panel must go around, such as a lug for a screw or the
 * end of a bar; seen from the front it is a rectangle that stands square on one side.
 *
 * @param fromMm from the side's left corner, or from its lower one, to the near edge
 * @param widthMm along the side
 * @param depthMm how far it reaches into the opening
 * @param clearanceMm what is left around it, as cut; empty for what play and wood need, and for no
 *     less than the gap of its side
 * @param where the place in the job, for the diagnostics
 */
public record Lug(
    String name,
    Side side,
    double fromMm,
    double widthMm,
    double depthMm,
    OptionalDouble clearanceMm,
    SourceSpan where) {
  /** The side of the opening that it stands on; counter-clockwise, as sides are counted. */
  public enum Side {
    BOTTOM(0),
    RIGHT(1),
    TOP(2),
    LEFT(3);

    /** As the sides of an opening are counted. */
    final int number;

    Side(int number) {
      this.number = number;
    }

    @Override
    public String toString() {
      return name().toLowerCase(Locale.ROOT);
    }
  }

  public Lug {
    if (!(fromMm >= 0 && widthMm > 0 && depthMm > 0 && clearanceMm.orElse(0) >= 0)) {
      throw new IllegalArgumentException(
          "fromMm, clearanceMm must be >= 0 and widthMm, depthMm > 0 but were "
              + (fromMm + ", " + clearanceMm + ", " + widthMm + ", " + depthMm));
    }
  }

  /** Where it begins, counted along its side with the opening on the left. */
  double startMm(double sideMm) {
    boolean forwards = side == Side.BOTTOM || side == Side.RIGHT;
    return forwards ? fromMm : sideMm - fromMm - widthMm;
  }
}
