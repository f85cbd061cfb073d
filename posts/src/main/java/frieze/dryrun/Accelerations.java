package frieze.dryrun;

import frieze.shop.Machine;

/** The accelerations of a machine's axes. */
final class Accelerations {
  private Accelerations() {}

  /** X, Y and Z, in mm/s2. */
  static double[] of(Machine machine) {
    return new double[] {
      machine.x().accelerationMmPerS2(),
      machine.y().accelerationMmPerS2(),
      machine.z().accelerationMmPerS2()
    };
  }

  /** What the axes together can do along a direction that need not have length 1. */
  static double along(double[] limits, double dx, double dy, double dz) {
    double length = Math.sqrt(dx * dx + dy * dy + dz * dz);
    double least = Double.POSITIVE_INFINITY;
    double[] d = {dx, dy, dz};
    for (int axis = 0; axis < 3; axis++) {
      if (d[axis] != 0) {
        least = Math.min(least, limits[axis] * length / Math.abs(d[axis]));
      }
    }
    return least;
  }
}
