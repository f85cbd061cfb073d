package frieze.layout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The seven ways to repeat a motif along a band.
 *
 * <p>Symbols and operations as in the <i>International Tables for Crystallography</i>, volume E
 * (from memory): the letters after {@code p} stand for what is across the band's direction, along
 * it, and at right angles to the plane. The nicknames are J. H. Conway's; the plain words are ours.
 */
public enum FriezeGroup {
  P1("p1", 1, "x,y", "repeat, hop"),
  P11G("p11g", 2, "x,y; x+1/2,-y", "flip, step, p1a1, p11a, glide"),
  P1M1("p1m1", 2, "x,y; -x,y", "mirror, sidle"),
  P2("p2", 2, "x,y; -x,-y", "turn, spinning hop, p211"),
  P2MG("p2mg", 4, "x,y; -x,-y; -x+1/2,y; x+1/2,-y", "turn and mirror, spinning sidle, p2ma"),
  P11M("p11m", 1, "x,y; x,-y", "mirror below, jump"),
  P2MM("p2mm", 2, "x,y; -x,-y; -x,y; x,-y", "mirror both ways, spinning jump");

  private final String symbol;
  private final int columns;
  private final String generalPosition;
  private final String otherNames;

  FriezeGroup(String symbol, int columns, String generalPosition, String otherNames) {
    this.symbol = symbol;
    this.columns = columns;
    this.generalPosition = generalPosition;
    this.otherNames = otherNames;
  }

  /** The standard symbol, such as {@code p2mg}. */
  public String symbol() {
    return symbol;
  }

  /** Everyday words, such as {@code turn and mirror}. */
  public String plainWords() {
    return names().get(1);
  }

  /** Conway's name for the footsteps that have this symmetry. */
  public String nickname() {
    return names().get(2);
  }

  /** All names by which {@link #named} knows the group, the symbol first. */
  public List<String> names() {
    return Stream.concat(Stream.of(symbol), Stream.of(otherNames.split(", ", -1))).toList();
  }

  /** The operations of one period, the identity first. */
  public List<Symmetry> operations() {
    return Stream.of(generalPosition.split("; ", -1)).map(Symmetry::parse).toList();
  }

  /** How many motifs stand beside each other, evenly spaced, in one period. */
  public int columnsPerPeriod() {
    return columns;
  }

  /** How many motifs stand above each other: 2 where the centre line is a mirror. */
  public int rows() {
    return operations().size() / columns;
  }

  /** The operations that make the motifs of one column of the period, the upper one first. */
  public List<Symmetry> inColumn(int column) {
    return operations().stream()
        .filter(s -> columnOf(s) == Math.floorMod(column, columns))
        .sorted((a, b) -> Integer.compare(b.ySign(), a.ySign()))
        .toList();
  }

  /** With the drawn motif in the middle of column 0, the column that an operation takes it to. */
  private int columnOf(Symmetry s) {
    int middleInHalfColumns = s.xSign() + s.halfPeriods() * columns;
    return Math.floorMod(Math.floorDiv(middleInHalfColumns, 2), columns);
  }

  /** The group of a name, in whatever case and spacing it is written. */
  public static Optional<FriezeGroup> named(String name) {
    String wanted = plain(name);
    return Stream.of(values())
        .filter(g -> g.names().stream().anyMatch(n -> plain(n).equals(wanted)))
        .findFirst();
  }

  private static String plain(String name) {
    return name.toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ").strip();
  }
}
