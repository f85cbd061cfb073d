package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.diagnostic.Code;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.FindingCount;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.Range;
import frieze.dryrun.scene.Surroundings;
import frieze.rs274.ReadingRules.Paths;
import frieze.rs274.ReadingRules.Rapids;
import frieze.shop.KeepOut;
import frieze.shop.Machine;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** One check at a time, with and without what it needs to know. */
class ChecksTest {
  private static final String START = "G17 G21 G90 G94 G53 G0 Z0\nT1 M6\nS16000 M3\n";

  private static Finding only(DryRunResult result, Code code) {
    List<Finding> found = result.findings().stream().filter(f -> f.code() == code).toList();
    assertThat(found).as(() -> result.findings().toString()).hasSize(1);
    return found.get(0);
  }

  private static List<Code> codes(DryRunResult result) {
    return result.findings().stream().map(Finding::code).toList();
  }

  private static String notChecked(DryRunResult result) {
    return result.notChecked().stream().map(NotChecked::toString).collect(Collectors.joining("\n"));
  }

  @Test
  void a_known_zero_compares_each_move_with_the_travel() {
    DryRunResult result = Bench.run(Bench.withZeroAt(500, 100, -50), START + "G0 X300 Z5\nM2\n");
    Finding finding = only(result, FindingCode.BEYOND_TRAVEL);
    assertThat(finding.amount().value()).isCloseTo(20, within(1e-9));
    assertThat(finding.line()).isEqualTo(4);
    assertThat(finding.move()).isEqualTo("rapid to X300 Z5");
  }

  @Test
  void an_unknown_zero_gives_the_range_of_zeros_that_fit() {
    String text = START + "G0 Z5\nG0 X-10 Y20\nG1 Z-2 F300\nG1 X200 Y40\nG0 Z5\nM2\n";
    DryRunResult result = Bench.run(Bench.KNOWN, text);
    assertThat(result.zeroFits()).hasSize(3).allMatch(ZeroFit::fits);
    ZeroFit x = result.zeroFits().get(0);
    assertThat(x.neededMm()).isEqualTo(210);
    assertThat(x.zeroMm()).contains(new Range(10, 580));
    ZeroFit z = result.zeroFits().get(2);
    assertThat(z.zeroMm()).contains(new Range(-118, -5));
    assertThat(codes(result)).doesNotContain(FindingCode.BEYOND_TRAVEL);
  }

  @Test
  void an_axis_that_is_too_short_for_any_zero_is_an_error() {
    String text = START + "G0 Z5\nG0 X-300 Y20\nG0 X500\nM2\n";
    DryRunResult result = Bench.run(Bench.KNOWN, text);
    assertThat(only(result, FindingCode.BEYOND_TRAVEL).amount().value())
        .isCloseTo(20, within(1e-9));
    assertThat(result.zeroFits().get(0).fits()).isFalse();
  }

  @Test
  void arcs_count_with_their_true_extent() {
    String text = START + "G0 Z5\nG0 X100 Y100\nG1 Z-1 F300\nG2 X100 Y100 I20 J0 F900\nG0 Z5\nM2\n";
    Extents feed = Bench.run(Bench.KNOWN, text).program().feed();
    assertThat(feed.x()).contains(new Range(100, 140));
    assertThat(feed.y()).contains(new Range(80, 120));
    Extents rapid = Bench.run(Bench.KNOWN, text).program().rapid();
    assertThat(rapid.x()).contains(new Range(100, 100));
  }

  @Test
  void a_tool_that_runs_over_the_edge_is_a_warning_and_beside_it_an_error() {
    String over = START + "G0 Z5\nG0 X20 Y2\nG1 Z-0 F300\nG1 X80 Z-2\nG1 X20 Y-2\nG0 Z5\nM2\n";
    DryRunResult result = Bench.run(Bench.KNOWN, over);
    assertThat(only(result, FindingCode.OVER_STOCK_EDGE).amount().value())
        .isCloseTo(2, within(1e-9));
    assertThat(result.mayWrite()).isTrue();
    DryRunResult beside = Bench.run(Bench.KNOWN, over.replace("Y-2", "Y-4"));
    assertThat(only(beside, FindingCode.CUT_OFF_STOCK).amount().value()).isCloseTo(4, within(1e-9));
    assertThat(beside.mayWrite()).isFalse();
  }

