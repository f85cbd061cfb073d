package frieze.lower;

import frieze.curve.Tolerances;
import frieze.motion.Instruction;
import frieze.motion.Motion;
import java.util.List;

/** Writes lines for the arcs that a controller does not draw. */
final class ArcsToLines extends TurnPass {
  private static final double FLAT_MM = 1e-9;

  private final Capabilities.Arcs arcs;
  private final Tolerances tolerances;

  ArcsToLines(Capabilities.Arcs arcs, Tolerances tolerances) {
    this.arcs = arcs;
    this.tolerances = tolerances;
  }

  @Override
  List<Instruction> replace(Instruction.Turn turn, Motion.Turn path) {
    return drawn(path)
        ? List.of(turn)
        : Chords.of(path, tolerances.flattenMm(), turn.feedMmPerMin());
  }

  private boolean drawn(Motion.Turn path) {
    int normal = path.plane().normal();
    boolean climbs = Math.abs(path.to().get(normal) - path.from().get(normal)) > FLAT_MM;
    return arcs.planes().contains(path.plane())
        && (arcs.helices() || !climbs)
        && path.radiusMm() >= arcs.minRadiusMm()
        && path.radiusMm() <= arcs.maxRadiusMm();
  }
}
