package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Canned cycles, beside the cases of the report: NISTIR 6556, 3.5.16, C.3 and table 10. */
class CyclesTest {
  /** The moves as letter and target. */
  private static List<String> moves(Programs.Run run) {
    assertThat(run.errors()).isEmpty();
    return run.moves().stream()
        .map(
            m ->
                (m.kind() == Kind.RAPID ? "R " : "F ")
                    + m.path().to().x()
                    + " "
                    + m.path().to().y()
                    + " "
                    + m.path().to().z())
        .toList();
  }

  @Test
  void r_and_z_stay_in_force_while_the_cycle_does() {
    Programs.Run run =
        Programs.zeroed("F60 G0 Z5", "G99 G81 X1 Z-1 R2", "X3", "G81 X4", "R3 Y1", "G80", "G0 Z9");
    assertThat(moves(run))
        .containsExactly(
            "R 0.0 0.0 5.0",
            "R 1.0 0.0 5.0",
            "R 1.0 0.0 2.0",
            "F 1.0 0.0 -1.0",
            "R 1.0 0.0 2.0",
            "R 3.0 0.0 2.0",
            "F 3.0 0.0 -1.0",
            "R 3.0 0.0 2.0",
            "R 4.0 0.0 2.0",
            "F 4.0 0.0 -1.0",
            "R 4.0 0.0 2.0",
            "R 4.0 0.0 3.0",
            "R 4.0 1.0 3.0",
            "F 4.0 1.0 -1.0",
            "R 4.0 1.0 3.0",
            "R 4.0 1.0 9.0");
  }

  @Test
  void another_motion_in_between_ends_what_stayed_in_force() {
    assertThat(Programs.zeroed("F60 G81 X1 Z-1 R2", "G0 X2", "G81 X3 R2").codes())
        .containsExactly(ProgramCode.CYCLE_NO_DEPTH);
    assertThat(Programs.zeroed("F60 G81 X1 Z-1 R2", "G80", "G81 X3 Z-1").codes())
        .containsExactly(ProgramCode.WORD_MISSING);
  }

  /** C.3 n0070 and n0080 use G82 without P. */
  @Test
  void the_dwell_and_the_peck_stay_in_force_too() {
    Programs.Run run = Programs.zeroed("F60 G0 Z5", "G82 X1 Z-1 R2 P0.5", "X2");
    assertThat(run.errors()).isEmpty();
    assertThat(run.all(Executed.Dwell.class)).hasSize(2);
    assertThat(Programs.zeroed("F60 G0 Z5", "G83 X1 Z-1 R2 Q1", "X2").errors()).isEmpty();
  }

  @Test
  void a_line_without_axis_words_does_not_repeat_the_cycle() {
    Programs.Run run = Programs.zeroed("F60 G0 Z5", "G81 X1 Z-1 R2", "S900", "F50");
    assertThat(run.moves()).hasSize(5);
    assertThat(run.errors()).isEmpty();
    assertThat(Programs.zeroed("F60 G0 Z5", "G81 X1 Z-1 R2", "R3").codes())
        .containsExactly(ProgramCode.WORD_UNUSED);
  }

  @Test
  void exact_path_is_in_force_while_a_cycle_runs() {
    assertThat(Programs.zeroed("F60 G64 G0 Z5", "G81 X1 Z-1 R2").others())
        .containsExactly("path continuous", "path exact", "path continuous");
    assertThat(Programs.zeroed("F60 G61.1 G0 Z5", "G81 X1 Z-1 R2").others())
        .containsExactly("path exact stop", "path exact", "path exact stop");
    assertThat(Programs.zeroed("F60 G61 G0 Z5", "G81 X1 Z-1 R2").others())
        .containsExactly("path exact");
    assertThat(Programs.zeroed("F60 G0 Z5", "G81 X1 Z-1 R2").others()).isEmpty();
  }

  @Test
  void an_unknown_height_is_told_and_taken_to_be_above_r() {
    Programs.Run run = Programs.run(Programs.UNKNOWN, "G21 G90 F60", "G98 G81 X1 Y2 Z-1 R2", "X3");
    assertThat(run.codes()).containsExactly(ProgramCode.CYCLE_HEIGHT_UNKNOWN);
    assertThat(run.moves()).hasSize(7);
    assertThat(run.move(1).path().to().z()).isEqualTo(2);
    assertThat(run.move(1).fromKnown().z()).isFalse();
    assertThat(run.move(3).path().to().z()).isEqualTo(2);
    // Increments need no known height.
    Programs.Run steps = Programs.run(Programs.UNKNOWN, "G21 G91 F60", "G81 X1 Y2 Z-3 R2");
    assertThat(steps.summary().diagnostics()).isEmpty();
    assertThat(steps.move(0).path().to().z()).isEqualTo(2);
  }

