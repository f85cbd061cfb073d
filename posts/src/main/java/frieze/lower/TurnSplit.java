package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Position;
import java.util.ArrayList;
import java.util.List;

/**
 * Splits turns until a controller reads each without doubt: whole revolutions where it takes full
 * circles, otherwise at most half of one; short of that in the radius format, which is ill
 * conditioned near a half turn.
 *
 * <p>An arc that is nearly, but not quite, a full circle is split as well: rounding may move its
 * end past its start, and the controller would then see a tiny arc.
 *
 * <p><i>Source:</i> NISTIR 6556, 3.5.3.1: radius format arcs of 165 to 195 degrees and above 345
 * are said to be very bad.
 */
final class TurnSplit extends TurnPass {
  private static final double TURN_RAD = 2 * Math.PI;

  /** A sweep this close to whole turns is whole. */
  private static final double WHOLE_RAD = 1e-9;

  /** The most that one arc may sweep unless it is a full circle. */
  private static final double MOST_OF_TURN_RAD = 1.75 * Math.PI;

  private static final double RADIUS_FORMAT_RAD = Math.PI * 2 / 3;

  private final Capabilities.Arcs arcs;

  TurnSplit(Capabilities.Arcs arcs) {
    this.arcs = arcs;
  }

  private int pieces(double sweepRad) {
    double sweep = Math.abs(sweepRad);
    if (arcs.format() == Capabilities.ArcFormat.RADIUS) {
      return (int) Math.ceil(sweep / RADIUS_FORMAT_RAD - WHOLE_RAD);
    }
    if (!arcs.fullCircles()) {
      return (int) Math.ceil(sweep / Math.PI - WHOLE_RAD);
    }
    if (isWholeTurns(sweep)) {
      return (int) Math.rint(sweep / TURN_RAD);
    }
    if (sweep <= MOST_OF_TURN_RAD) {
      return 1;
    }
    return (int) Math.max(2, Math.ceil(sweep / MOST_OF_TURN_RAD));
  }

  static boolean isWholeTurns(double sweepRad) {
    double turns = Math.abs(sweepRad) / TURN_RAD;
    return turns > HALF_TURN && Math.abs(turns - Math.rint(turns)) * TURN_RAD <= WHOLE_RAD;
  }

  private static final double HALF_TURN = 0.5;

  @Override
  List<Instruction> replace(Instruction.Turn turn, Motion.Turn path) {
    int pieces = pieces(turn.sweepRad());
    if (pieces <= 1 || arcs.format() == Capabilities.ArcFormat.NONE) {
      return List.of(turn);
    }
    List<Instruction> out = new ArrayList<>();
    double sweep = turn.sweepRad() / pieces;
    for (int i = 1; i <= pieces; i++) {
      out.add(
          new Instruction.Turn(
              end(path, i, pieces),
              turn.plane(),
              turn.centreU(),
              turn.centreV(),
              sweep,
              turn.feedMmPerMin()));
    }
    return out;
  }

  /** Where a piece ends: exactly over the start after whole turns. */
  private static Position end(Motion.Turn path, int piece, int pieces) {
    if (piece == pieces) {
      return path.to();
    }
    double fraction = (double) piece / pieces;
    Position p = path.at(fraction);
    if (!isWholeTurns(path.sweepRad() * fraction)) {
      return p;
    }
    Position from = path.from();
    return path.plane()
        .position(
            from.get(path.plane().first()),
            from.get(path.plane().second()),
            p.get(path.plane().normal()));
  }
}
