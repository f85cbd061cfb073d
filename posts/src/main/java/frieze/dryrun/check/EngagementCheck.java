package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.EngagementLimit;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.StockCutter;
import frieze.dryrun.scene.Surroundings;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Objects, from the simulated stock, to a tool that feeds along with more of its rim in standing
 * material than its limit allows, unless it goes so slowly there that it removes no more in a
 * minute than at the limit: with the feed lowered to (1 - cos limit) / (1 - cos angle).
 *
 * <p>Moves that go down are entries and have checks of their own; V bits and drills cut all around
 * by their shape. The limit is that of {@link EngagementLimit}.
 */
public final class EngagementCheck implements Check {
  /** What is engaged begins and ends at a wall, each known to one cell of the field. */
  private static final int WALLS = 2;

  /** Feeds that differ by less are the same: they are rounded in programs. */
  private static final double SAME_FEED = 0.01;

  /** So many moves are kept to be judged at the end; more are judged at once. */
  private static final int MOST_KEPT = 20_000;

  private final Optional<StockCutter> cutter;
  private final List<Beyond> beyond = new ArrayList<>();
  private final Map<Tool, Double> fastest = new HashMap<>();
  private boolean allMet = true;

  /** A move with more of the rim in material than the limit. */
  private record Beyond(
      Passage passage,
      int program,
      Tool tool,
      double engagedRad,
      double limitRad,
      double feedMmPerMin) {}

  public EngagementCheck(Surroundings known, Optional<StockCutter> cutter) {
    this.cutter = cutter;
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    allMet &=
        passage.met().isPresent()
            || passage.isRapid()
            || (passage.isPlaced() && passage.belowTop().isEmpty());
    if (passage.engagedRad().isEmpty()) {
      return;
    }
    Tool tool = passage.tool().orElseThrow();
    double limit = EngagementLimit.limitRad(tool, passage.met().orElseThrow().deepestMm());
    double engaged = passage.engagedRad().getAsDouble();
    double feed = passage.feedMmPerMin().orElse(Double.POSITIVE_INFINITY);
    if (engaged > limit + slackRad(tool)) {
      beyond.add(new Beyond(passage, log.programIndex(), tool, engaged, limit, feed));
    } else if (engaged > EngagementLimit.SLACK_RAD) {
      fastest.merge(tool, feed, Math::max);
    }
    if (beyond.size() > MOST_KEPT) {
      finish(log);
    }
  }

  /** Judges what was kept, now that the tool's feed within its limit is known. */
  @Override
  public void finish(FindingLog log) {
    beyond.stream().filter(b -> !isSlowed(b)).forEach(b -> tell(b, log));
    beyond.clear();
  }

  /** Whether a move removes no more in a minute than the tool does at its limit. */
  private boolean isSlowed(Beyond b) {
    OptionalDouble full = fullFeed(b);
    double share =
        (1 - StrictMath.cos(b.limitRad()))
            / (1 - StrictMath.cos(b.engagedRad() - slackRad(b.tool())));
    return full.isPresent() && b.feedMmPerMin() <= full.getAsDouble() * share * (1 + SAME_FEED);
  }

  private double slackRad(Tool tool) {
    double cell = cutter.map(StockCutter::cellMm).orElse(0.0);
    return EngagementLimit.SLACK_RAD + WALLS * cell / tool.radiusMm();
  }

  /** What the chip load gives; without it or the speed, the fastest cut within the limit. */
  private OptionalDouble fullFeed(Beyond b) {
    OptionalDouble rpm = b.passage().move().state().rpm();
    Tool tool = b.tool();
    if (tool.chipLoadMm().isPresent() && rpm.isPresent()) {
      double feed = tool.chipLoadMm().getAsDouble() * tool.flutes() * rpm.getAsDouble();
      return OptionalDouble.of(Math.min(tool.maxFeedMmPerMin(), feed));
    }
    return fastest.containsKey(tool)
        ? OptionalDouble.of(fastest.get(tool))
        : OptionalDouble.empty();
  }

  private void tell(Beyond b, FindingLog log) {
    OptionalDouble full = fullFeed(b);
    log.addAt(
        b.program(),
        FindingCode.ENGAGED_TOO_FAR,
        b.passage(),
        new Amount(Math.rint(Math.toDegrees(b.engagedRad() - b.limitRad())), "deg"),
        "stands in material over "
            + Math.round(Math.toDegrees(b.engagedRad()))
            + " deg of its rim, "
            + Words.mm(b.passage().met().orElseThrow().deepestMm())
            + " deep; "
            + b.tool().name()
            + " may have "
            + Math.round(Math.toDegrees(b.limitRad()))
            + " deg"
            + (b.tool().engagementRad().isPresent() ? "" : " (common practice)")
            + (full.isPresent()
                ? " at "
                    + Math.round(full.getAsDouble())
                    + " mm/min, and this is "
                    + Math.round(b.feedMmPerMin())
                    + " mm/min"
                : ""));
  }

  @Override
  public List<NotChecked> notChecked() {
    return cutter.isPresent() && allMet
        ? List.of()
        : List.of(
            new NotChecked(
                "how much of the rim stands in material",
                "the stock, the zero on it, the tool or the place where the program starts is not"
                    + " known",
                true));
  }
}
