package frieze.plan;

import static frieze.plan.Bench.FLAT_3;
import static frieze.plan.Bench.FLAT_6;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Motif;
import frieze.design.RecessWay;
import frieze.design.Work;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Recesses cleared to and fro along the grain, and those with a last lap along the wall. */
class RecessWaysTest {
  private static final Affine AT = Affine.translation(30, 20);
  private static final Affine TURNED =
      Affine.rotation(0.7).then(Affine.scaling(-1, 1)).then(Affine.translation(110, 10));

  private static final RecessWay LINES = new RecessWay(true, 0);
  private static final RecessWay LEAVE = new RecessWay(false, 0.3);
  private static final RecessWay BOTH = new RecessWay(true, 0.3);

  private static Work.Recess recess(Tool tool, double depthMm, RecessWay way) {
    return new Work.Recess(
        new Work.Target("field", Optional.empty()),
        tool,
        depthMm,
        0.4 * tool.diameterMm(),
        Work.Milling.CLIMB,
        way,
        Bench.WHERE);
  }

  private static Plan plan(Affine map, Path[] drawn, Work... work) {
    Motif motif = Bench.filled("field", drawn);
    return Planner.plan(Bench.design(motif, map, work), Bench.setup(), Tolerances.DEFAULT);
  }

  private static Path[] star() {
    List<Point> corners = new ArrayList<>();
    for (int i = 0; i < 14; i++) {
      corners.add(Point.polar(new Point(40, 40), i % 2 == 0 ? 38 : 15, Math.PI * i / 7));
    }
    return new Path[] {Path.polyline(corners, true), Path.circle(new Point(43, 40), 4)};
  }

  /** By brute force: every place that a tool's middle may take is cut, and nothing outside. */
  @Test
  void lines_and_last_laps_cut_all_within_reach_and_nothing_else() {
    Path[] drawn = star();
    for (Affine map : List.of(AT, TURNED)) {
      List<Point> outline = drawn[0].segments().stream().map(s -> map.apply(s.start())).toList();
      Point island = map.apply(new Point(43, 40));
      for (RecessWay way : List.of(LINES, LEAVE, BOTH)) {
        Plan plan = plan(map, drawn, recess(FLAT_3, 1, way));
        Swept swept = new Swept(10, -10, 120, 130, 0.2).cut(plan.cuts());
        int missed = 0;
        int reachable = 0;
        for (double x = 12; x < 128; x += 1) {
          for (double y = -8; y < 118; y += 1) {
            Point p = new Point(x, y);
            double wall = BruteForce.distance(outline, p);
            if (BruteForce.inside(outline, p) && wall >= 1.5 && p.distance(island) >= 5.5) {
              reachable++;
              missed += swept.at(p) > -1 + 1e-9 ? 1 : 0;
            }
          }
        }
        assertThat(reachable).isGreaterThan(900);
        assertThat(missed).as("%s of %s, %s", way, reachable, map).isZero();
        for (Position p : RecessTest.positions(plan.cuts())) {
          assertThat(BruteForce.inside(outline, p.xy())).isTrue();
          assertThat(BruteForce.distance(outline, p.xy())).isGreaterThanOrEqualTo(1.5 - 0.01);
          assertThat(p.xy().distance(island)).isGreaterThanOrEqualTo(5.5 - 0.01);
        }
      }
    }
  }

  @Test
  void lines_run_along_the_grain_however_the_motif_is_turned() {
    Path[] drawn = {Bench.rectangle(0, 0, 60, 40)};
    Plan plan = plan(TURNED, drawn, recess(FLAT_3, 1, LINES));
    double along = 0;
    double other = 0;
    for (Cut.Move move : RecessTest.moves(plan.cuts().subList(0, 1))) {
      Position from = move.path().from();
      Position to = move.path().to();
      boolean level = Math.abs(from.y() - to.y()) < 1e-9;
      along += level ? move.path().lengthMm() : 0;
      other += level ? 0 : move.path().lengthMm();
    }
    assertThat(along).isGreaterThan(1500);
    assertThat(other).as("links from line to line").isLessThan(0.1 * along);
  }

  /** Closed form: lines 0.8 of the radius apart over 60 by 40 mm. */
  @Test
  void lines_are_one_stepover_apart_and_linked_without_a_lift() {
    Path[] drawn = {Bench.rectangle(0, 0, 60, 40)};
    Plan plan = plan(AT, drawn, recess(FLAT_3, 1, LINES));
    assertThat(plan.cuts()).hasSize(2);
    double margin = 1.5 + 1.5 - 0.6;
    long lines =
        RecessTest.moves(plan.cuts().subList(0, 1)).stream()
            .filter(m -> Math.abs(m.path().lengthMm() - (60 - 2 * margin)) < 0.1)
            .map(m -> Math.round(m.path().from().y() * 1000))
            .distinct()
            .count();
    assertThat(lines).isEqualTo((long) Math.ceil((40 - 2 * margin - 1.2) / 1.2) + 1);
  }

