package frieze.torch;

import frieze.curve.Point;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;

/** Says what a person should know of a cut. */
final class Notes {
  private static final double ROUNDING_MM = 0.05;

  private Notes() {}

  /** Warns of a pierce that is nearer to the part than two kerfs. */
  static void nearPierce(String name, LeadFinder.Lead lead, Work.TorchCut work, Diagnostics found) {
    double wanted = Math.min(work.torch().goodPierceMm(), 2 * work.torch().kerfMm());
    if (lead.pierceMm() < wanted - ROUNDING_MM) {
      Point at = lead.path().start();
      found.warning(
          TorchCode.NEAR_PIERCE,
          work.where(),
          name
              + " is pierced only "
              + Amounts.length(lead.pierceMm())
              + " from the part at "
              + Amounts.place(at.x(), at.y()),
          "spatter may spoil the edge; a wider opening leaves room");
    }
  }

  /** Warns of a piece that finds no room for micro-joints. */
  static void noJoint(Contour contour, Work.TorchCut work, Diagnostics found) {
    Point at = contour.inside().bounds().centre();
    found.warning(
        TorchCode.NO_JOINT,
        work.where(),
        contour.name()
            + " has no room for micro-joints and is cut free at "
            + Amounts.place(at.x(), at.y()),
        "fewer or narrower ones may fit; watch that the piece does not tip up");
  }
}
