package frieze.artwork.mend;

import frieze.curve.Point;

/**
 * One thing that was mended.
 *
 * @param at where, in the drawing's millimetres
 * @param amountMm the most by which the drawing changed there
 */
public record Mend(Kind kind, Point at, double amountMm) {
  /** What was done. */
  public enum Kind {
    JOINED("ends joined"),
    DUPLICATE("repeated outlines and lines removed"),
    OVERLAP("lines that lie on each other made one"),
    DOUBLED("doubled points removed"),
    CROSSING("crossings of outlines resolved by the fill rule"),
    SHARED("edges of outlines that lie on each other resolved by the fill rule"),
    INSIDE("outlines with area on both sides, or on neither, removed"),
    SPECK("specks smaller than asked for removed"),
    SLIVER("slivers removed"),
    /** Changes nothing that is drawn, so it is not told. */
    TURNED("outlines turned");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** What was done, in words. */
    public String words() {
      return words;
    }
  }
}