  /** The last cut goes once round at the wall at the whole depth; all before keep off it. */
  @Test
  void what_was_left_on_the_wall_is_taken_last_in_one_lap_on_arcs() {
    Path[] drawn = {Bench.rectangle(0, 0, 60, 40)};
    List<Cut> cuts = plan(AT, drawn, recess(FLAT_6, 6, LEAVE)).cuts();
    Cut last = cuts.get(cuts.size() - 1);
    for (Cut cut : cuts) {
      double nearest =
          RecessTest.positions(List.of(cut)).stream()
              .mapToDouble(
                  p -> Math.min(Math.min(p.x() - 30, 90 - p.x()), Math.min(p.y() - 20, 60 - p.y())))
              .min()
              .orElseThrow();
      assertThat(nearest).isCloseTo(cut == last ? 3 : 3.3, within(0.01));
    }
    assertThat(last.moves()).allMatch(m -> m.path().to().z() == -6 && m.path().from().z() == -6);
    Motion in = last.moves().get(0).path();
    Motion out = last.moves().get(last.moves().size() - 1).path();
    assertThat(in).isInstanceOf(Motion.Turn.class);
    assertThat(out).isInstanceOf(Motion.Turn.class);
    double length = last.moves().stream().mapToDouble(m -> m.path().lengthMm()).sum();
    assertThat(length - in.lengthMm() - out.lengthMm()).isCloseTo(2 * (54 + 34), within(0.05));
    Motion.Turn arc = (Motion.Turn) in;
    Point spoke = new Point(arc.centreU(), arc.centreV()).minus(arc.to().xy());
    assertThat(Math.min(Math.abs(spoke.x()), Math.abs(spoke.y()))).isLessThan(1e-6);
    Swept swept = new Swept(25, 15, 70, 50, 0.05).cut(cuts);
    assertThat(swept.areaMm2(6)).isCloseTo(2392.274334, within(2.4));
  }

  /** A neck as wide as the tool and a little: no room to leave anything, but cut all the same. */
  @Test
  void a_narrow_neck_is_cut_pass_by_pass_to_its_size_at_once() {
    Path neck =
        Path.polyline(
            List.of(
                new Point(0, 0),
                new Point(20, 0),
                new Point(20, 8),
                new Point(40, 8),
                new Point(40, 0),
                new Point(60, 0),
                new Point(60, 20),
                new Point(40, 20),
                new Point(40, 11.2),
                new Point(20, 11.2),
                new Point(20, 20),
                new Point(0, 20)),
            true);
    Plan plan = plan(AT, new Path[] {neck}, recess(FLAT_3, 3, LEAVE));
    Swept swept = new Swept(25, 15, 70, 30, 0.1);
    double deepest = 0;
    for (Cut cut : plan.cuts()) {
      for (Cut.Move move : cut.moves()) {
        Position at = move.path().at(0.5);
        if (at.x() > 55 && at.x() < 65 && move.path().from().z() == move.path().to().z()) {
          deepest = Math.max(deepest, swept.at(at.xy()) - at.z());
        }
        swept.cut(List.of(new Cut("", FLAT_3, 1, List.of(move))));
      }
    }
    assertThat(deepest).as("half the diameter in hardwood").isLessThanOrEqualTo(1.5 + 1e-9);
    assertThat(swept.at(new Point(60, 29.6))).isEqualTo(-3);
  }

  @Test
  void a_smaller_tool_takes_what_the_larger_one_has_left_on_the_wall() {
    Path[] drawn = {Bench.rectangle(0, 0, 60, 40)};
    Plan plan =
        plan(
            AT,
            drawn,
            recess(FLAT_6, 2, new RecessWay(false, 0.5)),
            recess(FLAT_3, 2, RecessWay.PLAIN));
    for (Position p :
        RecessTest.positions(plan.cuts().stream().filter(c -> c.tool().equals(FLAT_6)).toList())) {
      assertThat(Math.min(p.x() - 30, p.y() - 20)).isGreaterThanOrEqualTo(3.5 - 0.01);
    }
    Cut last = plan.cuts().get(plan.cuts().size() - 1);
    assertThat(last.tool()).isEqualTo(FLAT_3);
    double floor = 2400 - (4 - Math.PI) * 1.5 * 1.5;
    Swept swept = new Swept(25, 15, 70, 50, 0.05).cut(plan.cuts());
    assertThat(swept.areaMm2(2)).isCloseTo(floor, within(floor * 1e-3));
  }
}
