package frieze.plan.cut;

import frieze.shop.Tool;
import java.util.List;

/**
 * The cuts that one tool makes for one line of the work list.
 *
 * @param blocks they may change places
 */
public record Batch(Tool tool, Stage stage, List<Block> blocks) {
  /** When a kind of work is done. */
  public enum Stage {
    RECESS,
    GROOVE,
    BORE,
    OPENING,
    EDGE,
    CUTOUT
  }

  /** The speed of the spindle. */
  public double rpm() {
    return blocks.get(0).cuts().apply(0).get(0).spindleRpm();
  }
}
