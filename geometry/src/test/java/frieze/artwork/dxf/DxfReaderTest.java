package frieze.artwork.dxf;

import static frieze.artwork.dxf.DxfDraft.bytes;
import static frieze.artwork.dxf.DxfDraft.file;
import static frieze.artwork.dxf.DxfDraft.header;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.Piece;
import frieze.artwork.mend.Repair;
import frieze.curve.Arc;
import frieze.curve.Bounds;
import frieze.curve.Cubic;
import frieze.curve.EllipticArc;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.fixtures.Seeds;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Drawings in DXF. The meaning of group codes is that of the published DXF reference, from memory;
 * the numbers are closed forms.
 */
class DxfReaderTest {
  private static final String CIRCLE = "0 CIRCLE 8 0 10 0 20 0 40 5 ";
  private static final String ROUND =
      "0 LWPOLYLINE 8 0 90 4 70 1 10 0 20 0 10 10 20 0 42 1 10 10 20 4 10 0 20 4 42 1 ";

  private static Artwork read(String before, String entities) {
    return new DxfReader().read("t.dxf", file(before, entities));
  }

  private static Path only(String entity) {
    return read(header(4), entity).pieces().get(0).paths().get(0);
  }

  private static double area(Artwork art) {
    return art.filled(1e-4).area();
  }

  @ParameterizedTest
  @CsvSource({"1, 25.4", "2, 304.8", "4, 1", "5, 10", "6, 1000", "10, 914.4", "14, 100"})
  void a_unit_of_the_header_has_its_size(int code, double mm) {
    Artwork art = read(header(code), "0 LINE 8 0 10 0 20 0 11 2 21 0");
    assertThat(art.bounds().width()).isCloseTo(2 * mm, within(1e-9));
  }

  @Test
  void a_drawing_without_unit_says_what_was_assumed_and_a_given_unit_wins() {
    Artwork art = read("", CIRCLE);
    assertThat(art.notes()).extracting(Diagnostic::code).containsExactly(ArtworkCode.SIZE_ASSUMED);
    assertThat(art.bounds().width()).isEqualTo(10);
    Artwork inches = DxfReader.withScale(25.4).read("t.dxf", file(header(4), CIRCLE));
    assertThat(inches.bounds().width()).isCloseTo(254, within(1e-9));
    assertThat(inches.notes()).isEmpty();
  }

  @Test
  void bulges_are_exact_arcs() {
    Path slot = only(ROUND);
    assertThat(slot.closed()).isTrue();
    assertThat(slot.segments()).hasSize(4);
    Arc end = (Arc) slot.segments().get(1);
    assertThat(end.centre().distance(new Point(10, 2))).isLessThan(1e-12);
    assertThat(end.sweepRad()).isCloseTo(Math.PI, within(1e-12));
    assertThat(area(read(header(4), ROUND))).isCloseTo(40 + Math.PI * 4, within(2e-3));
    Arc quarter =
        (Arc)
            only("0 LWPOLYLINE 8 0 90 2 70 0 10 1 20 0 42 -0.41421356237309503 10 0 20 1")
                .segments()
                .get(0);
    assertThat(quarter.centre().distance(new Point(1, 1))).isLessThan(1e-12);
    assertThat(quarter.sweepRad()).isCloseTo(-Math.PI / 2, within(1e-12));
  }

  @Test
  void an_old_polyline_is_the_same_as_a_new_one() {
    String old =
        "0 POLYLINE 8 0 66 1 70 1 0 VERTEX 8 0 10 0 20 0 0 VERTEX 8 0 10 10 20 0 42 1"
            + " 0 VERTEX 8 0 10 10 20 4 0 VERTEX 8 0 10 0 20 4 42 1 0 SEQEND 8 0";
    assertThat(only(old)).isEqualTo(only(ROUND));
  }

  @Test
  void an_arc_runs_counter_clockwise_from_its_start_and_mirrored_when_seen_from_below() {
    Arc arc = (Arc) only("0 ARC 8 0 10 0 20 0 40 2 50 270 51 90").segments().get(0);
    assertThat(arc.at(0.5).distance(new Point(2, 0))).isLessThan(1e-12);
    assertThat(arc.sweepRad()).isCloseTo(Math.PI, within(1e-12));
    Arc below =
        (Arc) only("0 ARC 8 0 10 3 20 0 40 2 50 270 51 90 210 0 220 0 230 -1").segments().get(0);
    assertThat(below.at(0.5).distance(new Point(-5, 0))).isLessThan(1e-12);
  }

