package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.build.Build;
import frieze.build.BuiltPanel;
import frieze.build.ReadBack;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.post.Posts;
import frieze.shop.Setup;
import frieze.shop.Skew;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A board that does not lie square: two touched places, and programs that are turned. */
class SkewedStockTest {
  private static final String JOB =
      """
      job: Skew
      units: mm
      artwork:
        field: {file: field.svg, width: 30}
      panels:
        end:
          size: {width: 180, height: 60, corner: 6}
          stock: {material: white ash, length: 210, width: 90, thickness: 12}
          design:
            - place: field
              along: {count: 3}
          work:
            - recess: {on: field, tool: flat 1/8, depth: 2}
            - cutout: {tool: flat 1/8, hold: {tabs: 4}}
      """;

  /** 1.5 deg over 200 mm. */
  private static final String TOUCHED =
      JOB.replace(
          "    design:", "    touched: {at: [{x: 3, y: 0}, {x: 202.931, y: 5.235}]}\n    design:");

  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='30mm' height='20mm' viewBox='0 0 30 20'>"
          + "<path d='M0 0H30V20H0Z'/></svg>";

  private static final Pattern WORD = Pattern.compile("([XY])(-?[\\d.]+)");

  private static MemoryFiles files(String text) {
    return new MemoryFiles().with("job.yaml", text).with("field.svg", SVG);
  }

  private static Job job(String text) {
    return JobReader.read("job.yaml", files(text), List.of("short-arcs"));
  }

  private static BuiltPanel built(String text) {
    return Build.run(job(text), files(text)).get(0);
  }

  private static List<Point> places(BuiltPanel panel) {
    List<Point> places = new ArrayList<>();
    double[] at = {0, 0};
    for (String line : panel.programs().get(0).text().lines().toList()) {
      Matcher words = WORD.matcher(line.startsWith("(") ? "" : line);
      boolean moves = false;
      while (words.find()) {
        at["XY".indexOf(words.group(1))] = Double.parseDouble(words.group(2));
        moves = true;
      }
      if (moves) {
        places.add(new Point(at[0], at[1]));
      }
    }
    return places;
  }

  /** The same text, each place turned about zero: by hand, to half a last digit along each axis. */
  @Test
  void the_text_is_that_of_a_straight_board_turned_about_zero() {
    BuiltPanel straight = built(JOB);
    BuiltPanel turned = built(TOUCHED);
    double angle = Math.atan2(5.235, 199.931);
    assertThat(Math.toDegrees(angle)).isCloseTo(1.5, within(0.001));
    List<Point> before = places(straight);
    List<Point> after = places(turned);
    assertThat(after.size()).isEqualTo(before.size()).isGreaterThan(50);
    for (int i = 0; i < before.size(); i++) {
      Point p = before.get(i);
      Point expected =
          new Point(
              p.x() * Math.cos(angle) - p.y() * Math.sin(angle),
              p.x() * Math.sin(angle) + p.y() * Math.cos(angle));
      assertThat(after.get(i).distance(expected)).as("place %d", i).isLessThan(0.0015);
    }
    assertThat(turned.programs().get(0).text()).contains("TURNED 1.50 deg");
    assertThat(turned.mayWrite()).isTrue();
    assertThat(turned.panel().dryRun().findings())
        .hasSameSizeAs(straight.panel().dryRun().findings());
  }

  @Test
  void the_dry_run_would_object_if_the_board_lay_straight() {
    BuiltPanel turned = built(TOUCHED);
    Setup lies = turned.panel().setup();
    Setup straight =
        new Setup(
            lies.machine(),
            lies.stock(),
            lies.zero().skewed(0),
            lies.panelXMm(),
            lies.panelYMm(),
            lies.clearanceMm(),
            lies.spoilboardMm(),
            lies.keepOuts(),
            lies.tools());
    DryRunResult result =
        DryRun.in(Surroundings.of(straight))
            .comparedWith(straight, turned.panel().intents())
            .run(ReadBack.texts(turned.programs(), Posts.find("short-arcs").orElseThrow()));
    assertThat(result.mayWrite()).isFalse();
    assertThat(result.findings()).extracting(f -> f.code()).contains(FindingCode.GOUGE);
  }

  /** An edge turned by the angle lies along (cos, sin), a square one along (-sin, cos). */
  @Test
  void each_edge_tells_the_same_angle_whichever_place_is_first() {
    double a = Math.toRadians(-1.2);
    Point along = new Point(300 * Math.cos(a), 300 * Math.sin(a));
    Point across = new Point(-90 * Math.sin(a), 90 * Math.cos(a));
    Point at = new Point(-7, 11);
    for (Skew.Edge edge : Skew.Edge.values()) {
      boolean front = edge == Skew.Edge.FRONT || edge == Skew.Edge.BACK;
      Point other = at.plus(front ? along : across);
      assertThat(Skew.of(edge, at, other).angleRad()).isCloseTo(a, within(1e-12));
      assertThat(Skew.of(edge, other, at).angleRad()).isCloseTo(a, within(1e-12));
      assertThat(Skew.of(edge, at, other).apartMm()).isCloseTo(front ? 300 : 90, within(1e-9));
    }
  }

  @Test
  void too_much_and_too_near_are_refused() {
    refused(TOUCHED.replace("y: 5.235", "y: 12"), "JOB-040", "3.4 deg", "3 deg at most");
    refused(TOUCHED.replace("x: 202.931", "x: 33"), "JOB-009", "30.45 mm", "0.69 mm");
    refused(TOUCHED.replace("{at:", "{edge: left, at:"), "JOB-040");
  }

  private static void refused(String text, String... parts) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> job(text));
    assertThat(e.diagnostics().get(0).toString()).contains(parts);
  }
}
