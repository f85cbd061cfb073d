package frieze.diagnostic;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Collects the diagnostics of one stage, so that a user sees all of them at once.
 *
 * <p>Not safe for use by several threads.
 */
public final class Diagnostics {
  private static final Comparator<Diagnostic> BY_PLACE =
      Comparator.comparing((Diagnostic d) -> d.where().source())
          .thenComparingInt(d -> d.where().line())
          .thenComparingInt(d -> d.where().column());

  private final List<Diagnostic> found = new ArrayList<>();

  public void add(Diagnostic diagnostic) {
    found.add(diagnostic);
  }

  public void addAll(Iterable<Diagnostic> diagnostics) {
    diagnostics.forEach(found::add);
  }

  public void error(Code code, SourceSpan where, String message, String hint) {
    add(Diagnostic.error(code, where, message, hint));
  }

  public void warning(Code code, SourceSpan where, String message, String hint) {
    add(Diagnostic.warning(code, where, message, hint));
  }

  public void note(Code code, SourceSpan where, String message) {
    add(Diagnostic.note(code, where, message));
  }

  public boolean hasErrors() {
    return found.stream().anyMatch(Diagnostic::isError);
  }

  /**
   * All diagnostics, by file, line and column; those of one place in the order of their finding.
   */
  public List<Diagnostic> sorted() {
    return found.stream().sorted(BY_PLACE).toList();
  }

  /**
   * Ends a stage: does nothing without errors.
   *
   * @throws BadInputException with everything collected, if there is an error
   */
  public void throwIfErrors() {
    if (hasErrors()) {
      throw new BadInputException(sorted());
    }
  }
}
