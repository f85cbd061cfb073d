package frieze.motion;

import frieze.shop.Tool;
import java.util.Optional;

/**
 * One thing that a planner asks of a machine, in the program's frame (millimetres, mm/min).
 *
 * <p>Rapids move either in the plane or along Z, never both at once: a machine whose axes are not
 * coordinated then goes where it is drawn to go. A controller may have no word for some of these;
 * lowering replaces them.
 */
public sealed interface Instruction {
  <R> R accept(Visitor<R> visitor);

  /** One case for each kind of instruction. */
  interface Visitor<R> {
    R raiseToSafe(RaiseToSafe raise);

    R rapidXy(RapidXy rapid);

    R rapidZ(RapidZ rapid);

    R feed(Feed feed);

    R turn(Turn turn);

    R drill(Drill drill);

    R toolChange(ToolChange change);

    R spindle(Spindle spindle);

    R dwell(Dwell dwell);

    R stop(Stop stop);

    R probe(Probe probe);

    R torch(Torch torch);

    R heightControl(HeightControl control);

    R remark(Remark remark);
  }

  /**
   * Raises the tool from wherever it stands to a height from which it may travel anywhere; this can
   * only rise. Where the position is after it is not known in Z until the next {@link RapidZ}.
   */
  record RaiseToSafe() implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.raiseToSafe(this);
    }
  }

  /** A rapid at the present height. */
  record RapidXy(double x, double y) implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.rapidXy(this);
    }
  }

  /** A rapid straight up or down. */
  record RapidZ(double z) implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.rapidZ(this);
    }
  }

  /** A straight cutting move. */
  record Feed(Position to, double feedMmPerMin) implements Instruction {
    public Feed {
      requireFeed(feedMmPerMin);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.feed(this);
    }
  }

  /**
   * A cutting move along an arc or helix in a plane.
   *
   * @param centreU the centre along the plane's first axis
   * @param centreV the centre along the plane's second axis
   * @param sweepRad the angle, positive counter-clockwise; several turns are allowed
   */
  record Turn(
      Position to,
      Plane plane,
      double centreU,
      double centreV,
      double sweepRad,
      double feedMmPerMin)
      implements Instruction {
    public Turn {
      requireFeed(feedMmPerMin);
      if (!Double.isFinite(sweepRad) || sweepRad == 0) {
        throw new IllegalArgumentException("sweepRad must be finite and not 0 but was " + sweepRad);
      }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.turn(this);
    }
  }

  /**
   * Drills one hole at the present X and Y, starting and ending at the retract height.
   *
   * @param retractZ the height from which feed starts
   * @param bottomZ the tip's lowest point
   * @param peckMm the depth between clearings; 0 drills in one go
   * @param dwellSeconds the rest at the bottom
   */
  record Drill(
      double x,
      double y,
      double retractZ,
      double bottomZ,
      double peckMm,
      double dwellSeconds,
      double feedMmPerMin)
      implements Instruction {
    public Drill {
      requireFeed(feedMmPerMin);
      if (!(bottomZ < retractZ)) {
        throw new IllegalArgumentException(
            "bottomZ must be below retractZ but was " + bottomZ + ", " + retractZ + " mm");
      }
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.drill(this);
    }
  }

  /** From here on another tool is in the spindle. */
  record ToolChange(Tool tool) implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.toolChange(this);
    }
  }

  /**
   * Turns the spindle on, clockwise seen from above, or off.
   *
   * @param rpm empty for off
   */
  record Spindle(Optional<Double> rpm) implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.spindle(this);
    }
  }

  /** Waits. */
  record Dwell(double seconds) implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.dwell(this);
    }
  }

  /** Stops until the operator starts again. */
  record Stop(String message) implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.stop(this);
    }
  }

  /**
   * Feeds towards a position until a probe trips.
   *
   * @param tripsAtZMm the Z of the tip when the probe has tripped, which the controller then takes
   *     as its own: that of the surface, or less where the probe trips after the tip has met it
   */
  record Probe(Position to, double feedMmPerMin, double tripsAtZMm) implements Instruction {
    public Probe {
      requireFeed(feedMmPerMin);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.probe(this);
    }
  }

  /** Lights or puts out the torch. */
  record Torch(boolean on) implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.torch(this);
    }
  }

  /** Lets the torch follow the sheet, or holds its height. */
  record HeightControl(boolean on) implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.heightControl(this);
    }
  }

  /** A comment for the person who reads the program. */
  record Remark(String text) implements Instruction {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.remark(this);
    }
  }

  private static void requireFeed(double feedMmPerMin) {
    if (!(feedMmPerMin > 0) || !Double.isFinite(feedMmPerMin)) {
      throw new IllegalArgumentException(
          "feedMmPerMin must be > 0 but was " + feedMmPerMin + " mm/min");
    }
  }
}
