package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * Several motifs that take turns in one pattern, each by the middle of its bounds.
 *
 * @param motifs their names
 * @param hulls of their drawings, in the same order
 */
public record Alternation(List<String> motifs, List<Hull> hulls) {
  public Alternation {
    motifs = List.copyOf(motifs);
    hulls = List.copyOf(hulls);
    if (motifs.isEmpty() || motifs.size() != hulls.size()) {
      throw new IllegalArgumentException(
          "motifs and hulls must be as many, and one at least, but were "
              + (motifs.size() + ", " + hulls.size()));
    }
  }

  /** What a pattern needs room for: all of them on each other. */
  public Hull together() {
    if (hulls.size() == 1) {
      return hulls.get(0);
    }
    List<Point> all = new ArrayList<>();
    for (Hull hull : hulls) {
      all.addAll(hull.transformed(toMiddle(hull)).points());
    }
    return Hull.of(all);
  }

  /**
   * Deals the motifs out over the placements of {@link #together}, by their numbers.
   *
   * @param pattern tells how many placements in a row are to be alike
   */
  public List<Placement> dealt(List<Placement> placements, Pattern pattern) {
    if (hulls.size() == 1) {
      return placements;
    }
    List<Placement> result = new ArrayList<>();
    for (Placement p : placements) {
      int turn = (p.number() - 1) / pattern.alike() % motifs.size();
      Affine map = toMiddle(hulls.get(turn)).then(p.map().affine());
      result.add(p.dealt(motifs.get(turn), map));
    }
    return result;
  }

  private static Affine toMiddle(Hull hull) {
    Point c = hull.bounds().centre();
    return Affine.translation(-c.x(), -c.y());
  }
}
