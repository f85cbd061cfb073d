package frieze.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class SegmentPartTest {
  private static final Arc HALF =
      new Arc(new Point(2, 0), new Point(-2, 0), new Point(0, 0), Math.PI);

  @Test
  void a_part_of_an_arc_turns_by_its_share_about_the_same_centre() {
    Arc third = (Arc) SegmentPart.between(HALF, 1.0 / 3, 2.0 / 3);
    assertThat(third.sweepRad()).isCloseTo(Math.PI / 3, within(1e-15));
    assertThat(third.centre()).isEqualTo(HALF.centre());
    assertThat(third.start().distance(new Point(1, Math.sqrt(3)))).isLessThan(1e-15);
    assertThat(third.end().distance(new Point(-1, Math.sqrt(3)))).isLessThan(1e-15);
  }

  @Test
  void the_ends_of_the_whole_are_kept_to_the_last_bit() {
    assertThat(SegmentPart.between(HALF, 0, 1)).isSameAs(HALF);
    assertThat(SegmentPart.between(HALF, 0, 0.3).start()).isSameAs(HALF.start());
    assertThat(SegmentPart.between(HALF, 0.3, 1).end()).isSameAs(HALF.end());
  }

  @Test
  void a_part_of_a_line_is_a_line() {
    Line line = new Line(new Point(1, 1), new Point(5, 9));
    assertThat(SegmentPart.between(line, 0.25, 0.5))
        .isEqualTo(new Line(new Point(2, 3), new Point(3, 5)));
  }

  @Test
  void other_curves_are_refused() {
    Cubic cubic = new Cubic(new Point(0, 0), new Point(1, 1), new Point(2, 1), new Point(3, 0));
    assertThatIllegalArgumentException()
        .isThrownBy(() -> SegmentPart.between(cubic, 0, 0.5))
        .withMessageContaining("a line or an arc");
  }
}
