package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.dryrun.check.MaterialCheck;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.FindingCount;
import frieze.dryrun.scene.EngagementLimit;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Surroundings;
import frieze.field.Met;
import frieze.motion.Executed;
import frieze.motion.Executed.KnownAxes;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** What is made of the material that a move meets, and of the tool that meets it. */
class MetTest {
  private final FindingLog log = Moves.log();
  private final MaterialCheck material = new MaterialCheck(Bench.KNOWN);

  private static Moves bit() {
    return Moves.in(Bench.KNOWN).with(Bench.FLAT);
  }

  private Passage met(double deepMm, Passage passage) {
    passage.setMet(new Met(deepMm, new Point(9, 9), 0, 1));
    material.move(passage, log);
    return passage;
  }

  private double only(FindingCode code) {
    assertThat(log.findings()).extracting(Finding::code).containsExactly(code);
    return log.findings().get(0).amount().value();
  }

  @Test
  void a_rapid_may_meet_what_rounding_leaves_standing() {
    met(0.02, bit().rapid(0, 9, -1, 9, 9, -1));
    assertThat(log.findings()).isEmpty();
    met(0.0201, bit().rapid(0, 9, -1, 9, 9, -1));
    assertThat(only(FindingCode.RAPID_INTO_MATERIAL)).isEqualTo(0.0201);
  }

  /** The bit takes 3.2 mm in one pass. */
  @Test
  void a_pass_may_be_as_deep_as_the_tool_takes() {
    met(3.21, bit().feed(0, 9, -4, 9, 9, -4));
    met(9, bit().feed(9, 9, 0, 9, 9, -9));
    met(9, Moves.in(Bench.KNOWN).with(Bench.DRILL).feed(0, 9, -9, 9, 9, -9));
    met(9, Moves.in(Bench.KNOWN).feed(0, 9, -9, 9, 9, -9));
    assertThat(log.findings()).isEmpty();
    met(3.5, bit().feed(0, 9, -4, 9, 9, -4));
    assertThat(only(FindingCode.PASS_TOO_DEEP)).isCloseTo(0.3, within(1e-9));
    assertThat(log.findings().get(0).message())
        .isEqualTo("takes 3.5 mm in one pass; flat 1/4 may take 3.2 mm");
  }

  @Test
  void moves_that_nobody_could_measure_are_said_to_be_unchecked() {
    material.move(bit().feed(0, 9, 1, 9, 9, 1), log);
    KnownAxes xy = new KnownAxes(true, true, false);
    material.move(bit().known(xy, xy).rapid(0, 9, 1, 9, 9, 1), log);
    assertThat(material.notChecked()).isEmpty();
    material.move(bit().feed(0, 9, -1, 9, 9, -1), log);
    assertThat(material.notChecked()).hasSize(1);
    MaterialCheck other = new MaterialCheck(Bench.KNOWN);
    other.move(bit().known(xy, xy).feed(0, 9, 1, 9, 9, 1), log);
    assertThat(other.notChecked()).hasSize(1);
    assertThat(new MaterialCheck(Surroundings.UNKNOWN).notChecked()).hasSize(1);
  }

  @Test
  void a_slot_deeper_than_the_tool_is_wide_may_have_half_a_turn_only_by_halves() {
    Tool tool = Bench.FLAT;
    double wide = tool.diameterMm();
    assertThat(EngagementLimit.limitRad(tool, wide)).isEqualTo(Math.PI);
    assertThat(EngagementLimit.limitRad(tool, wide + 0.01)).isEqualTo(Math.PI / 2);
    assertThat(EngagementLimit.limitRad(tool.withEngagement(1), wide + 0.01)).isEqualTo(1);
  }

  @Test
  void the_rim_is_measured_where_a_limited_tool_feeds_along() {
    Tool tool = Bench.FLAT.withEngagement(2);
    Passage along = bit().feed(0, 9, -3, 9, 9, -3);
    assertThat(EngagementLimit.asks(along, tool, 3)).isTrue();
    assertThat(EngagementLimit.asks(along, tool, 0.02)).isFalse();
    assertThat(EngagementLimit.asks(along, Bench.FLAT, 3)).isFalse();
    assertThat(EngagementLimit.asks(along, Bench.DRILL.withEngagement(2), 3)).isFalse();
    assertThat(EngagementLimit.asks(bit().rapid(0, 9, -3, 9, 9, -3), tool, 3)).isFalse();
    assertThat(EngagementLimit.asks(bit().feed(0, 9, -3, 9, 9, -3.01), tool, 3)).isFalse();
    assertThat(EngagementLimit.asks(bit().feed(0, 9, -3, 9, 9, -2), tool, 3)).isTrue();
    assertThat(EngagementLimit.asks(bit().feed(9, 9, -3, 9, 9, -2), tool, 3)).isFalse();
  }

