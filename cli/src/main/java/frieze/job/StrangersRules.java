package frieze.job;

import frieze.rs274.ReadingRules;

/** How to read a program of which nobody has said for which controller it was made. */
public final class StrangersRules {
  private static final int LONGEST_WITHOUT_LIMIT = 0;

  private StrangersRules() {}

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
}
