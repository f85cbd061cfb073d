package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Executed.Rotation;
import frieze.motion.Position;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What lines do, and in which order: NISTIR 6556, 3.5 to 3.7 and table 8. */
class ExecutionTest {
  private static final double EXACT = 1e-12;

  @Test
  void the_spindle_stops_before_the_cut_that_stands_beside_its_stop() {
    Programs.Run run = Programs.zeroed("S900 M3 F60", "M5 G1 X10");
    assertThat(run.move(0).state().rotation()).isEqualTo(Rotation.STOPPED);
  }

  @Test
  void the_spindle_starts_before_the_wait_that_stands_beside_its_start() {
    Programs.Run run = Programs.zeroed("G4 P2 M3 S1000");
    Executed.Dwell dwell = run.all(Executed.Dwell.class).get(0);
    assertThat(dwell.seconds()).isEqualTo(2);
    assertThat(dwell.state().rotation()).isEqualTo(Rotation.CLOCKWISE);
    assertThat(dwell.state().rpm()).hasValue(1000);
  }

  @Test
  void a_line_moves_before_it_ends_or_stops() {
    List<Executed> ended = Programs.zeroed("M2 G0 Z5").events();
    assertThat(ended.get(0)).isInstanceOf(Executed.Move.class);
    assertThat(ended.get(1)).isInstanceOf(Executed.End.class);
    List<Executed> stopped = Programs.zeroed("M0 G0 Z5").events();
    assertThat(stopped.get(0)).isInstanceOf(Executed.Move.class);
    assertThat(stopped.get(1)).isInstanceOf(Executed.Stop.class);
  }

  @Test
  void modes_take_effect_before_the_motion_of_their_line() {
    Programs.Run run = Programs.zeroed("G0 X3", "G1 X5 F60 G91", "G0 G90 X1");
    assertThat(run.move(1).path().to().x()).isEqualTo(8);
    assertThat(run.move(2).path().to().x()).isEqualTo(1);
    Programs.Run plane = Programs.zeroed("G0 X10 Z0", "G3 X0 Z10 I-10 G18 F60");
    assertThat(plane.errors()).isEmpty();
    assertThat(plane.move(1).path().to()).isEqualTo(new Position(0, 0, 10));
  }

  @Test
  void a_motion_code_stays_in_force() {
    Programs.Run run = Programs.zeroed("F60 G1 X1", "X2", "S5", "Y3", "G0 Z1", "Z2");
    assertThat(run.moves())
        .extracting(Executed.Move::kind)
        .containsExactly(Kind.FEED, Kind.FEED, Kind.FEED, Kind.RAPID, Kind.RAPID);
  }

  /** So that a line after a wrong one is not taken for a rapid. */
  @Test
  void the_motion_code_of_a_line_that_is_refused_is_in_force() {
    Programs.Run run = Programs.zeroed("F60 G0 X10", "G3 X0 Y11 I-10", "X0 Y10 I-10");
    assertThat(run.codes()).containsExactly(ProgramCode.ARC_RADII_DIFFER);
    assertThat(run.move(1).kind()).isEqualTo(Kind.FEED);
    assertThat(run.move(1).path()).isInstanceOf(frieze.motion.Motion.Turn.class);
  }

  @Test
  void the_feed_is_per_minute_in_the_unit_in_force() {
    Programs.Run run =
        Programs.run(Programs.ZEROED, "G20 G90", "F100 G1 X1", "G0 X0", "F0.5", "G1 X1");
    assertThat(run.move(0).feedMmPerMin()).hasValue(2540);
    assertThat(run.move(0).seconds()).isEmpty();
    assertThat(run.move(0).path().to().x()).isEqualTo(25.4);
    assertThat(run.move(1).feedMmPerMin()).isEmpty();
    assertThat(run.move(2).feedMmPerMin()).hasValue(12.7);
  }

