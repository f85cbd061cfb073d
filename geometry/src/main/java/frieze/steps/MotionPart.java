package frieze.steps;

import frieze.motion.Motion;
import frieze.motion.Motions;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Parts of motions, cut where X passes a given place. */
final class MotionPart {
  /** Enough halvings for the last digit of a double. */
  private static final int HALVINGS = 60;

  /** Parts that are shorter than a nanometre are left out. */
  private static final double NOTHING_MM = 1e-6;

  private MotionPart() {}

  /** The parts of a motion, in order, each on one side of every place. */
  static List<Motion> split(Motion whole, List<Double> xMm) {
    TreeSet<Double> at = new TreeSet<>(List.of(0.0, 1.0));
    List<Double> turns = turns(whole);
    for (int i = 1; i < turns.size(); i++) {
      for (double x : xMm) {
        crossing(whole, turns.get(i - 1), turns.get(i), x, at);
      }
    }
    List<Motion> parts = new ArrayList<>();
    double from = at.first();
    for (double to : at.tailSet(from, false)) {
      if ((to - from) * whole.lengthMm() > NOTHING_MM || at.size() == 2) {
        parts.add(Motions.part(whole, from, to));
        from = to;
      }
    }
    return parts;
  }

  /** The fractions between which X only grows or only shrinks. */
  private static List<Double> turns(Motion whole) {
    List<Double> all = new ArrayList<>(List.of(0.0));
    if (whole instanceof Motion.Turn turn) {
      double start = turn.startAngleRad();
      double quarter = Math.PI / 2;
      double low = Math.min(start, start + turn.sweepRad());
      double high = Math.max(start, start + turn.sweepRad());
      for (double q = Math.ceil(low / quarter); q * quarter < high; q++) {
        double fraction = (q * quarter - start) / turn.sweepRad();
        if (fraction > 0 && fraction < 1) {
          all.add(fraction);
        }
      }
    }
    all.add(1.0);
    return all.stream().sorted().toList();
  }

  private static void crossing(Motion m, double from, double to, double x, Set<Double> at) {
    double sign = Math.signum(m.at(from).x() - x);
    if (sign * Math.signum(m.at(to).x() - x) >= 0) {
      return;
    }
    double low = from;
    double high = to;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (Math.signum(m.at(middle).x() - x) == sign) {
        low = middle;
      } else {
        high = middle;
      }
    }
    at.add((low + high) / 2);
  }
}
