package frieze.plan.cut;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.diagnostic.Diagnostic;
import frieze.fixtures.Seeds;
import frieze.plan.Bench;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Chip loads are common practice; the feed formula is Machinery's Handbook's (from memory). */
class FeedsTest {
  private static final Material ASH = new Material("white ash", Material.Kind.HARDWOOD);
  private static final double OPEN = 1e6;

  private static Tool tool(double diameter, int flutes, double chip, double rpm, double feed) {
    return new Tool(
        "t",
        1,
        new ToolShape.Flat(diameter),
        flutes,
        20,
        30,
        true,
        OptionalDouble.empty(),
        chip > 0 ? OptionalDouble.of(chip) : OptionalDouble.empty(),
        rpm,
        feed,
        OPEN);
  }

  private static Machine machine(
      double feed, double zFeed, double min, double max, Double... dial) {
    Machine.Axis axis = new Machine.Axis(OPEN, feed, 500);
    return new Machine(
        "m",
        "rs274-full",
        800,
        400,
        90,
        axis,
        axis,
        new Machine.Axis(OPEN, zFeed, 500),
        new Machine.Spindle(false, min, max, List.of(dial), 1),
        false,
        false,
        0);
  }

  private static Feeds choose(Tool tool, Machine machine) {
    return Feeds.choose(tool, ASH, machine, Bench.WHERE);
  }

  /** 18000 turns, 2 flutes, 0.15 mm: 5400 mm/min. */
  @Test
  void feed_is_speed_times_flutes_times_chip_load() {
    Feeds feeds = choose(tool(6.35, 2, 0.15, 24_000, OPEN), machine(OPEN, OPEN, 8_000, 24_000));
    assertThat(feeds.rpm()).isEqualTo(18_000);
    assertThat(feeds.feedMmPerMin()).isCloseTo(5400, within(1e-9));
    assertThat(feeds.notes()).isEmpty();
  }

  @Test
  void a_slow_machine_lowers_feed_and_speed_together() {
    Feeds feeds = choose(tool(6.35, 2, 0.15, 24_000, OPEN), machine(3000, OPEN, 8_000, 24_000));
    assertThat(feeds.feedMmPerMin()).isCloseTo(3000, within(1e-9));
    assertThat(feeds.rpm()).isCloseTo(10_000, within(1e-9));
    assertThat(feeds.chipLoadMm()).isCloseTo(0.15, within(1e-12));
  }

  @Test
  void below_the_spindles_lowest_speed_the_chip_gets_thin_and_a_warning_says_so() {
    Feeds feeds = choose(tool(6.35, 2, 0.15, 24_000, OPEN), machine(1200, OPEN, 10_000, 24_000));
    assertThat(feeds.rpm()).isEqualTo(10_000);
    assertThat(feeds.feedMmPerMin()).isEqualTo(1200);
    assertThat(feeds.notes()).extracting(Diagnostic::code).containsExactly(PlanCode.CHIP_LOAD_LOW);
  }

  @Test
  void a_dial_gives_the_fastest_number_that_is_not_too_fast() {
    Machine dial = machine(OPEN, OPEN, 10_000, 27_000, 10_000.0, 12_000.0, 17_000.0, 22_000.0);
    Feeds feeds = choose(tool(6.35, 2, 0.15, 24_000, OPEN), dial);
    assertThat(feeds.dial()).hasValue(3);
    assertThat(feeds.rpm()).isEqualTo(17_000);
    assertThat(feeds.feedMmPerMin()).isCloseTo(5100, within(1e-9));
    assertThat(choose(tool(6.35, 2, 0.15, 12_500, OPEN), dial).dial()).hasValue(2);
  }

  @Test
  void a_tool_slower_than_the_spindle_can_turn_is_an_error() {
    Feeds feeds = choose(tool(6.35, 2, 0.15, 3000, OPEN), machine(OPEN, OPEN, 8_000, 24_000));
    assertThat(feeds.notes())
        .anyMatch(d -> d.isError() && d.code() == PlanCode.SPEED_TOO_HIGH)
        .anyMatch(d -> d.message().contains("3000 rpm at most"));
  }

