package frieze.gouge;

import frieze.curve.Point;

/**
 * A place where the simulated stock is not what the design asked for.
 *
 * @param intent the name of the intent that it concerns; empty if no intent is near
 * @param place where it is worst, in the stock frame
 * @param amountMm how far, at that place: a depth, or for {@link Kind#NOT_FREED} a length
 * @param areaMm2 how large the place is, seen from above, with what is near it
 * @param sidewaysMm for {@link Kind#TOO_DEEP}, how far beyond the outline that place lies; 0 if it
 *     lies inside, or if no outline is near
 */
public record Discrepancy(
    Kind kind, String intent, Point place, double amountMm, double areaMm2, double sidewaysMm) {
  /** What is wrong. */
  public enum Kind {
    /** More was taken than any intent permits. */
    TOO_DEEP,
    /** Something was left that the tool of the intent could have taken. */
    LEFT,
    /** A stretch of a through cut still stands that is longer than a tab. */
    NOT_FREED
  }

  /** The same place with the area of another added. */
  Discrepancy with(Discrepancy near) {
    return new Discrepancy(kind, intent, place, amountMm, areaMm2 + near.areaMm2, sidewaysMm);
  }
}
