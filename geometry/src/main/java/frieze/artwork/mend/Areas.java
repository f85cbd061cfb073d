package frieze.artwork.mend;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.ArcFitter;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Puts the outlines of areas in order: none crosses another, each has the area on its left, none
 * has area on both sides.
 *
 * <p>Pieces whose line has a width are left alone, since all of the line shows.
 *
 * <p><i>Guarantees:</i> the area stays what the fill rule makes of it; outlines that cross nothing
 * keep their exact lines and arcs.
 *
 * <p><i>Approximation:</i> outlines that do cross are followed within the tolerances of flattening
 * and of fitting arcs.
 */
final class Areas {
  /** With more outlines in a piece, their nesting is left to the fill rule. */
  private static final int MOST_NESTED = 2_000;

  private static final double CHANGE_MM =
      Tolerances.DEFAULT.flattenMm() + Tolerances.DEFAULT.arcFitMm();

  private final List<Mend> mends;

  Areas(List<Mend> mends) {
    this.mends = mends;
  }

  Artwork apply(Artwork artwork) {
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      Optional<FillRule> rule = piece.fill();
      boolean wide = piece.stroke().isPresent() && !JoinEnds.isBare(piece);
      if (rule.isEmpty() || wide) {
        pieces.add(piece);
        continue;
      }
      List<Path> paths = ordered(piece.paths(), rule.get());
      if (!paths.isEmpty()) {
        pieces.add(piece.withPaths(paths));
      }
    }
    return new Artwork(artwork.source(), pieces, artwork.sizeAssumed(), artwork.notes());
  }

  private List<Path> ordered(List<Path> paths, FillRule rule) {
    double flat = Tolerances.DEFAULT.flattenMm();
    List<List<Point>> rings = paths.stream().map(p -> Flattener.flatten(p, flat)).toList();
    Optional<Crossings> crossings = Crossings.of(rings);
    if (crossings.isEmpty()) {
      return paths;
    }
    if (!crossings.get().isEmpty()) {
      tell(crossings.get());
      List<Path> resolved = new ArrayList<>();
      Region.of(paths, rule, flat)
          .rings()
          .forEach(
              r -> resolved.add(ArcFitter.fit(r.points(), true, Tolerances.DEFAULT.arcFitMm())));
      return resolved;
    }
    return rings.size() > MOST_NESTED ? paths : nested(paths, rings, rule);
  }

  private void tell(Crossings found) {
    found.places().forEach(p -> mends.add(new Mend(Mend.Kind.CROSSING, p, CHANGE_MM)));
    found.shared().forEach(p -> mends.add(new Mend(Mend.Kind.SHARED, p, CHANGE_MM)));
  }

  private List<Path> nested(List<Path> paths, List<List<Point>> rings, FillRule rule) {
    List<Path> kept = new ArrayList<>();
    for (int i = 0; i < rings.size(); i++) {
      List<Point> ring = rings.get(i);
      double area = area(ring);
      if (area == 0) {
        kept.add(paths.get(i));
        continue;
      }
      Point middle = ring.get(0).towards(ring.get(1), 0.5);
      int outside = 0;
      for (int k = 0; k < rings.size(); k++) {
        outside += k == i ? 0 : turns(rings.get(k), middle);
      }
      boolean filledInside = filled(outside + (area > 0 ? 1 : -1), rule);
      if (filledInside == filled(outside, rule)) {
        mends.add(new Mend(Mend.Kind.INSIDE, middle, 0));
      } else if (filledInside == area > 0) {
        kept.add(paths.get(i));
      } else {
        mends.add(new Mend(Mend.Kind.TURNED, middle, 0));
        kept.add(paths.get(i).reversed());
      }
    }
    return kept;
  }

  private static boolean filled(int winding, FillRule rule) {
    return rule == FillRule.NONZERO ? winding != 0 : winding % 2 != 0;
  }

  static double area(List<Point> ring) {
    double twice = 0;
    for (int i = 0; i < ring.size(); i++) {
      twice += ring.get(i).cross(ring.get((i + 1) % ring.size()));
    }
    return twice / 2;
  }

  /** How often a ring goes round a point, counter-clockwise counted positive. */
  private static int turns(List<Point> ring, Point p) {
    int turns = 0;
    for (int i = 0; i < ring.size(); i++) {
      Point a = ring.get(i);
      Point b = ring.get((i + 1) % ring.size());
      if ((a.y() <= p.y()) != (b.y() <= p.y())) {
        double side = b.minus(a).cross(p.minus(a));
        if (b.y() > a.y() ? side > 0 : side < 0) {
          turns += b.y() > a.y() ? 1 : -1;
        }
      }
    }
    return turns;
  }
}
