package frieze.design;

import java.util.Optional;

/**
 * What is cut out and how.
 *
 * @param on the areas of a drawing; empty for the panel's outline
 * @param leaveMm what is left on the wall and taken last; 0 for no such pass
 * @param steps in how many laps that is taken, the last one at the wall
 * @param skinMm what is left at the stock's bottom all along the cut; 0 to cut through
 * @param corners what becomes of inside corners
 * @param proudMm what finishing takes off the walls afterwards, and off those of relieved corners
 */
public record CutoutWay(
    Optional<Work.Target> on,
    Work.Side side,
    double leaveMm,
    int steps,
    double skinMm,
    Corners corners,
    double proudMm) {
  /** Walls that stay as they are cut. */
  public CutoutWay(
      Optional<Work.Target> on,
      Work.Side side,
      double leaveMm,
      int steps,
      double skinMm,
      Corners corners) {
    this(on, side, leaveMm, steps, skinMm, corners, 0);
  }

  /** Inside corners stay round. */
  public CutoutWay(
      Optional<Work.Target> on, Work.Side side, double leaveMm, int steps, double skinMm) {
    this(on, side, leaveMm, steps, skinMm, Corners.ROUND);
  }

  /** What is left on the wall is taken in one lap. */
  public CutoutWay(Optional<Work.Target> on, Work.Side side, double leaveMm, double skinMm) {
    this(on, side, leaveMm, 1, skinMm);
  }

  /** The same with walls that are finished afterwards. */
  public CutoutWay finished(double proud) {
    return new CutoutWay(on, side, leaveMm, steps, skinMm, corners, proud);
  }

  /** The panel's outline, outside, at once to its size, through. */
  public static final CutoutWay PLAIN = new CutoutWay(Optional.empty(), Work.Side.OUTSIDE, 0, 0);
}
