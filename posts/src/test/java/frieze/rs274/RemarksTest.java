package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.diagnostic.Severity;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What the report allows but a checker should say (common practice where nothing else is named).
 */
class RemarksTest {
  private static void only(Programs.Run run, ProgramCode code, Severity severity, int line) {
    assertThat(run.only().code()).isEqualTo(code);
    assertThat(run.only().severity()).isEqualTo(severity);
    assertThat(run.only().where().line()).isEqualTo(line);
  }

  @Test
  void a_feed_move_before_any_feed_is_told() {
    only(Programs.zeroed("G1 X1", "F60 X2"), ProgramCode.FEED_NEVER_SET, Severity.WARNING, 2);
    assertThat(Programs.zeroed("G1 X1").move(0).feedMmPerMin()).isEmpty();
    assertThat(Programs.zeroed("G3 X1 R5").codes()).containsExactly(ProgramCode.FEED_NEVER_SET);
    assertThat(Programs.zeroed("G81 X1 Z-1 R1").codes())
        .containsExactly(ProgramCode.FEED_NEVER_SET);
    assertThat(Programs.zeroed("G0 X1").summary().diagnostics()).isEmpty();
  }

  @Test
  void a_feed_of_nothing_is_told() {
    only(Programs.zeroed("F0 G1 X1"), ProgramCode.FEED_ZERO, Severity.WARNING, 2);
    assertThat(Programs.zeroed("F0 G1 X1").move(0).feedMmPerMin()).hasValue(0);
    only(Programs.zeroed("G93 F0 G1 X1"), ProgramCode.FEED_ZERO, Severity.WARNING, 2);
    assertThat(Programs.zeroed("G93 F0 G1 X1").move(0).seconds()).isEmpty();
    assertThat(Programs.zeroed("F0").summary().diagnostics()).isEmpty();
  }

  @Test
  void a_move_before_the_unit_is_told_once() {
    Programs.Run run = Programs.run(Programs.UNKNOWN, "G90", "G0 X1", "X2");
    only(run, ProgramCode.UNITS_NEVER_SET, Severity.WARNING, 2);
    assertThat(run.only().message()).contains("millimetres");
    assertThat(Programs.run(Programs.UNKNOWN, "G90 G20 G0 X1").summary().diagnostics()).isEmpty();
  }

  @Test
  void a_move_before_the_distance_mode_is_noted_once() {
    Programs.Run run = Programs.run(Programs.UNKNOWN, "G21", "G0 X1", "X2");
    only(run, ProgramCode.DISTANCE_NEVER_SET, Severity.NOTE, 2);
  }

  @Test
  void a_second_unit_is_told() {
    Programs.Run run = Programs.run(Programs.ZEROED, "G21 G90", "G21", "G20", "G20", "G21");
    assertThat(run.codes()).containsExactly(ProgramCode.UNITS_CHANGED, ProgramCode.UNITS_CHANGED);
    assertThat(run.summary().diagnostics().get(0).where().line()).isEqualTo(3);
    assertThat(run.summary().unitWritten()).isTrue();
  }

  @Test
  void a_tool_change_without_a_tool_is_told() {
    only(Programs.zeroed("M6"), ProgramCode.NO_TOOL_SELECTED, Severity.WARNING, 2);
    assertThat(Programs.zeroed("T0 M6").summary().diagnostics()).isEmpty();
  }

  @Test
  void a_feed_move_with_a_tool_chosen_but_not_loaded_is_told_once() {
    only(
        Programs.zeroed("F60 T2", "G0 X1", "G1 X2", "X3"),
        ProgramCode.TOOL_NOT_LOADED,
        Severity.WARNING,
        4);
    assertThat(Programs.zeroed("F60 T2 M6", "T3", "G1 X2", "M6").summary().diagnostics()).isEmpty();
    assertThat(Programs.zeroed("F60 T0", "G1 X2").summary().diagnostics()).isEmpty();
  }

  @Test
  void a_spindle_without_a_speed_is_told() {
    only(Programs.zeroed("M3"), ProgramCode.SPEED_ABSENT, Severity.WARNING, 2);
    only(Programs.zeroed("M4 S0"), ProgramCode.SPEED_ABSENT, Severity.WARNING, 2);
    assertThat(Programs.zeroed("M4 S1").summary().diagnostics()).isEmpty();
    assertThat(Programs.zeroed("S0 M5").summary().diagnostics()).isEmpty();
  }

  @Test
  void boring_cycles_with_a_still_spindle_are_told() {
    only(
        Programs.zeroed("F60 G87 X1 Z-1 R1 I1 J0 K0"),
        ProgramCode.CYCLE_SPINDLE,
        Severity.WARNING,
        2);
    only(Programs.zeroed("F60 G88 X1 Z-1 R1 P0"), ProgramCode.CYCLE_SPINDLE, Severity.WARNING, 2);
  }

