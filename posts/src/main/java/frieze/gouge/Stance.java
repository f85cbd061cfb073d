package frieze.gouge;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.field.SweptMoves;
import java.util.List;
import java.util.Optional;

/**
 * Tells where a tool must have cut with its side at the outline.
 *
 * <p>Where it has some room, it must. Where it only just fits, nobody can say whether it should
 * have gone in, within the tolerances of drawing and path; but if its axis did pass there, it must
 * have cut to the depth.
 */
final class Stance {
  private final Wish wish;
  private final Edges edges;
  private final List<Wish> all;
  private final SweptMoves moves;
  private final GougeCheck.Settings settings;

  /**
   * Makes it for a wish with an opening.
   *
   * @param edges those of the wish that are near the places asked about
   */
  Stance(Wish wish, Edges edges, List<Wish> all, SweptMoves moves, GougeCheck.Settings settings) {
    this.wish = wish;
    this.edges = edges;
    this.all = all;
    this.moves = moves;
    this.settings = settings;
  }

  /** Where the tool's axis is when the tool touches the outline at a point. */
  Point axis(Point onOutline, Point inward) {
    return onOutline.plus(inward.times(wish.openingMm()));
  }

  /**
   * Whether the tool must have been down where it touches the outline at a point.
   *
   * @param inward the direction square to the outline, of length 1
   */
  boolean isAsked(Point onOutline, Point inward) {
    double spare = settings.wallMm() / 4;
    Point further = onOutline.plus(inward.times(wish.openingMm() + 2 * spare));
    if (isFree(further, wish.openingMm() + spare)) {
      return true;
    }
    Point axis = axis(onOutline, inward);
    return isFree(axis, wish.openingMm() - spare) && cameDown(axis);
  }

  /**
   * Where the tool's axis should have been down, with the tool at the nearest wall of a place, and
   * was not.
   *
   * @param place inside the outline
   */
  Optional<Point> missed(Point place) {
    Point foot = edges.nearest(place);
    if (foot.equals(place)) {
      return Optional.empty();
    }
    Point inward = place.minus(foot).times(1 / place.distance(foot));
    Point axis = axis(foot, inward);
    boolean done = tipDepthMm(axis) >= depthMm() - settings.depthMm();
    return !done && isAsked(foot, inward) ? Optional.of(axis) : Optional.empty();
  }

  private boolean isFree(Point axis, double roomMm) {
    return wish.inside().contains(axis)
        && edges.near(Bounds.of(axis), roomMm).distance(axis.x(), axis.y()) >= roomMm;
  }

  /** Whether something was cut that no other, shallower intent explains. */
  private boolean cameDown(Point axis) {
    double explained = 0;
    for (Wish other : all) {
      double most = other.permittedMm(axis);
      if (most < depthMm() - settings.depthMm()) {
        explained = Math.max(explained, most);
      }
    }
    return tipDepthMm(axis) > explained + settings.depthMm();
  }

  private double tipDepthMm(Point axis) {
    return -moves.lowestTipMm(axis, settings.wallMm());
  }

  private double depthMm() {
    return wish.most().depthMm(wish.openingMm());
  }
}
