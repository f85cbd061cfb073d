package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A steel panel with one opening, from the job to what lies in its folder. */
class TorchMakeTest {
  private static final String JOB =
      """
      job: Steel
      units: mm
      machine: plasma table
      artwork:
        ring: {file: ring.svg, height: 60}
      panels:
        end:
          size: {width: 140, height: 120, corner: 4}
          stock: {material: mild steel, length: 200, width: 180, thickness: [3.05, 3.02]}
          position: {x: 25, y: 25}
          clearance: 20
          design:
            - place: ring
              along: {count: 1}
          work:
            - torchcut: {chart: air 45 A, on: ring}
      """;

  private static final String RING =
      """
      <svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">
        <circle cx="30" cy="30" r="30"/>
      </svg>
      """;

  @TempDir Path folder;

  private Shell.Result make(String job, String... options) throws IOException {
    Files.writeString(folder.resolve("ring.svg"), RING);
    Files.writeString(folder.resolve("job.yaml"), job);
    String[] args = new String[options.length + 2];
    args[0] = "make";
    args[1] = "job.yaml";
    System.arraycopy(options, 0, args, 2, options.length);
    Shell.Result result = new Shell(folder).run(args);
    assertThat(result.code()).as(result.err() + result.out()).isZero();
    return result;
  }

  private String text(String file) throws IOException {
    return Files.readString(folder.resolve(file));
  }

  private static List<String> cut(String program) {
    return program.lines().filter(l -> !l.startsWith("(")).toList();
  }

  @Test
  void the_sheet_speaks_of_a_torch_and_of_nothing_that_only_a_spindle_has() throws IOException {
    Shell.Result result = make(JOB);
    String sheet = text("steel/end/setup.html");
    assertThat(sheet)
        .contains("Pierce ", "Face side: the upper one", "slats of the table", "3.05 mm, 3.02 mm")
        .contains("the arc goes through the sheet")
        .doesNotContain(
            "ZINC",
            "change of tool",
            "Flutes",
            "Sticks out",
            "wood dust is",
            "deepest cut",
            "down to");
    assertThat(sheet).contains("it burns eyes and skin", "metal fume").doesNotContain("collector");
    assertThat(sheet).contains("taken to trip 0 mm late");
    assertThat(result.out() + sheet).doesNotContain("kerf and pierce time not checked");
    Shell.Result alone =
        new Shell(folder).run("dryrun", "--post", "plasma-touch", "steel/end/end-01.nc");
    assertThat(alone.out()).contains("EDGES, PIERCES AND PIECES OF THE TORCH NOT CHECKED");
  }

  /** Four points of a star, sharper than 60 degrees, on each of two panels. */
  @Test
  void what_the_kerf_cannot_do_is_listed_with_its_place_and_drawn() throws IOException {
    Files.writeString(
        folder.resolve("star.svg"),
        """
        <svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="60mm" viewBox="0 0 60 60">
          <path d="M30 0 L36 24 L60 30 L36 36 L30 60 L24 36 L0 30 L24 24 Z"/>
        </svg>
        """);
    make(
        JOB.replace("ring.svg", "star.svg")
            .replace("length: 200", "length: 400")
            .replace("on: ring}", "on: ring, rows: {along: 2, gap: 20}}"));
    String sheet = text("steel/end/setup.html");
    assertThat(sheet).contains("beyond the kerf: 8 places");
    assertThat(sheet.split("class=\"uncut\"", -1)).hasSize(1 + 8);
    String report = text("steel/end/report.json");
    String listed = report.substring(report.indexOf("beyondKerf"), report.indexOf("engagement"));
    Pattern place = Pattern.compile("\"x\" : (\\d+\\.\\d+),\\s+\"y\" : (\\d+\\.\\d+)");
    List<String> places =
        place.matcher(listed).results().map(m -> m.group(1) + " " + m.group(2)).toList();
    assertThat(places)
        .containsExactlyInAnyOrder(
            "40.0 60.0",
            "100.0 60.0",
            "70.0 30.0",
            "70.0 90.0",
            "200.0 60.0",
            "260.0 60.0",
            "230.0 30.0",
            "230.0 90.0");
  }

  /**
   * Closed forms at 7850 kg/m3 and 2.95 mm: 200 by 180 mm are 0.834 kg; 140 by 120 with corners of
   * 4 mm, less a disc of 60 mm, are 0.323 kg.
   */
  @Test
  void a_coated_sheet_is_told_before_all_else_and_weights_of_sheet_and_part_are_said()
      throws IOException {
    Shell.Result result =
        make(
            JOB.replace("material: mild steel", "material: galvanized steel")
                .replace("[3.05, 3.02]", "2.95")
                .replace("air 45 A", "air 45 A zinc"));
    assertThat(result.err()).contains("warning[TORCH-013]", "metal fume fever");
    String sheet = text("steel/end/setup.html");
    assertThat(sheet)
        .contains("class=\"warn not\">ZINC: its fume makes people ill")
        .contains("The sheet weighs 0.83 kg, what is cut out of it 0.32 kg")
        .contains("up to 0.43 mm in range 3 and 0.86 mm in range 4");
    assertThat(sheet.indexOf("ZINC")).isLessThan(sheet.indexOf("<svg"));
  }

