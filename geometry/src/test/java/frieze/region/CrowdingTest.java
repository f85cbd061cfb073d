package frieze.region;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Grids of straight lines, whose crossings are counted by hand. */
class CrowdingTest {
  private static final long ANY = Long.MAX_VALUE;

  private static List<List<Point>> grid(int rows, int columns) {
    List<List<Point>> lines = new ArrayList<>();
    for (int i = 0; i < rows; i++) {
      lines.add(List.of(new Point(-1, i), new Point(columns, i + 0.25), new Point(columns, i)));
    }
    for (int i = 0; i < columns; i++) {
      lines.add(List.of(new Point(i, -1), new Point(i + 0.25, rows)));
    }
    return lines;
  }

  @Test
  void a_grid_crosses_as_often_as_it_has_rows_times_columns() {
    assertThat(Crowding.isBeyond(new Crowding.Limits(20 * 30, ANY), grid(20, 30))).isFalse();
    assertThat(Crowding.isBeyond(new Crowding.Limits(20 * 30 - 1, ANY), grid(20, 30))).isTrue();
  }

  @Test
  void lines_that_only_meet_do_not_cross() {
    List<Point> line = new ArrayList<>();
    for (int i = 0; i < 1000; i++) {
      line.add(new Point(i % 2, i));
    }
    line.add(line.get(0));
    assertThat(Crowding.isBeyond(new Crowding.Limits(0, ANY), List.of(line, line.subList(3, 9))))
        .isTrue();
    assertThat(Crowding.isBeyond(new Crowding.Limits(0, ANY), List.of(line.subList(0, 1000))))
        .isFalse();
  }

  @Test
  void lines_side_by_side_are_counted_as_pairs() {
    List<List<Point>> lines = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      lines.add(List.of(new Point(i * 0.001, 0), new Point(100 + i * 0.001, 100)));
    }
    assertThat(Crowding.isBeyond(new Crowding.Limits(0, 100 * 99), lines)).isFalse();
    assertThat(Crowding.isBeyond(new Crowding.Limits(0, 100 * 99 - 1), lines)).isTrue();
  }
}
