package frieze.plan;

import static frieze.plan.Bench.FLAT_3;
import static frieze.plan.Bench.FLAT_6;
import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.fixtures.Seeds;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BatchOrderTest {
  private static int loads(List<Integer> order, List<Integer> tools) {
    int loads = 0;
    for (int i = 0; i < order.size(); i++) {
      boolean same = i > 0 && tools.get(order.get(i)).equals(tools.get(order.get(i - 1)));
      loads += same ? 0 : 1;
    }
    return loads;
  }

  /** All orders that the constraints permit, one after the other, without any cleverness. */
  private static int fewest(List<Integer> tools, List<BitSet> before, List<Integer> done) {
    if (done.size() == tools.size()) {
      return loads(done, tools);
    }
    int best = Integer.MAX_VALUE;
    for (int job = 0; job < tools.size(); job++) {
      if (!done.contains(job) && before.get(job).stream().allMatch(done::contains)) {
        List<Integer> next = new ArrayList<>(done);
        next.add(job);
        best = Math.min(best, fewest(tools, before, next));
      }
    }
    return best;
  }

  @Test
  void no_permitted_order_loads_tools_less_often() {
    long seed = Seeds.seed(41);
    SplittableRandom random = new SplittableRandom(seed);
    for (int round = 0; round < 300; round++) {
      int n = 1 + random.nextInt(7);
      List<Integer> tools = new ArrayList<>();
      List<BitSet> before = new ArrayList<>();
      for (int job = 0; job < n; job++) {
        tools.add(random.nextInt(3));
        BitSet earlier = new BitSet();
        for (int a = 0; a < job; a++) {
          earlier.set(a, random.nextInt(4) == 0);
        }
        before.add(earlier);
      }
      List<Integer> order = ToolLoads.order(tools, before);
      String what = "seed " + seed + ", round " + round + ": " + tools + " " + before + " " + order;
      assertThat(order).as(what).hasSize(n).doesNotHaveDuplicates();
      for (int i = 0; i < n; i++) {
        List<Integer> done = order.subList(0, i);
        assertThat(before.get(order.get(i)).stream().allMatch(done::contains)).as(what).isTrue();
      }
      assertThat(loads(order, tools)).as(what).isEqualTo(fewest(tools, before, List.of()));
    }
  }

  private static Work.Bore bore(double diameterMm, double depthMm, Tool tool, Point... at) {
    return new Work.Bore(List.of(at), diameterMm, Optional.of(depthMm), tool, Bench.WHERE);
  }

  @Test
  void holes_far_from_all_else_are_made_while_their_tool_is_in_the_spindle() {
    Motif leaf = Bench.filled("leaf", Bench.rectangle(0, 0, 40, 30));
    Design design =
        Bench.design(
            leaf,
            Affine.translation(100, 40),
            Bench.recess("leaf", FLAT_3, 3),
            new Work.Groove(new Work.Target("leaf", Optional.empty()), FLAT_6, 4, Bench.WHERE),
            bore(8, 5, FLAT_3, new Point(20, 20)));
    Plan plan = Planner.plan(design, Bench.setup(), Tolerances.DEFAULT);
    assertThat(tools(plan)).containsExactly(FLAT_3, FLAT_6);
    Design crossing =
        Bench.design(
            leaf,
            Affine.translation(100, 40),
            Bench.recess("leaf", FLAT_3, 3),
            new Work.Groove(new Work.Target("leaf", Optional.empty()), FLAT_6, 4, Bench.WHERE),
            bore(8, 5, FLAT_3, new Point(101, 60)));
    assertThat(tools(Planner.plan(crossing, Bench.setup(), Tolerances.DEFAULT)))
        .as("a hole in a groove comes after the groove")
        .containsExactly(FLAT_3, FLAT_6, FLAT_3);
  }

  private static List<Tool> tools(Plan plan) {
    List<Tool> tools = new ArrayList<>();
    for (Cut cut : plan.cuts()) {
      if (tools.isEmpty() || !tools.get(tools.size() - 1).equals(cut.tool())) {
        tools.add(cut.tool());
      }
    }
    return tools;
  }

  @Test
  void a_hole_bored_deeper_begins_on_the_floor_of_the_wider_one() {
    Point at = new Point(50, 60);
    Motif none = Bench.filled("none", Bench.rectangle(0, 0, 40, 30));
    Design design =
        Bench.design(
            none, Affine.translation(200, 40), bore(5, 11, FLAT_3, at), bore(12, 2, FLAT_3, at));
    Plan plan = Planner.plan(design, Bench.setup(), Tolerances.DEFAULT);
    assertThat(plan.cuts()).hasSize(2);
    Swept swept = new Swept(40, 50, 20, 20, 0.05);
    double inAir = 0;
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      Motion path = move.path();
      Position to = path.to();
      boolean useless = to.z() > -0.5 && swept.at(to.xy()) < to.z() - 0.6;
      inAir += useless ? path.lengthMm() : 0;
      swept.cut(List.of(new Cut("", FLAT_3, 1, List.of(move))));
    }
    assertThat(inAir).isLessThan(5);
    double whole = Math.PI * (36 * 2 + 6.25 * 9);
    assertThat(swept.volumeMm3()).isBetween(0.99 * whole, 1.01 * whole);
  }
}
