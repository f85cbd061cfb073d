package frieze.sheet;

/**
 * Lines, arrows and dimensions of technical drawings, in millimetres of paper.
 *
 * <p>Source: ISO 128-2 (line types), ISO 129-1 (dimensions), ISO 3098 (lettering), as known from
 * memory. Wide lines have 0.5 mm, narrow ones 0.25 mm.
 */
public final class Ink {
  static final String WIDE = "0.5";
  public static final String NARROW = "0.25";
  public static final String BLACK = "#111";

  /** Line type 04: long-dashed dotted, for centre lines. */
  public static final String CENTRE_LINE = "6 0.75 0.5 0.75";

  /** Line type 05: long-dashed double-dotted, for outlines before forming. */
  public static final String BEFORE_FORMING = "6 0.75 0.5 0.75 0.5 0.75";

  private static final double ARROW_LONG = 2.6;
  private static final double ARROW_HALF = 0.42;
  private static final double LETTERS = 2.8;
  private static final double OVERRUN = 1.2;
  private static final double TEXT_GAP = 0.9;

  /** What a figure of a dimension needs, for each character. */
  private static final double FIGURE_WIDTH = 0.62 * LETTERS;

  private final Markup out;

  public Ink(Markup out) {
    this.out = out;
  }

  public static String n(double value) {
    return Measures.decimals(value, 3);
  }

  public void line(double x1, double y1, double x2, double y2, String width) {
    out.empty(
        "line",
        "x1",
        n(x1),
        "y1",
        n(y1),
        "x2",
        n(x2),
        "y2",
        n(y2),
        "stroke",
        BLACK,
        "stroke-width",
        width);
  }

  void dashed(double x1, double y1, double x2, double y2, String dashes) {
    out.empty(
        "line",
        "x1",
        n(x1),
        "y1",
        n(y1),
        "x2",
        n(x2),
        "y2",
        n(y2),
        "stroke",
        BLACK,
        "stroke-width",
        NARROW,
        "stroke-dasharray",
        dashes);
  }

  public void text(double x, double y, String text, String anchor, double size) {
    out.element(
        "text",
        text,
        "x",
        n(x),
        "y",
        n(y),
        "text-anchor",
        anchor,
        "font-size",
        n(size),
        "fill",
        BLACK);
  }

  private void upright(double x, double y, String text, double size) {
    out.element(
        "text",
        text,
        "x",
        n(x),
        "y",
        n(y),
        "text-anchor",
        "middle",
        "font-size",
        n(size),
        "fill",
        BLACK,
        "transform",
        "rotate(-90 " + n(x) + " " + n(y) + ")");
  }

  /** A filled arrowhead whose tip lies at x, y and points along dx, dy. */
  void arrow(double x, double y, double dx, double dy) {
    double bx = x - dx * ARROW_LONG;
    double by = y - dy * ARROW_LONG;
    String points =
        n(x)
            + ","
            + n(y)
            + " "
            + n(bx - dy * ARROW_HALF)
            + ","
            + n(by + dx * ARROW_HALF)
            + " "
            + n(bx + dy * ARROW_HALF)
            + ","
            + n(by - dx * ARROW_HALF);
    out.empty("polygon", "points", points, "fill", BLACK);
  }

