package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import frieze.build.BrokenProgram;
import frieze.build.Build;
import frieze.build.BuiltPanel;
import frieze.build.Clampings;
import frieze.build.PlannedJob;
import frieze.build.PlannedPanel;
import frieze.build.ReadBack;
import frieze.build.Rescued;
import frieze.design.Intent;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Code;
import frieze.dryrun.Clamping;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.lower.FileNames;
import frieze.post.Posting;
import frieze.post.ProgramText;
import frieze.sheet.PanelFacts;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A panel of 400 mm on a machine that travels 250 mm: the dry run judges the steps together. */
class LongPanelTest {
  private static final String SHOP =
      """
      machines:
        small:
          post: short-arcs
          travel: {x: 250, y: 250, z: 80}
          rapid: {x: 4000, y: 4000, z: 1500}
          top feed: {x: 2500, y: 2500, z: 800}
          acceleration: {x: 200, y: 200, z: 100}
          spindle: {by hand: yes, lowest: 10000, highest: 27000}
      """;

  private static final String JOB =
      """
      job: Long
      units: mm
      machine: small
      artwork:
        leaf: {file: leaf.svg, height: 30}
      panels:
        long:
          size: {width: 400, height: 60}
          stock: {material: white ash, length: 430, width: 100, thickness: 8}
          steps: {pin: 5, tool: flat 1/8, deep: 3}
          design:
            - place: leaf
              along: {pitch: 40, inset: 5}
          work:
            - groove: {on: leaf, tool: vee 60, depth: 1}
            - cutout: {tool: flat 1/8, hold: {tabs: 4, width: 6, thickness: 3}}
      """;

  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='30mm' viewBox='0 0 20 30'>"
          + "<path d='M0 0L20 10L10 30' fill='none' stroke='#000'/></svg>";

  /** Coarse and quick; windows along the outlines are looked at closely all the same. */
  private static final double CELL_MM = 0.4;

  private static PlannedJob planned;
  private static List<List<ProgramText>> programs;

  @BeforeAll
  static void plan() {
    planned = Build.planned(read(JOB), files(JOB));
    FileNames names = new FileNames(planned.post().capabilities().files());
    programs =
        planned.panels().stream()
            .map(
                p -> Posting.write(p.sequence(), p.setup(), planned.post(), List.of("long"), names))
            .toList();
  }

  private static MemoryFiles files(String job) {
    return new MemoryFiles().with("job.yaml", job).with("shop.yaml", SHOP).with("leaf.svg", SVG);
  }

  private static Job read(String job) {
    return JobReader.read("job.yaml", files(job), List.of("short-arcs"));
  }

  private static List<DryRunResult> run(List<Clamping> clampings) {
    List<Intent> intents = Clampings.intents(planned.panels());
    PlannedPanel last = planned.panels().get(planned.panels().size() - 1);
    return last.dryRun(intents).withCell(CELL_MM).runMoved(clampings);
  }

  /** The clampings, of which the last lies further to the left than it should. */
  private static List<Clamping> clampings(double tooFarMm) {
    List<Clamping> all = new ArrayList<>();
    int last = programs.size() - 1;
    for (int i = 0; i <= last; i++) {
      Surroundings there =
          Surroundings.of(planned.panels().get(i).setup().pushed(i == last ? tooFarMm : 0));
      all.add(new Clamping(there, ReadBack.texts(programs.get(i), planned.post())));
    }
    return all;
  }

  private static List<Code> codes(List<DryRunResult> results) {
    return results.stream().flatMap(r -> r.findings().stream()).<Code>map(f -> f.code()).toList();
  }

  @Test
  void the_steps_together_are_the_design_and_stay_within_the_travel() {
    List<DryRunResult> results = run(clampings(0));
    assertThat(results).hasSize(3); // pins, step 1, step 2
    assertThat(codes(results)).isEmpty();
    assertThat(results.get(2).design().orElseThrow().isClean()).isTrue();
    assertThat(results.get(0).zeroFits()).allMatch(f -> f.fits());
  }

  @Test
  void a_step_that_is_left_out_is_missed() {
    List<Clamping> all = clampings(0);
    assertThat(codes(run(List.of(all.get(0), all.get(2)))))
        .contains(FindingCode.LEFT_STANDING, FindingCode.NOT_FREED);
  }

  @Test
  void a_stock_that_was_pushed_a_millimetre_too_far_is_gouged() {
    assertThat(codes(run(clampings(1)))).contains(FindingCode.GOUGE);
  }

  @Test
  void a_short_panel_is_made_in_one_clamping() {
    String text = JOB.replace("width: 400", "width: 180").replace("length: 430", "length: 210");
    List<BuiltPanel> built = Build.run(read(text), files(text));
    assertThat(built.get(0).clampings()).hasSize(1);
    assertThat(built.get(0).notes().toString()).contains("STEP-004");
  }

  @Test
  void without_steps_a_long_panel_is_refused_with_a_hint() {
    String text = JOB.replaceAll("    steps:.*\n", "");
    assertThatThrownBy(() -> read(text))
        .isInstanceOfSatisfying(
            BadInputException.class,
            e -> {
              assertThat(e.diagnostics().get(0).message()).contains("150 mm");
              assertThat(e.diagnostics().get(0).hint()).contains("carve the panel in \"steps\"");
            });
  }

  @Test
  void a_zero_at_the_right_is_refused() {
    String text = JOB.replace("    design:", "    zero: {x: right}\n    design:");
    assertThatThrownBy(() -> Build.planned(read(text), files(text)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("STEP-005");
  }

  /** Pins and programs are turned about one zero, so that the union is still the design. */
  @Test
  void a_stock_that_lies_turned_may_be_carved_in_steps() {
    String text =
        JOB.replace(
            "    design:",
            "    touched: {edge: front, at: [{x: 5, y: 0}, {x: 205, y: 3}]}\n    design:");
    BuiltPanel built = Build.run(read(text), files(text)).get(0);
    assertThat(built.clampings()).hasSize(3);
    for (PanelFacts clamping : built.clampings()) {
      assertThat(clamping.dryRun().findings()).isEmpty();
      assertThat(clamping.programs().get(0).text()).contains("TURNED", "0.86 deg");
    }
  }

  @Test
  void a_step_that_broke_off_is_rescued_and_the_union_is_still_the_design() {
    ProgramText broken = programs.get(2).get(1);
    int line = (int) broken.text().lines().count() / 2;
    Rescued rescued =
        Rescued.of(read(JOB), files(JOB), new BrokenProgram(broken.fileName(), "" + line))
            .orElseThrow();
    assertThat(rescued.findings()).noneMatch(Finding::isError);
    assertThat(rescued.mayWrite()).isTrue();
    assertThat(rescued.programs().get(0).text()).contains("step 2 of 2", "pushed left");
  }
}
