package frieze.clock;

import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Motion;
import frieze.motion.Motion.Turn;
import frieze.motion.Motions;
import frieze.shop.Machine;
import java.util.Optional;

/** A move as the clock sees it: its length, its directions at both ends, and its limits. */
final class Leg {
  private static final double SECONDS_PER_MINUTE = 60;

  final ClockAccount account;
  final boolean isRapid;
  final boolean isStraight;
  final double lengthMm;
  final double[] entry;
  final double[] exit;
  final double cruiseMmPerS;
  final double accelerationMmPerS2;

  /** The most at which the corner before it may be passed; set by the clock. */
  double entryLimitMmPerS;

  private Leg(
      ClockAccount account, Executed.Move move, Motion path, double cruise, double acceleration) {
    this.account = account;
    this.isRapid = move.kind() == Kind.RAPID;
    this.isStraight = !(path instanceof Turn);
    this.lengthMm = path.lengthMm();
    this.entry = Motions.direction(path, true);
    this.exit = Motions.direction(path, false);
    this.cruiseMmPerS = cruise;
    this.accelerationMmPerS2 = acceleration;
  }

  /** Reads a move; empty if it goes nowhere that is known, or has no feed. */
  static Optional<Leg> of(Executed.Move move, Optional<Machine> machine, ClockAccount account) {
    Motion path = Motions.known(move);
    double length = path.lengthMm();
    if (!(length > 0)) {
      return Optional.empty();
    }
    double acceleration = axisLimit(path, machine.map(Accelerations::of));
    double cruise = cruise(move, path, length, machine);
    if (path instanceof Turn turn) {
      cruise = Math.min(cruise, aroundMmPerS(turn, length, machine));
    }
    return cruise > 0
        ? Optional.of(new Leg(account, move, path, cruise, acceleration))
        : Optional.empty();
  }

  private static double cruise(
      Executed.Move move, Motion path, double length, Optional<Machine> machine) {
    double axes = axisLimit(path, machine.map(m -> speeds(m, move.kind() == Kind.RAPID)));
    if (move.kind() == Kind.RAPID) {
      return axes;
    }
    if (move.seconds().isPresent() && move.seconds().getAsDouble() > 0) {
      return Math.min(axes, length / move.seconds().getAsDouble());
    }
    return Math.min(axes, move.feedMmPerMin().orElse(0) / SECONDS_PER_MINUTE);
  }

  /** The speed at which an arc's pull towards its centre reaches the weakest axis's limit. */
  private static double aroundMmPerS(Turn turn, double length, Optional<Machine> machine) {
    double planar = Math.abs(turn.radiusMm() * turn.sweepRad());
    if (machine.isEmpty() || planar == 0) {
      return Double.POSITIVE_INFINITY;
    }
    double[] limits = Accelerations.of(machine.get());
    double acceleration = Math.min(limits[turn.plane().first()], limits[turn.plane().second()]);
    return Math.sqrt(acceleration * turn.radiusMm()) * length / planar;
  }

  /** Along the path's worst direction, the most that no axis's limit forbids. */
  private static double axisLimit(Motion path, Optional<double[]> limits) {
    if (limits.isEmpty()) {
      return Double.POSITIVE_INFINITY;
    }
    double least = Double.POSITIVE_INFINITY;
    for (int axis = 0; axis < 3; axis++) {
      double share = Motions.largestShare(path, axis);
      if (share > 0) {
        least = Math.min(least, limits.get()[axis] / share);
      }
    }
    return least;
  }

  private static double[] speeds(Machine m, boolean rapid) {
    double[] speeds = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      Machine.Axis limits = m.axis(axis);
      speeds[axis] =
          (rapid ? limits.rapidMmPerMin() : limits.maxFeedMmPerMin()) / SECONDS_PER_MINUTE;
    }
    return speeds;
  }
}
