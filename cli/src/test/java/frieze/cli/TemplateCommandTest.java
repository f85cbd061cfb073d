package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TemplateCommandTest {
  static {
    // The library keeps a list of the system's fonts; not in somebody's home.
    System.setProperty("pdfbox.fontcache", System.getProperty("java.io.tmpdir"));
  }

  private static final String JOB =
      """
      job: Bench
      units: mm
      machine: benchtop router
      artwork:
        bow: {file: bow.svg, width: 100}
      panels:
        front:
          opening: {width: 300, height: 100, corner: 5}
          fit: {gap: 1}
          stock: {material: white ash, length: 320, width: 120, thickness: 19}
          design:
            - place: bow
              along: {count: 2}
          work:
            - groove: {on: bow, tool: vee 60, depth: 1}
            - bore: {tool: flat 1/8, diameter: 6, depth: 5, at: [{x: 12.5, y: 49}]}
      """;

  /** A half circle, 100 wide: its length is 50 pi. */
  private static final String BOW =
      "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' height='50mm' viewBox='0 0 100 50'>"
          + "<path id='arch' d='M0 50A50 50 0 0 1 100 50' fill='none' stroke='#000'/></svg>";

  @TempDir Path folder;

  @Test
  void every_number_on_the_plan_is_the_one_worked_out_by_hand() throws IOException {
    assertThat(run("--paper", "letter").code()).isZero();
    String text = text(folder.resolve("bench/templates/front.pdf"));
    assertThat(text).contains("298 mm (11.732 in) by 98 mm (3.858 in)");
    assertThat(text).contains("12.5 mm").contains("49 mm").contains("6 mm").contains("5 mm");
    assertThat(text)
        .contains(String.format(Locale.ROOT, "%.2f mm", 50 * Math.PI))
        .contains("developed, 2 times");
    // The opening and half a millimetre of tape on each side.
    assertThat(text).contains("301 mm").contains("101 mm");
    assertThat(text).contains("1 row, 2 columns");
    assertThat(Files.readString(folder.resolve("bench/templates/front.svg"))).contains("mm\"");
  }

  /**
   * White ash, flat sawn: 0.00274 for 1 % across (Wood Handbook, table 13-5), from 6 to 10 %. The
   * hole lies 40 above the middle of a panel that the play of 0.5 makes smaller.
   */
  @Test
  void the_slots_in_the_steel_are_as_long_as_the_wood_moves() throws IOException {
    String fit =
        "fit: {species: white ash, moisture: {now: 8%, lowest: 6%, highest: 10%}, play: 0.5}";
    String job = JOB.replace("fit: {gap: 1}", fit).replace("y: 49", "y: 89");
    assertThat(runJob(job, "--paper", "A4").code()).isZero();
    double high = (100 - 1) / (1 + 0.00274 * 2);
    double across = (89 - high / 2) * 0.00274 * 4;
    assertThat(text(folder.resolve("bench/templates/front.pdf")))
        .contains(String.format(Locale.ROOT, "and %.2f mm across", across))
        .contains("screwed tight");
  }

  @Test
  void other_papers_are_refused() throws IOException {
    assertThat(run("--paper", "A9").code()).isEqualTo(ExitCode.USAGE.number());
  }

  private Shell.Result run(String... more) throws IOException {
    return runJob(JOB, more);
  }

  private Shell.Result runJob(String job, String... more) throws IOException {
    Files.writeString(folder.resolve("job.yaml"), job);
    Files.writeString(folder.resolve("bow.svg"), BOW);
    String[] all = new String[more.length + 2];
    all[0] = "template";
    all[1] = "job.yaml";
    System.arraycopy(more, 0, all, 2, more.length);
    return new Shell(folder).run(all);
  }

  private static String text(Path pdf) throws IOException {
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }
}
