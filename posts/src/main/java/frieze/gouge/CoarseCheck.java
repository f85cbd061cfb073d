package frieze.gouge;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.field.StockField;
import frieze.field.SweptMoves;
import frieze.field.TwoThreads;
import java.util.List;

/**
 * Compares every cell of a field with what the wishes permit and ask for.
 *
 * <p>The field is worked in square blocks; each wish is asked only about the cells near it.
 */
final class CoarseCheck {
  private static final int BLOCK = 512;
  private static final double MICROMETRES = 1000;

  /** A place with room for the axis has a cell with room this near, in cells. */
  private static final double FAR_CELLS = 2;

  private final List<Wish> wishes;
  private final StockField field;
  private final SweptMoves moves;
  private final GougeCheck.Settings settings;
  private final short[] offences;

  CoarseCheck(List<Wish> wishes, StockField field, SweptMoves moves, GougeCheck.Settings settings) {
    this.wishes = wishes;
    this.field = field;
    this.moves = moves;
    this.settings = settings;
    this.offences = new short[Math.multiplyExact(field.columns(), field.rows())];
  }

  /**
   * Does the comparison.
   *
   * @return for each cell in micrometres, row by row, how much too deep it is, or, negative, how
   *     much was left; 0 where all is well, and at most what a short holds
   */
  short[] run() {
    field.settle();
    int across = (field.columns() + BLOCK - 1) / BLOCK;
    int up = (field.rows() + BLOCK - 1) / BLOCK;
    TwoThreads.share(
        across * up, () -> block -> check(block % across * BLOCK, block / across * BLOCK));
    return offences;
  }

  private void check(int column, int row) {
    Raster block =
        new Raster(
            column,
            row,
            Math.min(BLOCK, field.columns() - column),
            Math.min(BLOCK, field.rows() - row),
            field.cellMm());
    float[] most = new float[block.size()];
    float[] least = new float[block.size()];
    for (Wish wish : wishes) {
      ask(wish, block, most, least);
    }
    for (int j = 0; j < block.rows(); j++) {
      for (int i = 0; i < block.columns(); i++) {
        int at = j * block.columns() + i;
        double depth = -field.height(column + i, row + j);
        offences[(row + j) * field.columns() + column + i] = offence(depth, most[at], least[at]);
      }
    }
  }

  private short offence(double depth, double most, double least) {
    if (depth > most + settings.depthMm()) {
      return micrometres(depth - most);
    }
    double missing = Math.min(least, field.thicknessMm()) - depth;
    return missing > settings.depthMm() ? (short) -micrometres(missing) : 0;
  }

  private static short micrometres(double mm) {
    return (short) Math.min(Short.MAX_VALUE, Math.max(1, Math.rint(mm * MICROMETRES)));
  }

  private void ask(Wish wish, Raster block, float[] most, float[] least) {
    Bounds b = wish.bounds();
    double cell = block.cellMm();
    Bounds inBlock =
        new Bounds(
            Math.max(b.minX(), block.column() * cell),
            Math.max(b.minY(), block.row() * cell),
            Math.min(b.maxX(), (block.column() + block.columns()) * cell),
            Math.min(b.maxY(), (block.row() + block.rows()) * cell));
    if (inBlock.isEmpty()) {
      return;
    }
    boolean opened = wish.openingMm() > 0;
    int halo = opened ? (int) Math.ceil(wish.reachMm() / cell) + 1 : 0;
    Raster near = Raster.of(inBlock, cell, halo);
    if (near.columns() <= 2 * halo || near.rows() <= 2 * halo) {
      return;
    }
    float[] signed = near.signedDistances(wish);
    float[] asked = opened ? distancesFromAxes(wish, near, signed) : signed;
    for (int j = halo; j < near.rows() - halo; j++) {
      for (int i = halo; i < near.columns() - halo; i++) {
        int from = j * near.columns() + i;
        int to =
            (near.row() + j - block.row()) * block.columns() + near.column() + i - block.column();
        most[to] = Math.max(most[to], (float) wish.most().depthMm(signed[from]));
        least[to] = Math.max(least[to], (float) wish.least().depthMm(asked[from]));
      }
    }
  }

  /** Distances from where the tool's axis has room to stand, or just fits and was. */
  private float[] distancesFromAxes(Wish wish, Raster near, float[] signed) {
    boolean[] axes = new boolean[signed.length];
    for (int i = 0; i < axes.length; i++) {
      axes[i] = signed[i] >= wish.openingMm() + settings.wallMm();
    }
    float[] distances = near.distancesFrom(axes);
    Stance stance = new Stance(wish, near.edges(wish), wishes, moves, settings);
    // The middle of a place that just fits may lie half a cell's diagonal from any cell's centre.
    double least = wish.openingMm() - settings.wallMm() - near.cellMm() * Math.sqrt(0.5);
    for (int i = 0; i < axes.length; i++) {
      if (signed[i] >= least && !axes[i] && distances[i] > FAR_CELLS * near.cellMm()) {
        Point centre = new Point(near.x(i % near.columns()), near.y(i / near.columns()));
        stance
            .missed(centre)
            .ifPresent(axis -> near.lowerToDistances(axis, wish.openingMm(), distances));
      }
    }
    return distances;
  }
}
