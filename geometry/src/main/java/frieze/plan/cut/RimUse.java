package frieze.plan.cut;

import frieze.shop.Tool;

/**
 * How much of its rim a tool has in material along the way of one piece of work.
 *
 * @param work such as {@code recess ginkgo}
 * @param usualRad the angle that is not passed along half of the way
 * @param mostRad the largest angle
 * @param beyondPart the part of the way where the angle is beyond the tool's limit, 0 to 1
 */
public record RimUse(String work, Tool tool, double usualRad, double mostRad, double beyondPart) {
  /** Lengths of way by whole degrees. */
  public static final class Tally {
    private static final int MOST = 180;

    private final double[] byDegreeMm = new double[MOST + 1];
    private double beyondMm;

    public void add(double rimRad, double lengthMm, boolean beyond) {
      byDegreeMm[(int) Math.rint(Math.toDegrees(rimRad))] += lengthMm;
      beyondMm += beyond ? lengthMm : 0;
    }

    public void add(Tally other) {
      for (int i = 0; i <= MOST; i++) {
        byDegreeMm[i] += other.byDegreeMm[i];
      }
      beyondMm += other.beyondMm;
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
      double beyond = all > 0 ? beyondMm / all : 0;
      return new RimUse(work, tool, Math.toRadians(usual), Math.toRadians(most), beyond);
    }
  }
}
