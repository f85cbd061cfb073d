package frieze.opening;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.fixtures.Seeds;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.wood.Allowances;
import frieze.wood.Moisture;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class NotchTest {
  private static final long SEED = 20261128;
  private static final double ROUNDING = 1e-6;
  private static final double FLATTEN = 1e-3;
  private static final Moisture SEASONS = new Moisture(8, 6, 12);
  private static final FittedOpening OPENING = FittedOpening.rectangle(700, 130);
  private static final double ALONG = 0.002 / 30;
  private static final double ACROSS = 0.00274;

  private static InsertRequest gap(double mm) {
    return new InsertRequest(
        Optional.of(Collections.nCopies(4, mm)), 0.5, 0, 0, SEASONS, Allowances.NONE);
  }

  private static InsertRequest ash(Allowances allowances) {
    return new InsertRequest(Optional.empty(), 0.5, ALONG, ACROSS, SEASONS, allowances);
  }

  private static Lug lug(Lug.Side side, double from, double width, double depth) {
    return new Lug("lug", side, from, width, depth, OptionalDouble.empty(), SourceSpan.NONE);
  }

  private static Sitting fit(FittedOpening opening, Bead bead, InsertRequest asked, Lug... lugs) {
    return InsertFitter.fit(
        "apron",
        new InsertFitter.Welded(opening, bead, List.of(lugs), 0.5),
        asked,
        SourceSpan.NONE);
  }

  private static Region area(Path path) {
    return Region.of(List.of(path), FillRule.NONZERO, FLATTEN);
  }

  @Test
  void a_notch_is_the_lug_and_its_clearance_on_three_sides() {
    for (Lug.Side side : Lug.Side.values()) {
      Sitting sitting = fit(OPENING, Bead.NONE, gap(1.5), lug(side, 40, 25, 19));
      assertThat(area(sitting.panel().outline()).area())
          .as("%s", side)
          .isCloseTo(697 * 127 - (25 + 2 * 1.5) * 19, within(ROUNDING));
      assertThat(sitting.panel().outline().segments()).hasSize(8);
      Notch notch = sitting.notches().get(0);
      assertThat(notch.widthMm()).isCloseTo(28, within(ROUNDING));
      assertThat(notch.depthMm()).isCloseTo(19, within(ROUNDING));
      assertThat(notch.fromMm()).isCloseTo(40 - 1.5 - 1.5, within(ROUNDING));
    }
  }

  /** The floor stands at 41 + c and the panel's middle at 65, so that the floor sinks. */
  @Test
  void the_clearance_holds_the_play_in_all_seasons() {
    Notch notch =
        fit(OPENING, Bead.NONE, ash(Allowances.NONE), lug(Lug.Side.BOTTOM, 300, 100, 1))
            .notches()
            .get(0);
    double cut = 129 / (1 + 4 * ACROSS);
    // The whole gap of the side is what the edge needs; the floor is a little nearer to the middle.
    assertThat(notch.clearanceMm()).isCloseTo((130 - cut) / 2, within(ROUNDING));
    double sinks = 4 * ACROSS * (65 - 1 - notch.clearanceMm());
    assertThat(notch.gap().wettestMm()).isCloseTo(notch.clearanceMm() - sinks, within(ROUNDING));
    // Upright grain, at the far end: the outer flank comes nearer as it shrinks.
    InsertRequest upright =
        new InsertRequest(
            Optional.of(Collections.nCopies(4, 0.0)),
            0.5,
            ACROSS,
            ALONG,
            new Moisture(12, 6, 12),
            Allowances.NONE);
    Notch far =
        fit(OPENING, Bead.NONE, upright, lug(Lug.Side.BOTTOM, 600, 40, 20)).notches().get(0);
    double c = far.clearanceMm();
    assertThat(c - 6 * ACROSS * (290 + c)).isCloseTo(0.5, within(ROUNDING));
    assertThat(far.gap().driestMm()).isCloseTo(0.5, within(ROUNDING));
    assertThat(far.gap().nowMm()).isCloseTo(c, within(ROUNDING));
  }

  @Test
  void coating_and_sanding_are_part_of_the_sum() {
    InsertRequest asked =
        new InsertRequest(
            Optional.of(Collections.nCopies(4, 1.0)), 0, 0, 0, SEASONS, new Allowances(0.25, 0.4));
    Notch notch = fit(OPENING, Bead.NONE, asked, lug(Lug.Side.LEFT, 40, 20, 15)).notches().get(0);
    assertThat(notch.gap().nowMm()).isCloseTo(1 + 0.4 - 0.25, within(ROUNDING));
  }

  @Test
  void a_lug_in_a_corner_takes_the_corner_away() {
    Sitting sitting =
        fit(
            OPENING,
            new Bead(Bead.Shape.ROUND, 6),
            gap(1),
            lug(Lug.Side.BOTTOM, 0, 30, 20),
            lug(Lug.Side.TOP, 680, 20, 10));
    Path sharp = fit(OPENING, new Bead(Bead.Shape.ROUND, 6), gap(1)).panel().outline();
    double round = (1 - Math.PI / 4) * 5 * 5;
    assertThat(area(sitting.panel().outline()).area())
        .isCloseTo(
            area(sharp).area() - (30 * 20 - round) - (20 * 10 - round), within(4 * 5 * FLATTEN));
    Notch notch = sitting.notches().get(0);
    assertThat(notch.fromMm()).isZero();
    assertThat(notch.widthMm()).isCloseTo(30 + 1 - 1, within(ROUNDING));
    assertThat(notch.depthMm()).isCloseTo(20, within(ROUNDING));
  }

  /** With Region as the judge: it shares no code with the cutting of outlines. */
  @Test
  void lugs_keep_their_clearance_in_openings_that_lean() {
    SplittableRandom r = Seeds.random(SEED);
    for (int i = 0; i < 60; i++) {
      Point b = new Point(r.nextDouble(300, 800), 0);
      Point c = new Point(b.x() + r.nextDouble(-6, 6), r.nextDouble(100, 250));
      Point d = new Point(r.nextDouble(-6, 6), c.y() + r.nextDouble(-5, 5));
      FittedOpening leaning =
          new FittedOpening(List.of(Point.ORIGIN, b, c, d), 0, List.of(), 0, 0, 0);
      double clearance = r.nextDouble(0.5, 3);
      List<Lug> lugs = new ArrayList<>();
      for (Lug.Side side : Lug.Side.values()) {
        double from = r.nextInt(3) == 0 ? 0 : r.nextDouble(20, 40);
        OptionalDouble around = OptionalDouble.of(clearance);
        lugs.add(
            new Lug(
                "lug",
                side,
                from,
                r.nextDouble(5, 30),
                r.nextDouble(5, 18),
                around,
                SourceSpan.NONE));
      }
      Sitting sitting =
          fit(leaning, new Bead(Bead.Shape.ROUND, 5), gap(1), lugs.toArray(new Lug[0]));
      Region panel = area(sitting.panel().outline());
      String as = "seed " + Seeds.seed(SEED) + ", case " + i;
      for (Notch notch : sitting.notches()) {
        Region room = area(Path.polyline(notch.grown(-0.01), true));
        Region more = area(Path.polyline(notch.grown(0.01), true));
        assertThat(room.intersection(panel).area()).as(as).isLessThan(ROUNDING);
        if (notch.lug().fromMm() > 0) { // one in a corner may lie within another's notch
          assertThat(more.intersection(panel).area()).as(as).isGreaterThan(0.05);
        }
        Region lug = area(Path.polyline(notch.grown(-clearance), true));
        assertThat(lug.area()).as(as).isGreaterThan(notch.lug().widthMm() * notch.lug().depthMm());
      }
      Region whole = area(sitting.panel().whole());
      for (Notch notch : sitting.notches()) {
        whole = whole.minus(area(Path.polyline(notch.box(), true)));
      }
      assertThat(panel.area()).as(as).isCloseTo(whole.area(), within(0.05));
    }
  }

  @Test
  void what_parts_the_panel_or_binds_or_lies_beyond_its_side_is_refused() {
    assertThatThrownBy(() -> fit(OPENING, Bead.NONE, gap(1), lug(Lug.Side.BOTTOM, 300, 20, 129)))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("OPEN-003")
        .hasMessageContaining("22 mm (0.866 in) wide and reaches 129 mm");
    assertThatThrownBy(() -> fit(OPENING, Bead.NONE, gap(1), lug(Lug.Side.LEFT, 100, 40, 10)))
        .hasMessageContaining("OPEN-002")
        .hasMessageContaining("10 mm");
    Lug tight = new Lug("bar", Lug.Side.RIGHT, 20, 10, 30, OptionalDouble.of(0.1), SourceSpan.NONE);
    assertThatThrownBy(() -> fit(OPENING, Bead.NONE, ash(Allowances.NONE), tight))
        .hasMessageContaining("WOOD-001")
        .hasMessageContaining("binds on the lug \"bar\" at the right");
  }

  @Test
  void the_outlines_to_try_in_the_frame_have_the_notches_too() {
    Allowances coated = new Allowances(0.25, 0);
    Sitting sitting = fit(OPENING, Bead.NONE, ash(coated), lug(Lug.Side.BOTTOM, 300, 100, 30));
    double go = 4 * ACROSS * (65 - 30 - sitting.notches().get(0).clearanceMm());
    Path largest = sitting.largest();
    // The floor of the notch at the wettest, less the coating that is still to come on the lug.
    double floor = sitting.notches().get(0).box().get(1).y() - go - 0.25 * (1 + 4 * ACROSS);
    assertThat(largest.segments())
        .anySatisfy(s -> assertThat(s.start().y()).isCloseTo(floor, within(1e-2)));
    assertThat(largest.bounds().height()).isCloseTo(130 - 2 * 0.5, within(ROUNDING));
    Path beyond = sitting.beyond().orElseThrow();
    assertThat(area(beyond).area()).isCloseTo(701 * 131 - (100 - 2 * 0.5) * 30, within(ROUNDING));
    assertThat(beyond.transformed(Affine.IDENTITY).bounds().width())
        .isCloseTo(701, within(ROUNDING));
  }

  /**
   * A rectangle with four round corners, less what the lug takes of it; both weld and lug coated.
   */
  @Test
  void the_outline_to_try_goes_around_lugs_in_an_opening_with_round_welds() {
    Bead weld = new Bead(Bead.Shape.ROUND, 8);
    for (InsertRequest asked : List.of(ash(new Allowances(0.25, 0)), ash(Allowances.NONE))) {
      Sitting with = fit(OPENING, weld, asked, lug(Lug.Side.TOP, 300, 100, 30));
      Sitting without = fit(OPENING, weld, asked);
      double coating = asked.allowances().coatingMm();
      double grown = with.notches().get(0).clearanceMm() - coating;
      double taken = area(without.largest()).area() - area(with.largest()).area();
      // Within the wood's movement about the middle, 4 % across, of a notch of about 100 by 30.
      assertThat(taken).isCloseTo((100 + 2 * grown) * (30 + grown - 0.5), within(40.0));
      assertThat(with.largest().bounds().width()).isCloseTo(700 - 2 * 0.5, within(1e-2));
    }
  }

  @Test
  void a_strip_that_would_break_off_is_left_out() {
    Path narrow =
        fit(OPENING, Bead.NONE, gap(1), lug(Lug.Side.BOTTOM, 3.9, 30, 20)).panel().outline();
    assertThat(area(narrow).area()).isCloseTo(698 * 128 - 20 * (3.9 + 31 - 1), within(1e-3));
    Path wide =
        fit(OPENING, Bead.NONE, gap(1), lug(Lug.Side.BOTTOM, 5.1, 30, 20)).panel().outline();
    assertThat(area(wide).area()).isCloseTo(698 * 128 - 20 * 32, within(1e-3));
    // Also in the outline that must not go in: the lug stands in the corner.
    Path beyond =
        fit(OPENING, Bead.NONE, gap(1), lug(Lug.Side.BOTTOM, 0, 30, 20)).beyond().orElseThrow();
    assertThat(area(beyond).area()).isCloseTo(701 * 131 - 20 * 30, within(1e-3));
  }
}