  @Test
  void zero_on_the_bed_measures_from_the_bed() {
    Surroundings bed =
        Bench.KNOWN.withStock(
            Bench.STOCK, new Zero(Zero.AlongX.CENTRE, Zero.AlongY.CENTRE, Zero.AlongZ.BED));
    String text =
        START + "G0 Z30\nG0 X100 Y0\nG1 Z19.1 F400\nG1 X120 Z18 F600\nG1 X100\nG0 Z30\nM2\n";
    DryRunResult result = Bench.run(bed, text);
    assertThat(result.findings()).isEmpty();
    assertThat(result.programs().get(0).deepestMm().orElseThrow()).isCloseTo(1.1, within(1e-9));
    assertThat(codes(Bench.run(bed, text.replace("Z18", "Z-1"))))
        .contains(FindingCode.INTO_SPOILBOARD);
  }

  @Test
  void without_an_allowance_nothing_may_go_below_the_stock_and_that_is_said() {
    Surroundings none = Bench.KNOWN.withHeights(OptionalDouble.of(5), OptionalDouble.empty());
    DryRunResult result = Bench.run(none, Bench.GOOD);
    assertThat(codes(result)).containsOnly(FindingCode.INTO_SPOILBOARD);
    assertThat(notChecked(result)).contains("the spoilboard's allowance not checked");
  }

  @Test
  void a_first_travel_at_an_unknown_height_is_a_warning() {
    DryRunResult result =
        Bench.run(Bench.KNOWN, "G17 G21 G90 G94\nT1 M6\nS16000 M3\nG0 X10 Y20\nG0 Z5\nM2\n");
    assertThat(only(result, FindingCode.TRAVEL_AT_UNKNOWN_HEIGHT).line()).isEqualTo(4);
  }

  @Test
  void a_spindle_switched_by_hand_needs_a_stop_with_a_message_for_each_tool() {
    Surroundings byHand = Bench.KNOWN.withMachine(Bench.machine(true));
    String good =
        Bench.GOOD
            .replace("S16000 M3\n", "(MSG, switch the spindle on, dial 4)\nM0\n")
            .replace("S9000 M3\n", "(MSG, switch the spindle on, dial 1)\nM0\n")
            .replace("M5\n", "");
    assertThat(Bench.run(byHand, good).findings()).isEmpty();
    String second = good.replaceFirst("(?s)\\(MSG, switch the spindle on, dial 1\\)\nM0\n", "");
    Finding finding = only(Bench.run(byHand, second), FindingCode.NO_STOP_FOR_SPINDLE);
    assertThat(finding.message()).contains("drill 5");
    String first = good.replaceFirst("(?s)\\(MSG, switch the spindle on, dial 4\\)\nM0\n", "");
    assertThat(only(Bench.run(byHand, first), FindingCode.NO_STOP_FOR_SPINDLE).message())
        .contains("flat 1/4");
    assertThat(Bench.run(byHand, good).time().handSeconds()).isEqualTo(60);
  }

  @Test
  void plunging_where_nothing_stands_is_free() {
    String twice =
        START
            + "G0 Z5\nG0 X100 Y40\nG1 Z0 F400\nG1 X140 Z-3 F800\nG1 X100\nG0 Z5\n"
            + "G0 X120 Y40\nG1 Z-3 F400\nG1 X140\nG0 Z5\nM2\n";
    assertThat(Bench.run(Bench.KNOWN, twice).findings()).isEmpty();
    String fresh = twice.replace("G0 X120 Y40", "G0 X120 Y60");
    assertThat(codes(Bench.run(Bench.KNOWN, fresh))).contains(FindingCode.PLUNGE_OFF_CENTRE);
  }

  private static final Tool SHORT_ONE =
      new Tool(
          "short",
          1,
          Bench.FLAT.shape(),
          2,
          5,
          12,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          20000,
          2000,
          400);

  @Test
  void flutes_and_reach_are_compared_with_the_depth() {
    Surroundings known = Bench.KNOWN.withTools(List.of(SHORT_ONE));
    String text = START + "G0 Z5\nG0 X100 Y40\nG1 Z-8 F300\nG0 Z5\nM2\n";
    assertThat(only(Bench.run(known, text), FindingCode.DEEPER_THAN_FLUTES).amount().value())
        .isCloseTo(3, within(1e-9));
    assertThat(
            only(Bench.run(known, text.replace("Z-8", "Z-14")), FindingCode.DEEPER_THAN_REACH)
                .amount()
                .value())
        .isCloseTo(2, within(1e-9));
  }