  @Test
  void the_tool_in_the_spindle_is_the_one_last_named_or_the_only_one() {
    Surroundings one = Bench.KNOWN.withTools(List.of(Bench.DRILL));
    ToolInSpindle only = new ToolInSpindle(one, OptionalInt.empty());
    assertThat(only.number()).contains(2);
    only.change(Optional.of(7));
    assertThat(only.number()).contains(7);
    ToolInSpindle two = new ToolInSpindle(Bench.KNOWN, OptionalInt.empty());
    assertThat(two.number()).isEmpty();
    assertThat(two.changedAt(stop(false, " change to tool 2, drill 5 "))).isTrue();
    assertThat(two.number()).contains(2);
    assertThat(two.changedAt(stop(true, "CHANGE TO TOOL 1"))).isFalse();
    assertThat(two.changedAt(stop(false, "THEN CHANGE TO TOOL 1"))).isFalse();
    assertThat(two.number()).contains(2);
    assertThat(two.changedAt(stop(false, "AIR PASS: TOOL 1"))).isTrue();
    assertThat(two.number()).contains(1);
    assertThat(new ToolInSpindle(Bench.KNOWN, OptionalInt.of(2)).number()).contains(2);
  }

  private static Executed.Stop stop(boolean optional, String message) {
    return new Executed.Stop(optional, message, Moves.line(1));
  }

  /** A flat bit of 6 mm and one with a round nose, which is 3 mm higher at its rim. */
  @Test
  void the_move_that_cut_lowest_at_a_place_did_it() {
    Point at = new Point(10, 2.5);
    Point away = new Point(50, 50);
    Culprits culprits = new Culprits(List.of(at, away));
    assertThat(culprits.isNeeded()).isTrue();
    assertThat(new Culprits(List.of()).isNeeded()).isFalse();
    assertThat(culprits.at(at)).isEqualTo(Culprits.NOBODY);
    look(culprits, 3, new ToolShape.Flat(6), 0, 0, -2, 20, 0, -2);
    assertThat(culprits.at(at).line()).isEqualTo(3);
    assertThat(culprits.at(at).heightMm()).isEqualTo(-2);
    assertThat(culprits.at(at).program()).isEqualTo("p.nc");
    // As low again, lower but beside it, and lower by the axis only.
    look(culprits, 4, new ToolShape.Flat(6), 0, 0, -2, 20, 0, -2);
    look(culprits, 5, new ToolShape.Flat(6), 0, -0.6, -3, 20, -0.6, -3);
    look(culprits, 6, new ToolShape.Ball(6), 0, 0, -3, 20, 0, -3);
    assertThat(culprits.at(at).line()).isEqualTo(3);
    look(culprits, 7, new ToolShape.Flat(6), 10, 0, 5, 10, 0, -2.5);
    assertThat(culprits.at(at).line()).isEqualTo(7);
    assertThat(culprits.at(at).heightMm()).isEqualTo(-2.5);
    assertThat(culprits.at(away)).isEqualTo(Culprits.NOBODY);
  }

  private static void look(Culprits culprits, int line, ToolShape shape, double... ends) {
    Passage passage = bit().at(line).feed(ends);
    culprits.move("p.nc", passage, passage.path(), shape);
  }

  @Test
  void neighbouring_lines_with_one_fault_are_one_finding() {
    log.add(FindingCode.LOW_TRAVEL, bit().at(3).rapid(0, 0, 1, 1, 0, 1), Amount.mm(2), "two");
    log.add(FindingCode.LOW_TRAVEL, bit().at(4).rapid(0, 0, 1, 2, 0, 1), Amount.mm(-3), "three");
    log.add(FindingCode.LOW_TRAVEL, bit().at(5).rapid(0, 0, 1, 3, 0, 1), Amount.mm(3), "equal");
    log.add(FindingCode.LOW_TRAVEL, bit().at(7).rapid(0, 0, 1, 4, 0, 1), Amount.mm(1), "apart");
    assertThat(log.findings()).extracting(Finding::message).containsExactly("three", "apart");
    Finding merged = log.findings().get(0);
    assertThat(merged.firstLine()).isEqualTo(3);
    assertThat(merged.lastLine()).isEqualTo(5);
    assertThat(merged.line()).isEqualTo(4);
    assertThat(merged.moves()).isEqualTo(3);
    assertThat(log.counts()).containsExactly(new FindingCount(FindingCode.LOW_TRAVEL, 2, 2));
  }

  @Test
  void findings_that_are_no_moves_are_one_only_if_they_say_the_same() {
    log.add(FindingCode.STALE_OFFSET, Moves.line(3), Amount.NONE, "one");
    log.add(FindingCode.STALE_OFFSET, Moves.line(4), Amount.NONE, "one");
    log.add(FindingCode.STALE_OFFSET, Moves.line(5), Amount.NONE, "another");
    assertThat(log.findings()).extracting(Finding::message).containsExactly("one", "another");
    log.startProgram("next.nc");
    log.add(FindingCode.STALE_OFFSET, Moves.line(6), Amount.NONE, "another");
    log.addAt(0, FindingCode.GOUGE, Moves.line(9), Amount.NONE, "late");
    log.add(FindingCode.ENDS_LOW, Moves.line(7), Amount.NONE, "end");
    assertThat(log.findings())
        .extracting(f -> f.program() + ":" + f.line() + " " + f.message())
        .containsExactly(
            "p.nc:3 one", "p.nc:5 another", "p.nc:9 late", "next.nc:6 another", "next.nc:7 end");
    assertThat(log.programIndex()).isEqualTo(1);
  }
}
