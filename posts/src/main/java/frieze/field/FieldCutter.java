package frieze.field;

import frieze.curve.Bounds;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.function.Supplier;

/**
 * Cuts many sweeps into the tiles of a field on two threads.
 *
 * <p>Each tile is worked by one thread, its sweeps in their order, so that the result does not
 * depend on timing.
 */
final class FieldCutter {
  /** Below this many sweeps a second thread costs more than it saves. */
  private static final int WORTH_A_THREAD = 64;

  private final FieldGrid grid;
  private final Tile[] tiles;

  FieldCutter(FieldGrid grid, Tile[] tiles) {
    this.grid = grid;
    this.tiles = tiles;
  }

  void cut(List<Sweep> sweeps) {
    if (sweeps.size() < WORTH_A_THREAD) {
      cutFew(sweeps);
      return;
    }
    int[] starts = new int[tiles.length + 1];
    for (Sweep sweep : sweeps) {
      forTilesUnder(sweep, tile -> starts[tile + 1]++);
    }
    for (int i = 0; i < tiles.length; i++) {
      starts[i + 1] += starts[i];
    }
    int[] order = new int[starts[tiles.length]];
    int[] next = Arrays.copyOf(starts, tiles.length);
    for (int s = 0; s < sweeps.size(); s++) {
      int sweep = s;
      forTilesUnder(sweeps.get(s), tile -> order[next[tile]++] = sweep);
    }
    Supplier<IntConsumer> worker =
        () -> {
          Tile.Scratch scratch = new Tile.Scratch(grid.cellMm());
          return tile -> {
            for (int i = starts[tile]; i < starts[tile + 1]; i++) {
              tiles[tile].cut(sweeps.get(order[i]), scratch);
            }
          };
        };
    TwoThreads.share(tiles.length, worker);
  }

  void reset() {
    for (Tile tile : tiles) {
      tile.reset();
    }
  }

  /** Visits the numbers of the tiles that a sweep may meet, in their order. */
  void forTilesUnder(Sweep sweep, IntConsumer visit) {
    Bounds b = sweep.bounds();
    double tileX = Tile.SPAN * grid.cellMm();
    double tileY = Tile.ROWS * grid.cellMm();
    int firstX = (int) Math.max(0, Math.floor(b.minX() / tileX));
    int lastX = (int) Math.min(grid.tileColumns() - 1, Math.floor(b.maxX() / tileX));
    int firstY = (int) Math.max(0, Math.floor(b.minY() / tileY));
    int lastY = (int) Math.min(grid.tileRows() - 1, Math.floor(b.maxY() / tileY));
    boolean several = lastX > firstX || lastY > firstY;
    for (int ty = firstY; ty <= lastY; ty++) {
      for (int tx = firstX; tx <= lastX; tx++) {
        int number = ty * grid.tileColumns() + tx;
        if (!several || sweep.mayMeet(tiles[number].bounds())) {
          visit.accept(number);
        }
      }
    }
  }

  /** Cuts a handful without looking at all tiles. */
  private void cutFew(List<Sweep> sweeps) {
    Tile.Scratch scratch = new Tile.Scratch(grid.cellMm());
    for (Sweep sweep : sweeps) {
      forTilesUnder(sweep, tile -> tiles[tile].cut(sweep, scratch));
    }
  }
}
