package frieze.dryrun.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.Bench;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.field.StockField;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Angles of engagement against closed forms: chords and heights of a circle. */
class EngagementTest {
  private static final double R = 3;
  private static final double DEEP = 2;
  private static final double CELL = 0.05;
  private static final Tool TOOL =
      new Tool(
          "flat 6",
          1,
          new ToolShape.Flat(2 * R),
          2,
          22,
          32,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          20000,
          2000,
          400);

  private final StockField field =
      StockField.of(new Stock(Bench.STOCK.material(), 60, 40, List.of(19.0), false), CELL);

  private static Motion line(double x0, double y0, double x1, double y1) {
    return new Motion.Straight(new Position(x0, y0, -DEEP), new Position(x1, y1, -DEEP));
  }

  private void cut(double x0, double y0, double x1, double y1) {
    field.cut(line(x0, y0, x1, y1), TOOL.shape());
  }

  private double degrees(Motion path) {
    return Math.toDegrees(new Engagement(field).largestRad(path, TOOL, DEEP));
  }

  /** What a wall that is out by one cell does to the angle of a side cut, and one sample. */
  private static double slackDeg(double width) {
    double most = Math.toDegrees(StrictMath.acos(1 - (width + CELL) / R));
    return most - Math.toDegrees(StrictMath.acos(1 - width / R)) + 1.01;
  }

  @Test
  void a_slot_has_half_of_the_rim_in_material() {
    cut(10, 20, 10, 20);
    assertThat(degrees(line(10, 20, 40, 20))).isCloseTo(180, within(2.0));
  }

  @Test
  void a_pass_through_what_is_cut_already_has_none() {
    cut(10, 20, 40, 20);
    cut(10, 21, 40, 21);
    cut(10, 19, 40, 19);
    assertThat(degrees(line(10, 20, 39, 20))).isZero();
  }

  /** A side cut of width a: from straight ahead less asin(1 - a/r), which is acos(1 - a/r). */
  @ParameterizedTest
  @ValueSource(doubles = {0.3, 1, 2, 3, 4.5})
  void a_side_cut_has_the_angle_of_its_width(double width) {
    cut(-10, 20, 70, 20);
    double expected = Math.toDegrees(StrictMath.acos(1 - width / R));
    assertThat(degrees(line(-8, 20 + width, 68, 20 + width)))
        .isCloseTo(expected, within(slackDeg(width)));
    assertThat(degrees(line(68, 20 + width, -8, 20 + width)))
        .isCloseTo(expected, within(slackDeg(width)));
  }

  /**
   * The next pass, wider by a, runs along the left wall into a corner that the pass before has left
   * round. The wall ahead takes the rim from -acos(1 - a/r) on; the round and the wall on the left
   * take the rest up to 90 degrees: acos(1 - a/r) + 90 in all.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.5, 1, 2})
  void a_straight_corner_loads_the_tool_far_more_than_its_sides(double width) {
    cut(-10, 20, 40, 20);
    cut(40, 20, 40, -10);
    // Clear what lies inside of the corner, so that only the walls stand.
    for (double y = 18; y > -6; y -= 2) {
      cut(-10, y, 40, y);
    }
    double side = Math.toDegrees(StrictMath.acos(1 - width / R));
    double straight = degrees(line(-8, 20 + width, 30, 20 + width));
    assertThat(straight).isCloseTo(side, within(slackDeg(width)));
    assertThat(degrees(line(30, 20 + width, 40 + width, 20 + width)))
        .isCloseTo(90 + side, within(slackDeg(width)));
  }

  /** A strip of width w in the middle of the path is a chord: 2 asin(w / 2r). */
  @ParameterizedTest
  @ValueSource(doubles = {1, 2, 4})
  void a_thin_strip_is_a_chord_of_the_rim(double width) {
    double off = R + width / 2;
    cut(-10, 20 + off, 70, 20 + off);
    cut(-10, 20 - off, 70, 20 - off);
    double expected = Math.toDegrees(2 * StrictMath.asin(width / (2 * R)));
    double most = Math.toDegrees(2 * StrictMath.asin((width + 2 * CELL) / (2 * R)));
    assertThat(degrees(line(-8, 20, 68, 20))).isCloseTo(expected, within(most - expected + 2.01));
  }

  @Test
  void a_ball_is_measured_where_it_meets_the_top() {
    Tool ball = tool(new ToolShape.Ball(2 * R));
    double side = 1;
    field.cut(line(-10, 20, 70, 20), ball.shape());
    double rim = Math.sqrt(R * R - (R - DEEP) * (R - DEEP));
    double expected = Math.toDegrees(StrictMath.acos(1 - side / rim));
    double got =
        Math.toDegrees(
            new Engagement(field).largestRad(line(-8, 20 + side, 68, 20 + side), ball, DEEP));
    assertThat(got).isCloseTo(expected, within(3.0));
  }

  private static Tool tool(ToolShape shape) {
    OptionalDouble none = OptionalDouble.empty();
    return new Tool("t", 1, shape, 2, 22, 32, true, none, none, 20000, 2000, 400);
  }

