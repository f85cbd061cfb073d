package frieze.sheet;

import frieze.field.DepthMap;

/**
 * Draws the simulated stock as a picture seen from above.
 *
 * <p>Light falls from the upper left at a low angle; recesses also darken where walls hide the sky.
 * The wood tone is a fixed one, without grain, so that nothing in the picture is not in the stock.
 */
final class Shading {
  /** How steep a slope looks; walls are as steep as the cells allow. */
  private static final double RELIEF = 0.9;

  private static final double[] LIGHT = unit(-0.55, 0.62, 0.78);

  /** Shares of the light; a flat face gets all of it. */
  private static final double AMBIENT = 0.40;

  private static final double DIFFUSE = 0.60;

  /** What the deepest floor keeps of the light. */
  private static final double DEEPEST_KEEPS = 0.66;

  /** How far a wall's shade reaches, in cells, and how much of the light it may take. */
  private static final int SHADE_CELLS = 7;

  private static final double SHADE_MOST = 0.38;

  private static final int[][] WAYS = {
    {-1, 1}, {-1, 0}, {0, 1}, {1, 0}, {0, -1}, {1, 1}, {-1, -1}, {1, -1}
  };

  private static final double[] WOOD = {233, 208, 168};
  private static final double[] STEEL = {176, 182, 188};
  private static final int THROUGH = 0x4b4640;
  private static final int WHITE = 0xffffff;

  /** Rows of cells between two pictures in one. */
  private static final int GAP_ROWS = 12;

  /** What of the thickness counts as cut through. */
  private static final double THROUGH_SHARE = 0.999;

  private final DepthMap map;
  private final double thicknessMm;
  private final double deepestMm;

  /** The surface as it is lit: as the map, with a hole as deep as the stock. */
  private final float[] litMm;

  /**
   * Takes a stock's depths.
   *
   * @param thicknessMm a depth as large as this is a hole
   * @param deepestMm what is deeper than this and no hole looks like this deep
   */
  Shading(DepthMap map, double thicknessMm, double deepestMm) {
    this.map = map;
    this.thicknessMm = thicknessMm;
    this.deepestMm = deepestMm;
    this.litMm = lit(map, thicknessMm);
  }

  private static float[] lit(DepthMap map, double thicknessMm) {
    float[] lit = new float[map.columns() * map.rows()];
    for (int row = 0, k = 0; row < map.rows(); row++) {
      for (int column = 0; column < map.columns(); column++, k++) {
        float depth = map.depthMm(column, row);
        lit[k] = depth >= thicknessMm * THROUGH_SHARE ? (float) thicknessMm : depth;
      }
    }
    return lit;
  }

  /** The depths of any simulated stock, told apart down to its deepest floor that is no hole. */
  static Shading of(DepthMap map, double thicknessMm) {
    double deepest = 0;
    for (int row = 0; row < map.rows(); row++) {
      for (int column = 0; column < map.columns(); column++) {
        double depth = map.depthMm(column, row);
        deepest = depth < thicknessMm * THROUGH_SHARE ? Math.max(deepest, depth) : deepest;
      }
    }
    return new Shading(map, thicknessMm, deepest > 0 ? deepest : thicknessMm);
  }

  /** Takes a stock's depths; the whole thickness is the deepest. */
  Shading(DepthMap map, double thicknessMm) {
    this(map, thicknessMm, thicknessMm);
  }

  /** The depths of a panel's stock, told apart down to the deepest floor or line asked for. */
  static Shading of(PanelFacts panel, DepthMap map) {
    double thickness = panel.setup().stock().thinnestMm();
    return new Shading(map, thickness, Depths.deepestMm(panel.design().work(), thickness));
  }

  private static double[] unit(double x, double y, double z) {
    double norm = Math.sqrt(x * x + y * y + z * z);
    return new double[] {x / norm, y / norm, z / norm};
  }

  private boolean isThrough(int column, int row) {
    return map.depthMm(column, row) >= thicknessMm * THROUGH_SHARE;
  }

  /** The deepest floor that is told apart from deeper ones, in millimetres. */
  double deepestMm() {
    return deepestMm;
  }

  /** The stock in a wood tone, or in a grey one for steel, as PNG. */
  byte[] relief(boolean steel) {
    double[] tone = steel ? STEEL : WOOD;
    return png((column, row) -> isThrough(column, row) ? THROUGH : shaded(tone, column, row));
  }

  /** The depths as colours, deep is dark, as PNG; holes are white. */
  byte[] depths() {
    return png(this::depthColour);
  }

  /** Both pictures in one, the stock above its depths, as PNG. */
  byte[] reliefAndDepths(boolean steel) {
    double[] tone = steel ? STEEL : WOOD;
    int rows = map.rows();
    return Png.write(
        map.columns(),
        2 * rows + GAP_ROWS,
        (x, y) -> {
          if (y < rows) {
            return isThrough(x, rows - 1 - y) ? THROUGH : shaded(tone, x, rows - 1 - y);
          }
          return y < rows + GAP_ROWS ? WHITE : depthColour(x, 2 * rows + GAP_ROWS - 1 - y);
        });
  }

  private int depthColour(int column, int row) {
    return isThrough(column, row) ? WHITE : Cividis.rgb(1 - map.depthMm(column, row) / deepestMm);
  }

  private int shaded(double[] tone, int column, int row) {
    double depth = map.depthMm(column, row);
    double dx = slope(column - 1, row, column + 1, row);
    double dy = slope(column, row - 1, column, row + 1);
    double norm = Math.sqrt(dx * dx + dy * dy + 1);
    double lit = (dx * LIGHT[0] + dy * LIGHT[1] + LIGHT[2]) / (norm * LIGHT[2]);
    double light = AMBIENT + DIFFUSE * Math.max(0, lit);
    light *= 1 - (1 - DEEPEST_KEEPS) * Math.min(1, depth / deepestMm);
    light *= 1 - SHADE_MOST * hidden(column, row, depth);
    int rgb = 0;
    for (double part : tone) {
      rgb = rgb << 8 | (int) Math.round(Math.min(255, part * light));
    }
    return rgb;
  }

  /** Minus the slope of the surface, from one cell to another two cells on, times the relief. */
  private double slope(int c0, int r0, int c1, int r1) {
    double rise = depthAt(c1, r1) - depthAt(c0, r0);
    return RELIEF * rise / (2 * map.cellMm());
  }

  private double depthAt(int column, int row) {
    int c = Math.min(map.columns() - 1, Math.max(0, column));
    int r = Math.min(map.rows() - 1, Math.max(0, row));
    return litMm[r * map.columns() + c];
  }

  /** How much of the sky the walls near a cell hide, from 0 to 1. */
  private double hidden(int column, int row, double depth) {
    if (depth <= 0) {
      return 0; // Nothing stands above the untouched top.
    }
    double sum = 0;
    for (int[] way : WAYS) {
      double steepest = 0;
      for (int k = 1; k <= SHADE_CELLS; k += 2) {
        double above = depth - depthAt(column + k * way[0], row + k * way[1]);
        steepest = Math.max(steepest, above / (k * map.cellMm()));
      }
      sum += Math.min(1, steepest / 2);
    }
    return sum / WAYS.length;
  }

  private interface Colour {
    int at(int column, int row);
  }

  private byte[] png(Colour colour) {
    int top = map.rows() - 1;
    return Png.write(map.columns(), map.rows(), (x, y) -> colour.at(x, top - y));
  }
}
