package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Motion;
import frieze.motion.Motions;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Objects to going down into material faster, or more steeply, than the tool can, and to a drill
 * that is fed sideways.
 */
public final class PlungeCheck implements Check {
  /**
   * The steepest ramp of a tool that does not cut at its centre. Common practice for router bits;
   * no published value.
   */
  static final double STEEPEST_RAMP_DEG = 5;

  private static final double STRAIGHT_DOWN_DEG = 60;

  private final Optional<StockBox> stock;
  private boolean toolsWereKnown = true;

  public PlungeCheck(Surroundings known) {
    this.stock = StockBox.of(known);
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (!passage.isFeed() || stock.isEmpty() || passage.belowTop().isEmpty()) {
      return;
    }
    if (passage.met().map(met -> met.deepestMm() <= Slack.STANDING_MM).orElse(false)) {
      return;
    }
    if (passage.tool().isEmpty()) {
      toolsWereKnown = false;
      return;
    }
    Tool tool = passage.tool().get();
    Motion path = passage.belowTop().get();
    double planar = Motions.planarMm(path);
    if (tool.shape() instanceof ToolShape.Drill && planar > Slack.LENGTH_MM) {
      log.add(
          FindingCode.DRILL_SIDEWAYS,
          passage,
          Amount.mm(planar),
          tool.name() + " is a drill and is fed " + Words.mm(planar) + " sideways in the stock");
    }
    double down = path.from().z() - path.to().z();
    if (down > Slack.LENGTH_MM) {
      compareFeed(passage, tool, down / path.lengthMm(), log);
      compareSlope(passage, tool, Math.toDegrees(StrictMath.atan2(down, planar)), log);
    }
  }

  private static void compareFeed(Passage passage, Tool tool, double downShare, FindingLog log) {
    OptionalDouble feed = passage.feedMmPerMin();
    double down = feed.orElse(0) * downShare;
    if (FeedCheck.isAbove(down, tool.maxPlungeMmPerMin())) {
      log.add(
          FindingCode.PLUNGE_TOO_FAST,
          passage,
          new Amount(down - tool.maxPlungeMmPerMin(), "mm/min"),
          "goes down at "
              + Amount.text(down)
              + " mm/min; "
              + tool.name()
              + " may plunge at "
              + Amount.text(tool.maxPlungeMmPerMin())
              + " mm/min");
    }
  }

  private static void compareSlope(Passage passage, Tool tool, double slopeDeg, FindingLog log) {
    if (tool.cutsAtCentre() || slopeDeg <= STEEPEST_RAMP_DEG) {
      return;
    }
    boolean straightDown = slopeDeg >= STRAIGHT_DOWN_DEG;
    log.add(
        straightDown ? FindingCode.PLUNGE_OFF_CENTRE : FindingCode.RAMP_TOO_STEEP,
        passage,
        new Amount(slopeDeg - STEEPEST_RAMP_DEG, "deg"),
        "goes down at "
            + Amount.text(slopeDeg)
            + " deg; "
            + tool.name()
            + " does not cut at its centre and may ramp at "
            + Amount.text(STEEPEST_RAMP_DEG)
            + " deg");
  }

  @Override
  public List<NotChecked> notChecked() {
    return toolsWereKnown
        ? List.of()
        : List.of(
            new NotChecked(
                "plunges, depth of cut and feeds of some tools",
                "the shop does not list them",
                true));
  }
}
