package frieze.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.locationtech.jts.geom.Coordinate;

/**
 * Cuts the parallel curves of a region where they cross, keeps the pieces that are as far from the
 * region's boundary as they should, and makes rings of them.
 *
 * <p>From one crossing to the next a curve is either all as far from the boundary as it should be,
 * or all too near to some other part of it: where it comes to be too near, it meets that part's
 * curve. So one point of each piece tells; a few are asked for, because where parts of the region
 * or of what surrounds it are as thin as nothing, they may differ.
 */
final class OffsetPieces {
  /** How many more places of a piece that is kept are looked at. */
  private static final int MORE_PLACES = 4;

  private final List<Coordinate[]> curves;
  private final Far far;

  /** The first edge of each curve, counted through all. */
  private final int[] firstEdge;

  private boolean sure = true;
  private final List<Piece> pieces = new ArrayList<>();

  /** A stretch of a curve from one crossing to the next, with both ends. */
  private static final class Piece {
    final List<Coordinate> points;
    final int from;
    final int to;
    final boolean kept;
    boolean used;

    Piece(List<Coordinate> points, int from, int to, boolean kept) {
      this.points = points;
      this.from = from;
      this.to = to;
      this.kept = kept;
    }
  }

  /** One passage of a curve through a crossing. */
  private record Stop(int edge, double share, int crossing, Coordinate at) {}

  /** Tells whether a place is far enough from the region's boundary. */
  @FunctionalInterface
  interface Far {
    boolean isFar(double x, double y);
  }

  OffsetPieces(List<Coordinate[]> curves, Far far) {
    this.curves = curves;
    this.far = far;
    this.firstEdge = new int[curves.size() + 1];
    for (int c = 0; c < curves.size(); c++) {
      firstEdge[c + 1] = firstEdge[c] + curves.get(c).length - 1;
    }
  }

  /** The rings, the area on their left; null if it is not certain how pieces belong together. */
  @Nullable List<Coordinate[]> rings() {
    OffsetCrossings found = new OffsetCrossings(curves);
    if (!found.isSure()) {
      return null;
    }
    List<OffsetCrossings.Crossing> crossings = found.list();
    List<Coordinate[]> rings = new ArrayList<>();
    if (!cut(crossings, rings) || !sure) {
      return null;
    }
    Piece[] out = new Piece[crossings.size()];
    int[] kept = new int[crossings.size()];
    for (Piece piece : pieces) {
      if (piece.kept) {
        kept[piece.to]--;
        kept[piece.from]++;
        if (out[piece.from] != null) {
          return null;
        }
        out[piece.from] = piece;
      }
    }
    for (int balance : kept) {
      if (balance != 0) {
        return null;
      }
    }
    for (Piece piece : pieces) {
      if (piece.kept && !piece.used) {
        rings.add(follow(piece, out));
      }
    }
    return rings;
  }

  /** Cuts the curves into pieces; those that cross nothing are rings already. */
  private boolean cut(List<OffsetCrossings.Crossing> crossings, List<Coordinate[]> rings) {
    Stop[] stops = new Stop[2 * crossings.size()];
    for (int k = 0; k < crossings.size(); k++) {
      OffsetCrossings.Crossing c = crossings.get(k);
      stops[2 * k] = new Stop(c.edge1(), c.share1(), k, c.at());
      stops[2 * k + 1] = new Stop(c.edge2(), c.share2(), k, c.at());
    }
    Arrays.sort(
        stops,
        (a, b) ->
            a.edge() != b.edge()
                ? Integer.compare(a.edge(), b.edge())
                : Double.compare(a.share(), b.share()));
    int at = 0;
    for (int c = 0; c < curves.size(); c++) {
      int from = at;
      while (at < stops.length && stops[at].edge() < firstEdge[c + 1]) {
        at++;
      }
      if (at == from) {
        Coordinate[] curve = curves.get(c);
        if (isFar(Arrays.asList(curve))) {
          rings.add(curve);
        }
      } else if (!cut(c, Arrays.asList(stops).subList(from, at))) {
        return false;
      }
    }
    return true;
  }

  private boolean cut(int curve, List<Stop> stops) {
    for (int k = 0; k < stops.size(); k++) {
      Stop from = stops.get(k);
      Stop to = stops.get((k + 1) % stops.size());
      if (stops.size() > 1
          && from.at().distance(to.at()) <= OffsetCrossings.NEAR_MM
          && from.crossing() != to.crossing()) {
        return false;
      }
      List<Coordinate> points = between(curve, from, to);
      pieces.add(new Piece(points, from.crossing(), to.crossing(), isFar(points)));
    }
    return true;
  }

  private List<Coordinate> between(int curve, Stop from, Stop to) {
    Coordinate[] all = curves.get(curve);
    int n = all.length - 1;
    int edges = to.edge() - from.edge();
    if (edges < 0 || (edges == 0 && to.share() <= from.share())) {
      edges += n;
    }
    List<Coordinate> points = new ArrayList<>(edges + 2);
    points.add(from.at());
    int start = from.edge() - firstEdge[curve];
    for (int k = 1; k <= edges; k++) {
      points.add(all[(start + k) % n]);
    }
    points.add(to.at());
    return points;
  }

  /** Whether a piece is far enough; if that differs from place to place, nothing is certain. */
  private boolean isFar(List<Coordinate> piece) {
    double whole = 0;
    for (int i = 1; i < piece.size(); i++) {
      whole += length(piece, i);
    }
    boolean isFar = isFar(piece, whole / 2);
    for (int k = 1; isFar && k <= MORE_PLACES; k++) {
      sure &= isFar(piece, whole * k / (MORE_PLACES + 1));
    }
    return isFar;
  }

  /** The length of an edge of a piece. */
  private static double length(List<Coordinate> piece, int edge) {
    double dx = piece.get(edge).x - piece.get(edge - 1).x;
    double dy = piece.get(edge).y - piece.get(edge - 1).y;
    return Math.sqrt(dx * dx + dy * dy);
  }

  private boolean isFar(List<Coordinate> piece, double along) {
    double rest = along;
    int i = 1;
    double step = length(piece, 1);
    while (step < rest && i + 1 < piece.size()) {
      rest -= step;
      i++;
      step = length(piece, i);
    }
    Coordinate a = piece.get(i - 1);
    Coordinate b = piece.get(i);
    double share = step > 0 ? rest / step : 0;
    return far.isFar(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y));
  }

  private static Coordinate[] follow(Piece first, Piece[] out) {
    List<Coordinate> ring = new ArrayList<>();
    Piece at = first;
    while (!at.used) {
      at.used = true;
      ring.addAll(at.points.subList(0, at.points.size() - 1));
      at = out[at.to];
    }
    ring.add(ring.get(0).copy());
    return ring.toArray(Coordinate[]::new);
  }
}
