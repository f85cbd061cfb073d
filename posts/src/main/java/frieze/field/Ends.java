package frieze.field;

import frieze.curve.Point;
import java.util.Optional;

/**
 * What of a straight move the moves before and after it see to.
 *
 * @param start how much of the tool's shape at its start has been cut already
 * @param onward the direction of the next move, which starts with the same tool where this one ends
 *     and leaves out, at most, what lies behind its start; empty if there is none. What lies past
 *     the end of this move may then be left out, but for the wedge behind the next.
 */
record Ends(Start start, Optional<Point> onward) {
  /** What is known of the tool's shape at the start. */
  enum Start {
    /** Nothing has been cut. */
    NEW,
    /** The part that lies behind the start has been cut. */
    BEHIND_DONE,
    /** All has been cut. */
    DONE
  }

  static final Ends FREE = new Ends(Start.NEW, Optional.empty());
  static final Ends STARTED = new Ends(Start.DONE, Optional.empty());

  static Ends startDone(boolean done) {
    return done ? STARTED : FREE;
  }
}
