package frieze.trace;

/**
 * How many tips of a picture are still fitted to their pixels: each costs some hundredths of a
 * second, and a spoilt picture is all tips.
 */
final class TipBudget {
  private static final int MOST_TIPS = 120;

  private int left = MOST_TIPS;

  /** Whether one more may be fitted. */
  boolean take() {
    left--;
    return left >= 0;
  }
}
