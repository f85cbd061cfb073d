package frieze.rs274;

/** Where a move goes, in machine coordinates: millimetres, degrees for A, B and C. */
final class Target {
  final double[] to = new double[Frames.AXES];

  /** What rounding has left over of increments. */
  final double[] carry = new double[Frames.AXES];

  final long[] unknown = new long[Frames.AXES];

  void set(int axis, double value, long unknownAmount) {
    to[axis] = value;
    carry[axis] = 0;
    unknown[axis] = unknownAmount;
  }

  /** Adds an increment; what does not fit into the last digit is carried on to the next one. */
  void add(int axis, double delta) {
    double a = to[axis];
    double y = delta + carry[axis];
    double sum = a + y;
    double back = sum - a;
    carry[axis] = (a - (sum - back)) + (y - back);
    to[axis] = sum;
  }
}
