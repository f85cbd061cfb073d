package frieze.build;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.field.DepthMap;
import frieze.job.Job;
import frieze.screw.ScrewCode;
import frieze.screw.Screws;
import frieze.shop.Flip;
import frieze.shop.Stock;
import java.util.List;
import java.util.Optional;

/**
 * Compares what the dry runs of a back and of its face leave of one stock: the depths of both are
 * summed, cell by cell. This knows nothing of what was wanted.
 *
 * <p><em>Approximation:</em> a cell holds the deepest within it; walls of both sides are taken to
 * reach up to a cell farther.
 */
public final class BothFaces {
  /** What a cut may be deeper than asked for: a cell's rounding. */
  private static final double ROUNDING_MM = 0.05;

  private BothFaces() {}

  /**
   * Checks each face that follows its back.
   *
   * @throws frieze.diagnostic.BadInputException if less wood is left than must be, or less of a tab
   *     than was asked for
   */
  static void check(Job job, List<BuiltPanel> built) {
    Diagnostics found = new Diagnostics();
    for (int i = 1; i < built.size(); i++) {
      if (job.panels().get(i - 1).isBack()) {
        check(job.panels().get(i), built.get(i - 1), built.get(i), found);
      }
    }
    found.throwIfErrors();
  }

  private static void check(
      Job.PanelJob face, BuiltPanel back, BuiltPanel front, Diagnostics found) {
    Optional<DepthMap> above = front.panel().depths();
    Optional<DepthMap> below = back.panel().depths();
    if (above.isEmpty() || below.isEmpty()) {
      return;
    }
    Flip flip = face.flip().orElseThrow();
    new TabsBothFaces(front.panel(), back.panel(), flip, face.stock(), "back").check(found);
    new TabsBothFaces(back.panel(), front.panel(), flip, face.stock(), "front").check(found);
    double leave = face.screws().map(Screws::pilot).map(Screws.Pilot::leaveMm).orElse(0.0);
    Deepest deepest = deepest(above.get(), below.get(), flip, face.stock());
    double left = face.stock().thinnestMm() - deepest.depthMm();
    if (left < leave - ROUNDING_MM || left <= 0) {
      Point p = front.panel().setup().stockFromPanel().inverse().affine().apply(deepest.onStock());
      found.error(
          ScrewCode.THROUGH_TOGETHER,
          face.where(),
          "the front and the back of \""
              + face.name()
              + "\" are cut "
              + Amounts.length(deepest.depthMm())
              + " deep together at "
              + Amounts.place(p.x(), p.y())
              + " from the front, in a board "
              + Amounts.length(face.stock().thinnestMm())
              + " thick where it is thinnest"
              + (leave > 0 ? "; " + Amounts.length(leave) + " must stay" : ""),
          "cut one of them less deep, or elsewhere");
    }
  }

  /** The place where least wood is left. */
  public record Deepest(double depthMm, Point onStock) {}

  /** Sums depths where both faces are cut, but not where one of them alone goes through. */
  public static Deepest deepest(DepthMap front, DepthMap back, Flip flip, Stock stock) {
    Affine map = flip.turned(stock.lengthMm(), stock.widthMm());
    double through = stock.thinnestMm() - ROUNDING_MM;
    Deepest most = new Deepest(0, Point.ORIGIN);
    for (int row = 0; row < front.rows(); row++) {
      for (int column = 0; column < front.columns(); column++) {
        float one = front.depthMm(column, row);
        if (one <= 0 || one >= through) {
          continue;
        }
        double cell = front.cellMm();
        Point at = new Point((column + 0.5) * cell, (row + 0.5) * cell);
        Point turned = map.apply(at);
        int otherColumn = index(turned.x(), cell, back.columns());
        int otherRow = index(turned.y(), cell, back.rows());
        float other = back.depthMm(otherColumn, otherRow);
        if (other > 0 && other < through && one + other > most.depthMm()) {
          most = new Deepest(one + other, at);
        }
      }
    }
    return most;
  }

  static int index(double mm, double cell, int count) {
    return Math.max(0, Math.min(count - 1, (int) (mm / cell)));
  }
}
