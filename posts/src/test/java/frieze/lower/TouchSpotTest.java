package frieze.lower;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Point;
import frieze.motion.Instruction;
import frieze.motion.Position;
import frieze.motion.Step;
import frieze.shop.KeepOut;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TouchSpotTest {
  private static final double MARGIN_MM = 8;

  private static Setup setup(KeepOut... clamps) {
    Setup usual = Jobs.setup(Jobs.machine(true, false, false));
    return new Setup(
        usual.machine(),
        usual.stock(),
        usual.zero(),
        usual.panelXMm(),
        usual.panelYMm(),
        usual.clearanceMm(),
        usual.spoilboardMm(),
        List.of(clamps),
        usual.tools());
  }

  private static List<Step> rows(double toXMm) {
    List<Step> steps = new ArrayList<>();
    for (double y = 0; y <= 150; y += 5) {
      steps.add(new Step(new Instruction.RapidXy(0, y), "row"));
      steps.add(new Step(new Instruction.RapidZ(1), "row"));
      steps.add(new Step(new Instruction.Feed(new Position(0, y, -1), 300), "row"));
      steps.add(new Step(new Instruction.Feed(new Position(toXMm, y, -1), 300), "row"));
    }
    return steps;
  }

  @Test
  void it_is_the_nearest_to_zero_that_nothing_has_touched() {
    assertThat(TouchSpot.choose(List.of(), setup())).contains(new Point(10, 10));
    Point beyond = TouchSpot.choose(rows(300), setup()).orElseThrow();
    assertThat(beyond.x()).isBetween(300 + MARGIN_MM + Jobs.FLAT.radiusMm(), 320.0);
  }

  @Test
  void there_is_none_where_all_is_cut() {
    assertThat(TouchSpot.choose(rows(700), setup())).isEmpty();
  }

  @Test
  void clamps_are_kept_clear_of() {
    KeepOut clamp = new KeepOut("clamp", 0, 0, 60, 150, 20);
    Point spot = TouchSpot.choose(List.of(), setup(clamp)).orElseThrow();
    assertThat(spot.x()).isGreaterThan(60 + MARGIN_MM);
  }
}
