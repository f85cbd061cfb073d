package frieze.plan.recess;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Work;
import frieze.motion.Position;
import frieze.plan.Bench;
import frieze.plan.Swept;
import frieze.plan.cut.Block;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Feeds;
import frieze.plan.order.CutOrder;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Where recesses are entered is chosen with the order of cuts. */
class RecessEntriesTest {
  private static final Work.Recess RECESS = Bench.recess("field", Bench.FLAT_3, 2);

  private static final List<Double> DEPTHS = List.of(1.0, 2.0);

  private static Block block(Path... area) {
    Tolerances t = Tolerances.DEFAULT;
    Region region = Region.of(List.of(area), FillRule.EVEN_ODD, t.flattenMm());
    RecessGeometry.Cutter cutter = new RecessGeometry.Cutter(1.5, 1.3, RECESS.milling());
    RecessGeometry.Result result = RecessGeometry.of(region, region, cutter, t);
    assertThat(result.parts()).hasSize(1);
    Feeds feeds =
        Feeds.choose(
            RECESS.tool(),
            Bench.setup().stock().material(),
            Bench.setup().machine(),
            RECESS.where());
    Optional<Block> made = RecessPlanner.made(RECESS, result.parts().get(0), feeds, DEPTHS).block();
    return made.orElseThrow();
  }

  @Test
  void all_ways_into_a_recess_cut_the_same() {
    Block block = block(Bench.rectangle(2, 2, 30, 20));
    assertThat(block.ends()).hasSize(4);
    double[] first = swept(block.cuts().apply(0));
    for (int way = 1; way < block.ends().size(); way++) {
      double[] other = swept(block.cuts().apply(way));
      int differ = 0;
      for (int cell = 0; cell < first.length; cell++) {
        differ += Math.abs(first[cell] - other[cell]) > 1e-9 ? 1 : 0;
      }
      // single cells on the border, where a stamp falls a little otherwise
      assertThat(differ).as("cells of way %d", way).isLessThan(first.length / 1000);
    }
  }

  private static double[] swept(List<Cut> cuts) {
    return new Swept(0, 0, 34, 24, 0.05).cut(cuts).heights();
  }

  @Test
  void a_way_begins_and_ends_where_it_says() {
    Block block = block(Bench.rectangle(2, 2, 30, 20));
    List<Point> begins = new ArrayList<>();
    for (int way = 0; way < block.ends().size(); way++) {
      List<Cut> cuts = block.cuts().apply(way);
      Position end = cuts.get(cuts.size() - 1).end();
      assertThat(block.ends().get(way))
          .isEqualTo(new CutOrder.Way(cuts.get(0).start().xy(), end.xy()));
      begins.add(cuts.get(0).start().xy());
    }
    assertThat(begins).doesNotHaveDuplicates();
  }

  /** A long slot is one loop, which is left where it is entered. */
  @Test
  void a_slot_is_entered_at_the_end_that_is_nearer() {
    Block block = block(Bench.rectangle(0, 0, 200, 5));
    for (double x : new double[] {-20, 220}) {
      Point home = new Point(x, 2.5);
      CutOrder.Ends ends = new CutOrder.Ends(home, Optional.of(home));
      List<CutOrder.Visit> visits =
          CutOrder.order(List.of(new CutOrder.Stop(block.ends())), List.of(), ends, 1);
      Point at = block.cuts().apply(visits.get(0).way()).get(0).start().xy();
      assertThat(at.distance(home)).isLessThan(100);
    }
  }
}