  @ParameterizedTest
  @CsvSource({
    "F1000000001, OUT_OF_RANGE",
    "S1000000001, OUT_OF_RANGE",
    "G4 P1000000001, OUT_OF_RANGE",
    "G0 X10000000.1, OUT_OF_RANGE",
    "G92 X10000000.1, OUT_OF_RANGE",
    "G10 L2 P1 X-10000000.1, OUT_OF_RANGE",
    "G53 G0 Y-10000001, OUT_OF_RANGE",
    "F1 G81 X1 R10000001 Z0, OUT_OF_RANGE",
    "F1 G81 X10000001 R1 Z0, OUT_OF_RANGE",
    "F1 G83 X1 Z-1 R1 Q10000001, OUT_OF_RANGE",
    "G10 L3 P1 X0, SYSTEM_NUMBER",
    "G10 L2 P0 X0, SYSTEM_NUMBER",
    "G10 L2 X0, WORD_MISSING",
    "G53 G0, NO_AXIS_WORD",
    "G53, NO_AXIS_WORD",
    "G92.1 G92.2, GROUP_G",
    "M7 M8, GROUP_M",
    "M2 M30, GROUP_M",
    "G54 G55, GROUP_G",
    "G4 P1 G53 X0 G0, GROUP_G",
    "G38.2 X5 A5 F6, PROBE_ROTARY",
    "F60 G81 X1 A5 Z-1 R1, CYCLE_ROTARY",
    "G1001, UNKNOWN_G",
    "G-1, UNKNOWN_G",
    "M-1, UNKNOWN_M",
    "M100, UNKNOWN_M",
    "T-1, SLOT",
    "T3000000000, SLOT",
    "G12.34, NOT_WHOLE",
    "G0 X1 R2, WORD_UNUSED",
    "F9 G83 X1 Z-1 R1, WORD_MISSING",
    "F9 G87 X1 Z-1 R1 I1 J1, WORD_MISSING",
    "F9 G81 X1 Z-1 R1 P1, WORD_UNUSED",
    "F9 G81 X1 Z-1 R1 Q1, WORD_UNUSED",
    "F9 G89 X1 Z-1 R1 P-0.1, DWELL_NEGATIVE",
    "F9 G81 X1 Z-1 R1 L-1, CYCLE_REPEATS",
    "#5221=10000001 G54, OUT_OF_RANGE",
    "#5211=10000001 G92.3, OUT_OF_RANGE",
    "#5161=-10000001 G28, OUT_OF_RANGE",
    "#5181=10000001 G30, OUT_OF_RANGE"
  })
  void lines_that_mean_nothing_are_refused(String line, ProgramCode code) {
    Programs.Run run = Programs.zeroed(line);
    assertThat(run.errors()).as(line).hasSize(1);
    assertThat(run.errors().get(0).code()).as(line).isEqualTo(code);
  }

  /** The last sensible values are taken: limits are limits and not one step early. */
  @ParameterizedTest
  @CsvSource({
    "F1000000000",
    "S1000000000",
    "G4 P1000000000",
    "G0 X10000000",
    "G92 X-10000000",
    "G53 G0 Y-10000000",
    "G10 L2 P9 X1",
    "F1 G81 X1 R0 Z0",
    "G38.2 X0.254 F1",
    "G4 P0",
    "F0",
    "S0",
    "T0",
    "G43 H0",
    "M2",
    "M60",
    "M48 M5 M9 M1",
    "#5221=10000000 G54",
    "G53 G0 X1",
    "F1 G53 X1"
  })
  void the_last_sensible_values_are_taken(String line) {
    assertThat(Programs.zeroed(line).errors()).as(line).isEmpty();
  }

  /** Radius compensation (3.5.10) is refused, and what is wrong about it is still found. */
  @Test
  void radius_compensation_is_refused_but_kept_track_of() {
    Programs.Run run = Programs.zeroed("G41 D1", "F60 G1 X10", "G40", "G42", "G40 G1 X0");
    assertThat(run.codes())
        .containsExactly(
            ProgramCode.COMPENSATION_NOT_FOLLOWED, ProgramCode.COMPENSATION_NOT_FOLLOWED);
    assertThat(run.moves()).hasSize(2);
    assertThat(Programs.zeroed("G41", "G17 G21").errors()).hasSize(1);
    for (String line :
        new String[] {"G20", "G19", "G92.1", "G92.3", "G30", "G59.3", "F9 G81 X1 Z-1 R1"}) {
      assertThat(Programs.zeroed("G41", line).errors())
          .as(line)
          .extracting(d -> (Object) d.code())
          .containsExactly(ProgramCode.COMPENSATION_NOT_FOLLOWED, ProgramCode.COMPENSATION_ON);
    }
  }

  @Test
  void every_code_has_an_id_of_its_own_and_a_title() {
    assertThat(ProgramCode.values()).extracting(ProgramCode::id).doesNotHaveDuplicates();
    for (ProgramCode code : ProgramCode.values()) {
      assertThat(code.id()).matches("RS-[0-9]{3}");
      assertThat(code.title()).isNotBlank();
    }
  }
}
