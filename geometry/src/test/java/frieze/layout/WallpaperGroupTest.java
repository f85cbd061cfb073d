package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The seventeen groups, exactly: all arithmetic is in whole numbers. Multiplicities, orders of
 * rotation, mirrors and glides as in the International Tables for Crystallography, volume A (from
 * memory).
 */
class WallpaperGroupTest {
  private static final int SPAN = 2;

  private static boolean isCentred(WallpaperGroup group) {
    return group.cell() == WallpaperGroup.Cell.CENTRED;
  }

  @ParameterizedTest
  @EnumSource
  void two_operations_one_after_the_other_are_one_of_the_group(WallpaperGroup group) {
    Set<PlaneSymmetry> all = new HashSet<>(group.operations());
    assertThat(all).hasSameSizeAs(group.operations());
    assertThat(group.operations().get(0)).isEqualTo(new PlaneSymmetry(1, 0, 0, 1, 0, 0));
    for (PlaneSymmetry one : all) {
      for (PlaneSymmetry two : all) {
        assertThat(all).as("%s: %s then %s", group, one, two).contains(one.then(two));
      }
    }
  }

  /** The metric of the cell is unchanged by each operation: lengths are kept. */
  @ParameterizedTest
  @EnumSource
  void every_operation_keeps_lengths(WallpaperGroup group) {
    int[][] metrics =
        switch (group.cell()) {
          case OBLIQUE -> new int[][] {{2, 1, 5}, {3, -1, 2}};
          case RECTANGLE, CENTRED -> new int[][] {{2, 0, 5}, {3, 0, 1}};
          case SQUARE -> new int[][] {{1, 0, 1}};
          case HEXAGON -> new int[][] {{2, -1, 2}};
        };
    for (int[] g : metrics) {
      for (PlaneSymmetry s : group.operations()) {
        int aa = g[0] * s.xx() * s.xx() + 2 * g[1] * s.xx() * s.yx() + g[2] * s.yx() * s.yx();
        int bb = g[0] * s.xy() * s.xy() + 2 * g[1] * s.xy() * s.yy() + g[2] * s.yy() * s.yy();
        int ab =
            g[0] * s.xx() * s.xy()
                + g[1] * (s.xx() * s.yy() + s.xy() * s.yx())
                + g[2] * s.yx() * s.yy();
        assertThat(List.of(aa, ab, bb)).as("%s %s", group, s).containsExactly(g[0], g[1], g[2]);
      }
    }
  }

  @ParameterizedTest
  @CsvSource({
    "p1, 1, 1, 0, 0",
    "p2, 2, 2, 0, 0",
    "pm, 2, 1, 1, 0",
    "pg, 2, 1, 0, 1",
    "cm, 4, 1, 1, 1",
    "p2mm, 4, 2, 2, 0",
    "p2mg, 4, 2, 1, 1",
    "p2gg, 4, 2, 0, 2",
    "c2mm, 8, 2, 2, 2",
    "p4, 4, 4, 0, 0",
    "p4mm, 8, 4, 4, 2",
    "p4gm, 8, 4, 2, 4",
    "p3, 3, 3, 0, 0",
    "p3m1, 6, 3, 3, 3",
    "p31m, 6, 3, 3, 3",
    "p6, 6, 6, 0, 0",
    "p6mm, 12, 6, 6, 6"
  })
  void motifs_turns_mirrors_and_glides_are_those_of_the_tables(
      String name, int motifs, int turn, int mirrors, int glides) {
    WallpaperGroup group = WallpaperGroup.named(name).orElseThrow();
    assertThat(group.operations()).hasSize(motifs);
    assertThat(group.operations().stream().mapToInt(WallpaperGroupTest::order).max().orElse(0))
        .isEqualTo(turn);
    assertThat(group.operations().stream().filter(s -> reflects(group, s, true)).count())
        .as("mirrors")
        .isEqualTo(mirrors);
    assertThat(group.operations().stream().filter(s -> reflects(group, s, false)).count())
        .as("glides")
        .isEqualTo(glides);
  }

  /** The order of a turn; 1 for a mirror. From its trace: 2 cos(360 degrees / order). */
  private static int order(PlaneSymmetry s) {
    if (s.determinant() < 0) {
      return 1;
    }
    return switch (s.xx() + s.yy()) {
      case 2 -> 1;
      case -2 -> 2;
      case -1 -> 3;
      case 0 -> 4;
      case 1 -> 6;
      default -> throw new AssertionError("no lattice has such a turn: " + s);
    };
  }

  /**
   * Whether some lattice translation makes an operation a mirror, or else a glide by less than a
   * lattice translation. What it moves along its axis is half of (1 + M) t: four times that is
   * whole.
   */
  private static boolean reflects(WallpaperGroup group, PlaneSymmetry s, boolean mirror) {
    if (s.determinant() > 0) {
      return false;
    }
    for (int i = -SPAN; i <= SPAN; i++) {
      for (int j = -SPAN; j <= SPAN; j++) {
        int x = s.xHalves() + 2 * i;
        int y = s.yHalves() + 2 * j;
        int along = (1 + s.xx()) * x + s.xy() * y;
        int across = s.yx() * x + (1 + s.yy()) * y;
        boolean still = along == 0 && across == 0;
        boolean whole = along % 4 == 0 && across % 4 == 0;
        boolean half = Math.abs(along % 4) == 2 && Math.abs(across % 4) == 2;
        if (mirror ? still : !whole && !(isCentred(group) && half)) {
          return true;
        }
      }
    }
    return false;
  }

  /** Points in sixths of the cell: on centres of rotation, fewer images coincide with others. */
  @ParameterizedTest
  @CsvSource({
    "p2, 3, 3, 1",
    "p4, 0, 0, 1",
    "p4, 3, 3, 1",
    "p4, 3, 0, 2",
    "p6, 0, 0, 1",
    "p6, 2, 4, 2",
    "p6, 3, 0, 3",
    "p3m1, 0, 0, 1",
    "p3m1, 2, 4, 1",
    "p3m1, 4, 2, 1",
    "p31m, 0, 0, 1",
    "p31m, 2, 4, 2",
    "p6mm, 2, 4, 2",
    "p6mm, 1, 0, 6"
  })
  void special_points_have_the_images_of_the_tables(String name, int x, int y, int images) {
    Set<List<Integer>> found = new HashSet<>();
    for (PlaneSymmetry s : WallpaperGroup.named(name).orElseThrow().operations()) {
      found.add(
          List.of(
              Math.floorMod(s.xx() * x + s.xy() * y + 3 * s.xHalves(), 6),
              Math.floorMod(s.yx() * x + s.yy() * y + 3 * s.yHalves(), 6)));
    }
    assertThat(found).hasSize(images);
  }

  @Test
  void every_name_means_one_group() {
    Set<String> seen = new HashSet<>();
    for (WallpaperGroup group : WallpaperGroup.values()) {
      for (String name : group.names()) {
        assertThat(seen.add(name)).as(name).isTrue();
        assertThat(WallpaperGroup.named(name.toUpperCase(java.util.Locale.ROOT))).hasValue(group);
      }
    }
    assertThat(WallpaperGroup.values()).hasSize(17);
  }
}
