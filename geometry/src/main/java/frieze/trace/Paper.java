package frieze.trace;

/** Turns grey values into the share of ink in each pixel: 0 for paper, 1 for ink. */
final class Paper {
  private static final int BINS = 512;

  /** Brighter than white may happen after the light is evened out. */
  private static final double BRIGHTEST = 1.6;

  /** Less of a difference between ink and paper is none. */
  static final double LEAST_CONTRAST = 0.12;

  /** Noise goes beyond paper and ink; far beyond is something else. */
  private static final float SLACK = 0.3f;

  private Paper() {}

  /**
   * Evens out the light and scales what is left between paper and ink.
   *
   * @param image dark ink on light paper
   * @return the share of ink; empty contrast is told by {@link Ink#contrast}
   */
  static Ink ink(GreyImage image) {
    float[] level = Light.of(image);
    float[] out = image.values().clone();
    int[] bins = new int[BINS];
    for (int i = 0; i < out.length; i++) {
      out[i] /= Math.max(level[i], 1e-3f);
      bins[bin(out[i])]++;
    }
    int split = split(bins);
    double paper = centre(mode(bins, split, BINS));
    double dark = centre(mode(bins, 0, split));
    double contrast = (paper - dark) / paper;
    if (contrast > 0) {
      double scale = 1 / (paper - dark);
      for (int i = 0; i < out.length; i++) {
        float share = (float) ((paper - out[i]) * scale);
        out[i] = Math.max(-SLACK, Math.min(1 + SLACK, share));
      }
    }
    return new Ink(new GreyImage(image.width(), image.height(), out), contrast);
  }

  /** The share of ink, and how much darker than paper it is (0 .. 1). */
  record Ink(GreyImage share, double contrast) {}

  private static int bin(double value) {
    return Math.max(0, Math.min(BINS - 1, (int) (value / BRIGHTEST * BINS)));
  }

  private static double centre(double bin) {
    return (bin + 0.5) * BRIGHTEST / BINS;
  }

  /** The threshold with the largest variance between the classes. Source: Otsu, 1979. */
  static int split(int[] bins) {
    double total = 0;
    double moment = 0;
    for (int i = 0; i < bins.length; i++) {
      total += bins[i];
      moment += (double) i * bins[i];
    }
    double below = 0;
    double belowMoment = 0;
    double best = -1;
    int first = 0;
    int last = 0;
    for (int i = 0; i < bins.length - 1; i++) {
      below += bins[i];
      belowMoment += (double) i * bins[i];
      double above = total - below;
      if (below == 0 || above == 0) {
        continue;
      }
      double apart = belowMoment / below - (moment - belowMoment) / above;
      double between = below * above * apart * apart;
      if (between > best) {
        best = between;
        first = i;
      }
      if (between >= best * (1 - 1e-12)) {
        last = i;
      }
    }
    return (first + last) / 2 + 1;
  }

  /** The mean of the densest part of a histogram, one twentieth of it wide; NaN if it is empty. */
  private static double mode(int[] bins, int from, int to) {
    int width = BINS / 40;
    long most = -1;
    int at = from;
    for (int i = from; i < to; i++) {
      long sum = 0;
      for (int k = Math.max(from, i - width); k <= Math.min(to - 1, i + width); k++) {
        sum += bins[k];
      }
      if (sum > most) {
        most = sum;
        at = i;
      }
    }
    double sum = 0;
    double moment = 0;
    for (int k = Math.max(from, at - width); k <= Math.min(to - 1, at + width); k++) {
      sum += bins[k];
      moment += (double) k * bins[k];
    }
    return moment / sum;
  }
}
