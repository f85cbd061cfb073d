package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Finds the closed lines along which a picture has the middle value.
 *
 * <p>Marching squares; a crossing between two pixels is the root of the quintic through six of
 * them. Beyond the picture there is paper, so every line closes. The ink lies on the left, seen
 * with Y up: outer outlines run counter-clockwise, holes clockwise.
 */
final class Contours {
  private static final float LEVEL = 0.5f;
  private static final int TOP = 0;
  private static final int RIGHT = 1;
  private static final int BOTTOM = 2;

  /** Values along a row or a column that a crossing is found from, and how many lie before it. */
  private static final int NODES = 6;

  private static final int BEFORE = 2;
  private static final double[] WEIGHTS = {1, -5, 10, -10, 5, -1};

  /** Steps of the rule of false position, its Illinois form. */
  private static final int STEPS = 12;

  private static final double CLOSE = 1e-6;

  private final GreyImage image;
  private final BitSet seen = new BitSet();

  private Contours(GreyImage soft) {
    this.image = soft;
  }

  /**
   * Finds all lines.
   *
   * @param soft 0 for paper, 1 for ink, blurred
   * @return points in pixels, the origin at the lower left corner of the picture, Y up
   */
  static List<List<Point>> of(GreyImage soft) {
    Contours contours = new Contours(soft);
    List<List<Point>> all = new ArrayList<>();
    for (int y = 0; y < soft.height(); y++) {
      for (int x = -1; x < soft.width(); x++) {
        if (contours.inside(x, y) != contours.inside(x + 1, y)
            && !contours.seen.get(contours.link(x, y))) {
          all.add(contours.follow(x, y));
        }
      }
    }
    return all;
  }

  private boolean inside(int x, int y) {
    return image.at(x, y, 0) >= LEVEL;
  }

  private int link(int x, int y) {
    return y * (image.width() + 1) + x + 1;
  }

  private List<Point> follow(int startX, int startY) {
    List<Point> line = new ArrayList<>();
    boolean up = inside(startX, startY);
    int x = startX;
    int y = up ? startY - 1 : startY;
    int entered = up ? BOTTOM : TOP;
    do {
      line.add(crossing(x, y, entered));
      int left = exit(x, y, entered);
      switch (left) {
        case TOP -> y--;
        case RIGHT -> x++;
        case BOTTOM -> y++;
        default -> x--;
      }
      entered = (left + 2) % 4;
    } while (!(isLink(entered) && seen.get(link(x, entered == TOP ? y : y + 1))));
    return line;
  }

  private static boolean isLink(int side) {
    return side == TOP || side == BOTTOM;
  }

  private int exit(int x, int y, int entered) {
    boolean[] corner = {inside(x, y), inside(x + 1, y), inside(x + 1, y + 1), inside(x, y + 1)};
    int next = (entered + 1) % 4;
    int before = (entered + 3) % 4;
    int opposite = (entered + 2) % 4;
    boolean crossesNext = corner[next] != corner[(next + 1) % 4];
    boolean crossesBefore = corner[before] != corner[entered];
    if (crossesNext && crossesBefore) {
      boolean middle =
          image.at(x, y, 0)
                  + image.at(x + 1, y, 0)
                  + image.at(x, y + 1, 0)
                  + image.at(x + 1, y + 1, 0)
              >= 4 * LEVEL;
      return corner[next] != middle ? next : before;
    }
    return crossesNext ? next : crossesBefore ? before : opposite;
  }

  /** The crossing on one side of a cell; it marks those between neighbours of a row as seen. */
  private Point crossing(int x, int y, int side) {
    int px = side == RIGHT ? x + 1 : x;
    int py = side == BOTTOM ? y + 1 : y;
    boolean row = isLink(side);
    int dx = row ? 1 : 0;
    int dy = row ? 0 : 1;
    if (row) {
      seen.set(link(px, py));
    }
    double[] values = new double[NODES];
    for (int k = 0; k < NODES; k++) {
      values[k] = image.at(px + (k - BEFORE) * dx, py + (k - BEFORE) * dy, 0) - LEVEL;
    }
    double t = root(values);
    return new Point(px + 0.5 + t * dx, image.height() - (py + 0.5 + t * dy));
  }

  /**
   * The root in 0 .. 1 of the quintic through values at -2 .. 3; those at 0 and 1 differ in sign.
   */
  static double root(double[] values) {
    double low = 0;
    double high = 1;
    double atLow = values[BEFORE];
    double atHigh = values[BEFORE + 1];
    double t = atLow / (atLow - atHigh);
    for (int i = 0; i < STEPS && t > 0 && t < 1; i++) {
      double value = quintic(values, t);
      if (Math.abs(value) < CLOSE) {
        break;
      }
      if (value > 0 == atLow > 0) {
        low = t;
        atLow = value;
        atHigh /= 2;
      } else {
        high = t;
        atHigh = value;
        atLow /= 2;
      }
      t = low + (high - low) * atLow / (atLow - atHigh);
    }
    return Math.max(0, Math.min(1, t));
  }

  /** Source: the barycentric form of Lagrange's polynomial, Berrut and Trefethen, 2004. */
  private static double quintic(double[] values, double t) {
    double above = 0;
    double below = 0;
    for (int k = 0; k < NODES; k++) {
      double weight = WEIGHTS[k] / (t - (k - BEFORE));
      above += weight * values[k];
      below += weight;
    }
    return above / below;
  }
}
