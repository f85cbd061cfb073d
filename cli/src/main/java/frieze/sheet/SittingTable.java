package frieze.sheet;

import frieze.curve.Point;
import frieze.opening.DrawnHole;
import frieze.opening.FittedOpening;
import frieze.opening.InsertRequest;
import frieze.opening.Notch;
import frieze.opening.OpeningFitter;
import frieze.opening.Sitting;
import frieze.wood.Moisture;

/** Writes how a panel will sit in its opening. */
final class SittingTable {
  private final Sitting sitting;
  private final Measures measures;
  private final Markup out;

  SittingTable(Sitting sitting, Measures measures, Markup out) {
    this.sitting = sitting;
    this.measures = measures;
    this.out = out;
  }

  void write() {
    out.element("h2", "How it will sit");
    if (sitting.opening().measured()) {
      opening();
    }
    sitting.drawn().ifPresent(d -> out.element("p", drawn()));
    out.open("table");
    gapRow("th", "gap", "as cut", "driest", "wettest");
    for (Sitting.Gap gap : sitting.allGaps()) {
      gapRow(
          "td",
          gap.place(),
          measures.one(gap.nowMm()),
          measures.one(gap.driestMm()),
          measures.one(gap.wettestMm()));
    }
    out.close().line();
    out.element("p", sums());
    out.element("p", sitting.drawn().map(this::worst).orElseGet(this::worst));
    notches();
  }

  private void notches() {
    if (sitting.notches().isEmpty()) {
      return;
    }
    out.open("table");
    row("th", "notch for", "at the", "from the corner", "wide", "deep", "around the lug");
    for (Notch notch : sitting.notches()) {
      row(
          "td",
          notch.lug().name(),
          notch.lug().side().toString(),
          measures.one(notch.fromMm()),
          measures.one(notch.widthMm()),
          measures.one(notch.depthMm()),
          measures.one(notch.clearanceMm()));
    }
    out.close().line();
    out.element(
        "p",
        "Notches as cut, from the panel's own left or lower corner and its edge."
            + (sitting.wood()
                ? " At the driest and the wettest the panel has moved about its middle, the lugs"
                    + " have not."
                : ""));
  }

  /** Steel has no seasons. */
  private void gapRow(String tag, String place, String now, String driest, String wettest) {
    if (sitting.wood()) {
      row(tag, place, now, driest, wettest);
    } else {
      row(tag, place, now);
    }
  }

  private void row(String tag, String... cells) {
    out.open("tr");
    for (String cell : cells) {
      out.element(tag, cell);
    }
    out.close();
  }

  private void opening() {
    FittedOpening opening = sitting.opening();
    String checked =
        opening.spare() > 0
            ? "The outline that agrees best with the tape is off it by "
                + measures.one(opening.misfitMm())
                + "; the tape is trusted to "
                + measures.one(sitting.tapeMm())
                + " and more than "
                + measures.one(OpeningFitter.CONTRADICTION * sitting.tapeMm())
                + " would have been refused."
            : "Nothing was measured to spare, so that the tape can't be checked.";
    out.element(
        "p",
        checked
            + " The left side leans "
            + lean(opening.outOfSquareLeftMm())
            + " over the height, the right side "
            + lean(opening.outOfSquareRightMm())
            + ", uncertain by "
            + measures.about(opening.squareUncertaintyMm())
            + "; the panel follows."
            + bow(opening.bowMm()));
  }

  private String bow(double bowMm) {
    return bowMm == 0
        ? ""
        : " Together the rails bow "
            + measures.about(Math.abs(bowMm))
            + (bowMm < 0 ? " into the opening; the panel is that much lower." : " out of it.");
  }

  private String lean(double mm) {
    return measures.about(Math.abs(mm)) + " to the " + (mm < 0 ? "left" : "right");
  }

  private String sums() {
    InsertRequest asked = sitting.asked();
    StringBuilder text = new StringBuilder("Least gaps, with the panel in the middle");
    if (asked.allowances().coatingMm() > 0) {
      text.append(", after a coating of ").append(measures.one(asked.allowances().coatingMm()));
    }
    if (asked.allowances().sandedMm() > 0) {
      text.append(", after ")
          .append(measures.one(asked.allowances().sandedMm()))
          .append(" is sanded off each edge");
    }
    if (sitting.wood()) {
      Moisture m = asked.moisture();
      text.append("; moisture ")
          .append(percent(m.nowPct()))
          .append(" when cut, ")
          .append(percent(m.lowestPct()))
          .append(" to ")
          .append(percent(m.highestPct()))
          .append(" in use. Movement after the Wood Handbook, table 13-5");
      if (m.beyondRule()) {
        text.append("; it is published for 6 to 14 %, beyond that it is an extrapolation");
      }
    }
    return text.append('.').toString();
  }

  private static String percent(double pct) {
    return Measures.decimals(pct, 1) + " %";
  }

  private String drawn() {
    String gap =
        sitting
            .asked()
            .gapsMm()
            .map(
                g ->
                    "The panel is cut smaller by "
                        + measures.one(g.get(0))
                        + ", square to the edge all round.")
            .orElse(
                "The panel is cut smaller by what it swells, along and across its grain, and by"
                    + " what is left at the wettest: the more, the farther the edge lies from the"
                    + " middle in the direction that it faces.");
    return "The opening is given by its outline. "
        + gap
        + " In the table a gap counts to the bottom, right, top or left by where the nearest steel"
        + " lies, within 45 degrees; each is the least there.";
  }

  private String worst(DrawnHole hole) {
    Sitting.Gap tight = sitting.tightest();
    String least = measures.about(tight.leastMm());
    return (hole.tightest().isEmpty()
            ? "Tightest: " + least + ", nearly the same all round"
            : "Tightest: "
                + least
                + " at the "
                + tight.place()
                + hole.tightest().map(this::at).get())
        + (sitting.wood() ? ", at the " + season(tight) : "")
        + ". Nowhere and never wider than "
        + measures.about(hole.widestMm())
        + ".";
  }

  private String at(Point p) {
    return ", "
        + measures.one(p.x())
        + " from the panel's left end and "
        + measures.one(p.y())
        + " from its lower edge";
  }

  private static String season(Sitting.Gap gap) {
    return gap.wettestMm() > gap.leastMm() ? "driest" : "wettest";
  }

  private String worst() {
    Sitting.Gap tight = sitting.tightestCorner();
    String text =
        "Tightest corner: "
            + tight.place()
            + ", "
            + measures.about(tight.wettestMm())
            + (sitting.wood() ? " at the wettest" : "");
    double worst = sitting.worstMm(tight);
    if (sitting.tapeMm() == 0) {
      return text + ".";
    }
    return text
        + (worst < 0
            ? "; if the tape is off by its uncertainty, it touches by "
                + measures.about(-worst)
                + ": try the fit before you finish the edges."
            : "; if the tape is off by its uncertainty, " + measures.about(worst) + " is left.");
  }
}
