package frieze.plan;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.fixtures.OpenIcons;
import frieze.layout.Panel;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.region.Region;
import frieze.region.Ring;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Plans drawings of the open icon sets at 60 mm, and compares with the drawn shape by brute force:
 * what is asked for and within reach is cut, and nothing else.
 */
class IconsPlanTest {
  private static final double SIZE_MM = 60;
  private static final double MARGIN_MM = 8;
  private static final double CELL_MM = 0.5;
  private static final double DEPTH_MM = 1.5;
  private static final Tool FLAT = Bench.flat(3, 2, true);

  private static Artwork artwork(String name, byte[] content) {
    Artwork art = new SvgReader().read(name, content);
    Bounds b = art.bounds();
    return b.width() > b.height() ? art.withWidth(SIZE_MM) : art.withHeight(SIZE_MM);
  }

  private static Setup setup() {
    Stock stock =
        new Stock(new Material("pine", Material.Kind.SOFTWOOD), 92, 92, List.of(6.0), false);
    return new Setup(
        Bench.machine(false), stock, Zero.LEFT_FRONT_TOP, 8, 8, 5, 0.5, List.of(), List.of());
  }

  @Test
  void forty_recesses_cut_what_is_within_reach_and_nothing_else() {
    Tally tally = recesses(OpenIcons.sample(40));
    assertThat(tally.whole).as(tally::report).isEqualTo(40);
    assertThat(tally.short999).as(tally::report).isEmpty();
  }

  @Test
  void forty_cutouts_run_a_radius_outside_the_shape() {
    assertThat(cutouts(OpenIcons.sample(40))).hasSizeLessThanOrEqualTo(1);
  }

  @Test
  @Tag("corpus")
  void three_hundred_recesses_cut_what_is_within_reach_and_nothing_else() {
    Tally tally = recesses(OpenIcons.sample(300));
    System.out.println(tally.report());
    assertThat(tally.whole).as(tally::report).isEqualTo(300);
    assertThat(tally.short999).as(tally::report).isEmpty();
  }

  @Test
  @Tag("corpus")
  void three_hundred_cutouts_run_a_radius_outside_the_shape() {
    List<String> refused = cutouts(OpenIcons.sample(300));
    refused.forEach(System.out::println);
    assertThat(refused).singleElement().asString().contains("border.svg", "PLAN-009");
  }

  /** How many were cut whole, and the rest by name. */
  private static final class Tally {
    /** Those of which at least 95 % of what is within reach is cut. */
    int whole;

    /** Those of which less than 99.9 % is cut, with how much. */
    final List<String> short999 = new ArrayList<>();

    final List<String> refused = new ArrayList<>();

    void count(String name, int wanted, int missed) {
      whole += missed <= wanted / 20 ? 1 : 0;
      if (missed > wanted / 1000) {
        short999.add(name + ": " + missed + " of " + wanted + " cells are left");
      }
    }

    String report() {
      return whole
          + " cut\nshort of 99.9 %:\n"
          + String.join("\n", short999)
          + "\nrefused:\n"
          + String.join("\n", refused);
    }
  }

  private static Tally recesses(Map<String, byte[]> icons) {
    Tally tally = new Tally();
    icons.forEach(
        (name, content) -> {
          Motif motif = new Motif("icon", artwork(name, content));
          Affine at = Affine.translation(MARGIN_MM, MARGIN_MM);
          Panel panel = new Panel("icon", Bench.rectangle(0, 0, 76, 76));
          Design design =
              new Design(
                  panel,
                  List.of(motif),
                  List.of(Bench.at("icon", 1, at)),
                  List.of(Bench.recess("icon", FLAT, DEPTH_MM)));
          Region area = motif.artwork().transformed(at).filled(0.002);
          try {
            Plan plan = Planner.plan(design, setup(), Tolerances.DEFAULT);
            checkRecess(name, area, plan, tally);
          } catch (BadInputException e) {
            assertThat(e).as(name).hasMessageContaining("PLAN-0");
            tally.refused.add(name + ": " + e.getMessage());
          }
        });
    return tally;
  }

  private static void checkRecess(String name, Region area, Plan plan, Tally tally) {
    DistanceField field = new DistanceField(area);
    Swept swept = new Swept(0, 0, 76, 76, CELL_MM).cut(plan.cuts());
    int wanted = 0;
    int missed = 0;
    for (Point p : field.reachable(FLAT.radiusMm())) {
      wanted++;
      missed += swept.at(p) > -DEPTH_MM + 1e-9 ? 1 : 0;
    }
    tally.count(name, wanted, missed);
    for (Position p : ends(plan)) {
      double inside = field.signed(p.xy());
      assertThat(inside)
          .as("%s at %s", name, p)
          .isGreaterThanOrEqualTo(FLAT.radiusMm() - Tolerances.DEFAULT.totalMm());
    }
  }

