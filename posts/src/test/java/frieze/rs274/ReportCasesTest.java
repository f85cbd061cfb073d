package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.diagnostic.Diagnostic;
import frieze.motion.Box;
import frieze.motion.Executed;
import frieze.motion.Motion;
import frieze.motion.Position;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** All cases derived from NISTIR 6556; the section stands beside each in its file. */
class ReportCasesTest {
  /** The cases give six decimals. */
  private static final double DIGITS = 1e-6;

  /** The code that each error case must end in. */
  private static final String EXPECTED =
      """
      P3 BAD_CHARACTER
      E1 COMMENT_NESTED
      E2 COMMENT_OPEN
      E3 BAD_CHARACTER
      E4 NOT_A_WORD
      E5 NOT_A_WORD
      E6 LINE_NUMBER
      E7 LINE_NUMBER
      E8 LINE_NUMBER
      E9 LINE_NUMBER
      E10 BAD_CHARACTER
      E11 NUMBER
      E12 NUMBER
      E13 NUMBER
      E14 SIGN
      E15 SIGN
      E16 SIGN
      E17 COMMENT_IN_WORD
      E18 NOT_WHOLE
      E19 NOT_WHOLE
      E20 PARAMETER_NUMBER
      E21 PARAMETER_NUMBER
      E22 NOT_WHOLE
      E23 PARAMETER_NUMBER
      E24 EXPRESSION
      E25 EXPRESSION
      E26 EXPRESSION
      E27 EXPRESSION
      E28 ARITHMETIC
      E29 ARITHMETIC
      E30 ARITHMETIC
      E31 ARITHMETIC
      E32 GROUP_G
      E33 GROUP_G
      E34 GROUP_G
      E35 WORD_REPEATED
      E36 GROUP_M
      E37 TOO_MANY_M
      E38 AXIS_WORDS_CLAIMED_TWICE
      E39 AXIS_WORDS_CLAIMED_TWICE
      E40 NO_AXIS_WORD
      E41 NO_AXIS_WORD
      E42 ARC_NO_END
      E43 ARC_END_IS_START
      E44 ARC_RADIUS
      E45 ARC_R_AND_CENTRE
      E46 ARC_NO_END
      E47 ARC_NO_CENTRE
      E48 ARC_NO_END
      E49 ARC_NO_END
      E50 ARC_NO_CENTRE
      E51 ARC_RADII_DIFFER
      E52 ARC_RADII_DIFFER
      E53 DWELL_NEGATIVE
      E54 WORD_MISSING
      E55 SYSTEM_NUMBER
      E56 SYSTEM_NUMBER
      E57 WORD_MISSING
      E58 PROBE_TOO_NEAR
      E59 PROBE_TOO_NEAR
      E60 PROBE_INVERSE_TIME
      E61 NO_AXIS_WORD
      E62 COMPENSATION_PLANE
      E63 COMPENSATION_AGAIN
      E64 SLOT
      E65 SLOT
      E66 WORD_UNUSED
      E67 SLOT
      E68 SLOT
      E69 WORD_MISSING
      E70 MACHINE_MOVE_MODE
      E71 MACHINE_MOVE_MODE
      E72 AXIS_WORDS_WITHOUT_MOTION
      E73 AXIS_WORDS_WITHOUT_MOTION
      E74 CYCLE_NO_DEPTH
      E75 CYCLE_NO_AXIS
      E76 WORD_MISSING
      E77 CYCLE_RETRACT_BELOW_DEPTH
      E78 CYCLE_RETRACT_BELOW_DEPTH
      E79 CYCLE_RETRACT_BELOW_DEPTH
      E80 CYCLE_REPEATS
      E81 CYCLE_REPEATS
      E82 DWELL_NEGATIVE
      E83 WORD_MISSING
      E84 CYCLE_NO_DEPTH
      E85 CYCLE_INVERSE_TIME
      E86 CYCLE_PECK
      E87 CYCLE_PECK
      E88 CYCLE_SPINDLE
      E89 CYCLE_SPINDLE
      E90 NO_AXIS_WORD
      E91 FEED_ABSENT
      E92 FEED_ABSENT
      E93 SPEED_NEGATIVE
      E94 SLOT
      E95 FEED_NEGATIVE
      E96 UNKNOWN_G
      E97 UNKNOWN_M
      E98 COMPENSATION_ON
      E99 COMPENSATION_ON
      E100 COMPENSATION_ON
      E101 COMPENSATION_ON
      E102 COMPENSATION_ON
      E103 WORD_UNUSED
      E104 WORD_UNUSED
      E105 WORD_UNUSED
      E106 ARC_NO_CENTRE
      E107 COMPENSATION_ON
      E108 COMPENSATION_ON
      E109 COMPENSATION_ON
      """;

