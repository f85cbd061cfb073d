package frieze.job;

import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Zero;
import java.util.List;
import java.util.Locale;

/** The lines that stand at the top of each program, for the person at the machine. */
final class ProgramHeader {
  private static final double MM_PER_INCH = 25.4;

  private ProgramHeader() {}

  static List<String> lines(Job job, Setup setup) {
    Stock stock = setup.stock();
    boolean inches = setup.machine().inches();
    String size =
        number(stock.lengthMm(), inches)
            + " x "
            + number(stock.widthMm(), inches)
            + " x "
            + number(stock.thickestMm(), inches)
            + (inches ? " in" : " mm");
    return List.of(
        job.name(),
        "machine: " + setup.machine().name(),
        "stock: " + stock.material().name() + ", " + size,
        "zero: " + zero(setup.zero()));
  }

  /** The zero in words, such as {@code left edge, front edge, top of the stock}. */
  static String zero(Zero zero) {
    String x =
        switch (zero.x()) {
          case LEFT -> "left edge";
          case CENTRE -> "middle of the length";
          case RIGHT -> "right edge";
        };
    String y =
        switch (zero.y()) {
          case FRONT -> "front edge";
          case CENTRE -> "middle of the width";
          case BACK -> "back edge";
        };
    String z = zero.z() == Zero.AlongZ.TOP ? "Z0 on top of the stock" : "Z0 on the bed";
    String turned =
        zero.skewRad() == 0
            ? ""
            : String.format(
                Locale.ROOT, ", TURNED %.2f deg as the stock lies", Math.toDegrees(zero.skewRad()));
    return x + ", " + y + ", " + z + turned;
  }

  private static String number(double mm, boolean inches) {
    return inches
        ? String.format(Locale.ROOT, "%.3f", mm / MM_PER_INCH)
        : String.format(Locale.ROOT, "%.1f", mm);
  }
}