  /**
   * A dimension along X, with its extension lines.
   *
   * @param from where the extension lines start
   * @param y of the dimension line
   * @param figureBefore on which side the figure stands when it does not fit between the lines and
   *     the paper has room there
   */
  void alongX(double x1, double x2, double from, double y, String figure, boolean figureBefore) {
    double away = Math.signum(y - from);
    line(x1, from + away, x1, y + away * OVERRUN, NARROW);
    line(x2, from + away, x2, y + away * OVERRUN, NARROW);
    line(x1, y, x2, y, NARROW);
    double needed = figure.length() * FIGURE_WIDTH;
    boolean before = figureBefore && x1 - 2 * ARROW_LONG - needed > 0;
    if (fits(x2 - x1, needed)) {
      arrow(x1, y, -1, 0);
      arrow(x2, y, 1, 0);
      text((x1 + x2) / 2, y - TEXT_GAP, figure, "middle", LETTERS);
      return;
    }
    double tail = 2 * ARROW_LONG;
    line(x1 - tail - (before ? needed : 0), y, x1, y, NARROW);
    line(x2, y, x2 + tail + (before ? 0 : needed), y, NARROW);
    arrow(x1, y, 1, 0);
    arrow(x2, y, -1, 0);
    double middle = before ? x1 - tail - needed / 2 : x2 + tail + needed / 2;
    text(middle, y - TEXT_GAP, figure, "middle", LETTERS);
  }

  private static boolean fits(double room, double needed) {
    return room >= needed + 2 * ARROW_LONG;
  }

  /**
   * A dimension along Y, read from the right.
   *
   * @param from where the extension lines start
   * @param x of the dimension line
   * @param figureBelow on which side the figure stands when it does not fit between the lines
   */
  void alongY(double y1, double y2, double from, double x, String figure, boolean figureBelow) {
    double away = Math.signum(x - from);
    line(from + away, y1, x + away * OVERRUN, y1, NARROW);
    line(from + away, y2, x + away * OVERRUN, y2, NARROW);
    double upper = Math.min(y1, y2);
    double lower = Math.max(y1, y2);
    line(x, upper, x, lower, NARROW);
    double needed = figure.length() * FIGURE_WIDTH;
    if (fits(lower - upper, needed)) {
      arrow(x, upper, 0, -1);
      arrow(x, lower, 0, 1);
      upright(x - TEXT_GAP, (upper + lower) / 2, figure, LETTERS);
      return;
    }
    double tail = 2 * ARROW_LONG;
    line(x, upper - tail - (figureBelow ? 0 : needed), x, upper, NARROW);
    line(x, lower, x, lower + tail + (figureBelow ? needed : 0), NARROW);
    arrow(x, upper, 0, 1);
    arrow(x, lower, 0, -1);
    double middle = figureBelow ? lower + tail + needed / 2 : upper - tail - needed / 2;
    upright(x - TEXT_GAP, middle, figure, LETTERS);
  }

  /** The mark of a zero point: a circle with two opposite quarters filled, and its two axes. */
  void zero(double x, double y) {
    double axis = 9;
    line(x, y, x + axis, y, NARROW);
    arrow(x + axis + ARROW_LONG / 2, y, 1, 0);
    line(x, y, x, y - axis, NARROW);
    arrow(x, y - axis - ARROW_LONG / 2, 0, -1);
    text(x + axis + 2.2, y - 0.8, "X", "start", LETTERS);
    text(x + 0.9, y - axis - 1.6, "Y", "start", LETTERS);
    zeroMark(x, y);
  }

  /** The mark of a zero point alone. */
  void zeroMark(double x, double y) {
    double r = 1.9;
    out.empty(
        "circle",
        "cx",
        n(x),
        "cy",
        n(y),
        "r",
        n(r),
        "fill",
        "#fff",
        "stroke",
        BLACK,
        "stroke-width",
        NARROW);
    String up = "M" + n(x) + " " + n(y) + "v" + n(-r) + "a" + n(r) + " " + n(r) + " 0 0 1 ";
    String down = "M" + n(x) + " " + n(y) + "v" + n(r) + "a" + n(r) + " " + n(r) + " 0 0 1 ";
    out.empty(
        "path",
        "d",
        up + n(r) + " " + n(r) + "z" + down + n(-r) + " " + n(-r) + "z",
        "fill",
        BLACK);
  }

  /** A centre mark: two crossed chain lines. */
  void centre(double x, double y, double reach) {
    dashed(x - reach, y, x + reach, y, CENTRE_LINE);
    dashed(x, y - reach, x, y + reach, CENTRE_LINE);
  }
}
