package frieze.dryrun;

import frieze.curve.Point;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Passage;
import frieze.motion.Box;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Finds which move cut deepest at given places. Sees all moves a second time, so that the first run
 * needs to remember none of them.
 *
 * <p><em>Approximation:</em> a move is looked at in steps of a fiftieth of the tool's radius, at
 * most {@link #MOST_STEPS}.
 */
final class Culprits {
  /** No move did it. */
  static final Culprit NOBODY = new Culprit("", 0, 0, "", Double.POSITIVE_INFINITY);

  private static final int STEPS_PER_RADIUS = 50;
  private static final int MOST_STEPS = 2000;

  /** A move, and how low it cuts at the place. */
  record Culprit(String program, int line, int column, String move, double heightMm) {}

  private final List<Point> places;
  private final Map<Point, Culprit> worst = new HashMap<>();

  Culprits(List<Point> places) {
    this.places = new ArrayList<>(places);
  }

  boolean isNeeded() {
    return !places.isEmpty();
  }

  /**
   * Looks at a move.
   *
   * @param path in the stock frame
   */
  void move(String program, Passage passage, Motion path, ToolShape shape) {
    double radius = shape.diameterMm() / 2;
    Box box = path.box();
    for (Point place : places) {
      boolean near =
          place.x() > box.minX() - radius
              && place.x() < box.maxX() + radius
              && place.y() > box.minY() - radius
              && place.y() < box.maxY() + radius;
      if (near) {
        double height = lowest(path, shape, place);
        if (height < worst.getOrDefault(place, NOBODY).heightMm()) {
          worst.put(
              place,
              new Culprit(
                  program,
                  passage.span().line(),
                  passage.span().column(),
                  Words.of(passage.move()),
                  height));
        }
      }
    }
  }

  private static double lowest(Motion path, ToolShape shape, Point place) {
    double radius = shape.diameterMm() / 2;
    int steps =
        (int) Math.min(MOST_STEPS, 1 + Math.ceil(path.lengthMm() / radius * STEPS_PER_RADIUS));
    double low = Double.POSITIVE_INFINITY;
    for (int i = 0; i <= steps; i++) {
      Position p = path.at((double) i / steps);
      double distance = Math.hypot(p.x() - place.x(), p.y() - place.y());
      if (distance <= radius) {
        low = Math.min(low, p.z() + shape.heightAtMm(distance));
      }
    }
    return low;
  }

  /** The move that cut deepest at a place; {@link #NOBODY} if none came near. */
  Culprit at(Point place) {
    return worst.getOrDefault(place, NOBODY);
  }
}
