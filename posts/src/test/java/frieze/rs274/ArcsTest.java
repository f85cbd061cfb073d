package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.fixtures.Seeds;
import frieze.motion.Motion;
import frieze.motion.Plane;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** G2 and G3: NISTIR 6556, 3.5.3. Closed forms of the circle are the oracle. */
class ArcsTest {
  private static final long SEED = 20260103;

  private static Motion.Turn turn(Programs.Run run) {
    assertThat(run.errors()).isEmpty();
    return (Motion.Turn) run.move(run.moves().size() - 1).path();
  }

  /** Every sweep and plane, both formats, both turns: the arc is the one the words were made of. */
  @Test
  void arcs_are_the_ones_their_words_describe() {
    SplittableRandom random = Seeds.random(SEED);
    for (int i = 0; i < 400; i++) {
      Plane plane = List.of(Plane.XY, Plane.ZX, Plane.YZ).get(random.nextInt(3));
      double r = 1 + 50 * random.nextDouble();
      double start = 2 * Math.PI * random.nextDouble();
      double sweep = 0.1 + (2 * Math.PI - 0.2) * random.nextDouble();
      boolean clockwise = random.nextBoolean();
      boolean byRadius = random.nextBoolean();
      if (byRadius && Math.abs(sweep - Math.PI) < 0.3) {
        continue;
      }
      double cu = 20 * random.nextDouble() - 10;
      double cv = 20 * random.nextDouble() - 10;
      double end = clockwise ? start - sweep : start + sweep;
      String[] axes = {"X", "Y", "Z"};
      String[] offsets = {"I", "J", "K"};
      String words =
          word(axes[plane.first()], cu + r * Math.cos(end))
              + word(axes[plane.second()], cv + r * Math.sin(end))
              + word(axes[plane.normal()], 7);
      words +=
          byRadius
              ? word("R", sweep > Math.PI ? -r : r)
              : word(offsets[plane.first()], -r * Math.cos(start))
                  + word(offsets[plane.second()], -r * Math.sin(start));
      Programs.Run run =
          Programs.zeroed(
              plane == Plane.XY ? "G17" : plane == Plane.ZX ? "G18" : "G19",
              "G0"
                  + word(axes[plane.first()], cu + r * Math.cos(start))
                  + word(axes[plane.second()], cv + r * Math.sin(start)),
              "F60" + (clockwise ? "G2" : "G3") + words);
      Motion.Turn turn = turn(run);
      String what = "seed " + Seeds.seed(SEED) + " round " + i + " " + words;
      assertThat(turn.plane()).as(what).isEqualTo(plane);
      double near = byRadius ? 1e-4 : 1e-6;
      assertThat(turn.centreU()).as(what).isEqualTo(cu, within(near));
      assertThat(turn.centreV()).as(what).isEqualTo(cv, within(near));
      assertThat(turn.sweepRad()).as(what).isEqualTo(clockwise ? -sweep : sweep, within(1e-5));
      assertThat(turn.to().get(plane.normal())).as(what).isEqualTo(7);
    }
  }

  private static String word(String letter, double value) {
    return String.format(Locale.ROOT, " %s%.7f", letter, value);
  }

  @Test
  void an_end_at_the_start_is_a_full_turn_even_after_rounding() {
    // 0.1 in thrice is not 0.3 in to the last bit.
    Programs.Run run =
        Programs.run(Programs.ZEROED, "G20 G91 F9", "G0 X0.1", "X0.1", "X0.1", "G90 G2 X0.3 J1");
    assertThat(turn(run).sweepRad()).isEqualTo(-2 * Math.PI);
    assertThat(run.summary().diagnostics()).isEmpty();
  }

  @Test
  void an_end_just_beside_the_start_is_told() {
    Programs.Run run = Programs.zeroed("F60 G0 X10", "G3 X10 Y0.001 I-10");
    assertThat(run.only().code()).isEqualTo(ProgramCode.ARC_NEARLY_FULL);
    assertThat(turn(run).sweepRad()).isEqualTo(0.0001, within(1e-8));
    assertThat(Programs.zeroed("F60 G0 X10", "G3 X10 Y0.01 I-10").summary().diagnostics())
        .isEmpty();
  }

