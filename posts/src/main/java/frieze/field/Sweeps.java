package frieze.field;

import frieze.curve.Point;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import java.util.function.Consumer;

/**
 * Takes a move apart into {@link Sweep}s.
 *
 * <p>Straight moves and level arcs are exact. Helices, spirals and arcs in other planes become
 * chords.
 *
 * <p><b>Approximation:</b> a chord departs from its arc by at most {@link #CHORD_MM}; a level arc
 * whose radii at start and end differ by at most twice {@link #SPIRAL_MM} is taken with the mean.
 */
final class Sweeps {
  /** The most by which a chord departs from an arc. */
  static final double CHORD_MM = 0.0008;

  /** The most by which the radius of an arc that is taken as a circle departs from its mean. */
  static final double SPIRAL_MM = 0.0005;

  private static final double LARGEST_PIECE_RAD = Math.PI / 2;

  /** A bound on time: no arc is cut into more chords than this. */
  private static final int MOST_CHORDS = 2_000_000;

  private Sweeps() {}

  /**
   * Gives the sweeps of a move, in the order of travel.
   *
   * @param startDone whether the tool's shape at the start of the move has been cut already
   */
  static void of(Motion motion, Profile profile, boolean startDone, Consumer<Sweep> into) {
    motion.accept(
        new Motion.Visitor<Boolean>() {
          @Override
          public Boolean straight(Motion.Straight m) {
            into.accept(new StraightSweep(m.from(), m.to(), profile, Ends.startDone(startDone)));
            return true;
          }

          @Override
          public Boolean turn(Motion.Turn m) {
            if (isLevelCircle(m)) {
              circle(m, profile, startDone, into);
            } else {
              chords(m, profile, startDone, into);
            }
            return true;
          }
        });
  }

  private static boolean isLevelCircle(Motion.Turn m) {
    return m.plane() == Plane.XY
        && m.from().z() == m.to().z()
        && Math.abs(m.startRadiusMm() - m.endRadiusMm()) <= 2 * SPIRAL_MM;
  }

  private static void circle(
      Motion.Turn m, Profile profile, boolean startDone, Consumer<Sweep> into) {
    if (!startDone) {
      into.accept(new StraightSweep(m.from(), m.from(), profile, Ends.FREE));
    }
    double total = Math.min(Math.abs(m.sweepRad()), 2 * Math.PI);
    double from = m.sweepRad() > 0 ? m.startAngleRad() : m.startAngleRad() - total;
    int pieces = (int) Math.ceil(total / LARGEST_PIECE_RAD);
    Point centre = new Point(m.centreU(), m.centreV());
    for (int i = 0; i < pieces; i++) {
      double start = from + total * i / pieces;
      into.accept(new ArcSweep(centre, m.radiusMm(), start, total / pieces, m.from().z(), profile));
    }
    into.accept(new StraightSweep(m.to(), m.to(), profile, Ends.FREE));
  }

  private static void chords(
      Motion.Turn m, Profile profile, boolean startDone, Consumer<Sweep> into) {
    int pieces = chordCount(m);
    Position before = m.from();
    for (int i = 1; i <= pieces; i++) {
      Position next = m.at((double) i / pieces);
      into.accept(new StraightSweep(before, next, profile, Ends.startDone(startDone || i > 1)));
      before = next;
    }
  }

  private static int chordCount(Motion.Turn m) {
    double radius = Math.max(m.startRadiusMm(), m.endRadiusMm());
    double halfStep = Math.acos(Math.max(0, 1 - CHORD_MM / Math.max(radius, CHORD_MM)));
    double count = Math.ceil(Math.abs(m.sweepRad()) / (2 * halfStep));
    return (int) Math.max(1, Math.min(count, MOST_CHORDS));
  }
}
