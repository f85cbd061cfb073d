package frieze.artwork.dxf;

/** Units of length by their number in a header. Source: the DXF reference, $INSUNITS. */
final class DxfUnits {
  private static final double MM_PER_INCH = 25.4;

  private DxfUnits() {}

  /** Millimetres to one unit; NaN for a drawing without unit, or with one as large as a road. */
  static double mmPerUnit(int code) {
    return switch (code) {
      case 1 -> MM_PER_INCH;
      case 2 -> 12 * MM_PER_INCH;
      case 4 -> 1;
      case 5 -> 10;
      case 6 -> 1000;
      case 8 -> MM_PER_INCH / 1e6;
      case 9 -> MM_PER_INCH / 1000;
      case 10 -> 36 * MM_PER_INCH;
      case 13 -> 0.001;
      case 14 -> 100;
      default -> Double.NaN;
    };
  }

  static String name(int code) {
    return switch (code) {
      case 1 -> "inches";
      case 2 -> "feet";
      case 4 -> "millimetres";
      case 5 -> "centimetres";
      case 6 -> "metres";
      case 8 -> "microinches";
      case 9 -> "thousandths of an inch";
      case 10 -> "yards";
      case 13 -> "micrometres";
      case 14 -> "decimetres";
      default -> "no unit";
    };
  }
}
