package frieze.rs274;

import frieze.motion.Executed.Rotation;
import frieze.motion.Executed.State;
import frieze.motion.Plane;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * What is in force between the lines. G codes are times ten.
 *
 * <p>The report gives no list of what is in force at the start; taken here is what M2 leaves behind
 * (NISTIR 6556, 3.6.1): G1, G17, G54, G90, G94, G40; also G49 and G98.
 */
final class Modes {
  static final int NO_LINE = -2;
  static final int G0 = 0;
  static final int G1 = 10;
  static final int G2 = 20;
  static final int G3 = 30;
  static final int G38_2 = 382;
  static final int G80 = 800;
  static final int G81 = 810;
  static final int G89 = 890;

  LengthUnit unit;
  boolean unitSet;
  boolean incremental;
  boolean distanceSet;
  Plane plane = Plane.XY;
  boolean inverseTime;

  /** The last F as a number; NaN when none is in force. */
  double feed = Double.NaN;

  boolean compensation;
  boolean retractToR;
  int system = 1;

  /** The path control code; 0 when the program has not said. */
  int path;

  int motion = G1;
  int selectedTool = -1;
  Optional<Integer> tool;
  Rotation rotation = Rotation.STOPPED;
  OptionalDouble rpm = OptionalDouble.empty();
  boolean torchOn;
  boolean mist;
  boolean flood;
  String lastComment = "";

  /** The line of the last comment, if nothing else was on it. */
  int commentLine = NO_LINE;

  private @Nullable State state;

  Modes(Start start) {
    unit = start.unit();
    tool = start.tool().isPresent() ? Optional.of(start.tool().getAsInt()) : Optional.empty();
  }

  static boolean isCycle(int motion) {
    return motion >= G81 && motion <= G89;
  }

  void stateChanged() {
    state = null;
  }

  State state() {
    State now = state;
    if (now == null) {
      now = new State(tool, rotation, rpm, torchOn);
      state = now;
    }
    return now;
  }
}
