package frieze.rs274;

import frieze.diagnostic.Severity;
import frieze.motion.Executed.Kind;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;

/**
 * Carries out G2 and G3.
 *
 * <p>A radius arc whose radius is too short for its chord by no more than the tolerance is taken as
 * half a circle. An end that is the start within a nanometre is taken as the start. Source: NISTIR
 * 6556, 3.5.3.
 */
final class Arcs {
  private static final double FULL = 2 * Math.PI;

  /** Start and end are one place when they are this near: rounding of inches and increments. */
  private static final double SAME_MM = 1e-6;

  /** The report calls radius arcs between these very bad, and above the third even worse. */
  private static final double UNSURE_FROM = Math.toRadians(165);

  private static final double UNSURE_TO = Math.toRadians(195);
  private static final double UNSURE_ABOVE = Math.toRadians(345);

  private static final String OFFSETS = "IJK";

  private final ReadingRules rules;
  private final Mover mover;
  private final Findings findings;

  Arcs(ReadingRules rules, Mover mover, Findings findings) {
    this.rules = rules;
    this.mover = mover;
    this.findings = findings;
  }

  /** Turns as the words of a line say. */
  void turn(Block block, boolean clockwise) {
    Plane plane = mover.modes.plane;
    char u = Frames.LETTERS.charAt(plane.first());
    char v = Frames.LETTERS.charAt(plane.second());
    if (!block.has(u) && !block.has(v)) {
      throw refuse(block, ProgramCode.ARC_NO_END, "the arc needs " + u + " or " + v, "");
    }
    boolean byRadius = block.has('R');
    checkOffsets(block, plane, byRadius);
    mover.aimAtWords();
    mover.useFeed();
    if (!mover.frames.wayKnown(plane.first(), mover.target)
        || !mover.frames.wayKnown(plane.second(), mover.target)) {
      throw refuse(
          block,
          ProgramCode.ARC_START_UNKNOWN,
          "where the arc starts is not known",
          "give " + u + " and " + v + " with G0 or G1 first");
    }
    Position from = mover.drawnFrom();
    Position to = mover.drawnTo();
    Motion path =
        byRadius
            ? radiusArc(block, plane, from, to, clockwise)
            : centreArc(block, plane, from, to, clockwise);
    mover.move(Kind.FEED, path);
  }

  private void checkOffsets(Block block, Plane plane, boolean byRadius) {
    char i = OFFSETS.charAt(plane.first());
    char j = OFFSETS.charAt(plane.second());
    char k = OFFSETS.charAt(plane.normal());
    boolean any = block.has(i) || block.has(j);
    if (byRadius && (any || block.has(k))) {
      throw new Refusal(
          ProgramCode.ARC_R_AND_CENTRE,
          block.at('R'),
          block.end('R'),
          "an arc has either R or a centre",
          "leave out one of them");
    }
    if (!byRadius && !any) {
      throw refuse(block, ProgramCode.ARC_NO_CENTRE, "the arc needs " + first(i, j) + " or R", "");
    }
    if (block.has(k)) {
      throw new Refusal(
          ProgramCode.WORD_UNUSED,
          block.at(k),
          block.end(k),
          k + " has no meaning for an arc in this plane",
          "");
    }
  }

  /** The two letters in the order of the alphabet. */
  private static String first(char a, char b) {
    return Math.min(a, b) == a ? a + ", " + b : b + ", " + a;
  }

  private Motion centreArc(
      Block block, Plane plane, Position from, Position to, boolean clockwise) {
    double du = offset(block, plane.first());
    double dv = offset(block, plane.second());
    double centreU = from.get(plane.first()) + du;
    double centreV = from.get(plane.second()) + dv;
    double startRadius = Math.sqrt(du * du + dv * dv);
    double eu = to.get(plane.first()) - centreU;
    double ev = to.get(plane.second()) - centreV;
    double endRadius = Math.sqrt(eu * eu + ev * ev);
    double off = Math.abs(startRadius - endRadius);
    if (off > toleranceMm() * (1 + 1e-9)) {
      throw refuse(
          block,
          ProgramCode.ARC_RADII_DIFFER,
          "the radius is "
              + startRadius / mover.modes.unit.mm()
              + " at the start and "
              + endRadius / mover.modes.unit.mm()
              + " at the end",
          "");
    }
    if (startRadius == 0 || endRadius == 0) {
      throw refuse(block, ProgramCode.ARC_RADIUS, "the arc has radius 0", "");
    }
    double sweep = FULL;
    if (!same(plane, from, to)) {
      double turn = StrictMath.atan2(ev, eu) - StrictMath.atan2(-dv, -du);
      sweep = clockwise ? -turn : turn;
      sweep = sweep <= 0 ? sweep + FULL : sweep;
      sweep = sweep > FULL ? sweep - FULL : sweep;
      noteNearlyFull(block, plane, from, to);
    }
    return new Motion.Turn(from, to, plane, centreU, centreV, clockwise ? -sweep : sweep);
  }

