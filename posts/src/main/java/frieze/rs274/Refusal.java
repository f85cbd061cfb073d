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

  /** Refuses a whole line. */
  static Refusal ofLine(Block block, ProgramCode code, String message) {
    return new Refusal(code, block.from(), block.to(), message, "");
  }

  /** Refuses a word, or the line if the word is not on it. */
  static Refusal ofWord(Block block, char letter, ProgramCode code, String message) {
    return block.has(letter)
        ? new Refusal(code, block.at(letter), block.end(letter), message, "")
        : ofLine(block, code, message);
  }

  /** Refuses a G word by its place among the G words of the line. */
  static Refusal ofG(Block block, int index, ProgramCode code, String message) {
    return new Refusal(code, block.gAt[index], block.gEnd[index], message, "");
  }

  /** Refuses an M word by its place among the M words of the line. */
  static Refusal ofM(Block block, int index, ProgramCode code, String message) {
    return new Refusal(code, block.mAt[index], block.mEnd[index], message, "");
  }

  /** The same with a hint. */
  Refusal withHint(String newHint) {
    return new Refusal(code, at, end, text(), newHint);
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
