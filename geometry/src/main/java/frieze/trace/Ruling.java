package frieze.trace;

import java.util.BitSet;

/**
 * Takes the printed lines of ruled or squared paper out of a picture.
 *
 * <p>A printed line is pale and runs level or upright. Where it is seen on bare paper it tells how
 * much light it takes; from there it is carried on along its direction to the ink, and the light
 * that it takes is given back.
 *
 * <p><i>Approximation:</i> a few degrees off level do not matter; an outline that runs along a
 * printed line for long is seen beside it.
 */
final class Ruling {
  /** Paler than this is the paper's grain; darker than this is ink. */
  private static final float PALEST = 0.06f;

  private static final float DARKEST = 0.5f;

  /** Pixels nearer to ink than this may be a part of its edge. */
  private static final int EDGE = 5;

  /** A printed line goes on for at least this far to both sides. */
  private static final int RUN = 8;

  /** A line is carried on no farther than this. */
  private static final int CARRY = 60;

  /** A ruled sheet has more than this part of its paper in printed lines. */
  private static final double RULED = 0.01;

  private final int w;
  private final int h;
  private final float[] values;
  private final double contrast;

  /** Paper away from ink. */
  private final BitSet bare;

  private Ruling(GreyImage ink, double contrast) {
    this.w = ink.width();
    this.h = ink.height();
    this.values = ink.values();
    this.contrast = contrast;
    this.bare = bare();
  }

  /**
   * Takes the lines out, in place.
   *
   * @param ink 0 for paper, 1 for ink
   * @param contrast how much darker than paper ink is; 0 .. 1
   */
  static void remove(GreyImage ink, double contrast) {
    Ruling ruling = new Ruling(ink, contrast);
    BitSet level = ruling.lines(ruling.w, ruling.h, 1, ruling.w);
    BitSet upright = ruling.lines(ruling.h, ruling.w, ruling.w, 1);
    double enough = RULED * ruling.bare.cardinality();
    boolean isLevel = level.cardinality() > enough;
    boolean isUpright = upright.cardinality() > enough;
    if (isLevel || isUpright) {
      float[] light = new float[ruling.values.length];
      if (isLevel) {
        ruling.carry(level, light, ruling.w, ruling.h, 1, ruling.w);
      }
      if (isUpright) {
        ruling.carry(upright, light, ruling.h, ruling.w, ruling.w, 1);
      }
      ruling.giveBack(light);
    }
  }

  private BitSet bare() {
    BitSet wide = new BitSet(values.length);
    for (int y = 0; y < h; y++) {
      for (int x = 0; x < w; x++) {
        if (values[y * w + x] > DARKEST) {
          wide.set(y * w + Math.max(0, x - EDGE), y * w + Math.min(w, x + EDGE + 1));
        }
      }
    }
    BitSet bare = new BitSet(values.length);
    bare.set(0, values.length);
    for (int i = wide.nextSetBit(0); i >= 0; i = wide.nextSetBit(i + 1)) {
      int x = i % w;
      for (int y = Math.max(0, i / w - EDGE); y <= Math.min(h - 1, i / w + EDGE); y++) {
        bare.clear(y * w + x);
      }
    }
    return bare;
  }

  /** The pale pixels of bare paper that go on to both sides, along lines of pixels. */
  private BitSet lines(int length, int count, int step, int lineStep) {
    BitSet lines = new BitSet(values.length);
    for (int line = 0; line < count; line++) {
      int run = 0;
      for (int k = 0; k <= length; k++) {
        int at = line * lineStep + k * step;
        if (k < length && (values[at] > PALEST || !bare.get(at))) {
          run++;
          continue;
        }
        if (run > 2 * RUN) {
          for (int i = at - run * step; i < at; i += step) {
            if (bare.get(i)) {
              lines.set(i);
            }
          }
        }
        run = 0;
      }
    }
    return lines;
  }

  /** Carries what the lines take from bare paper to the pixels between, along lines of pixels. */
  private void carry(BitSet lines, float[] light, int length, int count, int step, int lineStep) {
    for (int line = 0; line < count; line++) {
      int before = -1;
      for (int k = 0; k < length; k++) {
        int at = line * lineStep + k * step;
        if (!bare.get(at)) {
          continue;
        }
        float here = lines.get(at) ? values[at] : 0;
        light[at] = Math.max(light[at], here);
        if (before < k - 1) {
          float there = before < 0 ? here : taken(lines, line * lineStep + before * step);
          fill(light, line * lineStep + step * (before + 1), step, k - before - 1, there, here);
        }
        before = k;
      }
      if (before >= 0 && before < length - 1) {
        float there = taken(lines, line * lineStep + before * step);
        int from = line * lineStep + step * (before + 1);
        fill(light, from, step, length - before - 1, there, there);
      }
    }
  }

  private float taken(BitSet lines, int at) {
    return lines.get(at) ? values[at] : 0;
  }

  /** Fills a gap from both sides; no farther than a line is carried where only one shows it. */
  private static void fill(
      float[] light, int from, int step, int count, float before, float after) {
    for (int k = 0; k < count; k++) {
      int left = k + 1;
      int right = count - k;
      float value = left <= right ? before : after;
      if (Math.min(left, right) <= CARRY || (before > 0 && after > 0)) {
        light[from + k * step] = Math.max(light[from + k * step], value);
      }
    }
  }

  private void giveBack(float[] light) {
    for (int i = 0; i < values.length; i++) {
      if (light[i] > 0) {
        double seen = 1 - contrast * values[i];
        double left = Math.max(0.2, 1 - contrast * light[i]);
        values[i] = (float) ((1 - seen / left) / contrast);
      }
    }
  }
}
