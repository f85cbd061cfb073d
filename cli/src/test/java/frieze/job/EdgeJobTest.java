package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.build.Build;
import frieze.build.BuiltPanel;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.EdgeShape;
import frieze.design.Intent;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.gouge.GougeCheck;
import frieze.plan.cut.Cut;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.sheet.Drawing;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Edges that are chamfered or rounded over, from the job to the dry run. */
class EdgeJobTest {
  private static final double PATH_MM = 0.012;

  private static final String JOB =
      """
      job: Small
      units: mm
      panels:
        front:
          size: {width: 80, height: 40}
          stock: {material: white ash, length: 110, width: 70, thickness: 12}
          work:
            - chamfer: {tool: vee 90, width: 3}
      """;

  private static final String CHAMFER = "chamfer: {tool: vee 90, width: 3}";
  private static final String ROUND = "roundover: {tool: round over 1/8}";
  private static final String BLANK =
      "stock: {material: white ash, length: 80, width: 40, thickness: 12, blank: yes}";

  private static final String SHOP =
      """
      units: mm
      tools:
        saw: {shape: vee, diameter: 30, angle: 90, flute length: 14, top speed: 18000,
              top feed: 2000, top plunge: 400}
        big: {shape: round over, diameter: 24, radius: 9, flute length: 14, top speed: 18000,
              top feed: 2000, top plunge: 400}
      """;

  private static MemoryFiles files(String job) {
    return new MemoryFiles().with("job.yaml", job).with("shop.yaml", SHOP);
  }

  private static MemoryFiles files(String job, String edge) {
    String outlined = job.replace("size: {width: 80, height: 40}", "outline: {file: edge.svg}");
    return files(outlined)
        .with(
            "edge.svg",
            "<svg xmlns='http://www.w3.org/2000/svg' width='120mm' height='60mm'"
                + " viewBox='0 0 120 60'><path fill='none' stroke='black' d='"
                + edge
                + "'/></svg>");
  }

  private static String blank(String job) {
    return job.replaceAll("stock: \\{.*?\\}", BLANK);
  }

  private static List<Diagnostic> refused(String job) {
    BadInputException e =
        catchThrowableOfType(BadInputException.class, () -> Traced.of(files(job)));
    assertThat(e).as("the job should be refused").isNotNull();
    return e.diagnostics();
  }

  private static boolean isInside(Path outline, Point p) {
    return Region.of(List.of(outline), FillRule.NONZERO, 1e-3).contains(p);
  }

  /** Half a millimetre below a chamfer of 45 degrees is half a millimetre beside the edge. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "size: {width: 80, height: 40}|chamfer: {tool: vee 90, width: 3}|-3.5|0.5|243.14",
        "size: {width: 80, height: 40}|chamfer: {tool: vee 90, width: 3, below: 0}|-3|0|240",
        "size: {width: 80, height: 40, corner: 8}|chamfer: {tool: vee 60, width: 2}"
            + "|-3.964|0.2887|227",
        "size: {width: 80, height: 40}|roundover: {tool: round over 1/8}|-3.175|3.175|259.9",
        "size: {width: 80, height: 40, arched top: 9}|roundover: {tool: round over 1/8}"
            + "|-3.175|3.175|235"
      })
  void the_axis_runs_beside_the_edge_as_the_tip_needs(
      String size, String work, double z, double beside, double length) {
    String job = JOB.replace("size: {width: 80, height: 40}", size).replace(CHAMFER, work);
    Traced made = Traced.of(files(job));
    List<List<Point>> runs = made.at(z);
    for (List<Point> run : runs) {
      for (Point p : run) {
        assertThat(Traced.fromEdge(made.outline(), p)).isCloseTo(beside, within(PATH_MM));
        assertThat(beside > PATH_MM && isInside(made.outline(), p)).isFalse();
      }
    }
    assertThat(Traced.lengthMm(runs)).isGreaterThan(length).isLessThan(2 * length);
    assertThat(made.findings()).isEmpty();
  }

  /**
   * What the programs take off a sawn blank, in closed form: along the inner offset of a rectangle,
   * whose length falls by 8 for each 1 inwards.
   */
  @Test
  void a_blank_loses_the_closed_form_volume_of_its_edge() {
    double length = 2 * (80 + 40);
    double r = 3.175;
    assertRemoved(CHAMFER, length * 9 / 2 - 8 * 27.0 / 6);
    assertRemoved(
        ROUND, length * (1 - Math.PI / 4) * r * r - 8 * (5.0 / 6 - Math.PI / 4) * r * r * r);
  }

