package frieze.rs274;

import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Severity;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Collects what is said about a program: all of it is counted, the first of each kind are kept. */
final class Findings {
  private final String source;
  private final int keptPerCode;
  private final List<Diagnostic> kept = new ArrayList<>();
  private final Map<ProgramCode, Long> counts = new EnumMap<>(ProgramCode.class);
  private long errors;

  Findings(String source, int keptPerCode) {
    this.source = source;
    this.keptPerCode = keptPerCode;
  }

  void add(Severity severity, ProgramCode code, SourceSpan span, String message, String hint) {
    long count = counts.merge(code, 1L, Long::sum);
    if (severity == Severity.ERROR) {
      errors++;
    }
    if (count <= keptPerCode) {
      kept.add(new Diagnostic(severity, code, span, message, hint));
    }
  }

  void error(Block block, Refusal refusal) {
    add(
        Severity.ERROR,
        refusal.code(),
        span(block, refusal.at(), refusal.end()),
        refusal.text(),
        refusal.hint());
  }

  void error(ProgramCode code, int line, String message, String hint) {
    add(Severity.ERROR, code, new SourceSpan(source, line, 0, 0), message, hint);
  }

  void warning(Block block, ProgramCode code, char letter, String message, String hint) {
    boolean there = block.has(letter);
    int at = there ? block.at(letter) : block.from();
    int end = there ? block.end(letter) : block.to();
    add(Severity.WARNING, code, span(block, at, end), message, hint);
  }

  void warning(Block block, ProgramCode code, String message, String hint) {
    add(Severity.WARNING, code, line(block), message, hint);
  }

  void note(Block block, ProgramCode code, String message) {
    add(Severity.NOTE, code, line(block), message, "");
  }

  /** Makes the span of some bytes of the line, without the blanks around it. */
  SourceSpan span(Block block, int at, int end) {
    int to = Math.min(end, block.to());
    while (to > at + 1 && (block.bytes()[to - 1] == ' ' || block.bytes()[to - 1] == '\t')) {
      to--;
    }
    int column = block.column(at);
    int length = Math.max(1, block.column(Math.max(at, to)) - column);
    return new SourceSpan(source, block.line(), column, length);
  }

  SourceSpan line(Block block) {
    return new SourceSpan(source, block.line(), 1, Math.max(0, block.to() - block.from()));
  }

  String source() {
    return source;
  }

  long errors() {
    return errors;
  }

  long count(ProgramCode code) {
    return counts.getOrDefault(code, 0L);
  }

  List<Diagnostic> kept() {
    return List.copyOf(kept);
  }

  Map<ProgramCode, Long> counts() {
    return new EnumMap<>(counts);
  }
}
