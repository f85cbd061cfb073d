package frieze.clock;

import frieze.diagnostic.SourceSpan;
import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Executed.MachinePosition;
import frieze.motion.Executed.Rotation;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.shop.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Makes moves one after the other, for tests of what looks at moves. */
final class Moves {
  private final List<Executed.Move> all = new ArrayList<>();
  private Position at;

  Moves(double x, double y, double z) {
    at = new Position(x, y, z);
  }

  Moves rapid(double x, double y, double z) {
    return add(Kind.RAPID, new Motion.Straight(at, new Position(x, y, z)), OptionalDouble.empty());
  }

  public Moves feed(double x, double y, double z, double feedMmPerMin) {
    return add(
        Kind.FEED, new Motion.Straight(at, new Position(x, y, z)), OptionalDouble.of(feedMmPerMin));
  }

  /** An arc in XY about a centre, by an angle. */
  Moves turn(double centreX, double centreY, double sweepRad, double feedMmPerMin) {
    double dx = at.x() - centreX;
    double dy = at.y() - centreY;
    double cos = Math.cos(sweepRad);
    double sin = Math.sin(sweepRad);
    Position to =
        new Position(centreX + dx * cos - dy * sin, centreY + dx * sin + dy * cos, at.z());
    return add(
        Kind.FEED,
        new Motion.Turn(at, to, Plane.XY, centreX, centreY, sweepRad),
        OptionalDouble.of(feedMmPerMin));
  }

  private Moves add(Kind kind, Motion path, OptionalDouble feed) {
    all.add(
        new Executed.Move(
            kind,
            path,
            KnownAxes.ALL,
            KnownAxes.ALL,
            MachinePosition.UNKNOWN,
            feed,
            OptionalDouble.empty(),
            new Executed.State(Optional.empty(), Rotation.CLOCKWISE, OptionalDouble.empty(), false),
            new SourceSpan("test", all.size() + 1, 1, 0)));
    at = path.to();
    return this;
  }

  List<Executed.Move> all() {
    return all;
  }

  /** Seconds on a machine with a clock of its own. */
  double seconds(Machine machine, ClockSettings settings) {
    MotionClock clock = new MotionClock(Optional.of(machine), settings);
    ClockAccount account = new ClockAccount();
    all.forEach(m -> clock.move(m, account));
    clock.stop();
    return account.spent().totalSeconds();
  }

  static Machine machine(double rapidMmPerS, double feedMmPerS, double accelerationMmPerS2) {
    Machine.Axis axis = new Machine.Axis(rapidMmPerS * 60, feedMmPerS * 60, accelerationMmPerS2);
    return machine(axis, axis, axis);
  }

  static Machine machine(Machine.Axis x, Machine.Axis y, Machine.Axis z) {
    return new Machine(
        "test machine",
        "rs274-full",
        800,
        400,
        100,
        x,
        y,
        z,
        new Machine.Spindle(false, 5000, 24000, List.of(), 3),
        false,
        false,
        0);
  }
}
