package frieze.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Bounds;
import frieze.curve.Cubic;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.layout.Placement;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.PlanCode;
import frieze.plan.vgroove.VLevel;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Against the closed forms of V-grooves over whole areas, and exact cones against distances. */
class VGrooveTest {
  /** The edge may lie outside the outline by this much, and inside by twice as much. */
  private static final double BEYOND_MM = 0.01;

  private static final double SHORT_MM = 0.02;
  private static final double SHIFT_MM = 30;

  private static Tool vee(double angleDeg, double tipMm) {
    ToolShape shape = new ToolShape.Vee(30, StrictMath.toRadians(angleDeg), tipMm);
    OptionalDouble none = OptionalDouble.empty();
    return new Tool("vee " + angleDeg, 7, shape, 2, 30, 40, true, none, none, 20_000, 2_000, 400);
  }

  private static Work.VGroove work(Tool bit, OptionalDouble deepest, Tool... floor) {
    return new Work.VGroove(
        Bench.recess("shape", Bench.FLAT_3, 1).on(),
        bit,
        deepest,
        List.of(floor),
        0.1,
        0.2,
        Work.Milling.CONVENTIONAL,
        Bench.WHERE);
  }

  private static Plan plan(Work.VGroove work, Path... paths) {
    Motif motif = Bench.filled("shape", paths);
    return Planner.plan(
        Bench.design(motif, Affine.translation(SHIFT_MM, SHIFT_MM), work),
        Bench.setup(),
        Tolerances.DEFAULT);
  }

  /** Two arcs of a radius about centres that are twice c apart. */
  private static Path leaf(double radius, double c) {
    double s = Math.sqrt(radius * radius - c * c);
    double sweep = 2 * Math.acos(c / radius);
    Point left = new Point(0, 0);
    Point right = new Point(2 * s, 0);
    return new Path(
        List.of(
            new Arc(left, right, new Point(s, c), sweep),
            new Arc(right, left, new Point(s, -c), sweep)),
        true);
  }

  private static Path triangle(double side) {
    return Path.polyline(
        List.of(new Point(0, 0), new Point(side, 0), new Point(side / 2, side * Math.sqrt(3) / 2)),
        true);
  }

  /** A shape and the integral of the distance to its edge, in closed form. */
  private record Shape(String name, Path path, double integral) {
    @Override
    public String toString() {
      return name;
    }
  }

  private static List<Shape> shapes() {
    double r = 20;
    double c = 12;
    double s = 16;
    double acosh = Math.log(r / c + Math.sqrt(r * r / (c * c) - 1));
    double leaf =
        2 * Math.pow(r, 3) * Math.acos(c / r) / 3
            - 4 * c * r * s / 3
            + 2 * Math.pow(c, 3) * acosh / 3;
    double side = 24;
    double inner = side / (2 * Math.sqrt(3));
    return List.of(
        new Shape("rectangle", Bench.rectangle(0, 0, 24, 16), 16 * 16 * (3 * 24 - 16) / 12.0),
        new Shape("circle", Path.circle(new Point(8, 8), 8), Math.PI * 512 / 3),
        new Shape("triangle", triangle(side), side * side * Math.sqrt(3) / 4 * inner / 3),
        new Shape("leaf", leaf(r, c), leaf));
  }

  static Stream<Arguments> shapesAndAngles() {
    return shapes().stream().flatMap(s -> Stream.of(Arguments.of(s, 60.0), Arguments.of(s, 90.0)));
  }

  private static List<Point> outline(Path path) {
    return Flattener.flatten(path.transformed(Affine.translation(SHIFT_MM, SHIFT_MM)), 1e-4);
  }

  /** Places evenly in the bounds of an outline. */
  private static List<Point> places(List<Point> outline, double pitch) {
    Bounds b = Bounds.EMPTY;
    for (Point p : outline) {
      b = b.with(p);
    }
    List<Point> places = new ArrayList<>();
    for (double x = b.minX() + pitch / 2; x < b.maxX(); x += pitch) {
      for (double y = b.minY() + pitch / 2; y < b.maxY(); y += pitch) {
        places.add(new Point(x, y));
      }
    }
    return places;
  }

