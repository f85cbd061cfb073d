package frieze.dryrun;

import frieze.motion.Box;

/** A box that grows. */
final class Reach {
  private final double[] min = {
    Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY
  };
  private final double[] max = {
    Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
  };

  void add(Box box) {
    for (int axis = 0; axis < 3; axis++) {
      min[axis] = Math.min(min[axis], box.min(axis));
      max[axis] = Math.max(max[axis], box.max(axis));
    }
  }

  Box box() {
    return new Box(min[0], min[1], min[2], max[0], max[1], max[2]);
  }
}
