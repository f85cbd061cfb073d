package frieze.gouge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.Intent;
import frieze.field.StockField;
import frieze.field.SweptMoves;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** All programs here are written out by hand; the panel's origin lies 15 mm into the stock. */
class GougeCheckTest {
  private static final double INTO_STOCK = 15;
  private static final Tool FLAT = tool(1, new ToolShape.Flat(6));
  private static final Tool VEE = tool(2, new ToolShape.Vee(12, Math.toRadians(60), 0));
  private static final Tool BALL = tool(3, new ToolShape.Ball(6));
  private static final Tool DRILL = tool(4, new ToolShape.Drill(5, Math.toRadians(118)));

  private static Tool tool(int number, ToolShape shape) {
    OptionalDouble none = OptionalDouble.empty();
    return new Tool("tool " + number, number, shape, 2, 25, 35, true, none, none, 24000, 3000, 900);
  }

  private static Setup setup() {
    Machine.Axis axis = new Machine.Axis(3000, 3000, 200);
    Machine machine =
        new Machine(
            "bench machine",
            "short-arcs",
            760,
            760,
            90,
            axis,
            axis,
            axis,
            new Machine.Spindle(true, 10000, 24000, List.of(), 5),
            false,
            false,
            0);
    Stock stock =
        new Stock(
            new Material("white ash", Material.Kind.HARDWOOD), 150, 110, List.of(12.0), false);
    return new Setup(
        machine,
        stock,
        Zero.LEFT_FRONT_TOP,
        INTO_STOCK,
        INTO_STOCK,
        5,
        2,
        List.of(),
        List.of(FLAT, VEE, BALL, DRILL));
  }

  /** A move in the panel frame. */
  private record Cut(Motion path, Tool tool) {}

  private static List<Point> rectangle(double x0, double y0, double x1, double y1) {
    return List.of(new Point(x0, y0), new Point(x1, y0), new Point(x1, y1), new Point(x0, y1));
  }

  private static Motion line(Point a, Point b, double z) {
    return new Motion.Straight(new Position(a, z), new Position(b, z));
  }

  private static void follow(List<Point> ring, double z, Tool tool, List<Cut> into) {
    Point start = ring.get(0);
    into.add(new Cut(new Motion.Straight(new Position(start, 5), new Position(start, z)), tool));
    for (int i = 0; i < ring.size(); i++) {
      into.add(new Cut(line(ring.get(i), ring.get((i + 1) % ring.size()), z), tool));
    }
  }

  /** A recess 60 by 40, 6 deep, cut round and round from the outline inwards. */
  private static final Intent.Recess RECESS =
      new Intent.Recess("recess", Region.ofRing(rectangle(5, 10, 65, 50)), 6, FLAT);

  private static List<Cut> recessCuts(Tool tool) {
    List<Cut> cuts = new ArrayList<>();
    for (double z : new double[] {-3, -6}) {
      for (double inset = 3; inset <= 20; inset += inset < 19 ? 2 : 1) {
        follow(rectangle(5 + inset, 10 + inset, 65 - inset, 50 - inset), z, tool, cuts);
      }
    }
    return cuts;
  }

  private static final Intent.Groove GROOVE =
      new Intent.Groove(
          "groove",
          List.of(
              Path.polyline(
                  List.of(new Point(75, 20), new Point(100, 30), new Point(90, 55)), false)),
          2,
          VEE);

  private static List<Cut> grooveCuts() {
    return List.of(
        new Cut(line(new Point(75, 20), new Point(100, 30), -2), VEE),
        new Cut(line(new Point(100, 30), new Point(90, 55), -2), VEE));
  }

  private static final Intent.Through PART =
      new Intent.Through("cutout", Region.ofRing(rectangle(0, 0, 115, 75)), FLAT);

  /** Round the part at a distance of the tool's radius, with round corners. */
  private static List<Cut> partCuts(double z) {
    List<Cut> cuts = new ArrayList<>();
    for (int side = 0; side < 4; side++) {
      cuts.addAll(sideCuts(side, z));
    }
    return cuts;
  }

