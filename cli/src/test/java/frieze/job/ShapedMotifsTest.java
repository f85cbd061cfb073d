package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.build.Build;
import frieze.build.BuiltPanel;
import frieze.build.Designed;
import frieze.curve.Bounds;
import frieze.design.Intent;
import frieze.design.Intents;
import frieze.layout.Placement;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Motifs that are bent or clipped, down to the dry run. */
class ShapedMotifsTest {
  private static final String LEAF =
      "<svg xmlns='http://www.w3.org/2000/svg' width='10mm' height='20mm' viewBox='0 0 10 20'>"
          + "<path class='blade' d='M4 0 C9 6 9 12 6 20 C2 14 0 5 4 0Z'/>"
          + "<path class='vein' d='M4.5 3 V18' fill='none' stroke='#000'/></svg>";
  private static final String JOB =
      """
      job: Small
      units: mm
      artwork:
        leaf: {file: leaf.svg}
      panels:
        front:
          size: {width: 90, height: 60}
          stock: {material: white ash, length: 120, width: 90, thickness: 12}
          design:
            - place: leaf
              %s
          work:
            - vgroove: {on: leaf, pick: blade, tool: vee 60}
            - groove: {on: leaf, pick: vein, tool: vee 60, depth: 0.5}
      """;

  private static MemoryFiles files(String job) {
    return new MemoryFiles().with("job.yaml", job).with("leaf.svg", LEAF);
  }

  private static Job read(String job) {
    return JobReader.read("job.yaml", files(job), List.of("short-arcs"));
  }

  private static BuiltPanel built(String job) {
    return Build.run(read(job), files(job)).get(0);
  }

  /**
   * The walls of a clipped V-groove rise to the clip's edge too: the dry run compares with that.
   */
  @Test
  void a_clipped_pattern_is_carved_down_to_its_cut_edge() {
    String job = JOB.formatted("over: {group: pm, columns: 4}\n        clip: 3");
    BuiltPanel built = built(job);
    assertThat(built.facts().panels().get(0).dryRun().findings()).isEmpty();
    Designed designed = Build.designs(read(job), files(job)).get(0);
    List<Placement> placed = designed.design().placements();
    assertThat(placed).anyMatch(p -> p.variant() > 0).anyMatch(p -> p.variant() == 0);
    for (Intent intent : Intents.of(designed.design(), 0.002)) {
      if (intent instanceof Intent.VRecess carved) {
        assertThat(carved.region().bounds().minX()).isGreaterThanOrEqualTo(3 - 1e-6);
        assertThat(carved.region().bounds().maxY()).isLessThanOrEqualTo(57 + 1e-6);
      }
    }
  }

  @Test
  void bent_leaves_are_carved_as_they_are_drawn_and_come_back_with_the_seed() {
    String job = JOB.formatted("along: {group: turn, count: 5}\n        vary: {bend: 40 deg}");
    assertThat(built(job).facts().panels().get(0).dryRun().findings()).isEmpty();
    List<Placement> placed = placed(job);
    assertThat(placed).isEqualTo(placed(job));
    assertThat(placed.stream().map(Placement::bendPerMm).collect(Collectors.toSet()))
        .hasSizeGreaterThan(2);
    assertThat(placed)
        .allSatisfy(
            p ->
                assertThat(Math.abs(p.bendPerMm()) * 20)
                    .isLessThanOrEqualTo(Math.toRadians(40) + 1e-9));
    assertThat(placed("seed: 2\n" + job)).isNotEqualTo(placed);
    // The midrib stays parallel to the axis, on a ring of its own.
    Designed designed = Build.designs(read(job), files(job)).get(0);
    Bounds drawn = designed.design().motif("leaf").artwork().bounds();
    double aside = 4.5 - drawn.centre().x();
    Map<String, Double> bends =
        placed.stream()
            .collect(Collectors.toMap(p -> "groove leaf " + p.number(), Placement::bendPerMm));
    for (Intent intent : Intents.of(designed.design(), 0.002)) {
      if (intent instanceof Intent.Groove vein) {
        double length =
            vein.lines().stream()
                .flatMap(line -> line.segments().stream())
                .mapToDouble(s -> s.start().distance(s.end()))
                .sum();
        double bend = bends.get(vein.name());
        assertThat(length).as(vein.name()).isCloseTo(15 * (1 - bend * aside), within(1e-3));
      }
    }
  }

  private static List<Placement> placed(String job) {
    return Build.designs(read(job), files(job)).get(0).design().placements();
  }
}
