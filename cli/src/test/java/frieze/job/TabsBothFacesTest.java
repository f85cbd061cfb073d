package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.build.Build;
import frieze.diagnostic.BadInputException;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Tabs of a cutout below which the other face was worked. */
class TabsBothFacesTest {
  /** The panel lies off the middle both ways, so that a wrong turn shows. */
  private static final String JOB =
      """
      job: Thin tabs
      units: mm
      panels:
        p:
          size: {width: 90, height: 60}
          stock: {material: white ash, length: 140, width: 110, thickness: 19}
          position: {x: 22, y: 30}
          back: {turned: TURNED, work: [BACK]}
          work:
            - chamfer: {tool: vee 90, width: 3}
            - cutout: {tool: flat 1/4, hold: {tabs: 4, thickness: 3}}
      """;

  /** A wall of 45 degrees falls by half a cell of 0.1 mm from a cell's middle to the tip. */
  private static final double CELL_MM = 0.051;

  private static final Pattern PLACE = Pattern.compile("deep at x ([-0-9.]+), y ([-0-9.]+) mm");

  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='30mm' height='20mm' viewBox='0 0 30 20'>"
          + "<path d='M0 0H30V20H0Z'/></svg>";

  private static void build(String text) {
    MemoryFiles files = new MemoryFiles().with("job.yaml", text).with("field.svg", SVG);
    Build.run(JobReader.read("job.yaml", files, List.of("short-arcs")), files);
  }

  private static String job(String turned, String back) {
    return JOB.replace("TURNED", turned).replace("BACK", back);
  }

  private static String refused(String text) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> build(text));
    assertThat(e).isNotNull();
    return e.diagnostics().get(e.diagnostics().size() - 1).toString();
  }

  /**
   * By hand: a bit of 90 degrees goes as deep as its chamfer is wide, 2.4, and its tip 0.5 deeper:
   * of tabs 3 thick 0.1 stays there, in the slot, which is 6.35 wide.
   */
  @ParameterizedTest
  @ValueSource(strings = {"end to end", "front to back"})
  void a_chamfer_on_the_back_that_thins_tabs_is_refused(String turned) {
    String told = refused(job(turned, "{chamfer: {tool: vee 90, width: 2.4}}"));
    assertThat(told)
        .startsWith("job.yaml:11:17: ")
        .contains("error[PLAN-058]", "are to be 3 mm", "chamfer p", "on the back");
    assertThat(number(told, "runs ([0-9.]+) mm")).isCloseTo(2.9, within(CELL_MM));
    assertThat(number(told, "leaves ([0-9.]+) mm")).isCloseTo(0.1, within(CELL_MM));
    Matcher m = PLACE.matcher(told);
    assertThat(m.find()).as(told).isTrue();
    double x = Double.parseDouble(m.group(1));
    double y = Double.parseDouble(m.group(2));
    double out = Math.max(Math.max(-x, x - 90), Math.max(-y, y - 60));
    assertThat(out).isBetween(0.0, 6.4);
  }

  private static double number(String told, String pattern) {
    Matcher m = Pattern.compile(pattern).matcher(told);
    assertThat(m.find()).as(told).isTrue();
    return Double.parseDouble(m.group(1));
  }

  /** Seen from the back, the panel is mirrored: its left end is the front's right one. */
  @Test
  void only_the_side_that_is_worked_counts() {
    String back = "{chamfer: {tool: vee 90, width: 2, sides: [left]}}";
    Matcher m = PLACE.matcher(refused(job("end to end", back)));
    assertThat(m.find()).isTrue();
    assertThat(Double.parseDouble(m.group(1))).isBetween(90.0, 96.4);
  }

  @Test
  void a_tab_that_is_cut_away_leaves_nothing() {
    assertThat(refused(job("end to end", "{chamfer: {tool: vee 90, width: 4}}")))
        .contains("PLAN-058", "leaves nothing");
  }

  /** An opening cut from the back, and a recess of the face above its tabs. */
  @Test
  void tabs_of_an_opening_from_the_back_count_too() {
    String text =
        """
        job: Opening
        units: mm
        artwork:
          field: {file: field.svg, width: 30}
        panels:
          p:
            size: {width: 90, height: 60}
            stock: {material: white ash, length: 140, width: 110, thickness: 19}
            back:
              design: [{place: field, along: {count: 1}}]
              work: [{cutout: {on: field, side: inside, tool: flat 1/4, hold: {tabs: 2}}}]
            design: [{place: field, along: {count: 1}}]
            work: [{recess: {on: field, tool: flat 1/4, depth: 2}}]
        """;
    String told = refused(text);
    assertThat(told)
        .startsWith("job.yaml:11:")
        .contains("PLAN-058", "recess field", "on the front runs 2 mm", "leaves 1 mm");
  }

  @Test
  void work_on_the_back_that_keeps_clear_of_the_tabs_passes() {
    String hole = "{bore: {at: [{x: 20, y: 20}], diameter: 8, tool: flat 1/4, depth: 4}}";
    assertThatCode(() -> build(job("end to end", hole))).doesNotThrowAnyException();
  }

  /** A skin goes all round, and the tip would cut it through where it is thinnest. */
  @Test
  void a_skin_counts_as_tabs_do() {
    String text =
        job("end to end", "{chamfer: {tool: vee 90, width: 0.4}}")
            .replace("{tabs: 4, thickness: 3}", "{skin: 1}");
    assertThat(refused(text))
        .contains("PLAN-058", "the skin of this cutout is to be 1 mm", "leaves 0.15 mm");
  }
}
