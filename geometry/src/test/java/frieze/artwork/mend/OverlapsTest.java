package frieze.artwork.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.dxf.DxfReader;
import frieze.curve.ArcLength;
import frieze.curve.Point;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Lines of a DXF drawing that lie on each other. */
class OverlapsTest {
  private static Repair drawn(double[]... lines) {
    StringBuilder text = new StringBuilder("0\nSECTION\n2\nENTITIES\n");
    for (double[] l : lines) {
      text.append("0\nLINE\n8\n0\n10\n").append(l[0]).append("\n20\n").append(l[1]);
      text.append("\n11\n").append(l[2]).append("\n21\n").append(l[3]).append('\n');
    }
    return mended(text);
  }

  /** Centre, radius, from and to in degrees; a circle without the last two. */
  private static Repair arcs(double[]... arcs) {
    StringBuilder text = new StringBuilder("0\nSECTION\n2\nENTITIES\n");
    for (double[] a : arcs) {
      text.append(a.length > 3 ? "0\nARC" : "0\nCIRCLE").append("\n8\n0\n10\n").append(a[0]);
      text.append("\n20\n").append(a[1]).append("\n40\n").append(a[2]);
      if (a.length > 3) {
        text.append("\n50\n").append(a[3]).append("\n51\n").append(a[4]);
      }
      text.append('\n');
    }
    return mended(text);
  }

  private static Repair mended(StringBuilder text) {
    text.append("0\nENDSEC\n0\nEOF\n");
    byte[] file = text.toString().getBytes(StandardCharsets.UTF_8);
    return Repair.of(DxfReader.withScale(1).read("t.dxf", file), 0.05, 0);
  }

  private static List<Mend> overlaps(Repair mended) {
    return mended.mends().stream().filter(m -> m.kind() == Mend.Kind.OVERLAP).toList();
  }

  /** A square of 10 mm whose lower side was drawn in three pieces that lie on each other. */
  @Test
  void a_side_drawn_in_overlapping_pieces_closes_its_outline() {
    Repair mended =
        drawn(
            new double[] {0, 0, 6, 0},
            new double[] {9, 0, 4, 0},
            new double[] {8, 0, 10, 0},
            new double[] {10, 0, 10, 10},
            new double[] {10, 10, 0, 10},
            new double[] {0, 10, 0, 0});
    assertThat(overlaps(mended)).hasSize(2);
    assertThat(overlaps(mended).get(0).at().x()).isCloseTo(5, within(1e-12));
    assertThat(overlaps(mended).get(1).at().x()).isCloseTo(8.5, within(1e-12));
    assertThat(mended.artwork().filled(0.001).area()).isCloseTo(100, within(1e-9));
    assertThat(mended.artwork().notes().toString())
        .contains("lines that lie on each other made one: 2, at (mm) 5.000, 0.000");
  }

  @Test
  void a_line_within_a_longer_one_goes_upright_or_slanting() {
    Repair mended =
        drawn(
            new double[] {0, 0, 0, 9},
            new double[] {0, 7, 0, 2},
            new double[] {30, 20, 5, 1.25},
            new double[] {9, 4.25, 13, 7.25});
    assertThat(overlaps(mended)).hasSize(2);
    double length =
        mended.artwork().pieces().stream()
            .flatMap(p -> p.paths().stream())
            .mapToDouble(p -> p.start().distance(p.end()))
            .sum();
    assertThat(length).isCloseTo(9 + 31.25, within(1e-9));
  }

  @Test
  void lines_that_touch_cross_or_run_side_by_side_stay() {
    Repair mended =
        drawn(
            new double[] {0, 0, 5, 0},
            new double[] {5, 0, 9, 0},
            new double[] {3, -4, 3, 4},
            new double[] {0, 0.1, 5, 0.1});
    assertThat(overlaps(mended)).isEmpty();
  }

  private static double length(Repair mended) {
    return mended.artwork().pieces().stream()
        .flatMap(p -> p.paths().stream())
        .mapToDouble(ArcLength::lengthMm)
        .sum();
  }

  /** 0 to 100 and 70 to 200 degrees are 0 to 200; the middle of what they share is at 85. */
  @Test
  void arcs_that_partly_overlap_become_one_from_the_first_end_to_the_last() {
    Repair mended = arcs(new double[] {5, 7, 20, 0, 100}, new double[] {5, 7, 20, 70, 200});
    assertThat(overlaps(mended)).hasSize(1);
    Point middle = Point.polar(new Point(5, 7), 20, Math.toRadians(85));
    assertThat(overlaps(mended).get(0).at().distance(middle)).isLessThan(1e-9);
    assertThat(length(mended)).isCloseTo(20 * Math.toRadians(200), within(1e-9));
  }

  @Test
  void arcs_across_zero_degrees_and_within_others_are_found_too() {
    Repair mended =
        arcs(
            new double[] {0, 0, 10, 10, 60},
            new double[] {0, 0, 10, 300, 20},
            new double[] {0, 0, 10, 30, 40},
            new double[] {50, 0, 10, 0, 90});
    assertThat(overlaps(mended)).hasSize(2);
    assertThat(length(mended)).isCloseTo(10 * Math.toRadians(120 + 90), within(1e-9));
  }

  @Test
  void arcs_that_overlap_all_the_way_round_enclose_their_circle() {
    Repair mended =
        arcs(
            new double[] {0, 0, 10, 0, 130},
            new double[] {0, 0, 10, 120, 250},
            new double[] {0, 0, 10, 240, 10});
    assertThat(overlaps(mended)).hasSize(2);
    assertThat(mended.artwork().filled(1e-4).area()).isCloseTo(100 * Math.PI, within(0.01));
    assertThat(length(mended)).isCloseTo(20 * Math.PI, within(1e-9));
  }

  @Test
  void an_arc_on_a_circle_that_is_drawn_as_well_goes() {
    Repair mended = arcs(new double[] {0, 0, 10}, new double[] {0, 0, 10, 350, 80});
    assertThat(overlaps(mended)).hasSize(1);
    assertThat(length(mended)).isCloseTo(20 * Math.PI, within(1e-9));
  }

  @Test
  void arcs_that_touch_or_lie_on_other_circles_stay() {
    Repair mended =
        arcs(
            new double[] {0, 0, 10, 0, 90},
            new double[] {0, 0, 10, 90, 180},
            new double[] {0, 0, 10.1, 0, 90},
            new double[] {0.1, 0, 10, 0, 90});
    assertThat(overlaps(mended)).isEmpty();
  }
}
