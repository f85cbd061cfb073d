package frieze.artwork.mend;

import frieze.artwork.ArtworkCode;
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
    JOINED(ArtworkCode.MENDED, "ends joined"),
    DUPLICATE(ArtworkCode.MENDED, "repeated outlines and lines removed"),
    OVERLAP(ArtworkCode.MENDED, "lines that lie on each other made one"),
    DOUBLED(ArtworkCode.DOUBLED_POINTS, "doubled points removed"),
    CROSSING(ArtworkCode.CROSSES, "crossings of outlines resolved by the fill rule"),
    SHARED(
        ArtworkCode.MENDED, "edges of outlines that lie on each other resolved by the fill rule"),
    INSIDE(ArtworkCode.MENDED, "outlines with area on both sides, or on neither, removed"),
    SPECK(ArtworkCode.MENDED, "specks smaller than asked for removed"),
    FLAT(ArtworkCode.NO_AREA, "outlines that enclose nothing removed"),
    SLIVER(ArtworkCode.HAIRLINE, "slivers removed, by their widths"),
    /** Changes nothing that is drawn, so it is not told. */
    TURNED(ArtworkCode.MENDED, "outlines turned");

    private final ArtworkCode code;
    private final String words;

    Kind(ArtworkCode code, String words) {
      this.code = code;
      this.words = words;
    }

    /** What is told of it. */
    ArtworkCode code() {
      return code;
    }

    /** What was done, in words. */
    public String words() {
      return words;
    }
  }
}
