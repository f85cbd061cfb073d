package frieze.torch;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Piece;
import frieze.bridge.BridgeCode;
import frieze.bridge.Pieces;
import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.TorchWay;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Code;
import frieze.fixtures.Seeds;
import frieze.layout.Placement;
import frieze.region.BoundaryDistance;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class TorchPlannerTest {
  private static final Path PANEL = TorchBench.rectangle(0, 0, 150, 100);

  private static TorchPath only(TorchPlan plan, TorchPath.Kind kind) {
    List<TorchPath> all = plan.paths().stream().filter(p -> p.kind() == kind).toList();
    assertThat(all).hasSize(1);
    return all.get(0);
  }

  private static double distance(TorchPath path, Point centre, boolean largest) {
    double best = largest ? 0 : Double.MAX_VALUE;
    for (TorchPath.Piece piece : path.pieces().subList(1, path.pieces().size())) {
      for (int i = 0; i <= 20; i++) {
        double d = piece.path().at(i / 20.0).distance(centre);
        best = largest ? Math.max(best, d) : Math.min(best, d);
      }
    }
    return best;
  }

  /** Closed form: a hole of 20 mm at a kerf of 1.5 mm is cut on a radius of 9.25 mm. */
  @Test
  void a_hole_of_20_mm_is_cut_on_a_radius_of_9_25_mm_counter_clockwise() {
    Point centre = new Point(60, 50);
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, Path.circle(centre, 10));
    TorchPath hole = only(plan, TorchPath.Kind.HOLE);
    assertThat(distance(hole, centre, true)).isCloseTo(9.25, within(0.012));
    assertThat(distance(hole, centre, false)).isCloseTo(9.25, within(0.012));
    assertThat(((Arc) hole.pieces().get(1).path()).counterClockwise()).isTrue();
    assertThat(plan.notes()).isEmpty();
    assertThat(plan.pierces()).isEqualTo(2);
    assertThat(hole.pierce().distance(centre)).isLessThanOrEqualTo(5.01);
  }

  /** Closed form: a disc of 20 mm at a kerf of 1.5 mm is cut on a radius of 10.75 mm. */
  @Test
  void a_disc_of_20_mm_is_cut_on_a_radius_of_10_75_mm_clockwise() {
    Point centre = new Point(10, 10);
    TorchPath outline =
        only(TorchBench.plan(Path.circle(centre, 10), TorchWay.USUAL), TorchPath.Kind.OUTLINE);
    List<TorchPath.Piece> lap = outline.pieces().subList(0, outline.pieces().size() - 1);
    TorchPath withoutLeadOut =
        new TorchPath("", outline.kind(), outline.pierce(), lap, outline.frees());
    assertThat(distance(withoutLeadOut, centre, true)).isCloseTo(10.75, within(0.012));
    assertThat(distance(withoutLeadOut, centre, false)).isCloseTo(10.75, within(0.012));
    assertThat(((Arc) outline.pieces().get(1).path()).counterClockwise()).isFalse();
  }

  /**
   * Closed form: on its very edge, a disc of 20 mm loses L k/2 - pi (k/2)^2 = 45.356744 mm2 to a
   * kerf of 1.5 mm; planned for that kerf it loses nothing. The budget of 11 µm makes 0.69 mm2.
   */
  @Test
  void a_disc_loses_45_36_mm2_if_the_kerf_is_ignored_and_nothing_if_it_is_not() {
    Path disc = Path.circle(new Point(10, 10), 10);
    double whole = 314.159265;
    double ignored = left(TorchBench.plan(disc, TorchWay.USUAL, TorchBench.TORCH.withKerf(0.001)));
    assertThat(whole - ignored).isCloseTo(45.356744, within(0.2));
    assertThat(left(TorchBench.plan(disc, TorchWay.USUAL))).isCloseTo(whole, within(0.2));
  }

  /** What a kerf of 1.5 mm along the planned way leaves. */
  private static double left(TorchPlan plan) {
    Region within = only(plan, TorchPath.Kind.OUTLINE).frees().orElseThrow();
    return Offset.offset(within, -0.75, 0.001).area();
  }

  /** Entering a measured kerf moves every edge by half the difference. */
  @Test
  void a_measured_kerf_moves_the_way_by_half_the_difference() {
    Point centre = new Point(60, 50);
    TorchPlan plan =
        TorchBench.plan(
            PANEL, TorchWay.USUAL, TorchBench.TORCH.withKerf(1.9), Path.circle(centre, 10));
    assertThat(distance(only(plan, TorchPath.Kind.HOLE), centre, true))
        .isCloseTo(9.25 - 0.2, within(0.012));
  }

  @Test
  void with_the_squarer_edge_on_the_left_all_runs_the_other_way() {
    TorchWay left =
        new TorchWay(
            false,
            TorchWay.USUAL.leadMm(),
            true,
            TorchWay.SmallHole.PIERCE,
            true,
            TorchWay.Rows.ONE);
    TorchPath hole =
        only(TorchBench.plan(PANEL, left, Path.circle(new Point(60, 50), 10)), TorchPath.Kind.HOLE);
    assertThat(((Arc) hole.pieces().get(1).path()).counterClockwise()).isFalse();
  }

  @Test
  void holes_come_before_outlines_in_all_copies() {
    TorchPlan plan =
        TorchBench.plan(
            PANEL,
            TorchWay.USUAL.withRows(new TorchWay.Rows(3, 2, 20)),
            Path.circle(new Point(40, 50), 10),
            Path.circle(new Point(110, 50), 10));
    List<TorchPath.Kind> kinds = plan.paths().stream().map(TorchPath::kind).toList();
    assertThat(kinds).hasSize(18);
    assertThat(kinds.subList(0, 12)).containsOnly(TorchPath.Kind.HOLE);
    assertThat(kinds.subList(12, 18)).containsOnly(TorchPath.Kind.OUTLINE);
    assertThat(plan.parts()).hasSize(6);
  }

  /** Random round and slot-shaped openings: no lead leaves the scrap, no pierce is near a part. */
  @Test
  void no_lead_crosses_a_contour_and_every_pierce_is_in_scrap() {
    long seed = Seeds.seed(20261125);
    SplittableRandom random = new SplittableRandom(seed);
    int leads = 0;
    for (int round = 0; round < 5; round++) {
      List<Path> openings = new ArrayList<>();
      for (int i = 0; i < 6; i++) {
        double x = 20 + 22 * i;
        double r = 4 + 5 * random.nextDouble();
        openings.add(Path.circle(new Point(x, 30 + 10 * random.nextDouble()), r));
        double w = 7 + 9 * random.nextDouble();
        openings.add(TorchBench.rectangle(x - w / 2, 55, w, 20 + 15 * random.nextDouble()));
      }
      TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, openings.toArray(Path[]::new));
      BoundaryDistance part = BoundaryDistance.of(plan.parts().get(0));
      for (TorchPath path : plan.paths()) {
        assertThat(-part.signed(path.pierce()))
            .as("seed %d, round %d, %s", seed, round, path.origin())
            .isGreaterThanOrEqualTo(TorchBench.TORCH.leastPierceMm() - 0.011);
        for (TorchPath.Piece piece : path.pieces()) {
          for (int i = 0; i <= 40; i++) {
            double clear = -part.signed(piece.path().at(i / 40.0));
            assertThat(clear)
                .as("seed %d, round %d, %s", seed, round, path.origin())
                .isGreaterThanOrEqualTo(0.75 - 0.012);
          }
        }
        leads++;
      }
    }
    assertThat(leads).isGreaterThanOrEqualTo(5 * 13);
  }

  @Test
  void a_small_hole_is_pierced_marked_or_left_as_told() {
    for (TorchWay.SmallHole asked : TorchWay.SmallHole.values()) {
      TorchWay way =
          new TorchWay(true, TorchWay.USUAL.leadMm(), true, asked, true, TorchWay.Rows.ONE);
      TorchPlan plan = TorchBench.plan(PANEL, way, Path.circle(new Point(60, 50), 2));
      assertThat(plan.notes()).extracting(n -> n.code()).contains(TorchCode.SMALL_HOLE);
      assertThat(plan.paths()).hasSize(asked == TorchWay.SmallHole.LEAVE ? 1 : 2);
      assertThat(plan.parts().get(0).area()).isCloseTo(15_000, within(1e-6));
    }
  }

  private static List<Code> errors(TorchWay way, Path outline, Path... openings) {
    try {
      TorchBench.plan(outline, way, openings);
      return List.of();
    } catch (BadInputException e) {
      return e.diagnostics().stream().filter(d -> d.isError()).map(d -> d.code()).toList();
    }
  }

  @Test
  void bad_designs_are_refused_with_their_reason() {
    Path ring = Path.circle(new Point(60, 50), 30);
    Path speck = Path.circle(new Point(60, 50), 2);
    assertThat(errors(TorchWay.USUAL, PANEL, ring, speck))
        .containsExactly(BridgeCode.ISLAND_TOO_SMALL);
    Path core = Path.circle(new Point(60, 50), 15);
    TorchWay untied = TorchWay.USUAL.withBridges(TorchWay.Bridging.NONE);
    assertThat(errors(untied, PANEL, ring, core)).containsExactly(TorchCode.LOOSE_ISLAND);
    assertThat(errors(TorchWay.USUAL, PANEL, TorchBench.rectangle(0, 40, 20, 20)))
        .containsExactly(TorchCode.TOUCHES_OUTLINE);
    assertThat(errors(TorchWay.USUAL, PANEL, TorchBench.rectangle(30, 40, 60, 1.2)))
        .containsExactly(TorchCode.KERF_TOO_WIDE);
    assertThat(errors(TorchWay.USUAL, PANEL, TorchBench.rectangle(30, 40, 60, 2)))
        .containsExactly(TorchCode.NO_LEAD);
    assertThat(errors(TorchWay.USUAL.withRows(new TorchWay.Rows(5, 1, 20)), PANEL))
        .containsExactly(TorchCode.OFF_SHEET);
    assertThat(errors(TorchWay.USUAL.withRows(new TorchWay.Rows(2, 1, 4)), PANEL))
        .containsExactly(TorchCode.ROWS_TOO_CLOSE);
  }

  @Test
  void openings_that_overlap_are_told_and_cut_as_one() {
    Piece round =
        new Piece(
            "",
            List.of(),
            List.of(Path.circle(new Point(0, 0), 10)),
            Optional.of(FillRule.NONZERO),
            OptionalDouble.empty());
    Design twice = TorchBench.design(PANEL, TorchWay.USUAL, TorchBench.TORCH, List.of(round));
    List<Placement> places =
        List.of(
            new Placement("fern", 1, new FrameMap<>(Affine.translation(40, 50))),
            new Placement("fern", 2, new FrameMap<>(Affine.translation(55, 50))));
    Design design = new Design(twice.panel(), twice.motifs(), places, twice.work());
    TorchPlan plan = TorchPlanner.plan(design, TorchBench.setup(600, 400), Tolerances.DEFAULT);
    assertThat(plan.notes())
        .filteredOn(n -> n.code() == TorchCode.OPENINGS_OVERLAP)
        .singleElement()
        .satisfies(n -> assertThat(n.message()).contains("they are cut as one"));
    assertThat(plan.paths()).hasSize(2);
  }

  @Test
  void a_sheet_smaller_than_the_part_is_refused() {
    assertThatThrownBy(
            () ->
                TorchPlanner.plan(
                    TorchBench.design(PANEL, TorchWay.USUAL, TorchBench.TORCH),
                    TorchBench.setup(160, 120),
                    Tolerances.DEFAULT))
        .hasMessageContaining("error[TORCH-011]")
        .hasMessageContaining("11.5 mm (0.453 in) beyond the sheet along X")
        .hasMessageContaining("1.5 mm (0.059 in) beyond the sheet along Y");
  }

  /**
   * Dust within an opening, an island of 1 mm2, and a crack of 3 µm where areas miss each other.
   */
  @Test
  void dross_is_dropped_and_told() {
    Path opening = TorchBench.rectangle(30, 30, 40, 40);
    Path dust = TorchBench.rectangle(50, 50, 1e-3, 1e-3);
    Path speck = TorchBench.rectangle(40, 40, 1, 1);
    Path crack = TorchBench.rectangle(100, 20, 0.003, 20);
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, opening, dust, speck, crack);
    assertThat(plan.notes()).extracting(n -> n.code()).containsOnly(TorchCode.DROSS).hasSize(3);
    assertThat(plan.notes())
        .extracting(n -> n.message())
        .anyMatch(m -> m.contains("an island of only 1 mm2") && m.contains("x 40.5, y 40.5 mm"))
        .anyMatch(m -> m.contains("an opening of only 0.06 mm2") && m.contains("x 100, y 30 mm"));
    assertThat(plan.parts().get(0).area()).isCloseTo(15_000 - 1600, within(1e-6));
    assertThat(plan.paths()).hasSize(2);
  }

  /** A gap of 15 mm, 3 mm steel: two bridges of 6 mm halve the opening. */
  @Test
  void an_island_is_tied_with_bridges() {
    Path ring = Path.circle(new Point(60, 50), 30);
    Path core = Path.circle(new Point(60, 50), 15);
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, ring, core);
    Region part = plan.parts().get(0);
    assertThat(Pieces.count(part)).isEqualTo(1);
    assertThat(plan.paths()).hasSize(3);
    double open = 15_000 - part.area();
    assertThat(open).isBetween(Math.PI * 675 - 2 * 6 * 15.8, Math.PI * 675 - 2 * 6 * 14.9);
  }

  /**
   * A gap of 15 mm between squares and two bridges of 6 mm: each adds 90 mm2, and in each of eight
   * right corners a fillet of one kerf, (1 - pi/4) r2, whose sides lie within 4 µm.
   */
  @Test
  void inner_corners_at_bridges_are_rounded_and_nothing_else_is() {
    Path window = TorchBench.rectangle(30, 20, 60, 60);
    Path core = TorchBench.rectangle(45, 35, 30, 30);
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, window, core);
    double fillets = 8 * (1 - Math.PI / 4) * 1.5 * 1.5;
    assertThat(plan.notes()).isEmpty();
    assertThat(plan.parts().get(0).area())
        .isCloseTo(15_000 - 3600 + 900 + 2 * 90 + fillets, within(8 * 2.4 * 0.004));
  }

  /**
   * A ring of 15 mm around a core, and a vein upward through both: the bridges lie on it. Fillets
   * end 2 mm from the circles.
   */
  @Test
  void bridges_follow_lines_that_are_not_filled() {
    Piece ring =
        new Piece(
            "",
            List.of(),
            List.of(Path.circle(new Point(60, 50), 30), Path.circle(new Point(60, 50), 15)),
            Optional.of(FillRule.EVEN_ODD),
            OptionalDouble.empty());
    Piece vein =
        new Piece(
            "",
            List.of(),
            List.of(Path.polyline(List.of(new Point(60, 19), new Point(60, 81)), false)),
            Optional.empty(),
            OptionalDouble.of(1));
    TorchPlan plan =
        TorchPlanner.plan(
            TorchBench.design(PANEL, TorchWay.USUAL, TorchBench.TORCH, List.of(ring, vein)),
            TorchBench.setup(600, 400),
            Tolerances.DEFAULT);
    Region.Locator metal = plan.parts().get(0).locator();
    for (double y : new double[] {23, 28, 32, 68, 72, 77}) {
      assertThat(metal.contains(new Point(57.01, y)) && metal.contains(new Point(62.99, y)))
          .as("y %s", y)
          .isTrue();
      assertThat(metal.contains(new Point(56.99, y)) || metal.contains(new Point(63.01, y)))
          .as("y %s", y)
          .isFalse();
    }
  }

  /** A web of 4 mm between two openings: more than the sheet's 3 mm, less than 5. */
  @Test
  void the_least_web_is_as_told() {
    Path[] openings = {
      TorchBench.rectangle(30, 30, 20, 40), TorchBench.rectangle(54, 30, 20, 40),
    };
    assertThat(TorchBench.plan(PANEL, TorchWay.USUAL, openings).notes()).isEmpty();
    TorchWay wider =
        new TorchWay(
            true,
            OptionalDouble.empty(),
            true,
            TorchWay.SmallHole.PIERCE,
            true,
            TorchWay.Rows.ONE,
            TorchWay.Bridging.USUAL,
            new TorchWay.Limits(false, OptionalDouble.of(5)),
            Optional.empty());
    assertThat(TorchBench.plan(PANEL, wider, openings).notes())
        .singleElement()
        .satisfies(n -> assertThat(n.code()).isEqualTo(BridgeCode.WEB_THIN))
        .satisfies(n -> assertThat(n.message()).contains("at x 52", "only 4 mm"));
  }

  /**
   * A stub of 0.8 mm at a kerf of 1.5 mm: cuts along a straight end 2.3 mm before the next starts.
   */
  @Test
  void micro_joints_leave_their_width_and_one_kerf_between_two_cuts() {
    TorchWay way = TorchWay.USUAL.withJoints(new TorchWay.Joints(80, 2, 0.8));
    TorchPlan plan = TorchBench.plan(PANEL, way, TorchBench.rectangle(40, 30, 60, 40));
    List<TorchPath> cuts =
        plan.paths().stream().filter(p -> p.kind() == TorchPath.Kind.HOLE).toList();
    assertThat(cuts).hasSize(2).allMatch(c -> c.frees().isEmpty());
    assertThat(plan.joints()).hasSize(2);
    for (Joint joint : plan.joints()) {
      List<Double> away = new ArrayList<>();
      for (TorchPath cut : cuts) {
        away.add(cut.end().distance(joint.at()));
        away.add(cut.pieces().get(1).path().start().distance(joint.at()));
      }
      away.sort(null);
      assertThat(away.get(0)).isCloseTo(1.15, within(1e-6));
      assertThat(away.get(1)).isCloseTo(1.15, within(1e-6));
      assertThat(away.get(2)).isGreaterThan(30);
    }
    assertThat(only(plan, TorchPath.Kind.OUTLINE).frees()).isPresent();
    TorchWay all = TorchWay.USUAL.withJoints(new TorchWay.Joints(200, 3, 0.8));
    assertThat(TorchBench.plan(PANEL, all).paths()).hasSize(3);
  }

  @Test
  void what_stays_is_the_panel_without_its_openings() {
    TorchPlan plan = TorchBench.plan(PANEL, TorchWay.USUAL, TorchBench.rectangle(30, 30, 40, 20));
    Region part = plan.parts().get(0);
    assertThat(part.area()).isCloseTo(15_000 - 800, within(1e-6));
    assertThat(part.parts()).hasSize(1);
    assertThatThrownBy(
            () ->
                TorchPlanner.plan(
                    new Design(
                        new frieze.layout.Panel("p", PANEL), List.of(), List.of(), List.of()),
                    TorchBench.setup(600, 400),
                    Tolerances.DEFAULT))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