  private static void assertRemoved(String work, double volume) {
    Traced made = Traced.of(files(blank(JOB).replace(CHAMFER, work)));
    DryRunResult result = made.dryRun(made.panel().intents());
    assertThat(result.stock().orElseThrow().removedVolumeMm3())
        .isCloseTo(volume, within(0.005 * volume));
    assertThat(result.findings())
        .allSatisfy(f -> assertThat(f.code()).isEqualTo(FindingCode.OVER_STOCK_EDGE));
  }

  /** On a blank the bit comes down in the air, and stays there within its own radius. */
  @Test
  void on_a_blank_the_bit_comes_down_outside_and_clamps_are_judged() {
    String job = blank(JOB).replace("    work:", "    clamps:\n" + clamp(-10) + "    work:");
    Traced made = Traced.of(files(job));
    for (Cut cut : made.panel().plan().cuts()) {
      assertThat(Traced.fromEdge(made.outline(), cut.start().xy())).isGreaterThan(3.5);
      assertThat(Traced.fromEdge(made.outline(), cut.end().xy())).isGreaterThan(3.5);
    }
    assertThat(made.findings()).extracting(Finding::code).contains(FindingCode.HITS_KEEP_OUT);
    Traced clear = Traced.of(files(job.replace(clamp(-10), clamp(-30))));
    assertThat(clear.findings())
        .extracting(Finding::code)
        .containsOnly(FindingCode.OVER_STOCK_EDGE);
  }

  /** The clamps are what a bit beside a blank must miss: all of each is on the paper. */
  @Test
  void clamps_beside_the_stock_are_drawn_whole() {
    String job =
        blank(JOB).replace("    work:", "    clamps:\n" + clamp(-30) + clamp(90) + "    work:");
    MemoryFiles files = files(job);
    BuiltPanel built =
        Build.run(JobReader.read("job.yaml", files, List.of("short-arcs")), files).get(0);
    String svg = Drawing.svg(built.facts().panels().get(0), false);
    Matcher paper = Pattern.compile("viewBox=\"0 0 (\\S+) (\\S+)\"").matcher(svg);
    assertThat(paper.find()).isTrue();
    double width = Double.parseDouble(paper.group(1));
    Matcher rect = Pattern.compile("<rect x=\"(\\S+)\" y=\"\\S+\" width=\"(\\S+)\"").matcher(svg);
    int count = 0;
    for (; rect.find(); count++) {
      double x = Double.parseDouble(rect.group(1));
      assertThat(x).isPositive();
      assertThat(x + Double.parseDouble(rect.group(2))).isLessThan(width);
    }
    assertThat(count).as("the stock and two clamps").isEqualTo(3);
  }

  private static String clamp(int x) {
    return "      - {name: stop, x: " + x + ", y: 20, width: 9, depth: 10, above: 0}\n";
  }

