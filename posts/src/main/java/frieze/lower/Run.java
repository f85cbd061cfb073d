package frieze.lower;

import frieze.curve.Point;
import java.util.List;

/**
 * What is special about a run of programs.
 *
 * @param liftMm how much higher than usual everything happens; above 0 it is an air pass, without
 *     spindle and torch
 * @param beforeStart what the operator is asked, with a stop for each, before anything moves
 * @param touchSpots where Z is found then, in program coordinates (mm)
 */
public record Run(double liftMm, List<String> beforeStart, List<Point> touchSpots) {
  /** Nothing is special. */
  public static final Run USUAL = new Run(0, List.of(), List.of());

  public Run {
    beforeStart = List.copyOf(beforeStart);
    touchSpots = List.copyOf(touchSpots);
    if (!(liftMm >= 0) || !Double.isFinite(liftMm)) {
      throw new IllegalArgumentException("liftMm must be >= 0 but was " + liftMm + " mm");
    }
  }

  /**
   * A pass in the air, to watch the path.
   *
   * @param torch whether the machine has a torch instead of a spindle
   */
  public static Run air(double liftMm, boolean torch) {
    String off = torch ? "TORCH OFF AT ITS POWER SOURCE" : "SPINDLE OFF, AND KEPT OFF";
    return new Run(liftMm, List.of("AIR PASS: " + off + ", THEN START"), List.of());
  }

  public boolean isAir() {
    return liftMm > 0;
  }
}
