package frieze.plan;

import static frieze.plan.Bench.FLAT_6;
import static frieze.plan.Bench.SIDE_ONLY_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Corners;
import frieze.design.CutoutWay;
import frieze.design.Design;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.Outline;
import frieze.plan.cut.PlanCode;
import frieze.plan.cut.Track;
import frieze.plan.cutout.CutoutPlanner;
import frieze.plan.cutout.TabLoad;
import frieze.plan.cutout.TabPlan;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class CutoutTest {
  private static final double R = 3.5; // of the panel's corners: 5 less the gap of 1.5

  private static Plan plan(Tool tool, int tabs, Work.Milling milling) {
    Optional<Tabs> held = tabs == 0 ? Optional.empty() : Optional.of(new Tabs(tabs, 6, 3));
    Design design =
        new Design(
            Bench.panel(),
            List.of(),
            List.of(),
            List.of(new Work.Cutout(tool, held, milling, Bench.WHERE)));
    return Planner.plan(design, Bench.setup(), Tolerances.DEFAULT);
  }

  /** The distance to a rounded rectangle is known in closed form. */
  private static double fromPanel(Point p) {
    double x = Math.abs(p.x() - 362) - (362 - R);
    double y = Math.abs(p.y() - 65) - (65 - R);
    double outside = Math.hypot(Math.max(x, 0), Math.max(y, 0));
    return outside + Math.min(Math.max(x, y), 0) - R;
  }

  @Test
  void the_axis_stays_a_tool_radius_outside_the_outline_with_exact_arcs() {
    Plan plan = plan(FLAT_6, 6, Work.Milling.CONVENTIONAL);
    for (Position p : RecessTest.positions(plan.cuts())) {
      assertThat(fromPanel(p.xy())).isCloseTo(3, within(1e-9));
    }
    assertThat(RecessTest.moves(plan.cuts()))
        .anyMatch(m -> m.path() instanceof Motion.Turn t && Math.abs(t.radiusMm() - 6.5) < 1e-9);
  }

  @Test
  void the_whole_depth_is_cut_into_the_spoilboard_but_for_the_tabs() {
    for (Tool tool : List.of(FLAT_6, SIDE_ONLY_6)) {
      Plan plan = plan(tool, 6, Work.Milling.CLIMB);
      Track track = Outline.outside(Bench.panel().outline(), 3, Tolerances.DEFAULT);
      List<Boolean> through = new ArrayList<>();
      Swept swept = new Swept(-8, -8, 740, 146, 0.25).cut(plan.cuts());
      for (double s = 0; s < track.lengthMm(); s += 0.25) {
        double z = swept.at(track.slice(s, s + 0.1).get(0).start());
        boolean whole = z <= -19.7 + 1e-9;
        // What is not cut through is a tab: 3 mm above the bottom at the thinnest place.
        assertThat(whole || Math.abs(z + 15.9) < 1e-9)
            .as("%s at %s: %s", tool.name(), s, z)
            .isTrue();
        through.add(whole);
      }
      int tabs = 0;
      for (int i = 0; i < through.size(); i++) {
        tabs += through.get(i) && !through.get((i + 1) % through.size()) ? 1 : 0;
      }
      assertThat(tabs).isEqualTo(6);
      double left = through.stream().filter(t -> !t).count() * 0.25;
      assertThat(left).isCloseTo(6 * 6, within(6.0));
    }
  }

  @Test
  void tabs_stand_on_straight_stretches_away_from_corners_and_evenly() {
    Track track = Outline.outside(Bench.panel().outline(), 3, Tolerances.DEFAULT);
    List<TabPlan.Zone> zones =
        TabPlan.place(track, 6, 12, 6, new TabPlan.Ground(true, p -> true)).orElseThrow();
    double pitch = track.lengthMm() / 6;
    for (int i = 0; i < 6; i++) {
      TabPlan.Zone zone = zones.get(i);
      double next = i < 5 ? zones.get(i + 1).fromMm() : zones.get(0).fromMm() + track.lengthMm();
      assertThat(next - zone.fromMm()).isBetween(0.85 * pitch, 1.15 * pitch);
      assertThat(track.slice(zone.fromMm() - 6, zone.toMm() + 6)).hasSize(1);
    }
  }

  /** On the long edges 12 mm, on the short ones 6, each with the bit's 6 mm in the zone. */
  @Test
  void tabs_along_the_grain_are_longer() {
    Tabs tabs = new Tabs(6, 6, 12, 3, false);
    Work cutout = new Work.Cutout(FLAT_6, Optional.of(tabs), Work.Milling.CLIMB, Bench.WHERE);
    Design design = new Design(Bench.panel(), List.of(), List.of(), List.of(cutout));
    Plan plan = Planner.plan(design, wasteOf(12, 12), Tolerances.DEFAULT);
    double onTabs = 0;
    double alongGrain = 0;
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      double lowest = Math.min(move.path().from().z(), move.path().to().z());
      double highest = Math.max(move.path().from().z(), move.path().to().z());
      if (Math.abs(lowest + 15.9) < 1e-9 && Math.abs(highest + 15.9) < 1e-9) {
        double x = Math.abs(move.path().to().x() - move.path().from().x());
        onTabs = Math.max(onTabs, move.path().lengthMm() - x);
        alongGrain = Math.max(alongGrain, x);
      }
    }
    assertThat(alongGrain).isCloseTo(18, within(1e-9));
    assertThat(onTabs).isCloseTo(12, within(1e-9));
  }

  @Test
  void a_round_panel_has_its_tabs_on_the_curve() {
    Track circle = new Track(frieze.curve.Path.circle(new Point(50, 50), 40));
    List<TabPlan.Zone> zones =
        TabPlan.place(circle, 4, 12, 6, new TabPlan.Ground(true, p -> true)).orElseThrow();
    for (int i = 1; i < 4; i++) {
      double pitch = zones.get(i).fromMm() - zones.get(i - 1).fromMm();
      assertThat(pitch).isCloseTo(20 * Math.PI, within(1e-9));
    }
  }

  @Test
  void a_tool_that_cannot_plunge_goes_down_into_material_only_at_the_ramp_angle() {
    Plan plan = plan(SIDE_ONLY_6, 6, Work.Milling.CLIMB);
    Swept swept = new Swept(-8, -8, 740, 146, 0.25);
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      Position from = move.path().from();
      Position to = move.path().to();
      double drop = from.z() - to.z();
      boolean steep =
          drop > move.path().lengthMm() * StrictMath.sin(MoveBuilder.RAMP_RAD) * (1 + 1e-9) + 1e-9;
      if (steep) {
        assertThat(swept.at(to.xy())).isLessThanOrEqualTo(to.z() + 1e-9);
      }
      swept.cut(List.of(new Cut("", SIDE_ONLY_6, 1, List.of(move))));
    }
  }

  /**
   * It comes down to the wood and leaves it while it moves along the wall, with tabs and without.
   */
  @Test
  void the_tool_enters_and_leaves_along_the_wall() {
    for (int tabs : new int[] {0, 6}) {
      List<Cut.Move> moves = RecessTest.moves(plan(FLAT_6, tabs, Work.Milling.CLIMB).cuts());
      Motion first = moves.get(0).path();
      assertThat(first.from().z()).isEqualTo(MoveBuilder.AIR_MM);
      assertThat(first.from().xy().distance(first.to().xy())).isGreaterThan(1);
      assertThat(moves.get(moves.size() - 1).path().to().z()).isEqualTo(MoveBuilder.AIR_MM);
      double rise = 0;
      double way = 0;
      for (int i = moves.size() - 1;
          moves.get(i).path().to().z() > moves.get(i).path().from().z();
          i--) {
        rise += moves.get(i).path().to().z() - moves.get(i).path().from().z();
        way += moves.get(i).path().lengthMm();
      }
      assertThat(rise).isCloseTo(tabs == 0 ? 20.2 : 16.4, within(1e-9));
      assertThat(rise / way).isCloseTo(StrictMath.sin(CutoutPlanner.TAB_SLOPE_RAD), within(1e-9));
    }
  }

  @Test
  void climb_goes_clockwise_around_the_part() {
    for (Work.Milling milling : Work.Milling.values()) {
      double turned = 0;
      for (Cut.Move move : RecessTest.moves(plan(FLAT_6, 0, milling).cuts())) {
        Point middle = new Point(362, 65);
        turned += move.path().from().xy().minus(middle).cross(move.path().to().xy().minus(middle));
      }
      assertThat(turned < 0).isEqualTo(milling == Work.Milling.CLIMB);
    }
  }

  @Test
  void tabs_longer_than_the_outline_are_an_error() {
    assertThatThrownBy(() -> plan(FLAT_6, 140, Work.Milling.CLIMB))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("bench.yaml:20:7: error[PLAN-009]")
        .hasMessageContaining(
            "140 tabs of 6 mm (0.236 in) do not fit on an outline 1720.84 mm (67.75 in) long");
  }

  /** The bench's setup with another width of waste at the ends, and before and behind. */
  private static Setup wasteOf(double sideMm, double frontMm) {
    Setup bench = Bench.setup();
    Stock stock =
        new Stock(
            bench.stock().material(),
            724 + 2 * sideMm,
            130 + 2 * frontMm,
            bench.stock().thicknessReadingsMm(),
            false);
    return new Setup(
        bench.machine(), stock, bench.zero(), sideMm, frontMm, 5, 0.5, List.of(), List.of());
  }

  private static Plan onStock(double sideMm, double frontMm, double skinMm) {
    CutoutWay way = new CutoutWay(Optional.empty(), Work.Side.OUTSIDE, 0, skinMm);
    Optional<Tabs> tabs = skinMm > 0 ? Optional.empty() : Optional.of(new Tabs(4, 6, 3));
    Work cutout = new Work.Cutout(FLAT_6, tabs, Work.Milling.CLIMB, way, Bench.WHERE);
    Design design = new Design(Bench.panel(), List.of(), List.of(), List.of(cutout));
    return Planner.plan(design, wasteOf(sideMm, frontMm), Tolerances.DEFAULT);
  }

  @Test
  void tabs_or_a_skin_with_nothing_to_hold_on_are_an_error() {
    for (double skin : new double[] {0, 0.5}) {
      assertThatThrownBy(() -> onStock(2, 2, skin))
          .isInstanceOf(BadInputException.class)
          .hasMessageContaining("PLAN-059")
          .hasMessageContaining(skin > 0 ? "a skin would hold" : "4 tabs would hold")
          .hasMessageContaining("reaches 4 mm (0.157 in) beyond the stock's edge")
          .hasMessageContaining("the 3 mm (0.118 in) of waste");
    }
    assertThat(onStock(2, 12, 0.5).cuts()).isNotEmpty();
  }

  /** The strip beside the slot is as wide as the waste less the slot of 6; it needs 3. */
  @Test
  void tabs_stand_only_where_there_is_waste() {
    assertThat(tabsAt(onStock(2, 9.1, 0))).hasSize(4).allMatch(p -> p.y() < 0 || p.y() > 130);
    assertThat(tabsAt(onStock(12, 8.9, 0))).hasSize(4).allMatch(p -> p.x() < 0 || p.x() > 724);
    assertThatThrownBy(() -> onStock(8.9, 8.9, 0))
        .hasMessageContaining("leaves only 2.9 mm (0.114 in) of the stock");
  }

  /** The middles of the level moves over tabs, 3 mm above the bottom of 18.9. */
  private static List<Point> tabsAt(Plan plan) {
    List<Point> tabs = new ArrayList<>();
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      Position from = move.path().from();
      Position to = move.path().to();
      if (Math.abs(from.z() + 15.9) < 1e-9 && Math.abs(to.z() + 15.9) < 1e-9) {
        Point middle = from.xy().plus(to.xy()).times(0.5);
        if (move.path().lengthMm() < 20 && tabs.stream().noneMatch(t -> t.distance(middle) < 1)) {
          tabs.add(middle);
        }
      }
    }
    return tabs;
  }

  @Test
  void a_thin_strip_of_waste_is_told() {
    // the stock is 740 long: 8 mm on the left, 8 on the right, less the slot of 6
    assertThat(plan(FLAT_6, 4, Work.Milling.CLIMB).notes())
        .anyMatch(
            d ->
                d.code() == PlanCode.WASTE_TOO_THIN
                    && d.message().startsWith("only 2 mm (0.079 in)"));
  }

  @Test
  void without_tabs_there_is_a_warning() {
    assertThat(plan(FLAT_6, 0, Work.Milling.CLIMB).notes())
        .anyMatch(d -> d.code() == PlanCode.NO_TABS);
  }

  private static Plan window(Work.Side side, Tabs tabs, double leaveMm, double skinMm) {
    return window(side, tabs, leaveMm, 1, skinMm);
  }

  private static Plan window(Work.Side side, Tabs tabs, double leaveMm, int steps, double skinMm) {
    CutoutWay way =
        new CutoutWay(
            Optional.of(new Work.Target("window", Optional.empty())), side, leaveMm, steps, skinMm);
    return window(tabs, way);
  }

  private static Plan window(Tabs tabs, CutoutWay way) {
    Work cutout =
        new Work.Cutout(FLAT_6, Optional.ofNullable(tabs), Work.Milling.CLIMB, way, Bench.WHERE);
    return Planner.plan(
        Bench.design(
            Bench.filled("window", Bench.rectangle(0, 0, 60, 40)),
            frieze.curve.Affine.translation(100, 40),
            cutout),
        Bench.setup(),
        Tolerances.DEFAULT);
  }

  /** The signed distance to the rectangle from (100, 40) to (160, 80), positive outside. */
  private static double fromWindow(Point p) {
    double x = Math.abs(p.x() - 130) - 30;
    double y = Math.abs(p.y() - 60) - 20;
    double outside = Math.hypot(Math.max(x, 0), Math.max(y, 0));
    return outside + Math.min(Math.max(x, y), 0);
  }

  @Test
  void the_tool_runs_inside_outside_or_on_the_line() {
    double allowed = Tolerances.DEFAULT.totalMm();
    for (Work.Side side : Work.Side.values()) {
      double wanted = side == Work.Side.INSIDE ? -3 : side == Work.Side.OUTSIDE ? 3 : 0;
      List<Position> positions = RecessTest.positions(window(side, null, 0, 0).cuts());
      assertThat(positions).hasSizeGreaterThan(100);
      for (Position p : positions) {
        assertThat(fromWindow(p.xy())).as("%s %s", side, p).isCloseTo(wanted, within(allowed));
      }
    }
  }

  @Test
  void relieved_corners_are_touched_at_the_whole_depth_and_nothing_else_changes() {
    for (Corners kind : List.of(Corners.EAR, Corners.ALONG_SIDE)) {
      CutoutWay way =
          new CutoutWay(
              Optional.of(new Work.Target("window", Optional.empty())),
              Work.Side.INSIDE,
              0,
              1,
              0,
              kind);
      List<Position> positions = RecessTest.positions(window(null, way).cuts());
      for (Point corner : List.of(new Point(100, 40), new Point(160, 80))) {
        double nearest =
            positions.stream()
                .filter(p -> p.z() == -19.7)
                .mapToDouble(p -> p.xy().distance(corner))
                .min()
                .orElseThrow();
        assertThat(nearest).as("%s", kind).isCloseTo(3, within(1e-9));
      }
      double allowed = Tolerances.DEFAULT.totalMm();
      assertThat(positions)
          .filteredOn(p -> Math.abs(fromWindow(p.xy()) + 3) > 0.02)
          .allMatch(p -> fromCorners(p.xy()) > 3 - allowed)
          .allMatch(p -> fromCorners(p.xy()) < 3 * Math.sqrt(2) + allowed);
    }
  }

  private static double fromCorners(Point p) {
    return new Point(Math.abs(p.x() - 130), Math.abs(p.y() - 60)).distance(new Point(30, 20));
  }

  @Test
  void a_finishing_pass_takes_last_what_was_left_on_the_wall_and_lifts_over_the_tabs() {
    for (boolean ramped : new boolean[] {false, true}) {
      Tabs tabs = new Tabs(4, 6, 3, ramped);
      for (Work.Side side : List.of(Work.Side.INSIDE, Work.Side.OUTSIDE)) {
        double wall = side == Work.Side.INSIDE ? -3 : 3;
        List<Cut> cuts = window(side, tabs, 0.4, 0).cuts();
        boolean atWall = false;
        double onWall = 0;
        for (Cut.Move move : RecessTest.moves(cuts)) {
          Motion path = move.path();
          double near = Math.abs(fromWindow(path.at(0.5).xy()) - wall);
          assertThat(Math.abs(fromWindow(path.at(0.5).xy())))
              .as("never beyond the wall, nor beyond what is left")
              .isBetween(3 - 0.012, 3 + 0.4 * 1.42 + 0.012);
          atWall |= near < 0.02;
          onWall += near < 0.02 ? path.lengthMm() : 0;
          assertThat(
                  atWall && near > 0.38 && path.from().z() == path.to().z() && path.lengthMm() > 5)
              .as("rough after finish")
              .isFalse();
        }
        Swept swept = new Swept(90, 30, 80, 60, 0.1).cut(cuts);
        int standing = 0;
        int places = 0;
        for (double x = 104; x < 156; x += 0.1) {
          for (double y : new double[] {40, 80}) {
            double inward = side == Work.Side.INSIDE ? 1 : -1;
            Point justInSlot = new Point(x, y + (y < 60 ? inward : -inward) * 0.15);
            double z = swept.at(justInSlot);
            assertThat(z).as("%s %s", side, justInSlot).isLessThanOrEqualTo(-15.9 + 1e-9);
            standing += z > -19.7 + 1e-9 ? 1 : 0;
            places++;
          }
        }
        assertThat(onWall).isGreaterThan(180);
        assertThat(standing).as("tabs of 6 mm and their slopes").isBetween(0, places / 2);
      }
    }
  }

  /**
   * The last three laps run 0.4, 0.2 and 0 mm from the wall, each all around but for the tabs. The
   * slopes of ramped tabs, 7.6 mm each, are gone over up to three times.
   */
  @Test
  void several_finishing_laps_creep_up_on_the_size() {
    for (boolean ramped : new boolean[] {false, true}) {
      Tabs tabs = new Tabs(4, 6, 3, ramped);
      for (Work.Side side : List.of(Work.Side.INSIDE, Work.Side.OUTSIDE)) {
        double nearest = Double.POSITIVE_INFINITY;
        double[] length = new double[4];
        Swept swept = new Swept(90, 30, 80, 60, 0.2);
        for (Cut.Move move : RecessTest.moves(window(side, tabs, 0.6, 3, 0).cuts())) {
          Motion path = move.path();
          double left = Math.abs(fromWindow(path.at(0.5).xy())) - 3;
          assertThat(left).isBetween(-0.012, 0.6 * 1.42 + 0.012);
          double step = left / 0.2;
          boolean onLap = Math.abs(step - Math.rint(step)) < 0.06 && path.lengthMm() > 4;
          if (onLap) {
            length[(int) Math.rint(step)] += path.lengthMm();
            nearest = Math.min(nearest, left);
          }
          boolean steep = path.from().z() - path.to().z() > path.lengthMm() * 0.06;
          if (steep) {
            assertThat(swept.at(path.to().xy())).isLessThanOrEqualTo(path.to().z() + 1e-9);
          }
          swept.cut(List.of(new Cut("", FLAT_6, 1, List.of(move))));
        }
        assertThat(nearest).isCloseTo(0, within(0.012));
        for (int lap = 0; lap < 3; lap++) {
          assertThat(length[lap])
              .as("%s %s lap %s", side, ramped, lap)
              .isBetween(110.0, ramped ? 290.0 : 240.0);
        }
      }
    }
  }

  @Test
  void an_opening_narrower_than_the_tool_is_refused_or_told() {
    CutoutWay way =
        new CutoutWay(
            Optional.of(new Work.Target("slots", Optional.empty())), Work.Side.INSIDE, 0, 0);
    Work cutout =
        new Work.Cutout(
            FLAT_6, Optional.of(new Tabs(2, 6, 3)), Work.Milling.CLIMB, way, Bench.WHERE);
    frieze.curve.Affine at = frieze.curve.Affine.translation(100, 40);
    frieze.curve.Path narrow = Bench.rectangle(0, 0, 60, 5.5);
    assertThatThrownBy(
            () ->
                Planner.plan(
                    Bench.design(Bench.filled("slots", narrow), at, cutout),
                    Bench.setup(),
                    Tolerances.DEFAULT))
        .hasMessageContaining("bench.yaml:20:7: error[PLAN-005]: tool flat 6.0 is 6 mm (0.236 in)")
        .hasMessageContaining("widest place of slots is 5.5 mm");
    Plan plan =
        Planner.plan(
            Bench.design(Bench.filled("slots", narrow, Bench.rectangle(0, 20, 60, 20)), at, cutout),
            Bench.setup(),
            Tolerances.DEFAULT);
    assertThat(plan.notes())
        .anyMatch(
            d ->
                d.code() == PlanCode.NOT_ALL_REACHED
                    && d.message().startsWith("1 of the 2 areas of slots are narrower than tool")
                    && d.message().contains("at x 30, y 2.8 mm of the drawing"));
  }

  @Test
  void a_finishing_pass_enters_and_leaves_the_wall_on_arcs_that_touch_it() {
    List<Cut.Move> moves =
        RecessTest.moves(window(Work.Side.OUTSIDE, new Tabs(4, 6, 3), 0.4, 0).cuts());
    Motion.Turn out = (Motion.Turn) moves.get(moves.size() - 1).path();
    assertThat(out.radiusMm()).isCloseTo(6, within(0.05));
    // it leaves the wall's track along it: the radius stands square on the track there
    Point toCentre = new Point(out.centreU(), out.centreV()).minus(out.from().xy());
    assertThat(Math.min(Math.abs(toCentre.x()), Math.abs(toCentre.y()))).isLessThan(1e-3);
  }

  @Test
  void a_skin_stays_at_the_bottom_all_along_the_cut() {
    List<Cut> cuts = window(Work.Side.INSIDE, null, 0, 0.5).cuts();
    double deepest =
        RecessTest.positions(cuts).stream().mapToDouble(Position::z).min().orElseThrow();
    assertThat(deepest).isCloseTo(-18.4, within(1e-9));
    assertThat(window(Work.Side.INSIDE, null, 0, 0.5).notes())
        .noneMatch(d -> d.code() == PlanCode.NO_TABS);
    assertThatThrownBy(() -> window(Work.Side.INSIDE, null, 0, 19))
        .hasMessageContaining("error[PLAN-041]");
  }

  @Test
  void ramped_tabs_slope_at_both_ends_and_no_tool_sinks_into_wood_along_the_slope() {
    Design design =
        new Design(
            Bench.panel(),
            List.of(),
            List.of(),
            List.of(
                new Work.Cutout(
                    SIDE_ONLY_6,
                    Optional.of(new Tabs(6, 6, 3, true)),
                    Work.Milling.CLIMB,
                    Bench.WHERE)));
    Plan plan = Planner.plan(design, Bench.setup(), Tolerances.DEFAULT);
    Swept swept = new Swept(-8, -8, 740, 146, 0.25);
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      Position from = move.path().from();
      Position to = move.path().to();
      boolean steep =
          from.z() - to.z()
              > move.path().lengthMm() * StrictMath.sin(MoveBuilder.RAMP_RAD) * (1 + 1e-9) + 1e-9;
      if (steep) {
        assertThat(swept.at(to.xy())).isLessThanOrEqualTo(to.z() + 1e-9);
      }
      swept.cut(List.of(new Cut("", SIDE_ONLY_6, 1, List.of(move))));
    }
    Track track = Outline.outside(Bench.panel().outline(), 3, Tolerances.DEFAULT);
    int between = 0;
    for (double s = 0; s < track.lengthMm(); s += 0.25) {
      double z = swept.at(track.pointAt(s));
      assertThat(z).isLessThanOrEqualTo(-15.9 + 1e-9);
      between += z > -19.5 && z < -16.1 ? 1 : 0;
    }
    // each of twelve ends is 3.8 / tan 30 degrees long, of which the tool's radius rounds nothing
    assertThat(between * 0.25).isBetween(12 * 4.0, 12 * 8.0);
  }

  @Test
  void as_many_tabs_stand_on_end_grain_as_even_spacing_permits() {
    Track track = Outline.outside(Bench.panel().outline(), 3, Tolerances.DEFAULT);
    int onEnds = 0;
    for (TabPlan.Zone zone :
        TabPlan.place(track, 6, 12, 6, new TabPlan.Ground(true, p -> true)).orElseThrow()) {
      Point middle = track.pointAt((zone.fromMm() + zone.toMm()) / 2);
      onEnds += middle.x() < 0 || middle.x() > 724 ? 1 : 0;
      assertThat(middle.x() < 0 || middle.x() > 724 || (middle.x() > 25 && middle.x() < 699))
          .as("away from corners: %s", middle)
          .isTrue();
    }
    assertThat(onEnds).isEqualTo(2);
  }

  /**
   * Hardwood of 19.2 mm, a part of 500 by 100 mm (with the slot's middle 6.35 more each way is near
   * enough to state by the formula): 60 N/mm2 x 3 mm x advance of a turn / pi, and 750 kg/m3.
   */
  @Test
  void tabs_bear_ten_times_the_pull_of_the_bit_and_the_weight_of_the_part() {
    Stock stock = Bench.setup().stock();
    Feeds feeds =
        Feeds.choose(Bench.FLAT_6, stock.material(), Bench.setup().machine(), Bench.WHERE);
    double pull = 60 * 3 * feeds.feedMmPerMin() / feeds.rpm() / Math.PI;
    double weight = 750e-9 * 500 * 100 * 19.2 * 9.81;
    double needed = TabLoad.neededMm2(Bench.FLAT_6, feeds, 3, stock, 500 * 100);
    assertThat(needed).isCloseTo(10 * (pull + weight) / 6, within(1e-6 * needed));
    // Left to the bit: 2 tabs of 6 x 1 mm, or as much more as makes up the section.
    Tabs free = TabLoad.sized(new Tabs(2, 6, 12, 1, false), needed);
    assertThat(free.count() * free.widthMm() * free.thicknessMm())
        .isCloseTo(Math.max(12, needed), within(1e-9));
    Tabs strong = new Tabs(6, 6, 12, 3, false);
    assertThat(TabLoad.sized(strong, needed)).isEqualTo(strong);
    Tabs given = new Tabs(2, 3, 1);
    assertThat(TabLoad.sized(given, needed)).isEqualTo(given);
    assertThat(TabLoad.isWeak(given, needed)).isTrue();
    assertThat(TabLoad.weakText("cutout a", given, needed)).contains("2 tabs of 3 mm", "6 mm2");
  }

  @Test
  void tabs_that_are_given_too_thin_are_told() {
    Work thin =
        new Work.Cutout(
            FLAT_6,
            Optional.of(new Tabs(4, 2, 0.5)),
            Work.Milling.CLIMB,
            CutoutWay.PLAIN,
            Bench.WHERE);
    Design design = new Design(Bench.panel(), List.of(), List.of(), List.of(thin));
    assertThat(Planner.plan(design, Bench.setup(), Tolerances.DEFAULT).notes())
        .filteredOn(d -> d.code() == PlanCode.TABS_WEAK)
        .singleElement()
        .satisfies(
            d ->
                assertThat(d.message())
                    .contains("4 tabs of 2 mm (0.079 in) by 0.5 mm", "have 4 mm2"));
  }
}
