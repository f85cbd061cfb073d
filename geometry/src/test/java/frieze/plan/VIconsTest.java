package frieze.plan;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.fixtures.OpenIcons;
import frieze.layout.Panel;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.region.Region;
import frieze.region.Ring;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Carves drawings of the open icon sets with V-bits, and compares with the drawn shape by brute
 * force: how much of what a pointed bit can reach is as deep as its distance to the outline asks
 * for.
 */
class VIconsTest {
  private static final double SIZE_MM = 60;
  private static final double CELL_MM = 0.4;
  private static final double DEEPEST_MM = 3;
  private static final double RIDGE_MM = 0.1;

  /** Beyond the ridges: half a step along slanting moves, and the tolerances. */
  private static final double CLOSE_MM = 0.05;

  private static Tool vee(double angleDeg) {
    ToolShape shape = new ToolShape.Vee(12, StrictMath.toRadians(angleDeg), 0);
    OptionalDouble none = OptionalDouble.empty();
    return new Tool("vee " + angleDeg, 7, shape, 2, 12, 20, true, none, none, 20_000, 2_000, 400);
  }

  @Test
  @Tag("corpus")
  void three_hundred_icons_are_carved_to_95_per_cent_of_what_v_bits_of_two_angles_can_reach() {
    for (double angleDeg : new double[] {60, 90}) {
      Tally tally = carve(OpenIcons.sample(Integer.getInteger("frieze.icons", 300)), vee(angleDeg));
      System.out.println(angleDeg + " degrees: " + tally.report());
      int asked = Integer.getInteger("frieze.icons", 300);
      assertThat(tally.whole).as(tally::report).isGreaterThanOrEqualTo(asked * 5 / 6);
      assertThat(tally.whole + tally.rest.size()).as(tally::report).isEqualTo(asked);
    }
  }

  /** Strokes just as wide as the walls of the deepest groove: their floor is as thin as nothing. */
  @Test
  void strokes_as_wide_as_the_deepest_groove_are_carved_along_their_middle() {
    Map<String, byte[]> icons = new TreeMap<>(OpenIcons.drawings());
    icons.keySet().removeIf(name -> !name.endsWith("/solid/code-commit.svg"));
    Tally tally = carve(icons, vee(90));
    assertThat(tally.whole).as(tally::report).isEqualTo(1);
    assertThat(tally.least).as(tally::report).isGreaterThan(0.99);
  }

  /** How many were carved, and the rest by name. */
  private static final class Tally {
    int whole;
    double least = 1;
    final List<String> rest = new ArrayList<>();

    void count(String name, int wanted, int missed) {
      double share = wanted == 0 ? 1 : 1 - (double) missed / wanted;
      least = Math.min(least, share);
      if (share >= 0.95) {
        whole++;
      } else {
        rest.add(name + ": " + missed + " of " + wanted + " cells are not deep enough");
      }
    }

    String report() {
      return whole
          + " carved, the least of all "
          + least
          + "; the rest:\n"
          + String.join("\n", rest);
    }
  }

  private static Tally carve(Map<String, byte[]> icons, Tool bit) {
    Tally tally = new Tally();
    icons.forEach(
        (name, content) -> {
          try {
            Artwork art = new SvgReader().read(name, content);
            Bounds b = art.bounds();
            Artwork sized =
                b.width() > b.height() ? art.withWidth(SIZE_MM) : art.withHeight(SIZE_MM);
            Affine at = Affine.translation(8, 8);
            Plan plan = plan(sized, at, bit);
            count(name, sized.transformed(at).filled(0.002), plan, bit, tally);
          } catch (BadInputException e) {
            tally.rest.add(name + ": " + e.getMessage());
          }
        });
    return tally;
  }

  private static Plan plan(Artwork art, Affine at, Tool bit) {
    Work work =
        new Work.VGroove(
            Bench.recess("icon", Bench.FLAT_3, 1).on(),
            bit,
            OptionalDouble.of(DEEPEST_MM),
            List.of(Bench.FLAT_3),
            RIDGE_MM,
            0.2,
            Work.Milling.CLIMB,
            Bench.WHERE);
    Stock stock =
        new Stock(new Material("pine", Material.Kind.SOFTWOOD), 76, 76, List.of(6.0), false);
    Setup setup =
        new Setup(
            Bench.machine(false), stock, Zero.LEFT_FRONT_TOP, 0, 0, 5, 0.5, List.of(), List.of());
    Design design =
        new Design(
            new Panel("icon", Bench.rectangle(0, 0, 76, 76)),
            List.of(new Motif("icon", art)),
            List.of(Bench.at("icon", 1, at)),
            List.of(work));
    return Planner.plan(design, setup, Tolerances.DEFAULT);
  }

