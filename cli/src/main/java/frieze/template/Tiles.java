package frieze.template;

import frieze.curve.Bounds;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * How a large drawing is cut into pages that overlap.
 *
 * <p><em>Guarantees:</em> every point of the drawing lies on a page; two neighbours share a strip
 * of {@link #OVERLAP_MM}; each strip has two register crosses that both pages show.
 *
 * @param start the lower left corner of the area that all pages together show
 * @param areaWidthMm what one page shows, along X
 * @param areaHeightMm the same along Y
 */
record Tiles(
    int columns,
    int rows,
    Point start,
    double areaWidthMm,
    double areaHeightMm,
    double pageWidthMm,
    double pageHeightMm) {
  /** What usual printers can't print at the edges, and room for a line of text. */
  static final double MARGIN_MM = 12;

  static final double OVERLAP_MM = 15;

  /** Finds the way of the paper that needs the fewer pages; the longer side along X if equal. */
  static Tiles of(Bounds drawing, Paper paper) {
    Tiles across = of(drawing, paper.heightMm(), paper.widthMm());
    Tiles upright = of(drawing, paper.widthMm(), paper.heightMm());
    return upright.count() < across.count() ? upright : across;
  }

  private static Tiles of(Bounds drawing, double pageWidthMm, double pageHeightMm) {
    double w = pageWidthMm - 2 * MARGIN_MM;
    double h = pageHeightMm - 2 * MARGIN_MM;
    int columns = needed(drawing.width(), w);
    int rows = needed(drawing.height(), h);
    Point middle = drawing.centre();
    Point start =
        new Point(middle.x() - together(columns, w) / 2, middle.y() - together(rows, h) / 2);
    return new Tiles(columns, rows, start, w, h, pageWidthMm, pageHeightMm);
  }

  private static int needed(double lengthMm, double areaMm) {
    return Math.max(1, (int) Math.ceil((lengthMm - OVERLAP_MM) / (areaMm - OVERLAP_MM)));
  }

  private static double together(int count, double areaMm) {
    return count * (areaMm - OVERLAP_MM) + OVERLAP_MM;
  }

  int count() {
    return columns * rows;
  }

  /** What a page shows of the drawing; rows are counted from the top. */
  Bounds window(int row, int column) {
    double x = start.x() + column * (areaWidthMm - OVERLAP_MM);
    double y = start.y() + (rows - 1 - row) * (areaHeightMm - OVERLAP_MM);
    return new Bounds(x, y, x + areaWidthMm, y + areaHeightMm);
  }

  /** The name of a page: a letter for its row from the top, a number for its column. */
  static String name(int row, int column) {
    String letters = row < 26 ? String.valueOf((char) ('A' + row)) : "A" + name(row - 26, 0);
    return letters + (column + 1);
  }

  /** The register crosses, in the frame of the drawing: in the middle of the strips. */
  List<Point> crosses() {
    List<Point> crosses = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        Bounds b = window(row, column);
        for (double share : new double[] {0.2, 0.8}) {
          if (column + 1 < columns) {
            crosses.add(new Point(b.maxX() - OVERLAP_MM / 2, b.minY() + share * areaHeightMm));
          }
          if (row + 1 < rows) {
            crosses.add(new Point(b.minX() + share * areaWidthMm, b.minY() + OVERLAP_MM / 2));
          }
        }
      }
    }
    return crosses;
  }
}
