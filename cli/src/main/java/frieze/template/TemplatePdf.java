package frieze.template;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.template.PaperTemplate.Mark;
import frieze.template.PaperTemplate.Pen;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.common.PDStream;

/**
 * Prints a template on pages of usual paper: first the plan of the pages with check bars and lists,
 * then the pages at full size, which overlap and have register crosses.
 *
 * <p><em>Guarantees:</em> the same template gives the same bytes; one millimetre is 72 / 25.4
 * points.
 */
public final class TemplatePdf {
  /** The bars, from a print of which the scale is read. */
  static final double BAR_MM = 150;

  static final double BAR_INCH = 6;

  private static final double MM_PER_INCH = 25.4;
  private static final double CROSS_MM = 5;
  private static final double LETTERS_MM = 3;
  private static final double LINE_MM = 4.4;
  private static final double TICK_MM = 3;
  private static final double LEFT_MM = 15;
  private static final double PLAN_HIGH_MM = 75;
  private static final double BELOW_MM = 15;

  private final PaperTemplate template;
  private final Paper paper;
  private final Tiles tiles;
  private final PdfLetters letters;

  private TemplatePdf(PaperTemplate template, Paper paper, PdfLetters letters) {
    this.template = template;
    this.paper = paper;
    this.letters = letters;
    this.tiles = Tiles.of(template.bounds(), paper);
  }

