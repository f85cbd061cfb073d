package frieze.build;

import frieze.job.Job;
import frieze.sheet.StepPart;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The lines that stand at the top of each program, for the person at the machine. */
public final class ProgramHeader {
  private static final double MM_PER_INCH = 25.4;

  private ProgramHeader() {}

  /** The lines for a panel, or for one of its steps. */
  public static List<String> lines(Job job, PlannedPanel panel) {
    List<String> usual = lines(job, panel.setup());
    if (panel.part().isEmpty()) {
      return usual;
    }
    StepPart part = panel.part().get();
    List<String> lines = new ArrayList<>(usual.subList(0, usual.size() - 1));
    lines.add(part.title());
    if (part.step() == 0) {
      lines.add(usual.get(usual.size() - 1));
    } else {
      boolean inches = job.machine().inches();
      lines.add(
          "stock pushed left by "
              + number(part.pushedMm(), inches)
              + (inches ? " in" : " mm")
              + " in all, on its pins");
      lines.add(
          "zero: X0 Y0 where it was in step 1, "
              + height(panel.setup().zero())
              + turned(panel.setup().zero()));
    }
    return lines;
  }

  public static List<String> lines(Job job, Setup setup) {
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
    return x + ", " + y + ", " + height(zero) + turned(zero);
  }

  private static String turned(Zero zero) {
    return zero.skewRad() == 0
        ? ""
        : String.format(
            Locale.ROOT, ", TURNED %.2f deg as the stock lies", Math.toDegrees(zero.skewRad()));
  }

  private static String height(Zero zero) {
    return zero.z() == Zero.AlongZ.TOP ? "Z0 on top of the stock" : "Z0 on the bed";
  }

  private static String number(double mm, boolean inches) {
    return inches
        ? String.format(Locale.ROOT, "%.3f", mm / MM_PER_INCH)
        : String.format(Locale.ROOT, "%.1f", mm);
  }
}
