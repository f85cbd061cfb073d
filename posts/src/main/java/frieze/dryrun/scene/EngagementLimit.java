package frieze.dryrun.scene;

import frieze.motion.Motions;
import frieze.shop.Tool;
import frieze.shop.ToolShape;

/**
 * How much of its rim a tool may have in material: its own limit, or without one a full slot up to
 * one diameter deep, and {@link #DEEP_RAD} where the cut is deeper. <em>Source:</em> common
 * practice for router bits; no published value.
 */
public final class EngagementLimit {
  static final double DEEP_RAD = Math.PI / 2;

  /** What the samples of the rim leave open; what is closer to the limit than this is within it. */
  public static final double SLACK_RAD = Math.toRadians(2);

  private EngagementLimit() {}

  /** The largest angle that a tool may have in material where it takes a depth. */
  public static double limitRad(Tool tool, double deepMm) {
    double usual = deepMm > tool.diameterMm() + Slack.LENGTH_MM ? DEEP_RAD : Math.PI;
    return tool.engagementRad().orElse(usual);
  }

  /** Whether the angle of a move has to be measured at all. */
  public static boolean asks(Passage passage, Tool tool, double deepMm) {
    boolean byShape =
        tool.shape() instanceof ToolShape.Vee || tool.shape() instanceof ToolShape.Drill;
    boolean down = passage.path().to().z() < passage.path().from().z() - Slack.LENGTH_MM;
    return passage.isFeed()
        && !byShape
        && !down
        && deepMm > Slack.STANDING_MM
        && Motions.planarMm(passage.path()) > Slack.LENGTH_MM
        && limitRad(tool, deepMm) < Math.PI - SLACK_RAD;
  }
}
