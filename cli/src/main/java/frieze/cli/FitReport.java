package frieze.cli;

import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.opening.FittedOpening;
import frieze.opening.Measured;
import frieze.opening.Notch;
import frieze.opening.OpeningFitter;
import frieze.opening.Sitting;
import frieze.wood.SideFit;
import frieze.wood.WoodCode;
import java.io.PrintStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tells how a panel will sit, in the maker's own unit. */
final class FitReport {
  private static final double MM_PER_INCH = 25.4;
  private static final int FINEST = 64;

  private final PrintStream out;
  private final boolean inches;

  FitReport(PrintStream out, boolean inches) {
    this.out = out;
    this.inches = inches;
  }

  void opening(FittedOpening fitted, Measured measured) {
    Table table = new Table("measured", "tape", "best outline", "difference");
    for (FittedOpening.Residual r : fitted.residuals()) {
      table.row(List.of(r.name(), text(r.tapeMm()), text(r.outlineMm()), text(r.differenceMm())));
    }
    out.println(table);
    out.println(
        fitted.spare() > 0
            ? "misfit "
                + text(fitted.misfitMm())
                + ", tape trusted to "
                + text(measured.tapeMm())
                + "; more than "
                + text(OpeningFitter.CONTRADICTION * measured.tapeMm())
                + " would be refused"
            : "nothing measured to spare: the tape can't be checked");
    out.println(
        "out of square: left side leans "
            + lean(fitted.outOfSquareLeftMm())
            + ", right side "
            + lean(fitted.outOfSquareRightMm())
            + ", uncertain by "
            + text(fitted.squareUncertaintyMm()));
    if (!measured.heights().isEmpty()) {
      out.println(
          "rails bow "
              + text(Math.abs(fitted.bowMm()))
              + (fitted.bowMm() < 0 ? " into" : " out of")
              + " the opening, both together");
    }
    out.println(
        "clear upright rectangle: "
            + text(fitted.clearWidthMm())
            + " wide, "
            + text(fitted.clearHeightMm())
            + " high");
  }

  void panel(SideFit width, SideFit height, double beadMm) {
    Table table = new Table("panel", "cut now", "gap to cut", "fitted now", "driest", "wettest");
    row(table, "width", width);
    row(table, "height", height);
    out.println();
    out.print(table);
    out.println("gaps are on each side, with the panel in the middle");
    double gap = Math.min(width.gapToCutMm(), height.gapToCutMm());
    if (beadMm > 0) {
      out.println("round the panel's corners to at least " + text(Math.max(0, beadMm - gap)));
    }
  }

  private void row(Table table, String name, SideFit fit) {
    table.row(
        List.of(
            name,
            text(fit.cutMm()),
            text(fit.gapToCutMm()),
            text(fit.gapNowMm()),
            text(fit.gapDriestMm()),
            text(fit.gapWettestMm())));
  }

  /** An error if the panel binds. */
  Optional<Diagnostic> binding(String name, SideFit fit, double playMm) {
    if (!fit.binds()) {
      return Optional.empty();
    }
    return Optional.of(
        Diagnostic.error(
            WoodCode.PANEL_BINDS,
            SourceSpan.NONE,
            "the panel's "
                + name
                + " binds: at its wettest it is "
                + Amounts.length(-2 * fit.gapWettestMm())
                + " more than the opening",
            "leave a gap of about "
                + Amounts.length(fit.gapToCutMm() - fit.gapWettestMm() + playMm)
                + " on each side"));
  }

  /** How the panel that follows the outline will sit. */
  void sitting(Sitting sitting) {
    Table table = new Table("gap at", "fitted now", "driest", "wettest");
    for (Sitting.Gap gap : sitting.allGaps()) {
      table.row(
          List.of(gap.place(), text(gap.nowMm()), text(gap.driestMm()), text(gap.wettestMm())));
    }
    out.println();
    out.println("a panel that leans as the opening does, as in a job:");
    out.print(table);
    notches(sitting);
    Sitting.Gap tight = sitting.tightestCorner();
    out.println(
        "tightest corner: "
            + tight.place()
            + ", "
            + text(tight.wettestMm())
            + " at the wettest, "
            + text(sitting.worstMm(tight))
            + " if the tape is off by its uncertainty");
  }

  private void notches(Sitting sitting) {
    if (sitting.notches().isEmpty()) {
      return;
    }
    Table table = new Table("notch for", "at the", "from the corner", "wide", "deep", "around it");
    for (Notch n : sitting.notches()) {
      table.row(
          List.of(
              n.lug().name(),
              n.lug().side().toString(),
              text(n.fromMm()),
              text(n.widthMm()),
              text(n.depthMm()),
              text(n.clearanceMm())));
    }
    out.println();
    out.print(table);
    out.println("notches as cut, from the panel's own left or lower corner and its edge");
  }

  private String lean(double mm) {
    return text(Math.abs(mm)) + " to the " + (mm < 0 ? "left" : "right") + " over the height";
  }

  /** A length: {@code 1.59 mm}, or {@code 0.063 in (1/16)} with the nearest 64th. */
  String text(double mm) {
    double in = mm / MM_PER_INCH;
    String number =
        String.format(Locale.ROOT, inches ? "%.3f in" : "%.2f mm", inches ? in : mm)
            .replaceFirst("^-(0\\.0+ )", "$1");
    return inches ? number + " (" + fraction(in) + ")" : number;
  }

  private static String fraction(double in) {
    long parts = Math.round(Math.abs(in) * FINEST);
    long whole = parts / FINEST;
    long above = parts % FINEST;
    long below = FINEST;
    while (above > 0 && above % 2 == 0) {
      above /= 2;
      below /= 2;
    }
    String share = above == 0 ? "" : above + "/" + below;
    String number = whole == 0 && above > 0 ? share : whole + (share.isEmpty() ? "" : "-" + share);
    return (in < 0 && parts > 0 ? "-" : "") + number;
  }
}
