package frieze.dryrun;

import frieze.rs274.ReadingRules;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/**
 * The text of a program, which can be read more than once, and the rules to read it by.
 *
 * <p>Which tool is in the spindle at the start, where the zero lies on the machine and other things
 * that the operator knows are part of the rules ({@link ReadingRules#start}).
 */
public final class ProgramText {
  /** Gives the bytes from the beginning, each time it is asked. */
  @FunctionalInterface
  public interface Source {
    InputStream open() throws IOException;
  }

  private final String name;
  private final Source source;
  private final ReadingRules rules;

  private ProgramText(String name, Source source, ReadingRules rules) {
    this.name = name;
    this.source = source;
    this.rules = rules;
  }

  /**
   * A text in memory.
   *
   * @param name as the user knows it; used in findings
   */
  public static ProgramText of(String name, byte[] text, ReadingRules rules) {
    byte[] own = text.clone();
    return new ProgramText(name, () -> new ByteArrayInputStream(own), rules);
  }

  /** A text that is read from somewhere, such as a file; never held in memory as a whole. */
  public static ProgramText of(String name, Source source, ReadingRules rules) {
    return new ProgramText(name, source, rules);
  }

  public String name() {
    return name;
  }

  public ReadingRules rules() {
    return rules;
  }

  /**
   * Opens the text at its beginning.
   *
   * @throws UncheckedIOException if that fails
   */
  InputStream open() {
    try {
      return source.open();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
