package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.motion.Executed;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Executed.MachinePosition;
import frieze.motion.Position;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** What is known of a position, in the program's frame and in the machine's. */
class UnknownPlacesTest {
  private static Programs.Run unknown(String... lines) {
    return Programs.run(Programs.UNKNOWN, lines);
  }

  private static ReadingRules at(Start start) {
    return Programs.UNKNOWN.but().start(start).build();
  }

  @Test
  void an_axis_is_known_from_its_first_absolute_word_on() {
    Programs.Run run = unknown("G21 G90", "G0 X5", "G0 Y2 Z3", "G0 X6");
    assertThat(run.move(0).fromKnown()).isEqualTo(KnownAxes.NONE);
    assertThat(run.move(0).toKnown()).isEqualTo(new KnownAxes(true, false, false));
    assertThat(run.move(1).fromKnown()).isEqualTo(new KnownAxes(true, false, false));
    assertThat(run.move(1).toKnown()).isEqualTo(KnownAxes.ALL);
    assertThat(run.move(2).fromKnown()).isEqualTo(KnownAxes.ALL);
    assertThat(run.move(0).path().to()).isEqualTo(new Position(5, 0, 0));
    assertThat(run.move(2).path().to()).isEqualTo(new Position(6, 2, 3));
    assertThat(run.move(2).machineTo()).isEqualTo(MachinePosition.UNKNOWN);
    assertThat(run.summary().machine()).isEqualTo(MachinePosition.UNKNOWN);
  }

  @Test
  void increments_from_an_unknown_place_keep_their_size() {
    Programs.Run run = unknown("G21 G91 F60", "G0 X5", "G1 X-2 Y1", "G3 X2 Y2 I2");
    assertThat(run.errors()).isEmpty();
    assertThat(run.move(1).toKnown()).isEqualTo(KnownAxes.NONE);
    assertThat(run.move(1).path().from()).isEqualTo(new Position(5, 0, 0));
    assertThat(run.move(1).path().to()).isEqualTo(new Position(3, 1, 0));
    assertThat(run.move(2).path().lengthMm()).isEqualTo(3 * Math.PI, within(1e-9));
  }

  @Test
  void a_known_work_offset_makes_the_machine_position_known() {
    Start start =
        Start.UNKNOWN.withWorkOffsets(
            Map.of(
                1,
                new MachinePosition(
                    OptionalDouble.of(100), OptionalDouble.empty(), OptionalDouble.of(-50))));
    Programs.Run run = Programs.run(at(start), "G21 G90", "G0 X5 Y6 Z7");
    assertThat(run.move(0).machineTo())
        .isEqualTo(
            new MachinePosition(
                OptionalDouble.of(105), OptionalDouble.empty(), OptionalDouble.of(-43)));
    assertThat(run.move(0).path().to()).isEqualTo(new Position(5, 6, 7));
  }

  @Test
  void a_machine_move_loses_the_program_position_while_the_offset_is_unknown() {
    Programs.Run run = unknown("G21 G90", "G0 X1 Y1 Z5", "G53 G0 Z0", "G0 X9", "G0 Z2");
    assertThat(run.errors()).isEmpty();
    Executed.Move home = run.move(1);
    assertThat(home.toKnown()).isEqualTo(new KnownAxes(true, true, false));
    assertThat(home.machineTo().z()).hasValue(0);
    assertThat(home.machineTo().x()).isEmpty();
    // Drawn as if it had not moved along Z; and X goes on from there.
    assertThat(home.path().to()).isEqualTo(new Position(1, 1, 5));
    assertThat(run.move(2).machineTo().z()).hasValue(0);
    assertThat(run.move(3).fromKnown().z()).isFalse();
    assertThat(run.move(3).toKnown()).isEqualTo(KnownAxes.ALL);
    assertThat(run.move(3).machineTo().z()).isEmpty();
    assertThat(run.move(3).path().to()).isEqualTo(new Position(9, 1, 2));
  }

  @Test
  void a_machine_move_is_drawn_where_the_offset_is_known() {
    Start start = Start.UNKNOWN.withWorkOffsets(Map.of(1, Start.known(10, 20, -30)));
    Programs.Run run = Programs.run(at(start), "G21 G90", "G53 G0 Z0", "G53 G1 F60 X0 Y0");
    assertThat(run.move(0).path().to()).isEqualTo(new Position(0, 0, 30));
    assertThat(run.move(1).path().to()).isEqualTo(new Position(-10, -20, 30));
    assertThat(run.move(1).toKnown()).isEqualTo(KnownAxes.ALL);
  }