  @Test
  void an_ellipse_has_the_area_of_its_closed_form() {
    Artwork art =
        read(header(4), "0 ELLIPSE 8 0 10 1 20 2 11 6 21 8 40 0.5 41 0 42 6.283185307179586");
    assertThat(art.pieces().get(0).paths().get(0).segments().get(0))
        .isInstanceOf(EllipticArc.class);
    assertThat(area(art)).isCloseTo(Math.PI * 10 * 5, within(5e-3));
  }

  @Test
  void a_cubic_spline_is_its_bezier_curve_exactly() {
    Segment s =
        only("0 SPLINE 8 0 71 3 40 0 40 0 40 0 40 0 40 1 40 1 40 1 40 1 10 0 20 0 10 10 20 20"
                + " 10 30 20 20 10 40 20 0")
            .segments()
            .get(0);
    Cubic cubic = (Cubic) s;
    assertThat(cubic.control1().distance(new Point(10, 20))).isLessThan(1e-12);
    assertThat(cubic.control2().distance(new Point(30, 20))).isLessThan(1e-12);
  }

  /** The nine-point rational circle: Piegl and Tiller, The NURBS Book, 7.5, from memory. */
  @Test
  void a_rational_spline_follows_its_circle_within_its_tolerance() {
    double w = Math.sqrt(0.5);
    StringBuilder text = new StringBuilder("0 SPLINE 8 0 70 4 71 2 ");
    for (double k : new double[] {0, 0, 0, 1, 1, 2, 2, 3, 3, 4, 4, 4}) {
      text.append("40 ").append(k).append(' ');
    }
    int[][] p = {{1, 0}, {1, 1}, {0, 1}, {-1, 1}, {-1, 0}, {-1, -1}, {0, -1}, {1, -1}, {1, 0}};
    for (int i = 0; i < p.length; i++) {
      text.append("10 ").append(50 * p[i][0]).append(" 20 ").append(50 * p[i][1]);
      text.append(" 41 ").append(i % 2 == 0 ? 1 : w).append(' ');
    }
    Path circle = only(text.toString());
    for (Segment s : circle.segments()) {
      for (double t = 0; t <= 1; t += 0.01) {
        assertThat(s.at(t).norm()).isCloseTo(50, within(2e-5));
      }
    }
    assertThat(circle.closed()).isTrue();
  }

  /** Closed form: a natural cubic spline through points of a straight line is that line. */
  @Test
  void a_spline_of_which_only_points_are_given_goes_through_them_and_is_reported() {
    Artwork art = read(header(4), "0 SPLINE 8 0 71 3 11 0 21 0 11 1 21 2 11 3 21 6 11 4 21 8");
    Path path = art.pieces().get(0).paths().get(0);
    assertThat(art.notes()).extracting(Diagnostic::code).contains(ArtworkCode.CURVE_INTERPOLATED);
    for (Segment s : path.segments()) {
      assertThat(s.at(0.4).y()).isCloseTo(2 * s.at(0.4).x(), within(1e-9));
    }
  }

  private static String block(String name, String entities) {
    return "0 SECTION 2 BLOCKS 0 BLOCK 8 0 2 "
        + name
        + " 70 0 10 1 20 0 "
        + entities
        + " 0 ENDBLK 8 0 0 ENDSEC ";
  }

  @Test
  void a_block_is_scaled_turned_repeated_and_moved() {
    String unit = block("B", "0 LINE 8 0 10 1 20 0 11 2 21 0");
    Artwork art =
        read(
            header(4) + unit,
            "0 INSERT 8 0 2 b 10 100 20 50 41 2 42 3 50 90 70 2 71 3 44 10 45 20");
    List<Path> lines = art.pieces().get(0).paths();
    assertThat(lines).hasSize(6);
    assertThat(lines.get(0).start().distance(new Point(100, 50))).isLessThan(1e-9);
    assertThat(lines.get(0).end().distance(new Point(100, 52))).isLessThan(1e-9);
    assertThat(lines.get(1).start().distance(new Point(100, 60))).isLessThan(1e-9);
    assertThat(lines.get(2).start().distance(new Point(80, 50))).isLessThan(1e-9);
  }

  @Test
  void an_unevenly_scaled_circle_is_an_ellipse() {
    Artwork art = read(header(4) + block("B", CIRCLE), "0 INSERT 8 0 2 B 10 0 20 0 41 2 42 1");
    Bounds b = art.bounds();
    assertThat(b.width()).isCloseTo(20, within(1e-9));
    assertThat(b.height()).isCloseTo(10, within(1e-9));
  }

