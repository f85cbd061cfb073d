package frieze.dryrun.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.fixtures.Seeds;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ChamferDistanceTest {
  /** The shortest way of steps along and across: the shorter side across, the rest along. */
  private static double way(int columns, int rows) {
    int across = Math.min(Math.abs(columns), Math.abs(rows));
    return Math.max(Math.abs(columns), Math.abs(rows)) - across + across * Math.sqrt(2);
  }

  private static double nearest(boolean[] grid, int columns, int rows, int at, boolean outside) {
    double least = Double.POSITIVE_INFINITY;
    for (int row = -1; row <= rows; row++) {
      for (int column = -1; column <= columns; column++) {
        boolean in = row >= 0 && row < rows && column >= 0 && column < columns;
        if (in ? !grid[row * columns + column] : outside) {
          least = Math.min(least, way(column - at % columns, row - at / columns));
        }
      }
    }
    return least;
  }

  @Test
  void each_square_has_the_shortest_way_to_one_that_is_false() {
    SplittableRandom random = Seeds.random(503);
    for (int i = 0; i < 150; i++) {
      int columns = random.nextInt(1, 9);
      int rows = random.nextInt(1, 7);
      int gaps = random.nextInt(1, 12);
      boolean outside = i % 2 == 0;
      boolean[] grid = new boolean[columns * rows];
      for (int k = 0; k < grid.length; k++) {
        grid[k] = random.nextInt(gaps) != 0;
      }
      float[] distance =
          outside
              ? ChamferDistance.toFalse(grid, columns, rows)
              : ChamferDistance.toFalse(grid, columns, rows, false);
      assertThat(distance).hasSize(grid.length);
      for (int k = 0; k < grid.length; k++) {
        double expected = nearest(grid, columns, rows, k, outside);
        assertThat(Math.min(1e9, distance[k]))
            .as("square %d, %d columns, grid %d, seed %d", k, columns, i, Seeds.seed(503))
            .isCloseTo(Math.min(1e9, expected), within(1e-5));
      }
    }
  }
}
