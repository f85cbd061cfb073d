package frieze.shop;

import java.util.Optional;

/**
 * The thickness of sheet steel by gauge number.
 *
 * <p>A gauge number means nothing without its metal: galvanized sheet of the same number is thicker
 * than bare sheet, by its zinc. What a caliper says always wins; sheet is sold with tolerances.
 *
 * <p><i>Source:</i> both tables are defined by weight, in ounces for a square foot, and turned into
 * inches at 41.82 lb/ft2 for an inch (Manufacturers' Standard Gauge; the galvanized table adds 2.5
 * oz/ft2 of zinc).
 */
public enum SheetGauge {
  /** Bare sheet steel, numbers 3 to 30. */
  STEEL("steel", 3, 0),
  /** Zinc-coated sheet steel, numbers 8 to 30. */
  GALVANIZED("galvanized steel", 8, 2.5);

  private static final int FIRST = 3;
  private static final double[] OUNCES = {
    160, 150, 140, 130, 120, 110, 100, 90, 80, 70, 60, 50, 45, 40, 36, 32, 28, 24, 22, 20, 18, 16,
    14, 12, 11, 10, 9, 8
  };
  private static final double OUNCES_PER_POUND = 16;
  private static final double POUNDS_PER_FT2_FOR_AN_INCH = 41.82;
  private static final double MM_PER_INCH = 25.4;
  private static final double TEN_THOUSANDTHS = 10_000;

  private final String metal;
  private final int lowest;
  private final double zincOunces;

  SheetGauge(String metal, int lowest, double zincOunces) {
    this.metal = metal;
    this.lowest = lowest;
    this.zincOunces = zincOunces;
  }

  /** The metal's name, as people write it. */
  public String metal() {
    return metal;
  }

  /** The lowest number of the table: its thickest sheet. */
  public int lowest() {
    return lowest;
  }

  /** The highest number of the table: its thinnest sheet. */
  public int highest() {
    return FIRST + OUNCES.length - 1;
  }

  /** The nominal thickness, from inches to four decimals; empty for a number that is not listed. */
  public Optional<Double> thicknessMm(int gauge) {
    return poundsPerFt2(gauge)
        .map(
            p ->
                Math.round(p / POUNDS_PER_FT2_FOR_AN_INCH * TEN_THOUSANDTHS)
                    / TEN_THOUSANDTHS
                    * MM_PER_INCH);
  }

  /** The nominal weight in pounds for a square foot; empty for a number that is not listed. */
  public Optional<Double> poundsPerFt2(int gauge) {
    return gauge < lowest || gauge > highest()
        ? Optional.empty()
        : Optional.of((OUNCES[gauge - FIRST] + zincOunces) / OUNCES_PER_POUND);
  }
}
