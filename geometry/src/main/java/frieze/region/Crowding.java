package frieze.region;

import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.index.chain.MonotoneChain;
import org.locationtech.jts.index.chain.MonotoneChainBuilder;
import org.locationtech.jts.index.chain.MonotoneChainOverlapAction;
import org.locationtech.jts.index.hprtree.HPRtree;

/**
 * Tells whether polylines cross themselves and each other too often, before work is begun that
 * takes as long as that: a small drawing may cross itself a million times.
 *
 * <p><i>Approximation:</i> crossings are told apart in plain double precision.
 *
 * <p><i>Cost:</i> O(n log n) for the points, and that of the pairs that are compared, both bounded.
 */
public final class Crowding {
  private final Limits limits;
  private final MonotoneChainOverlapAction counting =
      new MonotoneChainOverlapAction() {
        @Override
        public void overlap(MonotoneChain one, int start1, MonotoneChain other, int start2) {
          count(points(one), start1, points(other), start2);
        }
      };
  private long pairs;
  private long crossings;

  /**
   * Where counting stops.
   *
   * @param crossings places where two stretches cross
   * @param pairs of stretches, or of runs of them, whose upright boxes touch
   */
  public record Limits(long crossings, long pairs) {}

  private Crowding(Limits limits) {
    this.limits = limits;
  }

  /** Whether there are more crossings, or more pairs to look at, than the limits. */
  public static boolean isBeyond(Limits limits, List<List<Point>> lines) {
    Crowding crowding = new Crowding(limits);
    crowding.compare(lines);
    return crowding.isFull();
  }

  private boolean isFull() {
    return crossings > limits.crossings() || pairs > limits.pairs();
  }

  private void compare(List<List<Point>> lines) {
    List<MonotoneChain> chains = new ArrayList<>();
    HPRtree index = new HPRtree();
    for (List<Point> line : lines) {
      Coordinate[] points =
          line.stream().map(p -> new Coordinate(p.x(), p.y())).toArray(Coordinate[]::new);
      for (Object chain : MonotoneChainBuilder.getChains(points, points)) {
        chains.add((MonotoneChain) chain);
      }
    }
    for (int i = 0; i < chains.size(); i++) {
      chains.get(i).setId(i);
      index.insert(chains.get(i).getEnvelope(), chains.get(i));
    }
    for (MonotoneChain chain : chains) {
      index.query(chain.getEnvelope(), other -> compare(chain, (MonotoneChain) other));
      if (isFull()) {
        return;
      }
    }
  }

  private void compare(MonotoneChain chain, MonotoneChain other) {
    if (other.getId() > chain.getId() && !isFull()) {
      pairs++;
      chain.computeOverlaps(other, counting);
    }
  }

  /** All points of the line that a chain is a run of. */
  private static Coordinate[] points(MonotoneChain chain) {
    return (Coordinate[]) chain.getContext();
  }

  private void count(Coordinate[] one, int i, Coordinate[] other, int k) {
    pairs++;
    Coordinate a = one[i];
    Coordinate b = one[i + 1];
    Coordinate c = other[k];
    Coordinate d = other[k + 1];
    if (side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0) {
      crossings++;
    }
  }

  private static double side(Coordinate a, Coordinate b, Coordinate p) {
    return Math.signum((b.x - a.x) * (p.y - a.y) - (b.y - a.y) * (p.x - a.x));
  }
}