  @Test
  void an_end_on_the_same_ray_is_a_full_turn() {
    Programs.Run run = Programs.zeroed("F60 G0 X10", "G2 X10.001 Y0 I-10");
    assertThat(turn(run).sweepRad()).isEqualTo(-2 * Math.PI, within(1e-12));
  }

  @Test
  void a_wider_tolerance_is_for_dialects_that_have_it() {
    String[] mm = {"G21 G90 F60 G0 X10", "G3 X0 Y10.05 I-10"};
    assertThat(Programs.run(Programs.ZEROED, mm).only().code())
        .isEqualTo(ProgramCode.ARC_RADII_DIFFER);
    ReadingRules wide = Programs.ZEROED.but().arcTolerance(0.06, 0.001).build();
    assertThat(Programs.run(wide, mm).errors()).isEmpty();
    assertThat(Programs.run(wide, "G20 G90 F60 G0 X10", "G3 X0 Y10.0009 I-10").errors()).isEmpty();
    assertThat(Programs.run(wide, "G20 G90 F60 G0 X10", "G3 X0 Y10.0011 I-10").errors()).hasSize(1);
  }

  @Test
  void a_radius_short_by_rounding_is_half_a_circle() {
    Programs.Run run = Programs.zeroed("F60", "G2 X10.001 R5");
    assertThat(turn(run).centreU()).isEqualTo(5.0005, within(1e-12));
    assertThat(turn(run).sweepRad()).isEqualTo(-Math.PI, within(1e-12));
    assertThat(Programs.zeroed("F60", "G2 X10.005 R5").only().code())
        .isEqualTo(ProgramCode.ARC_RADIUS);
    assertThat(Programs.zeroed("F60", "G2 X1 R0").only().code()).isEqualTo(ProgramCode.ARC_RADIUS);
  }

  /** R of either sign may give exactly half a turn. */
  @ParameterizedTest
  @ValueSource(strings = {"R5", "R-5"})
  void half_a_circle_by_radius_is_noted_as_sensitive(String radius) {
    Programs.Run run = Programs.zeroed("F60", "G3 X10 " + radius);
    assertThat(Math.toDegrees(turn(run).sweepRad())).isEqualTo(180, within(1e-9));
    assertThat(run.only().code()).isEqualTo(ProgramCode.ARC_UNSURE);
    assertThat(run.only().isError()).isFalse();
    assertThat(run.only().hint()).isNotEmpty();
  }

  @Test
  void only_the_arcs_that_the_report_warns_of_are_noted() {
    // Chord 2 r sin(sweep / 2) of r = 10.
    for (double degrees : new double[] {20, 160, 200, 340}) {
      assertThat(byRadius(degrees).summary().diagnostics()).as("" + degrees).isEmpty();
    }
    for (double degrees : new double[] {170, 190, 350}) {
      assertThat(byRadius(degrees).codes())
          .as("" + degrees)
          .containsExactly(ProgramCode.ARC_UNSURE);
    }
  }

  private static Programs.Run byRadius(double degrees) {
    double chord = 20 * Math.sin(Math.toRadians(degrees / 2));
    return Programs.zeroed("F60", "G3" + word("X", chord) + (degrees > 180 ? " R-10" : " R10"));
  }

  @Test
  void tiny_and_huge_arcs_are_right() {
    Motion.Turn tiny = turn(Programs.zeroed("F60", "G3 X0.00002 I0.00001"));
    assertThat(tiny.radiusMm()).isEqualTo(1e-5, within(1e-15));
    assertThat(tiny.lengthMm()).isEqualTo(Math.PI * 1e-5, within(1e-13));
    Motion.Turn huge = turn(Programs.zeroed("F60", "G3 X10 R9999999"));
    assertThat(huge.lengthMm()).isEqualTo(10, within(1e-6));
    assertThat(huge.box().maxY() - huge.box().minY()).isLessThan(1e-4);
    assertThat(Programs.zeroed("F60", "G3 X10 R10000001").only().code())
        .isEqualTo(ProgramCode.OUT_OF_RANGE);
    assertThat(Programs.zeroed("F60", "G3 X10 I10000001").only().code())
        .isEqualTo(ProgramCode.OUT_OF_RANGE);
  }

