package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import frieze.build.Build;
import frieze.build.Designed;
import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.design.Design;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.layout.LayoutCode;
import frieze.layout.Placement;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Two panels of a pair, drawings in turn, and holes that they keep clear of. */
class PairTest {
  private static final double ROUNDING = 1e-9;

  private static final String JOB =
      """
      job: Pair
      units: mm
      artwork:
        leaf: {file: leaf.svg, height: 40}
        seed: {file: seed.svg, height: 20}
      panels:
        left end:
          size: {width: 400, height: 130}
          stock: {material: white ash, length: 420, width: 150, thickness: 19}
          keep free: [{name: hinge, x: 0, y: 0, width: 60, height: 130}]
          design:
            - place: [leaf, seed]
              along: {pitch: 50, group: mirror}
              avoid: {space: 2}
          work:
            - groove: {on: leaf, tool: vee 60, depth: 1}
            - groove: {on: seed, tool: vee 60, depth: 1}
            - bore: {tool: flat 1/8, diameter: 6, depth: 5, at: [{x: 325, y: 65}]}
        right end:
          like: left end
          mirror: yes
      """;

  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='40mm' viewBox='0 0 20 40'>"
          + "<path id='vein' d='M0 0L20 10L10 40' fill='none' stroke='#000'/></svg>";

  private static List<Design> designs(String text) {
    MemoryFiles files =
        new MemoryFiles().with("job.yaml", text).with("leaf.svg", SVG).with("seed.svg", SVG);
    Job job = JobReader.read("job.yaml", files, List.of("short-arcs"));
    return Build.designs(job, files).stream().map(Designed::design).toList();
  }

  private static Point middle(Design design, Placement p) {
    return p.map().apply(design.motif(p.motif()).artwork().bounds().centre());
  }

  /**
   * Motifs 20 wide at 50 on 400: 1 + floor(380 / 50) = 8, at 25, 75 ... 375. The hinge takes the
   * first (up to 60); the second begins at 65. The hole at 325 takes the seventh, a leaf.
   */
  @Test
  void drawings_take_turns_and_those_in_the_way_are_left_out() {
    Design left = designs(JOB).get(0);
    assertThat(left.placements()).extracting(Placement::number).containsExactly(2, 3, 4, 5, 6, 8);
    assertThat(left.placements())
        .extracting(Placement::motif)
        .containsExactly("seed", "leaf", "seed", "leaf", "seed", "seed");
    for (Placement p : left.placements()) {
      assertThat(middle(left, p).distance(new Point(25 + 50.0 * (p.number() - 1), 65)))
          .isLessThan(ROUNDING);
    }
  }

  /** The same sum: leaf 1 ends at 35 and lies on the hinge up to 60, number 7 on the hole. */
  @Test
  void what_is_left_out_is_told_with_its_place_and_its_reason() {
    MemoryFiles files =
        new MemoryFiles().with("job.yaml", JOB).with("leaf.svg", SVG).with("seed.svg", SVG);
    Job job = JobReader.read("job.yaml", files, List.of("short-arcs"));
    List<Diagnostic> notes =
        Build.run(job, files).get(0).notes().stream()
            .filter(n -> n.code() == LayoutCode.LEFT_OUT)
            .toList();
    assertThat(notes).hasSize(1);
    assertThat(notes.get(0).toString())
        .startsWith("job.yaml:13:16: note[LAY-014]: 2 of 8 leaf and seed are left out")
        .contains("keep 2 mm (0.079 in) clear")
        .contains("1 at x 25, y 65 mm, on the one at x 30, y 65 mm")
        .contains("7 at x 325, y 65 mm, on the one at x 325, y 65 mm");
  }

  @Test
  void the_other_one_of_a_pair_is_its_mirror_image_holes_and_all() {
    List<Design> pair = designs(JOB);
    Affine mirror = Affine.scaling(-1, 1).then(Affine.translation(400, 0));
    Design left = pair.get(0);
    Design right = pair.get(1);
    assertThat(right.placements()).hasSameSizeAs(left.placements());
    for (int i = 0; i < left.placements().size(); i++) {
      Affine expected = left.placements().get(i).map().affine().then(mirror);
      Affine found = right.placements().get(i).map().affine();
      for (Point p : List.of(new Point(0, 0), new Point(10, 0), new Point(0, 10))) {
        assertThat(found.apply(p).distance(expected.apply(p))).isLessThan(ROUNDING);
      }
    }
    assertThat(bore(right).centres()).containsExactly(new Point(75, 65));
    assertThat(bore(left).centres()).containsExactly(new Point(325, 65));
  }

  private static Work.Bore bore(Design design) {
    return design.work().stream()
        .filter(Work.Bore.class::isInstance)
        .map(Work.Bore.class::cast)
        .findFirst()
        .orElseThrow();
  }

  @Test
  void a_row_needs_a_count_or_a_pitch() {
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class, () -> designs(JOB.replace("pitch: 50, group: mirror", "")));
    assertThat(e.diagnostics().get(0).toString()).contains("JOB-", "\"count\" or \"pitch\"");
  }
}
