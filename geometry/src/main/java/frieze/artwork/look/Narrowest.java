package frieze.artwork.look;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.region.BoundaryDistance;
import frieze.region.Disc;
import frieze.region.MedialAxis;
import frieze.region.Region;
import java.util.List;
import java.util.Optional;

/**
 * Finds the narrowest web of an area and the narrowest gap in it and around it.
 *
 * <p>A place counts where the walls face each other within {@value #PARALLEL_DEG} degrees, as at a
 * waist or along a strip; where they open wider there is a corner or a point, which is as narrow as
 * one likes near its tip. Slimmer points count neither. A part, or a hole, in which no walls face
 * each other is as narrow as its largest disc.
 *
 * <p><i>Approximation:</i> discs of the middle line, whose chords leave it by less than a
 * micrometre; in a drawing larger than {@link #MEASURED_MM} across, by as much less of its size.
 */
public final class Narrowest {
  /**
   * Larger drawings are measured at this size, corner to corner: the middle line is as fine for all
   * of them, and one of a kilometre has millions of places at the size of a leaf's.
   */
  static final double MEASURED_MM = 500;

  /** Walls that open by no more than this face each other. */
  private static final double PARALLEL_DEG = 10;

  private static final double FACING_COS = -StrictMath.cos(Math.toRadians(PARALLEL_DEG));

  /** More than curves are flattened by, or each of their points would be a corner. */
  private static final double AXIS_MM = 0.005;

  /** A middle line that ends in a disc smaller than this ends in a sharp point. */
  private static final double POINT_MM = 0.01;

  /** How far a centre is moved from one wall, in radii, to see which other is nearest then. */
  private static final double NUDGE = 0.01;

  private static final double LEAST_RADIUS_MM = 1e-6;

  /** Feet whose distances from a centre differ by no more than this, in radii, are on one disc. */
  private static final double SAME = 1e-3;

  private final BoundaryDistance walls;
  private final Bounds frame;
  private Optional<Narrow> found = Optional.empty();

  private Narrowest(Region area, Bounds frame) {
    this.walls = BoundaryDistance.of(area);
    this.frame = frame;
  }

  /** The narrowest place of an area; empty for an empty one. */
  public static Optional<Narrow> web(Region area) {
    double grown = grownBy(area);
    Optional<Narrow> narrowest = Optional.empty();
    for (Region part : shrunk(area, grown).parts()) {
      narrowest = less(narrowest, inPart(part));
    }
    return narrowest.map(n -> n.times(grown));
  }

  /** How many times larger than what is measured an area is. */
  private static double grownBy(Region area) {
    if (area.isEmpty()) {
      return 1;
    }
    Bounds b = area.bounds();
    return Math.max(1, Math.hypot(b.width(), b.height()) / MEASURED_MM);
  }

  private static Region shrunk(Region area, double by) {
    return by > 1 ? area.transformed(Affine.scaling(1 / by, 1 / by)) : area;
  }

  /** The narrowest place between two walls of the ground; empty if none face each other. */
  public static Optional<Narrow> gap(Region area) {
    double grown = grownBy(area);
    return area.isEmpty() ? Optional.empty() : gapOf(shrunk(area, grown)).map(n -> n.times(grown));
  }

  private static Optional<Narrow> gapOf(Region area) {
    Bounds b = area.bounds();
    // A disc between two walls has its centre within the bounds, and is no wider than they are.
    Bounds frame = b.grown(Math.hypot(b.width(), b.height()));
    Region ground = Region.ofRing(frame.corners()).minus(area);
    Optional<Narrow> narrowest = Optional.empty();
    for (Region part : ground.parts()) {
      boolean outside = part.bounds().width() > b.width();
      narrowest = less(narrowest, outside ? around(part, frame) : inPart(part));
    }
    return narrowest;
  }

  private static Optional<Narrow> inPart(Region part) {
    MedialAxis axis = MedialAxis.of(part, AXIS_MM);
    Narrowest search = new Narrowest(part, Bounds.EMPTY);
    search.look(axis);
    Disc largest = axis.largest();
    if (search.found.isEmpty() && largest.radiusMm() > 0) {
      Point foot = search.walls.nearest(largest.centre()).foot();
      Point opposite = largest.centre().times(2).minus(foot);
      return Optional.of(new Narrow(foot, opposite, 2 * largest.radiusMm()));
    }
    return search.found;
  }

  private static Optional<Narrow> around(Region ground, Bounds frame) {
    Narrowest search = new Narrowest(ground, frame);
    search.look(MedialAxis.of(ground, AXIS_MM));
    return search.found;
  }

  private void look(MedialAxis axis) {
    for (MedialAxis.Branch branch : axis.branches()) {
      List<Disc> discs = branch.discs();
      int from = 0;
      int to = discs.size() - 1;
      if (discs.get(from).radiusMm() < POINT_MM) {
        while (from < to && discs.get(from + 1).radiusMm() > discs.get(from).radiusMm()) {
          from++;
        }
      }
      if (discs.get(to).radiusMm() < POINT_MM) {
        while (to > from && discs.get(to - 1).radiusMm() > discs.get(to).radiusMm()) {
          to--;
        }
      }
      for (int i = from; i <= to; i++) {
        look(discs.get(i));
      }
    }
  }

  private void look(Disc disc) {
    double r = disc.radiusMm();
    boolean wider = found.isPresent() && 2 * r >= found.get().widthMm();
    if (wider || r < LEAST_RADIUS_MM || touchesFrame(disc)) {
      return;
    }
    Point c = disc.centre();
    Point one = walls.nearest(c).foot().minus(c);
    Point other = walls.nearest(c.minus(one.times(NUDGE))).foot().minus(c);
    double cos = one.dot(other) / (one.norm() * other.norm());
    if (cos <= FACING_COS && other.norm() <= r * (1 + SAME)) {
      found = Optional.of(new Narrow(c.plus(one), c.plus(other), one.norm() + other.norm()));
    }
  }

  private boolean touchesFrame(Disc disc) {
    if (frame.isEmpty()) {
      return false;
    }
    Point c = disc.centre();
    double x = Math.min(c.x() - frame.minX(), frame.maxX() - c.x());
    double y = Math.min(c.y() - frame.minY(), frame.maxY() - c.y());
    return Math.min(x, y) <= disc.radiusMm() * (1 + SAME);
  }

  private static Optional<Narrow> less(Optional<Narrow> a, Optional<Narrow> b) {
    return a.isEmpty() || (b.isPresent() && b.get().widthMm() < a.get().widthMm()) ? b : a;
  }
}