  /** Felt for, pierced, cut, put out: once for the opening, then once for the outline. */
  @Test
  void a_torch_that_feels_for_the_sheet_is_told_where_its_switch_trips() throws IOException {
    Files.writeString(
        folder.resolve("shop.yaml"),
        """
        units: mm
        machines:
          plasma table:
            {post: plasma-touch, travel: {x: 1250, y: 1250, z: 120}, touch travel: 1.4,
             rapid: {x: 10000, y: 10000, z: 5000}, top feed: {x: 8000, y: 8000, z: 3000},
             acceleration: {x: 1000, y: 1000, z: 500}}
        """);
    make(JOB);
    String program = text("steel/end/end-01.nc");
    assertThat(program.split("G38\\.2 Z-5 F\\d+\nG92 Z-1\\.4\nG0 Z3\\.8\nM9\nM3\n", -1)).hasSize(3);
  }

  @Test
  void a_table_whose_height_is_set_by_hand_neither_feels_nor_follows() throws IOException {
    make(JOB.replace("machine: plasma table", "machine: plasma table\npost: plasma-plain"));
    List<String> lines = cut(text("steel/end/end-01.nc"));
    assertThat(lines).noneMatch(l -> l.matches(".*(G38|G92|M8|M9).*"));
    assertThat(lines).filteredOn("M3"::equals).hasSize(2);
    assertThat(lines).filteredOn("M5"::equals).hasSize(2);
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).equals("M3")) {
        assertThat(lines.get(i - 1)).matches("(G0 )?Z3\\.8");
        assertThat(lines.get(i + 1)).matches("G4 P0\\.\\d+");
        assertThat(lines.get(i + 2)).matches("(G1 )?.*Z1\\.5.*");
      }
    }
  }

  private static double farthestX(String program) {
    return Pattern.compile("X(-?[0-9.]+)")
        .matcher(program)
        .results()
        .mapToDouble(m -> Double.parseDouble(m.group(1)))
        .max()
        .orElseThrow();
  }

  /** The panel's right edge is at 165 mm, and the torch runs half a kerf beyond it. */
  @Test
  void a_kerf_that_was_measured_moves_an_edge_by_half_of_the_difference() throws IOException {
    make(JOB.replace("chart: air 45 A", "chart: air 45 A, kerf: 1.50"));
    assertThat(farthestX(text("steel/end/end-01.nc"))).isCloseTo(165.75, within(6e-4));
    make(JOB.replace("chart: air 45 A", "chart: air 45 A, kerf: 1.64"));
    assertThat(farthestX(text("steel/end/end-01.nc"))).isCloseTo(165.82, within(6e-4));
  }

  /** Opening and panel are both below 200 mm: two cuts each, and the dry run finds both held. */
  @Test
  void micro_joints_keep_the_slug_and_the_panel_where_they_were_cut() throws IOException {
    make(JOB.replace("on: ring", "on: ring, micro-joints: {below: 200 mm}"));
    assertThat(cut(text("steel/end/end-01.nc"))).filteredOn("M3"::equals).hasSize(4);
    assertThat(text("steel/end/setup.html"))
        .contains("4 micro-joints of 0.8 mm", "✓ DRY RUN PASSED");
  }

  /** The opening's middle is at X95 Y85, its radius 30 mm; the pierce is 3 mm or more from it. */
  @Test
  void a_broken_cut_goes_on_from_a_pierce_in_the_scrap() throws IOException {
    make(JOB);
    List<String> lines = text("steel/end/end-01.nc").lines().toList();
    int cut = lines.indexOf("M8") + 3;
    make(JOB, "--resume-from", "end-01.nc:" + cut);
    String rescue = text("steel/rescue-end-01-nc-" + cut + "/rescue-end-01.nc");
    var lit = Pattern.compile("P0\\.\\d+\nG1 X([0-9.]+) Y([0-9.]+) Z1\\.5").matcher(rescue);
    assertThat(lit.find()).isTrue();
    double x = Double.parseDouble(lit.group(1)) - 95;
    double y = Double.parseDouble(lit.group(2)) - 85;
    assertThat(Math.hypot(x, y)).isBetween(20.0, 27.0);
    assertThat(rescue).doesNotContain("NO ROOM");
  }

  @Test
  void the_kerf_coupon_is_a_job_that_can_be_made() {
    Shell shell = new Shell(folder);
    assertThat(shell.run("new", "--kind", "kerf-coupon", "coupon").code()).isZero();
    Shell.Result made = shell.run("make", "coupon/job.yaml");
    assertThat(made.code()).as(made.err()).isZero();
    assertThat(made.err()).doesNotContain("warning");
    Shell.Result wrong = shell.run("new", "--kind", "boat", "elsewhere");
    assertThat(wrong.code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(wrong.err()).contains("bench, bit-test or kerf-coupon");
  }

  @Test
  void in_an_air_pass_the_torch_stays_off_on_both_kinds_of_table() throws IOException {
    for (String post : List.of("plasma-plain", "plasma-touch")) {
      make(
          JOB.replace("machine: plasma table", "machine: plasma table\npost: " + post),
          "--air",
          "30");
      String air = text("steel/air-end/air-end-01.nc");
      assertThat(air).contains("AIR PASS").contains("TORCH");
      assertThat(cut(air)).doesNotContain("M3");
    }
  }
}
