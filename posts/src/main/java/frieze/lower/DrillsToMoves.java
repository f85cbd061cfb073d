package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Position;
import frieze.motion.Step;
import java.util.ArrayList;
import java.util.List;

/** Writes drilling as plain moves where the controller lacks the cycle. */
final class DrillsToMoves implements Pass {
  /** How far above the bottom reached the drill goes back to feeding. */
  private static final double ABOVE_BOTTOM_MM = 0.5;

  /** A last peck of less than this is not worth one. */
  private static final double WHOLE_PECK_MM = 1e-6;

  private final Capabilities capabilities;

  DrillsToMoves(Capabilities capabilities) {
    this.capabilities = capabilities;
  }

  static Capabilities.Cycle cycleFor(Instruction.Drill drill) {
    if (drill.peckMm() > 0) {
      return Capabilities.Cycle.PECK;
    }
    return drill.dwellSeconds() > 0 ? Capabilities.Cycle.DWELL : Capabilities.Cycle.PLAIN;
  }

  @Override
  public List<Step> apply(List<Step> steps) {
    List<Step> out = new ArrayList<>();
    for (Step step : steps) {
      if (step.instruction() instanceof Instruction.Drill drill
          && !capabilities.cycles().contains(cycleFor(drill))) {
        moves(drill).forEach(i -> out.add(new Step(i, step.origin())));
      } else {
        out.add(step);
      }
    }
    return out;
  }

  private static List<Instruction> moves(Instruction.Drill drill) {
    List<Instruction> moves = new ArrayList<>();
    moves.add(new Instruction.RapidZ(drill.retractZ()));
    double peck = drill.peckMm() > 0 ? drill.peckMm() : drill.retractZ() - drill.bottomZ();
    double reached = drill.retractZ();
    while (reached > drill.bottomZ()) {
      if (reached < drill.retractZ()) {
        moves.add(new Instruction.RapidZ(drill.retractZ()));
        moves.add(new Instruction.RapidZ(Math.min(reached + ABOVE_BOTTOM_MM, drill.retractZ())));
      }
      boolean last = reached - peck < drill.bottomZ() + WHOLE_PECK_MM;
      reached = last ? drill.bottomZ() : reached - peck;
      moves.add(
          new Instruction.Feed(new Position(drill.x(), drill.y(), reached), drill.feedMmPerMin()));
    }
    if (drill.dwellSeconds() > 0) {
      moves.add(new Instruction.Dwell(drill.dwellSeconds()));
    }
    moves.add(new Instruction.RapidZ(drill.retractZ()));
    return moves;
  }
}
