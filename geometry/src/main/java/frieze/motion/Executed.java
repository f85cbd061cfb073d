package frieze.motion;

import frieze.diagnostic.SourceSpan;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One thing that a program's text makes a machine do, in the order of doing.
 *
 * <p>Positions are millimetres in the program's frame: along each axis, the work coordinates in
 * force when the program first gives it a place (for most programs those at the start). Later
 * changes of origin do not move this frame. {@link Move#machineTo} tells the machine's own
 * coordinates where they are known.
 */
public sealed interface Executed {
  /** The word, or the line, that brought it about. */
  SourceSpan span();

  <R> R accept(Visitor<R> visitor);

  /** One case for each kind of event. */
  interface Visitor<R> {
    R move(Move move);

    R dwell(Dwell dwell);

    R toolChange(ToolChange change);

    R spindle(SpindleChange change);

    R stop(Stop stop);

    R torch(Torch torch);

    R other(Other other);

    R end(End end);
  }

  /** How a move is driven. */
  enum Kind {
    RAPID,
    FEED,
    /** Stops early where the probe trips; {@code to} is the programmed end. */
    PROBE
  }

  /** How the spindle turns, seen from above. */
  enum Rotation {
    STOPPED,
    CLOCKWISE,
    COUNTER_CLOCKWISE
  }

  /**
   * The state that a move runs in.
   *
   * @param toolNumber the tool in the spindle; empty when the program has not said
   * @param rotation what the program last told the spindle
   * @param rpm the last S word; empty when there was none
   * @param torchOn for programs that drive a torch
   */
  record State(
      Optional<Integer> toolNumber, Rotation rotation, OptionalDouble rpm, boolean torchOn) {}

  /**
   * Machine coordinates, each axis known or not.
   *
   * @param x empty when no statement of the program and no given offset tells it
   */
  record MachinePosition(OptionalDouble x, OptionalDouble y, OptionalDouble z) {
    public static final MachinePosition UNKNOWN =
        new MachinePosition(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty());

    /** The coordinate along an axis: 0 is X, 1 is Y, 2 is Z. */
    public OptionalDouble get(int axis) {
      return axis == 0 ? x : axis == 1 ? y : z;
    }
  }

  /**
   * Which axes of a move's start were known to the program. An axis that was never given has
   * whatever value the machine stood at; the path then starts from an assumed 0 along it.
   */
  record KnownAxes(boolean x, boolean y, boolean z) {
    public static final KnownAxes ALL = new KnownAxes(true, true, true);
    public static final KnownAxes NONE = new KnownAxes(false, false, false);

    public boolean get(int axis) {
      return axis == 0 ? x : axis == 1 ? y : z;
    }
  }

  /**
   * A move of the tool.
   *
   * @param path in the program's frame
   * @param fromKnown which coordinates of the path's start are known
   * @param toKnown which coordinates of the path's end are known (an axis the program has not yet
   *     given a value stays unknown; so does one that went to a machine coordinate while the work
   *     offset is unknown: the path is then drawn as if it had not moved along that axis)
   * @param feedMmPerMin empty for rapids, and for feed moves when no F was ever given
   * @param seconds the time that the text asks for (inverse time mode); empty otherwise
   */
  record Move(
      Kind kind,
      Motion path,
      KnownAxes fromKnown,
      KnownAxes toKnown,
      MachinePosition machineTo,
      OptionalDouble feedMmPerMin,
      OptionalDouble seconds,
      State state,
      SourceSpan span)
      implements Executed {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.move(this);
    }
  }

  /** A wait. */
  record Dwell(double seconds, State state, SourceSpan span) implements Executed {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.dwell(this);
    }
  }

  /** A tool goes into the spindle. */
  record ToolChange(Optional<Integer> toolNumber, SourceSpan span) implements Executed {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.toolChange(this);
    }
  }

  /** The spindle starts, stops, turns the other way or changes its speed. */
  record SpindleChange(Rotation rotation, OptionalDouble rpm, SourceSpan span) implements Executed {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.spindle(this);
    }
  }

  /**
   * The program waits for the operator.
   *
   * @param optional only if the operator has switched optional stops on
   * @param message the last comment or message before the stop, lines that follow one another
   *     joined; empty if there was none
   */
  record Stop(boolean optional, String message, SourceSpan span) implements Executed {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.stop(this);
    }
  }

  /** The torch is lit or put out. */
  record Torch(boolean on, SourceSpan span) implements Executed {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.torch(this);
    }
  }

  /**
   * Something that moves nothing but that a checker wants to know of.
   *
   * @param what stable lower-case words, such as {@code offset g92}, {@code coolant on}
   */
  record Other(String what, SourceSpan span) implements Executed {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.other(this);
    }
  }

  /** The program ends: M2, M30, or the end of the text. */
  record End(SourceSpan span) implements Executed {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.end(this);
    }
  }
}