  /** The volume is the integral of the distance to the edge, over the tangent of half the angle. */
  @ParameterizedTest
  @MethodSource("shapesAndAngles")
  void depth_and_volume_are_those_of_the_closed_form(Shape shape, double angleDeg) {
    double tangent = Math.tan(Math.toRadians(angleDeg / 2));
    Plan plan = plan(work(vee(angleDeg, 0), OptionalDouble.empty()), shape.path());
    Carved carved = new Carved(plan.cuts());
    List<Point> outline = outline(shape.path());
    double pitch = 0.8;
    double volume = 0;
    double worst = 0;
    for (Point p : places(outline, pitch)) {
      double depth = carved.depthMm(p);
      double asked = BruteForce.inside(outline, p) ? BruteForce.distance(outline, p) / tangent : 0;
      worst = Math.max(worst, Math.abs(depth - asked));
      volume += depth * pitch * pitch;
    }
    assertThat(worst).isLessThan(SHORT_MM / tangent);
    assertThat(volume).isCloseTo(shape.integral() / tangent, within(volume * 0.01));
    assertConesInside(carved, outline, tangent, 0);
    assertEdgeReached(carved, outline, 0);
  }

  /** The cone at each place of each move against the distance to the drawn outline. */
  private static void assertConesInside(
      Carved carved, List<Point> outline, double tangent, double tipRadius) {
    double beyond = 0;
    for (int i = 0; i < carved.tips().size(); i += 11) {
      double[] tip = carved.tips().get(i);
      Point at = new Point(tip[0], tip[1]);
      double room = BruteForce.distance(outline, at);
      double signed = BruteForce.inside(outline, at) ? room : -room;
      beyond = Math.max(beyond, -tip[2] * tangent + tipRadius - signed);
    }
    assertThat(beyond).as("beyond the outline").isLessThan(BEYOND_MM);
  }

  /** Places just inside the outline, away from its corners by what a flat tip leaves. */
  private static void assertEdgeReached(Carved carved, List<Point> outline, double cornersMm) {
    int step = Math.max(1, outline.size() / 60);
    for (int i = 0; i < outline.size(); i += step) {
      Point a = outline.get(i);
      Point b = outline.get((i + 1) % outline.size());
      for (double share : new double[] {0.01, 0.3, 0.5, 0.99}) {
        Point on = a.towards(b, share);
        boolean corner = on.distance(a) < cornersMm || on.distance(b) < cornersMm;
        Point along = b.minus(a).times(1 / a.distance(b));
        Point inside = on.plus(new Point(-along.y(), along.x()).times(SHORT_MM));
        if (!corner && BruteForce.distance(outline, inside) > SHORT_MM * 0.9) {
          assertThat(carved.depthMm(inside)).as("at %s", inside).isGreaterThan(0);
        }
      }
    }
  }

  /** A cone cut off: pi D / 3 (R R + R r + r r), r = R - D tan. */
  @Test
  void deepest_gives_the_flat_floor_of_the_closed_form() {
    double tangent = Math.tan(Math.toRadians(30));
    double deepest = 4;
    Plan plan =
        plan(
            work(vee(60, 0), OptionalDouble.of(deepest), Bench.FLAT_3),
            Path.circle(new Point(8, 8), 8));
    assertThat(plan.cuts().get(0).tool()).isEqualTo(Bench.FLAT_3);
    Carved carved = new Carved(plan.cuts());
    double r = 8 - deepest * tangent;
    double expected = Math.PI * deepest / 3 * (64 + 8 * r + r * r);
    List<Point> outline = outline(Path.circle(new Point(8, 8), 8));
    double volume = 0;
    int floor = 0;
    double pitch = 0.25;
    for (Point p : places(outline, pitch)) {
      double depth = carved.depthMm(p);
      assertThat(depth).isLessThanOrEqualTo(deepest + 1e-9);
      volume += depth * pitch * pitch;
      floor += depth > deepest - 0.11 ? 1 : 0;
    }
    assertThat(volume).isCloseTo(expected, within(expected * 0.004));
    double reach = r + 0.1 * tangent;
    assertThat(floor * pitch * pitch).isCloseTo(Math.PI * reach * reach, within(1.5));
    assertConesInside(new Carved(ofTool(plan, vee(60, 0))), outline, tangent, 0);
  }

