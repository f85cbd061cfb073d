package frieze.plan.cut;

import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * How fast a tool turns and travels in a material on a machine.
 *
 * <p>Guarantees: feed = rpm x flutes x chip load; no limit of tool, axes or spindle is passed;
 * where a limit bites, feed and speed go down together, so that the chip keeps its thickness;
 * nothing is ever raised above what tool, machine and table allow.
 *
 * <p>Source: the feed formula is that of <i>Machinery's Handbook</i> (from memory); the chip loads,
 * the usual speed and the plunge feed are common practice.
 *
 * @param rpm a speed of the dial where the spindle has one
 * @param dial the number on the dial, from 1; empty without a dial
 * @param feedMmPerMin along a cut
 * @param plungeMmPerMin straight down, and the most that a ramp may sink
 * @param chipLoadMm the advance for each flute and turn that comes of it
 */
public record Feeds(
    double rpm,
    OptionalInt dial,
    double feedMmPerMin,
    double plungeMmPerMin,
    double chipLoadMm,
    List<Diagnostic> notes) {
  /** The size that a bit with a narrow tip is taken for: 1/8 in; common practice. */
  private static final double NARROW_BIT_MM = 3.175;

  /** The speed at which router bits are usually run when nothing limits it; common practice. */
  static final double USUAL_RPM = 18_000;

  /** Plunge feed as a part of the cutting feed; common practice is 0.25 to 0.5. */
  static final double PLUNGE_PART = 1.0 / 3;

  private static final double ROUNDING = 1e-9;

  /** A program's coarsest step, a ten-thousandth of an inch, rounded up. */
  private static final double ROUNDED_MM = 0.003;

  private static final double SAME_MM = 1e-6;

  public Feeds {
    notes = List.copyOf(notes);
  }

  /** Chooses feeds; without a chip load of the tool's own, the low end of the usual range. */
  public static Feeds choose(Tool tool, Material material, Machine machine, SourceSpan where) {
    return choose(tool, cuttingSizeMm(tool), material, machine, where);
  }

  /**
   * Chooses feeds for a tool that cuts with a part of its shape.
   *
   * @param sizeMm the diameter of that part, for which the table is read
   */
  public static Feeds choose(
      Tool tool, double sizeMm, Material material, Machine machine, SourceSpan where) {
    ChipLoads.Range usual = ChipLoads.range(material.kind(), sizeMm);
    double chipMm = tool.chipLoadMm().orElse(usual.lowMm());
    double mostFeed =
        Math.min(
            tool.maxFeedMmPerMin(),
            Math.min(machine.x().maxFeedMmPerMin(), machine.y().maxFeedMmPerMin()));
    double mostRpm = Math.min(USUAL_RPM, Math.min(tool.maxRpm(), machine.spindle().maxRpm()));
    double wantedRpm = Math.min(mostRpm, mostFeed / (tool.flutes() * chipMm));
    OptionalInt dial = dial(machine.spindle(), wantedRpm);
    double rpm =
        dial.isPresent()
            ? machine.spindle().dial().get(dial.getAsInt() - 1)
            : Math.max(wantedRpm, machine.spindle().minRpm());
    double feed = Math.min(mostFeed, rpm * tool.flutes() * chipMm);
    double plunge =
        Math.min(
            PLUNGE_PART * feed, Math.min(tool.maxPlungeMmPerMin(), machine.z().maxFeedMmPerMin()));
    double chip = feed / (rpm * tool.flutes());
    return new Feeds(rpm, dial, feed, plunge, chip, notes(tool, rpm, chip, usual, where));
  }

  /** The fastest number on the dial that is not above the wanted speed, or else the slowest. */
  private static OptionalInt dial(Machine.Spindle spindle, double wantedRpm) {
    List<Double> dial = spindle.dial();
    int best = -1;
    for (int i = 0; i < dial.size(); i++) {
      boolean allowed = dial.get(i) <= wantedRpm * (1 + ROUNDING);
      boolean bestAllowed = best >= 0 && dial.get(best) <= wantedRpm * (1 + ROUNDING);
      boolean better =
          best < 0
              || (allowed && (!bestAllowed || dial.get(i) > dial.get(best)))
              || (!allowed && !bestAllowed && dial.get(i) < dial.get(best));
      best = better ? i : best;
    }
    return best < 0 ? OptionalInt.empty() : OptionalInt.of(best + 1);
  }

  private static List<Diagnostic> notes(
      Tool tool, double rpm, double chip, ChipLoads.Range usual, SourceSpan where) {
    List<Diagnostic> notes = new ArrayList<>();
    if (rpm > tool.maxRpm() * (1 + ROUNDING)) {
      notes.add(
          Diagnostic.error(
              PlanCode.SPEED_TOO_HIGH,
              where,
              String.format(
                  Locale.ROOT,
                  "tool %s may turn at %.0f rpm at most, but the spindle does not go below %.0f",
                  tool.name(),
                  tool.maxRpm(),
                  rpm),
              "use another tool; a hole larger than a straight bit can be bored with that"));
    }
    if (tool.shape() instanceof ToolShape.Drill) {
      return notes; // the table is of router bits
    }
    if (chip < usual.lowMm() * (1 - ROUNDING)) {
      notes.add(
          Diagnostic.warning(
              PlanCode.CHIP_LOAD_LOW,
              where,
              chipText(tool, chip, usual, "below") + ": it may rub and burn the wood",
              "a tool with fewer flutes or a slower spindle makes thicker chips"));
    }
    if (chip > usual.highMm() * (1 + ROUNDING)) {
      notes.add(
          Diagnostic.warning(
              PlanCode.CHIP_LOAD_HIGH,
              where,
              chipText(tool, chip, usual, "above") + ": the bit may break",
              "check the chip load written for the tool"));
    }
    return notes;
  }

  /**
   * The size by which the table of chip loads is read. The table is one of straight bits; a bit
   * that narrows to its tip cuts with the tip, so it is taken as a small one.
   */
  private static double cuttingSizeMm(Tool tool) {
    if (tool.shape() instanceof ToolShape.RoundOver bit) {
      return bit.tipMm(); // where it is weakest
    }
    boolean narrows =
        tool.shape() instanceof ToolShape.Vee || tool.shape() instanceof ToolShape.Tapered;
    return narrows ? Math.min(tool.diameterMm(), NARROW_BIT_MM) : tool.diameterMm();
  }

  private static String chipText(Tool tool, double chip, ChipLoads.Range usual, String where) {
    return String.format(
        Locale.ROOT,
        "tool %s takes %.3f mm for each flute and turn, %s the usual %.3f to %.3f mm",
        tool.name(),
        chip,
        where,
        usual.lowMm(),
        usual.highMm());
  }

  /**
   * The feed along a path that sinks.
   *
   * @param slopeRad the angle below the horizontal, 0 to a right angle
   */
  double rampFeedMmPerMin(double slopeRad) {
    double sine = StrictMath.sin(slopeRad);
    return sine * feedMmPerMin <= plungeMmPerMin ? feedMmPerMin : plungeMmPerMin / sine;
  }

  /**
   * The feed of a sloped move, taken for as much steeper as it may become when its ends are rounded
   * in the program: a short one turns by some degrees, one of a micrometre may end up upright.
   */
  public double roundedFeedMmPerMin(double dropMm, double lengthMm) {
    double steeper = (Math.abs(dropMm) + ROUNDED_MM) / Math.max(SAME_MM, lengthMm - ROUNDED_MM);
    return rampFeedMmPerMin(StrictMath.asin(Math.min(1, steeper)));
  }

  /**
   * The feeds of the tool's middle on a circle within a hole, so that its side passes the wall at
   * the feed of a straight cut and the chip keeps its thickness.
   *
   * <p>Source: the feed of circular interpolation inside, (D - d) / D of the straight one, of
   * milling handbooks (from memory).
   *
   * @param pathRadiusMm of the circle, above 0
   */
  public Feeds insideOf(double pathRadiusMm, double toolRadiusMm) {
    return slowed(pathRadiusMm / (pathRadiusMm + toolRadiusMm));
  }

  /** A part of this feed at the same speed. */
  Feeds slowed(double part) {
    return new Feeds(rpm, dial, part * feedMmPerMin, plungeMmPerMin, chipLoadMm, notes);
  }
}
