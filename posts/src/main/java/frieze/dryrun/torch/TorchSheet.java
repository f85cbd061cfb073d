package frieze.dryrun.torch;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.dryrun.scene.GridPieces;
import frieze.dryrun.scene.IntList;
import frieze.dryrun.scene.NearLines;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The sheet around the parts as a field of small squares, each with its distance to the nearest
 * cut: what stands for a kerf is what is further away than half of it.
 *
 * <p><em>Approximation:</em> squares of a twelfth of the kerf, larger on large sheets: webs thinner
 * than a square may be taken for burnt.
 */
final class TorchSheet {
  private static final int FINEST = 12;
  private static final double MOST_SQUARES = 8e6;
  private static final double MARGIN_KERFS = 4;

  /** Kerfs up to this many times the stated one are asked for. */
  static final double WIDEST = 1.2;

  private final double x0;
  private final double y0;
  private final double squareMm;
  private final int columns;
  private final int rows;
  private final float[] away;

  TorchSheet(List<Region> parts, List<TorchRun> runs, double kerfMm) {
    Bounds all = Bounds.EMPTY;
    for (Region part : parts) {
      all = all.with(part.bounds());
    }
    for (TorchRun run : runs) {
      for (double[] c : run.chords) {
        all = all.with(new Point(c[0], c[1])).with(new Point(c[2], c[3]));
      }
    }
    all = all.grown(MARGIN_KERFS * kerfMm);
    double least = Math.sqrt(all.width() * all.height() / MOST_SQUARES);
    squareMm = Math.max(kerfMm / FINEST, least);
    x0 = all.minX();
    y0 = all.minY();
    columns = (int) Math.ceil(all.width() / squareMm);
    rows = (int) Math.ceil(all.height() / squareMm);
    away = new float[columns * rows];
    Arrays.fill(away, Float.MAX_VALUE);
    for (TorchRun run : runs) {
      for (double[] chord : run.chords) {
        stamp(chord, kerfMm * WIDEST / 2 + squareMm);
      }
    }
  }

  private void stamp(double[] l, double radius) {
    int fromColumn = clamp((Math.min(l[0], l[2]) - radius - x0) / squareMm, columns);
    int toColumn = clamp((Math.max(l[0], l[2]) + radius - x0) / squareMm, columns);
    int fromRow = clamp((Math.min(l[1], l[3]) - radius - y0) / squareMm, rows);
    int toRow = clamp((Math.max(l[1], l[3]) + radius - y0) / squareMm, rows);
    for (int r = fromRow; r <= toRow; r++) {
      for (int c = fromColumn; c <= toColumn; c++) {
        int at = r * columns + c;
        away[at] =
            Math.min(
                away[at],
                (float)
                    NearLines.distance(l, x0 + (c + 0.5) * squareMm, y0 + (r + 0.5) * squareMm));
      }
    }
  }

  private static int clamp(double at, int size) {
    return (int) Math.max(0, Math.min(size - 1, Math.floor(at)));
  }

  /** The pieces that a kerf leaves: a number for each square, 0 for cut away, 1 for the sheet. */
  int[] pieces(double kerfMm) {
    float half = (float) (kerfMm / 2);
    boolean[] stands = new boolean[away.length];
    for (int at = 0; at < stands.length; at++) {
      stands[at] = away[at] > half;
    }
    return GridPieces.of(stands, columns, rows);
  }

  /** The squares of an area, row by row, by crossing its edges (even-odd). */
  int[] squares(Region area) {
    List<double[]> edges = edges(area);
    IntList inside = new IntList();
    Bounds b = area.bounds();
    int from = clamp((b.minY() - y0) / squareMm, rows);
    int to = clamp((b.maxY() - y0) / squareMm, rows);
    List<List<double[]>> byRow = byRow(edges);
    for (int r = from; r <= to; r++) {
      double y = y0 + (r + 0.5) * squareMm;
      double[] cross =
          byRow.get(r).stream()
              .filter(e -> (e[1] <= y) != (e[3] <= y))
              .mapToDouble(e -> e[0] + (e[2] - e[0]) * (y - e[1]) / (e[3] - e[1]))
              .sorted()
              .toArray();
      for (int k = 0; k + 1 < cross.length; k += 2) {
        int first = (int) Math.ceil((cross[k] - x0) / squareMm - 0.5);
        int last = (int) Math.floor((cross[k + 1] - x0) / squareMm - 0.5);
        for (int c = Math.max(0, first); c <= Math.min(columns - 1, last); c++) {
          inside.add(r * columns + c);
        }
      }
    }
    return inside.toArray();
  }

  private List<List<double[]>> byRow(List<double[]> edges) {
    List<List<double[]>> byRow = new ArrayList<>();
    for (int r = 0; r < rows; r++) {
      byRow.add(new ArrayList<>());
    }
    for (double[] e : edges) {
      int low = clamp((Math.min(e[1], e[3]) - y0) / squareMm, rows);
      int high = clamp((Math.max(e[1], e[3]) - y0) / squareMm, rows);
      for (int r = low; r <= high; r++) {
        byRow.get(r).add(e);
      }
    }
    return byRow;
  }

  /** The edges of an area, which lies on their left; four numbers each. */
  static List<double[]> edges(Region area) {
    List<double[]> edges = new ArrayList<>();
    for (Ring ring : area.rings()) {
      List<Point> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Point a = p.get(i);
        Point b = p.get((i + 1) % p.size());
        edges.add(new double[] {a.x(), a.y(), b.x(), b.y()});
      }
    }
    return edges;
  }

  /** The square at a place. */
  int square(Point at) {
    return clamp((at.y() - y0) / squareMm, rows) * columns
        + clamp((at.x() - x0) / squareMm, columns);
  }

  double squareMm() {
    return squareMm;
  }

  Point place(int square) {
    int column = square % columns;
    int row = square / columns;
    return new Point(x0 + (column + 0.5) * squareMm, y0 + (row + 0.5) * squareMm);
  }
}
