package frieze.dryrun.torch;

import static org.assertj.core.api.Assertions.assertThat;

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

/** Parts of 6 x 5 mm in a kerf of 1.2 mm, on squares of a tenth of a millimetre. */
class TorchPiecesTest {
  private static final double HALF = 0.6;

  private final List<Region> parts = new ArrayList<>();
  private final List<TorchRun> runs = new ArrayList<>();
  private final List<TorchFacts.Joint> joints = new ArrayList<>();

  private List<Finding> findings() {
    FindingLog log = Moves.log();
    TorchFacts facts = new TorchFacts(parts, List.of(), 2 * HALF, 3, 0.5, 20, joints, List.of());
    new TorchPieces(facts, runs, log).check();
    return log.findings();
  }

  private List<String> messages(FindingCode code) {
    return findings().stream().filter(f -> f.code() == code).map(Finding::message).toList();
  }

  private void cut(double... way) {
    runs.add(TorchEdgesTest.run(runs.size() + 1, new Point(way[0], way[1]), way));
  }

  private static double[] around(double x0, double y0, double x1, double y1) {
    double[] b = {x0 - HALF, y0 - HALF, x1 + HALF, y1 + HALF};
    return new double[] {b[0], b[1], b[2], b[1], b[2], b[3], b[0], b[3], b[0], b[1]};
  }

  private void part(double x0, double y0, double x1, double y1) {
    parts.add(TorchEdgesTest.box(x0, y0, x1, y1));
  }

  @Test
  void a_part_that_is_cut_all_around_is_free() {
    part(0, 0, 6, 5);
    cut(around(0, 0, 6, 5));
    assertThat(findings()).isEmpty();
  }

  @Test
  void the_part_that_hangs_on_the_sheet_is_named() {
    part(0, 0, 6, 5);
    part(10, 0, 16, 5);
    cut(around(0, 0, 6, 5));
    double[] open = around(10, 0, 16, 5);
    open[9] = 3;
    cut(open);
    assertThat(messages(FindingCode.NOT_FREE))
        .containsExactly("part 2 is not cut free of the sheet");
    parts.remove(0);
    assertThat(messages(FindingCode.NOT_FREE))
        .containsExactly("the part is not cut free of the sheet");
  }

  /** A second piece 1 mm wide: 19 squares high it is dross, 21 squares high a piece. */
  @Test
  void pieces_below_two_square_millimetres_are_dross() {
    for (double high : new double[] {1.9, 2.1}) {
      parts.clear();
      runs.clear();
      parts.add(TorchEdgesTest.box(0, 0, 6, 5).union(TorchEdgesTest.box(9.2, 0, 10.2, high)));
      cut(around(0, 0, 6, 5));
      cut(around(9.2, 0, 10.2, high));
      List<String> apart = messages(FindingCode.PART_APART);
      if (high < 2) {
        assertThat(apart).isEmpty();
      } else {
        assertThat(apart)
            .containsExactly("the part comes out in 2 pieces, the smallest of 2 mm2 around X10 Y1");
      }
    }
  }

  /** The outline ends 1.1 mm before its start: kerfs of 1.2 mm meet, kerfs of 1.02 mm do not. */
  @Test
  void a_part_that_a_narrower_kerf_leaves_hanging_is_a_warning() {
    part(0, 0, 6, 5);
    cut(3, -0.6, 6.6, -0.6, 6.6, 5.6, -0.6, 5.6, -0.6, -0.6, 1.9, -0.6);
    assertThat(findings()).extracting(Finding::code).containsExactly(FindingCode.KERF_MATTERS);
    assertThat(messages(FindingCode.KERF_MATTERS))
        .containsExactly("with a kerf 15 % narrower the part hangs on the sheet");
  }

  /** Two halves on a web of 0.1 mm between two slots: gone with a kerf 0.18 mm wider. */
  @Test
  void a_part_that_a_wider_kerf_takes_apart_is_a_warning() {
    part(0, 0, 6, 5);
    cut(around(0, 0, 6, 5));
    cut(3, -0.6, 3, 1.85);
    cut(3, 3.15, 3, 5.6);
    assertThat(messages(FindingCode.PART_APART)).isEmpty();
    assertThat(messages(FindingCode.KERF_MATTERS))
        .hasSize(1)
        .allMatch(m -> m.startsWith("with a kerf 15 % wider the part comes out in 2 pieces"));
  }

  private void joint(double at) {
    joints.add(
        new TorchFacts.Joint(new Point(at, -HALF), new Point(at, 1), new Point(at, -2), 0.5));
  }

  /** A cut all around but for 1.7 mm at the bottom: a stub of half a millimetre. */
  @Test
  void a_joint_keeps_its_part_on_the_sheet() {
    part(0, 0, 6, 5);
    joint(3);
    cut(3.85, -0.6, 6.6, -0.6, 6.6, 5.6, -0.6, 5.6, -0.6, -0.6, 2.15, -0.6);
    assertThat(findings()).isEmpty();
    joints.clear();
    assertThat(messages(FindingCode.NOT_FREE)).hasSize(1);
    // A joint of something else keeps nothing here.
    joints.add(new TorchFacts.Joint(new Point(30, 0), new Point(9, 9), new Point(9, 10), 0.5));
    assertThat(messages(FindingCode.NOT_FREE)).hasSize(1);
  }

  @Test
  void a_joint_that_is_cut_is_told_with_its_place() {
    part(0, 0, 6, 5);
    joint(3);
    cut(around(0, 0, 6, 5));
    assertThat(messages(FindingCode.JOINT_BURNT))
        .containsExactly("the piece that a micro-joint should keep is loose at X3 Y-0.6");
    // Its outside lies in the kerf itself.
    joints.clear();
    joints.add(
        new TorchFacts.Joint(new Point(4, -HALF), new Point(4, -HALF), new Point(5, -HALF), 0.5));
    assertThat(messages(FindingCode.JOINT_BURNT)).hasSize(1);
  }

  /** A stub of 0.1 mm: gone with a kerf 0.18 mm wider. */
  @Test
  void a_joint_that_a_wider_kerf_burns_is_a_warning() {
    part(0, 0, 6, 5);
    joint(3);
    cut(3.65, -0.6, 6.6, -0.6, 6.6, 5.6, -0.6, 5.6, -0.6, -0.6, 2.35, -0.6);
    assertThat(messages(FindingCode.JOINT_BURNT)).isEmpty();
    assertThat(messages(FindingCode.KERF_MATTERS))
        .containsExactly(
            "with a kerf 15 % wider the piece that a micro-joint keeps comes loose at X3 Y-0.6");
  }
}
