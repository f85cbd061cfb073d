package frieze.torch;

import frieze.curve.Point;
import frieze.design.TorchWay;
import java.util.ArrayList;
import java.util.List;

/**
 * Where copies of a panel lie on a sheet: side by side in rows, the first where the panel lies.
 *
 * <p>Nesting of unlike parts would give such a list of places too, with angles.
 */
final class SheetRows {
  private SheetRows() {}

  /** The shift of each copy from the first, row by row. */
  static List<Point> places(TorchWay.Rows rows, double lengthMm, double heightMm) {
    List<Point> places = new ArrayList<>();
    for (int across = 0; across < rows.across(); across++) {
      for (int along = 0; along < rows.along(); along++) {
        places.add(
            new Point(along * (lengthMm + rows.gapMm()), across * (heightMm + rows.gapMm())));
      }
    }
    return places;
  }
}
