package frieze.sheet;

import frieze.curve.Point;
import frieze.steps.Steps;

/** Draws on a panel's plan what belongs to its steps: the reach, the seams, the pins. */
final class StepMarks {
  private static final double REACH_ABOVE = 4.5;
  private static final double SEAM_BEYOND = 3;
  private static final double LETTER = 2.3;
  private static final String CHAIN = "4 0.8 0.6 0.8";

  private final StepPart part;
  private final Sheet sheet;
  private final double lengthMm;
  private final double widthMm;
  private final Markup out;
  private final Ink ink;

  StepMarks(StepPart part, PanelFacts panel, Sheet sheet, Markup out) {
    this.part = part;
    this.sheet = sheet;
    this.lengthMm = panel.setup().stock().lengthMm();
    this.widthMm = panel.setup().stock().widthMm();
    this.out = out;
    this.ink = new Ink(out);
  }

  /** A veil over what other steps carve; then seams and pins. */
  void draw() {
    Steps steps = part.steps();
    if (!part.boring()) {
      veil(0, steps.fromMm(part.step()));
      veil(steps.toMm(part.step(), lengthMm), lengthMm);
    }
    for (int i = 0; i < steps.seams().size(); i++) {
      seam(steps.seams().get(i).xMm(), i + 1);
    }
    for (Point pin : steps.pins().standing(part.step())) {
      Point p = sheet.at(pin);
      double radius = steps.pins().wanted().diameterMm() / 2 / sheet.scale();
      out.empty(
          "circle",
          "cx",
          Ink.n(p.x()),
          "cy",
          Ink.n(p.y()),
          "r",
          Ink.n(Math.max(1, radius)),
          "fill",
          Ink.BLACK);
      ink.text(p.x() + 2, p.y() + 0.8, "PIN", "start", LETTER);
    }
    reach();
  }

  private void veil(double fromMm, double toMm) {
    if (toMm > fromMm) {
      out.empty(
          "rect",
          "x",
          Ink.n(sheet.x(fromMm)),
          "y",
          Ink.n(sheet.y(widthMm)),
          "width",
          Ink.n((toMm - fromMm) / sheet.scale()),
          "height",
          Ink.n(widthMm / sheet.scale()),
          "fill",
          "#fff",
          "fill-opacity",
          "0.72");
    }
  }

  private void seam(double xMm, int number) {
    double x = sheet.x(xMm);
    line(x, sheet.y(widthMm) - SEAM_BEYOND, x, sheet.y(0) + SEAM_BEYOND, CHAIN);
    ink.text(x + 1, sheet.y(0) + SEAM_BEYOND, "SEAM " + number, "start", LETTER);
  }

  /** How far the tool's axis may go in this clamping. */
  private void reach() {
    Steps steps = part.steps();
    double from = steps.windowFromMm() + part.pushedMm();
    double y = sheet.y(widthMm) - REACH_ABOVE;
    double left = sheet.x(from);
    double right = sheet.x(from + steps.windowMm());
    line(left, y, right, y, "none");
    line(left, y - 1, left, y + 1, "none");
    line(right, y - 1, right, y + 1, "none");
    ink.text(left + 1, y - 0.8, "REACH", "start", LETTER);
  }

  private void line(double x1, double y1, double x2, double y2, String dashes) {
    out.empty(
        "line",
        "x1",
        Ink.n(x1),
        "y1",
        Ink.n(y1),
        "x2",
        Ink.n(x2),
        "y2",
        Ink.n(y2),
        "stroke",
        Ink.BLACK,
        "stroke-width",
        Ink.NARROW,
        "stroke-dasharray",
        dashes);
  }
}
