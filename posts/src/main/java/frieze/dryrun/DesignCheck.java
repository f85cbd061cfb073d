package frieze.dryrun;

import frieze.design.Intent;
import frieze.diagnostic.Severity;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.FindingCount;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.StockCutter;
import frieze.gouge.Discrepancy;
import frieze.gouge.GougeCheck;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Turns what the comparison with a design has found into findings, each with the program and line
 * that did it where a line did it.
 */
final class DesignCheck {
  private final Setup setup;
  private final List<Intent> intents;

  DesignCheck(Setup setup, List<Intent> intents) {
    this.setup = setup;
    this.intents = List.copyOf(intents);
  }

  /** Compares the simulated stock with the design. */
  GougeCheck.Result compare(StockCutter cutter) {
    return GougeCheck.check(intents, setup, cutter.field(), cutter.moves());
  }

  /**
   * The worst places, as findings.
   *
   * @param culprits finds the move that cut deepest at a place
   */
  static List<Finding> findings(GougeCheck.Result result, Culprits culprits) {
    List<Finding> findings = new ArrayList<>();
    Map<FindingCode, Integer> shown = new EnumMap<>(FindingCode.class);
    for (Discrepancy one : result.discrepancies()) {
      FindingCode code = code(one);
      if (shown.merge(code, 1, Integer::sum) <= FindingCount.SHOWN_PER_CODE) {
        findings.add(finding(one, code, culprits));
      }
    }
    return findings;
  }

  /** How often each code was found. */
  static List<FindingCount> counts(GougeCheck.Result result) {
    int freed =
        (int)
            result.discrepancies().stream()
                .filter(d -> d.kind() == Discrepancy.Kind.NOT_FREED)
                .count();
    List<FindingCount> counts = new ArrayList<>();
    addCount(FindingCode.GOUGE, result.tooDeep(), counts);
    addCount(FindingCode.LEFT_STANDING, result.left(), counts);
    addCount(FindingCode.NOT_FREED, freed, counts);
    return counts;
  }

  private static void addCount(FindingCode code, int found, List<FindingCount> counts) {
    if (found > 0) {
      counts.add(new FindingCount(code, found, Math.min(found, FindingCount.SHOWN_PER_CODE)));
    }
  }

  private static FindingCode code(Discrepancy one) {
    return switch (one.kind()) {
      case TOO_DEEP -> FindingCode.GOUGE;
      case LEFT -> FindingCode.LEFT_STANDING;
      case NOT_FREED -> FindingCode.NOT_FREED;
    };
  }

  private static Finding finding(Discrepancy one, FindingCode code, Culprits culprits) {
    Culprits.Culprit by = code == FindingCode.GOUGE ? culprits.at(one.place()) : Culprits.NOBODY;
    Severity severity = code.severity();
    return new Finding(
        severity,
        code,
        by.program(),
        by.line(),
        by.line(),
        by.line(),
        by.column(),
        "",
        by.move(),
        Amount.mm(one.amountMm()),
        1,
        message(one),
        code.hint());
  }

  private static String message(Discrepancy one) {
    String at =
        " at X"
            + Amount.text(one.place().x())
            + " Y"
            + Amount.text(one.place().y())
            + " of the stock";
    String where = at + (one.intent().isEmpty() ? "" : ", by " + one.intent());
    String area = " over " + Amount.text(one.areaMm2()) + " mm2";
    return switch (one.kind()) {
      case TOO_DEEP ->
          "cut "
              + Words.mm(one.amountMm())
              + " too deep"
              + where
              + area
              + (one.sidewaysMm() > 0
                  ? ", " + Words.mm(one.sidewaysMm()) + " beyond the outline"
                  : "");
      case LEFT -> Words.mm(one.amountMm()) + " left standing" + where + area;
      case NOT_FREED -> Words.mm(one.amountMm()) + " of the through cut still stand" + where;
    };
  }
}
