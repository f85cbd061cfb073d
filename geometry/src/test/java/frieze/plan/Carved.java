package frieze.plan;

import frieze.curve.Point;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;

/**
 * How deep cuts go at single places, by brute force: the lowest of the tool's surface at positions
 * close together along all moves. Shares nothing with the planner but the moves themselves.
 */
final class Carved {
  private static final double STEP_MM = 0.02;

  private final List<double[]> tips = new ArrayList<>();
  private final List<ToolShape> shapes = new ArrayList<>();

  Carved(List<Cut> cuts) {
    for (Cut cut : cuts) {
      for (Cut.Move move : cut.moves()) {
        Motion path = move.path();
        int steps = (int) Math.max(1, Math.ceil(path.lengthMm() / STEP_MM));
        for (int i = 0; i <= steps; i++) {
          Position p = path.at((double) i / steps);
          if (p.z() <= 0) {
            tips.add(new double[] {p.x(), p.y(), p.z()});
            shapes.add(cut.tool().shape());
          }
        }
      }
    }
  }

  List<double[]> tips() {
    return tips;
  }

  double depthMm(Point p) {
    double deepest = 0;
    for (int i = 0; i < tips.size(); i++) {
      double[] tip = tips.get(i);
      double dx = p.x() - tip[0];
      double dy = p.y() - tip[1];
      double far = Math.sqrt(dx * dx + dy * dy);
      if (-tip[2] > deepest && far <= shapes.get(i).diameterMm() / 2) {
        deepest = Math.max(deepest, -tip[2] - shapes.get(i).heightAtMm(far));
      }
    }
    return deepest;
  }
}
