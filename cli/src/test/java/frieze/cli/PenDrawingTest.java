package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Area;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** From a picture of a line that a pen drew thick and thin to a program. */
class PenDrawingTest {
  private static final double PX_PER_MM = 20;

  @TempDir Path folder;

  /** Half widths of 1 mm at x 5 mm and 0.3 mm at x 25 mm. */
  private void picture() throws IOException {
    BufferedImage image = new BufferedImage(600, 200, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, image.getWidth(), image.getHeight());
    g.setColor(Color.BLACK);
    g.scale(PX_PER_MM, PX_PER_MM);
    double sine = 0.7 / 20;
    double cosine = Math.sqrt(1 - sine * sine);
    Path2D sides = new Path2D.Double();
    sides.moveTo(5 + sine, 5 - cosine);
    sides.lineTo(25 + 0.3 * sine, 5 - 0.3 * cosine);
    sides.lineTo(25 + 0.3 * sine, 5 + 0.3 * cosine);
    sides.lineTo(5 + sine, 5 + cosine);
    sides.closePath();
    Area line = new Area(sides);
    line.add(new Area(new Ellipse2D.Double(4, 4, 2, 2)));
    line.add(new Area(new Ellipse2D.Double(24.7, 4.7, 0.6, 0.6)));
    g.fill(line);
    g.dispose();
    ImageIO.write(image, "png", folder.resolve("vein.png").toFile());
  }

  /** A pointed bit of 60 degrees is half the width over tan 30 degrees deep. */
  @Test
  void a_vein_is_carved_as_deep_as_it_is_drawn_wide_all_along() throws IOException {
    picture();
    Files.writeString(
        folder.resolve("vein.yaml"),
        """
        job: vein
        units: mm
        artwork:
          vein: {file: vein.png, trace: {dpi: 508, lines up to: 2.5}}
        panels:
          a:
            size: {width: 40, height: 20}
            stock: {material: white ash, length: 50, width: 30, thickness: 19}
            position: {x: 5, y: 5}
            design: [{place: vein, along: {count: 1}}]
            work: [{groove: {on: vein, tool: vee 60, depth: 4, by width: yes}}]
        """);
    Shell.Result result = new Shell(folder).run("make", "vein.yaml");
    assertThat(result.code()).as(result.err()).isZero();
    List<double[]> places = places(Files.readString(folder.resolve("vein/a/a-01.nc")));
    double tip = places.stream().mapToDouble(p -> p[0]).max().orElseThrow();
    assertThat(places).hasSizeGreaterThan(20);
    double root = places.stream().mapToDouble(p -> p[0]).min().orElseThrow();
    assertThat(tip - root).isCloseTo(20, within(0.1));
    for (double[] p : places) {
      double width = 2 * (0.3 + 0.7 * (tip - p[0]) / 20);
      double slack = p[0] > root + 1 && p[0] < tip - 1 ? 0.02 : 0.07; // averaged over the pen
      assertThat(p[1])
          .as("at %s", p[0])
          .isCloseTo(width / 2 / Math.tan(Math.PI / 6), within(slack));
    }
  }

  /** Where the program's moves go in the material, and how deep. */
  private static List<double[]> places(String program) {
    List<double[]> places = new ArrayList<>();
    double x = Double.NaN;
    double z = 1;
    for (String line : program.lines().filter(l -> !l.startsWith("(")).toList()) {
      Matcher word = Pattern.compile("([XZ])(-?[0-9.]+)").matcher(line);
      while (word.find()) {
        double value = Double.parseDouble(word.group(2));
        x = word.group(1).equals("X") ? value : x;
        z = word.group(1).equals("Z") ? value : z;
      }
      if (z < 0) {
        places.add(new double[] {x, -z});
      }
    }
    return places;
  }
}
