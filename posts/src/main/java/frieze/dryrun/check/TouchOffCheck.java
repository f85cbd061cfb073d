package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.StockCutter;
import frieze.dryrun.scene.Surroundings;
import frieze.field.StockField;
import frieze.shop.Machine;
import frieze.shop.Zero;
import java.util.Optional;

/**
 * Objects to a tool that must be touched off on the stock's top where earlier cuts have taken the
 * top away.
 *
 * <p>The operator is taken to touch off at the zero in X and Y, on the stock; with a changer, or
 * with zero on the bed, nobody touches off on the top.
 */
public final class TouchOffCheck implements Check {
  /** How far around the zero the top must stand. */
  static final double AROUND_MM = 3;

  private static final double GONE_MM = 0.05;
  private static final int SPOTS = 8;

  private final Optional<StockCutter> cutter;
  private final Optional<StockBox> box;
  private final boolean onTop;
  private Optional<Integer> last = Optional.empty();

  public TouchOffCheck(Surroundings known, Optional<StockCutter> cutter) {
    this.cutter = cutter;
    this.box = StockBox.of(known);
    boolean changer = known.machine().map(Machine::toolChanger).orElse(false);
    this.onTop = !changer && known.zero().map(z -> z.z() == Zero.AlongZ.TOP).orElse(false);
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    Optional<Integer> tool = passage.toolNumber();
    boolean isNew = last.isPresent() && tool.isPresent() && !tool.equals(last);
    if (tool.isPresent()) {
      last = tool;
    }
    if (!isNew || !onTop || cutter.isEmpty()) {
      return;
    }
    double low = lowestAroundZero(cutter.get().field(), box.orElseThrow());
    if (low < -GONE_MM) {
      log.add(
          FindingCode.TOUCH_OFF_CUT_AWAY,
          passage,
          Amount.mm(-low),
          "the stock at the zero, where "
              + passage.tool().map(t -> t.name()).orElse("the next tool")
              + " is touched off, has been cut "
              + Words.mm(-low)
              + " deep");
    }
  }

  private static double lowestAroundZero(StockField field, StockBox box) {
    double length = box.maxXMm() - box.minXMm();
    double width = box.maxYMm() - box.minYMm();
    double x = Math.min(length - AROUND_MM, Math.max(AROUND_MM, -box.minXMm()));
    double y = Math.min(width - AROUND_MM, Math.max(AROUND_MM, -box.minYMm()));
    double low = height(field, x, y);
    for (int i = 0; i < SPOTS; i++) {
      double angle = 2 * Math.PI * i / SPOTS;
      low =
          Math.min(
              low,
              height(
                  field,
                  x + AROUND_MM * StrictMath.cos(angle),
                  y + AROUND_MM * StrictMath.sin(angle)));
    }
    return low;
  }

  private static double height(StockField field, double x, double y) {
    double h = field.heightAtMm(x, y);
    return h == Double.NEGATIVE_INFINITY ? 0 : h;
  }
}
