package frieze.clock;

import frieze.shop.Machine;

/** The accelerations of a machine's axes. */
final class Accelerations {
  /** An axis whose direction changes by less than this takes no part. */
  private static final double PART = 1e-9;

  private Accelerations() {}

  /** X, Y and Z, in mm/s2. */
  static double[] of(Machine machine) {
    return new double[] {
      machine.x().accelerationMmPerS2(),
      machine.y().accelerationMmPerS2(),
      machine.z().accelerationMmPerS2()
    };
  }

  /**
   * What a change of direction can use: the acceleration of the weakest axis that takes part. Along
   * a slant the axes together could do more; a curve turns through all directions, so they do not
   * count on it.
   */
  static double weakest(double[] limits, double dx, double dy, double dz) {
    double least = Double.POSITIVE_INFINITY;
    double[] d = {dx, dy, dz};
    for (int axis = 0; axis < 3; axis++) {
      if (Math.abs(d[axis]) > PART) {
        least = Math.min(least, limits[axis]);
      }
    }
    return least;
  }
}
