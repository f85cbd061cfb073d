package frieze.cli;

import frieze.diagnostic.Severity;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.Finding;
import frieze.dryrun.FindingCount;
import frieze.dryrun.MoveExtents;
import frieze.dryrun.NotChecked;
import frieze.dryrun.ProgramReport;
import frieze.dryrun.Range;
import frieze.dryrun.ZeroFit;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** Writes the result of a dry run for people. */
final class DryRunTable {
  private static final int SECONDS_PER_MINUTE = 60;

  private final StringBuilder text = new StringBuilder();

  private DryRunTable() {}

  static String write(DryRunResult result) {
    DryRunTable table = new DryRunTable();
    table.programs(result);
    table.reach(result);
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

  private void reach(DryRunResult result) {
    Table table = new Table("axis", "cuts from", "to", "rapids from", "to", "fits the machine");
    MoveExtents moves = result.program();
    for (int axis = 0; axis < 3; axis++) {
      String name = "XYZ".substring(axis, axis + 1);
      Optional<Range> feed = moves.feed().get(axis);
      Optional<Range> rapid = moves.rapid().get(axis);
      table.row(
          List.of(
              name,
              feed.map(r -> number("%.2f", r.minMm())).orElse("-"),
              feed.map(r -> number("%.2f", r.maxMm())).orElse("-"),
              rapid.map(r -> number("%.2f", r.minMm())).orElse("-"),
              rapid.map(r -> number("%.2f", r.maxMm())).orElse("-"),
              fit(result, name)));
    }
    text.append(table).append('\n');
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
