package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Letters that are carved in a font of the maker's own, which lies beside the job. */
class FontJobTest {
  /**
   * How wide "ill" is, in units of which the letter size has 2048: two advances, and from the left
   * edge of the i to the right edge of the l. Source: the font's own hmtx, glyf and head tables.
   */
  private static final double ILL = 2 * 1229 + 1147 - 118;

  private static final String JOB =
      """
      job: Small
      units: mm
      artwork:
        name:
          file: name.svg
          font: own.ttf
      panels:
        front:
          size: {width: 70, height: 60, corner: 5}
          stock: {material: white ash, length: 100, width: 90, thickness: 10}
          design:
            - place: name
              along: {count: 1}
          work:
            - groove: {on: name, tool: vee 60, depth: 1}
      """;

  @TempDir Path folder;

  private Shell.Result make(String job) throws IOException {
    Files.writeString(
        folder.resolve("name.svg"),
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"40mm\" height=\"20mm\""
            + " viewBox=\"0 0 40 20\"><text y=\"15\" font-family=\"serif\" font-size=\"10\">ill"
            + "</text></svg>");
    Files.writeString(folder.resolve("job.yaml"), job);
    return new Shell(folder).run("make", "job.yaml");
  }

  private void ownFont() throws IOException {
    try (InputStream in =
        FontJobTest.class.getResourceAsStream("/liberation/LiberationMono-Bold.ttf")) {
      Files.write(folder.resolve("own.ttf"), in.readAllBytes());
    }
  }

  /** From the least X to the greatest of all places where the tool is in the wood. */
  private double carvedWidthMm() throws IOException {
    double x = 0;
    double z = 0;
    double least = Double.MAX_VALUE;
    double most = -Double.MAX_VALUE;
    for (String line : Files.readAllLines(folder.resolve("small/front/front-01.nc"))) {
      x = word('X', line, x);
      z = word('Z', line, z);
      if (z < 0) {
        least = Math.min(least, x);
        most = Math.max(most, x);
      }
    }
    return most - least;
  }

  private static double word(char letter, String line, double before) {
    Matcher word = Pattern.compile(letter + "(-?[0-9.]+)").matcher(line);
    return !line.startsWith("(") && word.find() ? Double.parseDouble(word.group(1)) : before;
  }

  @Test
  void letters_are_carved_in_the_font_beside_the_job_and_the_report_names_it() throws IOException {
    ownFont();
    Shell.Result result = make(JOB);
    assertThat(result.code()).as(result.err()).isZero();
    String words = "3 letters are set in Liberation Mono Bold";
    assertThat(Files.readString(folder.resolve("small/front/report.json"))).contains(words);
    assertThat(Files.readString(folder.resolve("small/front/setup.html"))).contains(words);
    assertThat(carvedWidthMm()).isCloseTo(ILL * 10 / 2048, within(0.002));
  }

  @Test
  void a_font_that_is_not_there_is_told_at_its_line() throws IOException {
    Shell.Result result = make(JOB);
    assertThat(result.code()).isEqualTo(3);
    assertThat(result.err())
        .contains("job.yaml:6:11: error[JOB-")
        .contains("can't read the font own.ttf")
        .contains("hint: the name is taken from the folder of the job file");
    assertThat(folder.resolve("small")).doesNotExist();
  }

  @Test
  void a_file_that_is_no_font_is_told_at_its_line() throws IOException {
    Files.writeString(folder.resolve("own.ttf"), "no font");
    Shell.Result result = make(JOB);
    assertThat(result.code()).isEqualTo(3);
    assertThat(result.err())
        .contains("job.yaml:6:11: error[ART-026]: own.ttf: this is not a font that can be read")
        .contains("hint: name a single TrueType or OpenType font (.ttf, .otf)");
    assertThat(folder.resolve("small")).doesNotExist();
  }

  @Test
  void a_font_for_a_picture_or_a_dxf_drawing_is_refused() throws IOException {
    ownFont();
    for (String kind : new String[] {"png", "dxf"}) {
      String file = "name." + kind;
      Files.write(folder.resolve(file), new byte[] {1});
      String job = JOB.replace("file: name.svg", "file: " + file + "\n    height: 20");
      Shell.Result made = make(job);
      assertThat(made.code()).as(made.err()).isEqualTo(ExitCode.BAD_INPUT.number());
      String why = kind.equals("png") ? "a picture has no text" : "text of a DXF drawing is left";
      assertThat(made.err()).contains("job.yaml:7:11: error[JOB-").contains(why);
      Shell.Result looked =
          new Shell(folder).run("look", file, "--height", "20", "--font", "own.ttf");
      assertThat(looked.code()).as(looked.err()).isEqualTo(ExitCode.USAGE.number());
      assertThat(looked.err()).contains("--font is for the text of SVG drawings");
    }
  }
}
