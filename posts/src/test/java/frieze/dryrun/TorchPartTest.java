package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Code;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.dryrun.scene.TorchFacts;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.rs274.ReadingRules;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A plate of 60 mm with a slot of 20 by 14 mm and a hole of 16 mm: written by hand for a kerf of
 * 1.6 mm, and with one fault at a time.
 */
class TorchPartTest {
  private static final ReadingRules TORCH = ReadingRules.REPORT.but().torch(3, 5).build();

  /** Travel at Z20, pierce at Z3.8 for half a second, cut at Z1.5. */
  private static final String GOOD =
      """
      G17 G21 G90 G94 F2500
      G0 Z20
      G0 X25 Y50
      G0 Z3.8
      M3
      G4 P0.5
      G1 Z1.5
      G1 X25 Y43.8
      G1 X15.8
      G1 Y56.2
      G1 X34.2
      G1 Y43.8
      G1 X25
      M5
      G0 Z20
      G0 X55 Y40
      G0 Z3.8
      M3
      G4 P0.5
      G1 Z1.5
      G1 X62.2
      G3 X47.8 I-7.2
      G3 X62.2 I7.2
      M5
      G0 Z20
      G0 X4 Y30
      G0 Z3.8
      M3
      G4 P0.5
      G1 Z1.5
      G1 X9.2
      G1 Y70
      G2 X10 Y70.8 I0.8
      G1 X70
      G2 X70.8 Y70 J-0.8
      G1 Y10
      G2 X70 Y9.2 I-0.8
      G1 X10
      G2 X9.2 Y10 J0.8
      G1 Y30
      M5
      G0 Z20
      M2
      """;

  private static final String SLOT =
      GOOD.substring(GOOD.indexOf("G0 X25 Y50"), GOOD.indexOf("G0 X55 Y40"));

