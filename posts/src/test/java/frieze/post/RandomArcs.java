package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Tolerances;
import frieze.fixtures.Seeds;
import frieze.lower.Capabilities;
import frieze.lower.Grid;
import frieze.lower.Jobs;
import frieze.motion.Executed;
import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.motion.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Supplier;

/**
 * Arcs of all sizes, sweeps and planes: tiny, nearly full, full, of several turns, and beyond the
 * limits of the controller.
 */
final class RandomArcs {
  /** How far an arc may be off, in last digits: its ends, its centre and its radius are rounded. */
  static final double ALLOWED_TICKS = 2;

  private static final long SEED = 40_701;
  private static final double LONGEST_MM = 3_000;
  private static final double SMALLEST_MM = 0.002;
  private static final int SAMPLES = 4;
  private static final List<Plane> PLANES = List.of(Plane.values());

  /** An arc of this length, in last digits, may round to nothing. */
  private static final double NOTHING_TICKS = 20;

  /** How far, in last digits at the rim, each end of an arc may turn. */
  private static final double RIM_TICKS = 3;

  /** Of so many arcs one climbs, or lies in another plane. */
  private static final int SOME = 20;

  /** The same where each such arc takes hundreds of lines. */
  private static final int FEW = 100;

  private final boolean draws;
  private final int oneClimbsOf;
  private final int oneLiesOtherwiseOf;
  private final double largestMm;
  private final List<Motion.Turn> turns = new ArrayList<>();

  RandomArcs(Capabilities capabilities, int from, int count) {
    Capabilities.Arcs arcs = capabilities.arcs();
    this.draws = arcs.format() != Capabilities.ArcFormat.NONE;
    this.oneClimbsOf = !draws || arcs.helices() ? 3 : FEW;
    this.oneLiesOtherwiseOf = !draws ? 2 : arcs.planes().size() > 1 ? SOME : FEW;
    this.largestMm = draws ? Math.min(1.5 * arcs.maxRadiusMm(), 10_000) : 4;
    SplittableRandom random = new SplittableRandom(Seeds.seed(SEED) + from);
    for (int i = 0; i < count; i++) {
      turns.add(turn(random));
    }
  }

  private Motion.Turn turn(SplittableRandom random) {
    Plane plane =
        random.nextInt(oneLiesOtherwiseOf) == 0
            ? PLANES.get(random.nextInt(PLANES.size()))
            : Plane.XY;
    double radius = SMALLEST_MM * StrictMath.pow(largestMm / SMALLEST_MM, random.nextDouble());
    double sweep = sweep(random, radius);
    double angle = random.nextDouble(2 * Math.PI);
    double startU = random.nextDouble(-400, 400);
    double startV = random.nextDouble(-400, 400);
    double centreU = startU - radius * StrictMath.cos(angle);
    double centreV = startV - radius * StrictMath.sin(angle);
    double w = random.nextDouble(-20, 20);
    double climb = random.nextInt(oneClimbsOf) == 0 ? random.nextDouble(-2, 2) : 0;
    boolean whole = Math.abs(sweep) % (2 * Math.PI) == 0;
    double endU = whole ? startU : centreU + radius * StrictMath.cos(angle + sweep);
    double endV = whole ? startV : centreV + radius * StrictMath.sin(angle + sweep);
    return new Motion.Turn(
        plane.position(startU, startV, w),
        plane.position(endU, endV, w + climb),
        plane,
        centreU,
        centreV,
        sweep);
  }

  private static double sweep(SplittableRandom random, double radius) {
    double sign = random.nextBoolean() ? 1 : -1;
    double sweep =
        switch (random.nextInt(6)) {
          case 0 -> StrictMath.pow(10, random.nextDouble(-5, 0));
          case 1 -> Math.PI + random.nextDouble(-0.01, 0.01);
          case 2 -> 2 * Math.PI - StrictMath.pow(10, random.nextDouble(-9, -1));
          case 3 -> 2 * Math.PI;
          case 4 -> random.nextDouble(2 * Math.PI, 20);
          default -> random.nextDouble(0.01, 2 * Math.PI);
        };
    boolean tooLong = sweep * radius > LONGEST_MM;
    return sign * (tooLong ? LONGEST_MM / radius : sweep);
  }

