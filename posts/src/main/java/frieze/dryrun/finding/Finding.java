package frieze.dryrun.finding;

import frieze.diagnostic.Code;
import frieze.diagnostic.Severity;

/**
 * Something that a program would do and should not.
 *
 * <p>Neighbouring lines with the same fault make one finding: the worst of them is told.
 *
 * @param code a {@link FindingCode}, or the code of what the interpreter could not read
 * @param program the name of the program; empty for something between programs
 * @param line the worst line, counted from 1; 0 when it belongs to no line
 * @param firstLine the first line with the fault
 * @param lastLine the last line with the fault
 * @param column counted from 1; 0 when unknown
 * @param text the worst line as it stands in the program
 * @param move what the line does, such as {@code feed to X12 Y3 Z-2}; empty for something else than
 *     a move
 * @param amount by how much
 * @param moves how many moves have the fault in these lines
 * @param message what is wrong, with numbers and units, without the place
 * @param hint what to do about it
 */
public record Finding(
    Severity severity,
    Code code,
    String program,
    int line,
    int firstLine,
    int lastLine,
    int column,
    String text,
    String move,
    Amount amount,
    int moves,
    String message,
    String hint) {

  public boolean isError() {
    return severity == Severity.ERROR;
  }

  public Finding withText(String lineText) {
    return new Finding(
        severity, code, program, line, firstLine, lastLine, column, lineText, move, amount, moves,
        message, hint);
  }

  /** One line: {@code program:line: severity[code]: message}. */
  @Override
  public String toString() {
    String place = line > 0 ? program + ":" + line + ": " : program.isEmpty() ? "" : program + ": ";
    String kind = severity.name().toLowerCase(java.util.Locale.ROOT);
    return place + kind + "[" + code.id() + "]: " + message;
  }
}