  private static Region box(double x0, double y0, double x1, double y1) {
    return Region.ofRing(
        List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
  }

  private static final Region PART =
      box(10, 10, 70, 70)
          .minus(box(15, 43, 35, 57))
          .minus(Region.of(List.of(Path.circle(new Point(55, 40), 8)), FillRule.NONZERO, 0.002));

  private static List<Finding> findings(String text, Region part) {
    return findings(text, new TorchFacts(List.of(part), List.of(), 1.6, 3, 0.5, 20));
  }

  private static List<Finding> findings(String text, TorchFacts facts) {
    return DryRun.in(Surroundings.UNKNOWN)
        .withTorch(facts)
        .run(List.of(ProgramText.of("t.nc", text.getBytes(StandardCharsets.US_ASCII), TORCH)))
        .findings();
  }

  private static List<Code> codes(String text) {
    return findings(text, PART).stream().map(Finding::code).toList();
  }

  @Test
  void the_good_program_has_no_finding() {
    assertThat(findings(GOOD, PART)).isEmpty();
  }

  @Test
  void a_short_pierce_is_an_error() {
    assertThat(codes(GOOD.replaceFirst("G4 P0.5", "G4 P0.3")))
        .containsExactly(FindingCode.PIERCE_CUT_SHORT);
    assertThat(codes(GOOD.replaceFirst("G4 P0.5\n", "")))
        .containsExactlyInAnyOrder(FindingCode.PIERCE_CUT_SHORT, FindingCode.NO_PIERCE);
  }

  @Test
  void a_pierce_on_or_near_the_part_is_an_error() {
    assertThat(codes(GOOD.replace("X4 Y30", "X8 Y30"))).containsExactly(FindingCode.PIERCE_ON_PART);
    assertThat(codes(GOOD.replace("X4 Y30", "X12 Y30")))
        .contains(FindingCode.PIERCE_ON_PART, FindingCode.EDGE_CUT_INTO);
  }

  /** Half a kerf from the part, in the outline's own kerf: where it broke off and goes on. */
  @Test
  void a_torch_lit_again_in_the_kerf_is_a_warning_where_that_is_known() {
    String broken =
        GOOD.replace(
            "G1 X70\nG2 X70.8 Y70 J-0.8",
            "G1 X40\nM5\nG0 Z20\nG0 Z3.8\nM3\nG4 P0.5\nG1 Z1.5\nG1 X70\nG2 X70.8 Y70 J-0.8");
    assertThat(codes(broken)).containsExactly(FindingCode.PIERCE_ON_PART);
    TorchFacts facts = new TorchFacts(List.of(PART), List.of(), 1.6, 3, 0.5, 20);
    assertThat(findings(broken, facts.withRelit(List.of(new Point(40, 70.8)))))
        .extracting(Finding::code)
        .containsExactly(FindingCode.LIT_IN_KERF);
    assertThat(codes(GOOD)).isEmpty();
  }

  @Test
  void an_opening_after_the_outline_is_an_error() {
    String late = GOOD.replace(SLOT, "").replace("M2\n", SLOT + "M2\n");
    assertThat(codes(late)).containsExactly(FindingCode.OPENING_LATE);
  }

  @Test
  void low_travel_is_an_error() {
    assertThat(codes(GOOD.replaceFirst("M5\nG0 Z20", "M5\nG0 Z10")))
        .containsExactly(FindingCode.TORCH_TRAVELS_LOW);
  }

  /** Five hundredths are more than the two that are allowed; one hundredth is not. */
  @Test
  void an_edge_a_twentieth_off_is_an_error() {
    assertThat(codes(GOOD.replace("G1 Y56.2", "G1 Y56.25")))
        .containsExactly(FindingCode.EDGE_CUT_INTO);
    assertThat(codes(GOOD.replace("G1 Y56.2", "G1 Y56.15"))).containsExactly(FindingCode.EDGE_LEFT);
    assertThat(codes(GOOD.replace("G1 Y56.2", "G1 Y56.21"))).isEmpty();
  }

  @Test
  void a_missing_opening_or_an_open_outline_is_an_error() {
    assertThat(codes(GOOD.replace(SLOT, ""))).containsExactly(FindingCode.EDGE_LEFT);
    assertThat(codes(GOOD.replace("G2 X9.2 Y10 J0.8\nG1 Y30\n", "G2 X9.2 Y10 J0.8\nG1 Y20\n")))
        .contains(FindingCode.NOT_FREE, FindingCode.EDGE_LEFT);
  }

  /** An island on a bridge of 6 mm that the text cuts away: it falls. */
  @Test
  void a_bridge_that_is_cut_away_is_an_error() {
    Region bridged = PART.union(box(22, 51, 28, 57)).union(box(20, 48, 30, 52));
    assertThat(findings(GOOD, bridged))
        .extracting(Finding::code)
        .contains(FindingCode.PIERCE_ON_PART, FindingCode.EDGE_CUT_INTO, FindingCode.PART_APART);
  }

  /** Two squares joined by a web of 0.2 mm: it stands, and burns with a kerf 0.24 mm wider. */
  @Test
  void a_web_that_a_wider_kerf_burns_is_a_warning() {
    String text =
        """
        G17 G21 G90 G94 F2500
        G0 Z20
        G0 X-6 Y10
        G0 Z3.8
        M3
        G4 P0.5
        G1 Z1.5
        G1 X-0.8
        G1 Y20
        G2 X0 Y20.8 I0.8
        G1 X20
        G2 X20.8 Y20 J-0.8
        G1 Y10.9
        G1 X23.2
        G1 Y20
        G2 X24 Y20.8 I0.8
        G1 X44
        G2 X44.8 Y20 J-0.8
        G1 Y0
        G2 X44 Y-0.8 I-0.8
        G1 X24
        G2 X23.2 Y0 J0.8
        G1 Y9.1
        G1 X20.8
        G1 Y0
        G2 X20 Y-0.8 I-0.8
        G1 X0
        G2 X-0.8 Y0 J0.8
        G1 Y10
        M5
        G0 Z20
        M2
        """;
    Region part = box(0, 0, 20, 20).union(box(20, 9.9, 24, 10.1)).union(box(24, 0, 44, 20));
    List<Finding> found = findings(text, part);
    assertThat(found).extracting(Finding::code).containsExactly(FindingCode.KERF_MATTERS);
    assertThat(found.get(0).message()).contains("15 % wider", "in 2 pieces");
  }

  /**
   * A square island of 20 mm around which one pass of 1.6 mm goes, all but a bridge of 0.2 mm: it
   * stays at the stated kerf, and drops with one of 1.84 mm.
   */
  @Test
  void an_island_that_drops_with_a_wider_kerf_is_a_warning() {
    double[][] way = {{40.9, 60}, {50, 60}, {50, 40}, {30, 40}, {30, 60}, {39.1, 60}};
    Region part = box(10, 10, 70, 70);
    StringBuilder text = new StringBuilder("G0 X40.9 Y60\nG0 Z3.8\nM3\nG4 P0.5\nG1 Z1.5\n");
    for (int i = 0; i < way.length; i++) {
      double[] a = way[Math.max(0, i - 1)];
      double[] b = way[i];
      Path end = Path.circle(new Point(b[0], b[1]), 0.8);
      part = part.minus(Region.of(List.of(end), FillRule.NONZERO, 0.002));
      part =
          part.minus(
              Math.abs(a[0] - b[0]) > Math.abs(a[1] - b[1])
                  ? box(Math.min(a[0], b[0]), a[1] - 0.8, Math.max(a[0], b[0]), a[1] + 0.8)
                  : box(a[0] - 0.8, Math.min(a[1], b[1]), a[0] + 0.8, Math.max(a[1], b[1])));
      text.append(i == 0 ? "" : "G1 X" + b[0] + " Y" + b[1] + "\n");
    }
    String outline = GOOD.substring(GOOD.indexOf("G0 X4 Y30"));
    String program = GOOD.substring(0, GOOD.indexOf("G0 X25")) + text + "M5\nG0 Z20\n" + outline;
    List<Finding> found =
        findings(program, new TorchFacts(List.of(part), List.of(), 1.6, 0.79, 0.5, 20));
    assertThat(found).extracting(Finding::code).containsExactly(FindingCode.KERF_MATTERS);
    assertThat(found.get(0).message()).contains("15 % wider", "in 2 pieces", "around X40 Y50");
  }

  /** The cut ends 1.5 mm before its start: kerfs of 1.6 mm meet, kerfs of 1.36 mm do not. */
  @Test
  void a_part_that_a_narrower_kerf_leaves_on_the_sheet_is_a_warning() {
    List<Finding> found = findings(GOOD.replace("J0.8\nG1 Y30\n", "J0.8\nG1 Y28.5\n"), PART);
    assertThat(found)
        .extracting(Finding::code)
        .containsExactlyInAnyOrder(FindingCode.EDGE_LEFT, FindingCode.KERF_MATTERS);
    assertThat(found)
        .anyMatch(f -> f.message().contains("15 % narrower the part hangs on the sheet"));
  }

  private static List<Code> withJoint(String text) {
    TorchFacts.Joint joint =
        new TorchFacts.Joint(
            new Point(26.2, 43.8), new Point(26.2, 45.4), new Point(26.2, 42.2), 0.8);
    TorchFacts facts =
        new TorchFacts(List.of(PART), List.of(), 1.6, 3, 0.5, 20, List.of(joint), List.of());
    return DryRun.in(Surroundings.UNKNOWN)
        .withTorch(facts)
        .run(List.of(ProgramText.of("t.nc", text.getBytes(StandardCharsets.US_ASCII), TORCH)))
        .findings()
        .stream()
        .map(Finding::code)
        .toList();
  }

  /** The slot ends 2.4 mm before its start: a stub of 0.8 mm beside a kerf of 1.6 mm. */
  @Test
  void a_micro_joint_holds_if_its_width_and_one_kerf_are_left() {
    String kept = GOOD.replace("G1 Y43.8\nG1 X25\nM5", "G1 Y43.8\nG1 X27.4\nM5");
    assertThat(withJoint(kept)).isEmpty();
    assertThat(codes(kept)).containsExactly(FindingCode.EDGE_LEFT);
    assertThat(withJoint(kept.replace("X27.4", "X27.2"))).containsExactly(FindingCode.JOINT_BURNT);
    assertThat(withJoint(GOOD)).contains(FindingCode.JOINT_BURNT);
  }
}
