package frieze.sheet;

import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.design.EdgeRuns;
import frieze.design.Work;
import frieze.layout.Panel;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.List;

/** Where the face of a panel ends at an edge that is taken off, as lines to draw. */
final class EdgeLine {
  /** As fine as a drawing needs it. */
  private static final double FINE_MM = 0.02;

  private EdgeLine() {}

  static List<Path> of(Panel panel, Work.Edge edge) {
    Region part = Region.of(List.of(panel.outline()), FillRule.NONZERO, FINE_MM);
    double width = edge.shape().widthMm();
    List<Path> lines = new ArrayList<>();
    List<Segment> sides =
        EdgeRuns.of(panel, edge.sides(), FINE_MM).stream()
            .flatMap(r -> r.segments().stream())
            .toList();
    for (Ring ring : Offset.offset(part, -width, FINE_MM).rings()) {
      List<Point> points = ring.points();
      for (int i = 0; i < points.size(); i++) {
        Point from = points.get(i);
        Point to = points.get((i + 1) % points.size());
        if (isBeside(from.towards(to, 0.5), sides, width + 2 * FINE_MM)) {
          lines.add(Path.polyline(List.of(from, to), false));
        }
      }
    }
    return lines;
  }

  private static boolean isBeside(Point place, List<Segment> sides, double mostMm) {
    return sides.stream().anyMatch(s -> new Line(s.start(), s.end()).distance(place) <= mostMm);
  }
}
