package frieze.field;

import frieze.curve.Bounds;

/**
 * The space that a tool's cutting surface passes through in one move, seen from above: for each
 * point of the plane the lowest height that the surface reaches there.
 *
 * <p>A sweep is immutable and knows nothing of cells. Rows of points are asked for together because
 * a row meets it in at most two intervals, within which the height is one smooth formula.
 */
interface Sweep {

  /** The plane area outside which nothing is met. */
  Bounds bounds();

  /** False only if nothing within the rectangle is met. */
  boolean mayMeet(Bounds rectangle);

  /** The lowest height that is reached anywhere. */
  double lowestMm();

  /**
   * Finds where the line at height {@code y} meets this sweep.
   *
   * @param row receives the intervals
   */
  void intersect(double y, Row row);

  /**
   * Computes the heights at points of the row that the last {@link #intersect} was asked for; they
   * must lie within one of its intervals.
   *
   * @param y the row
   * @param columns where the points lie along X
   * @param first the first point to compute
   * @param end one past the last
   * @param heights receives the results, at the indices of the points
   */
  void heights(double y, Columns columns, int first, int end, float[] heights);

  /** The height at one point in double precision; positive infinity where nothing is met. */
  double heightAt(double x, double y);

  /** Whether all heights are {@link #lowestMm}. */
  boolean isLevelFloor();

  /** Equally spaced points along a row. */
  final class Columns {
    private final double originMm;
    private final float[] offsets;
    private final double pitchMm;
    private final float[] work;

    private Columns(double originMm, float[] offsets, double pitchMm, float[] work) {
      this.originMm = originMm;
      this.offsets = offsets;
      this.pitchMm = pitchMm;
      this.work = work;
    }

    /** Makes points at the middles of cells of which the first starts at the origin. */
    static Columns of(double originMm, int count, double pitchMm) {
      float[] offsets = new float[count];
      for (int i = 0; i < count; i++) {
        offsets[i] = (float) ((i + 0.5) * pitchMm);
      }
      return new Columns(originMm, offsets, pitchMm, new float[count]);
    }

    double originMm() {
      return originMm;
    }

    /** Distances from the origin, short so that single precision serves. */
    float[] offsets() {
      return offsets;
    }

    /**
     * Room for one number for each point, of use within one call. Rows are computed in several
     * short loops, one after the other, because the compiler makes vector code of short ones only.
     */
    float[] work() {
      return work;
    }

    /** The same pattern elsewhere, with the same room: for one thread at a time. */
    Columns at(double newOriginMm) {
      return new Columns(newOriginMm, offsets, pitchMm, work);
    }

    /** The first point at or right of {@code x}, not below 0. */
    int firstFrom(double x) {
      double i = Math.ceil((x - originMm) / pitchMm - 0.5);
      return i <= 0 ? 0 : (int) Math.min(i, offsets.length);
    }

    /** One past the last point at or left of {@code x}, not above {@code count}. */
    int endAt(double x, int count) {
      double i = Math.floor((x - originMm) / pitchMm - 0.5) + 1;
      return i <= 0 ? 0 : (int) Math.min(i, count);
    }
  }

  /** Up to two intervals of a row; those that are empty have {@code low > high}. */
  final class Row {
    double low1;
    double high1;
    double low2;
    double high2;

    void set(double low, double high) {
      low1 = low;
      high1 = high;
      low2 = Double.POSITIVE_INFINITY;
      high2 = Double.NEGATIVE_INFINITY;
    }

    void setEmpty() {
      set(Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY);
    }

    /** Takes the interval [from, to] out of the only interval set so far. */
    void remove(double from, double to) {
      if (from > to) {
        return;
      }
      low2 = Math.max(low1, to);
      high2 = high1;
      high1 = Math.min(high1, from);
    }
  }
}
