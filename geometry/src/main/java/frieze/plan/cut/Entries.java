package frieze.plan.cut;

import frieze.curve.Point;
import frieze.curve.Segment;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a closed track may be entered: in the middles of its smooth stretches, which are away from
 * its corners, and on long ones also between.
 */
public final class Entries {
  private static final int MOST = 12;

  /** A smooth stretch is entered once for each so many diameters of the tool. */
  private static final double DIAMETERS_APART = 8;

  /** Places on one smooth stretch. */
  private static final int MOST_EACH = 4;

  private Entries() {}

  /**
   * The places, as lengths along the track.
   *
   * @param diameterMm the tool's; a stretch shorter than two of it is too near to corners
   * @return at most {@value #MOST}; the start alone if no stretch is long enough
   */
  public static List<Double> of(Track loop, double diameterMm) {
    List<Double> corners = corners(loop);
    List<Double> places = new ArrayList<>();
    if (corners.isEmpty()) {
      for (int i = 0; i < MOST_EACH; i++) {
        places.add(loop.lengthMm() * i / MOST_EACH);
      }
      return places;
    }
    for (int i = 0; i < corners.size() && places.size() < MOST; i++) {
      double from = corners.get(i);
      boolean last = i + 1 == corners.size();
      double to = last ? corners.get(0) + loop.lengthMm() : corners.get(i + 1);
      double length = to - from;
      int count = (int) Math.min(MOST_EACH, Math.max(1, length / (DIAMETERS_APART * diameterMm)));
      for (int k = 0; k < count && length >= 2 * diameterMm && places.size() < MOST; k++) {
        places.add((from + length * (k + 0.5) / count) % loop.lengthMm());
      }
    }
    return places.isEmpty() ? List.of(0.0) : places;
  }

  /** A few of the places, spread over all of them. */
  public static List<Double> few(Track loop, double diameterMm) {
    List<Double> all = of(loop, diameterMm);
    int count = Math.min(MOST_EACH, all.size());
    List<Double> few = new ArrayList<>();
    for (int k = 0; k < count; k++) {
      few.add(all.get(k * all.size() / count));
    }
    return few;
  }

  /** The lengths at which the track has corners. */
  private static List<Double> corners(Track loop) {
    List<Segment> pieces = loop.path().segments();
    List<Double> joints = loop.joints();
    List<Double> corners = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      Point in = pieces.get(i).tangentAt(1);
      Point out = pieces.get((i + 1) % pieces.size()).tangentAt(0);
      if (Track.isCorner(in, out)) {
        corners.add(joints.get(i));
      }
    }
    return corners;
  }
}
