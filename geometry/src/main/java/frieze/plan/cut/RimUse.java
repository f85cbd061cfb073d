package frieze.plan.cut;

import frieze.shop.Tool;

/**
 * How much of its rim a tool has in material along the way of one piece of work.
 *
 * @param work such as {@code recess ginkgo}
 * @param usualRad the angle that is not passed along half of the way
 * @param mostRad the largest angle
 * @param beyond where it is more than the tool may have
 */
public record RimUse(String work, Tool tool, double usualRad, double mostRad, Beyond beyond) {
  /**
   * What is beyond the tool's limit, which is lower where the cut is deeper.
   *
   * @param part of the way, 0 to 1
   * @param mostRad the largest angle there
   * @param limitRad the lowest limit that it is beyond
   * @param slowest the least part of the full feed
   */
  public record Beyond(double part, double mostRad, double limitRad, double slowest) {}

  /** Lengths of way by whole degrees. */
  public static final class Tally {
    private static final int MOST = 180;

    private final double[] byDegreeMm = new double[MOST + 1];
    private double beyondMm;
    private double beyondRad;
    private double limitRad = Math.PI;
    private double slowest = 1;

    /** Adds a stretch with an angle that may be as large as a limit, and what its feed comes to. */
    public void add(double rimRad, double lengthMm, double limit, double part) {
      byDegreeMm[(int) Math.rint(Math.toDegrees(rimRad))] += lengthMm;
      if (rimRad > limit) {
        beyondMm += lengthMm;
        beyondRad = Math.max(beyondRad, rimRad);
        limitRad = Math.min(limitRad, limit);
        slowest = Math.min(slowest, part);
      }
    }

    public void add(Tally other) {
      for (int i = 0; i <= MOST; i++) {
        byDegreeMm[i] += other.byDegreeMm[i];
      }
      beyondMm += other.beyondMm;
      beyondRad = Math.max(beyondRad, other.beyondRad);
      limitRad = Math.min(limitRad, other.limitRad);
      slowest = Math.min(slowest, other.slowest);
    }

    public RimUse of(String work, Tool tool) {
      double all = 0;
      int most = 0;
      for (int i = 0; i <= MOST; i++) {
        all += byDegreeMm[i];
        most = byDegreeMm[i] > 0 ? i : most;
      }
      int usual = 0;
      for (double sum = byDegreeMm[0]; sum < all / 2 && usual < MOST; sum += byDegreeMm[usual]) {
        usual++;
      }
      Beyond beyond = new Beyond(all > 0 ? beyondMm / all : 0, beyondRad, limitRad, slowest);
      return new RimUse(work, tool, Math.toRadians(usual), Math.toRadians(most), beyond);
    }
  }
}
