package frieze.rs274;

/**
 * The numbered variables of a program, 1 .. 5399.
 *
 * <p>Those that the machine keeps along X, Y and Z (probe results, homes, offsets, origins) are
 * lengths: they are held in millimetres, and a program sees them in its unit. Such a length may be
 * unknown; then {@link #unknown} tells which unknown amount has to be added to the part that is
 * known.
 *
 * <p>Source: NISTIR 6556, 3.2.1.
 */
final class Parameters {
  /** The highest number that a program may use (NISTIR 6556, 3.3.2.2). */
  static final int HIGHEST = 5399;

  static final int PROBE = 5061;
  static final int HOME_28 = 5161;
  static final int HOME_30 = 5181;
  static final int G92 = 5211;
  static final int SYSTEM = 5220;
  private static final int SYSTEM_1 = 5221;
  private static final int PER_SYSTEM = 20;

  private final double[] values = new double[HIGHEST + 1];
  private final long[] unknown = new long[HIGHEST + 1];
  private double unitMm = 1;

  Parameters() {
    values[SYSTEM] = 1;
  }

  /** Sets the unit in which the program sees lengths. */
  void unit(LengthUnit unit) {
    unitMm = unit.mm();
  }

  /** The number that the program sees. */
  double get(int number) {
    return isLength(number) ? values[number] / unitMm : values[number];
  }

  /** Sets the number that the program sees; it is known from then on. */
  void set(int number, double value) {
    values[number] = isLength(number) ? value * unitMm : value;
    unknown[number] = 0;
  }

  /** Tells which unknown amount is to be added; 0 when the value is known. */
  long unknown(int number) {
    return unknown[number];
  }

  /** The value of a parameter that the machine keeps: millimetres, or degrees of a rotary axis. */
  double stored(int number) {
    return values[number];
  }

  void store(int number, double value, long unknownAmount) {
    values[number] = value;
    unknown[number] = unknownAmount;
  }

  static boolean exists(long number) {
    return number >= 1 && number <= HIGHEST;
  }

  /** The parameter that holds an axis of a coordinate system's origin. */
  static int origin(int system, int axis) {
    return SYSTEM_1 + (system - 1) * PER_SYSTEM + axis;
  }

  private static boolean isLength(int number) {
    if (number < PROBE) {
      return false;
    }
    if (number >= SYSTEM_1) {
      int within = (number - SYSTEM_1) % PER_SYSTEM;
      return within < Frames.LINEAR && number < origin(Frames.SYSTEMS + 1, 0);
    }
    return within(number, PROBE)
        || within(number, HOME_28)
        || within(number, HOME_30)
        || within(number, G92);
  }

  private static boolean within(int number, int first) {
    return number >= first && number < first + Frames.LINEAR;
  }
}
