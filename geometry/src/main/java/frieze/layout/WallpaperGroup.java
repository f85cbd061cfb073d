package frieze.layout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The seventeen ways to repeat a motif over a plane.
 *
 * <p>Symbols and general positions as in the <i>International Tables for Crystallography</i>,
 * volume A (from memory). The plain words are ours: {@code turn} is by half a turn, {@code slide} a
 * mirror image moved along the mirror by half a cell, {@code brick} a cell with one more in its
 * middle.
 */
public enum WallpaperGroup {
  P1("p1", Cell.OBLIQUE, "x,y", "repeat"),
  P2("p2", Cell.OBLIQUE, "x,y; -x,-y", "turn"),
  PM("pm", Cell.RECTANGLE, "x,y; -x,y", "mirror"),
  PG("pg", Cell.RECTANGLE, "x,y; -x,y+1/2", "slide"),
  CM("cm", Cell.CENTRED, "x,y; -x,y", "mirror brick"),
  P2MM("p2mm", Cell.RECTANGLE, "x,y; -x,-y; -x,y; x,-y", "mirror both ways, pmm"),
  P2MG("p2mg", Cell.RECTANGLE, "x,y; -x,-y; -x+1/2,y; x+1/2,-y", "turn and mirror, pmg"),
  P2GG("p2gg", Cell.RECTANGLE, "x,y; -x,-y; -x+1/2,y+1/2; x+1/2,-y+1/2", "turn and slide, pgg"),
  C2MM("c2mm", Cell.CENTRED, "x,y; -x,-y; -x,y; x,-y", "mirror both ways brick, cmm"),
  P4("p4", Cell.SQUARE, Turns.FOUR, "quarter turn"),
  P4MM(
      "p4mm", Cell.SQUARE, Turns.FOUR + "; -x,y; x,-y; y,x; -y,-x", "quarter turn and mirror, p4m"),
  P4GM(
      "p4gm",
      Cell.SQUARE,
      Turns.FOUR + "; -x+1/2,y+1/2; x+1/2,-y+1/2; y+1/2,x+1/2; -y+1/2,-x+1/2",
      "quarter turn and slide, p4g"),
  P3("p3", Cell.HEXAGON, Turns.THREE, "third turn"),
  P3M1("p3m1", Cell.HEXAGON, Turns.THREE + "; -y,-x; -x+y,y; x,x-y", "third turn and mirror"),
  P31M(
      "p31m",
      Cell.HEXAGON,
      Turns.THREE + "; y,x; x-y,-y; -x,-x+y",
      "third turn and mirror between"),
  P6("p6", Cell.HEXAGON, Turns.SIX, "sixth turn"),
  P6MM(
      "p6mm",
      Cell.HEXAGON,
      Turns.SIX + "; -y,-x; -x+y,y; x,x-y; y,x; x-y,-y; -x,-x+y",
      "sixth turn and mirror, p6m");

  /** The shapes that a cell must have for the operations to keep lengths. */
  public enum Cell {
    /** Any two sides. */
    OBLIQUE,
    /** Two sides at right angles. */
    RECTANGLE,
    /** The same with everything once more in the middle of the cell. */
    CENTRED,
    /** Two equal sides at right angles. */
    SQUARE,
    /** Two equal sides at 120 degrees. */
    HEXAGON
  }

  private static final class Turns {
    static final String FOUR = "x,y; -x,-y; -y,x; y,-x";
    static final String THREE = "x,y; -y,x-y; -x+y,-x";
    static final String SIX = THREE + "; -x,-y; y,-x+y; x-y,x";
  }

  private final String symbol;
  private final Cell cell;
  private final String generalPosition;
  private final String otherNames;

  WallpaperGroup(String symbol, Cell cell, String generalPosition, String otherNames) {
    this.symbol = symbol;
    this.cell = cell;
    this.generalPosition = generalPosition;
    this.otherNames = otherNames;
  }

  /** The standard symbol, such as {@code p4gm}. */
  public String symbol() {
    return symbol;
  }

  public Cell cell() {
    return cell;
  }

  /** All names by which a job may call it, the symbol first, then plain words. */
  public List<String> names() {
    return Stream.concat(Stream.of(symbol), Stream.of(otherNames.split(", ", -1))).toList();
  }

  /** The operations of one cell, the identity first. */
  public List<PlaneSymmetry> operations() {
    List<PlaneSymmetry> written =
        Stream.of(generalPosition.split("; ", -1)).map(PlaneSymmetry::parse).toList();
    return cell == Cell.CENTRED
        ? Stream.concat(written.stream(), written.stream().map(PlaneSymmetry::centred)).toList()
        : written;
  }

  /** The group of a name, in whatever case it is written. */
  public static Optional<WallpaperGroup> named(String name) {
    String wanted = name.toLowerCase(Locale.ROOT).strip();
    return Stream.of(values()).filter(g -> g.names().contains(wanted)).findFirst();
  }
}
