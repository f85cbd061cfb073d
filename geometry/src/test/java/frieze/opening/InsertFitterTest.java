package frieze.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Arc;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import frieze.layout.Opening;
import frieze.wood.Allowances;
import frieze.wood.Moisture;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class InsertFitterTest {
  private static final long SEED = 20261127;
  private static final double ROUNDING = 1e-9;
  private static final Moisture SEASONS = new Moisture(8, 6, 12);

  private static InsertRequest gap(double mm) {
    return new InsertRequest(
        Optional.of(List.of(mm, mm, mm, mm)), 0.5, 0, 0, SEASONS, Allowances.NONE);
  }

  private static InsertRequest ash(double playMm, Allowances allowances) {
    return new InsertRequest(Optional.empty(), playMm, 0.002 / 30, 0.00274, SEASONS, allowances);
  }

  private static Sitting fit(FittedOpening opening, Bead bead, InsertRequest asked) {
    return InsertFitter.fit("apron", opening, bead, 0.5, asked, SourceSpan.NONE);
  }

  private static FittedOpening quadrilateral(double bow, Point... corners) {
    return new FittedOpening(List.of(corners), bow, List.of(), 0, 0, 0);
  }

  @Test
  void a_rectangle_gives_the_same_panel_as_a_plain_opening() {
    Sitting sitting =
        fit(FittedOpening.rectangle(700, 130), new Bead(Bead.Shape.ROUND, 5), gap(1.5));
    var plain = new Opening(700, 130, 5).panel("apron", 1.5, SourceSpan.NONE);
    assertThat(sitting.panel().lengthMm()).isCloseTo(plain.lengthMm(), within(ROUNDING));
    assertThat(sitting.panel().heightMm()).isCloseTo(plain.heightMm(), within(ROUNDING));
    assertThat(sitting.panel().outline().segments()).hasSize(8);
    assertThat(sitting.panel().outline().segments())
        .filteredOn(Arc.class::isInstance)
        .allSatisfy(a -> assertThat(((Arc) a).radius()).isCloseTo(3.5, within(ROUNDING)));
    assertThat(sitting.gaps())
        .allSatisfy(g -> assertThat(g.wettestMm()).isCloseTo(1.5, within(ROUNDING)));
  }

  /** Wood Handbook, chapter 13: 130 mm of flat sawn ash, 8 to 12 %: 130 x 0.00274 x 4 = 1.42 mm. */
  @Test
  void wood_is_cut_so_that_the_play_is_left_when_wettest() {
    Sitting sitting = fit(FittedOpening.rectangle(700, 130), Bead.NONE, ash(0.5, Allowances.NONE));
    double cut = (130 - 2 * 0.5) / (1 + 0.00274 * 4);
    assertThat(sitting.panel().heightMm()).isCloseTo(cut, within(ROUNDING));
    assertThat(sitting.sides().get(0).wettestMm()).isCloseTo(0.5, within(ROUNDING));
    assertThat(sitting.sides().get(2).nowMm()).isCloseTo((130 - cut) / 2, within(ROUNDING));
    assertThat(sitting.sides().get(2).driestMm())
        .isCloseTo((130 - cut + cut * 0.00274 * 2) / 2, within(ROUNDING));
    assertThat(sitting.worstMm(sitting.tightest())).isCloseTo(0.0, within(ROUNDING));
  }

  @Test
  void coating_makes_the_panel_smaller_and_sanding_larger_to_cut() {
    double plain =
        fit(FittedOpening.rectangle(700, 130), Bead.NONE, ash(0.5, Allowances.NONE))
            .panel()
            .heightMm();
    Sitting both =
        fit(FittedOpening.rectangle(700, 130), Bead.NONE, ash(0.5, new Allowances(0.2, 0.3)));
    double swelling = 1 + 0.00274 * 4;
    assertThat(both.panel().heightMm())
        .isCloseTo(plain - 2 * 0.2 / swelling + 2 * 0.3, within(ROUNDING));
    assertThat(both.sides().get(0).wettestMm()).isCloseTo(0.5, within(ROUNDING));
  }

  /** Distances are worked out here again, from the corners alone. */
  @Test
  void the_panel_follows_a_leaning_opening_with_the_gap_of_each_side() {
    SplittableRandom r = Seeds.random(SEED);
    for (int i = 0; i < 300; i++) {
      Point a = new Point(0, 0);
      Point b = new Point(r.nextDouble(300, 800), 0);
      Point c = new Point(b.x() + r.nextDouble(-6, 6), r.nextDouble(100, 250));
      Point d = new Point(r.nextDouble(-6, 6), c.y() + r.nextDouble(-5, 5));
      List<Double> gaps =
          List.of(r.nextDouble(3), r.nextDouble(3), r.nextDouble(3), r.nextDouble(3));
      Bead.Shape shape = r.nextBoolean() ? Bead.Shape.ROUND : Bead.Shape.BEVELLED;
      Bead bead = new Bead(shape, r.nextInt(3) == 0 ? 0 : r.nextDouble(1, 9));
      InsertRequest asked = new InsertRequest(Optional.of(gaps), 0, 0, 0, SEASONS, Allowances.NONE);
      Sitting sitting = fit(quadrilateral(0, a, b, c, d), bead, asked);
      for (int side = 0; side < 4; side++) {
        assertThat(sitting.sides().get(side).nowMm())
            .as("seed %d, case %d, side %d", Seeds.seed(SEED), i, side)
            .isGreaterThanOrEqualTo(gaps.get(side) - ROUNDING);
        double least = Math.min(gaps.get(side), gaps.get((side + 3) % 4));
        assertThat(sitting.corners().get(side).nowMm())
            .as("seed %d, case %d, corner %d", Seeds.seed(SEED), i, side)
            .isGreaterThanOrEqualTo(least - ROUNDING);
      }
      if (bead.sizeMm() == 0) {
        Point first = sitting.panel().outline().segments().get(1).start();
        Point second = sitting.panel().outline().segments().get(1).end();
        double lean = Math.atan2(c.x() - b.x(), c.y());
        assertThat(Math.atan2(second.x() - first.x(), second.y() - first.y()))
            .as("case %d", i)
            .isCloseTo(lean, within(ROUNDING));
      }
    }
  }

  @Test
  void a_top_that_bows_in_makes_the_panel_lower() {
    FittedOpening bowed =
        quadrilateral(
            -1.25, new Point(0, 0), new Point(700, 0), new Point(700, 130), new Point(0, 130));
    assertThat(fit(bowed, Bead.NONE, gap(1)).panel().heightMm())
        .isCloseTo(130 - 1.25 - 2, within(ROUNDING));
  }

  @Test
  void a_panel_that_would_bind_is_refused_with_the_figure() {
    InsertRequest tight =
        new InsertRequest(
            Optional.of(List.of(0.2, 1.0, 0.2, 1.0)), 0.5, 0, 0.00274, SEASONS, Allowances.NONE);
    // 129.6 mm swells by 129.6 x 0.00274 x 4 = 1.420 mm; 0.710 on each side, less 0.2
    assertThatThrownBy(() -> fit(FittedOpening.rectangle(700, 130), Bead.NONE, tight))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("0.51 mm (0.02 in) too large");
  }

  @Test
  void a_weld_that_a_sharp_corner_would_hit_is_cut_off_the_panel() {
    Sitting bevelled =
        fit(FittedOpening.rectangle(700, 130), new Bead(Bead.Shape.BEVELLED, 6), gap(1));
    // The bevel x + y = 6, moved by 1: x + y = 6 + sqrt 2; the corner (1, 1) is cut by 4 + sqrt 2.
    double leg = 4 + Math.sqrt(2);
    assertThat(
            bevelled
                .panel()
                .outline()
                .segments()
                .get(0)
                .start()
                .distance(bevelled.panel().outline().segments().get(0).end()))
        .isCloseTo(leg * Math.sqrt(2), within(ROUNDING));
    assertThat(bevelled.tightestCorner().nowMm()).isCloseTo(1, within(ROUNDING));
  }

  @Test
  void nothing_left_and_corners_too_large_are_refused() {
    FittedOpening small = FittedOpening.rectangle(100, 20);
    assertThatThrownBy(() -> fit(small, Bead.NONE, gap(10)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("leaves nothing");
    assertThatThrownBy(() -> fit(small, new Bead(Bead.Shape.ROUND, 11), gap(0.5)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("leave nothing of a side");
    assertThatThrownBy(() -> fit(small, Bead.NONE, ash(11, Allowances.NONE)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("leaves nothing");
  }
}
