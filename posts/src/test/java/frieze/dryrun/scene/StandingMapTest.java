package frieze.dryrun.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.Bench;
import frieze.field.StockField;
import frieze.fixtures.Seeds;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Stock;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class StandingMapTest {
  private static StockField field(double lengthMm, double widthMm, double cellMm) {
    return StockField.of(
        new Stock(Bench.STOCK.material(), lengthMm, widthMm, List.of(6.0), false), cellMm);
  }

  private static void plunge(StockField field, double x, double y, double z, double diameterMm) {
    field.cut(
        new Motion.Straight(new Position(x, y, 1), new Position(x, y, z)),
        new ToolShape.Flat(diameterMm));
  }

  @Test
  void a_square_stands_unless_less_than_a_hundredth_of_a_millimetre_is_left() {
    StockField field = field(3.5, 2.5, 0.5);
    plunge(field, 0.75, 0.25, -5.98, 0.2);
    plunge(field, 1.25, 0.25, -5.995, 0.2);
    plunge(field, 1.75, 0.25, -6, 0.2);
    plunge(field, 3.25, 2.25, -7, 0.2);
    StandingMap map = StandingMap.of(field);
    assertThat(map.columns()).isEqualTo(7);
    assertThat(map.rows()).isEqualTo(5);
    assertThat(map.squareMm()).isEqualTo(0.5);
    for (int i = 0; i < 35; i++) {
      assertThat(map.stands(i)).as("square %d", i).isEqualTo(i != 2 && i != 3 && i != 34);
    }
  }

  @Test
  void a_place_is_in_its_square_or_in_the_nearest() {
    StandingMap map = StandingMap.of(field(3.5, 2.5, 0.5));
    assertThat(map.indexAt(0, 0)).isEqualTo(0);
    assertThat(map.indexAt(1.75, 1.25)).isEqualTo(2 * 7 + 3);
    assertThat(map.indexAt(1.5, 1)).isEqualTo(2 * 7 + 3);
    assertThat(map.indexAt(1.499, 0.999)).isEqualTo(7 + 2);
    assertThat(map.indexAt(3.5, 2.5)).isEqualTo(34);
    assertThat(map.indexAt(-9, 99)).isEqualTo(4 * 7);
    assertThat(map.indexAt(99, -9)).isEqualTo(6);
  }

  @Test
  void pieces_that_have_a_square_in_the_outermost_rows_or_columns_reach_the_edge() {
    SplittableRandom random = Seeds.random(506);
    for (int i = 0; i < 15; i++) {
      StockField field = field(9, 6, 1);
      for (int at = 0; at < 54; at++) {
        if (random.nextInt(5) < 2) {
          plunge(field, at % 9 + 0.5, at / 9 + 0.5, -6.2, 0.2);
        }
      }
      StandingMap map = StandingMap.of(field);
      int[] piece = map.pieces();
      boolean[] reaches = map.reachesEdge(piece);
      for (int at = 0; at < 54; at++) {
        assertThat(piece[at] > 0).isEqualTo(map.stands(at));
      }
      for (int number = 1; number < reaches.length; number++) {
        boolean seen = false;
        for (int at = 0; at < 54; at++) {
          boolean outermost = at < 9 || at >= 45 || at % 9 == 0 || at % 9 == 8;
          seen |= outermost && piece[at] == number;
        }
        assertThat(reaches[number]).as("piece %d, seed %d", number, 506).isEqualTo(seen);
      }
    }
  }

  @Test
  void a_fine_field_is_looked_at_in_larger_squares() {
    StockField field = field(150.1, 80.1, 0.1);
    plunge(field, 60, 70, -6.2, 6.35);
    plunge(field, 150, 80, -6.2, 1);
    StandingMap map = StandingMap.of(field);
    assertThat(map.columns()).isEqualTo(751);
    assertThat(map.rows()).isEqualTo(401);
    assertThat(map.squareMm()).isCloseTo(0.2, within(1e-12));
    boolean[] stands = new boolean[751 * 401];
    for (int row = 0; row < 801; row++) {
      for (int column = 0; column < 1501; column++) {
        stands[row / 2 * 751 + column / 2] |= field.height(column, row) > -6;
      }
    }
    int gone = 0;
    for (int i = 0; i < stands.length; i++) {
      gone += map.stands(i) == stands[i] ? 0 : 1;
    }
    assertThat(gone).isEqualTo(0);
    assertThat(map.stands(map.indexAt(60, 70))).isFalse();
  }
}
