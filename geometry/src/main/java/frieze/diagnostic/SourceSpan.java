package frieze.diagnostic;

/**
 * A place in a text that somebody wrote.
 *
 * @param source the file as the user named it, never an absolute path that the user did not give
 * @param line counted from 1; 0 when only the file is known
 * @param column in UTF-16 units, counted from 1; 0 when only the line is known
 * @param length in UTF-16 units; 0 when unknown
 */
public record SourceSpan(String source, int line, int column, int length) {
  /** No place at all. */
  public static final SourceSpan NONE = new SourceSpan("", 0, 0, 0);

  public SourceSpan {
    if (line < 0 || column < 0 || length < 0) {
      throw new IllegalArgumentException(
          "line, column and length must be >= 0 but were " + line + ", " + column + ", " + length);
    }
  }

  /** The whole of a file. */
  public static SourceSpan file(String source) {
    return new SourceSpan(source, 0, 0, 0);
  }

  /** Writes {@code file:line:col}, leaving out what is not known. */
  @Override
  public String toString() {
    StringBuilder text = new StringBuilder(source);
    if (line > 0) {
      text.append(':').append(line);
      if (column > 0) {
        text.append(':').append(column);
      }
    }
    return text.toString();
  }
}
