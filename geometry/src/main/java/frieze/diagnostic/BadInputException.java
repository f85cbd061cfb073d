package frieze.diagnostic;

import java.util.List;
import java.util.stream.Collectors;

/** Says that an input can't be used, with every reason that was found. */
public final class BadInputException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<Diagnostic> diagnostics;

  public BadInputException(List<Diagnostic> diagnostics) {
    super(diagnostics.stream().map(Diagnostic::toString).collect(Collectors.joining("\n")));
    this.diagnostics = List.copyOf(diagnostics);
  }

  public BadInputException(Diagnostic diagnostic) {
    this(List.of(diagnostic));
  }

  /** An exception with one error. */
  public static BadInputException of(Code code, SourceSpan where, String message, String hint) {
    return new BadInputException(Diagnostic.error(code, where, message, hint));
  }

  /** The reasons, at least one of them an error. */
  public List<Diagnostic> diagnostics() {
    return diagnostics;
  }
}
