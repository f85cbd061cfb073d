package frieze.trace;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;

/** Takes what lies around a photographed sheet out of a picture: a table is not ink. */
final class SheetCrop {
  /** The sheet's rim has a shadow; this part of the way to the middle is cut off. */
  private static final double RIM = 0.015;

  /** Just within an edge. */
  private static final double WITHIN = 0.999;

  private SheetCrop() {}

  /**
   * Carries the sheet's border on over all that lies outside of it.
   *
   * @param corners of the sheet in pixels, Y down, clockwise as seen
   */
  static GreyImage crop(GreyImage image, List<Point> corners) {
    Point middle = Point.ORIGIN;
    for (Point corner : corners) {
      middle = middle.plus(corner.times(1.0 / corners.size()));
    }
    List<Point> inner = new ArrayList<>();
    for (Point corner : corners) {
      inner.add(corner.towards(middle, RIM));
    }
    float[] values = image.values().clone();
    for (int i = 0; i < values.length; i++) {
      int row = i / image.width();
      Point p = new Point(i % image.width() + 0.5, row + 0.5);
      double share = share(inner, middle, p);
      if (share < 1) {
        Point in = middle.towards(p, WITHIN * share);
        int x = Math.max(0, Math.min(image.width() - 1, (int) in.x()));
        int y = Math.max(0, Math.min(image.height() - 1, (int) in.y()));
        values[i] = image.value(y * image.width() + x);
      }
    }
    return new GreyImage(image.width(), image.height(), values);
  }

  /** How far one can go from the middle towards a point without leaving; 1 for all the way. */
  private static double share(List<Point> corners, Point middle, Point p) {
    double share = 1;
    for (int k = 0; k < corners.size(); k++) {
      Point a = corners.get(k);
      Point edge = corners.get((k + 1) % corners.size()).minus(a);
      double from = edge.cross(middle.minus(a));
      double to = edge.cross(p.minus(a));
      if (to < 0) {
        share = Math.min(share, from / (from - to));
      }
    }
    return share;
  }
}