  private static final String START = "G17 G21 G90 G94 G53 G0 Z0\nT1 M6\nS16000 M3\nG0 Z5\n";
  private static final String END = "G0 Z5\nM5\nM2\n";

  private static DryRunResult run(Tool tool, String moves) {
    return Bench.run(Bench.KNOWN.withTools(List.of(tool)), START + moves + END);
  }

  private static List<Finding> engaged(DryRunResult result) {
    return result.findings().stream().filter(f -> f.code() == FindingCode.ENGAGED_TOO_FAR).toList();
  }

  @Test
  void a_slot_is_told_when_the_tool_has_a_limit() {
    String slot = "G0 X50 Y50\nG1 Z-2 F300\nG1 X100 F900\n";
    List<Finding> found = engaged(run(TOOL.withEngagement(Math.toRadians(100)), slot));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).line()).isEqualTo(7);
    assertThat(found.get(0).amount().value()).isCloseTo(80, within(2.0));
    assertThat(found.get(0).amount().unit()).isEqualTo("deg");
    assertThat(found.get(0).message()).contains("may have 100 deg").doesNotContain("practice");
    assertThat(engaged(run(TOOL.withEngagement(Math.PI), slot))).isEmpty();
    assertThat(engaged(run(TOOL, slot))).isEmpty();
  }

  @Test
  void a_slot_deeper_than_the_diameter_is_told_as_common_practice() {
    String slot = "G0 X50 Y50\nG1 Z-%s F300\nG1 X100 F900\n";
    assertThat(engaged(run(TOOL, slot.formatted("5.9")))).isEmpty();
    List<Finding> found = engaged(run(TOOL, slot.formatted("6.5")));
    assertThat(found).hasSize(1);
    assertThat(found.get(0).message()).contains("90 deg (common practice)");
  }

  @Test
  void a_shallow_side_cut_is_within_the_limit_and_its_corner_is_not() {
    Tool limited = TOOL.withEngagement(Math.toRadians(70));
    // A pocket of 60 by 40 roughed with a limitless tool, then one ring 1 mm wider.
    StringBuilder rough = new StringBuilder("G0 X50 Y40\nG1 Z-2 F300\nF900\n");
    for (int y = 40; y <= 80; y += 4) {
      rough.append("G1 Y").append(y).append("\nG1 X").append(y % 8 == 0 ? 110 : 50).append('\n');
    }
    rough.append("G1 X50 Y40\nG1 X110\nG1 Y80\nG1 X50\nG1 Y40\nG0 Z5\n");
    String ring = "G0 X80 Y60\nG1 Z-2 F300\nG1 X80 Y39 F900\nG1 X111\nG1 Y81\nG0 Z5\n";
    DryRunResult all = run(limited, rough + ring);
    int first = (int) (START + rough).lines().count();
    List<Finding> found = engaged(all).stream().filter(f -> f.line() > first + 3).toList();
    assertThat(found).as(engaged(all).toString()).isNotEmpty();
    // acos(1 - 1/3) is 48.2 deg: the side is fine; the corner has 48.2 + 90.
    assertThat(found.get(0).message()).contains("may have 70 deg");
    assertThat(found.get(0).amount().value()).isCloseTo(138.2 - 70, within(6.0));
  }

  /** Half of what a slot removes at 90 deg: (1 - cos 90) / (1 - cos 180) = 1/2. */
  @Test
  void a_slot_at_half_the_feed_of_the_chip_load_is_as_good_as_a_cut_at_the_limit() {
    OptionalDouble chip = OptionalDouble.of(0.05); // 2 flutes, 16000 turns: 1600 mm/min
    Tool known =
        new Tool(
            "flat 6",
            1,
            new ToolShape.Flat(2 * R),
            2,
            22,
            32,
            true,
            OptionalDouble.empty(),
            chip,
            20000,
            2000,
            400,
            OptionalDouble.of(Math.PI / 2));
    String slot = "G0 X50 Y50\nG1 Z-2 F300\nG1 X100 F%d\n";
    assertThat(engaged(run(known, slot.formatted(800)))).isEmpty();
    assertThat(engaged(run(known, slot.formatted(840))))
        .singleElement()
        .extracting(Finding::message)
        .asString()
        .contains("90 deg at 1600 mm/min, and this is 840 mm/min");
  }

  /** Without a chip load the tool's own cuts within the limit tell its full feed. */
  @Test
  void a_slot_is_compared_with_the_side_cuts_that_come_after_it() {
    Tool limited = TOOL.withEngagement(Math.PI / 2);
    String both =
        "G0 X-10 Y50\nG1 Z-2 F300\nG1 X100 F%d\nG0 Z5\nG0 X-10 Y52\nG0 Z-2\nG1 X90 F900\n";
    assertThat(engaged(run(limited, both.formatted(450)))).isEmpty();
    assertThat(engaged(run(limited, both.formatted(500))))
        .singleElement()
        .extracting(Finding::line)
        .isEqualTo(7);
  }
}
