package frieze.rs274;

import frieze.motion.Executed.KnownAxes;
import frieze.motion.Executed.MachinePosition;
import frieze.rs274.Unknowns.Kind;
import java.util.OptionalDouble;

/**
 * Where the tool stands, and where the coordinate systems lie.
 *
 * <p>Every coordinate is a known number plus an unknown amount ({@link Unknowns}), in machine
 * coordinates; so a position may be known to the program and not to the machine, or the other way
 * round. In Z, machine coordinate = program coordinate + origin + G92 offset + tool length.
 *
 * <p>The program's frame is that of the work coordinates in force when the program gives an axis
 * its first known position; later changes of the origin do not move it, unless they set zero at a
 * point that a probe has found.
 */
final class Frames {
  static final int AXES = 6;
  static final int LINEAR = 3;
  static final int SYSTEMS = 9;
  static final String LETTERS = "XYZABC";
  private static final int Z = 2;

  final double[] at = new double[AXES];
  final double[] carry = new double[AXES];
  final long[] unknown = new long[AXES];
  private final double[] origin = new double[AXES];
  private final long[] originUnknown = new long[AXES];
  private final double[] shift = new double[AXES];
  private final long[] shiftUnknown = new long[AXES];
  private double toolLength;
  private long toolLengthUnknown;
  private final double[] frame = new double[AXES];
  private final long[] frameUnknown = new long[AXES];
  private final boolean[] anchored = new boolean[AXES];

  /** The unknown amount that the last probing along an axis has left; 0 without one. */
  private final long[] probed = new long[AXES];

  /** Where the path stands as it is drawn: unknown axes keep their last value. */
  private final double[] drawn = new double[LINEAR];

  private final Parameters parameters;

  Frames(Start start, Parameters parameters) {
    this.parameters = parameters;
    for (int system = 1; system <= SYSTEMS; system++) {
      MachinePosition offset = start.workOffsets().getOrDefault(system, MachinePosition.UNKNOWN);
      for (int axis = 0; axis < LINEAR; axis++) {
        long name = Unknowns.of(Kind.ORIGIN, (long) system * AXES + axis);
        store(Parameters.origin(system, axis), offset.get(axis), name);
      }
    }
    for (int axis = 0; axis < LINEAR; axis++) {
      store(Parameters.HOME_28 + axis, start.home28().get(axis), Unknowns.of(Kind.HOME_28, axis));
      store(Parameters.HOME_30 + axis, start.home30().get(axis), Unknowns.of(Kind.HOME_30, axis));
    }
    selectSystem(1);
    for (int axis = 0; axis < LINEAR; axis++) {
      if (start.position().isPresent()) {
        at[axis] = start.position().get().get(axis) + origin[axis];
        unknown[axis] = originUnknown[axis];
        anchored[axis] = true;
        drawn[axis] = start.position().get().get(axis);
      } else {
        unknown[axis] = Unknowns.of(Kind.START, axis);
      }
    }
  }

  private void store(int parameter, OptionalDouble value, long name) {
    parameters.store(parameter, value.orElse(0), value.isPresent() ? 0 : name);
  }

  /** Takes an origin into force, as the parameters have it. */
  void selectSystem(int system) {
    for (int axis = 0; axis < AXES; axis++) {
      int parameter = Parameters.origin(system, axis);
      origin[axis] = parameters.stored(parameter);
      originUnknown[axis] = parameters.unknown(parameter);
    }
    moveFrame();
  }

  /**
   * Gives the present point a new number along an axis (G92). Where a probe has found the point,
   * the program's frame goes along: its zero is on the work again.
   */
  void shiftTo(int axis, double number) {
    shift[axis] = at[axis] - origin[axis] - lengthAlong(axis) - number;
    shiftUnknown[axis] = unknown[axis] - originUnknown[axis] - lengthUnknownAlong(axis);
    if (probed[axis] != 0 && unknown[axis] == probed[axis]) {
      anchored[axis] = false;
    }
    moveFrame();
  }

  /** Writes the G92 offsets into the parameters. */
  void rememberShift() {
    for (int axis = 0; axis < AXES; axis++) {
      parameters.store(Parameters.G92 + axis, shift[axis], shiftUnknown[axis]);
    }
  }

  void recallShift() {
    for (int axis = 0; axis < AXES; axis++) {
      shift[axis] = parameters.stored(Parameters.G92 + axis);
      shiftUnknown[axis] = parameters.unknown(Parameters.G92 + axis);
    }
    moveFrame();
  }

  void clearShift() {
    java.util.Arrays.fill(shift, 0);
    java.util.Arrays.fill(shiftUnknown, 0);
    moveFrame();
  }

  boolean shifted() {
    for (int axis = 0; axis < AXES; axis++) {
      if (shift[axis] != 0 || shiftUnknown[axis] != 0) {
        return true;
      }
    }
    return false;
  }