  @Test
  void inverse_time_tells_the_time_of_each_feed_move() {
    // F2 asks for half a minute (3.5.19).
    Programs.Run run = Programs.zeroed("F60 G1 X1", "G93 F2 X2", "G0 X0", "F4", "G94 G1 X5 F30");
    assertThat(run.move(1).seconds()).hasValue(30);
    assertThat(run.move(1).feedMmPerMin()).isEmpty();
    assertThat(run.move(2).seconds()).isEmpty();
    assertThat(run.move(3).seconds()).isEmpty();
    assertThat(run.move(3).feedMmPerMin()).hasValue(30);
    assertThat(run.summary().diagnostics()).isEmpty();
    // An F of the other mode is not taken over.
    assertThat(Programs.zeroed("F60 G93", "G94 G1 X1").codes())
        .containsExactly(ProgramCode.FEED_NEVER_SET);
    assertThat(Programs.zeroed("G93", "G3 X1 Y1 I1").codes())
        .containsExactly(ProgramCode.FEED_ABSENT);
  }

  @Test
  void the_last_selected_tool_is_taken_and_the_spindle_stops() {
    Programs.Run run = Programs.zeroed("T1", "T2 M3 S900", "T3", "M6", "G0 X1", "T0 M6", "G0 X2");
    assertThat(run.all(Executed.ToolChange.class))
        .extracting(Executed.ToolChange::toolNumber)
        .containsExactly(Optional.of(3), Optional.of(0));
    assertThat(run.all(Executed.SpindleChange.class))
        .extracting(Executed.SpindleChange::rotation)
        .containsExactly(Rotation.CLOCKWISE, Rotation.STOPPED);
    assertThat(run.move(0).state().toolNumber()).contains(3);
    assertThat(run.move(0).state().rotation()).isEqualTo(Rotation.STOPPED);
    assertThat(Programs.zeroed("M6 T7", "G0 X1").move(0).state().toolNumber()).contains(7);
    ReadingRules held =
        Programs.ZEROED.but().start(Start.zeroed(new Position(0, 0, 0)).withTool(4)).build();
    assertThat(Programs.run(held, "G21 G90 G0 X1").move(0).state().toolNumber()).contains(4);
  }

  @Test
  void the_spindle_changes_speed_while_it_turns() {
    Programs.Run run = Programs.zeroed("S500", "M4", "S800", "S800", "S900 M3", "M5", "S100");
    assertThat(run.all(Executed.SpindleChange.class))
        .extracting(c -> c.rotation() + " " + c.rpm().orElse(-1))
        .containsExactly(
            "COUNTER_CLOCKWISE 500.0",
            "COUNTER_CLOCKWISE 800.0",
            "CLOCKWISE 900.0",
            "STOPPED 900.0");
  }

  @Test
  void coolant_overrides_and_path_control_are_told_in_stable_words() {
    Programs.Run run =
        Programs.zeroed("M7", "M8", "M9", "M48", "M49", "G61", "G61.1", "G64", "G55");
    assertThat(run.others())
        .containsExactly(
            "coolant mist on",
            "coolant flood on",
            "coolant off",
            "overrides on",
            "overrides off",
            "path exact",
            "path exact stop",
            "path continuous",
            "system 2");
  }

  @Test
  void the_dwell_word_is_as_the_dialect_has_it() {
    ReadingRules milli = Programs.ZEROED.but().dwell(ReadingRules.DwellWord.P_MILLISECONDS).build();
    assertThat(dwell(milli, "G4 P1500")).isEqualTo(1.5);
    ReadingRules byX = Programs.ZEROED.but().dwell(ReadingRules.DwellWord.X_SECONDS).build();
    assertThat(dwell(byX, "G4 X1.5")).isEqualTo(1.5);
    assertThat(Programs.run(byX, "G0 X1", "G4 X1.5").moves()).hasSize(1);
    assertThat(Programs.run(byX, "G4 X1.5 Y2").errors().get(0).code())
        .isEqualTo(ProgramCode.AXIS_WORDS_CLAIMED_TWICE);
    assertThat(Programs.run(byX, "G4 P1").errors().get(0).code())
        .isEqualTo(ProgramCode.WORD_UNUSED);
    assertThat(dwell(Programs.ZEROED, "G4 P0")).isZero();
    // In a cycle, P has the unit of the dialect too.
    Programs.Run cycle = Programs.run(milli, "G21 G90 F60 G82 X1 Z-1 R1 P500");
    assertThat(cycle.all(Executed.Dwell.class).get(0).seconds()).isEqualTo(0.5);
  }

