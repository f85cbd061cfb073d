package frieze.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.design.BoreWay;
import frieze.design.Design;
import frieze.design.Work;
import frieze.diagnostic.SourceSpan;
import frieze.layout.Panel;
import frieze.screw.Screws;
import frieze.screw.SteelHole;
import frieze.shop.Flip;
import frieze.shop.Setup;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import frieze.steps.Pins;
import frieze.steps.Seam;
import frieze.steps.Steps;
import frieze.template.InFrame;
import frieze.template.ScrewMarks;
import frieze.template.TemplateMaker;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** All numbers of the sentences about screws, turning over, steps and holes, worked out by hand. */
class SentenceNumbersTest {
  /** Two places are printed. */
  private static final double ROUNDED = 0.005 + 1e-9;

  private static final Measures MM = new Measures(false);
  private static final double INCH = 25.4;

  private static final Tool BIT =
      new Tool(
          "flat 1/8",
          2,
          new ToolShape.Flat(3.175),
          2,
          22,
          30,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          30_000,
          1_800,
          400);

  private static Setup setup(Zero zero) {
    Setup sample = SampleJob.panel().setup();
    return new Setup(
        sample.machine(), sample.stock(), zero, 19, 11, 12.7, 0.5, List.of(), List.of(BIT));
  }

  /** Numbers with a unit, after X or Y, or with a degree sign; no names such as S1. */
  private static List<Double> numbers(String text) {
    List<Double> all = new ArrayList<>();
    Pattern pattern =
        Pattern.compile("(?<![\\w.])[XY] ?(-?[0-9.]*[0-9])|(-?[0-9.]+) ?(?:mm|in\\b|\u00b0)");
    for (MatchResult m : pattern.matcher(text).results().toList()) {
      all.add(Double.parseDouble(m.group(1) == null ? m.group(2) : m.group(1)));
    }
    return all;
  }

