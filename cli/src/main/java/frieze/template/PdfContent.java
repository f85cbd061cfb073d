package frieze.template;

import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Bounds;
import frieze.curve.Cubic;
import frieze.curve.EllipticArc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.sheet.Measures;
import frieze.template.PaperTemplate.Mark;
import frieze.template.PaperTemplate.Pen;
import frieze.template.PaperTemplate.Words;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Writes what a page of a PDF shows, in millimetres from its lower left corner.
 *
 * <p><em>Approximation:</em> circles and ellipses become cubics of at most 45 degrees, off by less
 * than a millionth of 5 radii; numbers have four digits of a point: 0.02 µm.
 *
 * <p><em>Source:</em> the operators of ISO 32000-1, from memory.
 */
final class PdfContent implements Segment.Visitor<Void> {
  static final double POINTS_PER_MM = 72 / 25.4;

  private static final double PIECE_RAD = Math.PI / 4;
  private static final double HALF_LETTER = 0.5;

  private final StringBuilder out = new StringBuilder();
  private final PdfLetters letters;
  private Affine map = Affine.IDENTITY;

  PdfContent(PdfLetters letters) {
    this.letters = letters;
  }

  /** Moves what follows, and shows only what lies in a rectangle of the page. */
  void window(Bounds shown, Bounds onPage) {
    map = Affine.translation(onPage.minX() - shown.minX(), onPage.minY() - shown.minY());
    out.append("q ");
    rectangle(onPage);
    out.append("W n\n");
  }

  /** Ends a window. */
  void wholePage() {
    map = Affine.IDENTITY;
    out.append("Q\n");
  }

  private void rectangle(Bounds b) {
    number(b.minX());
    number(b.minY());
    number(b.width());
    number(b.height());
    out.append("re ");
  }

  void mark(Mark mark) {
    pen(mark.pen());
    Path path = mark.path().transformed(map);
    point(path.start());
    out.append("m\n");
    path.segments().forEach(s -> s.accept(this));
    out.append(path.closed() ? "s\n" : "S\n");
  }

  private void pen(Pen pen) {
    number(pen.widthMm());
    out.append("w [");
    List<Double> dashes = pen.dashesMm();
    out.append(dashes.stream().map(d -> text(d * POINTS_PER_MM)).collect(Collectors.joining(" ")));
    out.append("] 0 d\n");
  }

  void line(double x1, double y1, double x2, double y2, Pen pen) {
    mark(new Mark(TemplateMaker.line(x1, y1, x2, y2), pen));
  }

  void words(Words words) {
    Point at = map.apply(words.at());
    out.append("BT /").append(letters.font(words.text())).append(' ');
    number(words.sizeMm());
    out.append("Tf ");
    point(at);
    out.append("Td ").append(letters.string(words.text())).append(" Tj ET\n");
  }

  void words(double x, double y, double sizeMm, String text) {
    words(new Words(new Point(x, y), sizeMm, text));
  }

  /** About how many letters of a size go into a line. */
  static int lettersIn(double widthMm, double sizeMm) {
    return (int) (widthMm / (HALF_LETTER * sizeMm));
  }

  private void point(Point p) {
    number(p.x());
    number(p.y());
  }

  private void number(double mm) {
    out.append(text(mm * POINTS_PER_MM)).append(' ');
  }

  private static String text(double points) {
    return Measures.decimals(points, 4);
  }

  byte[] bytes() {
    return out.toString().getBytes(StandardCharsets.ISO_8859_1);
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only writes
  public Void line(Line line) {
    point(line.end());
    out.append("l\n");
    return null;
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only writes
  public Void arc(Arc arc) {
    turned(arc, arc.sweepRad());
    return null;
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only writes
  public Void cubic(Cubic cubic) {
    curve(cubic.control1(), cubic.control2(), cubic.end());
    return null;
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only writes
  public Void ellipticArc(EllipticArc arc) {
    turned(arc, arc.sweepRad());
    return null;
  }

  /** A curve whose parameter is an angle, in pieces. */
  private void turned(Segment arc, double sweepRad) {
    int pieces = Math.max(1, (int) Math.ceil(Math.abs(sweepRad) / PIECE_RAD));
    double reach = 4.0 / 3 * StrictMath.tan(sweepRad / pieces / 4) / sweepRad;
    for (int i = 0; i < pieces; i++) {
      double from = (double) i / pieces;
      double to = (i + 1.0) / pieces;
      curve(
          arc.at(from).plus(arc.tangentAt(from).times(reach)),
          arc.at(to).minus(arc.tangentAt(to).times(reach)),
          arc.at(to));
    }
  }

  private void curve(Point control1, Point control2, Point end) {
    point(control1);
    point(control2);
    point(end);
    out.append("c\n");
  }
}
