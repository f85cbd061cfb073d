package frieze.post;

import frieze.lower.Capabilities;
import frieze.rs274.ReadingRules;
import frieze.rs274.RulesBuilder;

/**
 * Says how a controller reads, from what it understands: the report NISTIR 6556 without the codes
 * that the controller has not, and with those that only it has.
 */
final class CapabilityRules {
  /** G codes of the report, NISTIR 6556, tables 4 and 5. */
  private static final double[] REPORT_G = {
    0, 1, 2, 3, 4, 10, 17, 18, 19, 20, 21, 28, 30, 38.2, 40, 41, 42, 43, 49, 53, 54, 55, 56, 57, 58,
    59, 59.1, 59.2, 59.3, 61, 61.1, 64, 80, 81, 82, 83, 84, 85, 86, 87, 88, 89, 90, 91, 92, 92.1,
    92.2, 92.3, 93, 94, 98, 99
  };

  /** M codes of the report, NISTIR 6556, table 7. */
  private static final int[] REPORT_M = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 30, 48, 49, 60};

  private static final int TORCH_ON = 3;
  private static final int TORCH_OFF = 5;

  private CapabilityRules() {}

  static ReadingRules of(Capabilities has) {
    RulesBuilder rules =
        ReadingRules.REPORT
            .but()
            .maxLineLength(has.layout().maxLineLength())
            .semicolonComments(has.layout().comments() == Capabilities.CommentForm.SEMICOLON)
            .dwell(dwell(has.dwell()));
    for (double g : REPORT_G) {
      if (!has.codes().contains("G" + NumberText.thousandths(g, false))) {
        rules.missingG(g);
      }
    }
    for (int m : REPORT_M) {
      if (!has.codes().contains("M" + m)) {
        rules.missingM(m);
      }
    }
    has.codes().forEach(code -> extra(rules, code));
    if (has.torch().present()) {
      rules.torch(TORCH_ON, TORCH_OFF);
    }
    return rules.build();
  }

  private static void extra(RulesBuilder rules, String code) {
    double number = Double.parseDouble(code.substring(1));
    if (code.startsWith("G") && !among(REPORT_G, number)) {
      rules.extraG(number);
    } else if (code.startsWith("M") && !among(REPORT_M, (int) number)) {
      rules.extraM((int) number);
    }
  }

  private static boolean among(double[] numbers, double wanted) {
    for (double number : numbers) {
      if (number == wanted) {
        return true;
      }
    }
    return false;
  }

  private static boolean among(int[] numbers, int wanted) {
    for (int number : numbers) {
      if (number == wanted) {
        return true;
      }
    }
    return false;
  }

  private static ReadingRules.DwellWord dwell(Capabilities.DwellWord word) {
    return switch (word) {
      case NONE, P_SECONDS -> ReadingRules.DwellWord.P_SECONDS;
      case P_MILLISECONDS -> ReadingRules.DwellWord.P_MILLISECONDS;
      case X_SECONDS -> ReadingRules.DwellWord.X_SECONDS;
    };
  }
}
