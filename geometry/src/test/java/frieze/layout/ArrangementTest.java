package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ArrangementTest {
  private static final Panel PANEL = new Opening(720, 130, 0).panel("apron", 0, SourceSpan.NONE);
  private static final Bounds LEAF = new Bounds(5, 7, 45, 57);
  private static final double INSET = 10;

  private static List<Placement> place(FriezeGroup group, int count, Bounds size) {
    return new Arrangement(group, count, INSET).place("leaf", size, PANEL, SourceSpan.NONE);
  }

  @ParameterizedTest
  @EnumSource
  void motifs_are_evenly_spread_and_stay_within_the_band(FriezeGroup group) {
    for (int columns = 1; columns <= 14; columns++) {
      List<Placement> placements = place(group, columns * group.rows(), LEAF);
      assertThat(placements).hasSize(columns * group.rows());
      double pitch = 700.0 / columns;
      for (int i = 0; i < placements.size(); i++) {
        Bounds b = placed(placements.get(i), LEAF);
        int column = i / group.rows();
        double middle = INSET + (column + 0.5) * pitch;
        assertThat(b.centre().x()).isCloseTo(middle, within(1e-9));
        assertThat(b.width()).isCloseTo(40, within(1e-9));
        assertThat(b.minX()).isGreaterThanOrEqualTo(INSET - 1e-9);
        assertThat(b.maxX()).isLessThanOrEqualTo(710 + 1e-9);
        assertThat(b.minY()).isGreaterThanOrEqualTo(INSET - 1e-9);
        assertThat(b.maxY()).isLessThanOrEqualTo(120 + 1e-9);
        assertThat(placements.get(i).number()).isEqualTo(i + 1);
      }
    }
  }

  @ParameterizedTest
  @EnumSource
  void no_two_motifs_overlap(FriezeGroup group) {
    List<Bounds> all = new ArrayList<>();
    place(group, 14 * group.rows(), LEAF).forEach(p -> all.add(placed(p, LEAF)));
    for (int i = 0; i < all.size(); i++) {
      for (int k = i + 1; k < all.size(); k++) {
        Bounds a = all.get(i);
        Bounds b = all.get(k);
        boolean apart =
            a.maxX() <= b.minX() + 1e-9
                || b.maxX() <= a.minX() + 1e-9
                || a.maxY() <= b.minY() + 1e-9
                || b.maxY() <= a.minY() + 1e-9;
        assertThat(apart).as("%s and %s", a, b).isTrue();
      }
    }
  }

  /** The band of whole periods is carried onto itself by each operation, but for its ends. */
  @ParameterizedTest
  @EnumSource
  void the_band_has_the_symmetries_of_its_group(FriezeGroup group) {
    int columns = 8;
    List<Placement> placements = place(group, columns * group.rows(), LEAF);
    double period = 700.0 / columns * group.columnsPerPeriod();
    Point corner = new Point(6, 9); // no symmetry of its own
    List<Point> images = placements.stream().map(p -> p.map().apply(corner)).toList();
    for (Symmetry s : group.operations()) {
      for (Point p : images) {
        double x = s.xSign() * (p.x() - INSET) + s.halfPeriods() * period / 2;
        double y = 65 + s.ySign() * (p.y() - 65);
        assertThat(images)
            .as("%s of %s", s, p)
            .anyMatch(q -> isWholePeriods(q.x() - INSET - x, period) && near(q.y(), y));
      }
    }
  }

  private static boolean isWholePeriods(double length, double period) {
    double periods = length / period;
    return Math.abs(periods - Math.rint(periods)) < 1e-9;
  }

  private static boolean near(double a, double b) {
    return Math.abs(a - b) < 1e-9;
  }

  private static Bounds placed(Placement placement, Bounds size) {
    return Bounds.of(placement.map().apply(new Point(size.minX(), size.minY())))
        .with(placement.map().apply(new Point(size.maxX(), size.maxY())));
  }

  @Test
  void a_motif_too_wide_says_by_how_much_and_how_many_fit() {
    assertThatBad(() -> place(FriezeGroup.P2MG, 18, LEAF))
        .hasMessageContaining("LAY-005")
        .hasMessageContaining("are 20 mm (0.787 in) longer than the band of 700 mm");
    try {
      place(FriezeGroup.P2MG, 18, LEAF);
    } catch (BadInputException e) {
      assertThat(e.diagnostics().get(0).hint()).contains("at most 17 fit");
    }
    assertThat(place(FriezeGroup.P2MG, 17, LEAF)).hasSize(17);
  }

  @Test
  void a_motif_too_high_says_by_how_much() {
    assertThatBad(() -> place(FriezeGroup.P1, 3, new Bounds(0, 0, 40, 114)))
        .hasMessageContaining("LAY-006")
        .hasMessageContaining("reaches 2 mm (0.079 in) beyond the band's border");
    assertThatBad(() -> place(FriezeGroup.P11M, 6, new Bounds(0, 0, 40, 57)))
        .hasMessageContaining("1 mm (0.039 in) over the centre line");
  }

  @Test
  void pairs_need_an_even_count_and_no_motif_is_no_band() {
    assertThatBad(() -> place(FriezeGroup.P2MM, 9, LEAF)).hasMessageContaining("LAY-003");
    assertThatBad(() -> place(FriezeGroup.P1, 0, LEAF)).hasMessageContaining("LAY-003");
    assertThatBad(
            () ->
                new Arrangement(FriezeGroup.P1, 1, 65.5)
                    .place("leaf", LEAF, PANEL, SourceSpan.NONE))
        .hasMessageContaining("LAY-004");
  }

  private static org.assertj.core.api.AbstractThrowableAssert<?, ?> assertThatBad(
      ThrowingCallable call) {
    return assertThatThrownBy(call).isInstanceOf(BadInputException.class);
  }
}
