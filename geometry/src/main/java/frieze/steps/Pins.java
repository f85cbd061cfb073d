package frieze.steps;

import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/**
 * Two pins that hold the stock in its new place after each push: one in the waste before the panel,
 * far to the right, and one in the waste behind it, far to the left.
 *
 * <p>In each step but the last, holes for them are bored through the stock. In the first step two
 * more are bored where the stock's holes will lie after the push: these reach on into the
 * spoilboard, and the pins stand in them from then on.
 *
 * @param wanted their size and the tool that bores for them
 * @param front in the stock's frame, as the first step bores it
 * @param back in the stock's frame, as the first step bores it
 * @param shiftMm how far the stock is pushed to the left between two steps
 */
public record Pins(Wanted wanted, Point front, Point back, double shiftMm) {
  /**
   * What pins are used.
   *
   * @param diameterMm of a pin, and of its hole
   * @param depthMm how deep it stands in the spoilboard
   * @param tool bores the holes
   * @param where the job asks for steps
   */
  public record Wanted(double diameterMm, double depthMm, Tool tool, SourceSpan where) {}

  /**
   * The holes that a step bores, in the stock's frame.
   *
   * @param step counted from 0
   * @param count of steps
   */
  public List<Point> holes(int step, int count) {
    List<Point> holes = new ArrayList<>();
    if (step == 0) {
      holes.add(moved(front, -shiftMm));
      holes.add(moved(back, -shiftMm));
    }
    if (step < count - 1) {
      holes.add(moved(front, step * shiftMm));
      holes.add(moved(back, step * shiftMm));
    }
    return holes;
  }

  /**
   * Where the pins stand in a step, in the stock's frame: none in the first.
   *
   * @param step counted from 0
   */
  public List<Point> standing(int step) {
    return step == 0
        ? List.of()
        : List.of(moved(front, (step - 1) * shiftMm), moved(back, (step - 1) * shiftMm));
  }

  /** How far the pins stand from each other. */
  public double apartMm() {
    return front.distance(back);
  }

  private static Point moved(Point p, double dx) {
    return new Point(p.x() + dx, p.y());
  }
}
