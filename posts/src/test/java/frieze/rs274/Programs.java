package frieze.rs274;

import frieze.diagnostic.Diagnostic;
import frieze.motion.Executed;
import frieze.motion.Position;
import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/** Runs short programs in tests. */
final class Programs {
  /** What a program did. */
  record Run(List<Executed> events, ProgramSummary summary, Parameters parameters) {
    List<Executed.Move> moves() {
      return events.stream()
          .filter(e -> e instanceof Executed.Move)
          .map(e -> (Executed.Move) e)
          .toList();
    }

    Executed.Move move(int index) {
      return moves().get(index);
    }

    List<ProgramCode> codes() {
      return summary.diagnostics().stream().map(d -> (ProgramCode) d.code()).toList();
    }

    List<Diagnostic> errors() {
      return summary.diagnostics().stream().filter(Diagnostic::isError).toList();
    }

    Diagnostic only() {
      if (summary.diagnostics().size() != 1) {
        throw new AssertionError("not one diagnostic but " + summary.diagnostics());
      }
      return summary.diagnostics().get(0);
    }

    <E extends Executed> List<E> all(Class<E> kind) {
      return events.stream().filter(kind::isInstance).map(kind::cast).toList();
    }

    List<String> others() {
      return all(Executed.Other.class).stream().map(Executed.Other::what).toList();
    }
  }

  /** The report, on a machine at 0 with all parameters 0, without the need of an end. */
  static final ReadingRules ZEROED =
      ReadingRules.REPORT
          .but()
          .endRequired(false)
          .start(Start.zeroed(new Position(0, 0, 0)))
          .build();

  /** The report, on a machine that nothing is known of, without the need of an end. */
  static final ReadingRules UNKNOWN = ReadingRules.REPORT.but().endRequired(false).build();

  private Programs() {}

  static Run run(ReadingRules rules, String... lines) {
    return runBytes(rules, String.join("\n", lines).getBytes(StandardCharsets.UTF_8));
  }

  static Run runBytes(ReadingRules rules, byte[] text) {
    List<Executed> events = new ArrayList<>();
    Interpreter interpreter =
        new Interpreter("test.nc", rules, Interpreter.ErrorHandling.COLLECT, events::add);
    ProgramSummary summary = interpreter.run(new LineSource(new ByteArrayInputStream(text)));
    return new Run(events, summary, interpreter.parameters());
  }

  /** Carries out G21 G90 and then the lines, on the zeroed machine. */
  static Run zeroed(String... lines) {
    List<String> all = new ArrayList<>(List.of("G21 G90"));
    all.addAll(List.of(lines));
    return run(ZEROED, all.toArray(new String[0]));
  }
}