  /** The corner at the start of a side, counted from the front one, and the side. */
  private static List<Cut> sideCuts(int side, double z) {
    Point corner = CORNERS.get(side);
    Point next = CORNERS.get((side + 1) % 4);
    Point out = new Point(0, -3).turned(side * Math.PI / 2);
    Point before = corner.plus(new Point(-3, 0).turned(side * Math.PI / 2));
    Motion round =
        new Motion.Turn(
            new Position(before, z),
            new Position(corner.plus(out), z),
            Plane.XY,
            corner.x(),
            corner.y(),
            Math.PI / 2);
    return List.of(new Cut(round, FLAT), new Cut(line(corner.plus(out), next.plus(out), z), FLAT));
  }

  private static final List<Point> CORNERS = rectangle(0, 0, 115, 75);

  private static final Intent.Hole HOLE =
      new Intent.Hole("hole", new Point(20, 62), 5, Double.POSITIVE_INFINITY, DRILL);
  private static final Intent.Hole BLIND = new Intent.Hole("blind", new Point(40, 62), 5, 8, DRILL);

  private static List<Cut> holeCuts() {
    double point = 2.5 / Math.tan(Math.toRadians(59));
    return List.of(plunge(20, 62, -12.1 - point, DRILL), plunge(40, 62, -8 - point, DRILL));
  }

  private static Cut plunge(double x, double y, double z, Tool tool) {
    return new Cut(new Motion.Straight(new Position(x, y, 5), new Position(x, y, z)), tool);
  }

  private static List<Intent> allIntents() {
    return List.of(RECESS, GROOVE, PART, HOLE, BLIND);
  }

  private static List<Cut> allCuts() {
    List<Cut> cuts = recessCuts(FLAT);
    cuts.addAll(grooveCuts());
    cuts.addAll(holeCuts());
    cuts.addAll(partCuts(-12.4));
    return cuts;
  }

  private static GougeCheck.Result check(List<Intent> intents, List<Cut> cuts) {
    return check(intents, cuts, 0.1);
  }

  private static GougeCheck.Result check(List<Intent> intents, List<Cut> cuts, double cellMm) {
    Setup setup = setup();
    StockField field = StockField.of(setup.stock(), cellMm);
    SweptMoves moves = new SweptMoves();
    for (Cut cut : cuts) {
      Motion path = moved(cut.path(), p -> p.plus(INTO_STOCK, INTO_STOCK, 0));
      field.cut(path, cut.tool().shape());
      moves.add(path, cut.tool().shape());
    }
    return GougeCheck.check(intents, setup, field, moves);
  }

  private static Motion moved(Motion path, UnaryOperator<Position> map) {
    return path.accept(
        new Motion.Visitor<>() {
          @Override
          public Motion straight(Motion.Straight m) {
            return new Motion.Straight(map.apply(m.from()), map.apply(m.to()));
          }

          @Override
          public Motion turn(Motion.Turn m) {
            Position centre = map.apply(new Position(m.centreU(), m.centreV(), 0));
            return new Motion.Turn(
                map.apply(m.from()),
                map.apply(m.to()),
                m.plane(),
                centre.x(),
                centre.y(),
                m.sweepRad());
          }
        });
  }

  private static List<Cut> mapped(List<Cut> cuts, Affine map) {
    return cuts.stream()
        .map(c -> new Cut(moved(c.path, p -> new Position(map.apply(p.xy()), p.z())), c.tool))
        .toList();
  }

  @Test
  void a_program_that_does_what_was_asked_is_clean() {
    GougeCheck.Result result = check(allIntents(), allCuts());
    assertThat(result.discrepancies()).isEmpty();
    assertThat(result.isClean()).isTrue();
    assertThat(result.windows()).isBetween(190, 210);
    assertThat(result.cells()).isEqualTo(1500L * 1100);
  }

  /** What an import can do wrong without any single number looking odd. */
  private record Mistake(String name, Affine map) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static List<Mistake> mistakes() {
    return List.of(
        new Mistake("mirrored", new Affine(-1, 0, 0, 1, 115, 0)),
        new Mistake("upside down", new Affine(1, 0, 0, -1, 0, 75)),
        new Mistake("inches for millimetres", Affine.scaling(25.4, 25.4)),
        new Mistake("millimetres for inches", Affine.scaling(1 / 25.4, 1 / 25.4)),
        new Mistake("shifted in x", Affine.translation(0.1, 0)),
        new Mistake("shifted in y", Affine.translation(0, -0.1)),
        new Mistake("shifted a little", Affine.translation(0.03, 0.03)),
        new Mistake("turned", Affine.rotation(Math.toRadians(0.2))),
        new Mistake("stretched", Affine.scaling(1.002, 1.002)));
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void a_wrong_import_is_found(Mistake mistake) {
    GougeCheck.Result result = check(allIntents(), mapped(allCuts(), mistake.map));
    assertThat(result.tooDeep() + result.left()).as("%s", mistake).isPositive();
    assertThat(result.isClean()).isFalse();
  }

