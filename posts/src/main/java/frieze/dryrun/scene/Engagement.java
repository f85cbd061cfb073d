package frieze.dryrun.scene;

import frieze.field.Profile;
import frieze.field.StockField;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Tool;

/**
 * Measures in a stock field which part of a tool's rim stands in material while it feeds along.
 *
 * <p>The rim is the circle in which the tool meets the top of what it cuts. Only the half that
 * looks forward can meet material: the other half is where the tool comes from. A slot gives 180
 * degrees; a side cut of width {@code a} gives {@code acos(1 - a / r)}.
 *
 * <p><b>Approximation:</b> walls are known to one cell of the field, so the angle of a side cut is
 * that of a width up to one cell larger or smaller. The rim is sampled at every degree, the path at
 * every sixth of the radius. <b>Cost:</b> 180 heights for each sample of the path.
 */
final class Engagement {
  private static final int SAMPLES = 180;
  private static final double STEPS_PER_RADIUS = 6;

  private final StockField field;
  private double sinceSampleMm;

  Engagement(StockField field) {
    this.field = field;
  }

  /**
   * Measures one move before it is cut.
   *
   * @param path in the stock frame, level or rising
   * @param highMm how far what the move meets stands above the tip
   * @return the largest angle on it, in radians
   */
  double largestRad(Motion path, Tool tool, double highMm) {
    double rim = Math.max(Slack.STANDING_MM, highMm - 2 * Slack.STANDING_MM);
    Profile profile = Profile.of(tool.shape()).upTo(rim);
    double radius = profile.radiusMm();
    double length = path.lengthMm();
    double step = radius / STEPS_PER_RADIUS;
    sinceSampleMm += length;
    if (sinceSampleMm < step) {
      return 0;
    }
    sinceSampleMm = 0;
    int steps = (int) Math.max(1, Math.ceil(length / step));
    double rise = profile.heightAtMm(radius) + Slack.STANDING_MM;
    double largest = 0;
    for (int i = 1; i <= steps; i++) {
      double to = (double) i / steps;
      Position at = path.at(to);
      double before = Math.max(0, to - Math.min(1.0 / steps, Slack.LENGTH_MM / length));
      largest = Math.max(largest, angleRad(path.at(before), at, radius, at.z() + rise));
    }
    return largest;
  }

  private double angleRad(Position before, Position at, double radius, double floorZ) {
    double ahead = StrictMath.atan2(at.y() - before.y(), at.x() - before.x());
    int standing = 0;
    for (int i = 0; i < SAMPLES; i++) {
      double angle = ahead + Math.toRadians(i + 0.5 - SAMPLES / 2.0);
      double x = at.x() + radius * Math.cos(angle);
      double y = at.y() + radius * Math.sin(angle);
      if (field.heightAtMm(x, y) > floorZ) {
        standing++;
      }
    }
    return standing * Math.PI / SAMPLES;
  }
}
