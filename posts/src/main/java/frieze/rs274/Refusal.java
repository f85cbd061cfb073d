package frieze.rs274;

/**
 * Breaks off the line that is being read or carried out; the interpreter turns it into a
 * diagnostic.
 */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final ProgramCode code;
  private final int at;
  private final int end;
  private final String hint;

  /**
   * Makes a refusal.
   *
   * @param at the byte in the line where the trouble starts
   * @param end the byte after it
   */
  Refusal(ProgramCode code, int at, int end, String message, String hint) {
    super(message, null, false, false);
    this.code = code;
    this.at = at;
    this.end = end;
    this.hint = hint;
  }

  ProgramCode code() {
    return code;
  }

  int at() {
    return at;
  }

  int end() {
    return end;
  }

  String hint() {
    return hint;
  }

  String text() {
    String message = getMessage();
    return message == null ? "" : message;
  }
}
