package frieze.rs274;

import frieze.diagnostic.Severity;
import frieze.diagnostic.SourceSpan;
import frieze.motion.Executed;
import frieze.rs274.ProgramSummary.Ending;
import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;

/**
 * Reads a program in the language RS274/NGC and tells, event by event, what a machine would do.
 *
 * <p>Line by line: {@link LineSource} cuts the bytes, {@link BlockReader} reads a line into a
 * {@link Block}, {@link LineCodes} sorts its codes, {@link Executor} carries them out in the order
 * of the report and tells the consumer. A line that is wrong becomes a diagnostic and is not
 * carried out further; reading goes on with the next line, or ends there if the caller wants it.
 *
 * <p>Guarantees: memory does not grow with the text; any bytes give a summary and never an
 * exception; the same bytes give the same events. Source: NISTIR 6556; where it is silent, see
 * {@code docs/reference/reading-rs274.md}.
 */
public final class Interpreter {
  /** Of each kind, so many diagnostics are kept unless the caller says otherwise. */
  public static final int KEPT_PER_CODE = 20;

  private final ReadingRules rules;
  private final Findings findings;
  private final Parameters parameters = new Parameters();
  private final BlockReader reader;
  private final Executor executor;
  private final Block block = new Block();
  private final boolean stopAtError;
  private final Consumer<Executed> sink;
  private int lines;
  private boolean blankSoFar = true;
  private boolean percentOpen;

  Interpreter(String source, ReadingRules rules, ErrorHandling handling, Consumer<Executed> sink) {
    this.rules = rules;
    this.findings = new Findings(source, handling.keptPerCode());
    this.stopAtError = handling.stopAtFirst();
    this.reader = new BlockReader(rules, parameters);
    this.executor = new Executor(rules, parameters, findings, sink);
    this.sink = sink;
  }

  /**
   * What to do about errors.
   *
   * @param stopAtFirst whether the first error ends the reading
   * @param keptPerCode how many diagnostics of each kind are kept; all are counted
   */
  public record ErrorHandling(boolean stopAtFirst, int keptPerCode) {
    public static final ErrorHandling COLLECT = new ErrorHandling(false, KEPT_PER_CODE);
    public static final ErrorHandling STOP = new ErrorHandling(true, KEPT_PER_CODE);

    public ErrorHandling {
      if (keptPerCode < 1) {
        throw new IllegalArgumentException("keptPerCode must be >= 1 but was " + keptPerCode);
      }
    }
  }

  /**
   * Carries out a program, and goes on after errors.
   *
   * @param source the name of the text in diagnostics
   * @param text the bytes; read to the end of the program, not closed
   * @throws java.io.UncheckedIOException if reading fails
   */
  public static ProgramSummary run(
      String source, InputStream text, ReadingRules rules, Consumer<Executed> sink) {
    return run(source, text, rules, ErrorHandling.COLLECT, sink);
  }

  /** Carries out a program that is in memory, and goes on after errors. */
  public static ProgramSummary run(
      String source, byte[] text, ReadingRules rules, Consumer<Executed> sink) {
    return run(source, new ByteArrayInputStream(text), rules, sink);
  }

  /** Carries out a program that is in memory, and goes on after errors. */
  public static ProgramSummary run(
      String source, String text, ReadingRules rules, Consumer<Executed> sink) {
    return run(source, text.getBytes(StandardCharsets.UTF_8), rules, sink);
  }

  /** Carries out a program, and treats errors as the caller wants. */
  public static ProgramSummary run(
      String source,
      InputStream text,
      ReadingRules rules,
      ErrorHandling handling,
      Consumer<Executed> sink) {
    return new Interpreter(source, rules, handling, sink).run(new LineSource(text));
  }

  ProgramSummary run(LineSource source) {
    if (!plainText(source)) {
      return summary(Ending.BROKEN_OFF);
    }
    while (source.next()) {
      lines = source.number();
      if (isPercent(source)) {
        if (percentEnds()) {
          return finish(Ending.PERCENT);
        }
        continue;
      }
      boolean fine = line(source);
      if (!fine && stopAtError) {
        return summary(Ending.BROKEN_OFF);
      }
      if (executor.ended()) {
        afterEnd(source);
        return summary(Ending.END_CODE);
      }
    }
    return finish(Ending.END_OF_TEXT);
  }

