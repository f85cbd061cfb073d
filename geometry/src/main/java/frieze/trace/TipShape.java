package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * A tip between two sides that bend evenly: sharp, cut off square, or rounded.
 *
 * <p>The numbers are those of a least squares fit: the place where the sides would meet, for each
 * side the direction in which it leaves that place and its curvature, and how much of each side is
 * missing. Ink lies to the left when one comes along the first side and leaves along the second.
 */
final class TipShape {
  /** How the tip ends. */
  enum Ending {
    SHARP,
    CUT,
    ROUND
  }

  static final int X = 0;
  static final int Y = 1;
  static final int FIRST = 2;
  static final int SECOND = 3;
  static final int FIRST_BEND = 4;
  static final int SECOND_BEND = 5;
  static final int MISSING = 6;

  private static final double STEP_PX = 0.7;
  private static final int CLOSING_STEPS = 6;
  private static final int ROUND_STEPS = 8;

  private final Ending ending;
  private final double[] numbers;
  private final Point apex;
  private final Point[] along;

  TipShape(Ending ending, double[] numbers) {
    this.ending = ending;
    this.numbers = numbers.clone();
    this.apex = new Point(numbers[X], numbers[Y]);
    this.along = new Point[] {unit(numbers[FIRST]), unit(numbers[SECOND])};
  }

  private static Point unit(double angleRad) {
    return new Point(StrictMath.cos(angleRad), StrictMath.sin(angleRad));
  }

  /** How many numbers a kind of tip has. */
  static int count(Ending ending) {
    return ending == Ending.SHARP ? MISSING : MISSING + 1;
  }

  Ending ending() {
    return ending;
  }

  Point apex() {
    return apex;
  }

  /** How much of each side is missing at the tip, in pixels. */
  double missing() {
    return ending == Ending.SHARP ? 0 : Math.abs(numbers[MISSING]);
  }

  /** The angle between the sides where they would meet. */
  double angle() {
    return Math.abs(Corners.angle(direction(FIRST, 0), direction(SECOND, 0)));
  }

  private Point side(int which, double at) {
    double bend = numbers[which + FIRST_BEND - FIRST];
    Point ahead = along[which - FIRST];
    Point left = new Point(-ahead.y(), ahead.x());
    return apex.plus(ahead.times(at)).plus(left.times(bend * at * at / 2));
  }

  private Point direction(int which, double at) {
    double bend = numbers[which + FIRST_BEND - FIRST];
    Point ahead = along[which - FIRST];
    Point velocity = ahead.plus(new Point(-ahead.y(), ahead.x()).times(bend * at));
    return velocity.times(1 / velocity.norm());
  }

  /** The first side from a distance to the tip, without both ends. */
  List<Point> first(double fromPx) {
    return side(FIRST, fromPx, missing());
  }

  /** The second side from the tip to a distance, without both ends. */
  List<Point> second(double toPx) {
    return side(SECOND, missing(), toPx);
  }

  private List<Point> side(int which, double from, double to) {
    List<Point> points = new ArrayList<>();
    int n = (int) Math.ceil(Math.abs(to - from) / STEP_PX);
    for (int i = 1; i < n && Math.max(from, to) > missing(); i++) {
      points.add(side(which, from + (to - from) * i / n));
    }
    return points;
  }

  /** The end of the tip: one point if it is sharp, two corners if it is cut, a curve if round. */
  List<Point> tip() {
    double from = missing();
    return switch (ending) {
      case SHARP -> List.of(apex());
      case CUT -> List.of(side(FIRST, from), side(SECOND, from));
      case ROUND -> rounded();
    };
  }

  /** A cubic whose ends touch the sides: an arc within 0.1 % where they are straight. */
  private List<Point> rounded() {
    double from = missing();
    Point a = side(FIRST, from);
    Point b = side(SECOND, from);
    Point in = direction(FIRST, from).times(-1);
    Point out = direction(SECOND, from);
    double turn = Math.abs(Corners.angle(in, out));
    double quarter = StrictMath.tan(turn / 4);
    double chord = a.distance(b);
    double handle = turn > 0 ? 4.0 / 3 * quarter * chord / (2 * StrictMath.sin(turn / 2)) : 0;
    Point c = a.plus(in.times(handle));
    Point d = b.minus(out.times(handle));
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= ROUND_STEPS; i++) {
      double t = (double) i / ROUND_STEPS;
      Point left = a.towards(c, t).towards(c.towards(d, t), t);
      Point right = c.towards(d, t).towards(d.towards(b, t), t);
      points.add(left.towards(right, t));
    }
    return points;
  }

  /** A polygon that has ink where the tip has, as far as {@code reachPx} from it. */
  List<Point> polygon(double reachPx) {
    List<Point> points = new ArrayList<>();
    points.add(side(FIRST, reachPx));
    points.addAll(first(reachPx));
    points.addAll(tip());
    points.addAll(second(reachPx));
    points.add(side(SECOND, reachPx));
    Point first = direction(SECOND, reachPx);
    double inside = Corners.angle(first, direction(FIRST, reachPx));
    double sweep = inside < 0 ? inside + 2 * Math.PI : inside;
    for (int i = 0; i <= CLOSING_STEPS; i++) {
      points.add(apex().plus(first.turned(sweep * i / CLOSING_STEPS).times(3 * reachPx)));
    }
    return points;
  }
}
