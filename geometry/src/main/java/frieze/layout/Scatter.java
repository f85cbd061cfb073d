package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.FrameMap;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;

/**
 * Motifs thrown over a panel, none nearer to another than a least distance.
 *
 * <p>Each motif tries a fixed number of places and keeps the one that is farthest from all others;
 * that spreads them more evenly than the first that is free.
 *
 * <p><em>Guarantees:</em> the convex hulls keep the distance, all lie inside the panel's outline
 * less the inset, the count is whole or it is an error; the same seed gives the same places.
 *
 * <p><em>Source:</em> D. P. Mitchell's best candidate, 1991 (from memory).
 *
 * @param count the number of motifs
 * @param spaceMm the least distance between two
 * @param turnRad the most by which each is turned, either way; pi for any way
 */
public record Scatter(int count, double spaceMm, double insetMm, double turnRad)
    implements Pattern {
  private static final int TRIES = 60;
  private static final int MOST_TRIES = 3000;

  public Scatter {
    if (count < 1 || !(spaceMm >= 0 && insetMm >= 0 && turnRad >= 0)) {
      throw new IllegalArgumentException(
          "count must be >= 1, spaceMm, insetMm, turnRad >= 0 but were "
              + (count + ", " + spaceMm + ", " + insetMm + ", " + turnRad));
    }
  }

  private record Thrown(Affine map, Hull hull, double distanceMm) {}

  @Override
  public boolean picksPlaces() {
    return true;
  }

  @Override
  public List<Placement> place(String motif, Hull hull, Panel panel, long seed, SourceSpan where) {
    Band band = Band.of(panel, insetMm);
    Bounds bounds = panel.outline().bounds().grown(-insetMm);
    SplittableRandom random = new SplittableRandom(seed);
    List<Thrown> all = new ArrayList<>();
    while (all.size() < count) {
      @Nullable Thrown best = null;
      for (int i = 0; i < TRIES || (best == null && i < MOST_TRIES); i++) {
        @Nullable Thrown tried = tried(hull, band, bounds, random, all);
        if (tried != null && (best == null || tried.distanceMm > best.distanceMm)) {
          best = tried;
        }
      }
      if (best == null) {
        throw full(motif, all.size(), where);
      }
      all.add(best);
    }
    List<Placement> result = new ArrayList<>();
    for (Thrown t : all) {
      result.add(new Placement(motif, result.size() + 1, new FrameMap<>(t.map)));
    }
    return result;
  }

  /** One throw; null if it does not lie in the band or is too near to another motif. */
  private @Nullable Thrown tried(
      Hull hull, Band shape, Bounds band, SplittableRandom random, List<Thrown> others) {
    Point c = hull.bounds().centre();
    Affine turned =
        Affine.translation(-c.x(), -c.y())
            .then(Affine.rotation(turnRad * (2 * random.nextDouble() - 1)));
    Bounds b = hull.transformed(turned).bounds();
    double freeX = band.width() - b.width();
    double freeY = band.height() - b.height();
    double x = band.minX() - b.minX() + random.nextDouble() * freeX;
    double y = band.minY() - b.minY() + random.nextDouble() * freeY;
    if (freeX < 0 || freeY < 0) {
      return null;
    }
    Affine map = turned.then(Affine.translation(x, y));
    Hull placed = hull.transformed(map);
    if (!shape.holds(placed)) {
      return null;
    }
    double least = Double.POSITIVE_INFINITY;
    for (Thrown other : others) {
      least = Math.min(least, placed.distance(other.hull));
      if (least < spaceMm || least == 0) {
        return null;
      }
    }
    return new Thrown(map, placed, least);
  }

  private BadInputException full(String motif, int found, SourceSpan where) {
    return new BadInputException(
        Diagnostic.error(
            LayoutCode.NO_ROOM,
            where,
            "only "
                + found
                + " of "
                + count
                + " motifs "
                + motif
                + " found a place with "
                + Amounts.length(spaceMm)
                + " between them",
            "take fewer, smaller ones, a smaller space or another seed"));
  }
}