  private static void assertNumbers(String text, double tolerance, double... expected) {
    List<Double> told = numbers(text);
    assertThat(told).as(text).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      assertThat(told.get(i))
          .as("number %d of %s", i + 1, text)
          .isCloseTo(expected[i], within(tolerance));
    }
  }

  /** Two pins 600 apart along X and 80 across, pushed 410 each time, three steps. */
  @Test
  void what_an_operator_does_between_steps() {
    Pins.Wanted wanted = new Pins.Wanted(8, 6.5, BIT, SourceSpan.NONE);
    Pins pins = new Pins(wanted, new Point(700, 10), new Point(100, 90), 410);
    Steps steps =
        new Steps(
            0,
            780,
            410,
            List.of(
                new Seam(512.25, List.of("cutout apron"), List.of()),
                new Seam(903.5, List.of(), List.of())),
            pins,
            List.of(List.of(), List.of(), List.of()));
    Setup setup = setup(Zero.LEFT_FRONT_TOP);
    List<String> bores = new StepItems(new StepPart(steps, 0, true), setup, MM).items();
    assertNumbers(bores.get(0), ROUNDED, 8, 6.5);
    List<String> second =
        new StepItems(new StepPart(steps, 1, false), setup.pushed(410), MM).items();
    assertNumbers(second.get(0), ROUNDED, 410, 410 / INCH, 410, 410 / INCH);
    // The far end of step 2 is its second seam; the pin behind it stands at 100 of the stock.
    double apart = Math.hypot(600, 80);
    assertNumbers(second.get(1), ROUNDED, apart, 0.1, 0.1 * (903.5 - 100) / apart);
    // The pins stand where they stood: the front one at X 700 of the stock, less the push.
    assertNumbers(second.get(2), ROUNDED, 0, 0, 700 - 410, 10);
    assertNumbers(second.get(3), ROUNDED, 512.25, 512.25 / INCH, 3);
    assertThat(second.get(3)).contains("across it go cutout apron");
    List<String> third =
        new StepItems(new StepPart(steps, 2, false), setup.pushed(820), MM).items();
    assertNumbers(third.get(0), ROUNDED, 410, 410 / INCH, 820, 820 / INCH);
    // The far end is that of the stock, 762; it has been pushed: the pin is at 100 + 410 of it.
    assertNumbers(third.get(1), ROUNDED, apart, 0.1, 0.1 * Math.max(1, (762 - 510) / apart));
    assertNumbers(third.get(2), ROUNDED, 0, 0, 700 + 410 - 820, 10);
    assertNumbers(third.get(3), ROUNDED, 903.5, 903.5 / INCH, 3);
  }

  /** The stock is 762 by 152.4: a zero at the back lies 152.4 beyond one in front. */
  @Test
  void where_the_pins_stand_that_a_board_is_turned_on() {
    Flip.Pins pins =
        new Flip.Pins(List.of(new Point(9.25, 76.2), new Point(751.5, 76.2)), 9.5, 6.25);
    Flip back = new Flip(false, true, Optional.of(pins));
    Zero atBack = new Zero(Zero.AlongX.LEFT, Zero.AlongY.BACK, Zero.AlongZ.TOP);
    List<String> first = new FlipSteps(setup(atBack), back, MM).items();
    assertNumbers(first.get(2), 0.05, 9.5, 9.5 / INCH, 9.25, -76.2, 751.5, -76.2, 6.25);
    List<String> then = new FlipSteps(setup(Zero.LEFT_FRONT_TOP), back.otherSide(), MM).items();
    assertNumbers(then.get(2), 0.05, 9.5, 9.5 / INCH, 9.25, 76.2, 751.5, 76.2, 0, 0);
  }

  /** A screw travels 3 along and 4 across from the driest to the wettest: 5, at 53.13 degrees. */
  @Test
  void screws_in_the_steel_and_in_the_wood() {
    Screws screws =
        new Screws(
            List.of(new Point(20, 30.5), new Point(380, 30.5)),
            5,
            new Screws.Steel(5.5, true, OptionalInt.of(0)),
            new Screws.Pilot(3.75, 12.5, BIT, List.of(), true, 3),
            SourceSpan.NONE);
    List<SteelHole> holes =
        List.of(
            new SteelHole(new Point(20, 30.5), new Point(20, 30.5), new Point(20, 30.5), 5.5),
            new SteelHole(new Point(380, 30.5), new Point(378, 28), new Point(381, 32), 5.5));
    List<String> notes = new ScrewMarks(screws, holes, MM).notes();
    assertNumbers(
        notes.get(0),
        ROUNDED,
        20,
        20 / INCH,
        30.5,
        30.5 / INCH,
        5.5,
        5.5 / INCH,
        3.75,
        3.75 / INCH,
        12.5,
        12.5 / INCH);
    double turned = Math.toDegrees(Math.atan2(4, 3));
    assertNumbers(
        notes.get(1).replaceFirst(turned() + "\u00b0", ""),
        ROUNDED,
        380,
        380 / INCH,
        30.5,
        30.5 / INCH,
        5.5,
        5.5 / INCH,
        10.5,
        10.5 / INCH,
        5,
        3.75,
        3.75 / INCH,
        12.5,
        12.5 / INCH);
    assertThat(Double.parseDouble(turned())).isCloseTo(turned, within(0.05));
    assertThat(notes.get(1)).contains(" at " + turned() + "\u00b0 to the panel's length");
    assertThat(notes.get(2)).contains("while S1 stays");
  }

  private static String turned() {
    return "53.1";
  }

  /** A slot of 12, a countersink of 9, and a hole that is bored twice. */
  @Test
  void holes_on_the_template() {
    BoreWay slot =
        new BoreWay(
            Optional.empty(), Optional.of(new BoreWay.Slot(12, 0.5)), List.of(), Optional.empty());
    BoreWay sunk =
        new BoreWay(
            Optional.of(new BoreWay.Countersink(9, Math.PI / 2, BIT)),
            Optional.empty(),
            List.of(),
            Optional.empty());
    Point one = new Point(15.5, 40);
    Point other = new Point(80, 22.25);
    Panel panel = SampleJob.panel().design().panel();
    Design design =
        new Design(
            panel,
            List.of(),
            List.of(),
            List.of(
                new Work.Bore(List.of(one), 6, Optional.empty(), BIT, slot, SourceSpan.NONE),
                new Work.Bore(List.of(other), 8, Optional.of(5.0), BIT, SourceSpan.NONE),
                new Work.Bore(List.of(other), 4.5, Optional.empty(), BIT, sunk, SourceSpan.NONE)));
    List<String> notes =
        TemplateMaker.of(
                "Bench",
                design,
                new InFrame(Optional.empty(), Optional.empty(), Optional.empty()),
                false)
            .notes();
    assertThat(notes.get(0)).contains("723.9 mm (28-1/2 in) by 130.1").contains("(5-1/8 in)");
    assertThat(notes.get(1)).startsWith("Go: the panel's own outline");
    assertNumbers(
        notes.get(2), ROUNDED, 15.5, 15.5 / INCH, 40, 40 / INCH, 6, 6 / INCH, 12, 12 / INCH);
    assertNumbers(
        notes.get(3),
        ROUNDED,
        80,
        80 / INCH,
        22.25,
        22.25 / INCH,
        8,
        8 / INCH,
        5,
        5 / INCH,
        4.5,
        4.5 / INCH,
        9,
        9 / INCH);
  }
}