  static Stream<String> errorCases() {
    return ReportCases.all().stream().filter(ReportCasesTest::isError).map(ReportCasesTest::id);
  }

  static Stream<String> goodCases() {
    return ReportCases.all().stream().filter(c -> !isError(c)).map(ReportCasesTest::id);
  }

  private static boolean isError(Map<String, Object> c) {
    return Boolean.TRUE.equals(c.get("error"));
  }

  private static String id(Map<String, Object> c) {
    return (String) c.get("id");
  }

  private static Map<String, Object> byId(String id) {
    return ReportCases.all().stream().filter(c -> id(c).equals(id)).findFirst().orElseThrow();
  }

  @Test
  void there_are_195_cases_and_110_of_them_are_errors() {
    assertThat(ReportCases.all()).hasSize(195);
    assertThat(errorCases()).hasSize(110);
    assertThat(expected().keySet()).containsExactlyInAnyOrderElementsOf(errorCases().toList());
  }

  private static Map<String, ProgramCode> expected() {
    Map<String, ProgramCode> codes = new HashMap<>();
    EXPECTED
        .lines()
        .map(line -> line.split(" "))
        .forEach(pair -> codes.put(pair[0], ProgramCode.valueOf(pair[1])));
    return codes;
  }

  @ParameterizedTest
  @MethodSource("errorCases")
  void an_error_case_ends_in_the_error_of_its_rule(String id) {
    Map<String, Object> c = byId(id);
    List<String> code = code(c);
    Programs.Run run = run(c);
    List<Diagnostic> errors =
        run.errors().stream()
            .filter(d -> d.code() != ProgramCode.COMPENSATION_NOT_FOLLOWED)
            .toList();
    assertThat(errors).as(id + " " + code).hasSize(1);
    assertThat(errors.get(0).code()).as(id + " " + code).isEqualTo(expected().get(id));
    assertThat(errors.get(0).where().line()).as(id).isEqualTo(code.size());
    assertThat(errors.get(0).where().column()).as(id).isPositive();
  }

  @ParameterizedTest
  @MethodSource("goodCases")
  void a_good_case_does_what_the_report_says(String id) {
    Map<String, Object> c = byId(id);
    Programs.Run run = run(c);
    assertThat(run.errors()).as(id).isEmpty();
    double unit = unit(c).mm();
    checkPosition(id + " end", run.summary().position(), numbers(c.get("end")), unit);
    checkPosition(id + " machine", run.summary().machine(), numbers(c.get("machine")), unit);
    if (c.containsKey("param")) {
      object(c.get("param"))
          .forEach(
              (number, value) ->
                  assertThat(run.parameters().get(Integer.parseInt(number)))
                      .as(id + " #" + number)
                      .isEqualTo((double) value, within(DIGITS)));
    }
    if (c.containsKey("moves")) {
      checkMoves(id, run, list(c.get("moves")), unit);
    }
    if (c.containsKey("centre")) {
      checkArc(id, c, run.moves().get(run.moves().size() - 1).path(), unit);
    }
  }

  private static Programs.Run run(Map<String, Object> c) {
    double[] start = numbers(c.getOrDefault("start", List.of(0.0, 0.0, 0.0)));
    double unit = unit(c).mm();
    ReadingRules rules =
        ReadingRules.REPORT
            .but()
            .endRequired(false)
            .start(
                Start.zeroed(new Position(start[0] * unit, start[1] * unit, start[2] * unit))
                    .withToolLengthsMm(Map.of(1, 2.0, 2, 1.0)))
            .build();
    return Programs.run(rules, code(c).toArray(new String[0]));
  }

  private static LengthUnit unit(Map<String, Object> c) {
    for (String line : code(c)) {
      int inch = line.indexOf("G20");
      int mm = line.indexOf("G21");
      if (mm >= 0 && (inch < 0 || mm < inch)) {
        return LengthUnit.MILLIMETRE;
      }
      if (inch >= 0) {
        return LengthUnit.INCH;
      }
    }
    return LengthUnit.MILLIMETRE;
  }

  private static List<String> code(Map<String, Object> c) {
    return list(c.get("code")).stream().map(line -> (String) line).toList();
  }

  private static void checkPosition(
      String what, Executed.MachinePosition found, double[] expected, double unit) {
    for (int axis = 0; axis < expected.length; axis++) {
      // U1 starts in millimetres and tells its end in inches: the program's last unit.
      double scale = what.startsWith("U1") ? LengthUnit.INCH.mm() : unit;
      assertThat(found.get(axis).orElseThrow() / scale)
          .as(what + " axis " + axis)
          .isEqualTo(expected[axis], within(DIGITS));
    }
  }

