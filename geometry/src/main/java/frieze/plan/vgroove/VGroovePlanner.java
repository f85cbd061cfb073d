package frieze.plan.vgroove;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.curve.SegmentPart;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes cuts of a V-bit's strokes.
 *
 * <p>{@link #cut} tells the story: down through what is cut already, in along a ramp if more than a
 * little is in the way, and along the stroke, sinking no faster than the tool may plunge.
 */
final class VGroovePlanner {
  /** The slope of the ramp of a bit that cuts at its tip; common practice, no published value. */
  private static final double RAMP_RAD = StrictMath.toRadians(10);

  /** A pointed bit goes straight down through this much; common practice. */
  private static final double DIRECT_MM = 0.3;

  private static final double SAME_MM = 1e-6;

  private final Feeds feeds;
  private final List<Cut.Move> moves = new ArrayList<>();
  private Position at;

  private VGroovePlanner(Feeds feeds, Position start) {
    this.feeds = feeds;
    this.at = start;
  }

  /** Makes the cut of one stroke. */
  static Cut cut(String origin, Stroke stroke, Tool tool, Feeds feeds) {
    Position start = stroke.start();
    boolean inSolid = stroke.clearedZ() - start.z() > DIRECT_MM;
    double from = stroke.clearedZ() == 0 ? MoveBuilder.AIR_MM : stroke.clearedZ();
    VGroovePlanner planner = new VGroovePlanner(feeds, start.withZ(from));
    if (inSolid) {
      planner.rampIn(stroke);
    }
    planner.straight(start);
    planner.follow(stroke.pieces());
    return new Cut(origin, tool, feeds.rpm(), planner.moves);
  }

  /** Goes to and fro over the first stretch of a stroke until all of it is as deep as asked. */
  private void rampIn(Stroke stroke) {
    double tangent = StrictMath.tan(RAMP_RAD);
    double drop = at.z() - stroke.start().z();
    List<Stroke.Piece> run = beginning(stroke, drop / tangent);
    if (run.isEmpty()) {
      return;
    }
    List<Stroke.Piece> back = reversed(stroke.start(), run);
    boolean forward = true;
    while (!sink(forward ? run : back, forward ? stroke.start() : end(run), tangent)) {
      forward = !forward;
    }
    if (forward) {
      follow(back);
    }
  }

  private static Position end(List<Stroke.Piece> run) {
    Stroke.Piece last = run.get(run.size() - 1);
    return new Position(last.path().end(), last.endZ());
  }

  /**
   * Follows pieces, but no deeper than a ramp from here.
   *
   * @param start where the first piece starts, at its own depth
   * @return whether the end is as deep as asked
   */
  private boolean sink(List<Stroke.Piece> pieces, Position start, double tangent) {
    double before = start.z();
    boolean onRamp = at.z() > before + SAME_MM;
    for (Stroke.Piece piece : pieces) {
      double length = length(piece.path());
      double ramp = at.z() - length * tangent;
      if (onRamp && ramp < piece.endZ()) {
        // The ramp meets the asked depth within this piece.
        double share = (at.z() - before) / (length * tangent + piece.endZ() - before);
        double clamped = Math.max(0, Math.min(1, share));
        double z = before + clamped * (piece.endZ() - before);
        move(SegmentPart.between(piece.path(), 0, clamped), z);
        move(SegmentPart.between(piece.path(), clamped, 1), piece.endZ());
        onRamp = false;
      } else {
        move(piece.path(), onRamp ? ramp : piece.endZ());
      }
      before = piece.endZ();
    }
    return !onRamp;
  }

  /** The first stretch of a stroke. */
  private static List<Stroke.Piece> beginning(Stroke stroke, double lengthMm) {
    List<Stroke.Piece> run = new ArrayList<>();
    double left = lengthMm;
    double z = stroke.start().z();
    for (Stroke.Piece piece : stroke.pieces()) {
      double length = length(piece.path());
      if (length >= left) {
        double share = left / length;
        run.add(
            new Stroke.Piece(
                SegmentPart.between(piece.path(), 0, share), z + share * (piece.endZ() - z)));
        return run;
      }
      run.add(piece);
      left -= length;
      z = piece.endZ();
    }
    return run;
  }

  private static List<Stroke.Piece> reversed(Position start, List<Stroke.Piece> run) {
    List<Stroke.Piece> back = new ArrayList<>();
    for (int i = run.size() - 1; i >= 0; i--) {
      double z = i == 0 ? start.z() : run.get(i - 1).endZ();
      back.add(new Stroke.Piece(run.get(i).path().reversed(), z));
    }
    return back;
  }

  private void follow(List<Stroke.Piece> pieces) {
    for (Stroke.Piece piece : pieces) {
      move(piece.path(), piece.endZ());
    }
  }

  private void move(Segment path, double z) {
    Position to = new Position(path.end(), z);
    double length = length(path);
    if (length <= SAME_MM) {
      straight(to);
      return;
    }
    if (path instanceof Arc arc) {
      double far = Math.hypot(length, z - at.z());
      Point centre = arc.centre();
      moves.add(
          new Cut.Move(
              new Motion.Turn(at, to, Plane.XY, centre.x(), centre.y(), arc.sweepRad()),
              feeds.roundedFeedMmPerMin(z - at.z(), far)));
      at = to;
    } else {
      straight(to);
    }
  }

  private void straight(Position to) {
    double far = at.distance(to);
    if (far > SAME_MM) {
      double feed = feeds.roundedFeedMmPerMin(to.z() - at.z(), far);
      moves.add(new Cut.Move(new Motion.Straight(at, to), feed));
      at = to;
    }
  }

  private static double length(Segment path) {
    return path instanceof Arc arc ? arc.length() : ((Line) path).length();
  }
}
