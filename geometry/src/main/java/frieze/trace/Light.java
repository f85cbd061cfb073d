package frieze.trace;

import java.util.Arrays;

/**
 * Estimates how bright the paper is at each pixel, under ink as well.
 *
 * <p>A quadratic surface through the bright parts of a grid of blocks, then the median of the paper
 * of each block against it; blocks without enough paper take theirs from their neighbours.
 */
final class Light {
  /** About so many blocks along the shorter side. */
  private static final int BLOCKS = 24;

  private static final int SMALLEST_BLOCK = 16;

  /** About so many pixels across a block are enough to tell its light. */
  private static final int MOST_ACROSS = 48;

  private static final int TERMS = 6;
  private static final int ROUNDS = 12;

  /** Darker than this part of the surface is not paper. */
  private static final double PAPER = 0.7;

  /** A block with less of its area in paper has no say. */
  private static final double ENOUGH = 0.2;

  private static final double DARKEST = 0.02;
  private static final int RELAXATIONS = 400;

  private final GreyImage image;
  private final int size;
  private final int columns;
  private final int rows;

  private Light(GreyImage image) {
    this.image = image;
    this.size = Math.max(SMALLEST_BLOCK, Math.min(image.width(), image.height()) / BLOCKS);
    this.columns = (image.width() + size - 1) / size;
    this.rows = (image.height() + size - 1) / size;
  }

  static float[] of(GreyImage image) {
    Light light = new Light(image);
    double[] bright = light.percentiles(0.9, new double[0]);
    double[] surface = light.surface(bright);
    double[] wide = new double[bright.length];
    for (int b = 0; b < wide.length; b++) {
      wide[b] = light.value(surface, b);
    }
    double[] medians = light.percentiles(0.5, wide);
    double[] ratio = light.filled(medians, wide);
    return light.spread(surface, ratio);
  }

  /** A percentile of each block, of its paper only if that is known; NaN without enough. */
  private double[] percentiles(double share, double[] paper) {
    double[] out = new double[columns * rows];
    float[] v = image.values();
    float[] kept = new float[size * size];
    int stride = Math.max(1, size / MOST_ACROSS);
    for (int b = 0; b < out.length; b++) {
      int x0 = b % columns * size;
      int y0 = b / columns * size;
      int x1 = Math.min(image.width(), x0 + size);
      int y1 = Math.min(image.height(), y0 + size);
      float least = paper.length == 0 ? -1 : (float) (paper[b] * PAPER);
      int count = 0;
      int looked = 0;
      for (int y = y0; y < y1; y += stride) {
        for (int x = x0; x < x1; x += stride) {
          looked++;
          float value = v[y * image.width() + x];
          if (value > least) {
            kept[count++] = value;
          }
        }
      }
      boolean enough = count > ENOUGH * looked;
      out[b] = enough ? percentile(kept, count, share) : Double.NaN;
    }
    return out;
  }

  private static double percentile(float[] kept, int count, double share) {
    Arrays.sort(kept, 0, count);
    return kept[Math.min(count - 1, (int) (share * count))];
  }

  private static double ends(double at, int count) {
    return count < 2 ? 0 : 2 * at / (count - 1) - 1;
  }

  private double[] terms(int b) {
    double x = ends(b % columns, columns);
    int row = b / columns;
    double y = ends(row, rows);
    return new double[] {1, x, y, x * x, x * y, y * y};
  }

  private double value(double[] surface, int b) {
    int row = b / columns;
    return value(surface, b % columns, row);
  }

  private double value(double[] s, double column, double row) {
    double x = ends(column, columns);
    double y = ends(row, rows);
    double sum = s[0] + x * (s[1] + x * s[3] + y * s[4]) + y * (s[2] + y * s[5]);
    return Math.max(sum, DARKEST);
  }