  @Test
  void an_arc_needs_the_offsets_of_its_plane_and_no_other() {
    assertThat(Programs.zeroed("F60 G0 X10", "G3 X0 Y10 I-10 K1").only().code())
        .isEqualTo(ProgramCode.WORD_UNUSED);
    assertThat(Programs.zeroed("F60", "G3 X10 R9 K1").only().code())
        .isEqualTo(ProgramCode.ARC_R_AND_CENTRE);
    assertThat(Programs.zeroed("F60", "G3 X0 I0 J0").only().code())
        .isEqualTo(ProgramCode.ARC_RADIUS);
  }

  @Test
  void the_centre_is_told_as_missing_in_the_letters_of_the_plane() {
    assertThat(Programs.zeroed("F60 G18", "G3 X1 Z1").only().message()).contains("I, K");
    assertThat(Programs.zeroed("F60 G19", "G3 Y1 Z1").only().message()).contains("J, K");
  }

  /** 0.000001 mm is less than any machine moves, 10 km more than any: both are worked out. */
  @ParameterizedTest
  @ValueSource(doubles = {0.00001, 0.001, 0.1, 1000, 100_000, 5_000_000})
  void arcs_of_tiny_and_huge_radii_are_the_circles_they_are(double r) {
    for (String letter : new String[] {"I", "R"}) {
      // A quarter from (0, 0) about (r, 0) to (r, r).
      String words = word("X", r) + word("Y", r) + word(letter, r);
      Programs.Run run = Programs.zeroed("F60", "G2" + words);
      Motion.Turn turn = turn(run);
      assertThat(turn.sweepRad()).as(words).isEqualTo(-Math.PI / 2, within(1e-9));
      assertThat(turn.centreU()).as(words).isEqualTo(r, within(r * 1e-9));
      assertThat(turn.centreV()).as(words).isEqualTo(0, within(r * 1e-9));
      assertThat(turn.lengthMm()).as(words).isEqualTo(r * Math.PI / 2, within(r * 1e-9));
    }
  }

  /** The rise of a flat arc above its chord c is c^2 / 8 r: here 0.00000125 mm. */
  @Test
  void an_arc_of_ten_kilometres_over_ten_millimetres_is_almost_a_line() {
    for (String words : new String[] {"R10000000", "I5 J-9999999.99999875"}) {
      Motion.Turn turn = turn(Programs.zeroed("F60", "G2 X10 " + words));
      assertThat(turn.sweepRad()).as(words).isEqualTo(-1e-6, within(1e-12));
      assertThat(turn.lengthMm()).as(words).isEqualTo(10, within(1e-6));
      assertThat(turn.at(0.5).y()).as(words).isEqualTo(1.25e-6, within(1e-8));
    }
  }

  /** A nanometre is where the start ends: a full turn by its centre, nothing by its radius. */
  @Test
  void an_arc_of_a_nanometre_is_a_turn_or_a_mistake() {
    Programs.Run full = Programs.zeroed("F60", "G2 X0 I0.000001");
    assertThat(turn(full).lengthMm()).isEqualTo(2 * Math.PI * 1e-6, within(1e-12));
    assertThat(Programs.zeroed("F60", "G2 X0.0000005 R0.000001").errors())
        .extracting(d -> (Object) d.code())
        .containsExactly(ProgramCode.ARC_END_IS_START);
    for (String line : new String[] {"G2 X1 R10000001", "G2 X1 I10000001", "G3 X1 J-10000001"}) {
      assertThat(Programs.zeroed("F60", line).errors())
          .as(line)
          .extracting(d -> (Object) d.code())
          .containsExactly(ProgramCode.OUT_OF_RANGE);
    }
  }
}
