package frieze.design;

import java.util.OptionalDouble;

/**
 * How a torch goes about a panel.
 *
 * @param partOnRight whether the part lies on the right of travel: outlines clockwise, holes
 *     counter-clockwise
 * @param leadMm the length of a lead-in; empty for as long as the sheet needs
 * @param arcLeads whether leads are arcs where they fit, else straight
 * @param outline whether the panel is cut out too
 * @param strict whether what the kerf can't do is an error
 */
public record TorchWay(
    boolean partOnRight,
    OptionalDouble leadMm,
    boolean arcLeads,
    SmallHole smallHoles,
    boolean outline,
    Rows rows,
    Bridging bridges,
    boolean strict) {
  /** The usual bridges; what the kerf can't do is a warning. */
  public TorchWay(
      boolean partOnRight,
      OptionalDouble leadMm,
      boolean arcLeads,
      SmallHole smallHoles,
      boolean outline,
      Rows rows) {
    this(partOnRight, leadMm, arcLeads, smallHoles, outline, rows, Bridging.USUAL, false);
  }

  /**
   * How islands are tied.
   *
   * @param wanted whether they are tied at all; else an island is an error
   * @param widthMm of a bridge; empty for twice the thickness and at least 5 mm
   */
  public record Bridging(boolean wanted, OptionalDouble widthMm) {
    /** Tied, with bridges of the usual width. */
    public static final Bridging USUAL = new Bridging(true, OptionalDouble.empty());
  }

  /** The usual way, one panel. */
  public static final TorchWay USUAL =
      new TorchWay(true, OptionalDouble.empty(), true, SmallHole.PIERCE, true, Rows.ONE);

  /** What becomes of a hole that is too small to cut. */
  public enum SmallHole {
    /** Pierced through in its middle, to be drilled or reamed. */
    PIERCE,
    /** Marked in its middle by a short arc, to be drilled. */
    MARK,
    /** Left out. */
    LEAVE
  }

  /**
   * Copies of a panel side by side on one sheet.
   *
   * @param along how many along X
   * @param across how many along Y
   * @param gapMm between neighbours
   */
  public record Rows(int along, int across, double gapMm) {
    /** One panel. */
    public static final Rows ONE = new Rows(1, 1, 0);

    public Rows {
      if (along < 1 || across < 1) {
        throw new IllegalArgumentException("along and across must be >= 1");
      }
    }
  }

  /** The same with other copies. */
  public TorchWay withRows(Rows other) {
    return new TorchWay(partOnRight, leadMm, arcLeads, smallHoles, outline, other, bridges, strict);
  }
}
