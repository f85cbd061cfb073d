package frieze.job;

import frieze.lower.Capabilities;
import frieze.rs274.ReadingRules;
import frieze.rs274.RulesBuilder;
import java.util.Set;

/**
 * How a controller reads, from what it can do.
 *
 * <p>Reading rules and posts are made apart from each other on purpose. Here they meet: a code that
 * the controller does not have is an error when its program is read back.
 */
public final class DialectRules {
  /** The codes of NISTIR 6556, tables 5 and 7. */
  private static final double[] REPORT_G = {
    0, 1, 2, 3, 4, 10, 17, 18, 19, 20, 21, 28, 30, 38.2, 40, 41, 42, 43, 49, 53, 54, 55, 56, 57, 58,
    59, 59.1, 59.2, 59.3, 61, 61.1, 64, 80, 81, 82, 83, 84, 85, 86, 87, 88, 89, 90, 91, 92, 92.1,
    92.2, 92.3, 93, 94, 98, 99
  };

  private static final int[] REPORT_M = {0, 1, 2, 3, 4, 5, 6, 7, 8, 9, 30, 48, 49, 60};
  private static final int LONGEST_WITHOUT_LIMIT = 0;

  private DialectRules() {}

  /** Reads whatever claims to be RS-274: the report, and what others write beside it. */
  public static ReadingRules any() {
    return ReadingRules.REPORT
        .but()
        .maxLineLength(LONGEST_WITHOUT_LIMIT)
        .semicolonComments(true)
        .programNumbers(true)
        .percentRules(false)
        .endRequired(false)
        .build();
  }

  /** Reads as strictly as the controller does. */
  public static ReadingRules of(Capabilities controller) {
    RulesBuilder rules =
        ReadingRules.REPORT
            .but()
            .maxLineLength(controller.layout().maxLineLength())
            .semicolonComments(
                controller.layout().comments() == Capabilities.CommentForm.SEMICOLON);
    for (double g : REPORT_G) {
      if (!has(controller.codes(), "G", g)) {
        rules = rules.missingG(g);
      }
    }
    for (int m : REPORT_M) {
      if (!has(controller.codes(), "M", m)) {
        rules = rules.missingM(m);
      }
    }
    return switch (controller.dwell()) {
      case P_MILLISECONDS -> rules.dwell(ReadingRules.DwellWord.P_MILLISECONDS).build();
      case X_SECONDS -> rules.dwell(ReadingRules.DwellWord.X_SECONDS).build();
      case P_SECONDS, NONE -> rules.build();
    };
  }

  private static boolean has(Set<String> codes, String letter, double number) {
    String written =
        number == Math.rint(number) ? String.valueOf((long) number) : String.valueOf(number);
    return codes.contains(letter + written);
  }
}
