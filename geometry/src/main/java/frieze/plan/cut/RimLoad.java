package frieze.plan.cut;

import frieze.curve.Point;
import frieze.motion.Motion;
import frieze.motion.Motions;
import frieze.motion.Position;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * How much of a tool's rim stands in material along moves that are made one after the other.
 *
 * <p>Only the half of the rim that looks forward can meet material. Of that half free is what lies
 * within the tool's radius of a place where the tool has been before, as deep or deeper. A slot
 * gives half a turn, a side cut of width a gives acos(1 - a / r).
 *
 * <p><i>Approximation:</i> places are kept every fourth of the radius, angles counted in degrees. A
 * way that is gone twice reads up to 10 degrees the second time, a side cut up to 2 too much.
 * <i>Cost:</i> some 200 distances for each fourth of the radius of the way.
 */
public final class RimLoad {
  private static final int DEGREES = 180;
  private static final double STEPS_PER_RADIUS = 4;

  /** What a place is made larger by, as a square, to fill the gaps to the next. */
  private static final double SCALLOP = 1 / (4 * STEPS_PER_RADIUS * STEPS_PER_RADIUS);

  /** A place nearer than this part of the radius to one that is kept adds nothing. */
  private static final double NEAR = 1.0 / 16;

  /** A place this much higher has still cleared this depth. */
  private static final double SAME_DEPTH_MM = 1e-6;

  private static final double NO_WAY_MM = 1e-6;

  private final double radiusMm;
  private final Predicate<Point> standing;
  private final Map<Long, List<Position>> been = new HashMap<>();
  private final int[] covered = new int[DEGREES + 1];

  /**
   * Begins with nothing cut.
   *
   * @param radiusMm of the tool where it meets the top of what it cuts
   * @param standing whether anything stood at a place before the first move
   */
  public RimLoad(double radiusMm, Predicate<Point> standing) {
    this.radiusMm = radiusMm;
    this.standing = standing;
  }

  /** A stretch of a move, by fractions of its length, and the most of the rim that is engaged. */
  record Stretch(double from, double to, double rimRad) {
    /** A move that is not measured. */
    static final Stretch UNKNOWN = new Stretch(0, 1, 0);
  }

  /** Makes the next move without measuring it. */
  void pass(Motion path) {
    int steps = (int) Math.max(1, Math.ceil(Motions.planarMm(path) * STEPS_PER_RADIUS / radiusMm));
    for (int i = 0; i <= steps; i++) {
      keep(path.at((double) i / steps));
    }
  }

  /** Measures the next move; stretches are no longer than a fourth of the radius. */
  List<Stretch> next(Motion path) {
    double way = Motions.planarMm(path);
    if (way < NO_WAY_MM) {
      keep(path.to());
      return List.of(Stretch.UNKNOWN);
    }
    int steps = (int) Math.max(1, Math.ceil(way * STEPS_PER_RADIUS / radiusMm));
    List<Stretch> stretches = new ArrayList<>();
    double before = engagedRad(path.from(), aheadRad(path, 0));
    for (int i = 1; i <= steps; i++) {
      double to = (double) i / steps;
      keep(path.at((i - 1.0) / steps));
      double here = engagedRad(path.at(to), aheadRad(path, to));
      stretches.add(new Stretch((i - 1.0) / steps, to, Math.max(before, here)));
      before = here;
    }
    keep(path.to());
    return stretches;
  }

  private static double aheadRad(Motion path, double at) {
    if (path instanceof Motion.Turn turn) {
      double angle = turn.startAngleRad() + at * turn.sweepRad();
      return angle + Math.copySign(Math.PI / 2, turn.sweepRad());
    }
    return StrictMath.atan2(path.to().y() - path.from().y(), path.to().x() - path.from().x());
  }

  private double engagedRad(Position at, double aheadRad) {
    Arrays.fill(covered, 0);
    Point ahead = Point.polar(Point.ORIGIN, 1, aheadRad);
    long column = cell(at.x());
    long row = cell(at.y());
    for (long c = column - 2; c <= column + 2; c++) {
      for (long r = row - 2; r <= row + 2; r++) {
        for (Position place : been.getOrDefault(key(c, r), List.of())) {
          cover(at, ahead, place);
        }
      }
    }
    int engaged = 0;
    int over = 0;
    for (int degree = 0; degree < DEGREES; degree++) {
      over += covered[degree];
      if (over == 0) {
        double angle = aheadRad + Math.toRadians(degree + 0.5 - DEGREES / 2.0);
        engaged += standing.test(Point.polar(at.xy(), radiusMm, angle)) ? 1 : 0;
      }
    }
    return Math.toRadians(engaged);
  }

  /** Counts the degrees of the rim that lie within the radius of a place. */
  private void cover(Position at, Point ahead, Position place) {
    double dx = place.x() - at.x();
    double dy = place.y() - at.y();
    double square = dx * dx + dy * dy;
    double forward = dx * ahead.x() + dy * ahead.y();
    if (square >= 4 * radiusMm * radiusMm || place.z() > at.z() + SAME_DEPTH_MM) {
      return;
    }
    boolean justBehind = forward <= NEAR * radiusMm && square < radiusMm * radiusMm / 4;
    double between = justBehind ? 0 : radiusMm * radiusMm * SCALLOP;
    double cosine = (square - between) / (2 * radiusMm * Math.sqrt(square));
    double half = StrictMath.acos(Math.max(-1, Math.min(1, cosine)));
    if (forward < 0 && forward * forward >= square * (1 - cosine * cosine)) {
      return; // only in the half that looks back
    }
    double turned = StrictMath.atan2(ahead.x() * dy - ahead.y() * dx, forward);
    int low = degree(turned - half);
    int high = degree(turned + half);
    if (low < high) {
      covered[low]++;
      covered[high]--;
    }
  }

  /** The first degree of the half rim whose middle lies at an angle or beyond. */
  private static int degree(double angleRad) {
    long degree = (long) Math.ceil(Math.toDegrees(angleRad) + DEGREES / 2.0 - 0.5);
    return (int) Math.max(0, Math.min(DEGREES, degree));
  }

  private void keep(Position place) {
    List<Position> here =
        been.computeIfAbsent(key(cell(place.x()), cell(place.y())), k -> new ArrayList<>());
    for (Position other : here) {
      double apart = Motions.planarMm(place, other);
      if (apart < NEAR * radiusMm && other.z() <= place.z() + SAME_DEPTH_MM) {
        return;
      }
    }
    here.add(place);
  }

  private long cell(double mm) {
    return (long) Math.floor(mm / radiusMm);
  }

  private static long key(long column, long row) {
    return (column << Integer.SIZE) ^ (row & 0xffff_ffffL);
  }
}