  /** The file. */
  public static byte[] bytes(PaperTemplate template, Paper paper) {
    try (PDDocument document = new PDDocument()) {
      document.setDocumentId(0L);
      return new TemplatePdf(template, paper, PdfLetters.of(document, template)).write(document);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private byte[] write(PDDocument document) throws IOException {
    plan(document);
    for (int row = 0; row < tiles.rows(); row++) {
      for (int column = 0; column < tiles.columns(); column++) {
        add(document, tiles.pageWidthMm(), tiles.pageHeightMm(), tile(row, column));
      }
    }
    letters.finish();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    document.save(out);
    return out.toByteArray();
  }

  private void add(PDDocument document, double widthMm, double heightMm, PdfContent content)
      throws IOException {
    PDPage page =
        new PDPage(
            new PDRectangle(
                (float) (widthMm * PdfContent.POINTS_PER_MM),
                (float) (heightMm * PdfContent.POINTS_PER_MM)));
    COSDictionary fonts = new COSDictionary();
    letters.addTo(fonts);
    PDResources resources = new PDResources();
    resources.getCOSObject().setItem(COSName.FONT, fonts);
    page.setResources(resources);
    PDStream stream = new PDStream(document);
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(content.bytes());
    }
    page.setContents(stream);
    document.addPage(page);
  }

  private PdfContent tile(int row, int column) {
    PdfContent page = new PdfContent(letters);
    Bounds shown = tiles.window(row, column);
    double m = Tiles.MARGIN_MM;
    Bounds onPage = new Bounds(m, m, m + shown.width(), m + shown.height());
    page.window(shown, onPage);
    template.marks().stream().filter(k -> touches(k, shown)).forEach(page::mark);
    template.words().stream().filter(w -> shown.contains(w.at())).forEach(page::words);
    tiles.crosses().stream().filter(shown::contains).forEach(c -> cross(page, c));
    page.wholePage();
    page.mark(new Mark(rectangle(onPage), Pen.SEAM));
    page.words(
        m,
        m - LINE_MM - 1,
        LETTERS_MM,
        "Page "
            + Tiles.name(row, column)
            + " of "
            + template.name()
            + ", 1:1. Cut along the dotted line where a neighbour lies below, and lay the crosses"
            + " on each other.");
    return page;
  }

  private static boolean touches(Mark mark, Bounds window) {
    return mark.path().bounds().grown(1).touches(window);
  }

  private static void cross(PdfContent page, Point c) {
    page.line(c.x() - CROSS_MM, c.y(), c.x() + CROSS_MM, c.y(), Pen.NARROW);
    page.line(c.x(), c.y() - CROSS_MM, c.x(), c.y() + CROSS_MM, Pen.NARROW);
    page.mark(new Mark(Path.circle(c, CROSS_MM / 2), Pen.NARROW));
  }

  private static Path rectangle(Bounds b) {
    return Path.polyline(b.corners(), true);
  }

  private void plan(PDDocument document) throws IOException {
    PdfContent page = new PdfContent(letters);
    double y = paper.heightMm() - 20;
    page.words(LEFT_MM, y, 5, template.name() + ": template at full size");
    y -= 7;
    page.words(LEFT_MM, y, LETTERS_MM, template.job() + ". " + paper.title() + ", " + pages());
    y -= LINE_MM;
    page.words(
        LEFT_MM,
        y,
        LETTERS_MM,
        "Print at 100 %, not fitted to the page. Then measure both bars with a steel rule:");
    y -= LINE_MM;
    page.words(
        LEFT_MM, y, LETTERS_MM, "if one is off by more than you want on the frame, do not use it.");
    bar(page, y - 12, BAR_MM, 10, "150 mm");
    bar(page, y - 26, BAR_INCH * MM_PER_INCH, MM_PER_INCH / 2, "6 in");
    y = drawnPlan(page, y - 36) - 9;
    List<String> lines = lines();
    int next = 0;
    while (true) {
      while (next < lines.size() && y > BELOW_MM) {
        page.words(LEFT_MM, y, LETTERS_MM, lines.get(next++));
        y -= LINE_MM;
      }
      add(document, paper.widthMm(), paper.heightMm(), page);
      if (next == lines.size()) {
        return;
      }
      page = new PdfContent(letters);
      y = paper.heightMm() - 20;
    }
  }

  private String pages() {
    return tiles.count() == 1
        ? "1 page at full size."
        : tiles.count()
            + " pages at full size: "
            + tiles.rows()
            + (tiles.rows() == 1 ? " row, " : " rows, ")
            + tiles.columns()
            + (tiles.columns() == 1 ? " column." : " columns.");
  }

  private static void bar(PdfContent page, double y, double longMm, double stepMm, String text) {
    page.line(LEFT_MM, y, LEFT_MM + longMm, y, Pen.NARROW);
    int steps = (int) Math.rint(longMm / stepMm);
    for (int i = 0; i <= steps; i++) {
      double x = LEFT_MM + i * stepMm;
      page.line(x, y, x, y + (i == 0 || i == steps ? 2 * TICK_MM : TICK_MM), Pen.NARROW);
    }
    page.words(LEFT_MM + longMm + 3, y, LETTERS_MM, text);
  }

  /** Draws the pages over the template, small; gives the height below it. */
  private double drawnPlan(PdfContent page, double topMm) {
    Bounds all = tiles.window(tiles.rows() - 1, 0).with(tiles.window(0, tiles.columns() - 1));
    double scale =
        Math.min((paper.widthMm() - 2 * LEFT_MM) / all.width(), PLAN_HIGH_MM / all.height());
    double bottom = topMm - all.height() * scale;
    Affine small =
        Affine.translation(-all.minX(), -all.minY())
            .then(Affine.scaling(scale, scale))
            .then(Affine.translation(LEFT_MM, bottom));
    template.marks().stream()
        .filter(k -> k.pen() == Pen.WIDE || k.pen() == Pen.NARROW)
        .forEach(k -> page.mark(new Mark(k.path().transformed(small), Pen.NARROW)));
    for (int row = 0; row < tiles.rows(); row++) {
      for (int column = 0; column < tiles.columns(); column++) {
        Path window = rectangle(tiles.window(row, column)).transformed(small);
        page.mark(new Mark(window, Pen.SEAM));
        Bounds b = window.bounds();
        page.words(b.minX() + 3, b.maxY() - LETTERS_MM - 1, LETTERS_MM, Tiles.name(row, column));
      }
    }
    return bottom;
  }

  /** The notes, broken at blanks. */
  private List<String> lines() {
    int most = PdfContent.lettersIn(paper.widthMm() - 2 * LEFT_MM, LETTERS_MM);
    List<String> lines = new ArrayList<>();
    for (String note : template.notes()) {
      String rest = note;
      while (rest.length() > most) {
        int blank = rest.lastIndexOf(' ', most);
        int at = blank > 0 ? blank : most;
        lines.add(rest.substring(0, at));
        rest = "    " + rest.substring(at).strip();
      }
      lines.add(rest);
    }
    return lines;
  }
}
