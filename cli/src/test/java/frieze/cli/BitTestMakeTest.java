package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A V-bit is measured by a test cut, and the next program is cut by what was measured. */
class BitTestMakeTest {
  private static final String SLOT =
      "<svg xmlns='http://www.w3.org/2000/svg' width='40mm' height='6mm' viewBox='0 0 40 6'>"
          + "<rect width='40' height='6'/></svg>";

  private static final String JOB =
      """
      job: Slot
      units: mm
      artwork:
        slot: {file: slot.svg, height: 6}
      panels:
        board:
          size: {width: 60, height: 30}
          stock: {material: pine, length: 60, width: 30, thickness: 18, blank: yes}
          design:
            - place: slot
              along: {count: 1}
          work:
            - vgroove: {on: slot, tool: vee mine}
      """;

  private static final String SHOP =
      """
      units: mm
      tools:
        vee mine:
          {shape: vee, diameter: 12.7, flute length: 11, top speed: 20000, top feed: 2000,
           top plunge: 400, %s}
      """;

  @TempDir Path folder;

  /** Depth = (width - tip) / 2 / tan(angle / 2), for a slot 6 mm wide. */
  @Test
  void the_next_program_is_as_deep_as_the_measured_bit_asks_for() throws IOException {
    assertThat(deepest("angle: 60")).isCloseTo(3 / Math.tan(Math.toRadians(30)), within(6e-4));
    double growth = 2 * Math.tan(Math.toRadians(57.0 / 2));
    String cut =
        String.format(
            Locale.ROOT,
            "angle: 60, test cut: [{depth: 2, width: %.9f}, {depth: 6, width: %.9f}]",
            0.25 + 2 * growth,
            0.25 + 6 * growth);
    assertThat(deepest(cut)).isCloseTo((6 - 0.25) / growth, within(6e-4));
    Shell.Result shop = new Shell(folder).run("shop");
    assertThat(shop.out()).contains("vee 57 deg, tip 0.25 mm");
  }

  @Test
  void a_test_cut_that_contradicts_itself_is_refused_with_its_figures() throws IOException {
    for (List<String> wrong :
        List.of(
            List.of(
                "test cut: [{depth: 2, width: 2.4}, {depth: 4, width: 5.2},"
                    + " {depth: 6, width: 7}]",
                "59.8 deg",
                "4.00 mm deep and 5.20 mm wide would be 0.33 mm narrower"),
            List.of("test cut: [{depth: 2, width: 2}, {depth: 2.5, width: 3}]", "0.5 mm", "1 mm"),
            List.of("test cut: [{depth: 2, width: 4}, {depth: 4, width: 2}]", "no wider", "2.00"),
            List.of("test cut: [{depth: 2, width: 2.4}, {depth: 4, width: 47}]", "47.00", "12.7"),
            List.of(
                "angle: 90, test cut: [{depth: 2, width: 2.4}, {depth: 4, width: 4.7}]",
                "59.8 deg",
                "90.0 deg"))) {
      write(wrong.get(0));
      Shell.Result result = new Shell(folder).run("make", "job.yaml");
      assertThat(result.code()).as(wrong.get(0)).isEqualTo(ExitCode.BAD_INPUT.number());
      assertThat(result.err()).contains("JOB-038", wrong.get(1), wrong.get(2), "hint: ");
    }
  }

  @Test
  void angles_and_depths_that_no_bit_can_have_are_refused_where_they_stand() throws IOException {
    for (String angle : List.of("0", "180", "-60")) {
      write("angle: " + angle);
      Shell.Result result = new Shell(folder).run("make", "job.yaml");
      assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
      assertThat(result.err())
          .contains("shop.yaml:5:", "JOB-042", angle + " must be more than 0 and below 180 deg");
    }
    for (String depth : List.of("0", "-2")) {
      write("angle: 60");
      Files.writeString(
          folder.resolve("job.yaml"),
          JOB.replace("tool: vee mine", "tool: vee mine, deepest: " + depth));
      Shell.Result result = new Shell(folder).run("make", "job.yaml");
      assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
      assertThat(result.err()).contains("job.yaml:", "JOB-041", depth + " must be more than 0");
    }
  }

  private void write(String keys) throws IOException {
    Files.writeString(folder.resolve("slot.svg"), SLOT);
    Files.writeString(folder.resolve("job.yaml"), JOB);
    Files.writeString(folder.resolve("shop.yaml"), String.format(Locale.ROOT, SHOP, keys));
  }

  /** How far the program goes below the stock's top. */
  private double deepest(String keys) throws IOException {
    write(keys);
    Shell.Result made = new Shell(folder).run("make", "job.yaml");
    assertThat(made.code()).as(made.err()).isZero();
    String program =
        Files.readString(folder.resolve("slot/board/board-01.nc"), StandardCharsets.US_ASCII);
    Matcher depth = Pattern.compile("Z(-[0-9.]+)").matcher(program);
    double lowest = 0;
    while (depth.find()) {
      lowest = Math.min(lowest, Double.parseDouble(depth.group(1)));
    }
    return -lowest;
  }
}