  @Test
  void layers_give_groups_and_colours_and_hidden_ones_are_left_out() {
    String layers =
        "0 SECTION 2 TABLES 0 TABLE 2 LAYER 0 LAYER 2 fern 70 0 62 3 0 LAYER 2 guides 70 0 62 -1"
            + " 0 LAYER 2 ice 70 1 62 1 0 ENDTAB 0 ENDSEC ";
    Artwork art =
        read(
            header(4) + layers,
            CIRCLE.replace("8 0", "8 fern")
                + CIRCLE.replace("8 0", "8 guides")
                + CIRCLE.replace("8 0", "8 ice")
                + CIRCLE.replace("8 0", "8 fern 62 1"));
    assertThat(art.pieces()).hasSize(2);
    Piece fern = art.pieces().get(0);
    assertThat(fern.label().answersTo("fern")).isTrue();
    assertThat(fern.label().answersTo("lime")).isTrue();
    assertThat(fern.label().answersTo("red")).isFalse();
    assertThat(art.pieces().get(1).label().answersTo("red")).isTrue();
    assertThat(art.notes().get(0).message()).startsWith("2 entities are hidden");
  }

  @Test
  void what_is_not_understood_is_listed_with_its_count() {
    Artwork art = read(header(4), CIRCLE + "0 TEXT 8 0 1 x 0 HATCH 8 0 0 TEXT 8 0 1 y");
    assertThat(art.notes())
        .extracting(Diagnostic::message)
        .containsExactlyInAnyOrder("2 TEXT are left out", "1 HATCH is left out");
  }

  @Test
  void holes_of_a_layer_are_holes() {
    Artwork art = read(header(4), CIRCLE + CIRCLE.replace("40 5", "40 3"));
    assertThat(area(art)).isCloseTo(Math.PI * 16, within(0.05));
  }

  @Test
  void loose_ends_within_the_gap_become_an_area_and_those_beyond_stay_open() {
    String three =
        "0 LINE 8 0 10 0 20 0 11 10 21 0 0 ARC 8 0 10 10 20 5 40 5 50 -90 51 90"
            + " 0 LINE 8 0 10 0 20 10.02 11 10 21 10.03 0 LINE 8 0 10 0 20 10 11 0 21 0.04 ";
    Artwork drawn = read(header(4), three);
    Repair mended = Repair.of(drawn, 0.05, 0);
    assertThat(area(mended.artwork())).isCloseTo(100 + Math.PI * 12.5, within(0.5));
    assertThat(mended.mends()).hasSize(3).allMatch(m -> m.amountMm() <= 0.05);
    assertThat(mended.artwork().bounds().width()).isCloseTo(15, within(0.05));
    Repair apart = Repair.of(drawn, 0.035, 0);
    assertThat(apart.artwork().filled(0.01).isEmpty()).isTrue();
    assertThat(apart.artwork().notes().toString()).contains("1 open line;");
  }

  @Test
  void an_outline_drawn_twice_is_there_once() {
    Repair mended = Repair.of(read(header(4), CIRCLE + CIRCLE), 0, 0);
    assertThat(area(mended.artwork())).isCloseTo(Math.PI * 25, within(0.01));
    assertThat(mended.mends()).hasSize(1);
  }

  private static List<Diagnostic> refused(byte[] content) {
    try {
      new DxfReader().read("t.dxf", content);
    } catch (BadInputException e) {
      return e.diagnostics();
    }
    throw new AssertionError("the drawing was read");
  }

  @Test
  void bad_files_are_refused_at_their_place() {
    assertThat(refused(bytes("<svg/>")).get(0).code()).isEqualTo(ArtworkCode.NOT_DXF);
    assertThat(refused(new byte[] {65, 0, 65}).get(0).message()).contains("binary");
    assertThat(refused(new byte[0]).get(0).code()).isEqualTo(ArtworkCode.NOT_DXF);
    Diagnostic bad = refused(file("", "0 LINE 8 0 10 nan")).get(0);
    assertThat(bad.code()).isEqualTo(ArtworkCode.UNREADABLE_VALUE);
    assertThat(bad.where().line()).isEqualTo(10);
    assertThat(refused(bytes("0 SECTION 2 ENTITIES 0 LINE 8 0")).get(0).code())
        .isEqualTo(ArtworkCode.NOT_DXF);
    assertThat(refused(file("", "0 TEXT 8 0")).toString()).contains("ART-012").contains("1 TEXT");
  }

