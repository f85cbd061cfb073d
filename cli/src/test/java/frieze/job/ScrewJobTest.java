package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.build.Build;
import frieze.build.Designed;
import frieze.curve.Point;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.screw.Movement;
import frieze.screw.Screws;
import frieze.screw.SteelHole;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One list of screws, from the job to the steel and the wood. */
class ScrewJobTest {
  private static final String JOB =
      """
      job: Screws
      units: mm
      artwork:
        leaf: {file: leaf.svg, height: 40}
      panels:
        left end:
          opening: {width: 401, height: 131}
          fit: {gap: 0.5, species: white ash, moisture: {now: 8%, lowest: 6%, highest: 10%}}
          stock: {material: white ash, length: 420, width: 150, thickness: 19}
          screws: {at: [{x: 20, y: 25}, {x: 380, y: 25}], size: 5, tool: drill 4 mm, depth: 12, held by: 1}
          design:
            - place: leaf
              along: {count: 2}
          work:
            - groove: {on: leaf, tool: vee 60, depth: 1}
        right end:
          like: left end
          mirror: yes
      """;

  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='40mm' viewBox='0 0 20 40'>"
          + "<path id='vein' d='M0 0L20 10L10 40' fill='none' stroke='#000'/></svg>";

  private static List<Designed> designs(String text) {
    MemoryFiles files = new MemoryFiles().with("job.yaml", text).with("leaf.svg", SVG);
    return Build.designs(JobReader.read("job.yaml", files, List.of("short-arcs")), files);
  }

  private static List<SteelHole> steel(Designed panel) {
    Screws screws = panel.asked().screws().orElseThrow();
    return screws.steelHoles(
        Movement.of(panel.asked().insert().sitting(), screws, panel.design().panel()));
  }

  @Test
  void the_list_drives_the_pilots_and_the_other_one_of_a_pair_is_mirrored() {
    List<Designed> pair = designs(JOB);
    assertThat(pilots(pair.get(0)).centres())
        .containsExactly(new Point(20, 25), new Point(380, 25));
    assertThat(pilots(pair.get(0)).depthMm()).contains(12.0);
    assertThat(pilots(pair.get(1)).centres())
        .containsExactly(new Point(380, 25), new Point(20, 25));
  }

  private static Work.Bore pilots(Designed panel) {
    return panel.design().work().stream()
        .filter(Work.Bore.class::isInstance)
        .map(Work.Bore.class::cast)
        .findFirst()
        .orElseThrow();
  }

  /** The screw that is not held is 360 along: 0.2 % over 30 % of moisture, over 4 %. */
  @Test
  void the_list_drives_the_holes_in_the_steel() {
    List<SteelHole> holes = steel(designs(JOB).get(0));
    assertThat(holes.get(0).isSlot()).isFalse();
    assertThat(holes.get(1).lengthMm() - 5.5).isCloseTo(360 * 0.002 / 30 * 4, within(1e-9));
    assertThat(holes.get(1).driest().y()).isEqualTo(25);
  }

  @Test
  void screws_that_meet_a_carving_or_go_through_build_nothing() {
    refused(JOB.replace("x: 380, y: 25", "x: 109, y: 75"), "SCREW-002", "meets groove leaf 1");
    refused(JOB.replace("depth: 12", "depth: 17"), "SCREW-001", "18.2 mm", "0.8 mm");
    refused(JOB.replace("size: 5", "size: 4"), "SCREW-005", "gives no hold");
    refused(JOB.replace("held by: 1", "held by: 3"), "SCREW-005", "no screw 3");
    refused(JOB.replace("held by: 1", "clearance: 5"), "SCREW-005", "lets no screw");
  }

  private static void refused(String text, String... parts) {
    MemoryFiles files = new MemoryFiles().with("job.yaml", text).with("leaf.svg", SVG);
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class,
            () -> Build.planned(JobReader.read("job.yaml", files, List.of("short-arcs")), files));
    assertThat(e.diagnostics().get(0).toString()).contains(parts);
  }
}