  @ParameterizedTest
  @MethodSource("mistakes")
  void a_wrong_import_of_a_single_recess_is_found(Mistake mistake) {
    GougeCheck.Result result = check(List.of(RECESS), mapped(recessCuts(FLAT), mistake.map));
    assertThat(result.isClean()).as("%s", mistake).isFalse();
  }

  /** With cells of 1 mm only the windows can see a wall that is 0.05 mm off. */
  @Test
  void windows_find_what_lies_between_the_cells() {
    List<Cut> shifted = mapped(recessCuts(FLAT), Affine.translation(0.05, 0));
    GougeCheck.Result result = check(List.of(RECESS), shifted, 1);
    assertThat(result.discrepancies())
        .anySatisfy(
            d -> {
              assertThat(d.kind()).isEqualTo(Discrepancy.Kind.TOO_DEEP);
              assertThat(d.intent()).isEqualTo("recess");
              assertThat(d.sidewaysMm()).isBetween(0.02, 0.05);
              assertThat(d.areaMm2()).isLessThan(0.06);
              assertThat(d.amountMm()).isCloseTo(6, within(1e-5));
            })
        .anySatisfy(
            d -> {
              assertThat(d.kind()).isEqualTo(Discrepancy.Kind.LEFT);
              assertThat(d.place().x()).isCloseTo(INTO_STOCK + 5, within(0.15));
            });
    assertThat(check(List.of(RECESS), recessCuts(FLAT), 1).isClean()).isTrue();
  }

  @Test
  void one_move_too_deep_is_told_where_and_how_much() {
    List<Cut> cuts = allCuts();
    cuts.add(new Cut(line(new Point(30, 30), new Point(40, 30), -6.5), FLAT));
    List<Discrepancy> found = check(allIntents(), cuts).discrepancies();
    assertThat(found).as("%s", found).hasSize(1);
    Discrepancy d = found.get(0);
    assertThat(d.kind()).isEqualTo(Discrepancy.Kind.TOO_DEEP);
    assertThat(d.intent()).isEqualTo("recess");
    assertThat(d.amountMm()).isCloseTo(0.5, within(0.001));
    assertThat(d.areaMm2()).isCloseTo(60 + Math.PI * 9, within(0.5));
    assertThat(d.place().distance(new Point(INTO_STOCK + 35, INTO_STOCK + 30))).isLessThan(9);
  }