  /** The dry run's own measure: another shape than what was cut is told. */
  @ParameterizedTest
  @CsvSource({
    "2.95, 3, TOO_DEEP",
    "3.05, 3, LEFT",
    "3, 2.95, TOO_DEEP",
    "3, 3.05, LEFT",
    "3, 3, ''"
  })
  void the_dry_run_tells_an_edge_that_is_not_as_asked(double width, double down, String kind) {
    Traced made = Traced.of(files(JOB));
    Intent.Edge e = (Intent.Edge) made.panel().intents().get(0);
    Intent line = new Intent.InsetGroove("groove rim 1", e.part(), 8, 0.5, e.tool());
    Intent other =
        new Intent.Edge(
            e.name(),
            e.part(),
            e.runs(),
            e.passing(),
            new EdgeShape.Chamfer(width, down),
            e.tool(),
            e.tipMm(),
            e.axisMm());
    GougeCheck.Result found = made.dryRun(beside(other, line, kind)).design().orElseThrow();
    assertThat(found.isClean()).isEqualTo(kind.isEmpty());
    assertThat(found.discrepancies())
        .filteredOn(d -> !d.intent().equals("groove rim 1") || d.kind().name().equals(kind))
        .allSatisfy(d -> assertThat(d.kind().name()).isEqualTo(kind))
        .allSatisfy(d -> assertThat(d.intent()).isEqualTo("chamfer front"));
  }

  /** A line nearby takes no blame; where all is as asked there is none, for it is not cut. */
  private static List<Intent> beside(Intent edge, Intent line, String kind) {
    return kind.equals("TOO_DEEP") ? List.of(line, edge) : List.of(edge);
  }

  @Test
  void the_edge_is_worked_after_carving_and_before_the_panel_is_cut_free() {
    String job =
        JOB
            + """
                  - cutout: {tool: flat 1/4, hold: {tabs: 4}}
                  - groove: {on: rim, tool: vee 90, depth: 1}
            """
                .replace("            ", "      ");
    Traced made =
        Traced.of(
            files(job.replace("    work:", "    border lines: {rim: {inset: 8}}\n    work:")));
    assertThat(made.panel().plan().cuts().stream().map(c -> c.origin().split(" ")[0]).distinct())
        .containsExactly("groove", "chamfer", "cutout");
    assertThat(made.findings()).isEmpty();
  }

  /** 4 in the middle of the slope: a pass of 2 at most in hardwood, of 4 in softer wood. */
  @Test
  void hardwood_takes_more_passes_and_all_of_them_run_the_same_way() {
    String sides = JOB.replace("width: 3}", "width: 3, sides: [top]}");
    assertThat(Traced.of(files(sides)).panel().plan().cuts()).hasSize(2);
    assertThat(Traced.of(files(sides.replace("white ash", "pine"))).panel().plan().cuts())
        .hasSize(1);
    for (Cut cut : Traced.of(files(sides)).panel().plan().cuts()) {
      assertThat(cut.start().x()).isGreaterThan(cut.end().x());
    }
    for (Cut cut :
        Traced.of(files(sides.replace("[top]", "[top], milling: climb"))).panel().plan().cuts()) {
      assertThat(cut.start().x()).isLessThan(cut.end().x());
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "size: {width: 80, height: 40}|[top]|0 39.5|79 20",
        "size: {width: 80, height: 40}|[left, bottom]|0.5 20,40 0.5|79.5 20,40 39.5",
        "size: {width: 80, height: 40}|[left, right]|0.5 20,79.5 20|40 0.5,40 39.5",
        "size: {width: 80, height: 40, corner: 6}|[top, left, right]|0.5 20,40 39.5|40 0.5",
        "size: {width: 80, height: 40, arched top: 9}|[top]|40 39.5|0.5 20,40 0.5,79.5 20"
      })
  void sides_are_worked_alone(String size, String sides, String cut, String whole) {
    String job =
        JOB.replace("size: {width: 80, height: 40}", size)
            .replace("width: 3}", "width: 3, sides: " + sides + "}");
    for (String each : List.of(job, blank(job))) {
      Traced made = Traced.of(files(each));
      DryRunResult result = made.dryRun(made.panel().intents());
      assertThat(result.findings())
          .allSatisfy(f -> assertThat(f.code()).isEqualTo(FindingCode.OVER_STOCK_EDGE));
      assertThat(depths(made, result, cut)).allSatisfy(d -> assertThat(d).isGreaterThan(2));
      assertThat(depths(made, result, whole)).allSatisfy(d -> assertThat(d).isEqualTo(0));
    }
  }

