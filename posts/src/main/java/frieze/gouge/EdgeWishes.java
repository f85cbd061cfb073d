package frieze.gouge;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.EdgeShape;
import frieze.design.Intent;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;

/**
 * What an edge that is taken off permits and asks for, by the distance from the outline.
 *
 * <p>It asks for nothing near those places of the outline beside which a tool's axis has no room:
 * they are found by trying a disc at every step along it.
 */
final class EdgeWishes {
  private static final double STEP_MM = 0.25;

  /** A disc that touches the outline is taken as beside it. */
  private static final double TOUCH_MM = 1e-4;

  private static final double FLATTEN_MM = 0.0005;

  private EdgeWishes() {}

  /** The wishes: what is permitted, also beyond the ends of sides, and what is asked for. */
  static List<Wish> of(Intent.Edge edge, Affine toStock, double faceMm, double wallMm) {
    Region part = edge.part().transformed(toStock);
    Edges outline = Edges.of(part);
    Region.Locator inside = part.locator();
    double beside = edge.axisMm() + edge.tool().radiusMm() + wallMm;
    double tip = edge.tipMm() + faceMm;
    double reach = beside + 2 * wallMm;
    Wish permitted =
        new Wish(
            edge,
            Edges.of(placed(edge.passing(), toStock), FLATTEN_MM),
            inside,
            reach,
            beside,
            d -> d < -beside ? 0 : d < wallMm ? tip : depthMm(edge.shape(), d - wallMm, faceMm),
            d -> 0,
            0,
            0,
            outline);
    Edges asked =
        reachable(
            Edges.of(placed(edge.runs(), toStock), FLATTEN_MM), outline, edge.axisMm() + wallMm);
    Wish wanted =
        new Wish(
            edge,
            asked,
            inside,
            reach,
            beside,
            d -> 0,
            d -> d < wallMm ? 0 : depthMm(edge.shape(), d + wallMm, faceMm),
            0,
            0,
            outline);
    return List.of(permitted, wanted);
  }

  /** The depth below the stock's top at a distance inside, with what finishing takes off. */
  private static double depthMm(EdgeShape shape, double inside, double faceMm) {
    if (shape instanceof EdgeShape.Chamfer chamfer) {
      double slope = chamfer.downMm() / chamfer.widthMm();
      return Math.max(0, chamfer.downMm() + faceMm - slope * inside);
    }
    return inside < shape.widthMm() ? shape.depthMm(inside) + faceMm : 0;
  }

  private static List<Path> placed(List<Path> paths, Affine toStock) {
    return paths.stream().map(p -> p.transformed(toStock)).toList();
  }

  /** Those parts of some edges of an outline beside which a disc has room outside. */
  private static Edges reachable(Edges edges, Edges outline, double radiusMm) {
    List<Point> pairs = new ArrayList<>();
    for (int e = 0; e < edges.count(); e++) {
      Point from = edges.start(e);
      Point to = edges.end(e);
      double length = edges.length(e);
      if (length == 0) {
        continue;
      }
      Point along = to.minus(from).times(1 / length);
      Point outward = new Point(along.y(), -along.x()).times(radiusMm);
      int steps = (int) Math.max(1, Math.ceil(length / STEP_MM));
      int begun = -1;
      for (int i = 0; i <= steps + 1; i++) {
        Point at = from.towards(to, Math.min(1.0, (double) i / steps));
        boolean room = i <= steps && hasRoom(at.plus(outward), outline, radiusMm);
        if (room && begun < 0) {
          begun = i;
        } else if (!room && begun >= 0) {
          pairs.add(from.towards(to, (double) begun / steps));
          pairs.add(from.towards(to, (i - 1.0) / steps));
          begun = -1;
        }
      }
    }
    return Edges.between(pairs);
  }

  private static boolean hasRoom(Point centre, Edges outline, double radiusMm) {
    return outline.distance(centre.x(), centre.y()) >= radiusMm - TOUCH_MM;
  }
}
