package frieze.rs274;

import frieze.diagnostic.Diagnostic;
import frieze.motion.Executed.MachinePosition;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What reading and carrying out a program came to.
 *
 * @param diagnostics the first of each kind, in the order of the text
 * @param counts how many of each kind there were, kept or not
 * @param errors how many errors there were
 * @param lines the lines that were read
 * @param unit the unit in force at the end
 * @param unitWritten whether G20 or G21 said so
 * @param ending how the program ended
 * @param position where the tool stands at the end, in the work coordinates and offsets then in
 *     force, in millimetres; empty for axes that are unknown
 * @param machine the same in machine coordinates
 * @param g92 whether an offset of G92 was in force at the end; M2 takes it away by the report, yet
 *     not on every controller
 */
public record ProgramSummary(
    List<Diagnostic> diagnostics,
    Map<ProgramCode, Long> counts,
    long errors,
    int lines,
    LengthUnit unit,
    boolean unitWritten,
    Ending ending,
    MachinePosition position,
    MachinePosition machine,
    boolean g92) {

  /** How a program ended. */
  public enum Ending {
    /** With M2 or M30. */
    END_CODE,
    /** With the second {@code %} line. */
    PERCENT,
    /** With the end of the text. */
    END_OF_TEXT,
    /** Broken off at an error. */
    BROKEN_OFF
  }

  public ProgramSummary {
    diagnostics = List.copyOf(diagnostics);
    counts = Collections.unmodifiableMap(new LinkedHashMap<>(counts));
  }

  public boolean hasErrors() {
    return errors > 0;
  }

  /** Tells whether the text was a text at all; if not, nothing of it was read. */
  public boolean readable() {
    return count(ProgramCode.NOT_PLAIN_TEXT) == 0;
  }

  /** How many diagnostics of a kind there were. */
  public long count(ProgramCode code) {
    return counts.getOrDefault(code, 0L);
  }
}