  private static List<Double> depths(Traced made, DryRunResult result, String places) {
    return List.of(places.split(",")).stream()
        .map(p -> p.split(" "))
        .map(p -> new Point(Double.parseDouble(p[0]), Double.parseDouble(p[1])))
        .map(p -> made.panel().setup().stockFromPanel().apply(p))
        .map(p -> -result.stock().orElseThrow().heightAtMm(p.x(), p.y()))
        .toList();
  }

  @Test
  void the_other_one_of_a_pair_has_its_edge_on_the_other_side() {
    String job = JOB.replace("width: 3}", "width: 3, sides: left}");
    Traced made = Traced.of(files(job.replace("    work:", "    mirror: yes\n    work:")));
    DryRunResult result = made.dryRun(made.panel().intents());
    assertThat(depths(made, result, "79.5 20").get(0)).isGreaterThan(2);
    assertThat(depths(made, result, "0.5 20").get(0)).isCloseTo(0, within(1e-9));
  }

  /**
   * A notch 10 wide: the axis of a V-bit gets into its corners nearly, that of 6.35 / 2 less so.
   */
  @Test
  void inside_corners_that_the_bit_does_not_get_into_are_told() {
    String notched = "M0 0H30V12H40V0H80V40H0Z";
    Traced chamfer = Traced.of(files(JOB, notched));
    assertThat(chamfer.findings()).isEmpty();
    Traced round = Traced.of(files(JOB.replace(CHAMFER, ROUND), notched));
    assertThat(round.findings()).isEmpty();
    assertThat(round.notes())
        .filteredOn(n -> n.code().id().equals("PLAN-013"))
        .singleElement()
        .asString()
        .contains("does not get into 2 inside corners of the edge", ", y 27.8 mm");
    assertThat(round.panel().plan().leftovers()).hasSize(1);
    // A slot of 4 is narrower than the bit's tip of 6.35: it stays square.
    Traced slot = Traced.of(files(JOB.replace(CHAMFER, ROUND), "M0 0H30V12H34V0H80V40H0Z"));
    assertThat(slot.findings()).isEmpty();
    assertThat(slot.notes()).anySatisfy(n -> assertThat(n.toString()).contains("PLAN-013", "x 32"));
  }

  /** Sanding takes 0.4 off the face and 0.3 off the walls: the chamfer is 3 wide after that. */
  @Test
  void what_finishing_takes_off_is_cut_deeper() {
    String job = JOB.replace("    work:", "    allowance: {face: 0.4, walls: 0.3}\n    work:");
    Traced made = Traced.of(files(job));
    for (List<Point> run : made.at(-3.9)) {
      run.forEach(
          p -> assertThat(Traced.fromEdge(made.outline(), p)).isCloseTo(0.5, within(PATH_MM)));
    }
    assertThat(made.findings()).isEmpty();
  }

