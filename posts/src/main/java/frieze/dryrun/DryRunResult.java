package frieze.dryrun;

import frieze.clock.TimeSpent;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.FindingCount;
import frieze.dryrun.finding.NotChecked;
import frieze.field.StockField;
import frieze.gouge.GougeCheck;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Everything that a dry run has to say about the programs of one setup.
 *
 * @param findings by program in running order, then by line, then by code, those from the design
 *     last; at most {@link FindingCount#SHOWN_PER_CODE} of a code
 * @param counts one for each code that was found, in the order of the codes' ids
 * @param readable false when a text could not be read to its end
 * @param programs in running order
 * @param tools over all programs, in the order of their first move
 * @param program extents of all programs in program coordinates
 * @param machine the same in machine coordinates, where these are known
 * @param zeroFits for each axis along which moves are known; empty without a machine
 * @param notChecked what was not asked, and why
 * @param stock the simulated stock after all programs; empty if the stock or the zero is unknown
 * @param design how the stock compares with a design, if there was one to compare it with
 */
public record DryRunResult(
    List<Finding> findings,
    List<FindingCount> counts,
    boolean readable,
    List<ProgramReport> programs,
    List<ToolReport> tools,
    MoveExtents program,
    MoveExtents machine,
    List<ZeroFit> zeroFits,
    TimeSpent time,
    List<NotChecked> notChecked,
    Optional<StockField> stock,
    Optional<GougeCheck.Result> design) {
  public DryRunResult {
    findings = List.copyOf(findings);
    counts = List.copyOf(counts);
    programs = List.copyOf(programs);
    tools = List.copyOf(tools);
    zeroFits = List.copyOf(zeroFits);
    notChecked = List.copyOf(notChecked);
  }

  /** The same with what the comparison with a design has found. */
  DryRunResult comparedWith(
      GougeCheck.Result found, List<Finding> more, List<FindingCount> moreCounts) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    List<FindingCount> allCounts = new ArrayList<>(counts);
    allCounts.addAll(moreCounts);
    return new DryRunResult(
        all,
        allCounts,
        readable,
        programs,
        tools,
        program,
        machine,
        zeroFits,
        time,
        notChecked,
        stock,
        Optional.of(found));
  }

  /** The same with zeros that suit other programs too, and what there is to object to them. */
  DryRunResult sharing(List<ZeroFit> zeros, List<Finding> more) {
    List<Finding> all = new ArrayList<>(findings);
    all.addAll(more);
    List<FindingCount> allCounts = new ArrayList<>(counts);
    boolean counted = counts.stream().anyMatch(c -> c.code() == FindingCode.BEYOND_TRAVEL);
    if (!more.isEmpty() && !counted) {
      allCounts.add(new FindingCount(FindingCode.BEYOND_TRAVEL, more.size(), more.size()));
    }
    return new DryRunResult(
        all,
        allCounts,
        readable,
        programs,
        tools,
        program,
        machine,
        zeros,
        time,
        notChecked,
        stock,
        design);
  }

  DryRunResult withFindings(List<Finding> changed) {
    return new DryRunResult(
        changed,
        counts,
        readable,
        programs,
        tools,
        program,
        machine,
        zeroFits,
        time,
        notChecked,
        stock,
        design);
  }

  DryRunResult withCounts(List<FindingCount> changed) {
    return new DryRunResult(
        findings,
        changed,
        readable,
        programs,
        tools,
        program,
        machine,
        zeroFits,
        time,
        notChecked,
        stock,
        design);
  }

  /** The same with the extents of another run of the same texts. */
  DryRunResult withExtents(DryRunResult other) {
    return new DryRunResult(
        findings,
        counts,
        readable,
        programs,
        tools,
        other.program,
        other.machine,
        other.zeroFits,
        time,
        notChecked,
        stock,
        design);
  }

  /** Whether files may be written: every text could be read, and no finding is an error. */
  public boolean mayWrite() {
    return readable && findings.stream().noneMatch(Finding::isError);
  }
}
