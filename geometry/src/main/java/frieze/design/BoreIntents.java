package frieze.design;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;

/** What one hole of a bore wants of the stock. */
final class BoreIntents {
  /** How far the point of a countersink may stay above what was asked for. */
  private static final double RIDGE_MM = 0.02;

  private BoreIntents() {}

  static List<Intent> of(Work.Bore bore, int number, Point centre, double flattenMm) {
    String name = "bore " + number;
    double depthMm = bore.depthMm().orElse(Double.POSITIVE_INFINITY);
    List<Intent> intents = new ArrayList<>();
    if (bore.way().slot().isPresent()) {
      double width = bore.diameterMm();
      Path outline = bore.way().slot().get().around(centre, width, width / 2);
      Region area = Region.of(List.of(outline), FillRule.NONZERO, flattenMm);
      intents.add(
          bore.depthMm().isPresent()
              ? new Intent.Recess(name, area, depthMm, bore.tool(), true)
              : new Intent.Through(name, area, bore.tool(), Work.Side.INSIDE, width, 0, true));
    } else {
      intents.add(new Intent.Hole(name, centre, bore.diameterMm(), depthMm, bore.tool()));
    }
    for (BoreWay.Countersink sink : bore.way().countersink().stream().toList()) {
      Path rim = Path.circle(centre, sink.diameterMm() / 2);
      Region head = Region.of(List.of(rim), FillRule.NONZERO, flattenMm);
      intents.add(
          new Intent.VRecess(
              "countersink " + number, head, sink.depthMm(), sink.tool(), List.of(), RIDGE_MM));
    }
    return intents;
  }
}