  /** Weighted least squares that trusts the brighter blocks, and forgets those that are ink. */
  private double[] surface(double[] bright) {
    double[] surface = new double[TERMS];
    for (int round = 0; round < ROUNDS; round++) {
      double[][] a = new double[TERMS][TERMS + 1];
      for (int b = 0; b < bright.length; b++) {
        double now = round == 0 ? bright[b] : value(surface, b);
        boolean ink = round > 2 && bright[b] < PAPER * now;
        double weight = ink ? 1e-6 : bright[b] >= now - 1e-9 ? 1 : round < 4 ? 0.05 : 0.5;
        double[] t = terms(b);
        for (int i = 0; i < TERMS; i++) {
          for (int k = 0; k < TERMS; k++) {
            a[i][k] += weight * t[i] * t[k];
          }
          a[i][TERMS] += weight * t[i] * bright[b];
        }
      }
      surface = solve(a);
    }
    return surface;
  }

  /** Gaussian elimination; a term that nothing determines becomes 0. */
  static double[] solve(double[][] a) {
    int n = a.length;
    for (int p = 0; p < n; p++) {
      a[p][p] += 1e-9;
      for (int r = 0; r < n; r++) {
        if (r != p) {
          double factor = a[r][p] / a[p][p];
          for (int c = p; c <= n; c++) {
            a[r][c] -= factor * a[p][c];
          }
        }
      }
    }
    double[] x = new double[n];
    for (int i = 0; i < n; i++) {
      x[i] = a[i][n] / a[i][i];
    }
    return x;
  }

  /** Medians as parts of the surface; unknown ones by relaxation between known neighbours. */
  private double[] filled(double[] medians, double[] wide) {
    double[] ratio = new double[medians.length];
    for (int b = 0; b < ratio.length; b++) {
      ratio[b] = Double.isNaN(medians[b]) ? 1 : medians[b] / wide[b];
    }
    for (int round = 0; round < RELAXATIONS; round++) {
      for (int b = 0; b < ratio.length; b++) {
        if (Double.isNaN(medians[b])) {
          ratio[b] = neighbours(ratio, b);
        }
      }
    }
    return ratio;
  }

  private double neighbours(double[] ratio, int b) {
    int c = b % columns;
    int r = b / columns;
    double sum = 0;
    int count = 0;
    int[][] around = {{c - 1, r}, {c + 1, r}, {c, r - 1}, {c, r + 1}};
    for (int[] at : around) {
      if (at[0] >= 0 && at[1] >= 0 && at[0] < columns && at[1] < rows) {
        sum += ratio[at[1] * columns + at[0]];
        count++;
      }
    }
    return count == 0 ? ratio[b] : sum / count;
  }

  private float[] spread(double[] surface, double[] ratio) {
    int w = image.width();
    int h = image.height();
    float[] out = new float[w * h];
    for (int y = 0; y < h; y++) {
      double row = (y + 0.5) / size - 0.5;
      double yEnds = ends(row, rows);
      double constant = surface[0] + yEnds * (surface[2] + yEnds * surface[5]);
      double linear = surface[1] + yEnds * surface[4];
      double[] along = alongRow(ratio, row);
      for (int x = 0; x < w; x++) {
        double column = (x + 0.5) / size - 0.5;
        double xEnds = ends(column, columns);
        double wide = Math.max(constant + xEnds * (linear + xEnds * surface[3]), DARKEST);
        double c = Math.max(0, Math.min(columns - 1, column));
        int c0 = (int) c;
        int c1 = Math.min(columns - 1, c0 + 1);
        double part = c - c0;
        out[y * w + x] = (float) (wide * (along[c0] * (1 - part) + along[c1] * part));
      }
    }
    return out;
  }

  /** The ratios of all columns between two rows of blocks. */
  private double[] alongRow(double[] ratio, double row) {
    double r = Math.max(0, Math.min(rows - 1, row));
    int r0 = (int) r;
    int r1 = Math.min(rows - 1, r0 + 1);
    double part = r - r0;
    double[] along = new double[columns];
    for (int c = 0; c < columns; c++) {
      along[c] = ratio[r0 * columns + c] * (1 - part) + ratio[r1 * columns + c] * part;
    }
    return along;
  }
}
