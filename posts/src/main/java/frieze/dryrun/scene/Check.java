package frieze.dryrun.scene;

import frieze.dryrun.finding.NotChecked;
import frieze.motion.Executed;
import frieze.rs274.ReadingRules.Paths;
import java.util.List;

/**
 * One reason to object to programs. Sees every event of a setup once, in running order, and keeps
 * no more than it needs.
 */
public interface Check {
  /** A program starts, on a machine that moves in its own way between the points it is told. */
  default void paths(Paths habits) {}

  /** A program starts. */
  default void start(String program) {}

  /** The tool moves. */
  default void move(Passage passage, FindingLog log) {}

  /** Something else than a move happens. */
  default void event(Executed event, FindingLog log) {}

  /** A program has ended. */
  default void end(FindingLog log) {}

  /** All programs have ended. */
  default void finish(FindingLog log) {}

  /** What this check could not look at. */
  default List<NotChecked> notChecked() {
    return List.of();
  }
}
