package frieze.keys;

import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;

/** Finds brackets and blocks inside each other that are too deep for anything a job can mean. */
final class Nesting {
  /** Far more than any job needs, far less than a composer can bear. */
  private static final int DEEPEST = 100;

  private Nesting() {}

  /** Where a text goes too deep, if it does. */
  static Optional<Mark> tooDeep(LoadSettings settings, String text) {
    int depth = 0;
    for (Event event : new Parse(settings).parseString(text)) {
      switch (event.getEventId()) {
        case MappingStart, SequenceStart -> depth++;
        case MappingEnd, SequenceEnd -> depth--;
        default -> {
          continue;
        }
      }
      if (depth > DEEPEST) {
        return event.getStartMark();
      }
    }
    return Optional.empty();
  }
}