  void toolLength(double lengthMm, long unknownAmount) {
    toolLength = lengthMm;
    toolLengthUnknown = unknownAmount;
  }

  /** Lets the program's frame follow the origin along axes that have not been given a place yet. */
  private void moveFrame() {
    for (int axis = 0; axis < AXES; axis++) {
      if (!anchored[axis]) {
        frame[axis] = origin[axis] + shift[axis];
        frameUnknown[axis] = originUnknown[axis] + shiftUnknown[axis];
      }
    }
  }

  private double lengthAlong(int axis) {
    return axis == Z ? toolLength : 0;
  }

  private long lengthUnknownAlong(int axis) {
    return axis == Z ? toolLengthUnknown : 0;
  }

  /** What to add to a program coordinate to get the machine's. */
  double base(int axis) {
    return origin[axis] + shift[axis] + lengthAlong(axis);
  }

  long baseUnknown(int axis) {
    return originUnknown[axis] + shiftUnknown[axis] + lengthUnknownAlong(axis);
  }

  /** The number that the program has for the present place, in millimetres or degrees. */
  double current(int axis) {
    return at[axis] - base(axis);
  }

  void startAt(Target target) {
    for (int axis = 0; axis < AXES; axis++) {
      target.to[axis] = at[axis];
      target.carry[axis] = carry[axis];
      target.unknown[axis] = unknown[axis];
    }
  }

  /** The coordinate, in the program's frame, from which a move along an axis is drawn. */
  double drawnFrom(int axis) {
    return isKnown(axis, unknown[axis]) ? inFrame(axis, at[axis]) : drawn[axis];
  }

  /** The coordinate, in the program's frame, to which a move along an axis is drawn. */
  double drawnTo(int axis, Target target) {
    if (isKnown(axis, target.unknown[axis])) {
      return inFrame(axis, target.to[axis]);
    }
    if (target.unknown[axis] == unknown[axis]) {
      return drawnFrom(axis) + (target.to[axis] - at[axis]);
    }
    return drawnFrom(axis);
  }

  private double inFrame(int axis, double machine) {
    return machine - lengthAlong(axis) - frame[axis];
  }

  private boolean isKnown(int axis, long amount) {
    return amount - lengthUnknownAlong(axis) == frameUnknown[axis];
  }

  /** Tells whether the way along an axis is known, whatever is known of its ends. */
  boolean wayKnown(int axis, Target target) {
    return target.unknown[axis] == unknown[axis];
  }

  KnownAxes known(long[] amounts) {
    boolean x = isKnown(0, amounts[0]);
    boolean y = isKnown(1, amounts[1]);
    boolean z = isKnown(Z, amounts[Z]);
    if (x && y && z) {
      return KnownAxes.ALL;
    }
    return x || y || z ? new KnownAxes(x, y, z) : KnownAxes.NONE;
  }

  MachinePosition machine(Target target) {
    long[] u = target.unknown;
    if (u[0] != 0 && u[1] != 0 && u[Z] != 0) {
      return MachinePosition.UNKNOWN;
    }
    return new MachinePosition(told(target, 0), told(target, 1), told(target, Z));
  }

  private static OptionalDouble told(Target target, int axis) {
    return target.unknown[axis] == 0 ? OptionalDouble.of(target.to[axis]) : OptionalDouble.empty();
  }

  /** Stands at the target from now on. */
  void arrive(Target target) {
    for (int axis = 0; axis < LINEAR; axis++) {
      drawn[axis] = drawnTo(axis, target);
    }
    for (int axis = 0; axis < AXES; axis++) {
      at[axis] = target.to[axis];
      carry[axis] = target.carry[axis];
      unknown[axis] = target.unknown[axis];
      anchored[axis] |= isKnown(axis, unknown[axis]);
    }
  }

  /** Forgets where an axis stands: it may have gone anywhere. */
  void lose(int axis, long name) {
    drawn[axis] = drawnFrom(axis);
    unknown[axis] = name;
    carry[axis] = 0;
  }

  /** Leaves an axis at the surface that a probe has met, wherever on its way that was. */
  void leaveAtSurface(int axis, long name) {
    lose(axis, name);
    probed[axis] = name;
  }

  /** Where the tool stands, as the program would number it (in millimetres). */
  MachinePosition currentPosition() {
    return new MachinePosition(currentOf(0), currentOf(1), currentOf(Z));
  }

  private OptionalDouble currentOf(int axis) {
    return unknown[axis] == baseUnknown(axis)
        ? OptionalDouble.of(current(axis))
        : OptionalDouble.empty();
  }

  /** Where the tool stands, in machine coordinates. */
  MachinePosition machinePosition() {
    Target here = new Target();
    startAt(here);
    return machine(here);
  }
}
