package frieze.torch;

import frieze.curve.Bounds;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Puts the paths of a sheet in order: every hole of every copy, then every outline.
 *
 * <p>So each part lies still, held by the sheet, while its holes are cut, and the sheet's skeleton
 * is freed last. An opening that was drawn within an island of another is cut before the other, at
 * every depth, while the island still hangs on all sides. Among holes the nearest comes next that
 * is not a neighbour of the one just cut: at least {@value #COOL_THICKNESSES} thicknesses away, and
 * {@value #COOL_MM} mm, so that heat spreads; if all are neighbours, the nearest. Outlines follow
 * row by row.
 */
final class TorchOrder {
  static final int COOL_THICKNESSES = 5;
  static final double COOL_MM = 12;

  private TorchOrder() {}

  /** A path, and what was drawn around it. */
  private record Waiting(TorchPath path, BitSet around) {
    boolean mustWait(List<Waiting> left) {
      return !around.isEmpty() && left.stream().anyMatch(w -> Nests.isWithin(w.around(), around));
    }
  }

  /** Orders holes, then adds the outlines as they come. */
  static List<TorchPath> of(List<TorchPath> paths, Nests nests, double thicknessMm) {
    List<Waiting> left = new ArrayList<>();
    List<TorchPath> outlines = new ArrayList<>();
    for (TorchPath path : paths) {
      if (path.kind() == TorchPath.Kind.OUTLINE) {
        outlines.add(path);
      } else {
        left.add(new Waiting(path, nests.around(path.pierce())));
      }
    }
    double coolMm = Math.max(COOL_MM, COOL_THICKNESSES * thicknessMm);
    List<TorchPath> ordered = new ArrayList<>();
    Point at = Point.ORIGIN;
    Bounds last = Bounds.EMPTY;
    while (!left.isEmpty()) {
      List<Waiting> ready = left.stream().filter(w -> !w.mustWait(left)).toList();
      Waiting chosen = next(ready, at, last, coolMm);
      left.remove(chosen);
      TorchPath next = chosen.path();
      ordered.add(next);
      at = next.end();
      last = bounds(next);
    }
    ordered.addAll(outlines);
    return ordered;
  }

  private static Waiting next(List<Waiting> ready, Point at, Bounds last, double coolMm) {
    Waiting best = ready.get(0);
    double least = Double.POSITIVE_INFINITY;
    for (Waiting waiting : ready) {
      TorchPath path = waiting.path();
      boolean hot = !last.isEmpty() && gapMm(last, bounds(path)) < coolMm;
      double cost = path.pierce().distance(at) + (hot ? HOT_MM : 0);
      if (cost < least) {
        least = cost;
        best = waiting;
      }
    }
    return best;
  }

  /** More than any sheet is long. */
  private static final double HOT_MM = 1e6;

  private static Bounds bounds(TorchPath path) {
    Bounds bounds = Bounds.of(path.pierce());
    for (TorchPath.Piece piece : path.pieces()) {
      bounds = bounds.with(piece.path().bounds());
    }
    return bounds;
  }

  private static double gapMm(Bounds a, Bounds b) {
    double dx = Math.max(0, Math.max(a.minX() - b.maxX(), b.minX() - a.maxX()));
    double dy = Math.max(0, Math.max(a.minY() - b.maxY(), b.minY() - a.maxY()));
    return Math.sqrt(dx * dx + dy * dy);
  }
}