  /** A sequence that cuts them all; the origin of each is its number. */
  Sequence sequence() {
    List<Step> steps = new ArrayList<>();
    steps.add(new Step(new Instruction.ToolChange(Jobs.FLAT), ""));
    steps.add(new Step(new Instruction.Spindle(Optional.of(18_000.0)), ""));
    for (int i = 0; i < turns.size(); i++) {
      Motion.Turn t = turns.get(i);
      String origin = String.valueOf(i);
      steps.add(new Step(new Instruction.RapidXy(t.from().x(), t.from().y()), ""));
      steps.add(new Step(new Instruction.RapidZ(t.from().z()), ""));
      steps.add(
          new Step(
              new Instruction.Turn(
                  t.to(), t.plane(), t.centreU(), t.centreV(), t.sweepRad(), 1_000),
              origin));
    }
    return new Sequence("arcs", steps);
  }

  /**
   * The furthest that any executed move is off its arc, in last digits; lines may depart by the
   * tolerance of flattening besides.
   */
  double worstTicks(ProgramText text, Grid grid, List<Executed.Move> moves) {
    double worst = 0;
    List<List<Motion>> byArc = new ArrayList<>();
    turns.forEach(t -> byArc.add(new ArrayList<>()));
    for (Executed.Move move : moves) {
      String origin = text.origin(move.span().line());
      if (!origin.isEmpty() && move.kind() == Executed.Kind.FEED) {
        byArc.get(Integer.parseInt(origin)).add(move.path());
      }
    }
    for (int i = 0; i < turns.size(); i++) {
      worst = Math.max(worst, off(turns.get(i), byArc.get(i), grid.tickMm(), i));
    }
    return worst;
  }

  private double off(Motion.Turn wanted, List<Motion> done, double tickMm, int number) {
    Supplier<String> which =
        () -> "arc " + number + " of seed " + Seeds.seed(SEED) + ": " + wanted + "\n" + done;
    double half = 2 * tickMm;
    if (done.isEmpty()) {
      assertThat(wanted.from().distance(wanted.to())).as(which).isLessThan(half);
      assertThat(wanted.lengthMm()).as(which).isLessThan(NOTHING_TICKS * tickMm);
      return 0;
    }
    assertThat(done.get(0).from().distance(wanted.from())).as(which).isLessThan(half);
    assertThat(done.get(done.size() - 1).to().distance(wanted.to())).as(which).isLessThan(half);
    double worst = 0;
    double turned = 0;
    int arcs = 0;
    for (Motion motion : done) {
      boolean line = motion instanceof Motion.Straight;
      double slack = line ? Tolerances.DEFAULT.flattenMm() : 0;
      for (int k = 0; k <= SAMPLES; k++) {
        double off = Math.abs(radius(wanted, motion.at((double) k / SAMPLES)) - wanted.radiusMm());
        worst = Math.max(worst, (off - slack) / tickMm);
      }
      turned += turned(wanted, motion);
      arcs += line ? 0 : 1;
    }
    if (wanted.radiusMm() < NOTHING_TICKS * tickMm) {
      return worst;
    }
    double rim = Math.abs(turned - wanted.sweepRad()) * wanted.radiusMm();
    assertThat(rim).as(which).isLessThan(RIM_TICKS * (arcs + 1) * tickMm);
    return worst;
  }

  private static double radius(Motion.Turn wanted, Position p) {
    return Math.hypot(
        p.get(wanted.plane().first()) - wanted.centreU(),
        p.get(wanted.plane().second()) - wanted.centreV());
  }

  /** How far a move turns about the wanted centre. */
  private static double turned(Motion.Turn wanted, Motion motion) {
    if (motion instanceof Motion.Turn turn) {
      return turn.sweepRad();
    }
    double from = angle(wanted, motion.from());
    double to = angle(wanted, motion.to());
    double step = (to - from) % (2 * Math.PI);
    return step > Math.PI ? step - 2 * Math.PI : step < -Math.PI ? step + 2 * Math.PI : step;
  }

  private static double angle(Motion.Turn wanted, Position p) {
    return StrictMath.atan2(
        p.get(wanted.plane().second()) - wanted.centreV(),
        p.get(wanted.plane().first()) - wanted.centreU());
  }
}
