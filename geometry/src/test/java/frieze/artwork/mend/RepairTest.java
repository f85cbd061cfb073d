package frieze.artwork.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Arc;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RepairTest {
  private static Artwork drawn(String path, String rule) {
    String svg =
        "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='100mm' viewBox='0 0 100"
            + " 100'><path id='a' fill-rule='"
            + rule
            + "' d='"
            + path
            + "'/></svg>";
    return new SvgReader().read("a.svg", svg.getBytes(StandardCharsets.UTF_8));
  }

  private static List<Mend> of(Repair repair, Mend.Kind kind) {
    return repair.mends().stream().filter(m -> m.kind() == kind).toList();
  }

  private static String notes(Repair repair) {
    return repair.artwork().notes().toString();
  }

  /** A bow tie: two triangles of 20 by 40 mm that meet in the middle of a square. */
  @Test
  void a_crossing_is_resolved_and_placed() {
    Repair mended = Repair.of(drawn("M10 10 L50 50 V10 L10 50 Z", "nonzero"), 0.05, 0);
    assertThat(of(mended, Mend.Kind.CROSSING)).hasSize(1);
    assertThat(of(mended, Mend.Kind.CROSSING).get(0).at().distance(new Point(30, 70)))
        .isLessThan(1e-9);
    assertThat(mended.artwork().pieces().get(0).paths()).hasSize(2);
    assertThat(mended.artwork().filled(0.001).area()).isCloseTo(2 * 20 * 40 / 2.0, within(1e-6));
    assertThat(notes(mended)).contains("crossings of outlines resolved by the fill rule: 1");
  }

  /** The same bow tie with a point of one, of the other, and of both lines where they cross. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "M10 10 L30 30 L50 50 V10 L10 50 Z",
        "M10 10 L50 50 V10 L30 30 L10 50 Z",
        "M10 10 L30 30 L50 50 V10 L30 30 L10 50 Z",
        "M30 30 L50 50 V10 L10 50 V10 Z"
      })
  void a_crossing_at_a_vertex_counts_once(String path) {
    Repair mended = Repair.of(drawn(path, "nonzero"), 0.05, 0);
    assertThat(of(mended, Mend.Kind.CROSSING)).hasSize(1);
    assertThat(of(mended, Mend.Kind.CROSSING).get(0).at().distance(new Point(30, 70)))
        .isLessThan(1e-9);
    assertThat(mended.artwork().pieces().get(0).paths()).hasSize(2);
    assertThat(mended.artwork().filled(0.001).area()).isCloseTo(800, within(1e-6));
  }

  /** Two triangles tip to tip, and a square that stands with its corner on another's side. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "M10 10 L30 30 L10 50 Z M50 10 L50 50 L30 30 Z",
        "M10 10 H50 V50 H10 Z M30 50 L40 60 L30 70 L20 60 Z",
        "M10 10 L30 30 L50 10 V50 L30 30 L10 50 Z"
      })
  void outlines_that_touch_do_not_cross(String path) {
    Repair mended = Repair.of(drawn(path, "evenodd"), 0.05, 0);
    assertThat(of(mended, Mend.Kind.CROSSING)).isEmpty();
    assertThat(of(mended, Mend.Kind.SHARED)).isEmpty();
  }

  @Test
  void squares_side_by_side_lose_the_edge_between_them() {
    String squares = "M10 10 H30 V40 H10 Z M30 10 H50 V40 H30 Z";
    Repair mended = Repair.of(drawn(squares, "nonzero"), 0.05, 0);
    assertThat(of(mended, Mend.Kind.SHARED)).hasSize(1);
    assertThat(of(mended, Mend.Kind.SHARED).get(0).at().distance(new Point(30, 75)))
        .isLessThan(1e-9);
    assertThat(mended.artwork().pieces().get(0).paths()).hasSize(1);
    assertThat(mended.artwork().filled(0.001).area()).isCloseTo(1200, within(1e-6));
    assertThat(notes(mended)).contains("edges of outlines that lie on each other");
  }

  @Test
  void an_area_drawn_twice_is_there_once_or_not_at_all_by_its_rule() {
    String twice = "M10 10 H50 V50 H10 Z M10 10 H50 V50 H10 Z M60 10 h5 v5 h-5 z";
    Repair once = Repair.of(drawn(twice, "nonzero"), 0.05, 0);
    assertThat(once.artwork().filled(0.001).area()).isCloseTo(1625, within(1e-6));
    assertThat(once.artwork().pieces().get(0).paths()).hasSize(2);
    Repair none = Repair.of(drawn(twice, "evenodd"), 0.05, 0);
    assertThat(none.artwork().filled(0.001).area()).isCloseTo(25, within(1e-6));
    assertThat(of(none, Mend.Kind.SHARED)).hasSize(4);
  }

  /** Two circles of radius 20 whose centres are 20 apart, by either rule. Source: the lens area. */
  @Test
  void overlapping_outlines_keep_the_area_of_their_rule() {
    String two =
        "M10 50 a20 20 0 0 1 40 0 a20 20 0 0 1 -40 0 M30 50 a20 20 0 0 1 40 0 a20 20 0 0 1 -40 0";
    double lens = 2 * 400 * Math.acos(0.5) - 10 * Math.sqrt(4 * 400 - 400);
    double both = 2 * Math.PI * 400;
    Repair union = Repair.of(drawn(two, "nonzero"), 0.05, 0);
    Repair apart = Repair.of(drawn(two, "evenodd"), 0.05, 0);
    assertThat(union.artwork().filled(0.0005).area()).isCloseTo(both - lens, within(0.5));
    assertThat(apart.artwork().filled(0.0005).area()).isCloseTo(both - 2 * lens, within(0.5));
    assertThat(union.artwork().pieces().get(0).paths()).hasSize(1);
    assertThat(of(union, Mend.Kind.CROSSING)).hasSize(2);
  }

  @Test
  void outlines_are_turned_and_arcs_stay_exact() {
    // Both circles run clockwise on the page, so that the inner one is a hole by even-odd only.
    String ring =
        "M10 50 a20 20 0 0 1 40 0 a20 20 0 0 1 -40 0 M20 50 a10 10 0 0 1 20 0 a10 10 0 0 1 -20 0";
    Repair mended = Repair.of(drawn(ring, "evenodd"), 0.05, 0);
    assertThat(of(mended, Mend.Kind.TURNED)).hasSize(1);
    assertThat(
            mended.artwork().pieces().get(0).paths().stream().flatMap(p -> p.segments().stream()))
        .allMatch(s -> s instanceof Arc);
    double signed =
        mended.artwork().pieces().get(0).paths().stream()
            .mapToDouble(p -> ((Arc) p.segments().get(0)).sweepRad() > 0 ? 1 : -1)
            .sum();
    assertThat(signed).as("one each way").isZero();
    assertThat(mended.artwork().filled(0.001).area()).isCloseTo(Math.PI * (400 - 100), within(0.5));
    assertThat(mended.artwork().notes()).as("nothing has changed").isEmpty();
  }

  @Test
  void an_outline_inside_an_area_of_its_own_sense_is_removed() {
    Repair mended =
        Repair.of(drawn("M10 10 H50 V50 H10 Z M20 20 H40 V40 H20 Z", "nonzero"), 0.05, 0);
    assertThat(of(mended, Mend.Kind.INSIDE)).hasSize(1);
    assertThat(mended.artwork().pieces().get(0).paths()).hasSize(1);
    assertThat(mended.artwork().filled(0.001).area()).isCloseTo(1600, within(1e-6));
  }

  @Test
  void specks_and_pinholes_below_the_smallest_feature_go() {
    String specks = "M10 10 H50 V50 H10 Z M20 20 V21 H21 V20 Z M70 70 h1.5 v1.5 h-1.5 z";
    assertThat(Repair.of(drawn(specks, "evenodd"), 0.05, 0).mends())
        .as("none unless asked for")
        .noneMatch(m -> m.kind() == Mend.Kind.SPECK);
    Repair mended = Repair.of(drawn(specks, "evenodd"), 0.05, 2);
    assertThat(of(mended, Mend.Kind.SPECK)).hasSize(2);
    assertThat(mended.artwork().filled(0.001).area()).isCloseTo(1600, within(1e-6));
    assertThat(notes(mended)).contains("specks smaller than asked for removed: 2");
  }

  @Test
  void slivers_go_and_thin_stems_stay() {
    String both = "M10 10 H50 V50 H10 Z M60 10 h0.02 v40 h-0.02 z M70 10 h0.3 v40 h-0.3 z";
    Repair mended = Repair.of(drawn(both, "nonzero"), 0.05, 0);
    assertThat(of(mended, Mend.Kind.SLIVER)).hasSize(1);
    assertThat(mended.artwork().filled(0.001).area()).isCloseTo(1600 + 12, within(1e-6));
  }

  /**
   * A bow tie, a line there and back, and a hair 0.02 mm wide, told apart with place and amount.
   */
  @Test
  void each_fault_of_an_outline_has_a_code_of_its_own_with_place_and_amount() {
    String faults = "M10 10 L50 50 V10 L10 50 Z M60 20 l30 6 l-30 -6 z M60 30 h0.02 v40 h-0.02 z";
    List<String> told =
        Repair.of(drawn(faults, "nonzero"), 0.05, 0).artwork().notes().stream()
            .map(n -> n.code().id() + " " + n.message())
            .toList();
    assertThat(told)
        .contains(
            "ART-027 crossings of outlines resolved by the fill rule: 1, at (mm) 30.000, 70.000"
                + " (0.0070)",
            "ART-029 outlines that enclose nothing removed: 1, at (mm) 75.000, 77.000 (30.0000)",
            "ART-030 slivers removed, by their widths: 1, at (mm) 60.010, 50.000 (0.0200)");
  }

  @Test
  void doubled_points_go() {
    Point a = new Point(50, 10);
    Point b = new Point(50, 50);
    Path path = Path.polyline(List.of(new Point(10, 10), a, a, b, b, new Point(10, 50)), true);
    Artwork square = drawn("M10 10 h1 v1 h-1 z", "nonzero");
    Piece piece = square.pieces().get(0).withPaths(List.of(path));
    Artwork doubled = new Artwork("a.svg", List.of(piece), "", List.of());
    Repair mended = Repair.of(doubled, 0.05, 0);
    assertThat(of(mended, Mend.Kind.DOUBLED)).hasSize(2);
    assertThat(mended.artwork().pieces().get(0).paths().get(0).segments()).hasSize(4);
    assertThat(notes(mended))
        .contains("ART-028", "doubled points removed: 2, at (mm) 50.000, 10.000; 50.000, 50.000");
  }

  @Test
  void a_drawing_of_specks_alone_is_refused() {
    Artwork speck = drawn("M10 10 h1 v1 h-1 z", "nonzero");
    assertThatThrownBy(() -> Repair.of(speck, 0.05, 2)).isInstanceOf(BadInputException.class);
  }
}