  /** A pointed bit reaches all of an area, at the depth of its distance to the outline. */
  private static void count(String name, Region area, Plan plan, Tool bit, Tally tally) {
    double slope = 1 / StrictMath.tan(((ToolShape.Vee) bit.shape()).angleRad() / 2);
    int n = (int) Math.round(76 / CELL_MM);
    double[] depth = depths(plan, n);
    List<double[]> edges = edges(area);
    Region.Locator inside = area.locator();
    int wanted = 0;
    int missed = 0;
    for (int i = 0; i < n * n; i++) {
      Point p = new Point((i % n + 0.5) * CELL_MM, (i / n + 0.5) * CELL_MM);
      if (inside.contains(p)) {
        wanted++;
        double asked = Math.min(DEEPEST_MM - RIDGE_MM, slope * distance(edges, p));
        missed += depth[i] < asked - CLOSE_MM ? 1 : 0;
      }
    }
    tally.count(name, wanted, missed);
  }

  /** The depth in each cell: the lowest of the tools' surfaces at places close together. */
  private static double[] depths(Plan plan, int n) {
    double[] depth = new double[n * n];
    for (Cut cut : plan.cuts()) {
      for (Cut.Move move : cut.moves()) {
        Motion path = move.path();
        int steps = (int) Math.max(1, Math.ceil(path.lengthMm() / (CELL_MM / 4)));
        for (int k = 0; k <= steps; k++) {
          stamp(depth, n, path.at((double) k / steps), cut.tool().shape());
        }
      }
    }
    return depth;
  }

  private static void stamp(double[] depth, int n, Position tip, ToolShape shape) {
    double radius = shape.diameterMm() / 2;
    if (tip.z() >= 0) {
      return;
    }
    double reach = Math.min(radius, radiusAt(shape, -tip.z(), radius));
    int low = (int) Math.max(0, Math.floor((tip.y() - reach) / CELL_MM));
    int high = (int) Math.min(n - 1, Math.floor((tip.y() + reach) / CELL_MM));
    int left = (int) Math.max(0, Math.floor((tip.x() - reach) / CELL_MM));
    int right = (int) Math.min(n - 1, Math.floor((tip.x() + reach) / CELL_MM));
    for (int j = low; j <= high; j++) {
      for (int i = left; i <= right; i++) {
        double far = Math.hypot((i + 0.5) * CELL_MM - tip.x(), (j + 0.5) * CELL_MM - tip.y());
        if (far <= radius) {
          depth[j * n + i] = Math.max(depth[j * n + i], -tip.z() - shape.heightAtMm(far));
        }
      }
    }
  }

  private static double radiusAt(ToolShape shape, double heightMm, double most) {
    return shape instanceof ToolShape.Vee vee
        ? heightMm * StrictMath.tan(vee.angleRad() / 2) + vee.tipMm() / 2
        : most;
  }

  private static List<double[]> edges(Region area) {
    List<double[]> edges = new ArrayList<>();
    for (Ring ring : area.rings()) {
      List<Point> p = ring.points();
      for (int i = 0; i < p.size(); i++) {
        Point a = p.get(i);
        Point b = p.get((i + 1) % p.size());
        edges.add(new double[] {a.x(), a.y(), b.x() - a.x(), b.y() - a.y()});
      }
    }
    return edges;
  }

  private static double distance(List<double[]> edges, Point p) {
    double best = Double.POSITIVE_INFINITY;
    for (double[] e : edges) {
      double x = p.x() - e[0];
      double y = p.y() - e[1];
      double t = Math.max(0, Math.min(1, (x * e[2] + y * e[3]) / (e[2] * e[2] + e[3] * e[3])));
      double dx = x - t * e[2];
      double dy = y - t * e[3];
      best = Math.min(best, dx * dx + dy * dy);
    }
    return Math.sqrt(best);
  }
}