  @Test
  void a_cut_where_nothing_was_asked_is_found() {
    List<Cut> cuts = allCuts();
    cuts.add(new Cut(line(new Point(75, 60), new Point(90, 60), -0.05), FLAT));
    List<Discrepancy> found = check(allIntents(), cuts).discrepancies();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).amountMm()).isCloseTo(0.05, within(0.001));
    assertThat(found.get(0).areaMm2()).isCloseTo(90 + Math.PI * 9, within(1.0));
  }

  @Test
  void a_pass_that_was_left_out_is_found() {
    List<Cut> cuts = new ArrayList<>();
    for (double inset : new double[] {3, 5, 7, 9, 17, 19, 20}) {
      follow(rectangle(5 + inset, 10 + inset, 65 - inset, 50 - inset), -6, FLAT, cuts);
    }
    GougeCheck.Result result = check(List.of(RECESS), cuts);
    assertThat(result.tooDeep()).isZero();
    assertThat(result.left()).isEqualTo(1);
    Discrepancy left = result.discrepancies().get(0);
    assertThat(left.kind()).isEqualTo(Discrepancy.Kind.LEFT);
    assertThat(left.amountMm()).isCloseTo(6, within(0.01));
    // what stands is the band between insets 12 and 14
    assertThat(left.areaMm2()).isCloseTo(36 * 16 - 32 * 12, within(8.0));
    assertThat(check(List.of(RECESS), cuts).map().isLeft(10, 10)).isFalse();
  }

  @Test
  void a_wrong_tool_is_found_by_the_corners_that_it_leaves() {
    List<Cut> cuts = recessCuts(tool(9, new ToolShape.Flat(5)));
    assertThat(check(List.of(RECESS), cuts).left()).isPositive();
    assertThat(check(List.of(RECESS), recessCuts(tool(9, new ToolShape.Flat(6.1)))).tooDeep())
        .isPositive();
  }

  /** A ball leaves its own round foot along the walls, and cusps between passes. */
  @Test
  void a_ball_may_leave_its_round_foot_but_not_its_cusps() {
    Intent recess = new Intent.Recess("recess", Region.ofRing(rectangle(5, 10, 65, 50)), 6, BALL);
    GougeCheck.Result result = check(List.of(recess), recessCuts(BALL));
    assertThat(result.tooDeep()).isZero();
    // cusps of passes 2 mm apart: R - sqrt(R^2 - 1) = 0.1716
    assertThat(result.discrepancies())
        .isNotEmpty()
        .allSatisfy(d -> assertThat(d.kind()).isEqualTo(Discrepancy.Kind.LEFT));
    assertThat(result.discrepancies().get(0).amountMm()).isBetween(0.1, 0.5);
  }

  /** The flank of a V-bit leans inwards from the outline down to the floor. */
  @Test
  void a_vee_carved_recess_has_leaning_walls() {
    double depth = 2;
    double lean = depth * Math.tan(Math.toRadians(30));
    Intent recess = new Intent.Recess("recess", Region.ofRing(rectangle(5, 10, 8, 50)), 2, VEE);
    List<Cut> cuts = new ArrayList<>();
    List<Point> floor = rectangle(5 + lean, 10 + lean, 8 - lean, 50 - lean);
    List<Point> outline = rectangle(5, 10, 8, 50);
    follow(floor, -depth, VEE, cuts);
    for (double x = 5 + lean; x < 8 - lean; x += 0.005) {
      cuts.add(new Cut(line(new Point(x, 10 + lean), new Point(x, 50 - lean), -depth), VEE));
    }
    for (int i = 0; i < 4; i++) {
      cuts.add(
          new Cut(
              new Motion.Straight(
                  new Position(floor.get(i), -depth), new Position(outline.get(i), 0)),
              VEE));
    }
    assertThat(check(List.of(recess), cuts).discrepancies()).isEmpty();
    assertThat(check(List.of(recess), mapped(cuts, Affine.translation(0.1, 0))).tooDeep())
        .isPositive();
    assertThat(check(List.of(recess), cuts.subList(0, cuts.size() - 1)).left()).isPositive();
  }

  @Test
  void tabs_may_stand_but_not_a_whole_side() {
    List<Cut> tabbed = new ArrayList<>();
    tabbed.addAll(sideCuts(0, -12.4));
    tabbed.addAll(sideCuts(1, -12.4));
    // the third side with a tab 6 wide and 3 thick, the fourth whole
    tabbed.add(sideCuts(2, -12.4).get(0));
    tabbed.add(new Cut(line(new Point(115, 78), new Point(60, 78), -12.4), FLAT));
    tabbed.add(new Cut(line(new Point(60, 78), new Point(48, 78), -9), FLAT));
    tabbed.add(new Cut(line(new Point(48, 78), new Point(0, 78), -12.4), FLAT));
    List<Cut> whole = new ArrayList<>(tabbed);
    whole.addAll(sideCuts(3, -12.4));
    assertThat(check(List.of(PART), whole).discrepancies()).isEmpty();
    List<Cut> skin = new ArrayList<>(tabbed);
    skin.addAll(sideCuts(3, -11.8));
    List<Discrepancy> found = check(List.of(PART), skin).discrepancies();
    assertThat(found).hasSize(1);
    assertThat(found.get(0).kind()).isEqualTo(Discrepancy.Kind.NOT_FREED);
    // the turned end of the cut before reaches 3 along the side
    assertThat(found.get(0).amountMm()).isCloseTo(72, within(0.5));
    assertThat(check(List.of(PART), List.of()).discrepancies().get(0).amountMm())
        .isCloseTo(2 * (115 + 75), within(2.0));
  }

  @Test
  void below_the_allowance_is_too_deep() {
    assertThat(check(List.of(PART), partCuts(-14.1)).discrepancies().get(0).amountMm())
        .isCloseTo(0.1, within(0.001));
  }

  @Test
  void where_intents_overlap_the_deepest_counts() {
    Intent shallow = new Intent.Recess("panel", Region.ofRing(rectangle(2, 7, 68, 53)), 1, FLAT);
    List<Cut> cuts = recessCuts(FLAT);
    for (double inset = 0; inset < 4; inset += 1) {
      follow(rectangle(5 + inset, 10 + inset, 65 - inset, 50 - inset), -1, FLAT, cuts);
    }
    assertThat(check(List.of(RECESS, shallow), cuts).discrepancies()).isEmpty();
    assertThat(check(List.of(shallow), cuts).tooDeep()).isPositive();
  }

  /** A leaf of two arcs of radius 50 with centres 60 apart: inward offset 3 is the lens of 47. */
  @Test
  void a_leaf_cut_by_arcs_is_clean() {
    double half = Math.sqrt(50 * 50 - 30 * 30);
    Point left = new Point(57.5, 40 - half);
    Path leaf = lens(57.5, 40, 50);
    Region region = Region.of(List.of(leaf), FillRule.NONZERO, 0.002);
    assertThat(region.area()).isCloseTo(2236.476090, within(0.5));
    Intent recess = new Intent.Recess("leaf", region, 4, FLAT);
    List<Cut> cuts = new ArrayList<>();
    for (double inset = 3; inset < 20; inset += 2) {
      lensCuts(57.5, 40, 50 - inset, -4, cuts);
    }
    assertThat(check(List.of(recess), cuts).discrepancies()).isEmpty();
    assertThat(left.distance(leaf.start())).isLessThan(1e-9);
    assertThat(check(List.of(recess), cuts.subList(1, cuts.size())).left()).isPositive();
  }

  /** From the lower tip up the right side and back down the left one. */
  private static Path lens(double x, double y, double radius) {
    double h = Math.sqrt(radius * radius - 30 * 30);
    double angle = Math.atan2(h, 30);
    Point low = new Point(x, y - h);
    Point high = new Point(x, y + h);
    return new Path(
        List.of(
            new frieze.curve.Arc(low, high, new Point(x - 30, y), 2 * angle),
            new frieze.curve.Arc(high, low, new Point(x + 30, y), 2 * angle)),
        true);
  }

  private static void lensCuts(double x, double y, double radius, double z, List<Cut> into) {
    double h = Math.sqrt(radius * radius - 30 * 30);
    double angle = Math.atan2(h, 30);
    Position low = new Position(x, y - h, z);
    Position high = new Position(x, y + h, z);
    into.add(new Cut(new Motion.Turn(low, high, Plane.XY, x - 30, y, 2 * angle), FLAT));
    into.add(new Cut(new Motion.Turn(high, low, Plane.XY, x + 30, y, 2 * angle), FLAT));
  }

  /** An end on a row's centre line once dropped its edge, and the row changed sides from there. */
  @Test
  void a_corner_on_the_centre_line_of_a_row_leaves_every_cell_on_its_side() {
    for (int k = 0; k < 300; k++) {
      double level = 5 + (k + 0.5) * 0.1;
      Region kite =
          Region.ofRing(
              List.of(
                  new Point(20, 2), new Point(30, level), new Point(20, 50), new Point(10, level)));
      Wish wish = Wish.of(new Intent.Recess("kite", kite, 2, FLAT), setup(), 0.02).get(0);
      Raster raster = Raster.of(wish.bounds(), 0.1, 2);
      float[] signed = raster.signedDistances(wish);
      Region.Locator inside = kite.locator();
      for (int j = 0; j < raster.rows(); j++) {
        for (int i = 0; i < raster.columns(); i++) {
          float distance = signed[j * raster.columns() + i];
          Point at = new Point(raster.x(i) - INTO_STOCK, raster.y(j) - INTO_STOCK);
          if (Math.abs(distance) > 0.01) {
            assertThat(distance > 0).as("kite %d at %s", k, at).isEqualTo(inside.contains(at));
          }
        }
      }
    }
  }
}
