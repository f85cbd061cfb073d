package frieze.torch;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * Which openings lie within islands of others, before bridges tie them.
 *
 * <p><i>Guarantees:</i> one opening is within another if, and only if, the outer edge of the other
 * goes round its pierce; so the order is that of a tree, however deep.
 */
final class Nests {
  /** Without any opening within another. */
  static final Nests NONE = new Nests(List.of());

  private final List<Region> surrounded = new ArrayList<>();

  /**
   * @param openings each in one piece, as drawn, of all copies
   */
  private Nests(List<Region> openings) {
    for (Region opening : openings) {
      for (Ring ring : opening.rings()) {
        if (!ring.hole()) {
          surrounded.add(Region.ofRing(ring.points()));
        }
      }
    }
  }

  /**
   * Looks at the openings of a panel and of its copies.
   *
   * @param shifts of each copy from the panel
   */
  static Nests of(Region openings, List<Point> shifts) {
    if (openings.parts().stream().noneMatch(o -> o.rings().size() > 1)) {
      return NONE;
    }
    List<Region> all = new ArrayList<>();
    for (Point shift : shifts) {
      all.addAll(openings.transformed(Affine.translation(shift.x(), shift.y())).parts());
    }
    return new Nests(all);
  }

  /** The openings whose outer edges go round a place. */
  BitSet around(Point place) {
    BitSet around = new BitSet();
    for (int i = 0; i < surrounded.size(); i++) {
      if (surrounded.get(i).bounds().contains(place) && surrounded.get(i).contains(place)) {
        around.set(i);
      }
    }
    return around;
  }

  /** Whether what lies within {@code inner} lies within {@code outer} too, and deeper. */
  static boolean isWithin(BitSet inner, BitSet outer) {
    if (outer.isEmpty() || inner.cardinality() <= outer.cardinality()) {
      return false;
    }
    BitSet shared = (BitSet) inner.clone();
    shared.and(outer);
    return shared.equals(outer);
  }
}
