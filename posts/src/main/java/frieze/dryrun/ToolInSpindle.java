package frieze.dryrun;

import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Keeps which tool is in the spindle: the one that the program names, the one that the operator put
 * in, or the only one there is.
 *
 * <p>Where no word changes the tool, a stop does, if the comment before it tells the operator so:
 * {@code CHANGE TO TOOL 2}.
 */
final class ToolInSpindle {
  private static final Pattern BY_HAND =
      Pattern.compile("(?:CHANGE TO|AIR PASS:) TOOL (\\d{1,6})\\b.*", Pattern.CASE_INSENSITIVE);

  private final Surroundings known;
  private Optional<Integer> named;

  /** What the words of the program said last. */
  private Optional<Integer> lastWritten = Optional.empty();

  ToolInSpindle(Surroundings known, OptionalInt atStart) {
    this.known = known;
    this.named = atStart.isPresent() ? Optional.of(atStart.getAsInt()) : Optional.empty();
  }

  void change(Optional<Integer> number) {
    named = number;
  }

  /** The operator changes the tool at a stop; false if the stop says nothing of it. */
  boolean changedAt(Executed.Stop stop) {
    Matcher told = BY_HAND.matcher(stop.message().strip());
    if (stop.optional() || !told.matches()) {
      return false;
    }
    change(Optional.of(Integer.valueOf(told.group(1))));
    return true;
  }

  Optional<Integer> number() {
    return named.isEmpty() && known.tools().size() == 1
        ? Optional.of(known.tools().get(0).number())
        : named;
  }

  /** Takes the next move, with the tool that makes it. */
  Passage passage(Executed.Move move, Optional<StockBox> stock) {
    Optional<Integer> written = move.state().toolNumber();
    if (written.isPresent() && !written.equals(lastWritten)) {
      lastWritten = written;
      named = written;
    }
    Optional<Integer> number = number();
    return new Passage(move, number, number.flatMap(known::tool), stock);
  }
}
