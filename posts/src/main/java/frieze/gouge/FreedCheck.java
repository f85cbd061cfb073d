package frieze.gouge;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.design.Intent;
import frieze.design.Work;
import frieze.field.StockField;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks along the middle of the slot round a part: each stretch that still stands must be short
 * enough for a tab.
 */
final class FreedCheck {
  private static final double STEP_MM = 0.25;

  /** The slot's middle may be this much nearer to the part than the tool's radius. */
  private static final double SLACK_MM = 0.02;

  private final Wish wish;
  private final StockField field;
  private final double longestTab;

  FreedCheck(Wish wish, StockField field, double longestTabMm) {
    this.wish = wish;
    this.field = field;
    this.longestTab = longestTabMm;
  }

  /** Finds the stretches; none for intents that are not cut through round a part. */
  List<Discrepancy> run() {
    List<Discrepancy> found = new ArrayList<>();
    if (wish.intent() instanceof Intent.Through through && through.skinMm() == 0) {
      Edges edges = wish.edges();
      int first = 0;
      for (int e = 0; e < edges.count(); e++) {
        boolean last = e + 1 == edges.count() || !edges.end(e).equals(edges.start(e + 1));
        if (last) {
          ring(through, first, e + 1, found);
          first = e + 1;
        }
      }
    }
    return found;
  }

  /**
   * A place in the middle of the slot.
   *
   * @param lengthMm the length of outline that it stands for
   */
  private record Spot(Point place, double lengthMm, boolean stands) {}

  private void ring(Intent.Through through, int first, int end, List<Discrepancy> found) {
    List<Spot> spots = new ArrayList<>();
    for (int e = first; e < end; e++) {
      double length = wish.edges().length(e);
      int steps = (int) Math.ceil(length / STEP_MM);
      for (int i = 0; i < steps; i++) {
        Point middle = middle(through, e, (i + 0.5) / steps);
        double height = field.heightAtMm(middle.x(), middle.y());
        if (height != Double.NEGATIVE_INFINITY && standsFree(through, middle)) {
          spots.add(new Spot(middle, length / steps, height > -field.thicknessMm()));
        }
      }
    }
    stretches(through, spots, found);
  }

  private Point middle(Intent.Through through, int edge, double along) {
    Point start = wish.edges().start(edge);
    Point end = wish.edges().end(edge);
    Point direction = end.minus(start);
    Point right = new Point(direction.y(), -direction.x()).times(1 / direction.norm());
    return start.towards(end, along).plus(right.times(aside(through)));
  }

  /** How far the slot's middle lies to the right of the outline, which is outside. */
  private double aside(Intent.Through through) {
    double radius = through.tool().radiusMm() + Math.abs(wish.wallAtMm());
    return switch (through.side()) {
      case OUTSIDE -> radius;
      case INSIDE -> -radius;
      case ON_LINE -> 0;
    };
  }

  private boolean standsFree(Intent.Through through, Point middle) {
    if (through.side() == Work.Side.ON_LINE) {
      return true;
    }
    double room = through.tool().radiusMm() + Math.abs(wish.wallAtMm()) - SLACK_MM;
    return wish.inside().contains(middle) == (through.side() == Work.Side.INSIDE)
        && wish.edges().near(Bounds.of(middle), room).distance(middle.x(), middle.y()) >= room;
  }

  /** Joins neighbouring places that stand, the last ones to the first. */
  private void stretches(Intent.Through through, List<Spot> spots, List<Discrepancy> found) {
    int n = spots.size();
    int from = 0;
    while (from < n && spots.get(from).stands()) {
      from++;
    }
    if (from == n) {
      report(through, spots, found);
      return;
    }
    List<Spot> run = new ArrayList<>();
    for (int k = 0; k <= n; k++) {
      Spot spot = spots.get((from + k) % n);
      if (spot.stands()) {
        run.add(spot);
      } else {
        report(through, run, found);
        run.clear();
      }
    }
  }

  private void report(Intent.Through through, List<Spot> run, List<Discrepancy> found) {
    double length = run.stream().mapToDouble(Spot::lengthMm).sum();
    if (length > longestTab) {
      found.add(
          new Discrepancy(
              Discrepancy.Kind.NOT_FREED,
              through.name(),
              run.get(run.size() / 2).place(),
              length,
              length * through.tool().diameterMm(),
              0));
    }
  }
}
