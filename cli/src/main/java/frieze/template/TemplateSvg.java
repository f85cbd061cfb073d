package frieze.template;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.sheet.Ink;
import frieze.sheet.Markup;
import frieze.sheet.SvgPath;
import frieze.template.PaperTemplate.Mark;
import frieze.template.PaperTemplate.Words;
import java.util.List;
import java.util.stream.Collectors;

/** Draws a template as one large sheet at full size, for a plotter or a large printer. */
public final class TemplateSvg {
  private static final double BELOW_MM = 12;
  private static final double BAR_FROM_MM = 10;
  private static final double LETTERS_MM = 3;

  private TemplateSvg() {}

  /** The file, in millimetres, with a check bar below the drawing where it is long enough. */
  public static String text(PaperTemplate template) {
    Bounds b = template.bounds();
    Affine down = Affine.translation(-b.minX(), -b.maxY()).then(Affine.scaling(1, -1));
    String w = Ink.n(b.width());
    String h = Ink.n(b.height() + BELOW_MM);
    Markup out = new Markup();
    out.raw("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    out.open(
        "svg",
        "xmlns",
        "http://www.w3.org/2000/svg",
        "width",
        w + "mm",
        "height",
        h + "mm",
        "viewBox",
        "0 0 " + w + " " + h,
        "font-family",
        "Helvetica, Arial, 'Liberation Sans', sans-serif");
    out.line();
    template.marks().forEach(mark -> mark(out, mark, down));
    template.words().forEach(words -> words(out, words, down));
    bar(out, b);
    return out.close().line().toString();
  }

  private static void mark(Markup out, Mark mark, Affine down) {
    out.empty(
        "path",
        "d",
        SvgPath.data(List.of(mark.path().transformed(down))),
        "fill",
        "none",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        Ink.n(mark.pen().widthMm()),
        "stroke-dasharray",
        mark.pen().dashesMm().isEmpty()
            ? "none"
            : mark.pen().dashesMm().stream().map(Ink::n).collect(Collectors.joining(" ")));
    out.line();
  }

  private static void words(Markup out, Words words, Affine down) {
    Point at = down.apply(words.at());
    new Ink(out).text(at.x(), at.y(), words.text(), "start", words.sizeMm());
    out.line();
  }

  private static void bar(Markup out, Bounds b) {
    double longMm = b.width() > TemplatePdf.BAR_MM + 2 * BAR_FROM_MM ? TemplatePdf.BAR_MM : 50;
    double y = b.height() + BELOW_MM / 2;
    Ink ink = new Ink(out);
    ink.line(BAR_FROM_MM, y, BAR_FROM_MM + longMm, y, Ink.NARROW);
    ink.line(BAR_FROM_MM, y - 3, BAR_FROM_MM, y + 3, Ink.NARROW);
    ink.line(BAR_FROM_MM + longMm, y - 3, BAR_FROM_MM + longMm, y + 3, Ink.NARROW);
    ink.text(BAR_FROM_MM, y - 1, Ink.n(longMm) + " mm: measure it", "start", LETTERS_MM);
    out.line();
  }
}
