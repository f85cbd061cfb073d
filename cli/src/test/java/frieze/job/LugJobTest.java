package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.build.Build;
import frieze.build.BuiltPanel;
import frieze.build.Designed;
import frieze.build.NotchCorners;
import frieze.diagnostic.BadInputException;
import frieze.layout.Placement;
import frieze.sheet.ReportJson;
import frieze.sheet.SetupSheet;
import frieze.template.InFrame;
import frieze.template.PaperTemplate;
import frieze.template.TemplateMaker;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class LugJobTest {
  private static final String SQUARE =
      "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='20mm' viewBox='0 0 20 20'>"
          + "<rect width='20' height='20'/></svg>";
  private static final String JOB =
      """
      job: Small
      units: mm
      artwork:
        leaf: {file: leaf.svg}
      panels:
        front:
          opening:
            width: 200
            height: 50
            lugs:
              - {name: lug, side: bottom, from: 90, width: 20, depth: 12}
          fit: {gap: 1}
          stock: {material: white ash, length: 230, width: 80, thickness: 12}
          design:
            - place: leaf
              along: {count: 5, inset: 3}
              avoid: {space: 2, shift: 4}
          work:
            - recess: {on: leaf, tool: flat 1/8, depth: 2}
            - cutout: {tool: flat 1/4, corners: ear, hold: {tabs: 4, width: 6, thickness: 3}}
      """;

  private static MemoryFiles files(String job) {
    return new MemoryFiles().with("job.yaml", job).with("leaf.svg", SQUARE);
  }

  private static Job read(String job) {
    return JobReader.read("job.yaml", files(job), List.of("short-arcs"));
  }

  private static Designed designed(String job) {
    return Build.designs(read(job), files(job)).get(0);
  }

  private static String failure(String job) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> designed(job));
    assertThat(e).as("the job should be refused").isNotNull();
    return e.diagnostics().get(0) + " " + e.diagnostics().get(0).hint();
  }

  @Test
  void a_panel_with_a_notch_is_made_and_its_dry_run_finds_nothing() {
    BuiltPanel built = Build.run(read(JOB), files(JOB)).get(0);
    assertThat(built.facts().panels().get(0).dryRun().findings()).isEmpty();
    String sheet = SetupSheet.html(built.facts());
    assertThat(sheet).contains("notch for", "22 mm", "12 mm");
    // Its clearance is the gap of its side; the report has it beside the gaps of sides and corners.
    assertThat(ReportJson.text(built.facts()).replaceAll("\\s", ""))
        .contains("{\"place\":\"lug\",\"now\":1.0,\"driest\":1.0,\"wettest\":1.0}");
  }

  /** The floor of the notch is 12 above the panel's edge, the middle motif ended 14 above it. */
  @Test
  void motifs_in_the_way_are_shifted_or_left_out_as_told() {
    List<Placement> plain = designed(JOB.replace("depth: 12", "depth: 11.5")).design().placements();
    assertThat(plain.get(2).map().affine().f()).isCloseTo(14.0, within(1e-6));
    Placement shifted =
        designed(JOB.replace("depth: 12", "depth: 13.5")).design().placements().get(2);
    assertThat(shifted.map().affine().f()).isBetween(15.5, 16.0);
    String without = JOB.replace(", shift: 4", "").replace("depth: 12", "depth: 13.5");
    Designed four = designed(without);
    assertThat(four.design().placements())
        .extracting(Placement::number)
        .containsExactly(1, 2, 4, 5);
    assertThat(four.notes()).anySatisfy(n -> assertThat(n.toString()).contains("LAY-014"));
  }

  @Test
  void a_motif_on_a_notch_is_an_error_unless_told_to_avoid_it() {
    String on = JOB.replace("        avoid: {space: 2, shift: 4}\n", "");
    assertThat(failure(on)).contains("LAY-007", "motif leaf 3", "inset of 3 mm", "`avoid`");
  }

  /** A radius r in a corner reaches sqrt 2 (r - c) - r into a sharp one that keeps c. */
  @Test
  void a_bit_that_leaves_its_radius_in_the_way_of_the_lug_is_refused() {
    String round = JOB.replace(" corners: ear,", "");
    double into = Math.sqrt(2) * (3.175 - 1) - 3.175;
    assertThat(NotchCorners.intoLugMm(3.175, 1)).isCloseTo(into, within(1e-12)).isNegative();
    assertThat(designed(round).design().placements()).hasSize(5);
    String tight = round.replace("depth: 12}", "depth: 12, clearance: 0.5}");
    assertThat(failure(tight)).contains("OPEN-004", "0.61 mm", "clearance of 0.93 mm");
  }

  @Test
  void the_other_one_of_a_pair_mirrors_its_motifs_not_the_lugs() {
    String other = JOB.replace("    fit: {gap: 1}\n", "    fit: {gap: 1}\n    mirror: yes\n");
    Designed mirrored = designed(other.replace("from: 90", "from: 20"));
    assertThat(mirrored.design().panel().notches().get(0).bounds().minX())
        .isCloseTo(18, within(1e-6));
    assertThat(mirrored.design().placements()).hasSize(5);
  }

  @Test
  void the_template_names_the_lug_in_its_notch_and_tells_its_sizes() {
    Designed panel = designed(JOB);
    PaperTemplate template =
        TemplateMaker.of(
            "Small",
            panel.design(),
            new InFrame(panel.asked().insert().sitting(), panel.beyond(), Optional.empty()),
            false);
    assertThat(template.notes())
        .contains(
            "lug, notch at the bottom: 88 mm (3.465 in) from the panel's corner, 22 mm (0.866 in)"
                + " wide, 12 mm (0.472 in) deep.");
  }
}