  @Test
  void a_shank_that_stands_free_is_not_rubbed() {
    StringBuilder text = new StringBuilder(START + "G0 Z5\n");
    for (double y = 40; y <= 50; y += 2.5) {
      text.append("G0 X100 Y").append(y).append("\nG1 Z0 F300\nG1 X140 Z-3 F800\nG1 X100\nG0 Z5\n");
    }
    String between = "G0 X120 Y45\nG1 Z-3 F300\nG1 X130 Z-7 F800\nG0 Z5\nM2\n";
    Surroundings known = Bench.KNOWN.withTools(List.of(SHORT_ONE));
    assertThat(codes(Bench.run(known, text + between)))
        .doesNotContain(FindingCode.DEEPER_THAN_FLUTES, FindingCode.DEEPER_THAN_REACH);
    // The wall beside it stands 7 mm above the tip, of which the flutes cut 5.
    String atTheWall = between.replace("Y45", "Y50");
    assertThat(
            only(Bench.run(known, text + atTheWall), FindingCode.DEEPER_THAN_FLUTES)
                .amount()
                .value())
        .isCloseTo(2, within(1e-6));
  }

  @Test
  void the_holder_meets_a_clamp_that_the_tool_clears() {
    // The tool passes 10 mm beside the clamp; its holder, 25 mm wide each way, is too low.
    Surroundings tall =
        Bench.KNOWN.withKeepOuts(List.of(new KeepOut("tall clamp", 0, 60, 15, 90, 30)));
    String text = START + "G0 Z5\nG0 X25 Y40\nG1 Z0 F400\nG1 Y80 Z-3 F800\nG1 Y40\nG0 Z5\nM2\n";
    Finding finding = only(Bench.run(tall, text), FindingCode.HITS_KEEP_OUT);
    assertThat(finding.message()).contains("holder").contains("tall clamp");
    Surroundings low =
        Bench.KNOWN.withKeepOuts(List.of(new KeepOut("low clamp", 0, 60, 15, 90, 10)));
    assertThat(Bench.run(low, text).findings()).isEmpty();
  }

  @Test
  void a_rapid_that_may_bend_into_a_clamp_is_a_warning() {
    Surroundings corner =
        Bench.KNOWN.withKeepOuts(List.of(new KeepOut("corner clamp", 0, 100, 30, 150, 20)));
    String text = START + "G0 Z8\nG0 X10 Y10\nG0 X200 Y130\nM2\n";
    DryRunResult result = Bench.run(corner, text);
    assertThat(codes(result)).containsExactly(FindingCode.DOGLEG_MAY_HIT);
    assertThat(codes(Bench.run(corner, text.replace("Z8", "Z21")))).isEmpty();
  }

  @Test
  void nothing_known_is_said_in_capitals_where_it_can_hurt() {
    DryRunResult result = Bench.run(Surroundings.UNKNOWN, Bench.GOOD);
    assertThat(notChecked(result))
        .contains("CLAMPS NOT CHECKED")
        .contains("TRAVEL NOT CHECKED")
        .contains("PLACE AND DEPTH IN THE STOCK NOT CHECKED")
        .contains("THE TOOLS' LIMITS NOT CHECKED");
    assertThat(result.findings()).isEmpty();
    assertThat(result.program().feed().z()).contains(new Range(-19.3, 5));
    assertThat(result.programs().get(0).deepestMm()).isEmpty();
  }

  @Test
  void a_probe_that_would_go_far_below_the_stock_when_it_misses_is_caught() {
    String text = START + "G0 Z5\nG0 X100 Y40\nG38.2 Z-24 F100\nG0 Z5\nM2\n";
    assertThat(codes(Bench.run(Bench.KNOWN, text))).doesNotContain(FindingCode.INTO_SPOILBOARD);
    assertThat(codes(Bench.run(Bench.KNOWN, text.replace("Z-24", "Z-40"))))
        .contains(FindingCode.INTO_SPOILBOARD);
  }

