package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.build.Build;
import frieze.diagnostic.BadInputException;
import frieze.opening.Sitting;
import java.util.List;
import org.junit.jupiter.api.Test;

class OpeningReaderTest {
  private static final double ROUNDING = 1e-6;
  private static final String RECTANGLE = "{width: 700, height: 130}";
  private static final String ASH =
      "{species: white ash, moisture: {now: 8%, lowest: 6%, highest: 12%}}";

  private static String job(String opening, String fit) {
    return """
    job: Small
    units: mm
    panels:
      front:
        opening: %s
        fit: %s
        stock: {material: white ash, length: 760, width: 150, thickness: 19}
        work:
          - cutout: {tool: flat 1/4}
    """
        .formatted(opening, fit);
  }

  private static Job.PanelJob read(String text) {
    return JobReader.read(
            "job.yaml", new MemoryFiles().with("job.yaml", text), List.of("short-arcs"))
        .panels()
        .get(0);
  }

  private static Sitting sitting(String opening, String fit) {
    return read(job(opening, fit)).insert().sitting().orElseThrow();
  }

  private static String failure(String text) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> read(text));
    assertThat(e).as("the job should be refused").isNotNull();
    return e.diagnostics().get(0).toString();
  }

  @Test
  void a_plain_opening_with_one_gap_is_a_rectangle() {
    Job.PanelJob panel = read(job(RECTANGLE, "{gap: 1}"));
    assertThat(panel.insert().sitting()).isEmpty();
    assertThat(panel.panel().lengthMm()).isCloseTo(698, within(ROUNDING));
    assertThat(read(job(RECTANGLE, "{}")).panel().heightMm()).isCloseTo(130, within(ROUNDING));
  }

  /** Wood Handbook, chapter 13: (130 - 1) / (1 + 0.00274 x 4). */
  @Test
  void the_wood_decides_where_no_gap_is_given() {
    assertThat(sitting(RECTANGLE, ASH).panel().heightMm())
        .isCloseTo(129 / (1 + 0.00274 * 4), within(ROUNDING));
    String upright = ASH.replace("moisture", "grain: upright, moisture");
    assertThat(sitting(RECTANGLE, upright).panel().lengthMm())
        .isCloseTo(699 / (1 + 0.00274 * 4), within(ROUNDING));
    String quarter = ASH.replace("moisture", "cut: quarter sawn, moisture");
    assertThat(sitting(RECTANGLE, quarter).panel().heightMm())
        .isCloseTo(129 / (1 + 0.00169 * 4), within(ROUNDING));
  }

  @Test
  void diagonals_make_the_panel_lean() {
    // A parallelogram: the top is 3 mm to the right over 130 mm of height.
    String leaning =
        "{width: 700, height: %.9f, diagonals: [%.9f, %.9f]}"
            .formatted(Math.hypot(3, 130), Math.hypot(703, 130), Math.hypot(697, 130));
    Sitting sitting = sitting(leaning, "{gap: 1}");
    assertThat(sitting.opening().outOfSquareLeftMm()).isCloseTo(3, within(1e-4));
    assertThat(sitting.panel().heightMm()).isCloseTo(128, within(1e-4));
    // Sides 2 / cos apart along X, plus the lean over the panel's own height.
    double across = 700 - 2 * Math.hypot(3, 130) / 130;
    assertThat(sitting.panel().lengthMm()).isCloseTo(across + 3 * 128 / 130.0, within(1e-3));
  }

  /**
   * Wood Handbook, Table 4-2: at 70 F, 5.4 % at 25 % and 9.2 % at 50 % of humidity (from memory).
   */
  @Test
  void the_air_of_the_seasons_tells_the_moisture() {
    String fit =
        "{species: white ash, moisture: {now: 8%%, dry season: {fahrenheit: 70, humidity: %d%%},"
            + " damp season: {celsius: 21, humidity: 50%%}}}";
    var moisture = sitting(RECTANGLE, fit.formatted(25)).asked().moisture();
    assertThat(moisture.lowestPct()).isCloseTo(5.4, within(0.2));
    assertThat(moisture.highestPct()).isCloseTo(9.2, within(0.2));
    assertThat(failure(job(RECTANGLE, fit.formatted(60)))).contains("WOOD-004");
  }

  @Test
  void four_gaps_are_bottom_right_top_left() {
    Sitting sitting = sitting(RECTANGLE, "{gap: [1, 2, 3, 4]}");
    assertThat(sitting.sides())
        .extracting(Sitting.Gap::nowMm)
        .satisfiesExactly(
            g -> assertThat(g).isCloseTo(1, within(ROUNDING)),
            g -> assertThat(g).isCloseTo(2, within(ROUNDING)),
            g -> assertThat(g).isCloseTo(3, within(ROUNDING)),
            g -> assertThat(g).isCloseTo(4, within(ROUNDING)));
  }

  @Test
  void what_can_not_be_is_refused_at_its_place() {
    assertThat(failure(job("{width: [700, 701], height: 130}", "{gap: 1}")))
        .contains("job.yaml:5:14", "JOB-005", "diagonals");
    assertThat(failure(job("{width: 700, height: 130, diagonals: [712, 731]}", "{gap: 1}")))
        .contains("job.yaml:5:51", "OPEN-001");
    assertThat(
            failure(
                job(
                    "{width: 700, height: 130, corner: 5, diagonals: [712, 712], into weld: yes,"
                        + " marks: 20}",
                    "{gap: 1}")))
        .contains("JOB-019", "marks");
    // 129.6 mm swells by 1.42 mm, 0.71 on each side, and has 0.2.
    assertThat(failure(job(RECTANGLE, ASH.replace("{species", "{gap: 0.2, species"))))
        .contains("job.yaml:6:", "WOOD-001", "0.51 mm");
    assertThat(failure(job(RECTANGLE, ASH.replace("lowest: 6%, ", ""))))
        .contains("JOB-005", "dry season");
    assertThat(failure(job(RECTANGLE, ASH).replace("opening: " + RECTANGLE, "size: " + RECTANGLE)))
        .contains("JOB-019", "opening");
  }

  /** The linear rule is published for 6 to 14 %. */
  @Test
  void a_season_beyond_the_published_range_is_a_warning_of_the_job() {
    String dry = ASH.replace("lowest: 6%", "lowest: 4%");
    String text = job(RECTANGLE, dry);
    MemoryFiles files = new MemoryFiles().with("job.yaml", text);
    Job job = JobReader.read("job.yaml", files, List.of("short-arcs"));
    assertThat(Build.designs(job, files).get(0).notes())
        .singleElement()
        .satisfies(
            n ->
                assertThat(n.toString())
                    .contains("warning[WOOD-002]", "from 4.0 to 12.0 %", "6 to 14 %"));
    Job within =
        JobReader.read(
            "job.yaml",
            new MemoryFiles().with("job.yaml", job(RECTANGLE, ASH)),
            List.of("short-arcs"));
    assertThat(Build.designs(within, files).get(0).notes()).isEmpty();
  }
}
