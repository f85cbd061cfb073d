package frieze.job;

import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.keys.JobCode;
import frieze.keys.Values;
import frieze.shop.BitTest;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the outline of a tool, from its own keys or from what a test cut with it measured. */
final class ShapeReader {
  private static final double DRILL_ANGLE_RAD = Math.toRadians(118);

  /** Depths must differ by this; with less, a reading's error turns the angle. Common sense. */
  private static final double APART_MM = 1;

  /** What a caliper at a wooden edge may be wrong by; common practice, no published value. */
  private static final double READING_MM = 0.1;

  /** A bit is ground closer to its marked angle than this; beyond, it is another bit. */
  private static final double GRINDING_RAD = Math.toRadians(10);

  private final String name;
  private final Values tool;
  private final double diameterMm;
  private final Diagnostics found;

  /**
   * @param tool its keys
   */
  ShapeReader(String name, Values tool, Diagnostics found) {
    this.name = name;
    this.tool = tool;
    this.diameterMm = tool.get(ShopKeys.Tools.DIAMETER);
    this.found = found;
  }

  /** Reads the shape; empty after an error. */
  Optional<ToolShape> read() {
    ShopKeys.Shape shape = tool.get(ShopKeys.Tools.SHAPE);
    if (tool.has(ShopKeys.Tools.TEST_CUT)) {
      return shape == ShopKeys.Shape.VEE ? tested() : notVee();
    }
    Optional<Double> angle = tool.find(ShopKeys.Tools.ANGLE);
    Optional<Double> tip = tool.find(ShopKeys.Tools.TIP);
    boolean pointed = shape == ShopKeys.Shape.VEE || shape == ShopKeys.Shape.TAPERED;
    if (pointed && angle.isEmpty()) {
      return missing("an \"angle\"");
    }
    if (shape == ShopKeys.Shape.TAPERED && tip.filter(d -> d > 0).isEmpty()) {
      return missing("a \"tip\" above 0");
    }
    if (shape == ShopKeys.Shape.ROUND_OVER) {
      return roundOver(tip);
    }
    if (tool.has(ShopKeys.Tools.RADIUS)) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          tool.where(ShopKeys.Tools.RADIUS),
          "a \"radius\" is that of a round over bit, but \"" + name + "\" is none",
          "leave it out, or set the shape right");
      return Optional.empty();
    }
    if (tip.filter(d -> d >= diameterMm).isPresent()) {
      found.error(
          JobCode.OUT_OF_RANGE,
          tool.where(ShopKeys.Tools.TIP),
          "the tip of \"" + name + "\" must be smaller than its diameter",
          "");
      return Optional.empty();
    }
    return Optional.of(
        switch (shape) {
          case FLAT -> new ToolShape.Flat(diameterMm);
          case BALL -> new ToolShape.Ball(diameterMm);
          case VEE -> new ToolShape.Vee(diameterMm, angle.orElseThrow(), tip.orElse(0.0));
          case TAPERED -> new ToolShape.Tapered(diameterMm, angle.orElseThrow(), tip.orElseThrow());
          case DRILL -> new ToolShape.Drill(diameterMm, angle.orElse(DRILL_ANGLE_RAD));
          case ROUND_OVER -> throw new IllegalStateException("read before");
        });
  }

  /** Its diameter is that of its tip and two radii. */
  private Optional<ToolShape> roundOver(Optional<Double> tip) {
    Optional<Double> radius = tool.find(ShopKeys.Tools.RADIUS);
    if (radius.isEmpty()) {
      return missing("a \"radius\"");
    }
    double left = diameterMm - 2 * radius.get();
    if (left <= 0) {
      found.error(
          JobCode.OUT_OF_RANGE,
          tool.where(ShopKeys.Tools.RADIUS),
          "two radii of "
              + Amounts.length(radius.get())
              + " leave no tip of \""
              + name
              + "\", which is "
              + Amounts.length(diameterMm)
              + " wide",
          "the diameter is that over all cutting edges: the tip and two radii");
      return Optional.empty();
    }
    if (tip.filter(t -> Math.abs(t - left) > READING_MM).isPresent()) {
      found.error(
          JobCode.OUT_OF_RANGE,
          tool.where(ShopKeys.Tools.TIP),
          "the tip of \""
              + name
              + "\" and two radii are "
              + Amounts.length(tip.get() + 2 * radius.get())
              + ", but its diameter is "
              + Amounts.length(diameterMm),
          "measure again, or leave the tip out");
      return Optional.empty();
    }
    return Optional.of(new ToolShape.RoundOver(tip.orElse(left), radius.get()));
  }

  private Optional<ToolShape> missing(String what) {
    found.error(JobCode.MISSING_KEY, tool.where(), "the tool \"" + name + "\" needs " + what, "");
    return Optional.empty();
  }

  private Optional<ToolShape> notVee() {
    found.error(
        JobCode.KEYS_EXCLUDE,
        tool.where(ShopKeys.Tools.TEST_CUT),
        "a \"test cut\" tells the angle of a vee bit, but \"" + name + "\" is none",
        "leave it out, or set the shape right");
    return Optional.empty();
  }

  /** A V-bit as its test grooves tell. */
  private Optional<ToolShape> tested() {
    if (tool.has(ShopKeys.Tools.TIP)) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          tool.where(ShopKeys.Tools.TIP),
          "the \"test cut\" of \"" + name + "\" tells the tip already",
          "leave the tip out");
      return Optional.empty();
    }
    List<BitTest.Groove> grooves =
        tool.find(ShopKeys.Tools.TEST_CUT).orElseThrow().stream()
            .map(v -> new BitTest.Groove(v.get(TestGrooveKeys.DEPTH), v.get(TestGrooveKeys.WIDTH)))
            .toList();
    if (!usable(grooves)) {
      return Optional.empty();
    }
    BitTest test = BitTest.of(grooves);
    return fits(test) && isThatBit(test)
        ? Optional.of(new ToolShape.Vee(diameterMm, test.angleRad(), test.tipMm()))
        : Optional.empty();
  }

  /** Whether a line can be laid through the widths at all. */
  private boolean usable(List<BitTest.Groove> grooves) {
    BitTest.Groove low = grooves.get(0);
    BitTest.Groove high = grooves.get(0);
    for (BitTest.Groove groove : grooves) {
      low = groove.depthMm() < low.depthMm() ? groove : low;
      high = groove.depthMm() > high.depthMm() ? groove : high;
      if (groove.widthMm() > diameterMm + READING_MM) {
        return contradiction(
            "a groove " + text(groove) + " is wider than the bit, " + Amounts.length(diameterMm),
            "check the diameter, and the units of the widths");
      }
    }
    if (high.depthMm() - low.depthMm() < APART_MM) {
      return contradiction(
          "its depths differ by "
              + Amounts.length(high.depthMm() - low.depthMm())
              + " only, too little to tell an angle",
          "give two grooves whose depths differ by " + Amounts.length(APART_MM) + " or more");
    }
    if (high.widthMm() - low.widthMm() <= READING_MM) {
      return contradiction(
          "the groove " + text(high) + " is no wider than the one " + text(low),
          "are depth and width changed over?");
    }
    return true;
  }

  private boolean fits(BitTest test) {
    double beyond = Math.abs(test.worstMm());
    if (beyond <= READING_MM) {
      return true;
    }
    return contradiction(
        String.format(
            Locale.ROOT,
            "no V-bit cuts all of its grooves: with %s, the best that fits, the groove %s would be"
                + " %.2f mm %s",
            bit(test),
            text(test.worst()),
            beyond,
            test.worstMm() > 0 ? "narrower" : "wider"),
        "measure that groove again; if all are too narrow, the bit was not set down to the surface,"
            + " or the board is not flat");
  }

  private boolean isThatBit(BitTest test) {
    double marked = tool.find(ShopKeys.Tools.ANGLE).orElse(test.angleRad());
    if (Math.abs(marked - test.angleRad()) <= GRINDING_RAD) {
      return true;
    }
    return contradiction(
        String.format(
            Locale.ROOT,
            "its grooves tell %s, but its angle is written as %.1f deg",
            bit(test),
            Math.toDegrees(marked)),
        "was it another bit? if not, leave the angle out");
  }

  private boolean contradiction(String what, String hint) {
    found.error(
        JobCode.BAD_TEST_CUT,
        tool.where(ShopKeys.Tools.TEST_CUT),
        "the test cut of \"" + name + "\": " + what,
        hint);
    return false;
  }

  private static String bit(BitTest test) {
    return String.format(
        Locale.ROOT,
        "%.1f deg and a tip of %.2f mm",
        Math.toDegrees(test.angleRad()),
        test.tipMm());
  }

  private static String text(BitTest.Groove groove) {
    return String.format(
        Locale.ROOT, "%.2f mm deep and %.2f mm wide", groove.depthMm(), groove.widthMm());
  }
}