  @Test
  void the_tie_between_both_frames_is_found_out_when_the_program_tells_it() {
    // At machine Z0 the program says that this is Z40: the origin lies at machine Z-40.
    Programs.Run run = unknown("G21 G90", "G53 G0 Z0", "G92 Z40", "G0 Z10");
    assertThat(run.move(1).machineTo().z()).hasValue(-30);
    assertThat(run.move(1).toKnown().z()).isTrue();
    assertThat(run.move(1).path().to().z()).isEqualTo(10);
  }

  @Test
  void a_program_that_sets_its_own_origin_first_is_drawn_from_it() {
    Programs.Run run = unknown("G21 G90", "G92 X0 Y0 Z0", "G0 X5 Z2", "G92 X0", "G0 X1");
    assertThat(run.move(0).toKnown()).isEqualTo(KnownAxes.ALL);
    assertThat(run.move(0).path().to()).isEqualTo(new Position(5, 0, 2));
    // The second one does not move the frame: program X1 is 6 in it.
    assertThat(run.move(1).path().to()).isEqualTo(new Position(6, 0, 2));
    assertThat(run.summary().position().x()).hasValue(1);
    assertThat(run.summary().g92()).isTrue();
    Programs.Run second = unknown("G21 G90 G55", "G0 X5", "G54", "G0 X5");
    assertThat(second.move(0).toKnown().x()).isTrue();
    assertThat(second.move(1).toKnown().x()).isFalse();
  }

  @Test
  void g10_tells_where_an_unknown_origin_lies() {
    Programs.Run run = unknown("G21 G90", "G10 L2 P1 X100 Y50", "G0 X5 Y5 Z5");
    assertThat(run.move(0).machineTo())
        .isEqualTo(
            new MachinePosition(
                OptionalDouble.of(105), OptionalDouble.of(55), OptionalDouble.empty()));
    assertThat(run.move(0).path().to()).isEqualTo(new Position(5, 5, 5));
    // Another system than the one in force: no change now.
    Programs.Run other = unknown("G21 G90", "G10 L2 P2 X100", "G0 X5", "G55 G0 X5");
    assertThat(other.move(0).machineTo().x()).isEmpty();
    assertThat(other.move(1).machineTo().x()).hasValue(105);
  }

  @Test
  void going_home_is_known_only_if_home_is() {
    Programs.Run run = unknown("G21 G90", "G0 X1 Y2 Z3", "G91 G28 Z0", "G90 G0 X5");
    assertThat(run.codes()).containsExactly(ProgramCode.HOME_UNKNOWN);
    assertThat(run.moves()).hasSize(4);
    assertThat(run.move(1).toKnown()).isEqualTo(KnownAxes.ALL);
    assertThat(run.move(2).toKnown()).isEqualTo(KnownAxes.NONE);
    assertThat(run.move(2).path().lengthMm()).isZero();
    assertThat(run.move(3).toKnown()).isEqualTo(new KnownAxes(true, false, false));
    Start homes =
        Start.UNKNOWN
            .withWorkOffsets(Map.of(1, Start.known(10, 10, -50)))
            .withHomes(Start.known(0, 0, -1), Start.known(300, 200, -2));
    Programs.Run known = Programs.run(at(homes), "G21 G90", "G0 X1 Y2 Z3", "G28", "G30 Z9");
    assertThat(known.summary().diagnostics()).isEmpty();
    assertThat(known.move(1).path().to()).isEqualTo(new Position(-10, -10, 49));
    assertThat(known.move(2).path().to()).isEqualTo(new Position(-10, -10, 9));
    assertThat(known.move(3).machineTo()).isEqualTo(Start.known(300, 200, -2));
  }

  @Test
  void an_unknown_tool_length_leaves_the_program_position_known() {
    Programs.Run run = unknown("G21 G90", "G0 Z50", "G43 H3", "G0 X1", "G0 Z5", "G49", "G0 X2");
    assertThat(run.errors()).isEmpty();
    assertThat(run.move(1).toKnown().z()).isFalse();
    assertThat(run.move(2).fromKnown().z()).isFalse();
    assertThat(run.move(2).toKnown().z()).isTrue();
    assertThat(run.move(2).path().to().z()).isEqualTo(5);
    assertThat(run.move(3).toKnown().z()).isFalse();
  }

  @Test
  void a_known_tool_length_lifts_the_machine() {
    Start start =
        Start.zeroed(new Position(0, 0, 0)).withToolLengthsMm(Map.of(3, 40.0)).withToolSlots(9);
    Programs.Run run =
        Programs.run(at(start), "G21 G90", "G43 H3 G0 Z5", "G53 G0 Z0", "G43 H0 G0 Z5");
    assertThat(run.move(0).machineTo().z()).hasValue(45);
    assertThat(run.move(0).path().to().z()).isEqualTo(5);
    // G53 is for the machine's own coordinate, without the length: the tip is then at -40.
    assertThat(run.move(1).machineTo().z()).hasValue(0);
    assertThat(run.move(1).path().to().z()).isEqualTo(-40);
    assertThat(run.move(2).machineTo().z()).hasValue(5);
    for (String line : new String[] {"G43 H10", "T10", "G41 D10"}) {
      assertThat(Programs.run(at(start), line).only().code()).as(line).isEqualTo(ProgramCode.SLOT);
    }
    assertThat(Programs.run(at(start), "T9").errors()).isEmpty();
  }