  /** The end of each move. */
  private static List<Position> ends(Plan plan) {
    List<Position> positions = new ArrayList<>();
    for (Cut.Move move : RecessTest.moves(plan.cuts())) {
      positions.add(move.path().to());
    }
    return positions;
  }

  private static List<String> cutouts(Map<String, byte[]> icons) {
    List<String> refused = new ArrayList<>();
    for (Map.Entry<String, byte[]> icon : icons.entrySet()) {
      String name = icon.getKey();
      Region largest = artwork(name, icon.getValue()).filled(0.002).largestPart();
      Bounds b = largest.bounds();
      Region part = largest.transformed(Affine.translation(-b.minX(), -b.minY()));
      Path outline = Path.polyline(part.rings().get(0).points(), true);
      Work cutout =
          new Work.Cutout(
              FLAT, Optional.of(new Tabs(4, 4, 2)), Work.Milling.CONVENTIONAL, Bench.WHERE);
      Design design = new Design(new Panel("icon", outline), List.of(), List.of(), List.of(cutout));
      try {
        checkCutout(name, outline, Planner.plan(design, setup(), Tolerances.DEFAULT));
      } catch (BadInputException e) {
        assertThat(e).as(name).hasMessageContaining("PLAN-0");
        refused.add(name + ": " + e.getMessage());
      }
    }
    return refused;
  }

  private static void checkCutout(String name, Path outline, Plan plan) {
    List<Point> ring = outline.segments().stream().map(s -> s.start()).toList();
    double deepest = 0;
    for (Position p : ends(plan)) {
      assertThat(BruteForce.distance(ring, p.xy()))
          .as("%s at %s", name, p)
          .isBetween(FLAT.radiusMm() - 0.012, FLAT.radiusMm() + 0.012);
      deepest = Math.min(deepest, p.z());
    }
    assertThat(deepest).as(name).isEqualTo(-6.5);
  }

  /** Distances to a region's boundary, by visiting every edge. */
  private static final class DistanceField {
    private final List<double[]> edges = new ArrayList<>();
    private final Region.Locator locator;

    DistanceField(Region area) {
      this.locator = area.locator();
      for (Ring ring : area.rings()) {
        List<Point> p = ring.points();
        for (int i = 0; i < p.size(); i++) {
          Point a = p.get(i);
          Point b = p.get((i + 1) % p.size());
          edges.add(new double[] {a.x(), a.y(), b.x() - a.x(), b.y() - a.y()});
        }
      }
    }

    /** The distance, negative outside. */
    double signed(Point p) {
      double best = Double.POSITIVE_INFINITY;
      for (double[] e : edges) {
        double x = p.x() - e[0];
        double y = p.y() - e[1];
        double square = e[2] * e[2] + e[3] * e[3];
        double t = square == 0 ? 0 : Math.max(0, Math.min(1, (x * e[2] + y * e[3]) / square));
        double dx = x - t * e[2];
        double dy = y - t * e[3];
        best = Math.min(best, dx * dx + dy * dy);
      }
      double distance = Math.sqrt(best);
      return locator.contains(p) ? distance : -distance;
    }

    /** Middles of cells all of which a disc of the radius inside the region can cover. */
    List<Point> reachable(double radius) {
      int n = (int) (76 / CELL_MM);
      boolean[] centre = new boolean[n * n];
      for (int i = 0; i < n * n; i++) {
        centre[i] = signed(middle(i, n)) >= radius;
      }
      int reach = (int) Math.floor(radius / CELL_MM) - 1;
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < n * n; i++) {
        if (hasCentreNear(centre, i % n, i / n, n, reach)) {
          points.add(middle(i, n));
        }
      }
      return points;
    }

    private static boolean hasCentreNear(boolean[] centre, int x, int y, int n, int reach) {
      for (int dy = -reach; dy <= reach; dy++) {
        for (int dx = -reach; dx <= reach; dx++) {
          int at = (y + dy) * n + x + dx;
          boolean inGrid = x + dx >= 0 && x + dx < n && y + dy >= 0 && y + dy < n;
          if (inGrid && dx * dx + dy * dy <= reach * reach && centre[at]) {
            return true;
          }
        }
      }
      return false;
    }

    private static Point middle(int i, int n) {
      int row = i / n;
      return new Point((i % n + 0.5) * CELL_MM, (row + 0.5) * CELL_MM);
    }
  }
}
