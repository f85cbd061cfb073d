package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.BoxDistance;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Box;
import frieze.motion.Motion;
import frieze.motion.Motions;
import frieze.rs274.ReadingRules.Paths;
import frieze.rs274.ReadingRules.Rapids;
import frieze.shop.KeepOut;
import frieze.shop.Tool;
import java.util.List;
import java.util.Optional;

/**
 * Objects to moves of the tool or its holder through keep-outs, and to rapids that could run
 * through one if their axes do not arrive together and nobody said how they move. Where the axes
 * are known not to wait, the legs of a rapid come here as moves of their own.
 *
 * <p><em>Approximation:</em> the tool counts as a cylinder of its largest diameter, the holder as
 * one of {@link #HOLDER_DIAMETER_MM} above its reach. A tool that is not known has no size.
 */
public final class KeepOutCheck implements Check {
  /** A collet nut and the spindle's nose; common practice for routers with small collets. */
  static final double HOLDER_DIAMETER_MM = 50;

  private final List<KeepOut> boxes;
  private final Optional<StockBox> stock;
  private Rapids rapids = Rapids.UNSAID;

  public KeepOutCheck(Surroundings known) {
    this.boxes = known.keepOuts();
    this.stock = StockBox.of(known);
  }

  @Override
  public void paths(Paths habits) {
    rapids = habits.rapids();
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (stock.isEmpty() || boxes.isEmpty()) {
      return;
    }
    for (KeepOut box : boxes) {
      if (passage.isPlaced() && straightHits(passage, box, log)) {
        continue;
      }
      boolean mayBend =
          rapids == Rapids.UNSAID || (rapids == Rapids.EACH_AXIS && !passage.isPlaced());
      if (passage.isRapid() && mayBend) {
        doglegHits(passage, box, log);
      }
    }
  }

  private boolean straightHits(Passage passage, KeepOut box, FindingLog log) {
    double topMm = stock.orElseThrow().topMm() + box.topMm();
    double tool = passage.tool().map(Tool::radiusMm).orElse(0.0);
    double overlap = overlap(passage.path(), box, topMm, tool);
    if (overlap > 0) {
      report(FindingCode.HITS_KEEP_OUT, passage, overlap, "the tool runs into " + box.name(), log);
      return true;
    }
    double reach = passage.tool().map(Tool::reachMm).orElse(Double.POSITIVE_INFINITY);
    overlap = overlap(passage.path(), box, topMm - reach, HOLDER_DIAMETER_MM / 2);
    if (overlap > 0) {
      report(
          FindingCode.HITS_KEEP_OUT,
          passage,
          overlap,
          "the holder, taken as "
              + Words.mm(HOLDER_DIAMETER_MM)
              + " across, runs into "
              + box.name(),
          log);
      return true;
    }
    return false;
  }

  /** How deep a cylinder that follows a path below a height comes into a box; 0 if it does not. */
  private double overlap(Motion path, KeepOut box, double belowZ, double radius) {
    Optional<Motion> low = Motions.below(path, belowZ - Slack.LENGTH_MM);
    if (low.isEmpty()) {
      return 0;
    }
    StockBox origin = stock.orElseThrow();
    BoxDistance distance =
        new BoxDistance(
            box.minXMm() + origin.minXMm(),
            box.minYMm() + origin.minYMm(),
            box.maxXMm() + origin.minXMm(),
            box.maxYMm() + origin.minYMm());
    double gap = distance.to(low.get());
    return gap < radius - Slack.LENGTH_MM || gap == 0 ? Math.max(radius - gap, Slack.LENGTH_MM) : 0;
  }

  private void doglegHits(Passage passage, KeepOut box, FindingLog log) {
    Box whole = passage.box();
    boolean placed = whole.minX() <= whole.maxX() && whole.minY() <= whole.maxY();
    if (!placed || passage.lowZ().isEmpty()) {
      return;
    }
    StockBox origin = stock.orElseThrow();
    double radius = passage.tool().map(Tool::radiusMm).orElse(0.0);
    double gapX =
        gap(
            whole.minX(),
            whole.maxX(),
            box.minXMm() + origin.minXMm(),
            box.maxXMm() + origin.minXMm());
    double gapY =
        gap(
            whole.minY(),
            whole.maxY(),
            box.minYMm() + origin.minYMm(),
            box.maxYMm() + origin.minYMm());
    double under = origin.topMm() + box.topMm() - whole.minZ();
    double overlap = radius - Math.hypot(gapX, gapY);
    if (under > Slack.LENGTH_MM && (overlap > Slack.LENGTH_MM || gapX + gapY == 0)) {
      report(
          FindingCode.DOGLEG_MAY_HIT,
          passage,
          under,
          "a rapid whose axes do not arrive together may run into "
              + box.name()
              + ", "
              + Words.mm(under)
              + " below its top",
          log);
    }
  }

  private static double gap(double min, double max, double boxMin, double boxMax) {
    return Math.max(0, Math.max(boxMin - max, min - boxMax));
  }

  private static void report(
      FindingCode code, Passage passage, double amount, String message, FindingLog log) {
    log.add(code, passage, Amount.mm(amount), message);
  }

  @Override
  public List<NotChecked> notChecked() {
    if (boxes.isEmpty()) {
      return List.of(new NotChecked("clamps", "no keep-outs are given", true));
    }
    return stock.isPresent()
        ? List.of()
        : List.of(new NotChecked("clamps", "the stock or the zero on it is not given", true));
  }
}
