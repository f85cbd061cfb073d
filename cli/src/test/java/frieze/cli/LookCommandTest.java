package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Two squares joined by a bar 2 mm wide, and a slot of 4 mm; all known by arithmetic. */
class LookCommandTest {
  private static final String BARBELL =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"50mm\" height=\"20mm\" viewBox=\"0 0 50 20\">"
          + "<path id=\"bar\" d=\"M0 0H20V9H30V0H50V20H30V11H20V20H12V8H8V20H0Z\"/></svg>";

  @TempDir Path folder;

  private Shell.Result look(String... more) throws IOException {
    Files.writeString(folder.resolve("bar.svg"), BARBELL);
    String[] all = new String[more.length + 2];
    all[0] = "look";
    all[1] = "bar.svg";
    System.arraycopy(more, 0, all, 2, more.length);
    return new Shell(folder).run(all);
  }

  @Test
  void the_three_numbers_are_told() throws IOException {
    Shell.Result result = look();
    assertThat(result.code()).as(result.err()).isZero();
    assertThat(result.out())
        .contains("size            50 mm (1.969 in) x 20 mm (0.787 in)")
        .contains("pieces          1 area with 0 holes")
        .contains("narrowest web   2 mm (0.079 in) at x ")
        .contains("narrowest gap   4 mm (0.157 in) at x 10")
        .contains("bit for inside  flat 1/16 goes everywhere but into")
        .contains("bit for around  flat 1/8 goes everywhere but into");
  }

  @Test
  void twice_as_large_is_twice_as_wide() throws IOException {
    assertThat(look("--height", "40 mm").out())
        .contains("narrowest web   4 mm")
        .contains("narrowest gap   8 mm")
        .contains("bit for inside  flat 1/8 goes")
        .contains("bit for around  flat 1/4 goes");
  }

  /** The figure is grey, so is what is drawn in the detail of its web. */
  @Test
  void the_picture_shows_the_figure() throws IOException {
    look("--to", "pictures/seen.png");
    BufferedImage seen = ImageIO.read(folder.resolve("pictures/seen.png").toFile());
    assertThat(seen.getWidth()).isEqualTo(1200);
    int grey = 0;
    for (int y = 0; y < seen.getHeight(); y++) {
      for (int x = 0; x < seen.getWidth(); x++) {
        grey += (seen.getRGB(x, y) & 0xffffff) == 0xb9b9b9 ? 1 : 0;
      }
    }
    double pxPerMm = (1200 - 180) / 50.0;
    double area = 2 * 20 * 20 + 10 * 2 - 4 * 12;
    assertThat(grey).isGreaterThan((int) (0.97 * area * pxPerMm * pxPerMm));
  }

  @Test
  void a_drawing_of_lines_alone_says_that_nothing_was_measured() throws IOException {
    String line =
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"30mm\" height=\"9mm\" viewBox=\"0 0 30 9\">"
            + "<path fill=\"none\" stroke=\"#000\" stroke-width=\"2\" d=\"M4 4H24\"/></svg>";
    Files.writeString(folder.resolve("line.svg"), line);
    assertThat(new Shell(folder).run("look", "line.svg").out())
        .contains("lines      1, 2 mm (0.079 in) wide, together 20 mm")
        .contains("narrowest  not measured: the drawing has no area; see --lines outline");
    assertThat(new Shell(folder).run("look", "line.svg", "--lines", "outline").out())
        .contains("narrowest web   2 mm");
  }

  @Test
  void what_makes_no_sense_is_refused_with_the_option_named() throws IOException {
    assertThat(look("--dpi", "300").err()).contains("--dpi: is for pictures");
    assertThat(look("--lines", "both").err()).contains("--lines must be centre or outline");
    assertThat(look("--height", "4", "--width", "5").err()).contains("one of --height and --width");
    assertThat(look("--to", "bar.svg").err()).contains("bar.svg is the drawing itself");
    assertThat(look("--pick", "leaf").code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(new Shell(folder).run("look", "none.svg").err()).contains("no such file");
  }

  @Test
  void text_is_set_in_a_font_that_is_named_and_what_is_none_is_refused() throws IOException {
    Files.writeString(
        folder.resolve("name.svg"),
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"90mm\" height=\"20mm\">"
            + "<text y=\"1em\" font-size=\"10mm\">Ash</text></svg>");
    Files.writeString(folder.resolve("none.ttf"), "no font");
    try (java.io.InputStream in =
        LookCommandTest.class.getResourceAsStream("/liberation/LiberationMono-Bold.ttf")) {
      Files.write(folder.resolve("own.ttf"), in.readAllBytes());
    }
    assertThat(new Shell(folder).run("look", "name.svg", "--font", "own.ttf").err())
        .contains("note[ART-024]: 3 letters are set in Liberation Mono Bold\n");
    assertThat(new Shell(folder).run("look", "name.svg", "--font", "none.ttf").err())
        .contains("none.ttf: error[ART-026]: this is not a font that can be read");
  }
}