  private static double dwell(ReadingRules rules, String line) {
    Programs.Run run = Programs.run(rules, line);
    assertThat(run.errors()).isEmpty();
    return run.all(Executed.Dwell.class).get(0).seconds();
  }

  @Test
  void torch_words_light_a_torch_instead_of_turning_a_spindle() {
    ReadingRules rules = Programs.ZEROED.but().torch(3, 5).build();
    Programs.Run run = Programs.run(rules, "G21 G90 F60", "M3", "G1 X5", "M5", "G0 X0");
    assertThat(run.summary().diagnostics()).isEmpty();
    assertThat(run.all(Executed.Torch.class))
        .extracting(Executed.Torch::on)
        .containsExactly(true, false);
    assertThat(run.all(Executed.SpindleChange.class)).isEmpty();
    assertThat(run.move(0).state().torchOn()).isTrue();
    assertThat(run.move(1).state().torchOn()).isFalse();
    assertThat(Programs.run(rules, "M3 M5").only().code()).isEqualTo(ProgramCode.GROUP_M);
    // The end puts a torch out that still burns.
    assertThat(Programs.run(rules, "M3", "M2").all(Executed.Torch.class)).hasSize(2);
    ReadingRules others = Programs.ZEROED.but().torch(62, 63).build();
    assertThat(Programs.run(others, "M62", "M63").all(Executed.Torch.class)).hasSize(2);
  }

  @Test
  void extra_codes_are_told_and_move_nothing() {
    ReadingRules rules = Programs.ZEROED.but().extraG(5, 64.5).extraM(52).build();
    Programs.Run run = Programs.run(rules, "G21 G90", "M52 P1", "G5 X7 Q2", "G64.5", "G0 X1 M52");
    assertThat(run.errors()).isEmpty();
    assertThat(run.others()).containsExactly("m52", "g5", "g64.5", "m52");
    assertThat(run.moves()).hasSize(1);
  }

  @Test
  void codes_that_a_controller_has_not_are_refused() {
    ReadingRules rules =
        Programs.ZEROED.but().noArcs().noCycles().missingM(6).missingG(38.2).build();
    for (String line :
        new String[] {
          "F60 G2 X1 I1",
          "F60 G3 X1 I1",
          "F60 G81 X1 Z-1 R1",
          "F60 G89 X1 Z-1 R1 P0",
          "T1 M6",
          "F60 G38.2 X5"
        }) {
      assertThat(Programs.run(rules, "G21 G90", line).only().code())
          .as(line)
          .isEqualTo(ProgramCode.NOT_IN_DIALECT);
    }
  }

  @Test
  void axes_that_a_machine_has_not_are_refused() {
    ReadingRules rules = Programs.ZEROED.but().axes("XY").build();
    assertThat(Programs.run(rules, "G21 G90 G0 X1 Z2").only().code())
        .isEqualTo(ProgramCode.NO_SUCH_AXIS);
    assertThat(Programs.run(rules, "G21 G90 G0 X1 Y2").errors()).isEmpty();
  }

  @Test
  void a_tolerance_beside_g64_is_for_dialects_that_have_it() {
    assertThat(Programs.zeroed("G64 P0.05").only().code()).isEqualTo(ProgramCode.WORD_UNUSED);
    ReadingRules rules = Programs.ZEROED.but().pathTolerance(true).build();
    assertThat(Programs.run(rules, "G64 P0.05").errors()).isEmpty();
  }

