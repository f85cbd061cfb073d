package frieze.dryrun.scene;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.fixtures.Seeds;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class GridPiecesTest {
  /** Joins neighbours one by one, then numbers the joined sets by their first squares. */
  private static int[] byJoining(boolean[] stands, int columns) {
    int[] parent = new int[stands.length];
    for (int i = 0; i < parent.length; i++) {
      parent[i] = i;
      if (i % columns > 0 && stands[i] && stands[i - 1]) {
        parent[root(parent, i)] = root(parent, i - 1);
      }
      if (i >= columns && stands[i] && stands[i - columns]) {
        parent[root(parent, i)] = root(parent, i - columns);
      }
    }
    Map<Integer, Integer> number = new HashMap<>();
    int[] piece = new int[stands.length];
    for (int i = 0; i < parent.length; i++) {
      if (stands[i]) {
        int root = root(parent, i);
        number.putIfAbsent(root, number.size() + 1);
        piece[i] = number.get(root);
      }
    }
    return piece;
  }

  private static int root(int[] parent, int of) {
    int at = of;
    while (parent[at] != at) {
      at = parent[at];
    }
    return at;
  }

  @Test
  void pieces_are_what_joining_neighbours_makes() {
    SplittableRandom random = Seeds.random(505);
    for (int i = 0; i < 150; i++) {
      int columns = random.nextInt(1, 14);
      int rows = random.nextInt(1, 11);
      boolean[] stands = new boolean[columns * rows];
      for (int k = 0; k < stands.length; k++) {
        stands[k] = random.nextInt(5) < 3;
      }
      assertThat(GridPieces.of(stands, columns, rows))
          .as("%s, %d columns, seed %d", Arrays.toString(stands), columns, Seeds.seed(505))
          .isEqualTo(byJoining(stands, columns));
    }
  }

  @Test
  void a_spiral_is_one_piece() {
    boolean[] stands = {
      true, true, true, true, true, //
      false, false, false, false, true, //
      true, true, true, false, true, //
      true, false, false, false, true, //
      true, true, true, true, true
    };
    assertThat(Arrays.stream(GridPieces.of(stands, 5, 5)).max()).hasValue(1);
  }
}
