package frieze.build;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.keys.JobCode;

/**
 * Where a run broke off.
 *
 * @param program the file's name
 * @param line as told: counted from 1, or the N word that the controller shows
 */
public record BrokenProgram(String program, String line) {
  /**
   * Reads {@code front-01.nc:120} or {@code front-01.nc:N1200}.
   *
   * @throws IllegalArgumentException with a message for the user, if it can't be read
   */
  public static BrokenProgram of(String text) {
    int colon = text.lastIndexOf(':');
    String line = text.substring(colon + 1).strip();
    if (colon < 1 || !line.matches("N?\\d{1,9}")) {
      throw new IllegalArgumentException(
          "\"" + text + "\" must be a program and a line, such as front-01.nc:120");
    }
    String program = text.substring(0, colon).strip();
    int folder = Math.max(program.lastIndexOf('/'), program.lastIndexOf('\\'));
    return new BrokenProgram(program.substring(folder + 1), line);
  }

  /**
   * The line's number in a text.
   *
   * @throws BadInputException if there is no such line, or more than one
   */
  int lineIn(String text) {
    String[] lines = text.split("\\R", -1);
    int found = 0;
    if (line.charAt(0) == 'N') {
      for (int i = 0; i < lines.length; i++) {
        if (lines[i].startsWith(line + " ")) {
          if (found > 0) {
            throw unknown(
                line + " stands in lines " + found + " and " + (i + 1), "give one of them instead");
          }
          found = i + 1;
        }
      }
    } else {
      int number = Integer.parseInt(line);
      found = number < lines.length ? number : 0;
    }
    if (found == 0) {
      throw unknown(program + " has no line " + line, "count from 1, comments too");
    }
    return found;
  }

  static BadInputException unknown(String message, String hint) {
    return new BadInputException(
        Diagnostic.error(JobCode.NO_SUCH_LINE, SourceSpan.NONE, message, hint));
  }
}