  @Test
  void inches_scale_every_length_of_a_cycle() {
    Programs.Run run = Programs.run(Programs.ZEROED, "G20 G90 F10 G0 Z1", "G83 G99 X1 Z-1 R0.5 Q1");
    assertThat(run.errors()).isEmpty();
    List<Executed.Move> feeds = run.moves().stream().filter(m -> m.kind() == Kind.FEED).toList();
    assertThat(feeds).hasSize(2);
    assertThat(feeds.get(0).path().to().z()).isEqualTo(-0.5 * 25.4, within(1e-12));
    assertThat(feeds.get(1).path().to().z()).isEqualTo(-25.4, within(1e-12));
    // The back-off is a length of the machine, not of the program.
    assertThat(feeds.get(1).path().from().z()).isEqualTo(-0.5 * 25.4 + 0.1, within(1e-12));
  }

  @Test
  void the_back_off_of_a_peck_is_a_setting() {
    ReadingRules rules = Programs.ZEROED.but().peckBackOffMm(0.5).build();
    Programs.Run run = Programs.run(rules, "G21 G90 F10 G0 Z3", "G83 G99 X1 Z-2 R2 Q2");
    assertThat(moves(run))
        .containsExactly(
            "R 0.0 0.0 3.0",
            "R 1.0 0.0 3.0",
            "R 1.0 0.0 2.0",
            "F 1.0 0.0 0.0",
            "R 1.0 0.0 2.0",
            "R 1.0 0.0 0.5",
            "F 1.0 0.0 -2.0",
            "R 1.0 0.0 2.0");
    // It never goes above the level that it came from.
    ReadingRules large = Programs.ZEROED.but().peckBackOffMm(50).build();
    assertThat(Programs.run(large, "G21 G90 F10 G0 Z3", "G83 G99 X1 Z-2 R2 Q2").moves())
        .allSatisfy(m -> assertThat(m.path().to().z()).isLessThanOrEqualTo(3));
  }

  @Test
  void a_million_strokes_are_done_and_more_are_refused() {
    assertThat(Programs.zeroed("F60 G81 X1 Z-1 R1 L1000001").only().code())
        .isEqualTo(ProgramCode.CYCLE_ENDLESS);
    assertThat(Programs.zeroed("F60 G83 X1 Z-1 R1 Q0.000001").only().code())
        .isEqualTo(ProgramCode.CYCLE_ENDLESS);
    assertThat(Programs.zeroed("F60 G83 X1 Z-1 R1 Q0.001 L501").only().code())
        .isEqualTo(ProgramCode.CYCLE_ENDLESS);
    assertThat(Programs.zeroed("F60 G81 X1 Z-1 R1 L20000").moves()).hasSize(2 + 2 * 20000);
  }

  @Test
  void repeats_that_run_off_the_world_are_refused() {
    assertThat(Programs.zeroed("F60 G91 G81 X1000 Z-1 R1 L20000").only().code())
        .isEqualTo(ProgramCode.OUT_OF_RANGE);
  }

  @Test
  void a_level_of_r_at_the_depth_makes_no_stroke() {
    assertThat(moves(Programs.zeroed("F60 G0 Z5", "G99 G81 X1 Z2 R2")))
        .containsExactly("R 0.0 0.0 5.0", "R 1.0 0.0 5.0", "R 1.0 0.0 2.0");
    assertThat(Programs.zeroed("F60 G0 Z5", "G83 X1 Z2 R2 Q1").errors()).isEmpty();
  }

  @Test
  void the_spindle_turns_again_as_before_a_bore() {
    Programs.Run run = Programs.zeroed("S9 M4 F60", "G86 X1 Z-1 R1 P0");
    assertThat(run.all(Executed.SpindleChange.class))
        .extracting(Executed.SpindleChange::rotation)
        .containsExactly(
            Executed.Rotation.COUNTER_CLOCKWISE,
            Executed.Rotation.STOPPED,
            Executed.Rotation.COUNTER_CLOCKWISE);
    assertThat(run.move(run.moves().size() - 1).state().rotation())
        .isEqualTo(Executed.Rotation.STOPPED);
  }

  @Test
  void a_cycle_feeds_at_the_feed_and_travels_without() {
    Programs.Run run = Programs.zeroed("F60 G0 Z5", "G81 X1 Z-1 R2");
    assertThat(run.moves())
        .allSatisfy(m -> assertThat(m.feedMmPerMin().isPresent()).isEqualTo(m.kind() == Kind.FEED));
  }
}
