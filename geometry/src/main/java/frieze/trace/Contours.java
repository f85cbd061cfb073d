package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Finds the closed lines along which a picture has the middle value.
 *
 * <p>Marching squares; a crossing between two pixels is the root of the cubic through four of them.
 * Beyond the picture there is paper, so every line closes. The ink lies on the left, seen with Y
 * up: outer outlines run counter-clockwise, holes clockwise.
 */
final class Contours {
  private static final float LEVEL = 0.5f;
  private static final int TOP = 0;
  private static final int RIGHT = 1;
  private static final int BOTTOM = 2;
  private static final int NEWTON_STEPS = 4;

  private final GreyImage image;
  private final BitSet seen = new BitSet();

  private Contours(GreyImage ink) {
    this.image = ink;
  }

  /**
   * Finds all lines.
   *
   * @param ink 0 for paper, 1 for ink
   * @return points in pixels, the origin at the lower left corner of the picture, Y up
   */
  static List<List<Point>> of(GreyImage ink) {
    Contours contours = new Contours(ink);
    List<List<Point>> all = new ArrayList<>();
    for (int y = 0; y < ink.height(); y++) {
      for (int x = -1; x < ink.width(); x++) {
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
    double t =
        root(
            image.at(px - dx, py - dy, 0) - LEVEL,
            image.at(px, py, 0) - LEVEL,
            image.at(px + dx, py + dy, 0) - LEVEL,
            image.at(px + 2 * dx, py + 2 * dy, 0) - LEVEL);
    return new Point(px + 0.5 + t * dx, image.height() - (py + 0.5 + t * dy));
  }

  /** The root in 0 .. 1 of the cubic through values at -1, 0, 1 and 2; b and c differ in sign. */
  static double root(double a, double b, double c, double d) {
    double c1 = c - b / 2 - a / 3 - d / 6;
    double c2 = (a + c) / 2 - b;
    double c3 = (d - a) / 6 + (b - c) / 2;
    double linear = b / (b - c);
    double t = linear;
    for (int i = 0; i < NEWTON_STEPS; i++) {
      double slope = c1 + t * (2 * c2 + t * 3 * c3);
      t -= (b + t * (c1 + t * (c2 + t * c3))) / slope;
      if (!(t >= 0 && t <= 1)) {
        return linear;
      }
    }
    return t;
  }
}
