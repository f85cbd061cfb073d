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
import frieze.motion.Motions;
import frieze.shop.Machine;
import frieze.shop.Tool;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Objects to feed moves without a feed, and to feeds beyond the machine or the tool. */
public final class FeedCheck implements Check {
  private final Optional<Machine> machine;
  private final boolean stockIsKnown;

  public FeedCheck(Surroundings known) {
    this.machine = known.machine();
    this.stockIsKnown = StockBox.of(known).isPresent();
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (passage.isRapid()) {
      return;
    }
    OptionalDouble feed = passage.feedMmPerMin();
    if (feed.isEmpty() || !(feed.getAsDouble() > 0)) {
      log.add(
          FindingCode.NO_FEED,
          passage,
          Amount.NONE,
          feed.isEmpty() ? "no F word has been given" : "the feed rate is 0");
      return;
    }
    machine.ifPresent(m -> compareAxes(passage, feed.getAsDouble(), m, log));
    passage.tool().ifPresent(t -> compareTool(passage, feed.getAsDouble(), t, log));
  }

  private static void compareAxes(Passage passage, double feed, Machine machine, FindingLog log) {
    for (int axis = 0; axis < 3; axis++) {
      double limit = machine.axis(axis).maxFeedMmPerMin();
      double wanted = feed * Motions.largestShare(passage.path(), axis);
      if (isAbove(wanted, limit)) {
        log.add(
            FindingCode.FEED_BEYOND_MACHINE,
            passage,
            new Amount(wanted - limit, "mm/min"),
            Words.axisName(axis)
                + " would move at "
                + Amount.text(wanted)
                + " mm/min; its fastest cutting speed is "
                + Amount.text(limit)
                + " mm/min");
      }
    }
  }

  private void compareTool(Passage passage, double feed, Tool tool, FindingLog log) {
    boolean cuts = stockIsKnown ? passage.belowTop().isPresent() : passage.planarMm() > 0;
    if (cuts && isAbove(feed, tool.maxFeedMmPerMin())) {
      log.add(
          FindingCode.FEED_BEYOND_TOOL,
          passage,
          new Amount(feed - tool.maxFeedMmPerMin(), "mm/min"),
          "the feed is "
              + Amount.text(feed)
              + " mm/min; "
              + tool.name()
              + " may go at "
              + Amount.text(tool.maxFeedMmPerMin())
              + " mm/min");
    }
  }

  public static boolean isAbove(double wanted, double limit) {
    return wanted > limit * (1 + Slack.RELATIVE) + Slack.FEED_MM_PER_MIN;
  }

  @Override
  public List<NotChecked> notChecked() {
    return machine.isPresent()
        ? List.of()
        : List.of(new NotChecked("the machine's feed limits", "no machine is given", false));
  }
}
