package frieze.rs274;

import frieze.motion.Executed.Kind;
import frieze.rs274.ReadingRules.ProbeEnd;

/** Carries out G38.2. Source: NISTIR 6556, 3.5.9. */
final class Probing {
  private static final double NEAREST_MM = 0.254;

  private final ProbeEnd probeEnd;
  private final Parameters parameters;
  private final Mover mover;
  private final Frames frames;
  private long probes;

  Probing(ReadingRules rules, Parameters parameters, Mover mover) {
    this.probeEnd = rules.meaning().probeEnd();
    this.parameters = parameters;
    this.mover = mover;
    this.frames = mover.frames;
  }

  /** Feeds towards the point of the words until the probe trips. */
  void probe(Block block) {
    if ((block.present & LineCodes.bits("XYZ")) == 0) {
      throw Refusal.ofLine(block, ProgramCode.NO_AXIS_WORD, "G38.2 needs X, Y or Z");
    }
    if (mover.modes.compensation) {
      throw Refusal.ofLine(
          block, ProgramCode.COMPENSATION_ON, "no probing while compensation is on");
    }
    if (mover.modes.inverseTime) {
      throw Refusal.ofLine(
          block, ProgramCode.PROBE_INVERSE_TIME, "no probing in inverse time mode (G93)");
    }
    mover.aimAtWords();
    double square = 0;
    boolean known = true;
    for (int axis = 0; axis < Frames.AXES; axis++) {
      double way = mover.target.to[axis] - frames.at[axis];
      if (axis < Frames.LINEAR) {
        square += way * way;
        known &= frames.wayKnown(axis, mover.target);
      } else if (way != 0) {
        throw Refusal.ofLine(
            block, ProgramCode.PROBE_ROTARY, "a rotary axis may not move in a probing");
      }
    }
    if (known && Math.sqrt(square) < NEAREST_MM) {
      throw Refusal.ofLine(
          block,
          ProgramCode.PROBE_TOO_NEAR,
          "the point is nearer than 0.254 mm (0.01 in) to the start");
    }
    mover.useFeed();
    boolean[] probed = new boolean[Frames.LINEAR];
    for (int axis = 0; axis < Frames.LINEAR; axis++) {
      probed[axis] =
          mover.target.to[axis] != frames.at[axis] || !frames.wayKnown(axis, mover.target);
    }
    mover.straight(Kind.PROBE);
    afterProbe(probed);
  }

  /** Says where the probe tripped, or that nobody knows. */
  private void afterProbe(boolean[] probed) {
    for (int axis = 0; axis < Frames.LINEAR; axis++) {
      if (probeEnd == ProbeEnd.UNKNOWN && probed[axis]) {
        frames.leaveAtSurface(axis, Unknowns.of(Unknowns.Kind.PROBE, probes * Frames.AXES + axis));
      }
      parameters.store(
          Parameters.PROBE + axis,
          frames.current(axis),
          frames.unknown[axis] - frames.baseUnknown(axis));
    }
    probes++;
  }
}
