package frieze.lower;

import frieze.motion.Plane;
import frieze.shop.Tool;

/**
 * One thing that a post writes. Lengths are counted in the last digits of the program's {@link
 * Grid}; feeds in those of its feed grid. Every position is complete: a post leaves out the words
 * that its dialect leaves out.
 */
public sealed interface Command {
  <R> R accept(Visitor<R> visitor);

  /** One case for each kind of command. */
  interface Visitor<R> {
    R raise(Raise raise);

    R rapidXy(RapidXy rapid);

    R rapidZ(RapidZ rapid);

    R line(Line line);

    R arc(Arc arc);

    R drill(Drill drill);

    R toolChange(ToolChange change);

    R spindleOn(SpindleOn on);

    R spindleOff(SpindleOff off);

    R dwell(Dwell dwell);

    R stop(Stop stop);

    R probe(Probe probe);

    R torch(Torch torch);

    R heightControl(HeightControl control);

    R remark(Remark remark);
  }

  /** A rapid to the top of Z in machine coordinates. */
  record Raise() implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.raise(this);
    }
  }

  /** A rapid in the plane. */
  record RapidXy(long x, long y) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.rapidXy(this);
    }
  }

  /** A rapid straight up or down. */
  record RapidZ(long z) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.rapidZ(this);
    }
  }

  /** A straight cutting move. */
  record Line(long x, long y, long z, long feed) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.line(this);
    }
  }

  /**
   * An arc, a full circle, or a helix of at most one turn.
   *
   * @param clockwise seen from the positive end of the plane's normal
   * @param offsetU from the start to the centre along the plane's first axis
   * @param offsetV from the start to the centre along the plane's second axis
   * @param radius signed as in the radius format: negative beyond a half turn; 0 in centre format
   */
  record Arc(
      long x,
      long y,
      long z,
      Plane plane,
      boolean clockwise,
      long offsetU,
      long offsetV,
      long radius,
      long feed)
      implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.arc(this);
    }
  }

  /**
   * A drilling cycle at the present X and Y, starting from and ending at {@code retractZ}.
   *
   * @param peck 0 without
   * @param dwellSeconds 0 without
   */
  record Drill(
      long x, long y, long retractZ, long bottomZ, long peck, double dwellSeconds, long feed)
      implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.drill(this);
    }
  }

  /** The changer puts another tool in. */
  record ToolChange(Tool tool) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.toolChange(this);
    }
  }

  /** The spindle turns clockwise, seen from above. */
  record SpindleOn(long rpm) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.spindleOn(this);
    }
  }

  record SpindleOff() implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.spindleOff(this);
    }
  }

  record Dwell(double seconds) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.dwell(this);
    }
  }

  /** The operator reads the message, does what it says, and starts again. */
  record Stop(String message) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.stop(this);
    }
  }

  /**
   * Feeds towards a position until a probe trips.
   *
   * @param tripsAtZ the Z that the controller then stands at
   */
  record Probe(long x, long y, long z, long feed, long tripsAtZ) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.probe(this);
    }
  }

  record Torch(boolean on) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.torch(this);
    }
  }

  record HeightControl(boolean on) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.heightControl(this);
    }
  }

  record Remark(String text) implements Command {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.remark(this);
    }
  }
}
