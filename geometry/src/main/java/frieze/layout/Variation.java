package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

/**
 * Small differences between repeated motifs, as if each had been drawn by hand.
 *
 * <p>Each motif is turned, sized, bent and moved by amounts of its own, at most the given ones;
 * small amounts are likelier than large ones (the sum of two even ones). Where a difference would
 * bring a motif too near to another, or over the border, it is halved until it does not.
 *
 * <p><em>Guarantees:</em> the same seed gives the same placements. No pair of motifs comes nearer
 * than the least space, or than it was where it was nearer. A motif that was inside the band stays
 * inside. A motif keeps its differences when others are added after it, unless they are in its way.
 *
 * @param turnRad at most, either way
 * @param size at most, as a share, larger or smaller
 * @param placeMm at most, along each axis
 * @param bendRad at most, from one end of its upright axis to the other
 * @param spaceMm the least distance between the hulls of two motifs; empty for half of what it was
 */
public record Variation(
    double turnRad, double size, double placeMm, double bendRad, OptionalDouble spaceMm) {
  private static final int MOST_HALVINGS = 6;

  /** Sizes come in this many steps, so that many motifs need few plans; bends too. */
  private static final int SIZE_STEPS = 8;

  private static final double ROUNDING_MM = 1e-9;

  public Variation {
    if (!(turnRad >= 0 && turnRad <= Math.PI && size >= 0 && size < 1 && placeMm >= 0)) {
      throw new IllegalArgumentException(
          "turnRad must be in 0 .. pi, size in 0 .. 1, placeMm >= 0 but were "
              + (turnRad + ", " + size + ", " + placeMm));
    }
    if (!(bendRad >= 0 && bendRad <= Math.PI)) {
      throw new IllegalArgumentException("bendRad must be in 0 .. pi but was " + bendRad);
    }
  }

  /** Differences without a bend. */
  public Variation(double turnRad, double size, double placeMm, OptionalDouble spaceMm) {
    this(turnRad, size, placeMm, 0, spaceMm);
  }

  private record Difference(double turnRad, double size, double x, double y, double bend) {
    Difference halved() {
      return new Difference(turnRad / 2, stepped(size / 2), x / 2, y / 2, stepped(bend / 2));
    }

    static double stepped(double share) {
      return Math.rint(share * SIZE_STEPS) / SIZE_STEPS;
    }
  }

  /**
   * Varies the placements of one motif.
   *
   * @param motif the hull of its drawing
   * @param ground what it must not leave
   * @param seed decides all differences
   */
  public List<Placement> apply(List<Placement> placements, Hull motif, Ground ground, long seed) {
    Band band = Band.of(ground);
    List<Hull> before = new ArrayList<>();
    for (Placement placement : placements) {
      before.add(placement.hull(motif));
    }
    Neighbours neighbours = new Neighbours(before, reach(motif));
    List<Hull> now = new ArrayList<>(before);
    List<Placement> result = new ArrayList<>();
    for (int i = 0; i < placements.size(); i++) {
      Placement placement = placements.get(i);
      Placement varied = varied(i, placement, motif, band, seed, neighbours, now);
      now.set(i, varied.hull(motif));
      result.add(varied);
    }
    return result;
  }

  private Placement varied(
      int i,
      Placement placement,
      Hull motif,
      Band band,
      long seed,
      Neighbours neighbours,
      List<Hull> now) {
    Difference difference = draw(new SplittableRandom(mixed(seed, i)));
    for (int halvings = 0; halvings <= MOST_HALVINGS; halvings++) {
      Point centre = neighbours.before.get(i).bounds().centre();
      Placement tried =
          placement
              .at(applied(placement.map().affine(), centre, difference))
              .bent(bendRad * difference.bend() / motif.bounds().height());
      Hull hull = tried.hull(motif);
      if (Bend.suits(motif.bounds(), tried.bendPerMm())
          && band.keeps(neighbours.before.get(i), hull)
          && keepsApart(i, hull, neighbours, now)) {
        return tried;
      }
      difference = difference.halved();
    }
    return placement;
  }

  private static long mixed(long seed, int i) {
    return seed * 0x9E3779B97F4A7C15L + i;
  }

  private static Difference draw(SplittableRandom random) {
    return new Difference(
        likelySmall(random),
        Difference.stepped(likelySmall(random)),
        likelySmall(random),
        likelySmall(random),
        Difference.stepped(likelySmall(random)));
  }

  /** From -1 to 1. */
  private static double likelySmall(SplittableRandom random) {
    return random.nextDouble() + random.nextDouble() - 1;
  }

  private Affine applied(Affine map, Point centre, Difference d) {
    double scale = 1 + size * d.size();
    return map.then(Affine.translation(-centre.x(), -centre.y()))
        .then(Affine.rotation(turnRad * d.turnRad()))
        .then(Affine.scaling(scale, scale))
        .then(Affine.translation(centre.x() + placeMm * d.x(), centre.y() + placeMm * d.y()));
  }

  private boolean keepsApart(int i, Hull hull, Neighbours neighbours, List<Hull> now) {
    for (int k : neighbours.of(i)) {
      double was = neighbours.before.get(i).distance(neighbours.before.get(k));
      double least = Math.min(was, spaceMm.orElse(was / 2));
      if (hull.distance(now.get(k)) < least - ROUNDING_MM) {
        return false;
      }
    }
    return true;
  }

  /** How far any point of a motif may move. */
  private double reach(Hull motif) {
    Bounds b = motif.bounds();
    double radius = Math.hypot(b.width(), b.height());
    return radius * (turnRad + size + bendRad) + Math.sqrt(2) * placeMm;
  }

  /** Who may come too near to whom. */
  private final class Neighbours {
    private final List<Hull> before;
    private final List<List<Integer>> near = new ArrayList<>();

    Neighbours(List<Hull> before, double reachMm) {
      this.before = before;
      double scale = before.isEmpty() ? 1 : 1 + size;
      double grownMm = scale * reachMm + spaceMm.orElse(reachMm * scale) + ROUNDING_MM;
      List<Bounds> bounds = before.stream().map(h -> h.bounds().grown(grownMm)).toList();
      for (int i = 0; i < before.size(); i++) {
        List<Integer> others = new ArrayList<>();
        for (int k = 0; k < before.size(); k++) {
          if (k != i && bounds.get(i).touches(bounds.get(k))) {
            others.add(k);
          }
        }
        near.add(others);
      }
    }

    List<Integer> of(int i) {
      return near.get(i);
    }
  }
}
