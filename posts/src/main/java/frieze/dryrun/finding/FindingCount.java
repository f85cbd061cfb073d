package frieze.dryrun.finding;

import frieze.diagnostic.Code;

/**
 * How often something was found.
 *
 * @param found all places, of which at most {@link #SHOWN_PER_CODE} are told one by one
 * @param shown the places among the findings of the result
 */
public record FindingCount(Code code, int found, int shown) {
  /** How many findings of one code are told one by one; the others are counted. */
  public static final int SHOWN_PER_CODE = 20;
}
