package frieze.dryrun.torch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.dryrun.Moves;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.TorchFacts;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A part of 10 x 8 mm in a kerf of 2 mm: the cuts run 1 mm beside its edges. */
public class TorchEdgesTest {
  private static final Region PART = box(0, 0, 10, 8);
  private static final TorchFacts FACTS = new TorchFacts(List.of(PART), List.of(), 2, 3, 0.5, 20);

  private final List<TorchRun> runs = new ArrayList<>();
  private Region part = PART;
  private TorchFacts facts = FACTS;

  public static Region box(double x0, double y0, double x1, double y1) {
    return Region.ofRing(
        List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1)));
  }

  /** A run whose pieces lie on lines 10 times its number, 10 times its number and 1, and so on. */
  static TorchRun run(int number, Point pierce, double... way) {
    TorchRun run = new TorchRun(0, Moves.line(10 * number), pierce);
    for (int i = 0; i + 3 < way.length; i += 2) {
      run.chords.add(new double[] {way[i], way[i + 1], way[i + 2], way[i + 3]});
      run.spans.add(Moves.line(10 * number + i / 2));
    }
    return run;
  }

  private void cut(double... way) {
    runs.add(run(runs.size() + 1, new Point(way[0], way[1]), way));
  }

  private List<Finding> findings() {
    FindingLog log = Moves.log();
    new TorchEdges(part, runs, facts).check(log);
    return log.findings();
  }

  private Finding only(FindingCode code) {
    List<Finding> findings = findings();
    assertThat(findings).extracting(Finding::code).containsExactly(code);
    return findings.get(0);
  }

  private void around(double bottom) {
    cut(-1, bottom, 11, bottom, 11, 9, -1, 9, -1, bottom);
  }

  @Test
  void edges_may_be_two_hundredths_off() {
    around(-0.985);
    assertThat(findings()).isEmpty();
    runs.clear();
    around(-1.015);
    assertThat(findings()).isEmpty();
  }

  @Test
  void a_cut_that_takes_of_the_part_is_told_with_its_line() {
    cut(-1, -0.975, 11, -0.975, 11, 9, -1, 9, -1, -1);
    Finding finding = only(FindingCode.EDGE_CUT_INTO);
    assertThat(finding.amount().value()).isCloseTo(0.025, within(1e-12));
    assertThat(finding.line()).isEqualTo(10);
  }

  @Test
  void the_cut_that_takes_most_is_told() {
    cut(-1, -0.9, 10.8, -0.9, 10.8, 9, -1, 9, -1, -1);
    Finding finding = only(FindingCode.EDGE_CUT_INTO);
    assertThat(finding.amount().value()).isCloseTo(0.2, within(1e-12));
    assertThat(finding.line()).isEqualTo(11);
    assertThat(finding.message()).isEqualTo("the kerf takes 0.2 mm of the part");
  }

  /** The place is the middle of the first step of 10 / 34 mm. */
  @Test
  void an_edge_that_is_left_is_told_with_its_first_place() {
    around(-1.05);
    Finding finding = only(FindingCode.EDGE_LEFT);
    assertThat(finding.amount().value()).isCloseTo(0.05, within(1e-12));
    assertThat(finding.message()).startsWith("at X0.147 Y0 of the program the edge is 0.05 mm");
  }

  @Test
  void the_edge_that_is_left_most_is_told() {
    cut(-1, -1.05, 11, -1.05, 11, 9, -1, 9.2, -1, -1.05);
    assertThat(only(FindingCode.EDGE_LEFT).message()).contains("Y8 ");
    runs.clear();
    cut(-1, -1, 11, -1, 11, 9, -1.3, 9, -1.3, -1);
    // Down the left side: the first step begins at the top.
    assertThat(only(FindingCode.EDGE_LEFT).message()).startsWith("at X0 Y");
  }

  /** A slot of 1.5 mm, too narrow for the kerf: its walls cannot be asked for. */
  @Test
  void an_edge_that_no_kerf_reaches_is_not_asked_for() {
    part = PART.minus(box(4, 3, 5.5, 8));
    around(-1);
    assertThat(findings()).isEmpty();
    part = PART.minus(box(4, 3, 6.1, 8));
    assertThat(only(FindingCode.EDGE_LEFT).amount().value()).isGreaterThan(1);
  }

  @Test
  void a_slot_from_the_side_is_as_narrow_as_one_from_above() {
    part = PART.minus(box(6, 3, 10, 4.5));
    around(-1);
    assertThat(findings()).isEmpty();
  }

  private void withJoint(double widthMm) {
    withJoint(0, widthMm);
  }

  private void withJoint(double y, double widthMm) {
    facts =
        new TorchFacts(
            List.of(PART),
            List.of(),
            2,
            3,
            0.5,
            20,
            List.of(
                new TorchFacts.Joint(new Point(5, y), new Point(5, 4), new Point(5, -3), widthMm)),
            List.of());
  }

  /** Two half kerfs beyond half its width: from X2 to X8, and the cut starts 1 mm further on. */
  @Test
  void beside_a_joint_metal_is_left() {
    withJoint(2);
    cut(7.9, -1, 11, -1, 11, 9, -1, 9, -1, -1, 2.1, -1);
    assertThat(findings()).isEmpty();
    runs.clear();
    cut(9, -1, 11, -1, 11, 9, -1, 9, -1, -1, 2.1, -1);
    assertThat(only(FindingCode.EDGE_LEFT).message()).startsWith("at X8.");
    runs.clear();
    cut(7.9, -1, 11, -1, 11, 9, -1, 9, -1, -1, 1, -1);
    assertThat(only(FindingCode.EDGE_LEFT).message()).contains("at X1.912 Y0");
  }

  /** The same at the top, with an opening that comes too late. */
  @Test
  void a_joint_lies_where_it_is_said_to_lie() {
    part = PART.minus(box(3, 2, 7, 6));
    withJoint(8, 2);
    cut(2.1, 9, -1, 9, -1, -1, 11, -1, 11, 9, 7.9, 9);
    opening();
    only(FindingCode.OPENING_LATE);
    withJoint(2, 2);
    only(FindingCode.EDGE_LEFT);
  }

  @Test
  void a_cut_through_the_part_takes_the_kerf_whatever_its_width() {
    facts = new TorchFacts(List.of(PART), List.of(), 1, 3, 0.5, 20);
    cut(-0.5, -0.5, 10.5, -0.5, 10.5, 8.5, -0.5, 8.5, -0.5, -0.5);
    cut(3, 3, 7, 3);
    assertThat(only(FindingCode.EDGE_CUT_INTO, 2).amount().value()).isEqualTo(1);
  }

  @Test
  void a_cut_through_the_middle_of_the_part_takes_a_whole_kerf() {
    around(-1);
    cut(3, 3, 7, 3, 7, 5);
    Finding finding = only(FindingCode.EDGE_CUT_INTO, 2);
    assertThat(finding.amount().value()).isEqualTo(2);
    assertThat(finding.line()).isEqualTo(20);
  }

  private Finding only(FindingCode code, int line) {
    List<Finding> found = findings().stream().filter(f -> f.code() == code).toList();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).line()).isEqualTo(10 * line);
    return found.get(0);
  }

  private void opening() {
    // An opening of 4 mm, cut 1 mm inside its edges, pierced in its middle.
    runs.add(run(runs.size() + 1, new Point(5, 4), 4, 3, 6, 3, 6, 5, 4, 5, 4, 3));
  }

  @Test
  void an_opening_is_cut_before_the_outline_comes_loose() {
    part = PART.minus(box(3, 2, 7, 6));
    opening();
    around(-1);
    assertThat(findings()).isEmpty();
    runs.clear();
    around(-1);
    opening();
    assertThat(only(FindingCode.OPENING_LATE).line()).isEqualTo(20);
  }

  /** The outline in two runs, the opening between them: it is loose after the second only. */
  @Test
  void an_outline_is_loose_after_its_last_run() {
    part = PART.minus(box(3, 2, 7, 6));
    cut(-1, -1, 11, -1, 11, 9);
    opening();
    cut(11, 9, -1, 9, -1, -1);
    assertThat(findings()).isEmpty();
  }

  @Test
  void an_outline_that_is_not_all_cut_frees_nothing() {
    part = PART.minus(box(3, 2, 7, 6));
    cut(-1, -1, 11, -1, 11, 9, -1, 9);
    opening();
    only(FindingCode.EDGE_LEFT);
  }

  /** Its bottom is kept by a joint, yet nothing else holds it. */
  @Test
  void a_part_on_a_joint_counts_as_cut_around() {
    part = PART.minus(box(3, 2, 7, 6));
    withJoint(2);
    cut(7.9, -1, 11, -1, 11, 9, -1, 9, -1, -1, 2.1, -1);
    opening();
    only(FindingCode.OPENING_LATE);
  }
}
