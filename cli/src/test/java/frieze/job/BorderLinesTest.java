package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.Intent;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.gouge.GougeCheck;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines that run round a panel. */
class BorderLinesTest {
  private static final double PATH_MM = 0.012;

  private static final String JOB =
      """
      job: Small
      units: mm
      artwork:
        leaf: {file: leaf.svg, height: 12}
      panels:
        front:
          size: {width: 200, height: 60}
          stock: {material: white ash, length: 240, width: 100, thickness: 12}
          position: {x: 20, y: 20}
          border lines:
            rim: {inset: 8}
          work:
            - groove: {on: rim, tool: vee 90, depth: 1}
      """;

  private static final String SQUARE = "<path d='M0 0h20v20h-20z'/>";

  private static MemoryFiles files(String job, String edge) {
    String head = "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='100mm'";
    return new MemoryFiles()
        .with("job.yaml", job)
        .with("leaf.svg", head + " viewBox='0 0 300 100'>" + SQUARE + "</svg>")
        .with(
            "edge.svg",
            head
                + " viewBox='0 0 300 100'><path fill='none' stroke='black' d='"
                + edge
                + "'/></svg>");
  }

  private static Traced built(String job, String edge) {
    return Traced.of(files(job, edge));
  }

  private static List<Diagnostic> refused(String job) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> built(job, "M0 0"));
    assertThat(e).as("the job should be refused").isNotNull();
    return e.diagnostics();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        // sharp corners; rounded ones, 15 - 8 = 7 left; arched; with a notch and a half round
        "size: {width: 200, height: 60}||456",
        "size: {width: 200, height: 60, corner: 15}||443.98",
        "size: {width: 200, height: 60, corner: 3}||456",
        "size: {width: 200, height: 60, arched top: 10}||0",
        "outline: {file: edge.svg}|M0 0H60V10H80V0H200V60H130A20 20 0 0 0 90 60H0Z|0",
        "outline: {file: edge.svg}|M0 0 C60 10 120 -10 200 0 V60 C120 50 60 70 0 60Z|0"
      })
  void each_point_of_the_programmed_line_lies_at_its_inset(String panel, String d, double length) {
    String job = JOB.replace("size: {width: 200, height: 60}", panel);
    Traced built = built(job, d == null ? "M0 0" : d);
    Path outline = built.outline();
    List<List<Point>> runs = built.at(-1);
    double flattened = d != null && d.contains("C") ? 0.002 : 0;
    for (List<Point> run : runs) {
      for (Point p : run) {
        double from =
            flattened == 0
                ? Traced.fromEdge(outline, p)
                : Traced.fromEdge(
                    Path.polyline(frieze.curve.Flattener.flatten(outline, flattened / 8), true), p);
        assertThat(from).as("at " + p).isCloseTo(8, within(PATH_MM));
      }
    }
    if (d != null && d.contains("A20")) {
      assertThat(built.findings()).isEmpty();
    }
    if (length > 0) { // twice round, as the spiral goes down
      assertThat(Traced.lengthMm(runs)).isGreaterThan(length).isLessThan(2 * length);
    } else {
      assertThat(Traced.lengthMm(runs)).isGreaterThan(400);
    }
  }

  /** A corner of radius c around a right angle stands off by c (sqrt 2 - 1) at its middle. */
  @Test
  void a_corner_radius_takes_the_line_farther_in_and_nowhere_nearer() {
    String job = JOB.replace("{inset: 8}", "{inset: 8, corner: 10}");
    Traced built = built(job, "M0 0");
    Path outline = built.outline();
    double most = 0;
    double last = 0;
    for (List<Point> run : built.at(-1)) {
      for (Point p : run) {
        double from = Traced.fromEdge(outline, p);
        assertThat(from).isGreaterThan(8 - PATH_MM);
        most = Math.max(most, from);
        last = Math.max(last, Traced.lengthMm(List.of(run)));
      }
    }
    // The middle of the fillet is 18 - 10 / sqrt 2 from both edges.
    assertThat(most).isCloseTo(18 - 10 / Math.sqrt(2), within(PATH_MM));
    assertThat(last).isCloseTo(200 - 36, within(0.05));
  }

  /**
   * The dry run goes by the outline alone: a line that is elsewhere is told, inwards or outwards.
   */
  @ParameterizedTest
  @CsvSource({"8, true", "8.04, false", "7.96, false"})
  void the_dry_run_measures_from_the_outline(double inset, boolean clean) {
    Traced made = built(JOB, "M0 0");
    Intent.InsetGroove g = (Intent.InsetGroove) made.panel().intents().get(0);
    Intent other = new Intent.InsetGroove(g.name(), g.part(), inset, g.depthMm(), g.tool());
    GougeCheck.Result found = made.dryRun(List.of(other)).design().orElseThrow();
    assertThat(found.isClean()).isEqualTo(clean);
    if (!clean) {
      assertThat(found.tooDeep()).isPositive();
      assertThat(found.left()).isPositive();
    }
  }

  @Test
  void several_lines_are_carved_and_can_be_picked() {
    String two = JOB.replace("{inset: 8}", "{inset: [8, 14]}");
    Traced both = built(two, "M0 0");
    assertThat(both.notes()).isEmpty();
    Traced inner = built(two.replace("on: rim", "on: rim, pick: 2"), "M0 0");
    Path outline = inner.outline();
    for (List<Point> run : inner.at(-1)) {
      run.forEach(p -> assertThat(Traced.fromEdge(outline, p)).isCloseTo(14, within(PATH_MM)));
    }
    assertThat(Traced.lengthMm(both.at(-1))).isGreaterThan(456 + 408);
  }

  /** A line 2 wide is cut 1 deep by a 90 degree bit; as an area its walls meet there too. */
  @Test
  void a_width_makes_lines_for_grooves_by_width_and_areas_for_vgrooves() {
    String wide = JOB.replace("{inset: 8}", "{inset: 8, width: 2}");
    for (String work :
        List.of(
            "groove: {on: rim, tool: vee 90, depth: 3, by width: yes}",
            "vgroove: {on: rim, tool: vee 90}")) {
      Traced built = built(wide.replace("groove: {on: rim, tool: vee 90, depth: 1}", work), "M0 0");
      assertThat(built.findings()).isEmpty();
      assertThat(Traced.lengthMm(built.at(-1))).as(work).isGreaterThan(430);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "inset: 8|inset: 31|LAY-015|11:7|no place of the panel lies farther inside than 30 mm",
        "inset: 8|inset: 20, corner: 15|LAY-015|11:7|corners rounded by 15 mm",
        "inset: 8|inset: 0|JOB-009|11:20|more than 0",
        "inset: 8|inset: -3|JOB-009|11:20|more than 0",
        "inset: 8|inset: 0.5|LAY-017|13:17|runs 0.5 mm (0.02 in) over the panel's edge",
        "groove: {on: rim, tool: vee 90, depth: 1}|vgroove: {on: rim, tool: vee 90}|LAY-020|13:18|"
            + "have no width",
        "      rim: {|      leaf: {|JOB-003|11:7|have the name of a drawing"
      })
  void what_can_not_be_is_refused(
      String from, String to, String code, String where, String message) {
    List<Diagnostic> found = refused(JOB.replace(from, to));
    assertThat(found.get(0).toString()).contains(code, "job.yaml:" + where + ":", message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "inset: 8|inset: 1.5|LAY-017|leaves only 0.5 mm (0.02 in) of wood at the panel's edge",
        "inset: [8, 10.5]|inset: [8, 10.5]|LAY-019|leaves only 0.5 mm (0.02 in) of wood between",
        "inset: [8, 9]|inset: [8, 9]|LAY-019|leaves no wood between them",
      })
  void what_is_thin_is_warned_of(String from, String to, String code, String message) {
    Traced built = built(JOB.replace(from.contains("[") ? "inset: 8" : from, to), "M0 0");
    assertThat(built.notes()).singleElement().asString().contains(code, message);
  }

  /** A hole of 6 at x 10 reaches from 7 to 13, the groove at 8 from 7 to 9. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "- bore: {tool: flat 1/8, diameter: 6, depth: 3, at: [{x: 10, y: 30}, {x: 50, y: 30}]}|"
            + "crossed by bore 1 at x 8",
        "- recess: {on: leaf, tool: flat 1/8, depth: 2}|crossed by recess leaf 1 at x",
        "- groove: {on: leaf, tool: ball 1/8, depth: 1}|crossed by groove leaf 1 at x",
        "- cutout: {on: leaf, tool: flat 1/8}|crossed by cutout leaf 1 at x"
      })
  void what_crosses_a_line_is_told_with_its_place(String work, String message) {
    String job =
        JOB.replace(
                "    border lines:",
                "    design:\n"
                    + "      - place: leaf\n"
                    + "        along: {count: 3, rise: 18}\n"
                    + "    border lines:")
            + "      "
            + work
            + "\n";
    assertThat(built(job, "M0 0").notes())
        .anySatisfy(n -> assertThat(n.toString()).contains("LAY-018", "job.yaml:16:17", message));
    String clear = job.replace("rise: 18", "rise: 0").replace("x: 10, y: 30", "x: 20, y: 30");
    assertThat(built(clear, "M0 0").notes())
        .noneSatisfy(n -> assertThat(n.toString()).contains("LAY-018"));
  }

  /** Two notches leave a waist of 16 at x 100: lines 10 inside can't pass it. */
  @Test
  void a_line_that_a_narrow_place_parts_is_told() {
    String waist = "M0 0H80V22H120V0H200V60H120V38H80V60H0Z";
    String job =
        JOB.replace("size: {width: 200, height: 60}", "outline: {file: edge.svg}")
            .replace("inset: 8", "inset: 10");
    Traced built = built(job, waist);
    assertThat(built.notes())
        .singleElement()
        .asString()
        .contains("LAY-016", "falls into 2 parts", "only about 16 mm (0.63 in) wide at x ");
    assertThat(built.findings()).isEmpty();
  }
}
