package frieze.plan.cut;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * One unbroken stretch of cutting with one tool, in the panel frame, Z0 on the stock's top.
 *
 * <p>The tool comes down to the start, which lies in air or in a part already cut, follows the
 * moves, and is raised from the end.
 *
 * @param origin what a person would call it, such as {@code recess ginkgo 3, pass 2}
 * @param spindleRpm the speed of the spindle
 * @param moves at least one, each starting where the one before it ends
 * @param peckMm for a drilled hole, whose only move goes straight down: the depth between
 *     clearings, 0 for drilling in one go; empty for all else
 */
public record Cut(
    String origin, Tool tool, double spindleRpm, List<Move> moves, OptionalDouble peckMm) {
  public Cut {
    moves = List.copyOf(moves);
    if (moves.isEmpty()) {
      throw new IllegalArgumentException("cut " + origin + " needs at least one move");
    }
  }

  /** A cut that is not a drilled hole. */
  public Cut(String origin, Tool tool, double spindleRpm, List<Move> moves) {
    this(origin, tool, spindleRpm, moves, OptionalDouble.empty());
  }

  /** A move in the material and its feed. */
  public record Move(Motion path, double feedMmPerMin) {}

  /**
   * This cut elsewhere.
   *
   * @param name what a person calls it there
   * @param rigid turns and moves in the plane, and nothing else
   */
  public Cut moved(String name, Affine rigid) {
    Mover mover = new Mover(rigid);
    List<Move> there = new ArrayList<>(moves.size());
    Position at = mover.position(start());
    for (Move move : moves) {
      Position to = mover.position(move.path().to());
      there.add(new Move(mover.moved(move.path(), at, to), move.feedMmPerMin()));
      at = to;
    }
    return new Cut(name, tool, spindleRpm, there, peckMm);
  }

  private record Mover(Affine rigid) {
    Position position(Position p) {
      return new Position(rigid.apply(p.xy()), p.z());
    }

    Motion moved(Motion path, Position from, Position to) {
      if (path instanceof Motion.Turn turn) {
        if (turn.plane() != Plane.XY) {
          throw new IllegalArgumentException("an arc in " + turn.plane() + " can't be turned");
        }
        Point centre = rigid.apply(new Point(turn.centreU(), turn.centreV()));
        return new Motion.Turn(from, to, Plane.XY, centre.x(), centre.y(), turn.sweepRad());
      }
      return new Motion.Straight(from, to);
    }
  }

  public Position start() {
    return moves.get(0).path().from();
  }

  public Position end() {
    return moves.get(moves.size() - 1).path().to();
  }
}
