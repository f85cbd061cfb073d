package frieze.artwork.mend;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.curve.Tolerances;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Makes one of bare straight lines that run along each other, as drawing programs leave them: they
 * would be cut twice where they overlap, and their ends would not meet their neighbours'.
 *
 * <p>Only lines that were drawn by themselves are looked at, not the sides of outlines. Two that
 * lie on each other over more than the gap, within the tolerance of flattening, become one from the
 * first end to the last. For arcs see {@link ArcOverlaps}.
 */
final class Overlaps {
  /** Comparing more pairs of lines takes too long. */
  private static final long MOST_PAIRS = 20_000_000;

  private static final double BESIDE_MM = Tolerances.DEFAULT.flattenMm();

  private final double leastMm;
  private final List<Mend> mends;

  Overlaps(double gapMm, List<Mend> mends) {
    this.leastMm = Math.max(gapMm, BESIDE_MM);
    this.mends = mends;
  }

  /**
   * A line with its ends in order along its carrier.
   *
   * @param index of the path that it comes from
   */
  private record Stick(int index, boolean forward, Point low, Point high) {
    static Stick of(int index, Line line) {
      boolean forward = ORDER.compare(line.start(), line.end()) <= 0;
      Point low = forward ? line.start() : line.end();
      return new Stick(index, forward, low, forward ? line.end() : line.start());
    }

    double length() {
      return low.distance(high);
    }

    Path path() {
      Line line = forward ? new Line(low, high) : new Line(high, low);
      return new Path(List.of(line), false);
    }
  }

  private static final Comparator<Point> ORDER =
      Comparator.comparingDouble(Point::x).thenComparingDouble(Point::y);

  Artwork apply(Artwork artwork) {
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      boolean lines = piece.fill().isEmpty() && JoinEnds.isBare(piece);
      pieces.add(lines ? piece.withPaths(merged(piece.paths())) : piece);
    }
    return new Artwork(artwork.source(), pieces, artwork.sizeAssumed(), artwork.notes());
  }

  private List<Stick> sticks(List<Path> paths) {
    List<Stick> sticks = new ArrayList<>();
    for (int i = 0; i < paths.size(); i++) {
      Segment first = paths.get(i).segments().get(0);
      boolean alone = !paths.get(i).closed() && paths.get(i).segments().size() == 1;
      if (alone && first instanceof Line line && line.length() > leastMm) {
        sticks.add(Stick.of(i, line));
      }
    }
    sticks.sort(Comparator.comparing(Stick::low, ORDER));
    return sticks;
  }

  private List<Path> merged(List<Path> paths) {
    List<Stick> sticks = sticks(paths);
    List<Path> result = new ArrayList<>(paths);
    boolean[] gone = new boolean[paths.size()];
    long pairs = 0;
    for (int i = 0; i < sticks.size(); i++) {
      for (int k = i + 1; k < sticks.size() && pairs < MOST_PAIRS; k++) {
        pairs++;
        Stick one = sticks.get(i);
        Stick two = sticks.get(k);
        if (two.low().x() > one.high().x()) {
          break;
        }
        if (overlap(one, two)) {
          sticks.set(i, both(one, two));
          sticks.remove(k);
          k--;
          result.set(one.index(), sticks.get(i).path());
          gone[two.index()] = true;
        }
      }
    }
    List<Path> kept = new ArrayList<>();
    for (int i = 0; i < gone.length; i++) {
      if (!gone[i]) {
        kept.add(result.get(i));
      }
    }
    return kept;
  }

  private boolean overlap(Stick one, Stick two) {
    Stick carrier = one.length() >= two.length() ? one : two;
    Stick other = one.length() >= two.length() ? two : one;
    double length = carrier.length();
    Point along = carrier.high().minus(carrier.low()).times(1 / length);
    Point a = other.low().minus(carrier.low());
    Point b = other.high().minus(carrier.low());
    boolean beside = Math.abs(along.cross(a)) <= BESIDE_MM && Math.abs(along.cross(b)) <= BESIDE_MM;
    double shared =
        Math.min(length, Math.max(along.dot(a), along.dot(b)))
            - Math.max(0, Math.min(along.dot(a), along.dot(b)));
    return beside && shared > leastMm;
  }

  private Stick both(Stick one, Stick two) {
    Point high = ORDER.compare(one.high(), two.high()) >= 0 ? one.high() : two.high();
    Point end = ORDER.compare(one.high(), two.high()) >= 0 ? two.high() : one.high();
    mends.add(new Mend(Mend.Kind.OVERLAP, two.low().towards(end, 0.5), BESIDE_MM));
    return new Stick(one.index(), one.forward(), one.low(), high);
  }
}
