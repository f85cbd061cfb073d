package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.build.BothFaces;
import frieze.build.Build;
import frieze.build.BuiltPanel;
import frieze.curve.Point;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.shop.Flip;
import frieze.shop.KeepOut;
import frieze.shop.Zero;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A panel whose back is cut too, on the same stock turned over. */
class BackFaceTest {
  private static final double ROUNDING = 1e-9;

  private static final String JOB =
      """
      job: Back
      units: mm
      artwork:
        field: {file: field.svg, width: 30}
      panels:
        end:
          size: {width: 100, height: 60}
          stock: {material: white ash, length: 150, width: 110, thickness: 19}
          position: {x: 27, y: 24}
          clamps: [{name: screw, x: 2, y: 3, width: 8, depth: 5, above: 3}]
          screws: {at: [{x: 50, y: 30}, {x: 10, y: 20}], size: 5, pilot: 4, tool: flat 1/8, depth: 8, from: back}
          back: {turned: TURNED, pins: {tool: flat 1/4, diameter: 8, depth: 5}}
          design:
            - place: field
              along: {count: 1}
          work:
            - recess: {on: field, tool: flat 1/8, depth: 4}
      """;

  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='30mm' height='20mm' viewBox='0 0 30 20'>"
          + "<path d='M0 0H30V20H0Z'/></svg>";

  private static MemoryFiles files(String text) {
    return new MemoryFiles().with("job.yaml", text).with("field.svg", SVG);
  }

  private static Job job(String text) {
    return JobReader.read("job.yaml", files(text), List.of("short-arcs"));
  }

  private static Work.Bore bore(Job.PanelJob panel, int index) {
    return (Work.Bore) panel.work().get(index);
  }

  /** By hand: the stock is 110 wide and the panel lies from 24 to 84, so from 26 to 86 turned. */
  @Test
  void the_back_comes_first_turned_about_the_length() {
    List<Job.PanelJob> both = job(JOB.replace("TURNED", "front to back")).panels();
    assertThat(both).extracting(Job.PanelJob::name).containsExactly("end, back", "end");
    Job.PanelJob back = both.get(0);
    assertThat(back.position()).contains(new Point(27, 26));
    assertThat(back.zero()).isEqualTo(zero(Zero.AlongX.LEFT, Zero.AlongY.BACK));
    assertThat(back.keepOuts()).containsExactly(new KeepOut("screw", 2, 102, 10, 107, 3));
    assertThat(bore(back, 0).centres()).containsExactly(new Point(50, 30), new Point(10, 40));
    // In the middle of the waste: 27 and 23 long.
    Flip.Pins pins = back.flip().orElseThrow().pins().orElseThrow();
    assertThat(pins.at()).containsExactly(new Point(13.5, 55), new Point(150 - 11.5, 55));
    assertThat(bore(back, 1).centres())
        .containsExactly(new Point(13.5 - 27, 55 - 26), new Point(138.5 - 27, 55 - 26));
    assertThat(both.get(1).work()).noneMatch(Work.Bore.class::isInstance);
  }

  /** Screws from the back alone make a back, too. */
  @Test
  void a_panel_that_is_carved_in_steps_has_no_back() {
    String steps = "    steps: {pin: 8, tool: flat 1/4, deep: 6}\n    design:";
    String both = JOB.replace("TURNED", "front to back").replace("    design:", steps);
    for (String text : List.of(both, both.replaceAll("    back:.*\n", ""))) {
      BadInputException e = catchThrowableOfType(BadInputException.class, () -> job(text));
      assertThat(e.diagnostics()).hasSize(1);
      int line = text.substring(0, text.indexOf("steps:")).split("\n", -1).length;
      assertThat(e.diagnostics().get(0).toString())
          .startsWith("job.yaml:" + line + ":12: error[JOB-019]")
          .contains("\"end\" is carved in steps", "back can't be worked");
    }
    assertThat(
            job(both.replaceAll("    back:.*\n", "").replace("from: back", "from: front")).panels())
        .hasSize(1);
  }

