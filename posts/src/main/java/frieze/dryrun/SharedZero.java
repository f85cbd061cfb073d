package frieze.dryrun;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.Words;
import frieze.shop.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Judges the travel of programs that share one zero while the stock is moved between them. */
final class SharedZero {
  private SharedZero() {}

  /**
   * The results with the zeros that suit all of them at once, and an error in the last one where
   * none does.
   */
  static List<DryRunResult> judged(List<DryRunResult> results, Optional<Machine> machine) {
    if (machine.isEmpty()) {
      return results;
    }
    Extents all = Extents.NONE;
    for (DryRunResult result : results) {
      all = all.with(result.program().all());
    }
    List<ZeroFit> fits = ZeroFits.of(machine.get(), all);
    List<DryRunResult> judged = new ArrayList<>();
    for (int i = 0; i < results.size(); i++) {
      boolean last = i == results.size() - 1;
      judged.add(results.get(i).sharing(fits, last ? findings(fits) : List.of()));
    }
    return judged;
  }

  private static List<Finding> findings(List<ZeroFit> fits) {
    return fits.stream().filter(f -> !f.fits()).map(SharedZero::finding).toList();
  }

  private static Finding finding(ZeroFit fit) {
    FindingCode code = FindingCode.BEYOND_TRAVEL;
    return new Finding(
        code.severity(),
        code,
        "",
        0,
        0,
        0,
        0,
        "",
        "",
        Amount.mm(fit.neededMm() - fit.travelMm()),
        1,
        String.format(
            Locale.ROOT,
            "%s needs %s over all steps from one zero: the machine has %s, so no zero fits",
            fit.axis(),
            Words.mm(fit.neededMm()),
            Words.mm(fit.travelMm())),
        code.hint());
  }
}
