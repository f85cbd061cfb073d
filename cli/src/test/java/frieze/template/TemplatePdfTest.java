package frieze.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.template.PaperTemplate.Mark;
import frieze.template.PaperTemplate.Pen;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

/**
 * The file is read and drawn by a general-purpose library, and measured there with a pixel rule.
 */
class TemplatePdfTest {
  static {
    // The library keeps a list of the system's fonts; not in somebody's home.
    System.setProperty("pdfbox.fontcache", System.getProperty("java.io.tmpdir"));
  }

  private static final double DPI = 600;
  private static final double PIXEL_MM = 25.4 / DPI;

  /** 0.05 % of a length. */
  private static final double SCALE_ERROR = 0.0005;

  /** Two upright hairlines 220 mm apart, two level ones 150 mm apart, on one page. */
  @Test
  void marks_on_a_drawn_page_are_where_they_should_be_within_a_twentieth_of_a_percent()
      throws IOException {
    PaperTemplate template =
        template(
            line(0, 0, 0, 150), line(220, 0, 220, 150), line(0, 0, 220, 0), line(0, 150, 220, 150));
    Tiles tiles = Tiles.of(template.bounds(), Paper.A4);
    assertThat(tiles.count()).isEqualTo(1);
    BufferedImage page = drawn(TemplatePdf.bytes(template, Paper.A4), 1);
    double fromLeft = Tiles.MARGIN_MM - tiles.window(0, 0).minX();
    double fromBelow = Tiles.MARGIN_MM - tiles.window(0, 0).minY();
    int row = page.getHeight() - (int) ((40 + fromBelow) / PIXEL_MM);
    double left = darkMiddle(page, fromLeft, row, true);
    double right = darkMiddle(page, 220 + fromLeft, row, true);
    assertThat(right - left).isCloseTo(220, within(220 * SCALE_ERROR));
    int column = (int) ((40 + fromLeft) / PIXEL_MM);
    double high = page.getHeight() * PIXEL_MM;
    double upper = darkMiddle(page, high - 150 - fromBelow, column, false);
    double lower = darkMiddle(page, high - fromBelow, column, false);
    assertThat(lower - upper).isCloseTo(150, within(150 * SCALE_ERROR));
  }

  @Test
  void the_check_bar_of_the_plan_is_150_mm_and_the_other_6_inches() throws IOException {
    BufferedImage page = drawn(TemplatePdf.bytes(template(line(0, 0, 50, 0)), Paper.A4), 0);
    for (Bar bar : List.of(new Bar(47.8, 150), new Bar(61.8, 152.4))) {
      int row = (int) ((bar.fromTopMm - 4.5) / PIXEL_MM);
      double left = darkMiddle(page, 15, row, true);
      double right = darkMiddle(page, 15 + bar.longMm, row, true);
      assertThat(right - left).isCloseTo(bar.longMm, within(bar.longMm * SCALE_ERROR));
    }
  }

  private record Bar(double fromTopMm, double longMm) {}

  @Test
  void the_same_template_gives_the_same_bytes() {
    PaperTemplate template = template(line(0, 0, 700, 130));
    assertThat(TemplatePdf.bytes(template, Paper.LETTER))
        .isEqualTo(TemplatePdf.bytes(template, Paper.LETTER));
  }

  /** Read back by a general-purpose library; the last letter is in no font of ours. */
  @Test
  void names_of_other_scripts_stay_readable_and_the_bytes_the_same() throws IOException {
    PaperTemplate template =
        new PaperTemplate(
            "\u017b\u00f3\u0142w \u03b1 \u0416 \u6728",
            "Bench",
            List.of(new Mark(line(0, 0, 50, 0), Pen.NARROW)),
            List.of(),
            List.of("S1: 12.5 mm at 80\u00b0."));
    byte[] pdf = TemplatePdf.bytes(template, Paper.A4);
    try (PDDocument document = Loader.loadPDF(pdf)) {
      String text = new PDFTextStripper().getText(document);
      assertThat(text)
          .contains("\u017b\u00f3\u0142w \u03b1 \u0416 ?: template")
          .contains("80\u00b0");
    }
    assertThat(pdf).isEqualTo(TemplatePdf.bytes(template, Paper.A4)).hasSizeLessThan(60_000);
  }

  @Test
  void pages_cover_the_drawing_and_each_cross_is_on_two_of_them() {
    for (Paper paper : Paper.values()) {
      for (double width : new double[] {20, 257, 300, 727, 1500}) {
        Bounds drawing = new Bounds(-3, 5, width, 5 + width / 3);
        Tiles tiles = Tiles.of(drawing, paper);
        List<Bounds> windows = windows(tiles);
        for (int i = 0; i <= 50; i++) {
          Point p = new Point(-3 + i * drawing.width() / 50, 5 + i * drawing.height() / 50);
          assertThat(windows).as("%s at %s", drawing, p).anyMatch(w -> w.contains(p));
        }
        for (Point cross : tiles.crosses()) {
          assertThat(windows.stream().filter(w -> w.contains(cross)).count())
              .as("pages that show the cross at %s", cross)
              .isGreaterThanOrEqualTo(2);
        }
      }
    }
  }

  private static List<Bounds> windows(Tiles tiles) {
    List<Bounds> windows = new ArrayList<>();
    for (int row = 0; row < tiles.rows(); row++) {
      for (int column = 0; column < tiles.columns(); column++) {
        windows.add(tiles.window(row, column));
      }
    }
    return windows;
  }

  /** Closed form: a half circle of radius 30 and its diameter. */
  @Test
  void the_developed_length_of_a_line_is_that_of_its_curve() {
    Path half = new Path(List.of(Arc.polar(new Point(1, 2), 30, 0.3, Math.PI)), false);
    assertThat(TemplateMaker.lengthMm(half)).isCloseTo(Math.PI * 30, within(0.005));
    assertThat(TemplateMaker.lengthMm(half.transformed(Affine.scaling(2, 2))))
        .isCloseTo(Math.PI * 60, within(0.005));
  }

  private static PaperTemplate template(Path... paths) {
    List<Mark> marks = List.of(paths).stream().map(p -> new Mark(p, Pen.NARROW)).toList();
    return new PaperTemplate("apron", "Bench", marks, List.of(), List.of("A note."));
  }

  private static Path line(double x1, double y1, double x2, double y2) {
    return TemplateMaker.line(x1, y1, x2, y2);
  }

  private static BufferedImage drawn(byte[] pdf, int page) throws IOException {
    try (PDDocument document = Loader.loadPDF(pdf)) {
      return new PDFRenderer(document).renderImageWithDPI(page, (float) DPI, ImageType.GRAY);
    }
  }

  /** The middle of the ink within 1.5 mm of a place, along one row or column of pixels. */
  private static double darkMiddle(BufferedImage page, double aboutMm, int across, boolean alongX) {
    double weight = 0;
    double sum = 0;
    int from = (int) ((aboutMm - 1.5) / PIXEL_MM);
    for (int i = from; i < from + (int) (3 / PIXEL_MM); i++) {
      int grey = page.getRaster().getSample(alongX ? i : across, alongX ? across : i, 0);
      weight += 255 - grey;
      sum += (255 - grey) * (i + 0.5);
    }
    assertThat(weight).as("ink at %s mm", aboutMm).isPositive();
    return sum / weight * PIXEL_MM;
  }
}
