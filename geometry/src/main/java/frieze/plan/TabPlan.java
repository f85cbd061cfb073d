package frieze.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Spreads tabs along a closed track: evenly, on straight pieces, away from corners. */
final class TabPlan {
  /** How many starts of the even spacing are tried. */
  private static final int PHASES = 96;

  private TabPlan() {}

  /** A stretch of the track, by lengths from its start. */
  record Zone(double fromMm, double toMm) {
    double lengthMm() {
      return toMm - fromMm;
    }
  }

  /**
   * Places tabs.
   *
   * @param zoneMm the length of track that each takes
   * @param marginMm how far each stays from the ends of its straight piece
   * @return the zones in order; empty if they do not fit on straight pieces
   */
  static Optional<List<Zone>> place(Track track, int count, double zoneMm, double marginMm) {
    List<Zone> allowed = new ArrayList<>();
    double from = 0;
    for (int i = 0; i < track.joints().size(); i++) {
      double to = track.joints().get(i);
      double keep = zoneMm / 2 + marginMm;
      if (track.path().segments().get(i) instanceof frieze.curve.Line && to - from >= 2 * keep) {
        allowed.add(new Zone(from + keep, to - keep));
      }
      from = to;
    }
    if (allowed.isEmpty()) {
      return Optional.empty();
    }
    return best(track.lengthMm(), allowed, count, zoneMm);
  }

  private static Optional<List<Zone>> best(
      double lengthMm, List<Zone> allowed, int count, double zoneMm) {
    Optional<List<Zone>> best = Optional.empty();
    double least = Double.POSITIVE_INFINITY;
    double pitch = lengthMm / count;
    for (int phase = 0; phase < PHASES; phase++) {
      List<Double> middles = new ArrayList<>();
      double worst = 0;
      for (int i = 0; i < count; i++) {
        double wanted = pitch * (i + (double) phase / PHASES);
        double got = nearest(allowed, wanted);
        worst = Math.max(worst, Math.abs(got - wanted));
        middles.add(got);
      }
      if (worst < least && areApart(middles, lengthMm, 2 * zoneMm)) {
        least = worst;
        best =
            Optional.of(
                middles.stream().map(m -> new Zone(m - zoneMm / 2, m + zoneMm / 2)).toList());
      }
    }
    return best;
  }

  private static double nearest(List<Zone> allowed, double wanted) {
    double best = Double.NaN;
    for (Zone zone : allowed) {
      double here = Math.max(zone.fromMm(), Math.min(zone.toMm(), wanted));
      if (Double.isNaN(best) || Math.abs(here - wanted) < Math.abs(best - wanted)) {
        best = here;
      }
    }
    return best;
  }

  private static boolean areApart(List<Double> middles, double lengthMm, double leastMm) {
    for (int i = 0; i < middles.size(); i++) {
      double next = i + 1 < middles.size() ? middles.get(i + 1) : middles.get(0) + lengthMm;
      if (next - middles.get(i) < leastMm) {
        return false;
      }
    }
    return true;
  }
}