  @Test
  void small_increments_add_up_without_drift() {
    StringBuilder text = new StringBuilder("G20 G91 F60\n");
    int count = 20_000;
    for (int i = 0; i < count; i++) {
      text.append("G1 X0.1 Y-0.0001\n");
    }
    Programs.Run run = Programs.run(Programs.ZEROED, text.toString());
    Executed.MachinePosition end = run.summary().position();
    assertThat(end.x().orElseThrow() / 25.4).isEqualTo(0.1 * count, within(1e-9));
    assertThat(end.y().orElseThrow() / 25.4).isEqualTo(-0.0001 * count, within(EXACT));
  }

  @Test
  void a_move_tells_its_line() {
    Programs.Run run = Programs.zeroed("", "G0 X1");
    assertThat(run.move(0).span().line()).isEqualTo(3);
    assertThat(run.move(0).span().column()).isEqualTo(1);
    assertThat(run.move(0).span().length()).isEqualTo(5);
    assertThat(run.move(0).span().source()).isEqualTo("test.nc");
  }

  @Test
  void rotary_axes_are_tracked_but_not_followed() {
    Programs.Run run = Programs.zeroed("G0 A90", "G0 X1 A0", "G0 X2", "G91 G0 B5");
    assertThat(run.codes()).containsExactly(ProgramCode.ROTARY_NOT_FOLLOWED);
    assertThat(run.only().isError()).isFalse();
    assertThat(run.moves()).hasSize(4);
    assertThat(run.move(0).path().lengthMm()).isZero();
  }

  @Test
  void a_probe_move_ends_where_nobody_knows() {
    Programs.Run run = Programs.zeroed("F60", "G38.2 Z-10", "G0 Z1");
    assertThat(run.errors()).isEmpty();
    assertThat(run.move(0).kind()).isEqualTo(Kind.PROBE);
    assertThat(run.move(0).path().to().z()).isEqualTo(-10);
    assertThat(run.move(0).feedMmPerMin()).hasValue(60);
    assertThat(run.move(1).fromKnown().z()).isFalse();
    assertThat(run.move(1).fromKnown().x()).isTrue();
    assertThat(run.move(1).toKnown().z()).isTrue();
    assertThat(Programs.zeroed("F60", "G38.2 Z-10", "G10 L2 P1 Z#5063").only().code())
        .isEqualTo(ProgramCode.PARAMETER_UNKNOWN);
    // Axes that were not probed are known.
    assertThat(Programs.zeroed("F60 G0 X3", "G38.2 Z-10", "#1=#5061").parameters().get(1))
        .isEqualTo(3);
  }

  @Test
  void a_probe_move_can_be_taken_to_end_at_its_point() {
    ReadingRules rules =
        Programs.ZEROED.but().probeEnd(ReadingRules.ProbeEnd.PROGRAMMED_POINT).build();
    Programs.Run run = Programs.run(rules, "G20 G90 F60", "G38.2 Z-2", "#1=#5063", "G0 Z1");
    assertThat(run.errors()).isEmpty();
    assertThat(run.parameters().get(1)).isEqualTo(-2, within(EXACT));
    assertThat(run.move(1).fromKnown().z()).isTrue();
  }

  @Test
  void zero_set_on_a_surface_that_a_probe_has_found_is_the_zero_from_there_on() {
    Programs.Run run =
        Programs.zeroed(
            "F60 G0 Z5", "G38.2 Z-10", "G92 Z0", "G0 Z3", "G38.2 Z-10", "G92 Z-1.5", "G1 Z2");
    assertThat(run.errors()).isEmpty();
    assertThat(run.move(2).toKnown().z()).isTrue();
    assertThat(run.move(2).path().from().z()).isZero();
    assertThat(run.move(2).path().to().z()).isEqualTo(3);
    assertThat(run.move(4).path().from().z()).isEqualTo(-1.5, within(EXACT));
    assertThat(run.move(4).path().to().z()).isEqualTo(2, within(EXACT));
    // Without a probe the frame stays where it was.
    assertThat(Programs.zeroed("G0 Z5", "G92 Z0", "G0 Z3").move(1).path().to().z()).isEqualTo(8);
  }
}
