package frieze.curve;

/**
 * The vertices of a polyline with a direction before and after each of them.
 *
 * <p>A closed polyline is unrolled: it is stored twice, so that a piece may run over its seam.
 */
final class FitSource {
  final double[] x;
  final double[] y;

  /**
   * Unit directions of arriving at and of leaving each vertex; equal where the source is smooth.
   */
  final double[] inX;

  final double[] inY;
  final double[] outX;
  final double[] outY;
  final boolean[] corner;

  FitSource(int size) {
    x = new double[size];
    y = new double[size];
    inX = new double[size];
    inY = new double[size];
    outX = new double[size];
    outY = new double[size];
    corner = new boolean[size];
  }

  int size() {
    return x.length;
  }

  Point point(int i) {
    return new Point(x[i], y[i]);
  }

  void setDirections(int i, Point in, Point out) {
    inX[i] = in.x();
    inY[i] = in.y();
    outX[i] = out.x();
    outY[i] = out.y();
  }

  /** This source from {@code first} on, {@code count} vertices, going round the end if need be. */
  FitSource cyclic(int first, int count) {
    FitSource result = new FitSource(count);
    for (int k = 0; k < count; k++) {
      int i = (first + k) % size();
      result.x[k] = x[i];
      result.y[k] = y[i];
      result.inX[k] = inX[i];
      result.inY[k] = inY[i];
      result.outX[k] = outX[i];
      result.outY[k] = outY[i];
      result.corner[k] = corner[i];
    }
    return result;
  }
}