  /** Warns where a rounding of the last digit makes a full turn of nothing, or nothing of it. */
  private void noteNearlyFull(Block block, Plane plane, Position from, Position to) {
    if (chord(plane, from, to) <= toleranceMm()) {
      findings.warning(
          block,
          ProgramCode.ARC_NEARLY_FULL,
          "start and end lie within the tolerance of the radii: nothing or a full turn may be meant",
          "write the start as the end for a full turn");
    }
  }

  private double offset(Block block, int axis) {
    char letter = OFFSETS.charAt(axis);
    return block.has(letter) ? length(block, letter) : 0;
  }

  private double length(Block block, char letter) {
    double mm = block.get(letter) * mover.modes.unit.mm();
    if (!(Math.abs(mm) <= Mover.FARTHEST_MM)) {
      throw new Refusal(
          ProgramCode.OUT_OF_RANGE,
          block.at(letter),
          block.end(letter),
          letter + " is beyond 10 km",
          "");
    }
    return mm;
  }

  private double toleranceMm() {
    return mover.modes.unit == LengthUnit.INCH
        ? rules.meaning().arcToleranceInch() * LengthUnit.INCH.mm()
        : rules.meaning().arcToleranceMm();
  }

  private static double chord(Plane plane, Position from, Position to) {
    double cu = to.get(plane.first()) - from.get(plane.first());
    double cv = to.get(plane.second()) - from.get(plane.second());
    return Math.sqrt(cu * cu + cv * cv);
  }

  private static boolean same(Plane plane, Position from, Position to) {
    return chord(plane, from, to) <= SAME_MM;
  }

  private Motion radiusArc(
      Block block, Plane plane, Position from, Position to, boolean clockwise) {
    double given = length(block, 'R');
    double r = Math.abs(given);
    double chord = chord(plane, from, to);
    if (chord <= SAME_MM) {
      throw refuse(
          block,
          ProgramCode.ARC_END_IS_START,
          "an arc with R cannot end where it starts",
          "use a centre for a full turn");
    }
    double half = chord / 2;
    if (r == 0 || half - r > toleranceMm() * (1 + 1e-9)) {
      throw new Refusal(
          ProgramCode.ARC_RADIUS,
          block.at('R'),
          block.end('R'),
          "the radius is too short: the ends are " + chord / mover.modes.unit.mm() + " apart",
          "");
    }
    double height = Math.sqrt(Math.max(0, (r - half) * (r + half)));
    double small = 2 * StrictMath.asin(Math.min(1, half / r));
    double sweep = given > 0 ? small : FULL - small;
    // The centre lies left of the way from start to end for a small turn counter-clockwise.
    double side = (given > 0) == clockwise ? -height : height;
    double cu = to.get(plane.first()) - from.get(plane.first());
    double cv = to.get(plane.second()) - from.get(plane.second());
    double centreU = (from.get(plane.first()) + to.get(plane.first())) / 2 - side * cv / chord;
    double centreV = (from.get(plane.second()) + to.get(plane.second())) / 2 + side * cu / chord;
    noteUnsure(block, sweep);
    return new Motion.Turn(from, to, plane, centreU, centreV, clockwise ? -sweep : sweep);
  }

  private void noteUnsure(Block block, double sweep) {
    if ((sweep > UNSURE_FROM && sweep < UNSURE_TO) || sweep > UNSURE_ABOVE) {
      findings.add(
          Severity.NOTE,
          ProgramCode.ARC_UNSURE,
          findings.span(block, block.at('R'), block.end('R')),
          "a turn of "
              + Math.round(Math.toDegrees(sweep))
              + " degrees by its radius: rounding moves its centre far",
          "use a centre (I, J, K)");
    }
  }

  private static Refusal refuse(Block block, ProgramCode code, String message, String hint) {
    return new Refusal(code, block.from(), block.to(), message, hint);
  }
}
