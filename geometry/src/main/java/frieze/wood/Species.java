package frieze.wood;

import java.util.List;
import java.util.Optional;

/**
 * A kind of wood and how much it moves.
 *
 * <p><em>Source:</em> Wood Handbook, FPL-GTR-190 (2010), Table 13-5, coefficients of dimensional
 * change between 6 and 14 % moisture content.
 *
 * @param radialPerPct the change across the rings, as a share of the size, for 1 % of moisture
 * @param tangentialPerPct the same along the rings
 */
public record Species(String name, double radialPerPct, double tangentialPerPct) {
  /**
   * The change along the grain for 1 % of moisture, an upper bound: 0.2 % between green and
   * ovendry, over 30 % of moisture.
   *
   * <p><em>Source:</em> Wood Handbook, chapter 4 (0.1 to 0.2 %; from memory), which neglects it.
   */
  public static final double ALONG_GRAIN_PER_PCT = 0.002 / 30;

  private static final List<Species> ALL =
      List.of(
          new Species("red oak (commercial)", 0.00158, 0.00369),
          new Species("white oak (commercial)", 0.00180, 0.00365),
          new Species("black walnut", 0.00190, 0.00274),
          new Species("sugar (hard) maple", 0.00165, 0.00353),
          new Species("red maple", 0.00137, 0.00289),
          new Species("black cherry", 0.00126, 0.00248),
          new Species("white ash", 0.00169, 0.00274),
          new Species("yellow birch", 0.00256, 0.00338),
          new Species("American beech", 0.00190, 0.00431),
          new Species("American basswood", 0.00230, 0.00330),
          new Species("yellow-poplar", 0.00158, 0.00289),
          new Species("eastern white pine", 0.00071, 0.00212),
          new Species("Douglas-fir (coast)", 0.00165, 0.00267),
          new Species("white fir", 0.00112, 0.00245),
          new Species("western redcedar", 0.00111, 0.00234),
          new Species("mahogany (true)", 0.00172, 0.00238),
          new Species("teak", 0.00101, 0.00186));

  /** All that are known, hardwoods first. */
  public static List<Species> all() {
    return ALL;
  }

  /** Finds a species by its name, with or without what stands in brackets, in any case. */
  public static Optional<Species> named(String name) {
    return ALL.stream()
        .filter(
            s ->
                s.name.equalsIgnoreCase(name)
                    || s.name.replaceAll(" ?\\([^)]*\\)", "").equalsIgnoreCase(name))
        .findFirst();
  }

  /** The change of a board's width for 1 % of moisture. */
  public double acrossPerPct(Sawn sawn) {
    return sawn == Sawn.FLAT ? tangentialPerPct : radialPerPct;
  }
}
