package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.check.ThinStripCheck;
import frieze.dryrun.scene.GridPieces;
import frieze.dryrun.scene.StandingMap;
import frieze.field.StockField;
import frieze.fixtures.Seeds;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Stock;
import frieze.shop.ToolShape;
import java.util.Arrays;
import java.util.IntSummaryStatistics;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntPredicate;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ThinStripTest {
  private static final ToolShape BIT = new ToolShape.Flat(2);

  private static StockField board(double lengthMm, double widthMm, double cellMm) {
    return StockField.of(
        new Stock(Bench.STOCK.material(), lengthMm, widthMm, List.of(6.0), false), cellMm);
  }

  private static void slot(StockField field, double x0, double y0, double x1, double y1) {
    field.cut(new Motion.Straight(new Position(x0, y0, -6.2), new Position(x1, y1, -6.2)), BIT);
  }

  /** What stands between two slots right across a board, with the slots 2 mm wide. */
  private static double between(double stripMm, double widthMm) {
    StockField field = board(20, 12, 0.1);
    slot(field, -3, 4, 23, 4);
    slot(field, -3, 6 + stripMm, 23, 6 + stripMm);
    return ThinStripCheck.longestStripMm(StandingMap.of(field), widthMm);
  }

  @Test
  void a_strip_thinner_than_the_width_has_its_length_from_corner_to_corner() {
    assertThat(between(1, 1.5)).isCloseTo(Math.hypot(20, 1), within(1e-9));
    assertThat(between(1.4, 1.5)).isCloseTo(Math.hypot(20, 1.4), within(1e-9));
    // Wearing and growing rounds the strip's corners by a square.
    assertThat(between(1.6, 1.5)).isLessThan(0.2);
    assertThat(between(3, 1.5)).isLessThan(0.2);
  }

  @Test
  void a_strip_across_is_as_long_as_one_along() {
    StockField field = board(12, 20, 0.1);
    slot(field, 4, -3, 4, 23);
    slot(field, 7, -3, 7, 23);
    assertThat(ThinStripCheck.longestStripMm(StandingMap.of(field), 1.5))
        .isCloseTo(Math.hypot(20, 1), within(1e-9));
  }

  @Test
  void a_whole_board_has_no_strip() {
    assertThat(ThinStripCheck.longestStripMm(StandingMap.of(board(20, 12, 0.5)), 1.5)).isEqualTo(0);
  }

  /** Worn away by half the width and grown again by as much and two squares: all by trying. */
  @Test
  void a_strip_is_what_wearing_and_growing_again_loses() {
    SplittableRandom random = Seeds.random(509);
    int found = 0;
    for (int i = 0; i < 8; i++) {
      StockField field = board(21, 13, 0.5);
      for (int k = 0; k < 4; k++) {
        double y = random.nextInt(1, 25) / 2.0;
        double x = random.nextInt(0, 20) / 2.0;
        slot(field, x, y, x + random.nextInt(30) / 2.0, k == 3 ? y + 3 : y);
      }
      StandingMap map = StandingMap.of(field);
      double widthMm = random.nextInt(2, 5);
      double expected = byTrying(map, widthMm / 2 / 0.5);
      found += expected > 0 ? 1 : 0;
      assertThat(ThinStripCheck.longestStripMm(map, widthMm))
          .as("board %d, seed %d", i, Seeds.seed(509))
          .isCloseTo(expected * 0.5, within(1e-9));
    }
    assertThat(found).isGreaterThan(2);
  }

  private static double byTrying(StandingMap map, double half) {
    int columns = map.columns();
    int rows = map.rows();
    boolean[] left = new boolean[columns * rows];
    for (int i = 0; i < left.length; i++) {
      left[i] = map.stands(i);
      for (int row = -1; row <= rows && left[i]; row++) {
        for (int column = -1; column <= columns && left[i]; column++) {
          boolean in = row >= 0 && row < rows && column >= 0 && column < columns;
          boolean gone = !in || !map.stands(row * columns + column);
          left[i] = !gone || way(column - i % columns, row - i / columns) > half + 1e-6;
        }
      }
    }
    boolean[] lost = new boolean[left.length];
    for (int i = 0; i < left.length; i++) {
      lost[i] = map.stands(i);
      for (int k = 0; k < left.length && lost[i]; k++) {
        lost[i] =
            !left[k] || way(k % columns - i % columns, k / columns - i / columns) > half + 2 + 1e-6;
      }
    }
    int[] piece = GridPieces.of(lost, columns, rows);
    double longest = 0;
    for (int number = 1; number <= Arrays.stream(piece).max().orElse(0); number++) {
      int wanted = number;
      IntSummaryStatistics x = extent(piece, i -> piece[i] == wanted, i -> i % columns);
      IntSummaryStatistics y = extent(piece, i -> piece[i] == wanted, i -> i / columns);
      longest =
          Math.max(longest, Math.hypot(x.getMax() - x.getMin() + 1, y.getMax() - y.getMin() + 1));
    }
    return longest;
  }

  private static IntSummaryStatistics extent(int[] piece, IntPredicate of, IntUnaryOperator at) {
    return IntStream.range(0, piece.length).filter(of).map(at).summaryStatistics();
  }

  private static double way(int columns, int rows) {
    int across = Math.min(Math.abs(columns), Math.abs(rows));
    return Math.max(Math.abs(columns), Math.abs(rows)) - across + across * Math.sqrt(2);
  }
}
