package frieze.field;

import frieze.curve.Point;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Stock;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The height of the material left, over the cells of a stock, in the stock frame: origin at the
 * left front corner, height 0 on the top.
 *
 * <p>Every move lowers the cells to the exact surface that the tool sweeps; the height of a cell is
 * that at its centre. One field serves all programs of a setup, one after the other.
 *
 * <p><b>Guarantees:</b> the result does not depend on the order of the moves nor on the number of
 * threads. Heights agree with the lowest of all swept surfaces within a micrometre, up or sideways.
 *
 * <p><b>Approximation:</b> helices and arcs outside the XY plane become chords ({@link
 * Sweeps#CHORD_MM}); a wall is known to one cell. Tools do not bend, and nothing is cut by a shank
 * or a holder.
 *
 * <p><b>Cost:</b> 4 bytes a cell where something was cut. Moves are put off and cut together on two
 * threads when somebody asks; {@link #cutAndMeasure} cuts at once on one.
 */
public final class StockField {
  /** The most cells of a field of default cell size. */
  public static final long DEFAULT_CELLS = 4_000_000;

  /** No field has more cells along one side. */
  static final int MOST_CELLS = 1_000_000;

  /** A tool that passes a wall closer than this counts as not touching it. */
  public static final double GRAZE_MM = 0.01;

  /** A move shorter than this, seen from above, takes nothing of the one before along. */
  private static final double SHORTEST_TAKER_MM = 1e-3;

  private static final int MOST_PENDING = 1 << 17;

  private final FieldGrid grid;
  private final Tile[] tiles;
  private final Tile.Scratch scratch;
  private final List<Sweep> pending = new ArrayList<>();
  private Optional<LastCut> last = Optional.empty();
  private Optional<Open> open = Optional.empty();

  /** Where the last move ended, and with what tool. */
  private record LastCut(Position at, ToolShape shape, Profile profile) {}

  /** A straight move that waits to learn what of its end the next one takes along. */
  private record Open(Motion.Straight path, Profile profile, Ends.Start start) {
    StraightSweep ending(Optional<Point> onward) {
      return new StraightSweep(path.from(), path.to(), profile, new Ends(start, onward));
    }
  }

  private StockField(FieldGrid grid) {
    this.grid = grid;
    this.tiles = new Tile[grid.tileColumns() * grid.tileRows()];
    for (int i = 0; i < tiles.length; i++) {
      tiles[i] = new Tile(grid, i % grid.tileColumns(), i / grid.tileColumns());
    }
    this.scratch = new Tile.Scratch(grid.cellMm());
  }

  /** Makes an uncut field with the finest usual cell that keeps it below {@link #DEFAULT_CELLS}. */
  public static StockField of(Stock stock) {
    return of(stock, FieldGrid.defaultCellMm(stock.lengthMm(), stock.widthMm(), DEFAULT_CELLS));
  }

  /**
   * Makes an uncut field.
   *
   * @param cellMm the side of a cell
   */
  public static StockField of(Stock stock, double cellMm) {
    return new StockField(FieldGrid.of(stock, cellMm));
  }

  /** Puts the uncut stock back. */
  public void reset() {
    pending.clear();
    last = Optional.empty();
    open = Optional.empty();
    new FieldCutter(grid, tiles).reset();
  }

  public double cellMm() {
    return grid.cellMm();
  }

  /** The number of cells. */
  public long cells() {
    return grid.cells();
  }

  /** The number of cells along X. */
  public int columns() {
    return grid.columns();
  }

  /** The number of cells along Y. */
  public int rows() {
    return grid.rows();
  }

  /** The thickness that the underside is assumed at: the thickest reading. */
  public double thicknessMm() {
    return -grid.bottomMm();
  }

  /**
   * Cuts a move.
   *
   * @param path the tip's path in the stock frame
   */
  public void cut(Motion path, ToolShape shape) {
    LastCut before = last.filter(l -> l.shape().equals(shape)).orElse(null);
    Profile profile = before == null ? Profile.of(shape) : before.profile();
    boolean joined = before != null && before.at().equals(path.from());
    if (path.box().minZ() < grid.topMm()) {
      put(path, inStock(profile, path), joined);
      last = Optional.of(new LastCut(path.to(), shape, profile));
      if (pending.size() >= MOST_PENDING) {
        flush();
      }
    } else {
      last = Optional.empty();
    }
  }

  private void put(Motion path, Profile profile, boolean joined) {
    if (path instanceof Motion.Straight straight) {
      Point way = straight.to().xy().minus(straight.from().xy());
      double length = way.norm();
      boolean takesOver = joined && open.isPresent() && length > SHORTEST_TAKER_MM;
      close(takesOver ? Optional.of(way.times(1 / length)) : Optional.empty());
      Ends.Start done = joined ? Ends.Start.DONE : Ends.Start.NEW;
      open = Optional.of(new Open(straight, profile, takesOver ? Ends.Start.BEHIND_DONE : done));
    } else {
      close(Optional.empty());
      Sweeps.of(path, profile, joined, pending::add);
    }
  }

  private void close(Optional<Point> onward) {
    if (open.isPresent()) {
      pending.add(open.get().ending(onward));
      open = Optional.empty();
    }
  }

  /** Cuts a move at once and tells what it took. */
  public Met cutAndMeasure(Motion path, ToolShape shape) {
    Met met = meet(path, Profile.of(shape));
    cut(path, shape);
    return met;
  }

  /**
   * Tells what material a move would meet as the stock is now. Walls that are only grazed ({@link
   * #GRAZE_MM}) do not count.
   *
   * @param path in the stock frame
   */
  public Met materialUnder(Motion path, ToolShape shape) {
    return meet(path, Profile.of(shape).slimmer(GRAZE_MM));
  }

  private Met meet(Motion path, Profile profile) {
    if (path.box().minZ() >= grid.topMm()) {
      return Met.NOTHING;
    }
    flush();
    List<Sweep> sweeps = new ArrayList<>();
    Sweeps.of(path, inStock(profile, path), false, sweeps::add);
    Meeting meeting = new Meeting();
    FieldCutter cutter = new FieldCutter(grid, tiles);
    for (Sweep sweep : sweeps) {
      cutter.forTilesUnder(sweep, tile -> tiles[tile].measure(sweep, scratch, meeting));
    }
    return meeting.result(grid.cellMm());
  }

  /** The part of a tool that comes below the top somewhere on a path. */
  private Profile inStock(Profile profile, Motion path) {
    return profile.upTo(grid.topMm() - path.box().minZ());
  }

  private void flush() {
    close(Optional.empty());
    if (!pending.isEmpty()) {
      new FieldCutter(grid, tiles).cut(pending);
      pending.clear();
    }
  }

  /**
   * The height of the cell that holds a point, against the stock's top; negative infinity outside
   * the stock.
   */
  public double heightAtMm(double x, double y) {
    flush();
    double column = Math.floor(x / grid.cellMm());
    double row = Math.floor(y / grid.cellMm());
    if (!(column >= 0 && row >= 0 && column < grid.columns() && row < grid.rows())) {
      return Double.NEGATIVE_INFINITY;
    }
    return height((int) column, (int) row);
  }

  /** The height of a cell, by its column and row. */
  public double cellHeightMm(int column, int row) {
    flush();
    return height(column, row);
  }

  /** Cuts what was put off, so that {@link #height} tells the truth on any thread. */
  public void settle() {
    flush();
  }

  /** The height of a cell of a settled field. */
  public float height(int column, int row) {
    Tile tile = tiles[row / Tile.ROWS * grid.tileColumns() + column / Tile.SPAN];
    return tile.height(column % Tile.SPAN, row % Tile.ROWS);
  }

  /** Copies the heights of a row of cells, so that many can be read fast. */
  public void copyRow(int row, float[] into) {
    flush();
    for (int i = 0; i < grid.columns(); i += Tile.SPAN) {
      Tile tile = tiles[row / Tile.ROWS * grid.tileColumns() + i / Tile.SPAN];
      tile.copyRow(row % Tile.ROWS, into, i);
    }
  }

  /** The volume of stock that is gone, down to its underside. */
  public double removedVolumeMm3() {
    flush();
    double depths = 0;
    for (Tile tile : tiles) {
      depths += tile.removedDepths();
    }
    return depths * grid.cellMm() * grid.cellMm();
  }

  /** The depth of the deepest cell below the top; below the underside if something went through. */
  public double deepestMm() {
    flush();
    float low = (float) grid.topMm();
    for (Tile tile : tiles) {
      low = Math.min(low, tile.lowest());
    }
    return grid.topMm() - low;
  }

  /**
   * Makes a map for a picture.
   *
   * @param mostColumns the map has at most this many columns, and at most this many rows
   */
  public DepthMap depthMap(int mostColumns) {
    if (mostColumns < 1) {
      throw new IllegalArgumentException("mostColumns must be >= 1 but was " + mostColumns);
    }
    int step = Math.max(1, -Math.floorDiv(-Math.max(columns(), rows()), mostColumns));
    int width = -Math.floorDiv(-columns(), step);
    int height = -Math.floorDiv(-rows(), step);
    float[] depths = new float[width * height];
    float[] row = new float[columns()];
    float most = (float) thicknessMm();
    for (int j = 0; j < rows(); j++) {
      copyRow(j, row);
      int base = j / step * width;
      for (int i = 0; i < row.length; i++) {
        int at = base + i / step;
        depths[at] = Math.max(depths[at], Math.min(most, -row[i]));
      }
    }
    return new DepthMap(width, height, step * cellMm(), depths);
  }

  FieldGrid grid() {
    return grid;
  }
}
