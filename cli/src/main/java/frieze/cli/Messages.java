package frieze.cli;

import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Severity;
import frieze.diagnostic.SourceSpan;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Prints diagnostics: place, kind and code, then the line with a caret below it, then a hint.
 *
 * <pre>
 * bench.yaml:14:22: error[JOB-012]: no tool named "vee 6O" in the shop
 *       - groove: {on: ginkgo, tool: vee 6O}
 *                                    ^^^^^^
 * hint: did you mean "vee 60"?
 * </pre>
 */
final class Messages {
  /** More than these are counted, not shown. */
  static final int SHOWN = 20;

  private static final int WIDEST_LINE = 120;
  private static final int BEFORE_CARET = 60;

  private final PrintStream out;
  private final DiskFiles files;

  Messages(PrintStream out, DiskFiles files) {
    this.out = out;
    this.files = files;
  }

  /**
   * Prints the first {@link #SHOWN}. Of those with one code and one place, such as the same remark
   * on each placement of a motif, the first is printed and the others are counted.
   */
  void print(List<Diagnostic> diagnostics) {
    Map<List<Object>, List<Diagnostic>> alike = new LinkedHashMap<>();
    diagnostics.stream()
        .distinct()
        .forEach(d -> alike.computeIfAbsent(kind(d), k -> new ArrayList<>()).add(d));
    alike.values().stream().limit(SHOWN).forEach(this::printAlike);
    if (alike.size() > SHOWN) {
      out.println("... and " + (alike.size() - SHOWN) + " more");
    }
  }

  /**
   * What is said of a file as a whole, such as each kind of mend, is not alike; nor are notes, such
   * as those of both panels of a pair.
   */
  private static List<Object> kind(Diagnostic d) {
    return d.where().line() == 0 || d.severity() == Severity.NOTE
        ? List.of(d)
        : List.of(d.code(), d.where());
  }

  private void printAlike(List<Diagnostic> alike) {
    print(alike.get(0));
    if (alike.size() > 1) {
      out.println("... and " + (alike.size() - 1) + " more like it from the same place");
    }
  }

  private void print(Diagnostic diagnostic) {
    out.println(printable(diagnostic.toString()));
    files
        .line(diagnostic.where().source(), diagnostic.where().line())
        .ifPresent(line -> printLine(line, diagnostic.where()));
    if (!diagnostic.hint().isEmpty()) {
      out.println("hint: " + printable(diagnostic.hint()));
    }
  }

  private void printLine(String line, SourceSpan where) {
    Optional<Integer> caret =
        where.column() > 0 && where.column() <= line.length() + 1
            ? Optional.of(where.column() - 1)
            : Optional.empty();
    int from = Math.max(0, Math.min(caret.orElse(0) - BEFORE_CARET, line.length() - WIDEST_LINE));
    int to = Math.min(line.length(), from + WIDEST_LINE);
    String left = from > 0 ? "... " : "";
    String right = to < line.length() ? " ..." : "";
    out.println("  " + left + printable(line.substring(from, to)) + right);
    caret.ifPresent(
        at -> {
          String indent = line.substring(from, Math.max(from, at)).replaceAll("[^\\t]", " ");
          int length = Math.max(1, Math.min(where.length(), to - at));
          out.println("  " + " ".repeat(left.length()) + indent + "^".repeat(length));
        });
  }

  /** Shows control characters, which could make a terminal do things, by their pictures. */
  static String printable(String text) {
    StringBuilder shown = new StringBuilder(text.length());
    text.chars()
        .map(c -> c < ' ' && c != '\t' && c != '\n' ? CONTROL_PICTURES + c : c)
        .map(c -> c >= DELETE && c < NO_BREAK_SPACE ? REPLACEMENT : c)
        .forEach(c -> shown.append((char) c));
    return shown.toString();
  }

  /** Where Unicode has a picture for each control character, from U+0000 on. */
  private static final int CONTROL_PICTURES = 0x2400;

  private static final int DELETE = 0x7F;
  private static final int NO_BREAK_SPACE = 0xA0;
  private static final int REPLACEMENT = 0xFFFD;
}
