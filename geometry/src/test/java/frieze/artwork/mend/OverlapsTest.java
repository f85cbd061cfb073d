package frieze.artwork.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.dxf.DxfReader;
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
}