  /** Refuses texts of two bytes a character, and passes over the mark of UTF-8. */
  private boolean plainText(LineSource source) {
    byte[] head = source.peek(4);
    boolean twoBytes =
        head.length >= 2
            && ((head[0] == (byte) 0xfe && head[1] == (byte) 0xff)
                || (head[0] == (byte) 0xff && head[1] == (byte) 0xfe)
                || (head.length == 4 && head[0] == 0 && head[1] != 0 && head[2] == 0)
                || (head.length == 4 && head[0] != 0 && head[1] == 0 && head[3] == 0));
    if (twoBytes) {
      findings.error(
          ProgramCode.NOT_PLAIN_TEXT,
          1,
          "the text is UTF-16 or not a text at all",
          "save the program as plain ASCII or UTF-8 text");
      return false;
    }
    if (head.length >= 3
        && head[0] == (byte) 0xef
        && head[1] == (byte) 0xbb
        && head[2] == (byte) 0xbf) {
      source.skip(3);
    }
    return true;
  }

  /** Tells whether a line holds nothing but a {@code %}. */
  private static boolean isPercent(LineSource source) {
    byte[] b = source.bytes();
    boolean found = false;
    for (int i = source.from(); i < source.to(); i++) {
      if (b[i] == '%' && !found) {
        found = true;
      } else if (b[i] != ' ' && b[i] != '\t') {
        return false;
      }
    }
    return found;
  }

  private static boolean isBlank(LineSource source) {
    byte[] b = source.bytes();
    for (int i = source.from(); i < source.to(); i++) {
      if (b[i] != ' ' && b[i] != '\t') {
        return false;
      }
    }
    return true;
  }

  /** Takes in a {@code %} line; tells whether the program ends there. */
  private boolean percentEnds() {
    if (blankSoFar) {
      blankSoFar = false;
      percentOpen = true;
      return false;
    }
    if (percentOpen || !rules.grammar().percentRules()) {
      return true;
    }
    findings.error(
        ProgramCode.PERCENT_UNEXPECTED,
        lines,
        "a % line, but the file did not open with one",
        "write % on the first line too, or on none");
    return false;
  }

  private boolean line(LineSource source) {
    blankSoFar = blankSoFar && isBlank(source);
    long before = findings.errors();
    try {
      reader.read(source, block);
      if (!block.deleted || !rules.grammar().blockDelete()) {
        executor.run(block);
      }
    } catch (Refusal refusal) {
      findings.error(block, refusal);
    }
    return findings.errors() == before;
  }

  /** Looks at what follows M2 or M30: it is not carried out. */
  private void afterEnd(LineSource source) {
    boolean closed = false;
    boolean told = false;
    while (!closed && (percentOpen || !told) && source.next()) {
      lines = source.number();
      closed = percentOpen && isPercent(source);
      if (!closed && !told && !isBlank(source)) {
        told = true;
        findings.add(
            Severity.WARNING,
            ProgramCode.AFTER_END,
            new SourceSpan(findings.source(), lines, 0, 0),
            "text after the end of the program; it is not carried out",
            "");
      }
    }
    if (percentOpen && !closed) {
      unclosed();
    }
  }

  private void unclosed() {
    if (rules.grammar().percentRules()) {
      findings.error(
          ProgramCode.PERCENT_UNCLOSED,
          1,
          "the file opens with a % line and has no second one",
          "write % on the last line too");
    }
  }

  /** Ends a program that did not end itself. */
  private ProgramSummary finish(Ending ending) {
    if (ending == Ending.END_OF_TEXT) {
      if (blankSoFar) {
        findings.error(
            ProgramCode.EMPTY,
            lines,
            lines == 0 ? "the file is empty" : "the file holds nothing but blank lines",
            "check that the file is whole, and that it is the right one");
      } else if (percentOpen) {
        unclosed();
      } else if (rules.grammar().endRequired()) {
        findings.error(
            ProgramCode.NO_END,
            lines,
            "the program ends without M2 or M30, and without % lines",
            "write M2 on the last line");
      }
    }
    sink.accept(new Executed.End(new SourceSpan(findings.source(), lines, 0, 0)));
    return summary(ending);
  }

  private ProgramSummary summary(Ending ending) {
    Modes modes = executor.modes();
    Frames frames = executor.frames();
    return new ProgramSummary(
        findings.kept(),
        findings.counts(),
        findings.errors(),
        lines,
        modes.unit,
        modes.unitSet,
        ending,
        frames.currentPosition(),
        frames.machinePosition(),
        frames.shifted());
  }

  /** The parameters as the program left them. */
  Parameters parameters() {
    return parameters;
  }
}
