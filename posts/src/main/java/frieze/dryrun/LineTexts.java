package frieze.dryrun;

import java.io.BufferedInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.NavigableSet;

/** Fetches single lines of a text by their numbers. Lines end with CR, LF or both. */
final class LineTexts {
  /** Longer lines are shown up to here. */
  static final int SHOWN_BYTES = 200;

  private LineTexts() {}

  /**
   * Reads a text up to the last of the wanted lines.
   *
   * @param wanted line numbers, counted from 1
   * @return the lines that there are, without what cannot be printed
   */
  static Map<Integer, String> of(ProgramText program, NavigableSet<Integer> wanted) {
    Map<Integer, String> found = new HashMap<>();
    if (wanted.isEmpty()) {
      return found;
    }
    try (InputStream in = new BufferedInputStream(program.open())) {
      int line = 1;
      boolean afterCr = false;
      ByteArrayOutputStream text = new ByteArrayOutputStream();
      int last = wanted.last();
      for (int b = in.read(); b >= 0 && line <= last; b = in.read()) {
        if (b == '\n' && afterCr) {
          afterCr = false;
          continue;
        }
        afterCr = b == '\r';
        if (b == '\n' || b == '\r') {
          keep(found, wanted, line, text);
          line++;
        } else if (text.size() < SHOWN_BYTES) {
          text.write(b);
        }
      }
      keep(found, wanted, line, text);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return found;
  }

  private static void keep(
      Map<Integer, String> found,
      NavigableSet<Integer> wanted,
      int line,
      ByteArrayOutputStream text) {
    if (wanted.contains(line)) {
      String shown = text.toString(StandardCharsets.UTF_8);
      found.putIfAbsent(line, shown.replaceAll("\\p{Cntrl}", " ").strip());
    }
    text.reset();
  }
}
