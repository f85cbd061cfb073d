package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Step;
import java.util.ArrayList;
import java.util.List;

/** A pass that replaces turns, knowing where each starts. */
abstract class TurnPass implements Pass {
  /** The instructions that take the place of a turn; each starts where the one before ends. */
  abstract List<Instruction> replace(Instruction.Turn turn, Motion.Turn path);

  @Override
  public final List<Step> apply(List<Step> steps) {
    List<Step> out = new ArrayList<>();
    Cursor cursor = new Cursor();
    for (Step step : steps) {
      if (step.instruction() instanceof Instruction.Turn turn) {
        replace(turn, path(turn, cursor, step.origin()))
            .forEach(i -> out.add(new Step(i, step.origin())));
      } else {
        out.add(step);
      }
      cursor.follow(step.instruction());
    }
    return out;
  }

  static Motion.Turn path(Instruction.Turn turn, Cursor cursor, String origin) {
    return new Motion.Turn(
        cursor.position(origin),
        turn.to(),
        turn.plane(),
        turn.centreU(),
        turn.centreV(),
        turn.sweepRad());
  }
}
