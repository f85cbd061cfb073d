package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.build.Build;
import frieze.build.BuiltPanel;
import frieze.build.Designed;
import frieze.curve.Arc;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.sheet.PanelFacts;
import frieze.sheet.ReportJson;
import frieze.sheet.SetupSheet;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Panels whose edge is drawn in a file. */
class DrawnOutlineTest {
  /** A board of 200 x 60 with a half round of radius 20 taken out of its lower edge at x 100. */
  private static final String EDGE = "M10 10H210V70H130A20 20 0 0 0 90 70H10Z";

  private static final String JOB =
      """
      job: Small
      units: mm
      artwork:
        leaf: {file: leaf.svg}
      panels:
        front:
          outline: {file: edge.svg}
          stock: {material: white ash, length: 240, width: 90, thickness: 12}
          design:
            - place: leaf
              along: {count: 4}
          work:
            - recess: {on: leaf, tool: flat 1/8, depth: 2}
            - cutout: {tool: flat 1/8, hold: {tabs: 4, width: 6, thickness: 3}}
      """;

  private static String svg(String body) {
    return "<svg xmlns='http://www.w3.org/2000/svg' width='300mm' height='100mm'"
        + " viewBox='0 0 300 100'>"
        + body
        + "</svg>";
  }

  private static String line(String d) {
    return "<path id='edge' fill='none' stroke='black' d='" + d + "'/>";
  }

  private static MemoryFiles files(String job, String edge) {
    return new MemoryFiles()
        .with("job.yaml", job)
        .with("leaf.svg", svg("<rect width='20' height='20'/>"))
        .with("edge.svg", svg(edge));
  }

  private static Designed designed(String job, String edge) {
    MemoryFiles files = files(job, edge);
    return Build.designs(JobReader.read("job.yaml", files, List.of("short-arcs")), files).get(0);
  }

