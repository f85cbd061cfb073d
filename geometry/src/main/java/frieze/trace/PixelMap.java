package frieze.trace;

import frieze.curve.Point;
import java.util.List;

/** Maps pixels, origin at the lower left corner of the picture and Y up, to millimetres. */
@FunctionalInterface
interface PixelMap {
  Point toMm(Point pixel);

  static PixelMap scale(double mmPerPixel) {
    return p -> p.times(mmPerPixel);
  }

  /**
   * Takes the bend of a lens out before another map.
   *
   * @param bend by which part the corner of the picture lies too far out (positive) or too far in
   */
  static PixelMap straightened(PixelMap next, double bend, GreyImage image) {
    if (bend == 0) {
      return next;
    }
    Point centre = new Point(image.width() / 2.0, image.height() / 2.0);
    double corner = centre.dot(centre);
    return p -> {
      Point out = p.minus(centre);
      double seen = out.norm();
      double real = seen;
      for (int i = 0; i < 30; i++) {
        real = seen / (1 + bend * real * real / corner);
      }
      return next.toMm(seen == 0 ? p : centre.plus(out.times(real / seen)));
    };
  }

  /**
   * Squares up a photographed rectangle. Source: the projective map of four points, as in any
   * textbook of plane projective geometry.
   *
   * @param corners lower left, lower right, upper right, upper left, in pixels, Y up
   * @throws IllegalArgumentException if they do not go round a convex quadrilateral
   */
  static PixelMap squared(List<Point> corners, double widthMm, double heightMm) {
    if (corners.size() != 4) {
      throw new IllegalArgumentException("corners must be 4 but were " + corners.size());
    }
    for (int i = 0; i < 4; i++) {
      Point a = corners.get(i);
      Point b = corners.get((i + 1) % 4);
      Point c = corners.get((i + 2) % 4);
      if (!(b.minus(a).cross(c.minus(b)) > 0)) {
        throw new IllegalArgumentException("corners must go round a convex quadrilateral");
      }
    }
    double[] h = fromUnitSquare(corners);
    double[] inverse = adjugate(h);
    return p -> {
      double u = inverse[0] * p.x() + inverse[1] * p.y() + inverse[2];
      double v = inverse[3] * p.x() + inverse[4] * p.y() + inverse[5];
      double w = inverse[6] * p.x() + inverse[7] * p.y() + inverse[8];
      return new Point(u / w * widthMm, v / w * heightMm);
    };
  }

  private static double[] fromUnitSquare(List<Point> q) {
    Point d1 = q.get(1).minus(q.get(2));
    Point d2 = q.get(3).minus(q.get(2));
    Point sum = q.get(0).minus(q.get(1)).plus(q.get(2)).minus(q.get(3));
    double det = d1.cross(d2);
    double g = sum.cross(d2) / det;
    double k = d1.cross(sum) / det;
    Point e1 = q.get(1).minus(q.get(0)).plus(q.get(1).times(g));
    Point e2 = q.get(3).minus(q.get(0)).plus(q.get(3).times(k));
    return new double[] {e1.x(), e2.x(), q.get(0).x(), e1.y(), e2.y(), q.get(0).y(), g, k, 1};
  }

  private static double[] adjugate(double[] m) {
    return new double[] {
      m[4] * m[8] - m[5] * m[7], m[2] * m[7] - m[1] * m[8], m[1] * m[5] - m[2] * m[4],
      m[5] * m[6] - m[3] * m[8], m[0] * m[8] - m[2] * m[6], m[2] * m[3] - m[0] * m[5],
      m[3] * m[7] - m[4] * m[6], m[1] * m[6] - m[0] * m[7], m[0] * m[4] - m[1] * m[3]
    };
  }
}
