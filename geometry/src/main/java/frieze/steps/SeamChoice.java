package frieze.steps;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Chooses where a seam shows least: where it goes through the fewest pieces of work, and there in
 * the middle of the widest gap between them.
 */
final class SeamChoice {
  private final List<Reach> work;

  SeamChoice(List<Reach> work) {
    this.work = work;
  }

  /**
   * Chooses the seam.
   *
   * @param fromMm the first place where it may lie
   * @param toMm the last
   */
  Seam between(double fromMm, double toMm) {
    TreeSet<Double> ends = new TreeSet<>(List.of(fromMm, toMm));
    for (Reach reach : work) {
      ends.add(Math.max(fromMm, Math.min(toMm, reach.minMm())));
      ends.add(Math.max(fromMm, Math.min(toMm, reach.maxMm())));
    }
    double middle = (fromMm + toMm) / 2;
    double best = middle;
    int fewest = Integer.MAX_VALUE;
    double widest = 0;
    double before = ends.first();
    for (double end : ends.tailSet(before, false)) {
      double at = (before + end) / 2;
      int crossed = crossed(at).size();
      double width = end - before;
      boolean wider = width > widest + SAME_MM;
      boolean nearer =
          width > widest - SAME_MM && Math.abs(at - middle) < Math.abs(best - middle) - SAME_MM;
      if (crossed < fewest || (crossed == fewest && (wider || nearer))) {
        best = at;
        fewest = crossed;
        widest = width;
      }
      before = end;
    }
    return seam(best, toMm - fromMm);
  }

  /** Two gaps are equally wide up to here. */
  private static final double SAME_MM = 0.01;

  private List<Reach> crossed(double xMm) {
    return work.stream().filter(r -> r.crosses(xMm)).toList();
  }

  private Seam seam(double xMm, double roomMm) {
    List<String> all = new ArrayList<>();
    List<String> motifs = new ArrayList<>();
    for (Reach reach : crossed(xMm)) {
      all.add(reach.name());
      if (reach.lengthMm() <= roomMm) {
        motifs.add(reach.name());
      }
    }
    return new Seam(xMm, all.stream().sorted().toList(), motifs.stream().sorted().toList());
  }
}