  private static List<Cut> ofTool(Plan plan, Tool tool) {
    return plan.cuts().stream().filter(c -> c.tool().equals(tool)).toList();
  }

  /** Rect w x h cut to D at 90 degrees: the floor is (w - 2 D)(h - 2 D). */
  @Test
  void the_floor_is_the_v_bits_alone_where_no_flat_bit_fits() {
    Tool bit = vee(90, 0.2);
    Path bar = Bench.rectangle(0, 0, 24, 6);
    Plan plan = plan(work(bit, OptionalDouble.of(2), Bench.FLAT_3), bar);
    assertThat(plan.cuts()).allMatch(c -> c.tool().equals(bit));
    Carved carved = new Carved(plan.cuts());
    List<Point> outline = outline(bar);
    for (Point p : places(outline, 0.3)) {
      double asked = Math.min(2, BruteForce.distance(outline, p));
      assertThat(carved.depthMm(p)).as("%s", p).isBetween(asked - 0.1 - SHORT_MM, asked + SHORT_MM);
    }
    assertConesInside(carved, outline, 1, 0.1);
  }

  /** Inside a corner of 60 degrees a round tip leaves r (1 / sin 30 - 1) = r to the corner. */
  @Test
  void a_flat_tip_leaves_the_corners_and_says_so() {
    Tool bit = vee(60, 1);
    Plan plan = plan(work(bit, OptionalDouble.empty()), triangle(24));
    assertThat(plan.notes()).anyMatch(d -> d.code() == PlanCode.THINNER_THAN_TIP);
    double each = 0.25 * 0.684853256;
    assertThat(plan.leftovers().get(0).area().area()).isCloseTo(3 * each, within(0.01));
    Carved carved = new Carved(plan.cuts());
    List<Point> outline = outline(triangle(24));
    double tangent = Math.tan(Math.toRadians(30));
    assertConesInside(carved, outline, tangent, 0.5);
    assertEdgeReached(carved, outline, 0.5 / tangent + 0.05);
    double deepest =
        RecessTest.positions(plan.cuts()).stream().mapToDouble(p -> -p.z()).max().orElse(0);
    assertThat(deepest).isCloseTo((24 / (2 * Math.sqrt(3)) - 0.5) / tangent, within(0.005));
  }

  /** Letters have rings, bars that meet, thin serifs and dots. */
  @Test
  void rings_bars_hairlines_and_dots_are_carved() {
    Path outer = Path.circle(new Point(10, 10), 10);
    Path inner = Path.circle(new Point(11, 10), 6);
    Path hairline = Bench.rectangle(25, 0, 0.06, 20);
    Path dot = Path.circle(new Point(30, 2), 0.7);
    Path tee =
        Path.polyline(
            List.of(
                new Point(34, 0),
                new Point(37, 0),
                new Point(37, 15),
                new Point(44, 15),
                new Point(44, 18),
                new Point(34, 18)),
            true);
    Path[] all = {outer, inner, hairline, dot, tee};
    Plan plan = plan(work(vee(60, 0), OptionalDouble.empty()), all);
    Carved carved = new Carved(plan.cuts());
    double tangent = Math.tan(Math.toRadians(30));
    assertThat(carved.depthMm(new Point(60, 32))).isCloseTo(0.7 / tangent, within(0.01));
    assertThat(carved.depthMm(new Point(55.03, 40))).isCloseTo(0.03 / tangent, within(0.02));
    // Between the circles, 5 wide on the left and 3 on the right.
    assertThat(carved.depthMm(new Point(32.5, 40))).isCloseTo(2.5 / tangent, within(0.02));
    assertThat(carved.depthMm(new Point(48.5, 40))).isCloseTo(1.5 / tangent, within(0.02));
    assertThat(carved.depthMm(new Point(41, 40))).isZero();
    for (Path path : List.of(hairline, dot, tee)) {
      assertEdgeReached(carved, outline(path), 0);
    }
  }

