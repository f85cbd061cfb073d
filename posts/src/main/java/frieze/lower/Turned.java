package frieze.lower;

import frieze.curve.Point;
import frieze.motion.Instruction;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.motion.Step;
import java.util.List;

/** Turns a program about its zero, as the stock lies turned on the machine. */
final class Turned extends EachInstruction<Instruction> implements Pass {
  private final double angleRad;

  /**
   * @param angleRad counter-clockwise
   */
  Turned(double angleRad) {
    this.angleRad = angleRad;
  }

  @Override
  public List<Step> apply(List<Step> steps) {
    return angleRad == 0
        ? steps
        : steps.stream().map(s -> new Step(s.instruction().accept(this), s.origin())).toList();
  }

  private Point turn(double x, double y) {
    return new Point(x, y).turned(angleRad);
  }

  private Position turn(Position p) {
    return new Position(p.xy().turned(angleRad), p.z());
  }

  @Override
  Instruction otherwise(Instruction instruction) {
    return instruction;
  }

  @Override
  public Instruction rapidXy(Instruction.RapidXy rapid) {
    Point p = turn(rapid.x(), rapid.y());
    return new Instruction.RapidXy(p.x(), p.y());
  }

  @Override
  public Instruction feed(Instruction.Feed feed) {
    return new Instruction.Feed(turn(feed.to()), feed.feedMmPerMin());
  }

  @Override
  public Instruction turn(Instruction.Turn turn) {
    if (turn.plane() != Plane.XY) {
      throw new IllegalArgumentException("plane must be XY but was " + turn.plane());
    }
    Point centre = turn(turn.centreU(), turn.centreV());
    return new Instruction.Turn(
        turn(turn.to()),
        turn.plane(),
        centre.x(),
        centre.y(),
        turn.sweepRad(),
        turn.feedMmPerMin());
  }

  @Override
  public Instruction drill(Instruction.Drill drill) {
    Point p = turn(drill.x(), drill.y());
    return new Instruction.Drill(
        p.x(),
        p.y(),
        drill.retractZ(),
        drill.bottomZ(),
        drill.peckMm(),
        drill.dwellSeconds(),
        drill.feedMmPerMin());
  }

  @Override
  public Instruction probe(Instruction.Probe probe) {
    return new Instruction.Probe(turn(probe.to()), probe.feedMmPerMin(), probe.tripsAtZMm());
  }
}
