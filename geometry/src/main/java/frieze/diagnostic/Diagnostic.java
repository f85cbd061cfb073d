package frieze.diagnostic;

/**
 * One thing that is wrong, or worth knowing, in an input.
 *
 * @param message what is wrong, with numbers and units, without the place
 * @param hint what to do about it; empty when there is nothing to add
 */
public record Diagnostic(
    Severity severity, Code code, SourceSpan where, String message, String hint) {

  /** Makes an error. */
  public static Diagnostic error(Code code, SourceSpan where, String message, String hint) {
    return new Diagnostic(Severity.ERROR, code, where, message, hint);
  }

  /** Makes a warning. */
  public static Diagnostic warning(Code code, SourceSpan where, String message, String hint) {
    return new Diagnostic(Severity.WARNING, code, where, message, hint);
  }

  /** Makes a note. */
  public static Diagnostic note(Code code, SourceSpan where, String message) {
    return new Diagnostic(Severity.NOTE, code, where, message, "");
  }

  public boolean isError() {
    return severity == Severity.ERROR;
  }

  /** The first line as it is printed: {@code file:line:col: error[CODE]: message}. */
  @Override
  public String toString() {
    String place = where.toString();
    String kind = severity.name().toLowerCase(java.util.Locale.ROOT);
    return (place.isEmpty() ? "" : place + ": ") + kind + "[" + code.id() + "]: " + message;
  }
}
