package frieze.motion;

import frieze.curve.Point;
import frieze.motion.Motion.Straight;
import frieze.motion.Motion.Turn;
import java.util.Optional;

/** Takes paths apart. */
public final class Motions {
  private Motions() {}

  /**
   * The path without what is not known of it. Along an axis of which neither end is known the move
   * is relative, and its length is known all the same.
   */
  public static Motion known(Executed.Move move) {
    Position from = move.path().from();
    Position to = move.path().to();
    boolean x = move.fromKnown().x() == move.toKnown().x();
    boolean y = move.fromKnown().y() == move.toKnown().y();
    boolean z = move.fromKnown().z() == move.toKnown().z();
    if (move.path() instanceof Turn || (x && y && z)) {
      return move.path();
    }
    return new Straight(
        new Position(x ? from.x() : to.x(), y ? from.y() : to.y(), z ? from.z() : to.z()), to);
  }

  /** Moves a path in space. */
  public static Motion shifted(Motion path, double dx, double dy, double dz) {
    return path.accept(
        new Motion.Visitor<Motion>() {
          @Override
          public Motion straight(Straight straight) {
            return new Straight(shift(straight.from()), shift(straight.to()));
          }

          @Override
          public Motion turn(Turn turn) {
            Position centre = shift(turn.plane().position(turn.centreU(), turn.centreV(), 0));
            return new Turn(
                shift(turn.from()),
                shift(turn.to()),
                turn.plane(),
                centre.get(turn.plane().first()),
                centre.get(turn.plane().second()),
                turn.sweepRad());
          }

          private Position shift(Position p) {
            return new Position(p.x() + dx, p.y() + dy, p.z() + dz);
          }
        });
  }

  /**
   * Turns a path about the Z axis, counter-clockwise.
   *
   * @throws IllegalArgumentException for an arc in an upright plane
   */
  public static Motion turned(Motion path, double angleRad) {
    return path.accept(
        new Motion.Visitor<Motion>() {
          @Override
          public Motion straight(Straight straight) {
            return new Straight(turn(straight.from()), turn(straight.to()));
          }

          @Override
          public Motion turn(Turn turn) {
            if (turn.plane() != Plane.XY) {
              throw new IllegalArgumentException("plane must be XY but was " + turn.plane());
            }
            Point centre = new Point(turn.centreU(), turn.centreV()).turned(angleRad);
            return new Turn(
                turn(turn.from()),
                turn(turn.to()),
                turn.plane(),
                centre.x(),
                centre.y(),
                turn.sweepRad());
          }

          private Position turn(Position p) {
            return new Position(p.xy().turned(angleRad), p.z());
          }
        });
  }

  /** The part of a path between two fractions of its length. */
  public static Motion part(Motion path, double from, double to) {
    if (from <= 0 && to >= 1) {
      return path;
    }
    return path.accept(
        new Motion.Visitor<Motion>() {
          @Override
          public Motion straight(Straight straight) {
            return new Straight(straight.at(from), straight.at(to));
          }

          @Override
          public Motion turn(Turn turn) {
            return new Turn(
                turn.at(from),
                turn.at(to),
                turn.plane(),
                turn.centreU(),
                turn.centreV(),
                turn.sweepRad() * (to - from));
          }
        });
  }

  /**
   * The part of a path that lies below a height; empty if it has none. Of an arc in an upright
   * plane the whole is given.
   */
  public static Optional<Motion> below(Motion path, double zMm) {
    double z0 = path.from().z();
    double z1 = path.to().z();
    if (isUpright(path)) {
      return path.box().minZ() < zMm ? Optional.of(path) : Optional.empty();
    }
    if (z0 >= zMm && z1 >= zMm) {
      return Optional.empty();
    }
    if (z0 < zMm && z1 < zMm) {
      return Optional.of(path);
    }
    double crossing = (zMm - z0) / (z1 - z0);
    double from = z0 < zMm ? 0 : crossing;
    double to = z0 < zMm ? crossing : 1;
    return to > from ? Optional.of(part(path, from, to)) : Optional.empty();
  }

  /** Whether a path is an arc in ZX or YZ. */
  static boolean isUpright(Motion path) {
    return path instanceof Turn turn && turn.plane() != Plane.XY;
  }

  /** The distance travelled in the XY plane. */
  public static double planarMm(Motion path) {
    return path.accept(
        new Motion.Visitor<Double>() {
          @Override
          public Double straight(Straight straight) {
            return planarMm(straight.from(), straight.to());
          }

          @Override
          public Double turn(Turn turn) {
            return turn.plane() == Plane.XY
                ? Math.abs(turn.radiusMm() * turn.sweepRad())
                : planarMm(turn.from(), turn.to());
          }
        });
  }

  public static double planarMm(Position a, Position b) {
    return Math.hypot(b.x() - a.x(), b.y() - a.y());
  }

  /** The largest share of the path's direction that lies along an axis, 0 .. 1. */
  public static double largestShare(Motion path, int axis) {
    double length = path.lengthMm();
    if (length == 0) {
      return 0;
    }
    if (path instanceof Turn turn) {
      double along =
          Math.abs(turn.to().get(turn.plane().normal()) - turn.from().get(turn.plane().normal()));
      if (axis == turn.plane().normal()) {
        return along / length;
      }
      double around = Math.abs(turn.radiusMm() * turn.sweepRad()) / length;
      double offset = axis == turn.plane().first() ? Math.PI / 2 : 0;
      return around * largestCosine(turn.startAngleRad() + offset, turn.sweepRad());
    }
    return Math.abs(path.to().get(axis) - path.from().get(axis)) / length;
  }

  /** The largest absolute cosine over a range of angles. */
  static double largestCosine(double startRad, double sweepRad) {
    double low = Math.min(startRad, startRad + sweepRad);
    double high = Math.max(startRad, startRad + sweepRad);
    if (Math.ceil(low / Math.PI) * Math.PI <= high) {
      return 1;
    }
    return Math.max(Math.abs(StrictMath.cos(low)), Math.abs(StrictMath.cos(high)));
  }

  /** The direction of travel at an end of a path that has a length: a unit vector by X, Y, Z. */
  public static double[] direction(Motion path, boolean atStart) {
    if (path instanceof Turn turn) {
      return direction(turn, atStart);
    }
    double length = path.lengthMm();
    double[] direction = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      direction[axis] = (path.to().get(axis) - path.from().get(axis)) / length;
    }
    return direction;
  }

  private static double[] direction(Turn turn, boolean atStart) {
    Plane plane = turn.plane();
    double angle = turn.startAngleRad() + (atStart ? 0 : turn.sweepRad());
    double length = turn.lengthMm();
    double around = turn.radiusMm() * turn.sweepRad() / length;
    double along = (turn.to().get(plane.normal()) - turn.from().get(plane.normal())) / length;
    double[] direction = new double[3];
    direction[plane.first()] = -StrictMath.sin(angle) * around;
    direction[plane.second()] = StrictMath.cos(angle) * around;
    direction[plane.normal()] = along;
    return direction;
  }
}