  private static Diagnostic refused(String job, String edge) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> designed(job, edge));
    assertThat(e).as("the job should be refused").isNotNull();
    return e.diagnostics().stream().filter(Diagnostic::isError).findFirst().orElseThrow();
  }

  private static double area(Path path) {
    return Region.of(List.of(path), FillRule.NONZERO, 1e-4).area();
  }

  @Test
  void the_panel_has_the_outline_that_is_drawn_with_its_arc() {
    for (String d : List.of(EDGE, "M10 10V70H90A20 20 0 0 1 130 70H210V10Z")) {
      Path outline = designed(JOB, line(d)).design().panel().outline();
      assertThat(outline.bounds().width()).isCloseTo(200, within(1e-9));
      assertThat(outline.bounds().height()).isCloseTo(60, within(1e-9));
      assertThat(area(outline)).isCloseTo(200 * 60 - Math.PI * 200, within(0.01));
      Arc arc =
          (Arc) outline.segments().stream().filter(Arc.class::isInstance).findFirst().orElseThrow();
      assertThat(arc.centre().x()).isCloseTo(100, within(1e-9));
      assertThat(arc.centre().y()).isCloseTo(0, within(1e-9));
      assertThat(arc.counterClockwise()).isFalse();
    }
  }

  @Test
  void the_panel_is_made_and_its_dry_run_finds_nothing() {
    MemoryFiles files = files(JOB, line(EDGE));
    BuiltPanel built =
        Build.run(JobReader.read("job.yaml", files, List.of("short-arcs")), files).get(0);
    assertThat(built.facts().panels().get(0).dryRun().findings()).isEmpty();
  }

  @Test
  void a_drawing_in_dxf_and_one_of_several_pieces_will_do() {
    String dxf =
        "0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n8\nedge\n10\n50\n20\n50\n40\n45\n0\nENDSEC\n0\nEOF\n";
    String job =
        JOB.replace("{file: edge.svg}", "{file: edge.dxf, unit: 1}")
            .replace("count: 4", "count: 1");
    MemoryFiles files = files(job, "").with("edge.dxf", dxf);
    Job read = JobReader.read("job.yaml", files, List.of("short-arcs"));
    Path round = Build.designs(read, files).get(0).design().panel().outline();
    assertThat(area(round)).isCloseTo(Math.PI * 45 * 45, within(0.1));
    Path picked =
        designed(
                JOB.replace("{file: edge.svg}", "{file: edge.svg, pick: edge}"),
                line(EDGE) + "<circle cx='50' cy='50' r='5'/>")
            .design()
            .panel()
            .outline();
    assertThat(area(picked)).isCloseTo(200 * 60 - Math.PI * 200, within(0.01));
  }

  @Test
  void the_other_one_of_a_pair_has_the_mirrored_outline() {
    String edge = line("M0 0H200V60H40Z");
    String job = JOB.replace("count: 4", "count: 1");
    Path plain = designed(job, edge).design().panel().outline();
    Path other =
        designed(job.replace("    work:", "    mirror: yes\n    work:"), edge)
            .design()
            .panel()
            .outline();
    assertThat(plain.segments())
        .anySatisfy(s -> assertThat(s.start().distance(new Point(40, 0))).isLessThan(1e-9));
    assertThat(other.segments())
        .anySatisfy(s -> assertThat(s.start().distance(new Point(160, 0))).isLessThan(1e-9));
  }

  /** The half round reaches 20 up, the middle row of 20 begins at 20 and its inset is 1. */
  @Test
  void motifs_keep_from_a_drawn_edge() {
    String job = JOB.replace("count: 4", "count: 5, inset: 1");
    assertThat(refused(job, line(EDGE)).toString()).contains("LAY-007", "motif leaf 3");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "M0 0H200V60H0Z M20 20h9v9h-9z|JOB-045|has 2 outlines, at (mm) 0.0, 40.0 to 200.0, 100.0;"
            + " 20.0, 71.0",
        "M0 0H200V60H0|JOB-045|is open: it starts at (mm) 0.00, 100.00 and ends at 0.00, 40.00",
        "M0 0H200V60L0 0L0 60L200 -1Z|JOB-045|crosses or touches itself",
      })
  void what_is_not_one_closed_outline_is_refused(String d, String code, String said) {
    Diagnostic error = refused(JOB, line(d));
    assertThat(error.code().id()).isEqualTo(code);
    assertThat(error.message()).contains("edge.svg", said);
    assertThat(error.where()).hasToString("job.yaml:7:21");
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "stock: {m|size: {width: 9, height: 9}%n    stock: {m|JOB-019",
        "stock: {m|fit: {gap: [1, 2, 1, 2]}%n    stock: {m|JOB-019",
        "stock: {m|fit: {gap: 30}%n    stock: {m|LAY-001",
        "stock: {m|fit: {gap: 20.5}%n    stock: {m|OPEN-005",
        "stock: {m|fit: {gap: 0.1, species: white ash}%n    stock: {m|WOOD-001",
        "stock: {m|fit: {species: white ash, moisture: {now: 40%, lowest: 6%, highest: 8%}}%n   "
            + " stock: {m|WOOD-004",
        "edge.svg|gone.svg|JOB-016",
        "edge.svg|edge.txt|JOB-0",
        "outline: {file: edge.svg}|clearance: 5|JOB-",
        "length: 240|length: 190|JOB-",
      })
  void keys_that_do_not_go_with_it_are_refused(String old, String now, String code) {
    String job = JOB.replace(old, now.replace("%n", "\n"));
    assertThat(refused(job, line(EDGE)).code().id()).startsWith(code);
  }

  private static String fitted(String fit) {
    return JOB.replace("    stock:", "    fit: " + fit + "\n    stock:");
  }

  /** The edge is 200 x 60 with a half round of 20: its inset has one of 20 and the gap. */
  @Test
  void with_a_gap_it_is_the_opening_that_is_drawn() {
    Designed designed = designed(fitted("{gap: 1.5}"), line(EDGE));
    Path outline = designed.design().panel().outline();
    double round = Math.acos(1.5 / 21.5);
    double segment = 21.5 * 21.5 * (round - Math.sin(2 * round) / 2);
    assertThat(area(outline)).isCloseTo(197 * 57 - segment, within(0.5));
    assertThat(outline.bounds().width()).isCloseTo(197, within(0.004));
    assertThat(outline.segments()).hasSizeLessThan(8);
    Path beyond = designed.beyond().orElseThrow();
    assertThat(beyond.bounds().width()).isCloseTo(201, within(0.004));
    assertThat(beyond.bounds().height()).isCloseTo(61, within(0.004));
  }

  @Test
  void a_drawn_opening_may_be_in_dxf_or_in_a_picture_and_mirrored() throws IOException {
    String dxf =
        "0\nSECTION\n2\nENTITIES\n0\nCIRCLE\n8\nedge\n10\n50\n20\n50\n40\n45\n0\nENDSEC\n0\nEOF\n";
    String job =
        fitted("{gap: 2}")
            .replace("{file: edge.svg}", "{file: edge.dxf, unit: 1}")
            .replace("count: 4", "count: 1");
    MemoryFiles files = files(job, "").with("edge.dxf", dxf);
    Job read = JobReader.read("job.yaml", files, List.of("short-arcs"));
    Path round = Build.designs(read, files).get(0).design().panel().outline();
    assertThat(area(round)).isCloseTo(Math.PI * 43 * 43, within(0.3));

    String traced = job.replace("{file: edge.dxf, unit: 1}", "{file: edge.png, height: 90}");
    files = files(traced, "").with("edge.png", disc());
    read = JobReader.read("job.yaml", files, List.of("short-arcs"));
    round = Build.designs(read, files).get(0).design().panel().outline();
    assertThat(area(round)).isCloseTo(Math.PI * 43 * 43, within(30.0));

    String edge = line("M0 0H200V60H40Z");
    String leaning = fitted("{gap: 1}").replace("count: 4", "count: 1");
    Path plain = designed(leaning, edge).design().panel().outline();
    Path other =
        designed(leaning.replace("    work:", "    mirror: yes\n    work:"), edge)
            .design()
            .panel()
            .outline();
    double width = plain.bounds().width();
    assertThat(area(other)).isCloseTo(area(plain), within(1e-2));
    for (Segment s : plain.segments()) {
      Point there = new Point(width - s.start().x(), s.start().y());
      assertThat(other.segments())
          .anySatisfy(o -> assertThat(o.start().distance(there)).isLessThan(0.005));
    }
  }

  private static byte[] disc() throws IOException {
    BufferedImage image = new BufferedImage(400, 400, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 400, 400);
    g.setColor(Color.BLACK);
    g.fill(new Ellipse2D.Double(50, 50, 300, 300));
    g.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "png", out);
    return out.toByteArray();
  }

  /** 60 across the grain: it swells by 2 % x 0.00274 from now to the wettest. */
  @Test
  void wood_in_a_drawn_opening_leaves_what_it_needs_and_the_papers_say_so() {
    MemoryFiles files = files(fitted("{species: white ash, play: 0.6}"), line(EDGE));
    BuiltPanel built =
        Build.run(JobReader.read("job.yaml", files, List.of("short-arcs")), files).get(0);
    PanelFacts panel = built.facts().panels().get(0);
    assertThat(panel.dryRun().findings()).isEmpty();
    double height = 58.8 / (1 + 2 * 0.00274);
    assertThat(panel.design().panel().heightMm()).isCloseTo(height, within(0.006));
    String sheet = SetupSheet.html(built.facts()).replaceAll("<[^>]*>", "|");
    double driest = 30 - height / 2 * (1 - 2 * 0.00274);
    MatchResult top =
        Pattern.compile("\\|top\\|+([0-9.]+) mm\\|+([0-9.]+) mm\\|+([0-9.]+) mm\\|")
            .matcher(sheet)
            .results()
            .findFirst()
            .orElseThrow();
    assertThat(Double.parseDouble(top.group(1))).isCloseTo(30 - height / 2, within(0.01));
    assertThat(Double.parseDouble(top.group(2))).isCloseTo(driest, within(0.01));
    assertThat(Double.parseDouble(top.group(3))).isCloseTo(0.6, within(0.01));
    assertThat(sheet.contains("Tightest: 0.6 mm, nearly the same all round, at the wettest."))
        .isTrue();
    String report = ReportJson.text(built.facts());
    assertThat(report).contains("\"drawn\" : true").doesNotContain("misfit");
  }

  /** A round panel of 44.2 moves by 2 % x 0.00274 of its radius, most at its top and its foot. */
  @Test
  void the_sheet_tells_where_a_given_gap_gets_tight_and_wide() {
    String job = fitted("{gap: 0.8, species: white ash}").replace("count: 4", "count: 1, inset: 5");
    String round = "<circle fill='none' stroke='black' cx='50' cy='50' r='45'/>";
    MemoryFiles files = files(job, round);
    BuiltPanel built =
        Build.run(JobReader.read("job.yaml", files, List.of("short-arcs")), files).get(0);
    String sheet = SetupSheet.html(built.facts()).replaceAll("<[^>]*>", "|");
    MatchResult told =
        Pattern.compile(
                "Tightest: ([0-9.]+) mm at the (top|bottom), ([0-9.]+) mm from the panel's left end"
                    + " and ([0-9.]+) mm from its lower edge, at the wettest\\."
                    + " Nowhere and never wider than ([0-9.]+) mm\\.")
            .matcher(sheet)
            .results()
            .findFirst()
            .orElseThrow();
    double moves = 44.2 * 2 * 0.00274;
    assertThat(Double.parseDouble(told.group(1))).isCloseTo(0.8 - moves, within(0.008));
    assertThat(Double.parseDouble(told.group(3))).isCloseTo(44.2, within(1.0));
    double up = told.group(2).equals("top") ? 88.4 : 0;
    assertThat(Double.parseDouble(told.group(4))).isCloseTo(up, within(0.02));
    assertThat(Double.parseDouble(told.group(5))).isCloseTo(0.8 + moves, within(0.008));
    assertThat(sheet.contains("smaller by 0.8 mm, square to the edge all round")).isTrue();
  }

  /** The upper edge is an arc of radius 505 that rises 10 over 200: its parallel has 503. */
  @Test
  void an_arched_size_with_a_fit_is_that_of_the_opening() {
    String arched =
        JOB.replace("outline: {file: edge.svg}", "size: {width: 200, height: 70, arched top: 10}")
            .replace("    stock:", "    fit: {gap: 2}\n    stock:");
    Path outline = designed(arched, "").design().panel().outline();
    assertThat(outline.bounds().width()).isCloseTo(196, within(0.004));
    assertThat(outline.bounds().height()).isCloseTo(66, within(0.004));
    Arc top =
        (Arc) outline.segments().stream().filter(Arc.class::isInstance).findFirst().orElseThrow();
    assertThat(top.radius()).isCloseTo(503, within(0.1));
    String moving = arched.replace("{gap: 2}", "{species: white ash, play: 0.5}");
    double height = designed(moving, "").design().panel().heightMm();
    // Its middle, about which it moves, is that of its bounds.
    assertThat(height).isCloseTo(69 / (1 + 2 * 0.00274), within(0.004));
    assertThat(refused(arched.replace("arched top: 10", "arched top: 10, corner: 3"), "").message())
        .contains("square corners");
  }

  @Test
  void a_panel_like_another_takes_its_drawn_outline_or_has_its_own_shape() {
    String more =
        """
          same:
            like: front
          other:
            like: front
            outline: {file: other.svg}
          plain:
            like: front
            size: {width: 180, height: 50}
          turned:
            like: front
            mirror: yes
            fit: {gap: 1}
        """;
    MemoryFiles files =
        files(JOB.replace("count: 4", "count: 1") + more, line("M0 0H200V60H40Z"))
            .with("other.svg", svg(line("M0 0H150V60H0Z")));
    Job job = JobReader.read("job.yaml", files, List.of("short-arcs"));
    List<Path> outlines =
        Build.designs(job, files).stream().map(d -> d.design().panel().outline()).toList();
    assertThat(outlines).hasSize(5);
    assertThat(outlines.get(1)).isEqualTo(outlines.get(0));
    assertThat(outlines.get(2).bounds().width()).isCloseTo(150, within(1e-9));
    assertThat(outlines.get(3).bounds().width()).isCloseTo(180, within(1e-9));
    // The sharp corner loses 1 along the base and what its slant of 40 to 60 takes at its tip.
    assertThat(outlines.get(4).bounds().width()).isCloseTo(200 - 1 - tip(), within(0.005));
  }

  /** How far a gap of 1 moves a corner of 90 degrees less atan(40 / 60) along its base. */
  private static double tip() {
    double angle = Math.atan2(60, 40);
    return 1 / Math.tan(angle / 2);
  }
}
