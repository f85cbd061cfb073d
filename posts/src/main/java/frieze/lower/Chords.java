package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Motion;
import java.util.ArrayList;
import java.util.List;

/** Lines in place of an arc. */
final class Chords {
  private Chords() {}

  /** Cuts whose ends lie on the arc, and which stay within a tolerance of it. */
  static List<Instruction> of(Motion.Turn path, double toleranceMm, double feedMmPerMin) {
    int pieces = count(path.radiusMm(), path.sweepRad(), toleranceMm);
    List<Instruction> out = new ArrayList<>();
    for (int i = 1; i <= pieces; i++) {
      out.add(new Instruction.Feed(path.at((double) i / pieces), feedMmPerMin));
    }
    return out;
  }

  /** A chord over a step s departs from its circle by r(1 - cos(s/2)). */
  static int count(double radiusMm, double sweepRad, double toleranceMm) {
    double halfStep = StrictMath.acos(Math.max(0, 1 - toleranceMm / radiusMm));
    return (int) Math.max(1, Math.ceil(Math.abs(sweepRad) / (2 * halfStep)));
  }
}