  @Test
  void or_about_the_line_across() {
    Job.PanelJob back = job(JOB.replace("TURNED", "end to end")).panels().get(0);
    assertThat(back.position()).contains(new Point(23, 24));
    assertThat(back.zero()).isEqualTo(zero(Zero.AlongX.RIGHT, Zero.AlongY.FRONT));
    assertThat(bore(back, 0).centres()).containsExactly(new Point(50, 30), new Point(90, 20));
    assertThat(back.flip().orElseThrow().pins().orElseThrow().at())
        .containsExactly(new Point(75, 12), new Point(75, 110 - 13));
  }

  private static Zero zero(Zero.AlongX x, Zero.AlongY y) {
    return new Zero(x, y, Zero.AlongZ.TOP);
  }

  /**
   * Whatever is turned lies over the same place of the board: each pin over itself, each screw of
   * the back below its place on the face, and zero at the same corner.
   */
  @Test
  void what_is_turned_comes_to_the_same_place_of_the_board() {
    for (String turned : List.of("front to back", "end to end")) {
      List<Job.PanelJob> both = job(JOB.replace("TURNED", turned)).panels();
      Job.PanelJob back = both.get(0);
      Flip flip = back.flip().orElseThrow();
      var map = flip.turned(150, 110);
      flip.pins().orElseThrow().at().forEach(p -> same(map.apply(p), p));
      for (int i = 0; i < 2; i++) {
        Point onBack = bore(back, 0).centres().get(i).plus(back.position().orElseThrow());
        Point screw = both.get(1).screws().orElseThrow().at().get(i);
        same(map.apply(onBack), screw.plus(new Point(27, 24)));
      }
      Point zero =
          Build.setup(job(JOB.replace("TURNED", turned)), back)
              .stockFromProgram()
              .apply(Point.ORIGIN);
      same(map.apply(zero), Point.ORIGIN);
    }
  }

  private static void same(Point a, Point b) {
    assertThat(a.distance(b)).isLessThan(ROUNDING);
  }

  /** The pilot is 8 deep from the back below a field 4 deep: 12 together, read off both texts. */
  @Test
  void both_depth_fields_summed_give_what_the_wish_gives() {
    String text = JOB.replace("TURNED", "front to back");
    List<BuiltPanel> built = Build.run(job(text), files(text));
    assertThat(built).allMatch(BuiltPanel::mayWrite);
    BothFaces.Deepest deepest =
        BothFaces.deepest(
            built.get(1).panel().depths().orElseThrow(),
            built.get(0).panel().depths().orElseThrow(),
            job(text).panels().get(1).flip().orElseThrow(),
            job(text).panels().get(1).stock());
    assertThat(deepest.depthMm()).isCloseTo(12, within(0.01));
    assertThat(deepest.onStock().distance(new Point(77, 54))).isLessThan(2.3);
    assertThat(built.get(0).programs().get(0).text()).contains("end, back", "back edge");
  }

  @Test
  void cuts_that_meet_in_the_board_are_refused_with_their_place() {
    String text =
        JOB.replace("TURNED", "front to back")
            .replace("depth: 4}", "depth: 8}")
            .replace(", from: back", "")
            .replace("{x: 50, y: 30}, ", "")
            .replace(
                "{turned:",
                "{design: [{place: field, along: {count: 1}}],"
                    + " work: [{recess: {on: field, tool: flat 1/8, depth: 12}}], turned:");
    BadInputException e =
        catchThrowableOfType(BadInputException.class, () -> Build.run(job(text), files(text)));
    assertThat(e.diagnostics().get(0).toString()).contains("SCREW-006", "cut 20 mm", "19 mm");
  }

  @Test
  void pins_need_waste_and_a_back_needs_work() {
    refused(JOB.replace("length: 150", "length: 134"), "JOB-039", "14 mm", "7 mm");
    refused(JOB.replace("from: back", "from: front"), "JOB-018", "nothing is cut on the back");
  }

  private static void refused(String text, String... parts) {
    BadInputException e =
        catchThrowableOfType(
            BadInputException.class, () -> job(text.replace("TURNED", "front to back")));
    assertThat(e.diagnostics().get(0).toString()).contains(parts);
  }
}
