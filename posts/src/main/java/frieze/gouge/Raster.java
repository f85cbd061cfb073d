package frieze.gouge;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.field.Profile;
import frieze.field.Window;
import frieze.motion.Position;

/**
 * Distances at the cell centres of a rectangle of a field's grid, which may reach beyond the field.
 *
 * @param column the first column, possibly negative
 * @param row the first row, possibly negative
 */
record Raster(int column, int row, int columns, int rows, double cellMm) {

  /**
   * The cells of {@code field} columns and rows whose centres lie in a rectangle, grown by cells.
   */
  static Raster of(Bounds rectangle, double cellMm, int grownBy) {
    int left = (int) Math.ceil(rectangle.minX() / cellMm - 0.5) - grownBy;
    int front = (int) Math.ceil(rectangle.minY() / cellMm - 0.5) - grownBy;
    int right = (int) Math.floor(rectangle.maxX() / cellMm - 0.5) + grownBy;
    int back = (int) Math.floor(rectangle.maxY() / cellMm - 0.5) + grownBy;
    return new Raster(
        left, front, Math.max(0, right - left + 1), Math.max(0, back - front + 1), cellMm);
  }

  boolean isEmpty() {
    return columns == 0 || rows == 0;
  }

  int size() {
    return columns * rows;
  }

  double x(int i) {
    return (column + i + 0.5) * cellMm;
  }

  double y(int j) {
    return (row + j + 0.5) * cellMm;
  }

  private Bounds bounds() {
    return new Bounds(
        column * cellMm, row * cellMm, (column + columns) * cellMm, (row + rows) * cellMm);
  }

  /** The edges of a wish that are within its reach of some cell. */
  Edges edges(Wish wish) {
    return wish.edges().near(bounds(), wish.reachMm());
  }

  /** Lowers numbers to the distance of their cells from a place, up to a distance and a bit. */
  void lowerToDistances(Point place, double farthestMm, float[] distances) {
    Raster around = of(Bounds.of(place).grown(farthestMm), cellMm, 1);
    int lastRow = Math.min(rows, around.row + around.rows - row);
    int lastColumn = Math.min(columns, around.column + around.columns - column);
    for (int j = Math.max(0, around.row - row); j < lastRow; j++) {
      for (int i = Math.max(0, around.column - column); i < lastColumn; i++) {
        double distance = place.distance(new Point(x(i), y(j)));
        distances[j * columns + i] = (float) Math.min(distances[j * columns + i], distance);
      }
    }
  }

  /**
   * The signed distance from a wish's edges, positive inside, cut off at its reach. Distances are
   * the heights that a cone of slope 1 leaves when it runs along the edges.
   */
  float[] signedDistances(Wish wish) {
    double reach = wish.reachMm();
    Edges near = edges(wish);
    Profile cone = new Profile(reach, 0, 0, 0, 1);
    Window cells =
        Window.of(new Position(column * cellMm, row * cellMm, reach), columns, rows, cellMm);
    for (int e = 0; e < near.count(); e++) {
      boolean joined = e > 0 && near.end(e - 1).equals(near.start(e));
      cells.lower(new Position(near.start(e), 0), new Position(near.end(e), 0), cone, joined);
    }
    float[] distances = cells.heights();
    negateOutside(distances, insideFlags(wish));
    return distances;
  }

  private static void negateOutside(float[] distances, boolean[] inside) {
    for (int i = 0; i < distances.length; i++) {
      distances[i] = inside[i] ? distances[i] : -distances[i];
    }
  }

  /** Counts edges to the left of each cell, row by row; lines enclose nothing. */
  private boolean[] insideFlags(Wish wish) {
    boolean[] inside = new boolean[size()];
    if (!wish.enclosing()) {
      return inside;
    }
    Edges edges = wish.outline();
    for (int e = 0; e < edges.count(); e++) {
      // A row more on both sides: an end on a row's centre line may round to either, and the edge
      // itself knows whether it crosses.
      int first = (int) Math.max(0, Math.ceil(edges.lowY(e) / cellMm - 0.5) - row - 1);
      int last = (int) Math.min(rows - 1.0, Math.floor(edges.highY(e) / cellMm - 0.5) - row + 1);
      for (int j = first; j <= last; j++) {
        if (edges.crosses(e, y(j))) {
          double from = Math.ceil(edges.crossingX(e, y(j)) / cellMm - 0.5) - column;
          if (from < columns) {
            inside[j * columns + (int) Math.max(0, from)] ^= true;
          }
        }
      }
    }
    for (int j = 0; j < rows; j++) {
      for (int i = 1; i < columns; i++) {
        inside[j * columns + i] ^= inside[j * columns + i - 1];
      }
    }
    return inside;
  }

  /**
   * The distance from each cell to the nearest marked one, exact.
   *
   * <p>Source: Felzenszwalb and Huttenlocher, "Distance transforms of sampled functions", Theory of
   * Computing 8 (2012), from memory.
   */
  float[] distancesFrom(boolean[] marked) {
    double far = 4.0 * (columns + rows) * (columns + rows);
    double[] squares = new double[size()];
    Envelope envelope = new Envelope(Math.max(columns, rows));
    for (int i = 0; i < columns; i++) {
      for (int j = 0; j < rows; j++) {
        envelope.values[j] = marked[j * columns + i] ? 0 : far;
      }
      envelope.transform(rows);
      for (int j = 0; j < rows; j++) {
        squares[j * columns + i] = envelope.result[j];
      }
    }
    float[] distances = new float[size()];
    for (int j = 0; j < rows; j++) {
      System.arraycopy(squares, j * columns, envelope.values, 0, columns);
      envelope.transform(columns);
      for (int i = 0; i < columns; i++) {
        double square = envelope.result[i];
        distances[j * columns + i] =
            square >= far ? Float.POSITIVE_INFINITY : (float) (Math.sqrt(square) * cellMm);
      }
    }
    return distances;
  }

  /** The lower envelope of parabolas, one on each value. */
  private static final class Envelope {
    private final double[] values;
    private final double[] result;
    private final int[] apex;
    private final double[] from;

    Envelope(int most) {
      values = new double[most];
      result = new double[most];
      apex = new int[most];
      from = new double[most + 1];
    }

    void transform(int n) {
      int k = 0;
      apex[0] = 0;
      from[0] = Double.NEGATIVE_INFINITY;
      for (int q = 1; q < n; q++) {
        double s = meeting(q, apex[k]);
        while (k > 0 && s <= from[k]) {
          k--;
          s = meeting(q, apex[k]);
        }
        k++;
        apex[k] = q;
        from[k] = s;
      }
      int last = k;
      k = 0;
      for (int q = 0; q < n; q++) {
        while (k < last && from[k + 1] < q) {
          k++;
        }
        double d = q - apex[k];
        result[q] = d * d + values[apex[k]];
      }
    }

    private double meeting(int q, int p) {
      return (values[q] + (double) q * q - values[p] - (double) p * p) / (2.0 * (q - p));
    }
  }
}
