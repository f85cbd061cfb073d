package frieze.trace;

/**
 * How much is still fitted to the pixels of a picture's tips: each ending that is tried costs some
 * thousandths of a second, and a spoilt picture is all tips.
 */
final class TipBudget {
  private static final int MOST_FITS = 1000;

  private int left = MOST_FITS;

  /** Whether so many more may be tried. */
  boolean take(int fits) {
    left -= fits;
    return left >= 0;
  }
}
