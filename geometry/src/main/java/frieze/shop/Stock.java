package frieze.shop;

import java.util.List;

/**
 * A piece of material.
 *
 * @param lengthMm along X
 * @param widthMm along Y
 * @param thicknessReadingsMm measured with a caliper, one or several places
 * @param blank whether it is already sawn to the panel's finished size
 */
public record Stock(
    Material material,
    double lengthMm,
    double widthMm,
    List<Double> thicknessReadingsMm,
    boolean blank) {
  public Stock {
    thicknessReadingsMm = List.copyOf(thicknessReadingsMm);
    requirePositive("lengthMm", lengthMm);
    requirePositive("widthMm", widthMm);
    if (thicknessReadingsMm.isEmpty()) {
      throw new IllegalArgumentException("thicknessReadingsMm needs at least one reading");
    }
    thicknessReadingsMm.forEach(t -> requirePositive("thickness", t));
  }

  private static void requirePositive(String name, double value) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value + " mm");
    }
  }

  /** The thickest reading: a through cut must go this deep. */
  public double thickestMm() {
    return thicknessReadingsMm.stream().mapToDouble(t -> t).max().orElseThrow();
  }

  /** The thinnest reading: a blind cut must stay above this. */
  public double thinnestMm() {
    return thicknessReadingsMm.stream().mapToDouble(t -> t).min().orElseThrow();
  }
}
