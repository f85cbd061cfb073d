package frieze.layout;

import frieze.curve.ArcLength;
import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;

/**
 * Two lines of a drawing with a band of motifs between them; both are open, or both are closed.
 *
 * <p>Open lines run from left to right, closed ones counter-clockwise.
 *
 * <p><em>Approximation:</em> the lines are taken as chords, 5 µm off at most.
 */
final class LinePair {
  private static final double FLATTEN_MM = 0.005;

  /** Lengths that differ by less are taken as equal. */
  private static final double EQUAL_MM = 1e-5;

  /** Each look halves what is left to mend, or better. */
  private static final int LOOKS = 40;

  private final ArcLength one;
  private final ArcLength other;
  private final List<List<Point>> chords;

  private LinePair(Path one, Path other) {
    this.one = ArcLength.of(one);
    this.other = ArcLength.of(other);
    this.chords = List.of(Band.chords(one), Band.chords(other));
  }

  /**
   * Pairs two lines.
   *
   * @throws BadInputException if one is closed and the other is not
   */
  static LinePair of(Path one, Path other, SourceSpan where) {
    if (one.closed() != other.closed()) {
      throw BadInputException.of(
          LayoutCode.NO_LINE,
          where,
          "one of the two lines to go between is closed, the other is open",
          "both must be open, or both closed, one inside the other");
    }
    if (one.closed()) {
      Path first = counterClockwise(one);
      return new LinePair(first, from(counterClockwise(other), first.start()));
    }
    double same = one.start().distance(other.start()) + one.end().distance(other.end());
    double crossed = one.start().distance(other.end()) + one.end().distance(other.start());
    Path beside = same <= crossed ? other : other.reversed();
    double right = one.end().x() - one.start().x() + beside.end().x() - beside.start().x();
    return right < 0 ? new LinePair(one.reversed(), beside.reversed()) : new LinePair(one, beside);
  }

  boolean isClosed() {
    return one.isClosed();
  }

  /** The middle between the places at the same share of both lengths. */
  Point between(double share) {
    return one.at(share * one.lengthMm())
        .point()
        .towards(other.at(share * other.lengthMm()).point(), 0.5);
  }

  /** The place near another one that is equally far from both lines. */
  Point midwayFrom(Point start) {
    Point p = start;
    for (int i = 0; i < LOOKS; i++) {
      Point a = foot(chords.get(0), p);
      Point b = foot(chords.get(1), p);
      double apart = a.distance(b);
      if (apart <= EQUAL_MM) {
        return p;
      }
      double move = (p.distance(b) - p.distance(a)) / 2;
      p = p.plus(b.minus(a).times(move / apart));
    }
    return p;
  }

  /** To the nearer of the two lines. */
  double distance(Point p) {
    return Math.min(p.distance(foot(chords.get(0), p)), p.distance(foot(chords.get(1), p)));
  }

  /**
   * Requires that motifs lie between the lines.
   *
   * @throws BadInputException if one does not, with its number and place
   */
  void requireClear(List<Placement> placed, Hull motif, double insetMm, SourceSpan where) {
    String fault =
        insetMm == 0
            ? " reaches over a line that it goes between"
            : " comes nearer to a line that it goes between than the inset of "
                + Amounts.length(insetMm);
    OutOfPlace.refuse(
        placed,
        motif,
        hull -> isClear(hull, insetMm),
        where,
        fault,
        "make the motif or the inset smaller, or let it `swell`");
  }

  boolean isClear(Hull hull, double insetMm) {
    return chords.stream().allMatch(line -> Band.isClear(hull, line, insetMm));
  }

  private static Point foot(List<Point> line, Point p) {
    Point best = line.get(0);
    for (int i = 1; i < line.size(); i++) {
      Line piece = new Line(line.get(i - 1), line.get(i));
      Point foot = piece.at(piece.nearestAt(p));
      best = foot.distance(p) < best.distance(p) ? foot : best;
    }
    return best;
  }

  private static Path counterClockwise(Path path) {
    List<Point> points = Band.chords(path);
    double twice = 0;
    for (int i = 1; i < points.size(); i++) {
      twice += points.get(i - 1).cross(points.get(i));
    }
    return twice < 0 ? path.reversed() : path;
  }

  /** The same closed line, begun at its place nearest to a point. */
  private static Path from(Path path, Point p) {
    List<Point> points = Flattener.flatten(path, FLATTEN_MM);
    int nearest = 0;
    for (int i = 1; i < points.size(); i++) {
      nearest = points.get(i).distance(p) < points.get(nearest).distance(p) ? i : nearest;
    }
    List<Point> turned = new ArrayList<>(points.subList(nearest, points.size()));
    turned.addAll(points.subList(0, nearest));
    return Path.polyline(turned, true);
  }
}
