package frieze.plan.cutout;

import frieze.curve.Arc;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.plan.cut.Track;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Spreads tabs along a closed track: evenly, away from corners, on straight pieces if there are
 * enough, or else on gentle curves, or else wherever they fit.
 */
public final class TabPlan {
  /** How many starts of the even spacing are tried. */
  private static final int PHASES = 96;

  /** The tightest curves on which tabs may stand, in lengths of a tab's zone, best first. */
  private static final double[] CURVES = {Double.POSITIVE_INFINITY, 4, 1.5};

  /** A tab may be moved from its even place by this part of the spacing before curves are tried. */
  private static final double EVEN_ENOUGH = 0.4;

  /** At how many places of a tab's length of track it is asked whether something holds it. */
  private static final int HELD_SAMPLES = 8;

  /** An edge that makes a smaller angle with the grain runs along it. */
  private static final double ALONG_RAD = StrictMath.toRadians(30);

  /** What all tabs along the grain cost, in spacings: a few per cent for each of several tabs. */
  private static final double GRAIN_COST = 0.3;

  /** What room to the nearest corner is worth. */
  private static final double ROOM_WORTH = 0.1;

  private final Track track;
  private final int count;
  private final double zoneMm;
  private final double marginMm;
  private final Ground ground;

  private TabPlan(Track track, int count, double zoneMm, double marginMm, Ground ground) {
    this.ground = ground;
    this.track = track;
    this.count = count;
    this.zoneMm = zoneMm;
    this.marginMm = marginMm;
  }

  /** A stretch of the track, by lengths from its start. */
  public record Zone(double fromMm, double toMm) {
    double lengthMm() {
      return toMm - fromMm;
    }

    /** Less at both ends. */
    Zone shorter(double byMm) {
      return new Zone(fromMm + byMm, toMm - byMm);
    }
  }

  /**
   * What tabs stand on.
   *
   * @param grain whether the wood has a grain, along X: tabs on edges along it tear splinters off
   *     when they are cut, so other edges are taken where that keeps the spacing even
   * @param held whether there is something for a tab to hold on to beside a point of the track
   */
  public record Ground(boolean grain, Predicate<Point> held) {}

  /**
   * One spacing that was tried.
   *
   * @param worstMm the farthest that a tab was moved from its even place
   * @param cost how far from even it is, less a little for room to the corners, and more for tabs
   *     on edges along the grain; in spacings
   */
  private record Spread(List<Double> middles, double worstMm, double cost) {}

  /**
   * Places tabs.
   *
   * @param zoneMm the length of track that each takes
   * @param marginMm how far each stays from corners and tight curves
   * @param ground what the tabs stand on
   * @return the zones in order; empty if the track is too short for them
   */
  public static Optional<List<Zone>> place(
      Track track, int count, double zoneMm, double marginMm, Ground ground) {
    TabPlan plan = new TabPlan(track, count, zoneMm, marginMm, ground);
    Optional<Spread> best = Optional.empty();
    for (double curve : CURVES) {
      Optional<Spread> spread = plan.best(plan.calm(curve * zoneMm));
      if (spread.isPresent() && (best.isEmpty() || spread.get().worstMm() < best.get().worstMm())) {
        best = spread;
      }
      if (best.isPresent() && best.get().worstMm() < EVEN_ENOUGH * track.lengthMm() / count) {
        break;
      }
    }
    if (best.isEmpty()) {
      best = plan.best(List.of(new Zone(zoneMm / 2, track.lengthMm() - zoneMm / 2)));
    }
    return best.map(
        s -> s.middles().stream().map(m -> new Zone(m - zoneMm / 2, m + zoneMm / 2)).toList());
  }

  /**
   * Where middles of tabs may stand so that the zones and margins meet no corner or tight curve.
   */
  private List<Zone> calm(double radiusMm) {
    List<Segment> segments = track.path().segments();
    List<Zone> allowed = new ArrayList<>();
    double from = 0;
    for (int i = 0; i < segments.size(); i++) {
      double to = track.joints().get(i);
      boolean last = i == segments.size() - 1;
      if (!isCalm(segments.get(i), radiusMm)) {
        from = to;
      } else if (last
          || !isCalm(segments.get(i + 1), radiusMm)
          || Track.isCorner(segments.get(i).tangentAt(1), segments.get(i + 1).tangentAt(0))) {
        double keep = zoneMm / 2 + marginMm;
        if (to - from >= 2 * keep) {
          allowed.add(new Zone(from + keep, to - keep));
        }
        from = to;
      }
    }
    return allowed;
  }

