package frieze.artwork.dxf;

import frieze.curve.Affine;
import frieze.curve.Point;

/**
 * A map between two frames of a drawing, in space: an entity's plane, a block, the drawing. What
 * lies above or below the plane counts as soon as a frame around it is tilted.
 *
 * <p>Source: the DXF reference, arbitrary axis algorithm and INSERT: a frame's z axis is the
 * extrusion direction, its x axis follows from it.
 *
 * @param x where the x axis of the inner frame points in the outer one, and how long it is
 * @param y its y axis
 * @param z its z axis
 * @param origin where its origin lies
 */
record DxfSpace(Vector x, Vector y, Vector z, Vector origin) {
  /** Directions nearer to the z axis than this take their x axis from y. */
  private static final double NEAR = 1.0 / 64;

  /** A plane that is seen from its edge: of its area no more than this part is left. */
  private static final double ON_EDGE = 1e-9;

  /** A point or a direction in space. */
  record Vector(double x, double y, double z) {
    Vector plus(Vector o) {
      return new Vector(x + o.x, y + o.y, z + o.z);
    }

    Vector times(double factor) {
      return new Vector(x * factor, y * factor, z * factor);
    }

    Vector cross(Vector o) {
      return new Vector(y * o.z - z * o.y, z * o.x - x * o.z, x * o.y - y * o.x);
    }

    double norm() {
      return Math.sqrt(x * x + y * y + z * z);
    }

    Vector unit() {
      return times(1 / norm());
    }

    Point fromAbove() {
      return new Point(x, y);
    }
  }

  private static final Vector NOWHERE = new Vector(0, 0, 0);

  static DxfSpace scaling(double x, double y, double z) {
    return new DxfSpace(new Vector(x, 0, 0), new Vector(0, y, 0), new Vector(0, 0, z), NOWHERE);
  }

  static DxfSpace translation(double x, double y, double z) {
    return new DxfSpace(
        new Vector(1, 0, 0), new Vector(0, 1, 0), new Vector(0, 0, 1), new Vector(x, y, z));
  }

  /** A turn about the z axis. */
  static DxfSpace turn(double angleRad) {
    Affine turn = Affine.rotation(angleRad);
    Point x = turn.apply(new Point(1, 0));
    Point y = turn.apply(new Point(0, 1));
    return new DxfSpace(
        new Vector(x.x(), x.y(), 0), new Vector(y.x(), y.y(), 0), new Vector(0, 0, 1), NOWHERE);
  }

  /** The frame that an entity's own coordinates are in, by its extrusion direction. */
  static DxfSpace of(DxfEntity entity) {
    Vector up = up(entity);
    if (up.x() == 0 && up.y() == 0 && up.z() > 0) {
      return translation(0, 0, 0);
    }
    boolean near = Math.abs(up.x()) < NEAR && Math.abs(up.y()) < NEAR;
    Vector x = (near ? new Vector(0, 1, 0) : new Vector(0, 0, 1)).cross(up).unit();
    return new DxfSpace(x, up.cross(x), up, NOWHERE);
  }

  /** The extrusion direction of an entity, of length 1. */
  static Vector up(DxfEntity entity) {
    Vector up = new Vector(entity.number(210, 0), entity.number(220, 0), entity.number(230, 1));
    return up.norm() == 0 || (up.x() == 0 && up.y() == 0 && up.z() > 0)
        ? new Vector(0, 0, 1)
        : up.unit();
  }

  Vector direction(Vector v) {
    return x.times(v.x()).plus(y.times(v.y())).plus(z.times(v.z()));
  }

  Vector apply(Vector v) {
    return direction(v).plus(origin);
  }

  /** This map, followed by another. */
  DxfSpace then(DxfSpace outer) {
    return new DxfSpace(
        outer.direction(x), outer.direction(y), outer.direction(z), outer.apply(origin));
  }

  /** The plane at a height of the inner frame, seen from above the outer one. */
  Affine plane(double height) {
    Vector at = origin.plus(z.times(height));
    return new Affine(x.x(), x.y(), y.x(), y.y(), at.x(), at.y());
  }

  /** Whether nothing of the inner frame's plane is seen from above but a line. */
  boolean onEdge() {
    double seen = Math.abs(x.x() * y.y() - x.y() * y.x());
    return !(seen > ON_EDGE * x.cross(y).norm());
  }

  /** Whether it makes everything flat, or more than numbers hold. */
  boolean isDegenerate() {
    Vector across = x.cross(y);
    double volume = across.x() * z.x() + across.y() * z.y() + across.z() * z.z();
    return volume == 0 || !Double.isFinite(volume);
  }
}
