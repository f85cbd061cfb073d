package frieze.dryrun.torch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.scene.NearLines;
import frieze.fixtures.Seeds;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TorchSheetTest {
  private static TorchRun run(double[]... chords) {
    TorchRun run = new TorchRun(0, SourceSpan.NONE, new Point(0, 0));
    run.chords.addAll(List.of(chords));
    return run;
  }

  private static Region box(double x0, double y0, double x1, double y1) {
    return Region.ofRing(
        List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
  }

  /** A kerf of 3 mm: squares of 0.25 mm, and 12 mm all around. */
  @Test
  void the_sheet_reaches_four_kerfs_beyond_the_cuts_and_the_parts() {
    TorchRun cut = run(new double[] {30, 25, 10, 20});
    TorchSheet sheet = new TorchSheet(List.of(), List.of(cut), 3);
    assertThat(sheet.squareMm()).isEqualTo(0.25);
    assertThat(sheet.pieces(3)).hasSize(176 * 116);
    assertThat(sheet.place(0)).isEqualTo(new Point(-1.875, 8.125));
    assertThat(sheet.place(176 * 116 - 1)).isEqualTo(new Point(41.875, 36.875));
    assertThat(sheet.place(2 * 176 + 3)).isEqualTo(new Point(-1.125, 8.625));
    TorchSheet both = new TorchSheet(List.of(box(40, 10, 45, 20)), List.of(cut), 3);
    assertThat(both.pieces(3)).hasSize((45 - 10 + 24) * 4 * (25 - 10 + 24) * 4);
    assertThat(both.place(0)).isEqualTo(new Point(-1.875, -1.875));
  }

  @Test
  void a_place_is_in_its_square_or_in_the_nearest() {
    TorchSheet sheet = new TorchSheet(List.of(), List.of(run(new double[] {30, 25, 10, 20})), 3);
    int wrong = 0;
    for (int i = 0; i < 176 * 116; i++) {
      wrong += sheet.square(sheet.place(i)) == i ? 0 : 1;
    }
    assertThat(wrong).isEqualTo(0);
    assertThat(sheet.square(new Point(-1.001, 8.499))).isEqualTo(176 + 3);
    assertThat(sheet.square(new Point(-99, -99))).isEqualTo(0);
    assertThat(sheet.square(new Point(-99, 99))).isEqualTo(115 * 176);
    assertThat(sheet.square(new Point(99, 99))).isEqualTo(176 * 116 - 1);
  }

  @Test
  void a_large_sheet_has_larger_squares() {
    TorchSheet sheet = new TorchSheet(List.of(box(0, 0, 3000, 1000)), List.of(), 2);
    double side = Math.sqrt(3016.0 * 1016.0 / 8e6);
    assertThat(sheet.squareMm()).isCloseTo(side, within(1e-12));
    int squares = (int) Math.ceil(3016 / side) * (int) Math.ceil(1016 / side);
    assertThat(sheet.square(new Point(9999, 9999))).isEqualTo(squares - 1);
  }

  @Test
  void what_is_further_from_all_cuts_than_half_a_kerf_stands() {
    SplittableRandom random = Seeds.random(507);
    List<double[]> chords = new ArrayList<>();
    chords.add(new double[] {2, 5, 9, 5});
    chords.add(new double[] {1, 1, 1, 7});
    for (int i = 0; i < 4; i++) {
      double[] chord = new double[4];
      for (int k = 0; k < 4; k++) {
        chord[k] = random.nextDouble(k % 2 == 0 ? 12 : 7);
      }
      chords.add(chord);
    }
    double kerf = 1.3;
    TorchRun first = run(chords.subList(0, 3).toArray(double[][]::new));
    TorchRun second = run(chords.subList(3, 6).toArray(double[][]::new));
    TorchSheet sheet = new TorchSheet(List.of(), List.of(first, second), kerf);
    for (double share : new double[] {0.85, 1, TorchSheet.WIDEST}) {
      int[] piece = sheet.pieces(share * kerf);
      assertThat(piece[0]).isEqualTo(1);
      List<Point> wrong = new ArrayList<>();
      for (int i = 0; i < piece.length; i++) {
        double away = away(sheet.place(i), chords) - share * kerf / 2;
        if (piece[i] > 0 != away > 0 && Math.abs(away) > 1e-5) {
          wrong.add(sheet.place(i));
        }
      }
      assertThat(wrong).as("share %s, seed %d", share, Seeds.seed(507)).isEmpty();
    }
  }

  private static double away(Point at, List<double[]> chords) {
    double least = Double.POSITIVE_INFINITY;
    for (double[] chord : chords) {
      least = Math.min(least, NearLines.distance(chord, at.x(), at.y()));
    }
    return least;
  }

  /** Stars with a hole, on the sheet and reaching beyond it. */
  @Test
  void squares_of_an_area_are_those_whose_middles_lie_in_it() {
    SplittableRandom random = Seeds.random(508);
    TorchSheet sheet = new TorchSheet(List.of(box(0, 0, 9, 6)), List.of(), 1.9);
    for (int i = 0; i < 6; i++) {
      Point middle = new Point(random.nextDouble(-7, 15), random.nextDouble(-7, 12));
      List<Point> ring = new ArrayList<>();
      for (int k = 0; k < 11; k++) {
        double radius = random.nextDouble(3, 10);
        ring.add(Point.polar(middle, radius, k * 2 * Math.PI / 11));
      }
      double hole = random.nextDouble(0.2, 2);
      Region area =
          Region.ofRing(ring)
              .minus(box(middle.x() - hole, middle.y() - 1, middle.x() + hole, middle.y() + hole));
      Region.Locator inside = area.locator();
      List<Integer> expected = new ArrayList<>();
      for (int at = 0; at <= sheet.square(new Point(999, 999)); at++) {
        if (inside.contains(sheet.place(at))) {
          expected.add(at);
        }
      }
      assertThat(sheet.squares(area))
          .as("area %d, seed %d", i, Seeds.seed(508))
          .containsExactly(expected.stream().mapToInt(n -> n).toArray());
    }
  }
}