  private static boolean isCalm(Segment segment, double radiusMm) {
    return !(segment instanceof Arc arc) || arc.radius() >= radiusMm;
  }

  /** The parts of stretches for middles of tabs where both ends and the middle are held. */
  private List<Zone> held(List<Zone> allowed) {
    List<Zone> held = new ArrayList<>();
    for (Zone zone : allowed) {
      int steps = (int) Math.max(1, Math.ceil(HELD_SAMPLES * zone.lengthMm() / zoneMm));
      double from = Double.NaN;
      double to = Double.NaN;
      for (int i = 0; i <= steps; i++) {
        double middle = i == steps ? zone.toMm() : zone.fromMm() + zone.lengthMm() * i / steps;
        if (isHeld(middle)) {
          from = Double.isNaN(from) ? middle : from;
          to = middle;
        } else if (!Double.isNaN(from)) {
          held.add(new Zone(from, to));
          from = Double.NaN;
        }
      }
      if (!Double.isNaN(from)) {
        held.add(new Zone(from, to));
      }
    }
    return held;
  }

  private boolean isHeld(double middle) {
    return ground.held().test(track.pointAt(middle - zoneMm / 2))
        && ground.held().test(track.pointAt(middle))
        && ground.held().test(track.pointAt(middle + zoneMm / 2));
  }

  private Optional<Spread> best(List<Zone> stretches) {
    List<Zone> allowed = held(stretches);
    Optional<Spread> best = Optional.empty();
    for (int phase = 0; phase < PHASES && !allowed.isEmpty(); phase++) {
      Spread spread = spread(allowed, (double) phase / PHASES);
      if ((best.isEmpty() || spread.cost() < best.get().cost()) && areApart(spread.middles())) {
        best = Optional.of(spread);
      }
    }
    return best;
  }

  private Spread spread(List<Zone> allowed, double phase) {
    double pitch = track.lengthMm() / count;
    List<Double> middles = new ArrayList<>();
    double worst = 0;
    for (int i = 0; i < count; i++) {
      double wanted = pitch * (i + phase);
      double got = nearest(allowed, wanted);
      worst = Math.max(worst, Math.abs(got - wanted));
      middles.add(got);
    }
    double room = Double.POSITIVE_INFINITY;
    int along = 0;
    for (double middle : middles) {
      room = Math.min(room, room(allowed, middle));
      along += isAlongGrain(middle) ? 1 : 0;
    }
    double cost =
        worst / pitch + GRAIN_COST * along / count - ROOM_WORTH * Math.min(room, pitch / 4) / pitch;
    return new Spread(middles, worst, cost);
  }

  /** How far a place lies from the ends of the stretch that it is on. */
  private static double room(List<Zone> allowed, double middle) {
    double room = 0;
    for (Zone zone : allowed) {
      room = Math.max(room, Math.min(middle - zone.fromMm(), zone.toMm() - middle));
    }
    return room;
  }

  private boolean isAlongGrain(double middle) {
    return ground.grain()
        && isAlongGrain(track, new Zone(middle - zoneMm / 2, middle + zoneMm / 2));
  }

  /** Whether a stretch of a closed track runs along the grain, which is along X. */
  static boolean isAlongGrain(Track track, Zone zone) {
    Point way = track.pointAt(zone.toMm()).minus(track.pointAt(zone.fromMm()));
    return Math.abs(way.y()) < Math.abs(way.x()) * StrictMath.tan(ALONG_RAD);
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

  /** Whether at least a tab's length of through cut lies between any two. */
  private boolean areApart(List<Double> middles) {
    for (int i = 0; i < middles.size(); i++) {
      double next = i + 1 < count ? middles.get(i + 1) : middles.get(0) + track.lengthMm();
      if (next - middles.get(i) < 2 * zoneMm) {
        return false;
      }
    }
    return true;
  }
}