  @Test
  void everything_known_leaves_nothing_unchecked() {
    Paths exact = new Paths(Rapids.STRAIGHT, OptionalDouble.of(0.01));
    assertThat(Bench.run(Bench.withZeroAt(100, 100, -40), exact, Bench.GOOD).notChecked())
        .isEmpty();
  }

  @Test
  void findings_of_neighbouring_lines_are_one_and_tell_the_worst() {
    String text =
        START
            + "G0 Z5\nG0 X20 Y20\nG1 Z0 F400\n"
            + Stream.of("-1", "-2", "-5", "-4")
                .map(y -> "G1 X200 Y" + y + " Z-1 F400\n")
                .collect(Collectors.joining())
            + "G0 Z5\nM2\n";
    Finding finding = only(Bench.run(Bench.KNOWN, text), FindingCode.CUT_OFF_STOCK);
    assertThat(finding.firstLine()).isEqualTo(9);
    assertThat(finding.lastLine()).isEqualTo(10);
    assertThat(finding.line()).isEqualTo(9);
    assertThat(finding.moves()).isEqualTo(2);
    assertThat(finding.text()).isEqualTo("G1 X200 Y-5 Z-1 F400");
    assertThat(finding.amount().value()).isCloseTo(5, within(1e-9));
  }

  @Test
  void findings_are_capped_and_counted() {
    StringBuilder text = new StringBuilder(START + "G0 Z5\nG0 X20 Y20\n");
    for (int i = 0; i < 100; i++) {
      text.append("G0 X").append(30 + i).append(" Z2\nG0 Z5\n");
    }
    DryRunResult result = Bench.run(Bench.KNOWN, text + "M2\n");
    assertThat(result.findings()).hasSize(FindingCount.SHOWN_PER_CODE);
    assertThat(result.counts())
        .containsExactly(
            new FindingCount(FindingCode.LOW_TRAVEL, 100, FindingCount.SHOWN_PER_CODE));
  }

  @Test
  void the_stock_is_carried_from_program_to_program() {
    String first = START + "G0 Z5\nG0 X100 Y40\nG1 Z0 F400\nG1 X140 Z-3 F800\nG1 X100\nG0 Z5\nM2\n";
    String second = START + "G0 Z5\nG0 X110 Y40\nG1 Z-3 F400\nG1 X130\nG0 Z5\nM2\n";
    assertThat(Bench.run(Bench.KNOWN, first, second).findings()).isEmpty();
    DryRunResult turned = Bench.run(Bench.KNOWN, second, first);
    assertThat(codes(turned)).contains(FindingCode.PLUNGE_OFF_CENTRE);
    assertThat(turned.findings().get(0).program()).isEqualTo("p1.nc");
  }

  @Test
  void a_thickness_read_in_several_places_counts_with_its_thickest() {
    Stock thin = new Stock(Bench.STOCK.material(), 300, 150, List.of(18.0, 18.5), false);
    DryRunResult result = Bench.run(Bench.KNOWN.withStock(thin, Zero.LEFT_FRONT_TOP), Bench.GOOD);
    assertThat(codes(result)).containsOnly(FindingCode.INTO_SPOILBOARD);
    assertThat(result.findings().get(0).amount().value())
        .isCloseTo(19.3 - 18.5 - 0.4, within(1e-9));
  }

  @Test
  void a_program_that_moves_nothing_is_told() {
    DryRunResult result = Bench.run(Bench.KNOWN, "G17 G21 G90\nS16000 M3\nM2\n");
    assertThat(only(result, FindingCode.NOTHING_MOVES).message())
        .isEqualTo("the program has no move in 3 lines");
  }

  @Test
  void another_tool_after_cuts_needs_a_changer() {
    Machine m = Bench.machine(false);
    Machine byHand =
        new Machine(
            m.name(), m.post(), 780, 560, 120, m.x(), m.y(), m.z(), m.spindle(), false, false, 0);
    Surroundings known = Bench.KNOWN.withMachine(byHand);
    Finding finding = only(Bench.run(known, Bench.GOOD), FindingCode.NO_TOOL_CHANGER);
    assertThat(finding.text()).isEqualTo("T2 M6");
    assertThat(codes(Bench.run(Bench.KNOWN, Bench.GOOD))).isEmpty();
  }
}
