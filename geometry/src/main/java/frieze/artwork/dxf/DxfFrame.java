package frieze.artwork.dxf;

import frieze.curve.Affine;

/**
 * The frame that an entity's coordinates are in, seen from above.
 *
 * <p>Source: the DXF reference, arbitrary axis algorithm: the frame's z axis is the extrusion
 * direction, its x axis follows from it.
 */
final class DxfFrame {
  /** Directions nearer to the z axis than this take their x axis from y. */
  private static final double NEAR = 1.0 / 64;

  private DxfFrame() {}

  /** The map from the entity's frame to the drawing's plane. */
  static Affine of(DxfEntity entity, double elevation) {
    double nx = entity.number(210, 0);
    double ny = entity.number(220, 0);
    double nz = entity.number(230, 1);
    double length = Math.sqrt(nx * nx + ny * ny + nz * nz);
    if (length == 0 || (nx == 0 && ny == 0 && nz > 0)) {
      return Affine.IDENTITY;
    }
    nx /= length;
    ny /= length;
    nz /= length;
    boolean near = Math.abs(nx) < NEAR && Math.abs(ny) < NEAR;
    double ax = near ? nz : -ny;
    double ay = near ? 0 : nx;
    double az = near ? -nx : 0;
    double a = Math.sqrt(ax * ax + ay * ay + az * az);
    ax /= a;
    ay /= a;
    az /= a;
    double bx = ny * az - nz * ay;
    double by = nz * ax - nx * az;
    return new Affine(ax, ay, bx, by, nx * elevation, ny * elevation);
  }

  /** Whether its z axis points down, so that turns look reversed. */
  static boolean pointsDown(DxfEntity entity) {
    return entity.number(230, 1) < 0;
  }
}
