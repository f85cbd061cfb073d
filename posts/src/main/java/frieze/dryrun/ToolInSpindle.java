package frieze.dryrun;

import frieze.motion.Executed;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Keeps which tool is in the spindle: the one that the program names, the one that the operator put
 * in, or the only one there is.
 */
final class ToolInSpindle {
  private final Surroundings known;
  private Optional<Integer> named;

  ToolInSpindle(Surroundings known, OptionalInt atStart) {
    this.known = known;
    this.named = atStart.isPresent() ? Optional.of(atStart.getAsInt()) : Optional.empty();
  }

  void change(Optional<Integer> number) {
    named = number;
  }

  Optional<Integer> number() {
    return named.isEmpty() && known.tools().size() == 1
        ? Optional.of(known.tools().get(0).number())
        : named;
  }

  /** Takes the next move, with the tool that makes it. */
  Passage passage(Executed.Move move, Optional<StockBox> stock) {
    if (move.state().toolNumber().isPresent()) {
      named = move.state().toolNumber();
    }
    Optional<Integer> number = number();
    return new Passage(move, number, number.flatMap(known::tool), stock);
  }
}
