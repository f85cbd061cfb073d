package frieze.cli;

import frieze.diagnostic.Severity;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.Extents;
import frieze.dryrun.MoveExtents;
import frieze.dryrun.ProgramReport;
import frieze.dryrun.ToolReport;
import frieze.dryrun.ZeroFit;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCount;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.Range;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes the result of a dry run for people. */
final class DryRunTable {
  private static final int SECONDS_PER_MINUTE = 60;
  private static final String AXES = "XYZ";

  private final StringBuilder text = new StringBuilder();

  private DryRunTable() {}

  static String write(DryRunResult result) {
    DryRunTable table = new DryRunTable();
    table.programs(result);
    table.tools(result);
    table.reach(result);
    table.reachOnMachine(result);
    table.findings(result);
    table.verdict(result);
    return table.text.toString();
  }

  private void programs(DryRunResult result) {
    Table table =
        new Table("program", "lines", "cuts (mm)", "rapids (mm)", "lowest Z", "machine", "by hand");
    for (ProgramReport p : result.programs()) {
      table.row(
          List.of(
              p.name(),
              String.valueOf(p.lines()),
              number("%.0f", p.feedMm()),
              number("%.0f", p.rapidMm()),
              depth(p.lowestZMm()),
              time(p.time().machineSeconds()),
              time(p.time().handSeconds())));
    }
    text.append(table).append('\n');
  }

  private static String depth(OptionalDouble mm) {
    return mm.isPresent() ? number("%.2f", mm.getAsDouble()) : "-";
  }

  /** One tool says no more than the programs do. */
  private void tools(DryRunResult result) {
    if (result.tools().size() < 2) {
      return;
    }
    Table table =
        new Table("tool", "cuts (mm)", "lowest Z", "cuts X", "cuts Y", "machine", "by hand");
    for (ToolReport tool : result.tools()) {
      table.row(
          List.of(
              name(tool),
              number("%.0f", tool.feedMm()),
              depth(tool.lowestZMm()),
              span(tool.program().feed().x()),
              span(tool.program().feed().y()),
              time(tool.time().machineSeconds()),
              time(tool.time().handSeconds())));
    }
    text.append(table).append('\n');
  }

  private static String name(ToolReport tool) {
    String number = tool.toolNumber().map(n -> "T" + n).orElse("no T");
    return tool.toolName().map(n -> number + " " + n).orElse(number);
  }

  private static String span(Optional<Range> range) {
    return range
        .map(r -> number("%.2f", r.minMm()) + " to " + number("%.2f", r.maxMm()))
        .orElse("-");
  }

  private void reach(DryRunResult result) {
    Table table = new Table("axis", "cuts from", "to", "rapids from", "to", "fits the machine");
    for (int axis = 0; axis < AXES.length(); axis++) {
      List<String> row = reach(result.program(), axis);
      row.add(fit(result, row.get(0)));
      table.row(row);
    }
    text.append(table).append('\n');
  }

  /** Where the zero is not known on the machine, nothing is known of its cuts there. */
  private void reachOnMachine(DryRunResult result) {
    if (result.machine().feed().equals(Extents.NONE)) {
      return;
    }
    Table table = new Table("on the machine", "cuts from", "to", "rapids from", "to");
    for (int axis = 0; axis < AXES.length(); axis++) {
      table.row(reach(result.machine(), axis));
    }
    text.append(table).append('\n');
  }

  /** The name of an axis, and how far feed and rapid moves reach along it. */
  private static List<String> reach(MoveExtents moves, int axis) {
    List<String> row = new ArrayList<>();
    row.add(AXES.substring(axis, axis + 1));
    for (Optional<Range> range : List.of(moves.feed().get(axis), moves.rapid().get(axis))) {
      row.add(range.map(r -> number("%.2f", r.minMm())).orElse("-"));
      row.add(range.map(r -> number("%.2f", r.maxMm())).orElse("-"));
    }
    return row;
  }

  private static String fit(DryRunResult result, String axis) {
    return result.zeroFits().stream()
        .filter(f -> f.axis().equals(axis))
        .findFirst()
        .map(DryRunTable::fit)
        .orElse("not checked");
  }

  private static String fit(ZeroFit fit) {
    return fit.zeroMm()
        .map(r -> "yes, zero at " + number("%.0f", r.minMm()) + " to " + number("%.0f", r.maxMm()))
        .orElse(
            "NO: needs "
                + number("%.0f", fit.neededMm())
                + ", has "
                + number("%.0f", fit.travelMm()));
  }

  private void findings(DryRunResult result) {
    for (Finding finding : result.findings()) {
      text.append(finding).append('\n');
      if (!finding.text().isBlank()) {
        text.append("  ").append(finding.text().strip()).append('\n');
      }
      if (!finding.hint().isEmpty()) {
        text.append("hint: ").append(finding.hint()).append('\n');
      }
    }
    for (FindingCount count : result.counts()) {
      if (count.found() > count.shown()) {
        text.append("... and ")
            .append(count.found() - count.shown())
            .append(" more of ")
            .append(count.code().id())
            .append('\n');
      }
    }
    for (NotChecked open : result.notChecked()) {
      text.append(open).append('\n');
    }
  }

  private void verdict(DryRunResult result) {
    long errors = result.findings().stream().filter(Finding::isError).count();
    long warnings =
        result.findings().stream().filter(f -> f.severity() == Severity.WARNING).count();
    text.append(counted(errors, "error"))
        .append(", ")
        .append(counted(warnings, "warning"))
        .append(", about ")
        .append(time(result.time().totalSeconds()))
        .append('\n');
  }

  static String counted(long count, String what) {
    return (count == 0 ? "no" : String.valueOf(count)) + " " + what + (count == 1 ? "" : "s");
  }

  /** A time as minutes and seconds: {@code 41:07}. */
  static String time(double seconds) {
    long whole = Math.round(seconds);
    return String.format(
        Locale.ROOT, "%d:%02d", whole / SECONDS_PER_MINUTE, whole % SECONDS_PER_MINUTE);
  }

  private static String number(String format, double value) {
    String written = String.format(Locale.ROOT, format, value);
    return written.matches("-0(\\.0+)?") ? written.substring(1) : written;
  }
}
