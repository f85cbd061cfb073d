package frieze.dryrun.scene;

import frieze.diagnostic.Code;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.FindingCount;
import frieze.dryrun.finding.Words;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * Collects what the checks object to: merges neighbouring lines with the same fault, keeps {@link
 * FindingCount#SHOWN_PER_CODE} of each code and counts the rest. Its memory does not grow with the
 * programs.
 */
public final class FindingLog {
  private static final class OfOneCode {
    final List<Finding> shown = new ArrayList<>();
    final List<Integer> programOfShown = new ArrayList<>();
    int found;
    @Nullable Finding last;
    int lastProgram = -1;
  }

  private final Map<Code, OfOneCode> byCode = new LinkedHashMap<>();
  private final List<String> programs = new ArrayList<>();
  private String program = "";
  private int programIndex = -1;

  /** Says whose lines come next. */
  public void startProgram(String name) {
    program = name;
    programIndex++;
    programs.add(name);
  }

  /** Objects to a move of an earlier program. */
  public void addAt(int earlier, FindingCode code, Passage passage, Amount amount, String message) {
    addAt(earlier, code, passage.span(), Words.of(passage.move()), amount, message);
  }

  /** Objects to a line of an earlier program. */
  public void addAt(int earlier, FindingCode code, SourceSpan span, Amount amount, String message) {
    addAt(earlier, code, span, "", amount, message);
  }

  private void addAt(
      int earlier, FindingCode code, SourceSpan span, String move, Amount amount, String message) {
    String current = program;
    int currentIndex = programIndex;
    program = programs.get(earlier);
    programIndex = earlier;
    add(code, span, move, amount, message);
    program = current;
    programIndex = currentIndex;
  }

  /** The number of the program that runs, counted from 0. */
  public int programIndex() {
    return programIndex;
  }

  /** Objects to a move. */
  public void add(FindingCode code, Passage passage, Amount amount, String message) {
    add(code, passage.span(), Words.of(passage.move()), amount, message);
  }

  /** Objects to something that is not a move. */
  public void add(FindingCode code, SourceSpan span, Amount amount, String message) {
    add(code, span, "", amount, message);
  }

  /** Takes over what the interpreter said. */
  public void add(Diagnostic d) {
    SourceSpan at = d.where();
    put(
        new Finding(
            d.severity(),
            d.code(),
            program,
            at.line(),
            at.line(),
            at.line(),
            at.column(),
            "",
            "",
            Amount.NONE,
            1,
            d.message(),
            d.hint()));
  }

  private void add(FindingCode code, SourceSpan span, String move, Amount amount, String message) {
    put(
        new Finding(
            code.severity(),
            code,
            program,
            span.line(),
            span.line(),
            span.line(),
            span.column(),
            "",
            move,
            amount,
            1,
            message,
            code.hint()));
  }

  private void put(Finding next) {
    OfOneCode all = byCode.computeIfAbsent(next.code(), c -> new OfOneCode());
    Finding last = all.last;
    if (last != null && all.lastProgram == programIndex && joins(last, next)) {
      Finding merged = merge(last, next);
      int at = all.shown.size() - 1;
      if (all.shown.get(at).equals(last)) {
        all.shown.set(at, merged);
      }
      all.last = merged;
      return;
    }
    all.found++;
    all.last = next;
    all.lastProgram = programIndex;
    if (all.shown.size() < FindingCount.SHOWN_PER_CODE) {
      all.shown.add(next);
      all.programOfShown.add(programIndex);
    }
  }

  private static boolean joins(Finding last, Finding next) {
    return next.line() > 0
        && next.line() >= last.lastLine()
        && next.line() <= last.lastLine() + 1
        && !(next.move().isEmpty() && !next.message().equals(last.message()));
  }

  private static Finding merge(Finding last, Finding next) {
    boolean worse = Math.abs(next.amount().value()) > Math.abs(last.amount().value());
    Finding told = worse ? next : last;
    return new Finding(
        told.severity(),
        told.code(),
        told.program(),
        told.line(),
        last.firstLine(),
        next.lastLine(),
        told.column(),
        "",
        told.move(),
        told.amount(),
        last.moves() + next.moves(),
        told.message(),
        told.hint());
  }

  /** The findings that are told, by program, line and code. */
  public List<Finding> findings() {
    record Placed(int program, Finding finding) {}
    List<Placed> all = new ArrayList<>();
    for (OfOneCode of : byCode.values()) {
      for (int i = 0; i < of.shown.size(); i++) {
        all.add(new Placed(of.programOfShown.get(i), of.shown.get(i)));
      }
    }
    all.sort(
        Comparator.comparingInt(Placed::program)
            .thenComparingInt(p -> p.finding().line())
            .thenComparing(p -> p.finding().code().id()));
    return all.stream().map(Placed::finding).toList();
  }

  public List<FindingCount> counts() {
    return byCode.entrySet().stream()
        .map(e -> new FindingCount(e.getKey(), e.getValue().found, e.getValue().shown.size()))
        .sorted(Comparator.comparing(c -> c.code().id()))
        .toList();
  }
}
