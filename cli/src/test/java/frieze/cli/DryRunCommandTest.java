package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class DryRunCommandTest {
  /** A square of 50 mm, 2 mm deep; the tool cuts at its centre. */
  private static final String SQUARE =
      """
      (a square)
      G21 G90 G94
      G0 Z5
      S18000 M3
      G0 X10 Y10
      G1 Z-2 F200
      G1 X60 F1000
      G1 Y60
      G1 X10
      G1 Y10
      G0 Z5
      M5
      M2
      """;

  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void start() throws IOException {
    shell = new Shell(folder);
    Files.writeString(folder.resolve("square.nc"), SQUARE);
  }

  @Test
  void a_sound_program_from_anywhere_is_told_and_what_was_not_checked() {
    Shell.Result result = shell.run("dryrun", "square.nc");
    assertThat(result.code()).as(result.err()).isZero();
    assertThat(result.out()).contains("10.00").contains("60.00").contains("-2.00");
    assertThat(result.out()).contains("NOT CHECKED").contains("no errors");
    assertThat(result.err()).isEmpty();
  }

  @Test
  void a_cut_beside_the_stock_is_an_error() {
    Shell.Result result =
        shell.run("dryrun", "--stock", "40 x 40 x 10 mm", "--tool", "1=vee 60", "square.nc");
    assertThat(result.code()).as(result.out()).isEqualTo(ExitCode.FINDING.number());
    assertThat(result.out()).contains("square.nc:7: error[DRY-002]");
  }

  @Test
  void inches_and_fractions_tell_the_same_stock() {
    String[] metric = {"dryrun", "--stock", "76.2 x 76.2 x 12.7 mm", "square.nc"};
    String[] imperial = {"dryrun", "--stock", "3 x 3 x 1/2 in", "square.nc"};
    assertThat(shell.run(metric)).isEqualTo(shell.run(imperial));
  }

  @Test
  void a_machine_that_is_too_small_is_told() {
    String far = SQUARE.replace("X60", "X900");
    Shell.Result result = dryRun(far, "--machine", "benchtop router");
    assertThat(result.code()).isEqualTo(ExitCode.FINDING.number());
    assertThat(result.out()).contains("DRY-001").contains("NO: needs 890, has 750");
  }

  @Test
  void a_text_that_is_no_program_is_exit_code_3() {
    Shell.Result result = dryRun("this is a letter\nto nobody\n");
    assertThat(result.code()).as(result.out()).isEqualTo(ExitCode.BAD_INPUT.number());
  }

  @Test
  void a_program_from_standard_input_is_told_like_a_file() {
    Shell.Result fromFile = dryRun(SQUARE);
    InputStream before = System.in;
    System.setIn(new ByteArrayInputStream(SQUARE.getBytes(StandardCharsets.US_ASCII)));
    try {
      Shell.Result piped = shell.run("dryrun", "-");
      assertThat(piped.code()).isEqualTo(fromFile.code());
      assertThat(piped.out().lines().skip(3)).isNotEmpty();
      assertThat(findings(piped)).isNotEmpty().isEqualTo(findings(fromFile));
    } finally {
      System.setIn(before);
    }
  }

  private static List<String> findings(Shell.Result result) {
    return result
        .out()
        .lines()
        .filter(l -> l.contains("NOT CHECKED") || l.contains("[DRY-"))
        .map(l -> l.replaceFirst("^[^ ]*:", ""))
        .toList();
  }

  @Test
  void an_empty_file_is_exit_code_3() {
    Shell.Result result = dryRun("");
    assertThat(result.code()).as(result.out()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.out()).contains("error[RS-023]: the file is empty");
  }

  @Test
  void a_file_that_is_not_there_is_exit_code_3() {
    Shell.Result result = shell.run("dryrun", "none.nc");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err()).contains("none.nc: error[CLI-001]");
  }

  @Test
  void wrong_options_are_exit_code_2_and_say_why() {
    Shell.Result stock = shell.run("dryrun", "--stock", "40 x 40 kg x 10", "square.nc");
    assertThat(stock.code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(stock.err()).contains("--stock").contains("kg");
    Shell.Result tool = shell.run("dryrun", "--tool", "hammer", "square.nc");
    assertThat(tool.code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(shell.run("dryrun").code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(shell.run("dryrn").code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(shell.run().code()).isEqualTo(ExitCode.USAGE.number());
  }

  @Test
  void a_wrong_call_is_told_in_two_lines() {
    Shell.Result tool = shell.run("dryrun", "--tool", "hammer", "square.nc");
    assertThat(tool.err()).startsWith("error: --tool: no tool named \"hammer\"");
    assertThat(tool.err()).endsWith("hint: `frieze dryrun --help` shows what it takes\n");
    assertThat(tool.err().lines()).hasSize(2);
    assertThat(shell.run("dryrn").err()).contains("Did you mean: frieze dryrun?");
  }

  /** The square is cut by T1, then its inside by T2: each tool has its reach and its time. */
  @Test
  void each_tool_is_told_on_its_own_and_the_machines_coordinates_where_zero_is_known()
      throws IOException {
    String two =
        SQUARE
            .replace("G0 Z5\nS18000", "T1 M6\nG0 Z5\nS18000")
            .replace("M2\n", "T2 M6\nS9000 M3\nG0 X30 Y30\nG1 Z-4 F200\nG1 X40\nG0 Z5\nM5\nM2\n");
    Shell.Result result = dryRun(two, "--zero-at", "100, 200, -50 mm");
    assertThat(result.out())
        .containsPattern("T1 +207 +-2\\.00 +10\\.00 to 60\\.00 +10\\.00 to 60\\.00")
        .containsPattern("T2 +19 +-4\\.00 +30\\.00 to 40\\.00 +30\\.00 to 30\\.00")
        .containsPattern("on the machine +cuts from +to.*\\nX +110\\.00 +160\\.00");
    Shell.Result json = dryRun(two, "--zero-at", "100, 200, -50 mm", "--format", "json");
    assertThat(json.out()).contains("\"tools\"").contains("\"cutsOnMachine\"");
  }

  @Test
  void the_cell_of_the_stock_can_be_set_and_is_refused_where_it_cannot_be_held() {
    String[] call = {"--stock", "80 x 80 x 12 mm", "--tool", "1=vee 60", "--cell"};
    Shell.Result fine =
        shell.run("dryrun", "square.nc", call[0], call[1], call[2], call[3], call[4], "0.05");
    assertThat(fine.code()).as(fine.err() + fine.out()).isNotEqualTo(ExitCode.USAGE.number());
    Shell.Result tiny =
        shell.run("dryrun", "square.nc", call[0], call[1], call[2], call[3], call[4], "0.001");
    assertThat(tiny.code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(tiny.err())
        .contains("too small for a stock of 80.0 x 80.0 mm; take 0.008 mm or more");
    assertThat(shell.run("dryrun", "square.nc", "--cell", "1").err()).contains("needs a stock");
  }

  @Test
  void lengths_below_0_unknown_units_and_folders_are_refused() {
    Shell.Result clearance = shell.run("dryrun", "--clearance=-5", "square.nc");
    assertThat(clearance.code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(clearance.err()).contains("--clearance");
    Shell.Result units = shell.run("dryrun", "--units", "furlong", "square.nc");
    assertThat(units.code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(units.err()).contains("--units").contains("mm or in");
    Shell.Result here = shell.run("dryrun", ".");
    assertThat(here.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(here.err()).contains("is a folder");
  }

  @Test
  void a_picture_shows_the_groove_of_the_square() throws IOException {
    Shell.Result none = shell.run("dryrun", "--picture", "p.png", "square.nc");
    assertThat(none.code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(none.err()).contains("--picture").contains("--stock");
    Shell.Result result =
        shell.run(
            "dryrun",
            "--picture",
            "p.png",
            "--stock",
            "70 x 70 x 10 mm",
            "--tool",
            "1=flat 1/8",
            "square.nc");
    assertThat(result.code()).as(result.err()).isNotEqualTo(ExitCode.USAGE.number());
    BufferedImage image = ImageIO.read(folder.resolve("p.png").toFile());
    int side = image.getWidth();
    assertThat(image.getHeight()).isGreaterThan(2 * side);
    // On the groove and beside it, in the shaded stock and in the map of depths below it.
    int bottom = image.getHeight() - 1;
    int groove = side * 10 / 70;
    int middle = side / 2;
    assertThat(brightness(image, groove, middle)).isLessThan(brightness(image, middle, middle));
    assertThat(brightness(image, groove, bottom - middle))
        .isLessThan(brightness(image, middle, bottom - middle) / 2);
  }

  private static int brightness(BufferedImage image, int x, int y) {
    int rgb = image.getRGB(x, y);
    return (rgb >> 16 & 255) + (rgb >> 8 & 255) + (rgb & 255);
  }

  @Test
  void json_is_well_formed_and_has_the_facts() throws IOException {
    Shell.Result result = shell.run("dryrun", "--format", "json", "square.nc");
    try (JsonParser json = new JsonFactory().createParser(result.out())) {
      int tokens = 0;
      while (json.nextToken() != null) {
        tokens++;
      }
      assertThat(tokens).isGreaterThan(50);
    }
    // Four sides of 50 mm, and 7 mm down at feed from Z5 to Z-2.
    assertThat(result.out()).contains("\"cutMm\" : 207.0").contains("\"lowestZMm\" : -2.0");
  }

  private Shell.Result dryRun(String program, String... options) {
    try {
      Files.writeString(folder.resolve("p.nc"), program);
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
    String[] args = new String[options.length + 2];
    args[0] = "dryrun";
    System.arraycopy(options, 0, args, 1, options.length);
    args[args.length - 1] = "p.nc";
    return shell.run(args);
  }
}