  /** Leaves out the moves of no length, as the cases ask for. */
  private static List<Object> withLength(List<Object> moves) {
    List<Object> kept = new ArrayList<>();
    List<Object> place = List.of();
    for (Object move : moves) {
      List<Object> there = list(move).size() == 4 ? list(move).subList(1, 4) : List.of();
      if (there.isEmpty() || !there.equals(place)) {
        kept.add(move);
      }
      place = there.isEmpty() ? place : there;
    }
    return kept;
  }

  private static void checkMoves(String id, Programs.Run run, List<Object> all, double unit) {
    List<Object> expected = withLength(all);
    List<List<Object>> found = new ArrayList<>();
    for (Executed event : run.events()) {
      describe(event, unit).ifPresent(found::add);
    }
    assertThat(found).as(id).hasSameSizeAs(expected);
    for (int i = 0; i < found.size(); i++) {
      List<Object> want = list(expected.get(i));
      assertThat(found.get(i).get(0)).as(id + " move " + i + " of " + found).isEqualTo(want.get(0));
      for (int k = 1; k < want.size(); k++) {
        if (want.get(k) instanceof Double number) {
          assertThat((double) found.get(i).get(k))
              .as(id + " move " + i + " of " + found)
              .isEqualTo(number, within(DIGITS));
        } else {
          assertThat(found.get(i).get(k)).as(id + " move " + i).isEqualTo(want.get(k));
        }
      }
    }
  }

  /** Writes an event as the cases do; starts of the spindle before the first move are left out. */
  private static java.util.Optional<List<Object>> describe(Executed event, double unit) {
    if (event instanceof Executed.Move move) {
      Position to = move.path().to();
      String kind = move.kind() == Executed.Kind.RAPID ? "R" : "F";
      return move.path().lengthMm() == 0
          ? java.util.Optional.empty()
          : java.util.Optional.of(List.of(kind, to.x() / unit, to.y() / unit, to.z() / unit));
    }
    if (event instanceof Executed.Dwell dwell) {
      return java.util.Optional.of(List.of("D", dwell.seconds()));
    }
    if (event instanceof Executed.Stop) {
      return java.util.Optional.of(List.of("P0"));
    }
    if (event instanceof Executed.SpindleChange change && change.span().line() > 1) {
      String how =
          switch (change.rotation()) {
            case STOPPED -> "stop";
            case CLOCKWISE -> "cw";
            case COUNTER_CLOCKWISE -> "ccw";
          };
      return java.util.Optional.of(List.of("S", how));
    }
    if (event instanceof Executed.Other other) {
      return switch (other.what()) {
        case "spindle oriented" -> java.util.Optional.of(List.of("S", "orient"));
        case "spindle synchronised" -> java.util.Optional.of(List.of("Y", "on"));
        case "spindle free" -> java.util.Optional.of(List.of("Y", "off"));
        default -> java.util.Optional.empty();
      };
    }
    return java.util.Optional.empty();
  }

  private static void checkArc(String id, Map<String, Object> c, Motion path, double unit) {
    Motion.Turn turn = (Motion.Turn) path;
    double[] centre = numbers(c.get("centre"));
    assertThat(turn.centreU() / unit).as(id + " centre").isEqualTo(centre[0], within(DIGITS));
    assertThat(turn.centreV() / unit).as(id + " centre").isEqualTo(centre[1], within(DIGITS));
    assertThat(turn.radiusMm() / unit)
        .as(id + " radius")
        .isEqualTo((double) c.get("radius"), within(DIGITS));
    assertThat(Math.toDegrees(turn.sweepRad()))
        .as(id + " sweep")
        .isEqualTo((double) c.get("sweep"), within(DIGITS));
    assertThat(turn.lengthMm() / unit)
        .as(id + " length")
        .isEqualTo((double) c.get("length"), within(DIGITS));
    List<Object> corners = list(c.get("box"));
    Box box = turn.box();
    for (int axis = 0; axis < 3; axis++) {
      assertThat(box.min(axis) / unit)
          .as(id + " box")
          .isEqualTo(numbers(corners.get(0))[axis], within(DIGITS));
      assertThat(box.max(axis) / unit)
          .as(id + " box")
          .isEqualTo(numbers(corners.get(1))[axis], within(DIGITS));
    }
  }

  private static double[] numbers(Object list) {
    return list == null
        ? new double[0]
        : list(list).stream().mapToDouble(number -> (double) number).toArray();
  }

  @SuppressWarnings("unchecked") // The shape of the file.
  private static List<Object> list(Object value) {
    return (List<Object>) value;
  }

  @SuppressWarnings("unchecked") // The shape of the file.
  private static Map<String, Object> object(Object value) {
    return (Map<String, Object>) value;
  }
}
