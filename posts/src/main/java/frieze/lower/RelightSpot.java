package frieze.lower;

import frieze.curve.Point;
import frieze.motion.Motion;
import java.util.List;
import java.util.Optional;

/** Tells where beside a cut that broke off a torch may be lit again. */
@FunctionalInterface
public interface RelightSpot {
  /** Nothing is known of parts and scrap: there is no such spot. */
  RelightSpot NONE = (at, ahead, done) -> Optional.empty();

  /**
   * Finds a spot in solid scrap from which a straight way leads to where the cut goes on.
   *
   * @param at where the cut goes on, in the program's frame (mm)
   * @param ahead the direction that it takes there
   * @param done all that was cut before
   * @return in the program's frame; empty where there is no room
   */
  Optional<Point> find(Point at, Point ahead, List<Motion> done);
}
