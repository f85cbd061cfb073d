package frieze.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Point;
import frieze.fixtures.Seeds;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.shop.Material;
import frieze.shop.Stock;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class StockFieldTest {
  /** The part of a removed volume by which the field may depart from the closed form. */
  private static final double HALF_PERCENT = 0.005;

  private static Stock stock(double length, double width, double thickness) {
    return new Stock(
        new Material("white ash", Material.Kind.HARDWOOD),
        length,
        width,
        List.of(thickness),
        false);
  }

  private static Motion line(double x0, double y0, double z0, double x1, double y1, double z1) {
    return new Motion.Straight(new Position(x0, y0, z0), new Position(x1, y1, z1));
  }

  private static ToolShape vee(double diameter, double degrees, double tip) {
    return new ToolShape.Vee(diameter, Math.toRadians(degrees), tip);
  }

  private static void assertVolume(StockField field, double expected) {
    assertThat(field.removedVolumeMm3()).isCloseTo(expected, within(HALF_PERCENT * expected));
  }

  /** Closed form: section times length and the turned ends, at any angle to the cells. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 17, 45, 90, 123})
  void a_straight_cut_removes_its_closed_form_volume(double degrees) {
    double dx = 50 * Math.cos(Math.toRadians(degrees));
    double dy = 50 * Math.sin(Math.toRadians(degrees));
    record Case(ToolShape shape, double depth, double volume) {}
    List<Case> cases =
        List.of(
            new Case(new ToolShape.Flat(6), 3, 984.823002),
            new Case(new ToolShape.Ball(6), 2, 441.831913),
            new Case(vee(12, 60, 0), 4, 484.220430),
            new Case(vee(12, 90, 0), 4, 867.020643));
    for (Case c : cases) {
      StockField field = StockField.of(stock(120, 120, 18), 0.1);
      field.cut(line(60, 60, -c.depth, 60 + dx, 60 + dy, -c.depth), c.shape);
      assertVolume(field, c.volume);
      assertThat(field.deepestMm()).isCloseTo(c.depth, within(0.1));
    }
  }

  /** Closed form: the groove of a V-bit is as wide as its depth says. */
  @ParameterizedTest
  @CsvSource({
    "10, 60, 0, 8.660254",
    "10, 90, 0, 5",
    "6, 30, 0, 11.196152",
    "3.175, 60, 0, 2.749631",
    "10, 60, 1, 7.794229",
    "10, 90, 0.5, 4.75"
  })
  void a_vee_groove_is_as_wide_as_its_depth_says(
      double width, double degrees, double tip, double depth) {
    StockField field = StockField.of(stock(60, 30, 18), 0.05);
    field.cut(line(10, 15.02, -depth, 50, 15.02, -depth), vee(20, degrees, tip));
    double measured = 0;
    for (int j = 0; j < field.rows(); j++) {
      measured += field.heightAtMm(30.02, (j + 0.5) * 0.05) < 0 ? 0.05 : 0;
    }
    assertThat(measured).isCloseTo(width, within(2 * 0.05));
  }

  /**
   * Closed forms: a chamfer takes leg^2 / 2 off each millimetre of an edge, a quarter round what it
   * leaves of its square, (1 - pi / 4) R^2; the tip runs below and beside the edge.
   */
  @ParameterizedTest
  @CsvSource({
    "1.5, 0", "3, 0", "3, 0.5", "2.25, 1", // legs, and how far the tip is beside the edge
  })
  void edges_lose_their_closed_form_volume(double size, double beside) {
    StockField chamfer = StockField.of(stock(50, 30, 18), 0.05);
    double z = -size - beside;
    chamfer.cut(line(-20, -beside, z, 70, -beside, z), vee(20, 90, 0));
    assertVolume(chamfer, 50 * size * size / 2);
    StockField round = StockField.of(stock(50, 30, 18), 0.05);
    ToolShape bit = new ToolShape.RoundOver(4 + beside, size);
    double y = -(4 + beside) / 2;
    round.cut(line(-20, y, -size, 70, y, -size), bit);
    assertVolume(round, 50 * (1 - Math.PI / 4) * size * size);
    assertThat(round.heightAtMm(25, size / 2))
        .isCloseTo(-size * (1 - Math.sqrt(0.75)), within(0.05));
  }

  /** The quarter round around a disc: the section times the way of its centroid, by Pappus. */
  @Test
  void a_round_edge_loses_its_closed_form_volume() {
    double disc = 20;
    double r = 3;
    double area = (1 - Math.PI / 4) * r * r;
    // The corner's centroid is (10 - 3 pi) / (12 - 3 pi) of the radius from the sides; computed.
    double in = r * (10 - 3 * Math.PI) / (12 - 3 * Math.PI);
    StockField field = StockField.of(stock(60, 60, 18), 0.05);
    Position start = new Position(30 + disc + 2, 30, -r);
    field.cut(
        new Motion.Turn(start, start, Plane.XY, 30, 30, 2 * Math.PI),
        new ToolShape.RoundOver(4, r));
    double inside = 0;
    for (int row = 0; row < field.rows(); row++) {
      for (int column = 0; column < field.columns(); column++) {
        double x = (column + 0.5) * 0.05 - 30;
        double y = (row + 0.5) * 0.05 - 30;
        inside -= x * x + y * y < disc * disc ? field.cellHeightMm(column, row) * 0.05 * 0.05 : 0;
      }
    }
    double expected = 2 * Math.PI * (disc - in) * area;
    assertThat(inside).isCloseTo(expected, within(HALF_PERCENT * expected));
  }

  /** Closed form: R - sqrt(R^2 - (s/2)^2). */
  @ParameterizedTest
  @CsvSource({"3, 1, 0.041960108", "3, 2, 0.171572875", "3.175, 0.5, 0.009857823"})
  void parallel_passes_of_a_ball_leave_the_scallop(double radius, double step, double height) {
    StockField field = StockField.of(stock(60, 30, 18), 0.05);
    ToolShape ball = new ToolShape.Ball(2 * radius);
    double middle = 15.025;
    field.cut(line(10, middle - step / 2, -4, 50, middle - step / 2, -4), ball);
    field.cut(line(10, middle + step / 2, -4, 50, middle + step / 2, -4), ball);
    assertThat(field.heightAtMm(30, middle)).isCloseTo(-4 + height, within(1e-6));
  }

  /** Closed forms: a tool that starts and ends inside leaves rounded inside corners. */
  @Test
  void a_rectangle_cut_round_and_round_lacks_its_corners() {
    StockField field = StockField.of(stock(80, 60, 18), 0.1);
    ToolShape flat = new ToolShape.Flat(6);
    for (double inset = 3; inset <= 20; inset += 2) {
      double x0 = 10 + inset;
      double y0 = 10 + inset;
      double x1 = 70 - inset;
      double y1 = 50 - inset;
      field.cut(line(x0, y0, -6, x1, y0, -6), flat);
      field.cut(line(x1, y0, -6, x1, y1, -6), flat);
      field.cut(line(x1, y1, -6, x0, y1, -6), flat);
      field.cut(line(x0, y1, -6, x0, y0, -6), flat);
    }
    assertVolume(field, 14353.646003);
  }

  /** Closed form: a ring of radius r and tool D is a hole less its core. */
  @Test
  void a_full_circle_removes_its_ring() {
    StockField field = StockField.of(stock(60, 60, 18), 0.1);
    Position start = new Position(49.25, 30, -5);
    field.cut(
        new Motion.Turn(start, start, Plane.XY, 40, 30, 2 * Math.PI), new ToolShape.Flat(1.5));
    assertVolume(field, Math.PI * (10 * 10 - 8.5 * 8.5) * 5);
    assertThat(field.heightAtMm(40, 30)).isEqualTo(0);
    assertThat(field.heightAtMm(40 + 9.95, 30)).isEqualTo(-5);
    assertThat(field.heightAtMm(40 + 10.1, 30)).isEqualTo(0);
    assertThat(field.heightAtMm(40, 30 - 8.6)).isEqualTo(-5);
  }

  /** Closed form: a helix down to the floor and one turn there leave a round hole. */
  @Test
  void a_helix_and_a_turn_bore_a_hole() {
    StockField field = StockField.of(stock(40, 40, 18), 0.1);
    ToolShape flat = new ToolShape.Flat(9);
    Position top = new Position(24, 20, 0);
    Position bottom = top.withZ(-6);
    field.cut(new Motion.Turn(top, bottom, Plane.XY, 20, 20, 12 * Math.PI), flat);
    field.cut(new Motion.Turn(bottom, bottom, Plane.XY, 20, 20, 2 * Math.PI), flat);
    assertVolume(field, Math.PI * 8.5 * 8.5 * 6);
  }

  /** Closed form: the cone a V-bit leaves, and the plunge of a drill with its point. */
  @Test
  void plunges_leave_the_tools_own_shape() {
    StockField field = StockField.of(stock(60, 60, 40), 0.1);
    field.cut(line(30, 30, 5, 30, 30, -17.320508), vee(20, 60, 0));
    assertVolume(field, 1813.799364);
    field = StockField.of(stock(60, 60, 40), 0.05);
    double point = 5 / Math.tan(Math.toRadians(59));
    field.cut(line(30, 30, 5, 30, 30, -20 - point), new ToolShape.Drill(10, Math.toRadians(118)));
    assertVolume(field, Math.PI * 25 * (20 + point / 3));
  }

  /** Seeded: every shape, all kinds of moves, against trying positions along every move. */
  @Test
  void agrees_with_the_lowest_over_all_moves_within_a_micrometre() {
    long seed = Seeds.seed(20261);
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < 60; round++) {
      ToolShape shape = randomShape(random);
      List<BruteForce.Cut> cuts = new ArrayList<>();
      StockField field = StockField.of(stock(60, 40, 18), 0.1);
      Position at = randomPosition(random);
      for (int i = 0; i < 6; i++) {
        Motion path = randomMotion(random, at);
        cuts.add(new BruteForce.Cut(path, shape));
        field.cut(path, shape);
        at = random.nextInt(4) == 0 ? randomPosition(random) : path.to();
      }
      assertWindow(field, cuts, random, "seed " + seed + ", round " + round + ", " + cuts);
    }
  }

  /**
   * Seeded: a path of short moves, each of which leaves to its neighbours what they cut as well.
   */
  @Test
  void short_joined_moves_leave_nothing_out_between_them() {
    long seed = Seeds.seed(20262);
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < 12; round++) {
      ToolShape shape = randomShape(random);
      double sharpest = round % 3 == 0 ? 2 * Math.PI : 0.8;
      boolean square = round % 4 == 0;
      List<BruteForce.Cut> cuts = new ArrayList<>();
      StockField field = StockField.of(stock(60, 40, 18), 0.1);
      Position at = new Position(30.05, 20.05, -4);
      double heading = 0;
      for (int i = 0; i < 12; i++) {
        heading += sharpest * (random.nextDouble() - 0.5);
        double way = square ? Math.PI / 2 * Math.rint(heading / (Math.PI / 2)) : heading;
        double length = 0.05 + 1.5 * random.nextDouble();
        double dz = random.nextInt(3) == 0 ? 0.4 * (random.nextDouble() - 0.5) : 0;
        Position to = at.plus(length * Math.cos(way), length * Math.sin(way), dz);
        Motion path = new Motion.Straight(at, to);
        cuts.add(new BruteForce.Cut(path, shape));
        field.cut(path, shape);
        at = to;
      }
      String what = "seed " + seed + ", round " + round + ", " + cuts;
      for (BruteForce.Cut cut : cuts) {
        Point joint = cut.path().to().xy();
        double reach = 0.5 * shape.diameterMm() * Math.sqrt(random.nextDouble());
        Point near = Point.polar(joint, reach, 2 * Math.PI * random.nextDouble());
        int column = (int) Math.max(0, Math.min(field.columns() - 1, near.x() / 0.1));
        int row = (int) Math.max(0, Math.min(field.rows() - 1, near.y() / 0.1));
        assertCell(field, column, row, cuts, what);
      }
    }
  }

  /** Compares 40 cells; where a wall passes within a micrometre, either side of it will do. */
  private static void assertWindow(
      StockField field, List<BruteForce.Cut> cuts, SplittableRandom random, String what) {
    for (int n = 0; n < 40; n++) {
      assertCell(field, random.nextInt(field.columns()), random.nextInt(field.rows()), cuts, what);
    }
  }

  private static void assertCell(
      StockField field, int column, int row, List<BruteForce.Cut> cuts, String what) {
    double step = 0.001;
    double x = (column + 0.5) * 0.1;
    double y = (row + 0.5) * 0.1;
    double height = field.cellHeightMm(column, row);
    double exact = BruteForce.heightMm(cuts, x, y);
    if (Math.abs(height - exact) > step) {
      double low = exact;
      double high = exact;
      for (int k = 0; k < 16; k++) {
        double around =
            BruteForce.heightMm(
                cuts, x + step * Math.cos(k * Math.PI / 8), y + step * Math.sin(k * Math.PI / 8));
        low = Math.min(low, around);
        high = Math.max(high, around);
      }
      assertThat(height)
          .as("%s at %s, %s: exact %s", what, x, y, exact)
          .isBetween(low - step, high + step);
    }
  }

  private static ToolShape randomShape(SplittableRandom random) {
    double d = 1 + 11 * random.nextDouble();
    double angle = Math.toRadians(15 + 120 * random.nextDouble());
    return switch (random.nextInt(7)) {
      case 0 -> new ToolShape.Flat(d);
      case 1 -> new ToolShape.Ball(d);
      case 2 -> new ToolShape.Vee(d, angle, 0);
      case 3 -> new ToolShape.Vee(d, angle, d * 0.6 * random.nextDouble());
      case 4 -> new ToolShape.Tapered(d, angle, d * (0.1 + 0.5 * random.nextDouble()));
      case 5 -> new ToolShape.RoundOver(d / 2, 0.5 + 5 * random.nextDouble());
      default -> new ToolShape.Drill(d, angle);
    };
  }

  private static Position randomPosition(SplittableRandom random) {
    return new Position(
        60 * random.nextDouble(), 40 * random.nextDouble(), -10 * random.nextDouble());
  }

  private static Motion randomMotion(SplittableRandom random, Position from) {
    Position to = randomPosition(random);
    return switch (random.nextInt(7)) {
      case 0 -> new Motion.Straight(from, to.withZ(from.z()));
      case 1 -> new Motion.Straight(from, from.withZ(to.z()));
      case 2 ->
          new Motion.Straight(
              from,
              from.plus(0.5 * random.nextDouble(), random.nextDouble(), -random.nextDouble()));
      case 3 -> turn(random, from, Plane.XY, 0);
      case 4 -> turn(random, from, Plane.XY, -3 * random.nextDouble());
      case 5 -> turn(random, from, random.nextBoolean() ? Plane.ZX : Plane.YZ, 2);
      default -> new Motion.Straight(from, to);
    };
  }

  private static Motion turn(SplittableRandom random, Position from, Plane plane, double climb) {
    double radius = plane == Plane.XY ? 0.5 + 30 * random.nextDouble() : 3;
    double angle = 2 * Math.PI * random.nextDouble();
    double u = from.get(plane.first()) - radius * Math.cos(angle);
    double v = from.get(plane.second()) - radius * Math.sin(angle);
    double sweep = (random.nextBoolean() ? 1 : -1) * 2 * Math.PI * random.nextDouble() + 1e-3;
    Position to =
        plane.position(
            u + radius * Math.cos(angle + sweep),
            v + radius * Math.sin(angle + sweep),
            from.get(plane.normal()) + climb);
    return new Motion.Turn(from, to, plane, u, v, sweep);
  }

  @Test
  void order_and_threads_do_not_change_a_bit() {
    SplittableRandom random = Seeds.random(77);
    ToolShape shape = new ToolShape.Ball(4);
    List<Motion> moves = new ArrayList<>();
    for (int i = 0; i < 400; i++) {
      moves.add(new Motion.Straight(randomPosition(random), randomPosition(random)));
    }
    StockField together = StockField.of(stock(60, 40, 18), 0.05);
    moves.forEach(m -> together.cut(m, shape));
    StockField singly = StockField.of(stock(60, 40, 18), 0.05);
    for (int i = moves.size() - 1; i >= 0; i--) {
      singly.cutAndMeasure(moves.get(i), shape);
    }
    for (int j = 0; j < together.rows(); j++) {
      for (int i = 0; i < together.columns(); i++) {
        assertThat(together.cellHeightMm(i, j)).isEqualTo(singly.cellHeightMm(i, j));
      }
    }
  }

  @Test
  void what_moves_take_adds_up_to_what_is_gone() {
    StockField field = StockField.of(stock(60, 40, 18), 0.1);
    SplittableRandom random = Seeds.random(5);
    double sum = 0;
    for (int i = 0; i < 50; i++) {
      Motion move = new Motion.Straight(randomPosition(random), randomPosition(random));
      sum += field.cutAndMeasure(move, new ToolShape.Flat(5)).volumeMm3();
    }
    assertThat(sum).isCloseTo(field.removedVolumeMm3(), within(1e-4 * sum));
  }

  @Test
  void a_rapid_over_standing_material_is_told_where_and_how_deep() {
    StockField field = StockField.of(stock(100, 40, 18), 0.1);
    ToolShape flat = new ToolShape.Flat(6);
    field.cut(line(10, 20, -5, 50, 20, -5), flat);
    assertThat(field.materialUnder(line(10, 20, -5, 50, 20, -5), flat).isNothing()).isTrue();
    assertThat(field.materialUnder(line(10, 20, 1, 90, 20, 1), flat).isNothing()).isTrue();
    assertThat(field.materialUnder(line(10, 20, 5, 10, 20, -5), flat).isNothing()).isTrue();
    Met met = field.materialUnder(line(10, 20, -2, 90, 20, -2), flat);
    assertThat(met.deepestMm()).isCloseTo(2, within(1e-6));
    assertThat(met.standingMm()).isEqualTo(0);
    assertThat(met.place().x()).isGreaterThan(50);
    assertThat(met.volumeMm3()).isCloseTo(40 * 6 * 2, within(0.01 * 480));
    assertThat(field.materialUnder(line(5, 20, 5, 5, 20, -6), flat).deepestMm())
        .isCloseTo(6, within(1e-5));
  }

  @Test
  void below_the_underside_there_is_no_material() {
    StockField field = StockField.of(stock(40, 40, 10), 0.1);
    ToolShape flat = new ToolShape.Flat(6);
    Met met = field.cutAndMeasure(line(20, 20, 5, 20, 20, -10.5), flat);
    assertThat(met.deepestMm()).isCloseTo(10, within(1e-5));
    assertVolume(field, Math.PI * 9 * 10);
    assertThat(field.deepestMm()).isCloseTo(10.5, within(1e-5));
    assertThat(field.materialUnder(line(20, 20, 5, 20, 20, -12), flat).isNothing()).isTrue();
    assertThat(field.depthMap(40).depthMm(20, 20)).isEqualTo(10f);
  }

  @Test
  void outside_the_stock_there_is_nothing() {
    StockField field = StockField.of(stock(40, 30, 10), 0.1);
    field.cut(line(-20, 15, -5, -4, 15, -5), new ToolShape.Flat(6));
    assertThat(field.removedVolumeMm3()).isEqualTo(0);
    assertThat(field.heightAtMm(-1, 5)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(field.heightAtMm(5, 30.1)).isEqualTo(Double.NEGATIVE_INFINITY);
    assertThat(field.heightAtMm(5, 29.9)).isEqualTo(0);
  }

  @Test
  void the_default_cell_keeps_the_field_within_its_cap() {
    assertThat(StockField.of(stock(730, 133, 19)).cellMm()).isEqualTo(0.2);
    assertThat(StockField.of(stock(120, 80, 19)).cellMm()).isEqualTo(0.1);
    StockField large = StockField.of(stock(2440, 1220, 19));
    assertThat((long) large.columns() * large.rows()).isLessThanOrEqualTo(StockField.DEFAULT_CELLS);
    assertThatThrownBy(() -> StockField.of(stock(10, 10, 10), 0))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("cellMm");
  }

  @Test
  void a_picture_shows_the_deepest_of_each_of_its_cells() {
    StockField field = StockField.of(stock(100, 50, 10), 0.1);
    field.cut(line(50, 25, 5, 50, 25, -3), vee(8, 90, 0));
    DepthMap map = field.depthMap(200);
    assertThat(map.columns()).isEqualTo(200);
    assertThat(map.rows()).isEqualTo(100);
    assertThat(map.cellMm()).isCloseTo(0.5, within(1e-12));
    assertThat(map.depthMm(100, 50)).isCloseTo(3, within(0.15f));
    assertThat(map.depthMm(104, 50)).isCloseTo(1, within(0.15f));
    assertThat(map.depthMm(10, 10)).isEqualTo(0);
    Point place = field.materialUnder(line(50, 25, 5, 50, 25, -9), vee(8, 90, 0)).place();
    assertThat(place.distance(new Point(50, 25))).isLessThan(4);
  }

  @Test
  void reset_puts_the_stock_back() {
    StockField field = StockField.of(stock(40, 30, 10), 0.1);
    field.cut(line(5, 15, -5, 35, 15, -5), new ToolShape.Flat(6));
    assertThat(field.removedVolumeMm3()).isGreaterThan(0);
    field.reset();
    assertThat(field.removedVolumeMm3()).isEqualTo(0);
  }
}
