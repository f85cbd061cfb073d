package frieze.screw;

import frieze.curve.Point;
import frieze.layout.Panel;
import frieze.opening.Sitting;
import frieze.wood.Moisture;
import java.util.Optional;

/**
 * How the wood of a panel moves with the seasons, about a place that is held.
 *
 * <p><em>Approximation:</em> the linear rule of the Wood Handbook, as in {@link
 * frieze.wood.SideFit}.
 *
 * @param held the place that stays, on the panel as it is cut
 * @param alongPerPct the change along X for 1 % of moisture, as a share
 * @param acrossPerPct the same along Y
 */
public record Movement(Point held, double alongPerPct, double acrossPerPct, Moisture moisture) {
  /** The movement of a panel below its screws; empty if its wood is not known. */
  public static Optional<Movement> of(Optional<Sitting> sitting, Screws screws, Panel panel) {
    Point held = screws.held(panel.outline().bounds().centre());
    return sitting
        .filter(Sitting::wood)
        .map(Sitting::asked)
        .map(fit -> new Movement(held, fit.alongPerPct(), fit.acrossPerPct(), fit.moisture()));
  }

  /** Where a place of the panel, as it is cut, lies at the driest. */
  public Point driest(Point asCut) {
    return at(asCut, moisture.driestPct());
  }

  /** The same at the wettest. */
  public Point wettest(Point asCut) {
    return at(asCut, moisture.wettestPct());
  }

  private Point at(Point asCut, double moisturePct) {
    double more = moisturePct - moisture.nowPct();
    Point from = asCut.minus(held);
    return asCut.plus(new Point(from.x() * alongPerPct * more, from.y() * acrossPerPct * more));
  }
}
