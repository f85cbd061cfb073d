package frieze.design;

import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/**
 * How deep a groove is along its line: even slopes from place to place.
 *
 * @param atMm lengths from the line's start, rising, from 0 to the whole
 * @param depthsMm the depth at each
 */
public record DepthAlong(List<Double> atMm, List<Double> depthsMm) {
  public DepthAlong {
    atMm = List.copyOf(atMm);
    depthsMm = List.copyOf(depthsMm);
    if (atMm.size() < 2 || atMm.size() != depthsMm.size()) {
      throw new IllegalArgumentException(
          "depths need two places or more, but were "
              + depthsMm.size()
              + " at "
              + atMm.size()
              + " places");
    }
  }

  /** The depths of a groove that runs out. */
  static DepthAlong fading(Fade fade, double lengthMm, double depthMm) {
    double over = fade.lengthOverMm(lengthMm);
    List<Double> at = new ArrayList<>(List.of(0.0));
    for (double bend :
        new double[] {Math.min(over, lengthMm - over), Math.max(over, lengthMm - over)}) {
      if (bend > at.get(at.size() - 1) && bend < lengthMm) {
        at.add(bend);
      }
    }
    at.add(lengthMm);
    return new DepthAlong(at, at.stream().map(a -> fade.depthMm(a, lengthMm, depthMm)).toList());
  }

  /**
   * The depths of a groove by width along a line that is drawn thick and thin; 0 where it is no
   * wider than the tip.
   *
   * @param drawnMm how wide it is drawn at even steps, at the size in which it is placed
   */
  public static DepthAlong byWidth(Work.Groove groove, List<Double> drawnMm, double lengthMm) {
    Tool tool = groove.tool();
    List<Double> depths = new ArrayList<>();
    for (double drawn : drawnMm) {
      double below = tool.shape().heightAtMm(Math.min(drawn / 2, tool.radiusMm()));
      depths.add(Math.min(groove.depthMm(), Math.max(0, below) + groove.proudMm()));
    }
    return even(depths, lengthMm);
  }

  /** Depths at even steps along a line. */
  private static DepthAlong even(List<Double> depthsMm, double lengthMm) {
    List<Double> at = new ArrayList<>();
    int steps = depthsMm.size() - 1;
    for (int i = 0; i <= steps; i++) {
      at.add(i == steps ? lengthMm : lengthMm * i / steps);
    }
    return new DepthAlong(at, depthsMm);
  }

  public double lengthMm() {
    return atMm.get(atMm.size() - 1);
  }

  /** The depth at a length from the start. */
  public double depthMm(double at) {
    int i = 1;
    while (i < atMm.size() - 1 && atMm.get(i) < at) {
      i++;
    }
    double from = atMm.get(i - 1);
    double part = Math.max(0, Math.min(1, (at - from) / (atMm.get(i) - from)));
    return depthsMm.get(i - 1) + part * (depthsMm.get(i) - depthsMm.get(i - 1));
  }

  public double mostMm() {
    return depthsMm.stream().mapToDouble(d -> d).max().orElseThrow();
  }

  /** From the other end. */
  public DepthAlong reversed() {
    List<Double> at = new ArrayList<>();
    List<Double> depths = new ArrayList<>();
    for (int i = atMm.size() - 1; i >= 0; i--) {
      at.add(lengthMm() - atMm.get(i));
      depths.add(depthsMm.get(i));
    }
    return new DepthAlong(at, depths);
  }

  /** Of a closed line, begun at one of the places. */
  public DepthAlong startingAt(int place) {
    List<Double> at = new ArrayList<>();
    List<Double> depths = new ArrayList<>();
    int last = atMm.size() - 1;
    for (int i = 0; i <= last; i++) {
      int k = place + i;
      boolean over = k > last;
      at.add((over ? atMm.get(k - last) + lengthMm() : atMm.get(k)) - atMm.get(place));
      depths.add(depthsMm.get(over ? k - last : k));
    }
    return new DepthAlong(at, depths);
  }
}
