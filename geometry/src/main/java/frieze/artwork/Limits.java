package frieze.artwork;

/** How big a drawing may be, so that a hostile one ends in a message and not in a full memory. */
public final class Limits {
  public static final int MAX_BYTES = 64 << 20;

  /** Elements in the file, and elements drawn once all {@code use} is followed. */
  public static final int MAX_ELEMENTS = 200_000;

  public static final int MAX_DEPTH = 256;

  /** Segments of all paths together, once all {@code use} is followed. */
  public static final int MAX_SEGMENTS = 600_000;

  /** Letters, once all {@code use} is followed. */
  public static final int MAX_LETTERS = 20_000;

  public static final int MAX_STYLE_RULES = 5_000;

  /** Comparisons of an element with a part of a selector. */
  public static final int MAX_STYLE_STEPS = 20_000_000;

  /** Points of all outlines and clips together, once curves are turned into polygons. */
  public static final int MAX_POINTS = 1_000_000;

  /** Points along lines that become areas, in the units of their pens. */
  public static final long MAX_PEN_POINTS = 100_000;

  /** Places where outlines and clips cross themselves and each other. */
  public static final long MAX_CROSSINGS = 30_000;

  /** Places where the bands along one line cross each other, once it has its width. */
  public static final long MAX_BAND_CROSSINGS = 200_000;

  /** Stretches of outlines and clips that lie side by side. */
  public static final long MAX_PAIRS = 20_000_000;

  /** Points of pieces and of their clips that are compared, over all pieces. */
  public static final long MAX_CLIPPED_POINTS = 1_000_000;

  /** The largest coordinate, in user units and in millimetres. */
  public static final double MAX_COORDINATE = 1e9;

  /** The largest drawing that is taken for one. */
  public static final double MAX_EXTENT_MM = 1e6;

  /** Drawings and things smaller than this are not there. */
  public static final double MIN_EXTENT_MM = 1e-6;

  private Limits() {}
}