  @Test
  void an_arc_from_an_unknown_place_is_refused() {
    assertThat(unknown("G21 G90 F60", "G2 X1 I1").only().code())
        .isEqualTo(ProgramCode.ARC_START_UNKNOWN);
    assertThat(unknown("G21 G90 F60", "G0 X0", "G2 X1 Y0 R1").only().code())
        .isEqualTo(ProgramCode.ARC_START_UNKNOWN);
    // The height may be unknown.
    Programs.Run run = unknown("G21 G90 F60", "G0 X0 Y0", "G2 X1 I0.5 Z-1");
    assertThat(run.errors()).isEmpty();
    assertThat(run.move(1).fromKnown()).isEqualTo(new KnownAxes(true, true, false));
    assertThat(run.move(1).toKnown()).isEqualTo(KnownAxes.ALL);
  }

  @Test
  void parameters_that_only_the_machine_knows_cannot_be_used() {
    for (String number : new String[] {"5161", "5183", "5221", "5383"}) {
      assertThat(unknown("#1=#" + number).only().code())
          .as(number)
          .isEqualTo(ProgramCode.PARAMETER_UNKNOWN);
    }
    assertThat(unknown("#5221=7", "#1=#5221").parameters().get(1)).isEqualTo(7);
    assertThat(unknown("#1=#5220 #2=#5211 #3=#5399").errors()).isEmpty();
    // The G92 offset is unknown after it was set at an unknown place.
    assertThat(unknown("G21 G92 X5", "#1=#5211").only().code())
        .isEqualTo(ProgramCode.PARAMETER_UNKNOWN);
  }

  @Test
  void offsets_of_g92_can_be_taken_away_and_brought_back() {
    Programs.Run run =
        unknown(
            "G21 G90 G0 X0",
            "G92 X4",
            "G0 X5",
            "G92.2",
            "G0 X5",
            "G92.3",
            "G0 X5",
            "G92.1",
            "G92.3");
    assertThat(run.moves().stream().map(m -> m.path().to().x()))
        .containsExactly(0.0, 1.0, 5.0, 1.0);
    assertThat(run.others())
        .containsExactly(
            "offset g92",
            "offset g92 cancelled",
            "offset g92",
            "offset g92 cancelled",
            "offset g92 cancelled");
    assertThat(run.summary().g92()).isFalse();
  }

  @Test
  void a_known_start_with_an_unknown_offset_is_known_to_the_program_only() {
    Start start = Start.UNKNOWN.withPosition(new Position(1, 2, 3));
    Programs.Run run = Programs.run(at(start), "G21 G90 F60", "G2 X3 I1", "G53 G0 Z0");
    assertThat(run.errors()).isEmpty();
    assertThat(run.move(0).fromKnown()).isEqualTo(KnownAxes.ALL);
    assertThat(run.move(0).path().from()).isEqualTo(new Position(1, 2, 3));
    assertThat(run.move(0).machineTo()).isEqualTo(MachinePosition.UNKNOWN);
    assertThat(run.move(1).toKnown().z()).isFalse();
  }

  @Test
  void a_start_names_only_systems_that_exist() {
    org.assertj.core.api.Assertions.assertThatThrownBy(
            () -> Start.UNKNOWN.withWorkOffsets(Map.of(10, MachinePosition.UNKNOWN)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("10");
  }

  @Test
  void a_start_in_inches_reads_bare_numbers_as_inches() {
    Start start = Start.UNKNOWN.withUnit(LengthUnit.INCH);
    Programs.Run run = Programs.run(at(start), "G90 G0 X1");
    assertThat(run.move(0).path().to().x()).isEqualTo(25.4);
    assertThat(run.only().message()).contains("inches");
    assertThat(run.summary().unit()).isEqualTo(LengthUnit.INCH);
  }

  @Test
  void unknown_amounts_do_not_cancel_by_chance() {
    java.util.Set<Long> seen = new java.util.HashSet<>();
    for (Unknowns.Kind kind : Unknowns.Kind.values()) {
      for (int i = 0; i < 10_000; i++) {
        long name = Unknowns.of(kind, i);
        assertThat(name).isNotZero();
        assertThat(seen.add(name)).isTrue();
      }
    }
  }
}