  /** Twice the same leaf but for rounding is one area, cut to its full depth all along its axis. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 15, 90, 180, 270})
  void a_leaf_on_its_own_mirror_image_is_cut_along_all_its_axis(double turnDeg) {
    Path leaf = cubicLeaf();
    Affine place =
        Affine.rotation(Math.toRadians(turnDeg)).then(Affine.translation(78.75, SHIFT_MM));
    List<Placement> both =
        List.of(
            Bench.at("shape", 1, place), Bench.at("shape", 2, Affine.scaling(-1, 1).then(place)));
    Work work = work(vee(60, 0), OptionalDouble.empty());
    Design design =
        new Design(Bench.panel(), List.of(Bench.filled("shape", leaf)), both, List.of(work));
    Carved carved = new Carved(Planner.plan(design, Bench.setup(), Tolerances.DEFAULT).cuts());
    double tangent = Math.tan(Math.toRadians(30));
    List<Point> outline = Flattener.flatten(leaf, 1e-3);
    for (double y = 0.05; y < 20; y += 0.1) {
      Point onAxis = new Point(0, y);
      assertThat(carved.depthMm(place.apply(onAxis)))
          .as("%s along the axis", y)
          .isCloseTo(BruteForce.distance(outline, onAxis) / tangent, within(SHORT_MM / tangent));
    }
  }

  /** 6 by 20, pointed at both ends of its axis, which is the Y axis. */
  private static Path cubicLeaf() {
    Point foot = new Point(0, 0);
    Point top = new Point(0, 20);
    return new Path(
        List.of(
            new Cubic(foot, new Point(4, 8), new Point(4, 14), top),
            new Cubic(top, new Point(-4, 14), new Point(-4, 8), foot)),
        true);
  }

  @Test
  void hard_wood_is_cut_in_several_passes_and_a_last_light_one() {
    List<VLevel> levels = VLevel.of(8.2, 3, 0.2);
    assertThat(levels).hasSize(4);
    double before = 0;
    for (VLevel level : levels.subList(0, 3)) {
      assertThat(level.depthMm(8.2) - before).isBetween(0.1, 3.0);
      before = level.depthMm(8.2);
    }
    assertThat(levels.get(3).depthMm(8.2) - before).isCloseTo(0.2, within(1e-12));
    assertThat(levels.get(2).depthMm(1)).isCloseTo(0.8, within(1e-12));
  }

  /** A triangle's middle lines end in its corners, where nothing is in the way. */
  @Test
  void the_bit_enters_in_a_corner_where_its_depth_is_nothing() {
    Plan plan = plan(work(vee(60, 0), OptionalDouble.empty()), triangle(24));
    Position last = plan.cuts().get(plan.cuts().size() - 1).start();
    assertThat(outline(triangle(24))).anyMatch(c -> c.distance(last.xy()) < 1e-6);
    assertThat(plan.cuts()).hasSizeLessThanOrEqualTo(6);
  }

  /** The steps of the numbers in programs: a micrometre, and a ten-thousandth of an inch. */
  @Test
  void a_rounded_move_sinks_no_faster_than_a_plunge() {
    List<Cut> cuts = plan(work(vee(90, 0), OptionalDouble.empty()), leaf(10, 6)).cuts();
    int shortOnes = 0;
    for (Cut.Move move : RecessTest.moves(cuts)) {
      Position from = move.path().from();
      Position to = move.path().to();
      shortOnes += from.distance(to) < 0.5 ? 1 : 0;
      for (double step : new double[] {0.001, 0.00254}) {
        double down = rounded(from, step).z() - rounded(to, step).z();
        double share = down / rounded(from, step).distance(rounded(to, step));
        assertThat(move.feedMmPerMin() * share).isLessThanOrEqualTo(400 * (1 + 1e-9));
      }
    }
    assertThat(shortOnes).isGreaterThan(20);
  }

  private static Position rounded(Position p, double step) {
    return new Position(
        Math.rint(p.x() / step) * step,
        Math.rint(p.y() / step) * step,
        Math.rint(p.z() / step) * step);
  }
}
