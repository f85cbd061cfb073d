package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.keys.JobCode;
import frieze.layout.Arrangement;
import frieze.layout.FriezeGroup;
import frieze.shop.FinishAllowance;
import frieze.shop.Zero;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobReaderTest {
  private static final List<String> POSTS = List.of("short-arcs", "rs274-full");
  private static final double ROUNDING = 1e-9;

  /** Line and column of each key are counted in the tests below: keep the lines as they are. */
  private static final String GOOD =
      """
      job: Bench
      units: in
      machine: benchtop router
      artwork:
        leaf: {file: leaf.svg, height: 3-1/2}
      panels:
        front:
          opening: {width: 28-5/8, height: 5-1/4, corner: 3/16}
          fit: {gap: 1/16}
          stock: {material: white ash, length: 29, width: 6, thickness: [0.748, 0.752]}
          zero: {x: left, y: front, z: top}
          design:
            - place: leaf
              along: {group: turn and mirror, count: 9, inset: 1/2}
          work:
            - groove: {on: leaf, bit: vee 60, depth: 1/8}
            - cutout: {tool: flat 1/4, hold: {tabs: 6, width: 1/4, thickness: 1/8}}
      """;

  private static Job read(String text) {
    return JobReader.read("bench.yaml", files(text), POSTS);
  }

  private static MemoryFiles files(String text) {
    return new MemoryFiles()
        .with("bench.yaml", text)
        .with("leaf.png", "")
        .with("leaf.svg", "<svg/>");
  }

  private static List<Diagnostic> failures(String text) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> read(text));
    assertThat(e).as("the job should be refused").isNotNull();
    return e.diagnostics();
  }

  @Test
  void a_job_is_read_into_millimetres() {
    Job job = read(GOOD);
    Job.PanelJob panel = job.panels().get(0);
    assertThat(job.drawings().get(0).asked().heightMm().getAsDouble())
        .isCloseTo(88.9, within(ROUNDING));
    assertThat(panel.insert().opening().widthMm()).isCloseTo(727.075, within(ROUNDING));
    assertThat(panel.insert().gapMm()).isCloseTo(1.5875, within(ROUNDING));
    assertThat(panel.stock().thinnestMm()).isCloseTo(18.9992, within(ROUNDING));
    assertThat(panel.stock().thickestMm()).isCloseTo(19.1008, within(ROUNDING));
    assertThat(panel.zero()).isEqualTo(Zero.LEFT_FRONT_TOP);
    assertThat(panel.placings().get(0).pattern())
        .isEqualTo(new Arrangement(FriezeGroup.P2MG, 9, 12.7));
    assertThat(panel.work()).extracting(Work::operation).containsExactly("groove", "cutout");
    assertThat(panel.work().get(0).where().toString()).isEqualTo("bench.yaml:16:17");
    assertThat(panel.tools()).extracting(t -> t.name()).containsExactly("flat 1/4", "vee 60");
  }

  @Test
  void an_allowance_is_read_and_does_not_widen_the_panel_a_second_time() {
    String fit = "    fit: {gap: 1/16}\n";
    Job job = read(GOOD.replace(fit, fit + "    allowance: {face: 0.6 mm, walls: 0.01}\n"));
    FinishAllowance allowance = job.panels().get(0).allowance();
    assertThat(allowance.faceMm()).isEqualTo(0.6);
    assertThat(allowance.wallsMm()).isCloseTo(0.254, within(ROUNDING));
    assertThat(read(GOOD).panels().get(0).allowance()).isEqualTo(FinishAllowance.NONE);
    String both = "    fit: {sanded: 0.02}\n    allowance: {walls: 0.01}\n";
    Diagnostic twice = failures(GOOD.replace(fit, both)).get(0);
    assertThat(twice.code()).isEqualTo(JobCode.KEYS_EXCLUDE);
    assertThat(twice.where().line()).isEqualTo(10);
    assertThat(twice.message()).contains("by 0.25 mm", "by 0.51 mm");
  }

  @Test
  void what_is_not_written_has_its_default() {
    Job job = read(GOOD.replace("    zero: {x: left, y: front, z: top}\n", ""));
    assertThat(job.post()).isEqualTo("short-arcs");
    assertThat(job.panels().get(0).zero()).isEqualTo(Zero.LEFT_FRONT_TOP);
    assertThat(job.panels().get(0).clearanceMm()).isEqualTo(5.0);
    assertThat(job.panels().get(0).position()).isEmpty();
  }

  @Test
  void a_default_does_not_depend_on_the_units_of_the_file() {
    String metric =
        GOOD.replace("units: in", "units: mm").replaceAll("(\\d) *([,}\\]])", "$1 in$2");
    String counts = metric.replace("count: 9 in", "count: 9").replace("tabs: 6 in", "tabs: 6");
    String tools = counts.replace("flat 1/4 in", "flat 1/4").replace("vee 60 in", "vee 60");
    assertThat(read(tools).panels().get(0).clearanceMm()).isEqualTo(5.0);
    assertThat(read(tools).panels().get(0).insert().opening())
        .isEqualTo(read(GOOD).panels().get(0).insert().opening());
  }

  @Test
  void a_panel_like_another_takes_what_it_lacks() {
    Job job =
        read(
            GOOD
                + "  back:\n"
                + "    like: front\n"
                + "    opening: {width: 28-1/2, height: 5-1/4, corner: 3/16}\n");
    assertThat(job.panels()).extracting(Job.PanelJob::name).containsExactly("front", "back");
    Job.PanelJob back = job.panels().get(1);
    assertThat(back.insert().opening().widthMm()).isCloseTo(723.9, within(ROUNDING));
    assertThat(back.work()).isEqualTo(job.panels().get(0).work());
  }

  @Test
  void tools_of_the_shop_file_win() {
    String shop =
        """
        units: in
        tools:
          vee 60: {shape: vee, diameter: 1/4, angle: 60, flute length: 1/4, top speed: 20000,
                   top feed: 60, top plunge: 10}
        """;
    Job job = JobReader.read("bench.yaml", files(GOOD).with("shop.yaml", shop), POSTS);
    assertThat(job.panels().get(0).work().get(0).tool().diameterMm())
        .isCloseTo(6.35, within(ROUNDING));
    assertThat(job.panels().get(0).work().get(0).tool().maxFeedMmPerMin())
        .isCloseTo(1524, within(ROUNDING));
  }

  @Test
  void a_torch_that_feels_for_the_sheet_has_the_touch_travel_of_the_shop_file() {
    String shop =
        """
        units: mm
        machines:
          benchtop router:
            {post: rs274-full, travel: {x: 800, y: 800, z: 90}, rapid: {x: 5000, y: 5000, z: 2000},
             top feed: {x: 4000, y: 4000, z: 1500}, acceleration: {x: 300, y: 300, z: 200},
             spindle: {lowest: 9000, highest: 24000}, touch travel: 1/16 in}
        """;
    Job job = JobReader.read("bench.yaml", files(GOOD).with("shop.yaml", shop), POSTS);
    assertThat(job.machine().touchTravelMm()).isCloseTo(1.5875, within(ROUNDING));
    assertThat(read(GOOD).machine().touchTravelMm()).isZero();
  }

  @Test
  void a_broken_shop_file_is_named_in_its_errors() {
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class,
            () ->
                JobReader.read(
                    "bench.yaml",
                    files(GOOD).with("shop.yaml", "tools: {x: {shape: disc}}"),
                    POSTS));
    assertThat(e.diagnostics().get(0).where().source()).isEqualTo("shop.yaml");
  }

  /** A tool of the shop that may do nothing, or has no sides, at the line where it says so. */
  @ParameterizedTest
  @CsvSource({
    "'angle: 60, pass depth: 0', JOB-043, 0 must be more than 0, 56",
    "'angle: 60, pass depth: -1', JOB-043, -1 must be more than 0, 56",
    "'angle: 0', JOB-042, 0 must be more than 0 and below 180 deg, 40",
    "'angle: 180', JOB-042, 180 must be more than 0 and below 180 deg, 40",
  })
  void a_tool_that_can_do_nothing_is_refused(String keys, String code, String words, int column) {
    String shop =
        "units: mm\ntools:\n  v: {shape: vee, diameter: 12, %s, flute length: 9,".formatted(keys)
            + " top speed: 20000, top feed: 2000, top plunge: 400}\n";
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class,
            () -> JobReader.read("bench.yaml", files(GOOD).with("shop.yaml", shop), POSTS));
    assertThat(e.diagnostics())
        .singleElement()
        .satisfies(d -> assertThat(d.code().id()).isEqualTo(code))
        .satisfies(d -> assertThat(d.message()).isEqualTo(words))
        .satisfies(d -> assertThat(d.where()).hasToString("shop.yaml:3:" + column));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "inset: 1/2 | insets: 1/2 | 14:51 | JOB-002 | inset",
        "depth: 1/8 | deph: 1/8 | 16:41 | JOB-002 | depth",
        "fit: {gap: 1/16} | fit: {gap: 1/16, gap: 1/8} | 9:22 | JOB-003 | keep one",
        "fit: {gap: 1/16} | fit: {species: white as} | 9:20 | JOB-010 | did you mean \"white"
            + " ash\"?",
        "height: 3-1/2 | height: 3, trace: {} | 5:44 | JOB-019 | leave out",
        "leaf.svg, height: 3-1/2 | leaf.png | 5:16 | JOB-036 | dpi",
        "leaf.svg, | leaf.png, trace: {dpi: 300}, | 5:39 | JOB-019 | give one",
        "leaf.svg, | leaf.png, unit: 1 mm, | 5:32 | JOB-019 | leave it out",
        "gap: 1/16 | gap: 1 kg | 9:16 | JOB-008 | write a length",
        "gap: 1/16 | gap: 12 deg | 9:16 | JOB-008 | write a length",
        "gap: 1/16 | gap: .nan | 9:16 | JOB-009 | write a length",
        "gap: 1/16 | gap: .inf | 9:16 | JOB-009 | write a length",
        "gap: 1/16 | gap: -1/16 | 9:16 | JOB-009 | ''",
        "gap: 1/16 | gap: [1, 2] | 9:16 | JOB-006 | ''",
        "units: in | units: inches | 2:8 | JOB-010 | did you mean \"inch\"?",
        "count: 9 | count: 9.5 | 14:48 | JOB-007 | ''",
        "count: 9 | count: 0 | 14:48 | JOB-009 | ''",
        "on: leaf | on: laef | 16:22 | JOB-011 | did you mean \"leaf\"?",
        "vee 60 | vee 6O | 16:33 | JOB-012 | did you mean \"vee 60\"?",
        "machine: benchtop router | machine: bench router | 3:10 | JOB-013 | benchtop router",
        "white ash | white asch | 10:23 | JOB-014 | did you mean \"white ash\"?",
        "units: in | post: short-arc | 2:7 | JOB-015 | did you mean \"short-arcs\"?",
        "leaf.svg | leef.svg | 5:16 | JOB-016 | folder of the job",
        "leaf.svg | leaf.xyz | 5:16 | JOB-024 | SVG",
        "height: 3-1/2 | height: 3, width: 2 | 5:44 | JOB-019 | give one",
        "length: 29 | length: 28 | 8:22 | JOB-021 | ''",
        "depth: 1/8 | depth: 3/4 | 16:48 | JOB-022 | less than",
        "thickness: 1/8} | thickness: 1} | 17:73 | JOB-022 | thinner",
        "thickness: [0.748, 0.752] | thickness: [0.748], blank: yes | 17:17 | JOB-019 | leave out",
        "job: Bench | job: Bench: two | 1:11 | JOB-001 | quotes",
        "job: Bench | jobs: Bench | 1:1 | JOB-002 | did you mean \"job\"?",
      })
  void a_mistake_is_told_with_its_place_and_a_hint(
      String right, String wrong, String place, String code, String hint) {
    assertThat(GOOD).contains(right);
    List<Diagnostic> failures = failures(GOOD.replace(right, wrong));
    Diagnostic first = failures.get(0);
    assertThat(first.where().toString()).as("%s", failures).isEqualTo("bench.yaml:" + place);
    assertThat(first.code().id()).as("%s", failures).isEqualTo(code);
    assertThat(first.hint()).as("%s", failures).contains(hint);
  }

  @Test
  void a_tab_in_the_indentation_is_refused() {
    Diagnostic first = failures(GOOD.replace("    fit:", "\tfit:")).get(0);
    assertThat(first.where().toString()).isEqualTo("bench.yaml:9:1");
    assertThat(first.code()).isEqualTo(JobCode.NOT_YAML);
    assertThat(first.hint()).contains("spaces");
  }

  @Test
  void a_missing_key_is_named_at_its_section() {
    Diagnostic first = failures(GOOD.replace("count: 9, ", "")).get(0);
    assertThat(first.code()).isEqualTo(JobCode.MISSING_KEY);
    assertThat(first.where().toString()).isEqualTo("bench.yaml:14:16");
    assertThat(first.message()).contains("\"count\"");
  }

  @Test
  void a_panel_beyond_the_machine_is_refused_by_how_much() {
    String wide = GOOD.replace("width: 28-5/8", "width: 31").replace("length: 29", "length: 32");
    Diagnostic first = failures(wide).get(0);
    assertThat(first.code()).isEqualTo(JobCode.PANEL_TOO_LARGE);
    // 31 in less two gaps of 1/16 in is 784.225 mm; the machine travels 750 mm.
    assertThat(first.message()).contains("784.23 mm").contains("750 mm").contains("34.23 mm");
  }

  @Test
  void all_mistakes_of_a_stage_are_told_at_once_in_the_order_of_the_file() {
    String text =
        GOOD.replace("gap: 1/16", "gap: x")
            .replace("count: 9", "count: y")
            .replace("in\n", "inn\n");
    assertThat(failures(text)).extracting(d -> d.where().line()).containsExactly(2, 9, 14);
  }

  @Test
  void an_unknown_model_of_a_panel_is_refused() {
    Diagnostic first = failures(GOOD + "  back: {like: frnt}\n").get(0);
    assertThat(first.code()).isEqualTo(JobCode.NO_SUCH_PANEL);
    assertThat(first.hint()).isEqualTo("did you mean \"front\"?");
  }

  @Test
  void an_empty_file_is_refused() {
    assertThat(failures("").get(0).code()).isEqualTo(JobCode.NOTHING_TO_DO);
    assertThat(failures("# nothing\n").get(0).code()).isEqualTo(JobCode.NOTHING_TO_DO);
    assertThat(failures(GOOD.substring(0, GOOD.indexOf("panels:")) + "panels: {}\n").get(0).code())
        .isEqualTo(JobCode.NOTHING_TO_DO);
  }

  @Test
  void a_drawing_that_is_not_placed_is_refused() {
    String text =
        GOOD.replace("  leaf: {file", "  bud: {file: leaf.svg}\n  leaf: {file")
            .replace("on: leaf", "on: bud");
    Diagnostic first = failures(text).get(0);
    assertThat(first.code()).isEqualTo(JobCode.NOT_PLACED);
    assertThat(first.hint()).contains("- place: bud");
  }

  @Test
  void bytes_that_are_not_text_are_refused() {
    SourceFiles files =
        new SourceFiles() {
          @Override
          public byte[] read(String name) {
            return new byte[] {(byte) 0xff, (byte) 0xfe, 0, 1};
          }

          @Override
          public boolean exists(String name) {
            return name.equals("bench.yaml");
          }
        };
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class, () -> JobReader.read("bench.yaml", files, POSTS));
    assertThat(e.diagnostics().get(0).code()).isEqualTo(JobCode.NOT_YAML);
  }
}