  @Test
  void the_usual_chip_load_lies_between_those_of_the_neighbouring_bits() {
    ChipLoads.Range quarter = ChipLoads.range(Material.Kind.HARDWOOD, 6.35);
    assertThat(quarter).isEqualTo(new ChipLoads.Range(0.12, 0.28));
    ChipLoads.Range between = ChipLoads.range(Material.Kind.HARDWOOD, (6.35 + 9.525) / 2);
    assertThat(between.lowMm()).isCloseTo(0.16, within(1e-12));
    assertThat(ChipLoads.range(Material.Kind.SOFTWOOD, 3.175 / 2).lowMm())
        .isCloseTo(0.025, within(1e-12));
    assertThat(ChipLoads.range(Material.Kind.SHEET, 20)).isEqualTo(new ChipLoads.Range(0.35, 0.68));
    assertThatThrownBy(() -> ChipLoads.range(Material.Kind.STEEL, 6))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void a_ramp_sinks_no_faster_than_a_plunge() {
    Feeds feeds = choose(tool(6.35, 2, 0.15, 24_000, OPEN), machine(OPEN, 200, 8_000, 24_000));
    assertThat(feeds.plungeMmPerMin()).isEqualTo(200);
    for (double degrees : new double[] {0.5, 1, 3, 10, 45, 90}) {
      double slope = Math.toRadians(degrees);
      double ramp = feeds.rampFeedMmPerMin(slope);
      assertThat(ramp).isLessThanOrEqualTo(feeds.feedMmPerMin());
      assertThat(ramp * Math.sin(slope)).isLessThanOrEqualTo(200 * (1 + 1e-12));
    }
  }

  @Test
  void no_limit_is_ever_passed_and_nothing_is_raised() {
    SplittableRandom random = Seeds.random(20_261);
    for (int i = 0; i < 5_000; i++) {
      double chip = random.nextBoolean() ? 0 : random.nextDouble(0.01, 0.6);
      Tool tool =
          tool(
              random.nextDouble(0.5, 20),
              random.nextInt(1, 5),
              chip,
              random.nextDouble(6_000, 40_000),
              random.nextDouble(200, 9_000));
      double min = random.nextDouble(1_000, 12_000);
      double max = min + random.nextDouble(0, 20_000);
      Double[] dial =
          random.nextBoolean() ? new Double[0] : new Double[] {min, (min + max) / 2, max};
      Machine machine =
          machine(random.nextDouble(300, 9_000), random.nextDouble(100, 3_000), min, max, dial);
      Feeds feeds = choose(tool, machine);
      String as = "seed " + Seeds.seed(20_261) + ", case " + i + ": " + feeds;
      assertThat(feeds.feedMmPerMin()).as(as).isLessThanOrEqualTo(tool.maxFeedMmPerMin());
      assertThat(feeds.feedMmPerMin()).as(as).isLessThanOrEqualTo(machine.x().maxFeedMmPerMin());
      assertThat(feeds.plungeMmPerMin()).as(as).isLessThanOrEqualTo(machine.z().maxFeedMmPerMin());
      assertThat(feeds.rpm()).as(as).isBetween(min * (1 - 1e-12), max * (1 + 1e-12));
      boolean tooFast = feeds.rpm() > tool.maxRpm() * (1 + 1e-9);
      assertThat(feeds.notes().stream().anyMatch(Diagnostic::isError)).as(as).isEqualTo(tooFast);
      ChipLoads.Range usual = ChipLoads.range(Material.Kind.HARDWOOD, tool.diameterMm());
      double wanted = chip > 0 ? chip : usual.lowMm();
      assertThat(feeds.chipLoadMm()).as(as).isLessThanOrEqualTo(wanted * (1 + 1e-9));
    }
  }

  @Test
  void depth_passes_are_equal_and_within_the_limit() {
    SplittableRandom random = Seeds.random(4_711);
    for (int i = 0; i < 2_000; i++) {
      double depth = random.nextDouble(0.01, 30);
      double limit = random.nextDouble(0.1, 8);
      List<Double> depths = DepthPasses.depths(depth, limit);
      double pass = depths.get(0);
      assertThat(pass).isLessThanOrEqualTo(limit * (1 + 1e-5));
      assertThat((depths.size() - 1) * limit).isLessThan(depth * (1 + 1e-5));
      for (int k = 0; k < depths.size(); k++) {
        assertThat(depths.get(k)).isCloseTo(pass * (k + 1), within(1e-9));
      }
      assertThat(depths.get(depths.size() - 1)).isEqualTo(depth);
    }
  }

  /** Common practice: half an inch deep with a 3/8 bit in hardwood takes three passes. */
  @Test
  void the_woods_limit_and_the_tools_limit_both_hold() {
    Tool threeEighths = tool(9.525, 2, 0, 20_000, OPEN);
    assertThat(DepthPasses.depths(12.7, DepthPasses.limitMm(threeEighths, ASH))).hasSize(3);
    Material pine = new Material("pine", Material.Kind.SOFTWOOD);
    assertThat(DepthPasses.depths(12.7, DepthPasses.limitMm(threeEighths, pine))).hasSize(2);
  }
}
