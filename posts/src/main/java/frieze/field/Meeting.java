package frieze.field;

import frieze.curve.Point;

/** Adds up what a move meets, cell by cell. */
final class Meeting {
  private float deepest;
  private float standing = Float.NEGATIVE_INFINITY;
  private double x;
  private double y;
  private double depths;

  void add(double atX, double atY, float standingMm, float thickMm) {
    depths += thickMm;
    standing = Math.max(standing, standingMm);
    if (thickMm > deepest) {
      deepest = thickMm;
      x = atX;
      y = atY;
    }
  }

  Met result(double cellMm) {
    return deepest > 0
        ? new Met(deepest, new Point(x, y), standing, depths * cellMm * cellMm)
        : Met.NOTHING;
  }
}
