package frieze.sheet;

import frieze.curve.Point;

/**
 * The part of a drawing sheet that a view is drawn on: from the stock's frame to millimetres of
 * paper, Y down.
 *
 * @param left where the stock's left edge lies on the paper
 * @param top where the stock's back edge lies on the paper
 * @param widthMm of the stock, along Y
 * @param scale millimetres of stock to one of paper
 */
record Sheet(double left, double top, double widthMm, double scale) {
  /**
   * Scales of reduction and enlargement: those of ISO 5455 (from memory), and the whole numbers
   * between them that keep a drawing large.
   */
  private static final double[] SCALES = {0.2, 0.5, 1, 2, 3, 4, 5, 6, 8, 10, 12, 15, 20, 50, 100};

  /** The least reduction at which a length fits. */
  static double scaleFor(double lengthMm, double paperMm) {
    for (double scale : SCALES) {
      if (lengthMm / scale <= paperMm) {
        return scale;
      }
    }
    return Math.ceil(lengthMm / paperMm);
  }

  static String scaleText(double scale) {
    return scale >= 1 ? "1:" + Measures.decimals(scale, 0) : Measures.decimals(1 / scale, 0) + ":1";
  }

  double x(double stockXMm) {
    return left + stockXMm / scale;
  }

  double y(double stockYMm) {
    return top + (widthMm - stockYMm) / scale;
  }

  Point at(Point stock) {
    return new Point(x(stock.x()), y(stock.y()));
  }

  /** The map from the stock's frame, as SVG writes it. */
  String matrix() {
    String s = number(1 / scale);
    return "matrix(" + s + " 0 0 -" + s + " " + number(left) + " " + number(y(0)) + ")";
  }

  private static String number(double value) {
    return Measures.decimals(value, 6);
  }
}
