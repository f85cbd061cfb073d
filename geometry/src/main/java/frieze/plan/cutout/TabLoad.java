package frieze.plan.cutout;

import frieze.curve.Flattener;
import frieze.curve.Point;
import frieze.design.Tabs;
import frieze.diagnostic.Amounts;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.Track;
import frieze.shop.Material;
import frieze.shop.Stock;
import frieze.shop.Tool;
import java.util.List;

/**
 * How much wood tabs need so that they hold what they are to hold.
 *
 * <p>They carry the pull of the bit, k a z f / pi for a pass a deep with z flutes that advance f
 * each, because the power is k times what is removed and the rim passes it at pi D n; and the
 * weight of the part, which hangs on them when the stock is lifted. The sections of all tabs
 * together, sheared off at once, bear {@value #SAFETY} times that.
 *
 * <p>Source: the cutting pressure, the strength in shear, the weights and the margin are common
 * practice, on the careful side; no published values.
 */
public final class TabLoad {
  /** For knots, short grain, a blunt bit and jerks. */
  private static final double SAFETY = 10;

  private static final double GRAVITY_M_PER_S2 = 9.81;

  private static final double KG_PER_M3_AND_MM3 = 1e-9;

  private TabLoad() {}

  /** What is taken of a material. */
  private record Figures(double cutNPerMm2, double shearNPerMm2, double kgPerM3) {
    static Figures of(Material material) {
      return switch (material.kind()) {
        case HARDWOOD -> new Figures(60, 6, 750);
        case SOFTWOOD -> new Figures(40, 4, 500);
        default -> new Figures(40, 4, 750);
      };
    }
  }

  /**
   * The sections that the tabs of a part need together.
   *
   * @param passMm the most that a pass takes
   * @param areaMm2 of the part
   */
  public static double neededMm2(
      Tool tool, Feeds feeds, double passMm, Stock stock, double areaMm2) {
    Figures figures = Figures.of(stock.material());
    double pullN = figures.cutNPerMm2() * passMm * tool.flutes() * feeds.chipLoadMm() / Math.PI;
    double kg = figures.kgPerM3() * KG_PER_M3_AND_MM3 * areaMm2 * stock.thickestMm();
    return SAFETY * (pullN + kg * GRAVITY_M_PER_S2) / figures.shearNPerMm2();
  }

  /** The area that a closed track goes round. */
  static double areaMm2(Track track, double flattenMm) {
    List<Point> ring = Flattener.flatten(track.path(), flattenMm);
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return Math.abs(twice) / 2;
  }

  /** Tabs made as much wider as the load asks for; those of a width that was given stay. */
  public static Tabs sized(Tabs tabs, double neededMm2) {
    double width = neededMm2 / (tabs.count() * tabs.thicknessMm());
    return isGiven(tabs) || width <= tabs.widthMm()
        ? tabs
        : new Tabs(
            tabs.count(),
            width,
            Math.max(width, tabs.alongGrainMm()),
            tabs.thicknessMm(),
            tabs.ramped());
  }

  /** Whether the width was given: left to the bit, it is more along the grain. */
  private static boolean isGiven(Tabs tabs) {
    return tabs.alongGrainMm() <= tabs.widthMm();
  }

  /** Whether tabs have less section than they need. */
  public static boolean isWeak(Tabs tabs, double neededMm2) {
    return tabs.count() * tabs.widthMm() * tabs.thicknessMm() < neededMm2;
  }

  /** Tells how weak tabs are. */
  public static String weakText(String origin, Tabs tabs, double neededMm2) {
    return origin
        + ": "
        + tabs.count()
        + " tabs of "
        + Amounts.length(tabs.widthMm())
        + " by "
        + Amounts.length(tabs.thicknessMm())
        + " have "
        + Amounts.area(tabs.count() * tabs.widthMm() * tabs.thicknessMm())
        + " together; the pull of the bit and the part's weight ask for "
        + Amounts.area(neededMm2)
        + " (common practice)";
  }
}
