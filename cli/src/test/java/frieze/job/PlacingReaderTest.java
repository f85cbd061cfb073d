package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.layout.Border;
import frieze.layout.Follow;
import frieze.layout.FriezeGroup;
import frieze.layout.Pattern;
import frieze.layout.Ring;
import frieze.layout.Scatter;
import frieze.layout.Tiling;
import frieze.layout.Variation;
import frieze.layout.WallpaperGroup;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

class PlacingReaderTest {
  private static String job(String seed, String more) {
    return """
    job: Small
    units: mm
    %s
    artwork:
      leaf: {file: leaf.svg, height: 40}
    panels:
      front:
        size: {width: 700, height: 130}
        stock: {material: white ash, length: 760, width: 150, thickness: 19}
        design:
          - {place: leaf, along: {count: 5}%s}
          - {place: leaf, along: {count: 3}%s}
        work:
          - cutout: {tool: flat 1/4}
      back:
        like: front
    """
        .formatted(seed, more, more);
  }

  private static List<Job.PanelJob> read(String text) {
    return JobReader.read(
            "job.yaml",
            new MemoryFiles().with("job.yaml", text).with("leaf.svg", "<svg/>"),
            List.of("short-arcs"))
        .panels();
  }

  private static String failure(String text) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> read(text));
    assertThat(e).as("the job should be refused").isNotNull();
    return e.diagnostics().get(0).toString();
  }

  @Test
  void differences_are_read_into_radians_and_millimetres() {
    Variation vary =
        read(job("", ", vary: {turn: 9 deg, size: 5%, place: 1/4 in, bend: 18 deg, space: 2}"))
            .get(0)
            .placings()
            .get(0)
            .vary()
            .orElseThrow();
    assertThat(vary.turnRad()).isCloseTo(Math.PI / 20, within(1e-12));
    assertThat(vary.size()).isCloseTo(0.05, within(1e-12));
    assertThat(vary.placeMm()).isCloseTo(6.35, within(1e-12));
    assertThat(vary.bendRad()).isCloseTo(Math.PI / 10, within(1e-12));
    assertThat(vary.spaceMm().orElseThrow()).isEqualTo(2);
    assertThat(read(job("", "")).get(0).placings().get(0).vary()).isEmpty();
  }

  @Test
  void the_seed_of_each_panel_and_drawing_is_its_own_and_follows_from_the_job() {
    List<Job.PanelJob> one = read(job("seed: 1", ", vary: {}"));
    List<Job.PanelJob> again = read(job("", ", vary: {}"));
    List<Job.PanelJob> two = read(job("seed: 2", ", vary: {}"));
    assertThat(seeds(one)).doesNotHaveDuplicates().isEqualTo(seeds(again));
    assertThat(seeds(one)).doesNotContainAnyElementsOf(seeds(two));
  }

  private static List<Long> seeds(List<Job.PanelJob> panels) {
    return panels.stream().flatMap(p -> p.placings().stream()).map(Job.Placing::seed).toList();
  }

  @Test
  void differences_that_can_not_be_are_refused() {
    assertThat(failure(job("", ", vary: {size: 60%}"))).contains("JOB-009", "0 to 50%");
    assertThat(failure(job("", ", vary: {turn: 200 deg}"))).contains("JOB-009", "180 deg");
    assertThat(failure(job("", ", vary: {bow: 2}"))).contains("JOB-002", "bow");
    assertThat(failure(job("", ", vary: {bend: 100 deg}"))).contains("JOB-009", "90 deg");
    assertThat(failure(job("seed: -1", ""))).contains("JOB-009", "-1");
  }

  private static Pattern pattern(String way) {
    String text = job("", "").replace("along: {count: 5}", way);
    return read(text).get(0).placings().get(0).pattern();
  }

  @Test
  void each_way_to_repeat_is_read() {
    assertThat(pattern("over: {group: quarter turn, columns: 6, inset: 10, turn: 90 deg}"))
        .isEqualTo(
            new Tiling(
                WallpaperGroup.P4, 6, OptionalInt.empty(), 10, Optional.empty(), Math.PI / 2));
    assertThat(pattern("over: {group: pgg, columns: 6, rows: 2, at: [25%, 0.2]}"))
        .isEqualTo(
            new Tiling(
                WallpaperGroup.P2GG,
                6,
                OptionalInt.of(2),
                0,
                Optional.of(new Point(0.25, 0.2)),
                0));
    assertThat(pattern("ring: {count: 8, radius: 40, x: 100, y: 65, start: 0 deg, mirror: yes}"))
        .isEqualTo(new Ring(8, 40, Optional.of(new Point(100, 65)), 0, true));
    assertThat(pattern("scatter: {count: 8, space: 4, inset: 3, turn: 180 deg}"))
        .isEqualTo(new Scatter(8, 4, 3, Math.PI));
    assertThat(pattern("follow: {arch: -12, group: turn, pitch: 60, stretch: yes, inset: 3}"))
        .isEqualTo(
            new Follow(
                new Follow.Arch(-12),
                FriezeGroup.P2,
                0,
                3,
                OptionalDouble.empty(),
                OptionalDouble.of(60),
                true));
    assertThat(pattern("follow: {drawing: leaf, between: lines, count: 5, swell: yes}"))
        .isEqualTo(
            new Follow(
                new Follow.BetweenLines("leaf", Optional.empty(), true),
                FriezeGroup.P1,
                5,
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                false));
    assertThat(pattern("border: {count: [8, 2], sides: running, top: in, corner: leaf}"))
        .isEqualTo(
            new Border(
                Border.Meeting.RUNNING,
                true,
                OptionalInt.of(8),
                OptionalInt.of(2),
                OptionalDouble.empty(),
                0,
                Optional.of("leaf"),
                OptionalDouble.empty()));
  }

  @Test
  void ways_that_can_not_be_are_refused() {
    String good = job("", "");
    assertThat(failure(good.replace(", along: {count: 5}", "")))
        .contains("JOB-005", "along, follow, border, over");
    assertThat(failure(good.replace("along: {count: 5}", "along: {count: 5}, over: {columns: 2}")))
        .contains("JOB-019");
    assertThat(failure(good.replace("along: {count: 5}", "over: {group: p6, columns: 2, rows: 2}")))
        .contains("JOB-019", "as high as their width");
    assertThat(failure(good.replace("along: {count: 5}", "ring: {count: 2, radius: 5, x: 3}")))
        .contains("JOB-005", "both");
    assertThat(failure(good.replace("along: {count: 5}", "follow: {count: 5}")))
        .contains("JOB-005", "drawing", "arch");
    assertThat(failure(good.replace("along: {count: 5}", "follow: {drawing: leef, count: 5}")))
        .contains("JOB-011", "leef");
    assertThat(failure(good.replace("along: {count: 5}", "border: {count: [4, 2], pitch: 9}")))
        .contains("JOB-019", "one of them");
    assertThat(failure(good.replace("along: {count: 5}", "over: {group: p5, columns: 2}")))
        .contains("JOB-010");
  }

  @Test
  void what_goes_on_beyond_the_border_can_be_clipped() {
    assertThat(read(job("", ", clip: 1/4 in")).get(0).placings().get(0).clipMm().orElseThrow())
        .isCloseTo(6.35, within(1e-12));
    String thrown = job("", "").replace("along: {count: 5}", "scatter: {count: 5}, clip: 2");
    assertThat(failure(thrown)).contains("job.yaml:11:50", "\"clip\" is for motifs that go on");
  }

  @Test
  void the_line_between_the_edges_is_read_and_excludes_the_others() {
    assertThat(((Follow) pattern("follow: {between: edges, swell: yes, count: 5}")).course())
        .isEqualTo(new Follow.Between(true));
    String two =
        job("", "").replace("along: {count: 5}", "follow: {between: edges, arch: 9, count: 5}");
    assertThat(failure(two)).contains("JOB-019", "one of them");
    String nameless =
        job("", "").replace("along: {count: 5}", "follow: {between: lines, count: 5}");
    assertThat(failure(nameless)).contains("JOB-005", "needs the \"drawing\"");
    String arched = nameless.replace("lines,", "lines, drawing: leaf, arch: 3,");
    assertThat(failure(arched)).contains("JOB-019", "no \"arch\"");
    String edges = nameless.replace("lines,", "edges, drawing: leaf,");
    assertThat(failure(edges)).contains("JOB-019", "one of them");
    String swelling =
        job("", "").replace("along: {count: 5}", "follow: {arch: 9, swell: yes, count: 5}");
    assertThat(failure(swelling)).contains("JOB-019", "\"swell\"");
  }
}
