package frieze.dryrun;

import frieze.motion.Executed;
import frieze.motion.Executed.MachinePosition;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Machine;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The path of a rapid whose axes do not wait for each other: each goes as fast as it can until it
 * is there.
 *
 * <p><em>Approximation:</em> axes are at full speed at once. Without a machine they are taken as
 * equally fast.
 */
final class Dogleg {
  private static final int AXES = 3;

  private Dogleg() {}

  /** The straight legs of a rapid, in their order; the move itself when it has no bend. */
  static List<Executed.Move> legs(Executed.Move rapid, Optional<Machine> machine) {
    Position from = rapid.path().from();
    Position to = rapid.path().to();
    double[] arrives = new double[AXES];
    for (int axis = 0; axis < AXES; axis++) {
      double speed = machine.isPresent() ? machine.get().axis(axis).rapidMmPerMin() : 1;
      arrives[axis] = Math.abs(to.get(axis) - from.get(axis)) / speed;
    }
    double[] bends = Arrays.stream(arrives).filter(t -> t > 0).sorted().distinct().toArray();
    if (bends.length < 2) {
      return List.of(rapid);
    }
    List<Executed.Move> legs = new ArrayList<>();
    Position at = from;
    for (int i = 0; i < bends.length; i++) {
      boolean last = i == bends.length - 1;
      Position next = last ? to : at(from, to, arrives, bends[i]);
      legs.add(leg(rapid, at, next));
      at = next;
    }
    return legs;
  }

  private static Position at(Position from, Position to, double[] arrives, double time) {
    double[] c = new double[AXES];
    for (int axis = 0; axis < AXES; axis++) {
      double share = arrives[axis] > time ? time / arrives[axis] : 1;
      c[axis] =
          share == 1 ? to.get(axis) : from.get(axis) + share * (to.get(axis) - from.get(axis));
    }
    return new Position(c[0], c[1], c[2]);
  }

  private static Executed.Move leg(Executed.Move rapid, Position from, Position to) {
    return new Executed.Move(
        rapid.kind(),
        new Motion.Straight(from, to),
        rapid.fromKnown(),
        rapid.toKnown(),
        new MachinePosition(machine(rapid, to, 0), machine(rapid, to, 1), machine(rapid, to, 2)),
        rapid.feedMmPerMin(),
        rapid.seconds(),
        rapid.state(),
        rapid.span());
  }

  private static OptionalDouble machine(Executed.Move rapid, Position at, int axis) {
    OptionalDouble end = rapid.machineTo().get(axis);
    double before = rapid.path().to().get(axis) - at.get(axis);
    return end.isPresent() ? OptionalDouble.of(end.getAsDouble() - before) : end;
  }
}
