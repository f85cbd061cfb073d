package frieze.trace;

/** Smooths a picture with a Gaussian; beyond the picture its border goes on. */
final class Blur {
  /** The kernel ends where less than a thousandth of it is left. */
  private static final double REACH = 3.5;

  private Blur() {}

  static GreyImage gaussian(GreyImage image, double sigmaPx) {
    float[] kernel = kernel(sigmaPx);
    int w = image.width();
    int h = image.height();
    float[] out = new float[w * h];
    float[] line = new float[w];
    float[] from = image.values();
    for (int y = 0; y < h; y++) {
      System.arraycopy(from, y * w, line, 0, w);
      alongRow(line, kernel, out, y * w);
    }
    alongColumns(out, w, h, kernel);
    return new GreyImage(w, h, out);
  }

  private static float[] kernel(double sigma) {
    double[] exact = weights(sigma);
    float[] kernel = new float[exact.length];
    for (int i = 0; i < kernel.length; i++) {
      kernel[i] = (float) exact[i];
    }
    return kernel;
  }

  /** The weights of a pixel and of those at 1, 2 and more on either side; together they are 1. */
  static double[] weights(double sigma) {
    int reach = Math.max(1, (int) Math.ceil(REACH * sigma));
    double[] weights = new double[reach + 1];
    double sum = 0;
    for (int i = 0; i <= reach; i++) {
      weights[i] = StrictMath.exp(-i * i / (2 * sigma * sigma));
      sum += i == 0 ? weights[i] : 2 * weights[i];
    }
    for (int i = 0; i <= reach; i++) {
      weights[i] /= sum;
    }
    return weights;
  }

  private static void alongRow(float[] line, float[] kernel, float[] out, int at) {
    int n = line.length;
    for (int i = 0; i < n; i++) {
      float sum = kernel[0] * line[i];
      for (int k = 1; k < kernel.length; k++) {
        sum += kernel[k] * (line[Math.max(0, i - k)] + line[Math.min(n - 1, i + k)]);
      }
      out[at + i] = sum;
    }
  }

  /** Smooths in place and row by row: the rows above are kept as they were. */
  private static void alongColumns(float[] values, int w, int h, float[] kernel) {
    int reach = kernel.length - 1;
    float[][] above = new float[reach + 1][w];
    for (int y = 0; y < h; y++) {
      System.arraycopy(values, y * w, above[y % (reach + 1)], 0, w);
      float[] here = above[y % (reach + 1)];
      for (int x = 0; x < w; x++) {
        values[y * w + x] = kernel[0] * here[x];
      }
      for (int k = 1; k <= reach; k++) {
        float[] before = above[Math.max(0, y - k) % (reach + 1)];
        int below = Math.min(h - 1, y + k);
        boolean last = below == y;
        for (int x = 0; x < w; x++) {
          float after = last ? here[x] : values[below * w + x];
          values[y * w + x] += kernel[k] * (before[x] + after);
        }
      }
    }
  }
}
