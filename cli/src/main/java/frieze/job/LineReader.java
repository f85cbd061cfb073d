package frieze.job;

import frieze.design.BorderLines;
import frieze.diagnostic.Diagnostics;
import frieze.keys.JobCode;
import frieze.keys.Located;
import frieze.keys.Values;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Reads the lines that run round a panel. */
final class LineReader {
  private final List<String> drawn;
  private final Diagnostics found;

  /**
   * Prepares to read.
   *
   * @param drawn the names of the job's drawings
   */
  LineReader(List<String> drawn, Diagnostics found) {
    this.drawn = drawn;
    this.found = found;
  }

  /** Reads all lines of a side of a panel. */
  List<BorderLines> read(Map<String, Located<Values>> named) {
    List<BorderLines> lines = new ArrayList<>();
    named.forEach(
        (name, located) -> {
          if (drawn.contains(name)) {
            found.error(
                JobCode.DUPLICATE_KEY,
                located.where(),
                "the border lines \"" + name + "\" have the name of a drawing",
                "give them another name");
          }
          Values v = located.value();
          lines.add(
              new BorderLines(
                  name,
                  v.get(LineKeys.INSET),
                  v.get(LineKeys.WIDTH),
                  v.get(LineKeys.CORNER),
                  located.where()));
        });
    return lines;
  }
}