  /** Refused within 10 s of this thread's own time, however busy the machine is. */
  private static void refusedSoon(byte[] content, ArtworkCode code) {
    ThreadMXBean clock = ManagementFactory.getThreadMXBean();
    long start = clock.getCurrentThreadCpuTime();
    assertThat(refused(content).get(0).code()).isEqualTo(code);
    assertThat(clock.getCurrentThreadCpuTime() - start).isLessThan(10_000_000_000L);
  }

  @Test
  void blocks_that_grow_without_bound_end_in_a_message_in_time() {
    StringBuilder blocks = new StringBuilder("0 SECTION 2 BLOCKS ");
    for (int i = 0; i < 30; i++) {
      blocks.append("0 BLOCK 2 B").append(i).append(' ');
      for (int k = 0; k < 10; k++) {
        blocks.append("0 INSERT 8 0 2 B").append(i + 1).append(" 10 1 20 1 ");
      }
      blocks.append("0 ENDBLK ");
    }
    blocks.append("0 BLOCK 2 B30 0 ENDBLK 0 ENDSEC ");
    byte[] nested = file(blocks.toString(), "0 INSERT 8 0 2 B0");
    byte[] array = file(block("B", CIRCLE), "0 INSERT 8 0 2 B 70 32767 71 32767");
    byte[] loop = file(block("B", "0 INSERT 8 0 2 b"), "0 INSERT 8 0 2 B");
    refusedSoon(nested, ArtworkCode.TOO_BIG);
    refusedSoon(array, ArtworkCode.TOO_BIG);
    refusedSoon(loop, ArtworkCode.USED_IN_ITSELF);
  }

  @Test
  void a_million_entities_end_in_a_message_in_time() {
    String point = "0\nPOINT\n8\n0\n10\n1\n20\n1\n";
    byte[] million =
        ("0\nSECTION\n2\nENTITIES\n" + point.repeat(1_000_000)).getBytes(StandardCharsets.UTF_8);
    refusedSoon(million, ArtworkCode.TOO_BIG);
  }

  @Test
  void mutated_drawings_give_a_drawing_or_a_diagnostic() {
    mutate(200);
  }

  @Test
  @Tag("soak")
  void many_mutated_drawings_give_a_drawing_or_a_diagnostic() {
    mutate(10_000);
  }

  private static void mutate(int count) {
    byte[] whole =
        file(
            header(4) + block("B", CIRCLE + ROUND),
            "0 INSERT 8 0 2 B 10 100 20 50 41 2 42 3 50 90 70 2 71 3 44 10 45 20 0 SPLINE 8 0 71 3"
                + " 40 0 40 0 40 0 40 0 40 1 40 1 40 1 40 1 10 0 20 0 10 10 20 20 10 30 20 20 10 40"
                + " 20 0 0 ELLIPSE 8 0 10 1 20 2 11 6 21 8 40 0.5 41 0 42 6 0 ARC 8 0 10 0 20 0 40"
                + " 2 50 270 51 90 210 0 220 0.3 230 -1 0 SPLINE 8 0 71 3 11 0 21 0 11 1 21 2 11 3"
                + " 21 6 0 SOLID 8 0 10 1 11 2 12 3 22 1");
    long seed = Seeds.seed(7);
    SplittableRandom random = new SplittableRandom(seed);
    String pool = "0123456789-.eE\n\nABSI";
    for (int i = 0; i < count; i++) {
      byte[] spoilt = whole.clone();
      int changes = 1 + random.nextInt(6);
      for (int k = 0; k < changes; k++) {
        spoilt[random.nextInt(spoilt.length)] = (byte) pool.charAt(random.nextInt(pool.length()));
      }
      try {
        Repair.of(new DxfReader().read("t.dxf", spoilt), 0.05, 0);
      } catch (BadInputException e) {
        assertThat(e.diagnostics()).as("seed %d, round %d", seed, i).isNotEmpty();
      } catch (RuntimeException e) {
        throw new AssertionError("seed " + seed + ", round " + i, e);
      }
    }
  }

  @Test
  void flattening_what_was_read_stays_within_bounds() {
    assertThat(Flattener.flatten(only(ROUND), 0.01)).hasSizeGreaterThan(20);
    assertThatThrownBy(() -> DxfReader.withScale(0)).isInstanceOf(IllegalArgumentException.class);
  }
}
