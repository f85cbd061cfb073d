package frieze.gouge;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Point;
import org.junit.jupiter.api.Test;

class PlacesTest {
  private static Discrepancy left(String intent, double x, double amount) {
    return new Discrepancy(Discrepancy.Kind.LEFT, intent, new Point(x, 0), amount, 2, 0);
  }

  @Test
  void what_lies_near_a_worse_one_of_the_same_intent_is_part_of_it() {
    Places places = new Places(10);
    places.offer(left("recess leaf 1", 0, 0.5));
    places.offer(left("recess leaf 1", 2, 0.4));
    places.offer(left("recess leaf 2", 2, 0.3));
    places.offer(left("recess leaf 1", 4, 0.2));
    assertThat(places.count()).isEqualTo(3);
    assertThat(places.kept().get(0))
        .isEqualTo(
            new Discrepancy(Discrepancy.Kind.LEFT, "recess leaf 1", new Point(0, 0), 0.5, 4, 0));
    assertThat(places.kept()).extracting(Discrepancy::amountMm).containsExactly(0.5, 0.3, 0.2);
  }

  @Test
  void what_is_not_kept_is_counted() {
    Places places = new Places(2);
    for (int i = 0; i < 5; i++) {
      places.offer(left("recess", 10 * i, 1));
    }
    assertThat(places.count()).isEqualTo(5);
    assertThat(places.kept()).hasSize(2);
  }
}
