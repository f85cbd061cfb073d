package frieze.dryrun;

import frieze.motion.Motions;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Optional;

/**
 * Objects, from the simulated stock, to a tool that feeds along with more of its rim in standing
 * material than its limit allows.
 *
 * <p>Moves that go down are entries and have checks of their own; V bits and drills cut all around
 * by their shape. The limit is the tool's own. Without one: a full slot up to one diameter deep,
 * and {@link #DEEP_LIMIT_RAD} where the cut is deeper. <em>Source:</em> common practice for router
 * bits; no published value.
 */
final class EngagementCheck implements Check {
  static final double DEEP_LIMIT_RAD = Math.PI / 2;

  /** Rim samples and cells of the field: what is closer to the limit than this is within it. */
  private static final double SLACK_RAD = Math.toRadians(2);

  private final Optional<StockCutter> cutter;
  private boolean allMet = true;

  EngagementCheck(Surroundings known, Optional<StockCutter> cutter) {
    this.cutter = cutter;
  }

  /** The largest angle that a tool may have in material where it takes a depth. */
  static double limitRad(Tool tool, double deepMm) {
    double usual = deepMm > tool.diameterMm() + Slack.LENGTH_MM ? DEEP_LIMIT_RAD : Math.PI;
    return tool.engagementRad().orElse(usual);
  }

  /** Whether the angle of a move has to be measured at all. */
  static boolean asks(Passage passage, Tool tool, double deepMm) {
    boolean byShape =
        tool.shape() instanceof ToolShape.Vee || tool.shape() instanceof ToolShape.Drill;
    boolean down = passage.path().to().z() < passage.path().from().z() - Slack.LENGTH_MM;
    return passage.isFeed()
        && !byShape
        && !down
        && deepMm > MaterialCheck.STANDING_MM
        && Motions.planarMm(passage.path()) > Slack.LENGTH_MM
        && limitRad(tool, deepMm) < Math.PI - SLACK_RAD;
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
    double deep = passage.met().orElseThrow().deepestMm();
    double engaged = passage.engagedRad().getAsDouble();
    double limit = limitRad(tool, deep);
    if (engaged > limit + SLACK_RAD) {
      log.add(
          FindingCode.ENGAGED_TOO_FAR,
          passage,
          new Amount(Math.rint(Math.toDegrees(engaged - limit)), "deg"),
          "stands in material over "
              + Math.round(Math.toDegrees(engaged))
              + " deg of its rim, "
              + Words.mm(deep)
              + " deep; "
              + tool.name()
              + " may have "
              + Math.round(Math.toDegrees(limit))
              + " deg"
              + (tool.engagementRad().isPresent() ? "" : " (common practice)"));
    }
  }

  @Override
  public List<NotChecked> notChecked() {
    return cutter.isPresent() && allMet
        ? List.of()
        : List.of(
            new NotChecked(
                "how much of the rim stands in material",
                "the stock, the zero on it, the tool or the place where the program starts is not known",
                true));
  }
}
