package frieze.steps;

import frieze.motion.Box;
import frieze.plan.cut.Cut;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * How far the work of one name reaches along X.
 *
 * @param minMm of the material that it takes
 * @param maxMm of the material that it takes
 */
record Reach(String name, double minMm, double maxMm) {
  /** The reach of each piece of work, such as {@code recess ginkgo 3}; leftmost first. */
  static List<Reach> of(List<Cut> cuts) {
    Map<String, Reach> byName = new TreeMap<>();
    for (Cut cut : cuts) {
      String name = cut.origin().replaceAll(",.*", "");
      double grow = cut.tool().radiusMm();
      for (Cut.Move move : cut.moves()) {
        Box box = move.path().box();
        byName.merge(name, new Reach(name, box.minX() - grow, box.maxX() + grow), Reach::with);
      }
    }
    List<Reach> all = new ArrayList<>(byName.values());
    all.sort(Comparator.comparingDouble(Reach::minMm).thenComparing(Reach::name));
    return all;
  }

  private Reach with(Reach other) {
    return new Reach(name, Math.min(minMm, other.minMm), Math.max(maxMm, other.maxMm));
  }

  double lengthMm() {
    return maxMm - minMm;
  }

  boolean crosses(double xMm) {
    return minMm < xMm && xMm < maxMm;
  }
}
