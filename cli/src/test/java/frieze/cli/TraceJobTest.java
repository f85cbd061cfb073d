package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A leaf drawn on a sheet, photographed at an angle, traced and carved. */
class TraceJobTest {
  private static final int WIDTH = 900;
  private static final int HEIGHT = 1100;

  /** From millimetres of the sheet, Y down from its upper left corner, to pixels of the photo. */
  private static final double[] CAMERA = {7.1, 0.62, 60, 0.31, 7.4, 45, 0.0006, 0.0011};

  @TempDir Path folder;

  private static double[] seen(double xMm, double yMm) {
    double w = CAMERA[6] * xMm + CAMERA[7] * yMm + 1;
    return new double[] {
      (CAMERA[0] * xMm + CAMERA[1] * yMm + CAMERA[2]) / w,
      (CAMERA[3] * xMm + CAMERA[4] * yMm + CAMERA[5]) / w
    };
  }

  private static String corners(String between, String before, String after) {
    StringBuilder text = new StringBuilder();
    double[][] sheet = {{0, 0}, {100, 0}, {100, 120}, {0, 120}};
    for (double[] corner : sheet) {
      double[] at = seen(corner[0], corner[1]);
      text.append(text.length() == 0 ? "" : between)
          .append(String.format(Locale.ROOT, "%s%.3f,%.3f%s", before, at[0], at[1], after));
    }
    return text.toString();
  }

  /** Two arcs of radius 50 mm over a chord of 80 mm: the tips are at 20 and 100 mm. */
  private static double halfWidth(double yMm) {
    return Math.sqrt(50 * 50 - (yMm - 60) * (yMm - 60)) - 30;
  }

  private void photo() throws IOException {
    Path2D leaf = new Path2D.Double();
    for (int i = 0; i <= 2000; i++) {
      double y = i <= 1000 ? 20 + 0.08 * i : 100 - 0.08 * (i - 1000);
      double[] p = seen(50 + (i <= 1000 ? 1 : -1) * halfWidth(y), y);
      if (i == 0) {
        leaf.moveTo(p[0], p[1]);
      } else {
        leaf.lineTo(p[0], p[1]);
      }
    }
    leaf.closePath();
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.setColor(new Color(0x402818));
    g.fillRect(0, 0, WIDTH, HEIGHT);
    g.setColor(new Color(0xd8d8d0));
    g.fill(sheet());
    g.setColor(new Color(0x202428));
    g.fill(leaf);
    g.dispose();
    ImageIO.write(image, "png", folder.resolve("leaf.png").toFile());
  }

  /** The sheet lies on a dark table. */
  private static Path2D sheet() {
    Path2D sheet = new Path2D.Double();
    double[][] corners = {{0, 0}, {100, 0}, {100, 120}, {0, 120}};
    for (int i = 0; i < corners.length; i++) {
      double[] p = seen(corners[i][0], corners[i][1]);
      if (i == 0) {
        sheet.moveTo(p[0], p[1]);
      } else {
        sheet.lineTo(p[0], p[1]);
      }
    }
    sheet.closePath();
    return sheet;
  }

  /** The area between two equal arcs: twice a segment of a circle. */
  private static double area() {
    double half = Math.asin(40 / 50.0);
    return 50 * 50 * (2 * half - Math.sin(2 * half));
  }

  @Test
  void a_photo_taken_at_an_angle_is_squared_up() throws IOException {
    photo();
    Shell.Result result =
        new Shell(folder)
            .run("trace", "leaf.png", "--sheet", "100 x 120 mm", "--corners", corners(" ", "", ""));
    assertThat(result.code()).as(result.err()).isZero();
    Artwork art = new SvgReader().read("leaf.svg", Files.readAllBytes(folder.resolve("leaf.svg")));
    assertThat(art.bounds().height()).isCloseTo(80, within(0.05));
    assertThat(art.bounds().width()).isCloseTo(40, within(0.03));
    assertThat(art.filled(0.001).area()).isCloseTo(area(), within(0.002 * area()));
  }

  @Test
  void a_photo_named_in_a_job_is_carved_at_its_size() throws IOException {
    photo();
    Files.writeString(folder.resolve("job.yaml"), JOB.replace("CORNERS", corners(", ", "[", "]")));
    Shell.Result result = new Shell(folder).run("make", "job.yaml");
    assertThat(result.code()).as(result.err()).isZero();
    String report = Files.readString(folder.resolve("small/front/report.json"));
    assertThat(report).contains("\"file\" : \"leaf.png\"").contains("\"height\" : 40.0");
    assertThat(Files.readString(folder.resolve("small/front/front-01.nc"))).contains("G1");
  }

  private static final String JOB =
      """
      job: Small
      units: mm
      artwork:
        leaf:
          file: leaf.png
          height: 40
          trace: {sheet: {corners: [CORNERS], width: 100, height: 120}, smallest: 2}
      panels:
        front:
          size: {width: 70, height: 60, corner: 5}
          stock: {material: white ash, length: 100, width: 90, thickness: 10}
          design:
            - place: leaf
              along: {count: 1}
          work:
            - recess: {on: leaf, tool: flat 1/8, depth: 2}
            - cutout: {tool: flat 1/4, hold: {tabs: 4, width: 6, thickness: 3}}
      """;
}
