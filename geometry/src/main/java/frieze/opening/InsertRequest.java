package frieze.opening;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.wood.Allowances;
import frieze.wood.Moisture;
import java.util.List;
import java.util.Optional;

/**
 * How a panel shall sit in its opening.
 *
 * @param gapsMm bottom, right, top, left, to draw with; empty for what play and wood need
 * @param playMm what must be left on each side at the wettest, where no gaps are given
 * @param alongPerPct the change of its length for 1 % of moisture, as a share; 0 for steel
 * @param acrossPerPct the same of its height
 */
public record InsertRequest(
    Optional<List<Double>> gapsMm,
    double playMm,
    double alongPerPct,
    double acrossPerPct,
    Moisture moisture,
    Allowances allowances) {
  public InsertRequest {
    gapsMm = gapsMm.map(List::copyOf);
    if (gapsMm.isPresent() && gapsMm.get().size() != 4) {
      throw new IllegalArgumentException("gapsMm must be four but were " + gapsMm.get().size());
    }
    if (!(playMm >= 0 && alongPerPct >= 0 && acrossPerPct >= 0)) {
      throw new IllegalArgumentException(
          "playMm, alongPerPct, acrossPerPct must be >= 0 but were "
              + (playMm + ", " + alongPerPct + ", " + acrossPerPct));
    }
  }

  /** How wood moves about a middle until it is as moist as this. */
  Affine swelling(Point middle, double moisturePct) {
    double more = moisturePct - moisture.nowPct();
    return Affine.translation(-middle.x(), -middle.y())
        .then(Affine.scaling(1 + alongPerPct * more, 1 + acrossPerPct * more))
        .then(Affine.translation(middle.x(), middle.y()));
  }
}
