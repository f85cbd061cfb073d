package frieze.shop;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What a torch does to one metal with one current and one nozzle, by thickness.
 *
 * <p>The chart of the power supply comes first; the rows that are built in are values to start
 * from.
 *
 * @param material the name of the metal
 * @param currentA the current in amperes
 * @param nozzle what the maker calls it
 * @param afterFlowSeconds how long the torch stays where it went out, while air still flows
 * @param rows in the order of thickness
 */
public record CutChart(
    String name,
    String material,
    double currentA,
    String nozzle,
    double afterFlowSeconds,
    List<Row> rows) {
  public CutChart {
    rows = rows.stream().sorted(Comparator.comparingDouble(Row::thicknessMm)).toList();
    requirePositive("currentA", currentA, "A");
    if (rows.isEmpty()) {
      throw new IllegalArgumentException("rows must have at least one row");
    }
  }

  /**
   * One line of a chart.
   *
   * @param kerfMm how wide the cut is
   * @param pierceSeconds from lighting the arc to moving off
   * @param smallestHoleMm the smallest diameter that comes out as a hole
   */
  public record Row(
      double thicknessMm,
      double kerfMm,
      double feedMmPerMin,
      double pierceHeightMm,
      double cutHeightMm,
      double pierceSeconds,
      double smallestHoleMm) {
    public Row {
      requirePositive("thicknessMm", thicknessMm, "mm");
      requirePositive("kerfMm", kerfMm, "mm");
      requirePositive("feedMmPerMin", feedMmPerMin, "mm/min");
      requirePositive("pierceHeightMm", pierceHeightMm, "mm");
      requirePositive("cutHeightMm", cutHeightMm, "mm");
      requirePositive("pierceSeconds", pierceSeconds, "s");
      requirePositive("smallestHoleMm", smallestHoleMm, "mm");
    }

    /** A row between this one and another. */
    private Row towards(Row other, double part) {
      return new Row(
          between(thicknessMm, other.thicknessMm, part),
          between(kerfMm, other.kerfMm, part),
          between(feedMmPerMin, other.feedMmPerMin, part),
          between(pierceHeightMm, other.pierceHeightMm, part),
          between(cutHeightMm, other.cutHeightMm, part),
          between(pierceSeconds, other.pierceSeconds, part),
          between(smallestHoleMm, other.smallestHoleMm, part));
    }

    private static double between(double a, double b, double part) {
      return a + (b - a) * part;
    }
  }

  public double thinnestMm() {
    return rows.get(0).thicknessMm();
  }

  public double thickestMm() {
    return rows.get(rows.size() - 1).thicknessMm();
  }

  /**
   * What to do at a thickness: a row, or straight between the two rows around it.
   *
   * @return empty for a thickness beyond the chart: nothing is guessed there
   */
  public Optional<Torch> at(double thicknessMm) {
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      if (row.thicknessMm() == thicknessMm) {
        return Optional.of(new Torch(name, row, afterFlowSeconds));
      }
      if (row.thicknessMm() > thicknessMm) {
        if (i == 0) {
          return Optional.empty();
        }
        Row before = rows.get(i - 1);
        double part =
            (thicknessMm - before.thicknessMm()) / (row.thicknessMm() - before.thicknessMm());
        return Optional.of(new Torch(name, before.towards(row, part), afterFlowSeconds));
      }
    }
    return Optional.empty();
  }

  private static void requirePositive(String name, double value, String unit) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value + " " + unit);
    }
  }
}
