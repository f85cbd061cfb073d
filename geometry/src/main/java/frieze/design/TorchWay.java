package frieze.design;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a torch goes about a panel.
 *
 * @param partOnRight whether the part lies on the right of travel: outlines clockwise, holes
 *     counter-clockwise
 * @param leadMm the length of a lead-in; empty for as long as the sheet needs
 * @param arcLeads whether leads are arcs where they fit, else straight
 * @param outline whether the panel is cut out too
 * @param joints what keeps small loose pieces in place; empty to let them fall
 */
public record TorchWay(
    boolean partOnRight,
    OptionalDouble leadMm,
    boolean arcLeads,
    SmallHole smallHoles,
    boolean outline,
    Rows rows,
    Bridging bridges,
    Limits limits,
    Optional<Joints> joints) {
  /** The usual bridges; what the kerf can't do is a warning. */
  public TorchWay(
      boolean partOnRight,
      OptionalDouble leadMm,
      boolean arcLeads,
      SmallHole smallHoles,
      boolean outline,
      Rows rows) {
    this(
        partOnRight,
        leadMm,
        arcLeads,
        smallHoles,
        outline,
        rows,
        Bridging.USUAL,
        Limits.USUAL,
        Optional.empty());
  }

  /**
   * How islands are tied.
   *
   * @param wanted whether they are tied at all; else an island is an error
   * @param widthMm of a bridge; empty for twice the thickness and at least 5 mm
   * @param sideLoadN the push that each island must stand; empty for the usual
   */
  public record Bridging(boolean wanted, OptionalDouble widthMm, OptionalDouble sideLoadN) {
    /** Tied, with bridges of the usual width that stand the usual push. */
    public static final Bridging USUAL =
        new Bridging(true, OptionalDouble.empty(), OptionalDouble.empty());

    /** Not tied. */
    public static final Bridging NONE =
        new Bridging(false, OptionalDouble.empty(), OptionalDouble.empty());
  }

  /**
   * What is told of slots, webs and points that the kerf can't do.
   *
   * @param strict whether they are errors
   * @param leastWebMm metal thinner than this would warp or burn; empty for the thickness
   */
  public record Limits(boolean strict, OptionalDouble leastWebMm) {
    /** Warnings, of webs thinner than the sheet is thick. */
    public static final Limits USUAL = new Limits(false, OptionalDouble.empty());
  }

  /**
   * Stubs of metal left across the kerf, so that a small piece stays level where it was cut.
   *
   * @param belowMm pieces whose longer side is up to this are kept
   * @param count for each piece
   * @param widthMm of each, after the cut
   */
  public record Joints(double belowMm, int count, double widthMm) {
    public Joints {
      if (!(belowMm > 0) || !(widthMm > 0) || count < 1) {
        throw new IllegalArgumentException(
            "belowMm, widthMm and count must be > 0 but were "
                + (belowMm + " mm, " + widthMm + " mm, " + count));
      }
    }
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
    return new TorchWay(
        partOnRight, leadMm, arcLeads, smallHoles, outline, other, bridges, limits, joints);
  }

  /** The same with other bridges. */
  public TorchWay withBridges(Bridging other) {
    return new TorchWay(
        partOnRight, leadMm, arcLeads, smallHoles, outline, rows, other, limits, joints);
  }

  /** The same with small pieces kept. */
  public TorchWay withJoints(Joints other) {
    return new TorchWay(
        partOnRight,
        leadMm,
        arcLeads,
        smallHoles,
        outline,
        rows,
        bridges,
        limits,
        Optional.of(other));
  }
}
