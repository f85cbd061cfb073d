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

  /** The reasons, at least one of them an error. */
  public List<Diagnostic> diagnostics() {
    return diagnostics;
  }
}
