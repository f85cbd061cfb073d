package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.check.LowTravelCheck;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Executed.MachinePosition;
import frieze.shop.Zero;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class LowTravelTest {
  private static final KnownAxes XY = new KnownAxes(true, true, false);

  private static Optional<Finding> at(Surroundings known, double z) {
    return after(new LowTravelCheck(known), Moves.in(known).rapid(0, 0, z, 9, 0, z));
  }

  private static Optional<Finding> after(LowTravelCheck check, Passage... passages) {
    FindingLog log = Moves.log();
    check.start("p.nc");
    for (Passage passage : passages) {
      check.move(passage, log);
    }
    List<Finding> findings = log.findings();
    assertThat(findings.size()).isLessThan(2);
    return findings.stream().findFirst();
  }

  @Test
  void travel_up_to_the_rounding_below_the_clearance_height_is_let_pass() {
    double lowest = 5 - Slack.LENGTH_MM;
    assertThat(at(Bench.KNOWN, lowest)).isEmpty();
    Finding finding = at(Bench.KNOWN, Math.nextDown(lowest)).orElseThrow();
    assertThat(finding.code()).isEqualTo(FindingCode.LOW_TRAVEL);
    Finding low = at(Bench.KNOWN, 1.5).orElseThrow();
    assertThat(low.amount()).isEqualTo(Amount.mm(3.5));
    assertThat(low.message()).contains("1.5 mm above").contains("height is 5 mm");
  }

  @Test
  void travel_in_the_stock_is_told_with_its_depth() {
    assertThat(at(Bench.KNOWN, -Slack.LENGTH_MM).orElseThrow().code())
        .isEqualTo(FindingCode.LOW_TRAVEL);
    Finding finding = at(Bench.KNOWN, -0.75).orElseThrow();
    assertThat(finding.code()).isEqualTo(FindingCode.TRAVEL_IN_STOCK);
    assertThat(finding.amount()).isEqualTo(Amount.mm(0.75));
    assertThat(finding.message()).contains("sideways 0.75 mm below the top");
    assertThat(at(Bench.KNOWN, Math.nextDown(-Slack.LENGTH_MM)).orElseThrow().code())
        .isEqualTo(FindingCode.TRAVEL_IN_STOCK);
  }

  @Test
  void zero_on_the_bed_measures_from_the_top_all_the_same() {
    Surroundings bed =
        Bench.KNOWN.withStock(
            Bench.STOCK, new Zero(Zero.AlongX.LEFT, Zero.AlongY.FRONT, Zero.AlongZ.BED));
    assertThat(at(bed, 19.1 + 5)).isEmpty();
    assertThat(at(bed, 20.1).orElseThrow().amount().value()).isCloseTo(4, within(1e-9));
    assertThat(at(bed, 18.1).orElseThrow().code()).isEqualTo(FindingCode.TRAVEL_IN_STOCK);
  }

  @Test
  void without_a_clearance_height_only_the_stock_counts() {
    Surroundings none = Bench.KNOWN.withHeights(OptionalDouble.empty(), OptionalDouble.empty());
    assertThat(at(none, 0.1)).isEmpty();
    assertThat(at(none, -0.1)).isPresent();
    assertThat(new LowTravelCheck(none).notChecked())
        .extracting(NotChecked::what)
        .containsExactly("clearance height");
    assertThat(new LowTravelCheck(Surroundings.UNKNOWN).notChecked())
        .extracting(NotChecked::what)
        .containsExactly("height of rapids");
    assertThat(new LowTravelCheck(Bench.KNOWN).notChecked()).isEmpty();
    assertThat(at(Surroundings.UNKNOWN, -9)).isEmpty();
  }

  @Test
  void the_first_travel_at_an_unknown_height_is_told_once() {
    Passage unknown = Moves.in(Bench.KNOWN).known(XY, XY).rapid(0, 0, 0, 9, 0, 0);
    Finding finding = after(new LowTravelCheck(Bench.KNOWN), unknown, unknown).orElseThrow();
    assertThat(finding.code()).isEqualTo(FindingCode.TRAVEL_AT_UNKNOWN_HEIGHT);
    assertThat(finding.moves()).isEqualTo(1);
  }

  @Test
  void a_rise_by_itself_tells_the_height() {
    LowTravelCheck check = new LowTravelCheck(Bench.KNOWN);
    Passage travel = Moves.in(Bench.KNOWN).known(XY, XY).rapid(0, 0, 0, 9, 0, 0);
    Passage rise = Moves.in(Bench.KNOWN).known(XY, XY).rapid(0, 0, 0, 0, 0, 3);
    Passage sink = Moves.in(Bench.KNOWN).known(XY, XY).rapid(0, 0, 0, 0, 0, -3);
    Passage onMachine =
        Moves.in(Bench.KNOWN)
            .known(XY, XY)
            .machine(
                new MachinePosition(
                    OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.of(0)))
            .rapid(0, 0, 0, 0, 0, 0);
    assertThat(after(check, rise, travel)).isEmpty();
    assertThat(after(check, onMachine, travel)).isEmpty();
    assertThat(after(check, sink, travel)).isPresent();
  }

  /** From nowhere to X9 is a travel, even if the path is drawn as if it had no length. */
  @Test
  void the_first_word_of_an_axis_is_a_travel() {
    KnownAxes x = new KnownAxes(true, false, false);
    KnownAxes y = new KnownAxes(false, true, false);
    for (KnownAxes first : List.of(x, y)) {
      Passage passage = Moves.in(Bench.KNOWN).known(KnownAxes.NONE, first).rapid(9, 9, 0, 9, 9, 0);
      assertThat(after(new LowTravelCheck(Bench.KNOWN), passage)).isPresent();
    }
    Passage known = Moves.in(Bench.KNOWN).known(XY, XY).rapid(9, 9, 0, 9, 9, 0);
    assertThat(after(new LowTravelCheck(Bench.KNOWN), known)).isEmpty();
  }
}
