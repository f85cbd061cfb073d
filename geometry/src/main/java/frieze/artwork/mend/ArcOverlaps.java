package frieze.artwork.mend;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Arc;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Makes one of bare arcs that run along each other on the same circle, and takes out those that lie
 * on a circle which is drawn as well.
 *
 * <p>As for straight lines: only arcs that were drawn by themselves are looked at; two on circles
 * within the tolerance of flattening that share more than the gap become one, on the circle of the
 * longer. Arcs that together go all the way round become a circle.
 */
final class ArcOverlaps {
  private static final double FULL_TURN = 2 * Math.PI;
  private static final double BESIDE_MM = Tolerances.DEFAULT.flattenMm();

  /** Stands where a path was that another has taken in; known by itself. */
  private static final Path GONE = Path.circle(Point.ORIGIN, 1);

  /** Comparing more pairs of arcs takes too long. */
  private static final long MOST_PAIRS = 20_000_000;

  private final double leastMm;
  private final List<Mend> mends;
  private long pairs;

  ArcOverlaps(double gapMm, List<Mend> mends) {
    this.leastMm = Math.max(gapMm, BESIDE_MM);
    this.mends = mends;
  }

  /**
   * An arc, counter-clockwise.
   *
   * @param index of the path that it comes from; below 0 for a circle of another piece
   */
  private record Bow(int index, Point centre, double radius, double from, double sweep) {
    static Bow of(int index, Arc arc) {
      double start = arc.startAngleRad() + Math.min(0, arc.sweepRad());
      return new Bow(index, arc.centre(), arc.radius(), start, Math.abs(arc.sweepRad()));
    }

    boolean full() {
      return sweep >= FULL_TURN;
    }

    double length() {
      return radius * sweep;
    }

    Path path() {
      return full()
          ? Path.circle(centre, radius)
          : new Path(List.of(Arc.polar(centre, radius, from, sweep)), false);
    }
  }

  Artwork apply(Artwork artwork) {
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      boolean lines = piece.fill().isEmpty() && JoinEnds.isBare(piece);
      pieces.add(lines ? piece.withPaths(merged(piece, circles(artwork, piece))) : piece);
    }
    pieces.removeIf(p -> p.paths().isEmpty());
    return new Artwork(artwork.source(), pieces, artwork.sizeAssumed(), artwork.notes());
  }

  /** The circles that were drawn beside the lines of a piece, on the same layer. */
  private static List<Bow> circles(Artwork artwork, Piece lines) {
    return artwork.pieces().stream()
        .filter(p -> !p.equals(lines) && JoinEnds.isBare(p) && p.label().equals(lines.label()))
        .flatMap(p -> p.paths().stream())
        .filter(Path::closed)
        .flatMap(p -> bow(-1, p).stream())
        .toList();
  }

  private static List<Bow> bow(int index, Path path) {
    return path.segments().size() == 1 && path.segments().get(0) instanceof Arc arc
        ? List.of(Bow.of(index, arc))
        : List.of();
  }

  private List<Path> merged(Piece piece, List<Bow> circles) {
    List<Path> result = new ArrayList<>(piece.paths());
    List<Bow> bows = new ArrayList<>(circles);
    for (int i = 0; i < result.size(); i++) {
      bows.addAll(bow(i, result.get(i)));
    }
    bows.sort(Comparator.comparingDouble(Bow::radius));
    for (int i = 0; i < bows.size(); i++) {
      int k = i + 1;
      while (k < bows.size() && bows.get(k).radius() - bows.get(i).radius() <= BESIDE_MM) {
        pairs++;
        if (pairs > MOST_PAIRS) {
          return result.stream().filter(ArcOverlaps::stays).toList();
        }
        if (shared(bows.get(i), bows.get(k)) > leastMm && !bothCircles(bows.get(i), bows.get(k))) {
          Bow one = both(bows.get(i), bows.get(k), result);
          bows.remove(k);
          bows.set(i, one);
          k = i + 1; // What has grown may now reach one that it did not.
        } else {
          k++;
        }
      }
    }
    return result.stream().filter(ArcOverlaps::stays).toList();
  }

  @SuppressWarnings("ReferenceEquality") // a path of the drawing may equal the mark
  private static boolean stays(Path path) {
    return path != GONE;
  }

  private static boolean bothCircles(Bow one, Bow two) {
    return one.index() < 0 && two.index() < 0;
  }

  /** By how much the second starts behind the first. */
  private static double behind(Bow one, Bow two) {
    double angle = two.from() - one.from();
    return angle - FULL_TURN * Math.floor(angle / FULL_TURN);
  }

  private static double shared(Bow one, Bow two) {
    double apart = one.centre().distance(two.centre()) + Math.abs(one.radius() - two.radius());
    if (apart > BESIDE_MM) {
      return 0;
    }
    double start = behind(one, two);
    double end = start + two.sweep();
    double first = Math.max(0, Math.min(one.sweep(), end) - start);
    double second = Math.max(0, Math.min(one.sweep(), end - FULL_TURN));
    return one.radius() * (first + second);
  }

  private Bow both(Bow one, Bow two, List<Path> result) {
    Bow carrier = one.length() >= two.length() ? one : two;
    double start = behind(one, two);
    boolean within = start < one.sweep();
    double from = within ? one.from() : two.from();
    double sweep =
        within
            ? Math.max(one.sweep(), start + two.sweep())
            : Math.max(two.sweep(), FULL_TURN - start + one.sweep());
    double first = within ? start : 0;
    double last = within ? Math.min(one.sweep(), start + two.sweep()) : one.sweep();
    double middle = one.from() + (first + Math.min(last, one.sweep())) / 2;
    mends.add(
        new Mend(
            Mend.Kind.OVERLAP, Point.polar(carrier.centre(), carrier.radius(), middle), BESIDE_MM));
    int index = Math.min(one.index(), two.index());
    int other = Math.max(one.index(), two.index());
    boolean full = sweep >= FULL_TURN || (within && start + two.sweep() >= FULL_TURN);
    Bow both = new Bow(index, carrier.centre(), carrier.radius(), from, full ? FULL_TURN : sweep);
    result.set(other, GONE);
    if (index >= 0) {
      result.set(index, both.path());
    }
    return both;
  }
}