  @Test
  void a_back_has_edges_of_its_own() {
    String job =
        JOB
            + "    back:\n"
            + "      work:\n"
            + "        - roundover: {tool: round over 1/8, sides: bottom}\n";
    Traced back = Traced.of(files(job));
    assertThat(back.panel().asked().isBack()).isTrue();
    assertThat(back.findings()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "chamfer: {tool: flat 1/4, width: 3}|PLAN-006|a chamfer needs a V-bit",
        "chamfer: {tool: vee 60, width: 3, down: 3}|PLAN-054|needs a V-bit of 90 deg, but vee 60"
            + " has 60 deg: that wide, it goes 5.2 mm",
        "chamfer: {tool: vee 90, width: 6}|PLAN-054|would have to be 13 mm (0.512 in) wide, but it"
            + " is 12.7 mm",
        "chamfer: {tool: saw, width: 13}|PLAN-002|goes 13.5 mm (0.531 in) deep but the stock is 12",
        "chamfer: {tool: vee 90, width: 0}|JOB-009|more than 0",
        "chamfer: {tool: vee 90, width: 3, sides: [up]}|JOB-010|not one of top, bottom, left,"
            + " right",
        "chamfer: {tool: vee 9O, width: 3}|JOB-012|did you mean",
        "roundover: {tool: vee 90}|PLAN-006|needs a round over bit",
        "roundover: {tool: round over 1/8, radius: 1/4 in}|PLAN-054|by 3.18 mm (0.125 in), not by"
            + " 6.35"
      })
  void what_can_not_be_is_refused(String work, String code, String message) {
    Diagnostic first = refused(JOB.replace(CHAMFER, work)).get(0);
    assertThat(first.where().toString()).startsWith("job.yaml:8:");
    assertThat(first + " " + first.hint()).contains(code, message);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'diameter: 12, radius: 6'|JOB-009|two radii of 6 mm (0.236 in) leave no tip",
        "'diameter: 12, radius: 4, tip: 6'|JOB-009|are 14 mm (0.551 in), but its diameter is 12 mm",
        "'diameter: 12'|JOB-005|needs a \"radius\"",
      })
  void a_round_over_bit_that_can_not_be_is_refused(String keys, String code, String message) {
    String shop = SHOP.replace("diameter: 24, radius: 9", keys.replace("'", ""));
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class, () -> Traced.of(files(JOB).with("shop.yaml", shop)));
    assertThat(e.diagnostics()).singleElement().asString().contains(code, message, "shop.yaml:5:");
  }

  /** The face of a panel 17 high is gone when 9 are taken off both sides. */
  @Test
  void an_edge_that_leaves_no_face_is_refused() {
    String low = JOB.replace("height: 40", "height: 17").replace(CHAMFER, "roundover: {tool: big}");
    assertThat(refused(low)).singleElement().asString().contains("PLAN-055", "leaves nothing");
  }

  /**
   * A disc has no corners: a bit that takes off w is off it sqrt(2 r w) along the tangent, 12 mm
   * for a disc of radius 25, and 65 mm for one of 330 and a round of 6.35 mm.
   */
  @Test
  void a_side_of_a_disc_ends_where_the_bit_comes_off_it_or_is_refused() {
    String job = JOB.replace("width: 3}", "width: 3, sides: top}");
    Traced small = Traced.of(files(job, "M60 5A25 25 0 0 1 60 55A25 25 0 0 1 60 5Z"));
    assertThat(small.findings()).isEmpty();
    String large =
        JOB.replace(CHAMFER, "roundover: {tool: round over 1/4, sides: top}")
            .replace("length: 110, width: 70", "length: 700, width: 700");
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class,
            () -> Traced.of(files(large, "M330 0A330 330 0 0 1 330 660A330 330 0 0 1 330 0Z")));
    assertThat(e.diagnostics())
        .singleElement()
        .asString()
        .contains("PLAN-056", "would still touch the panel 60 mm", "job.yaml:8:");
  }

  @Test
  void tabs_that_the_bit_runs_into_are_told() {
    String job =
        JOB.replace(CHAMFER, "chamfer: {tool: saw, width: 8.5}")
            + "      - cutout: {tool: flat 1/4, hold: {tabs: 4, thickness: 4}}\n";
    assertThat(Traced.of(files(job)).notes())
        .anySatisfy(
            n ->
                assertThat(n.toString())
                    .contains("PLAN-057", "runs 9 mm (0.354 in) deep, which leaves 3 mm"));
  }

  @Test
  void another_angle_than_45_degrees_is_told() {
    assertThat(Traced.of(files(JOB.replace("vee 90", "vee 60"))).notes())
        .anySatisfy(n -> assertThat(n.toString()).contains("PLAN-054", "5.2 mm", "down the edge"));
  }
}
