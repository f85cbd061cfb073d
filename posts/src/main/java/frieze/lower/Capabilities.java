package frieze.lower;

import frieze.motion.Plane;
import java.util.Set;

/**
 * What a controller understands, and how it wants it written.
 *
 * <p>A machine may have less than its controller: no tool changer, a spindle switched by hand.
 * {@link Lowering} takes the smaller of the two.
 *
 * @param codes every G and M code that the controller knows, such as {@code G1}, {@code G38.2}
 * @param cycles the drilling cycles that it has
 * @param spindle whether M3, M5 and S drive a spindle; otherwise the operator does
 */
public record Capabilities(
    Set<String> codes,
    Arcs arcs,
    Set<Cycle> cycles,
    ToolChanging toolChanging,
    Coordinates coordinates,
    DwellWord dwell,
    boolean spindle,
    Torch torch,
    Numbers numbers,
    Layout layout,
    Files files) {

  public Capabilities {
    codes = Set.copyOf(codes);
    cycles = Set.copyOf(cycles);
  }

  /**
   * Arcs that the controller draws by itself.
   *
   * @param format how the circle is given; {@link ArcFormat#NONE} has none
   * @param planes the planes that they may lie in
   * @param helices whether the third axis may move along
   * @param fullCircles whether one arc may end where it starts
   * @param minRadiusMm arcs below are written as lines
   * @param maxRadiusMm arcs above are written as lines
   */
  public record Arcs(
      ArcFormat format,
      Set<Plane> planes,
      boolean helices,
      boolean fullCircles,
      double minRadiusMm,
      double maxRadiusMm) {
    /** No arcs at all. */
    public static final Arcs NONE = new Arcs(ArcFormat.NONE, Set.of(), false, false, 0, 0);

    public Arcs {
      planes = Set.copyOf(planes);
      if (!(minRadiusMm >= 0 && minRadiusMm <= maxRadiusMm)) {
        throw new IllegalArgumentException(
            "minRadiusMm must be in 0 .. maxRadiusMm but was "
                + minRadiusMm
                + ", "
                + maxRadiusMm
                + " mm");
      }
    }
  }

  /** How an arc's circle is given. */
  public enum ArcFormat {
    NONE,
    /** I, J, K: from the start to the centre. */
    CENTRE,
    /** R: the radius. Well conditioned for short arcs only. */
    RADIUS
  }

  /** A drilling cycle. */
  public enum Cycle {
    /** G81: down in one go. */
    PLAIN,
    /** G82: with a rest at the bottom. */
    DWELL,
    /** G83: with clearing in between. */
    PECK
  }

  /** What happens where another tool is needed. */
  public enum ToolChanging {
    /** Each tool has a program of its own. */
    SEPARATE_PROGRAMS,
    /** The program stops, and the operator changes the tool and finds Z again. */
    STOP,
    /** T and M6 do it. */
    CHANGER
  }

  /**
   * The coordinates that can be named.
   *
   * @param machine whether G53 moves in the machine's own coordinates; true also promises that the
   *     machine finds its home before work, with Z0 at the top
   * @param work whether G54 chooses the offset of the work
   * @param toolLength whether G43 with H takes a tool's length into account
   */
  public record Coordinates(boolean machine, boolean work, boolean toolLength) {}

  /** How G4 takes its time. */
  public enum DwellWord {
    NONE,
    P_SECONDS,
    P_MILLISECONDS,
    X_SECONDS
  }

  /**
   * What a plasma table's controller drives.
   *
   * @param present whether there is a torch
   * @param touch whether the torch can feel for the sheet with a probing move
   * @param heightControl whether the height control can be held and freed
   */
  public record Torch(boolean present, boolean touch, boolean heightControl) {
    public static final Torch NONE = new Torch(false, false, false);
  }

  /**
   * The digits of numbers.
   *
   * @param mmDecimals behind the point in millimetres
   * @param inchDecimals behind the point in inches
   * @param pointAlways whether a whole number needs its point, because the controller counts one
   *     without a point in its smallest steps
   */
  public record Numbers(int mmDecimals, int inchDecimals, boolean pointAlways) {
    public Numbers {
      requireDecimals(mmDecimals);
      requireDecimals(inchDecimals);
    }

    private static void requireDecimals(int decimals) {
      if (decimals < 1 || decimals > 6) {
        throw new IllegalArgumentException("decimals must be in 1 .. 6 but was " + decimals);
      }
    }
  }

  /**
   * The shape of lines.
   *
   * @param maxLineLength characters without the line end
   * @param lineNumbers whether each line starts with N
   * @param repeatWords whether a line says again what is in force already
   * @param twoDigits whether codes have two digits: G01, M05
   * @param percentLines whether the text starts and ends with a {@code %} line
   * @param crLf whether lines end with CR and LF, not with LF alone
   */
  public record Layout(
      CommentForm comments,
      int maxLineLength,
      boolean lineNumbers,
      boolean repeatWords,
      boolean twoDigits,
      boolean percentLines,
      boolean crLf) {
    public Layout {
      if (maxLineLength < 30) {
        throw new IllegalArgumentException(
            "maxLineLength must be at least 30 but was " + maxLineLength);
      }
    }
  }

  /** How comments look. */
  public enum CommentForm {
    NONE,
    PARENTHESES,
    SEMICOLON
  }

  /**
   * The files that the controller takes.
   *
   * @param maxNameLength characters before the point
   * @param extension with its point
   * @param upperCase whether names have capital letters, digits and hyphens only
   * @param maxBytes the largest file
   */
  public record Files(int maxNameLength, String extension, boolean upperCase, long maxBytes) {
    public Files {
      if (maxNameLength < 4) {
        throw new IllegalArgumentException(
            "maxNameLength must be at least 4 but was " + maxNameLength);
      }
    }
  }

  /** The digits behind the point. */
  public int decimals(boolean inches) {
    return inches ? numbers.inchDecimals() : numbers.mmDecimals();
  }
}
