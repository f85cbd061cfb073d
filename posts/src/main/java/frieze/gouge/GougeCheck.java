package frieze.gouge;

import frieze.curve.Point;
import frieze.design.Intent;
import frieze.field.StockField;
import frieze.field.SweptMoves;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Compares a simulated stock with what a design asks for.
 *
 * <p>The reference depth at a point comes from the intents' own outlines and lines, by distances
 * worked out here; no offset, axis or fitted path of the planning is used. Where intents overlap
 * the deepest counts.
 *
 * <p>What is compared: every cell of the field, at its centre; and windows of {@link
 * FineCheck#CELL_MM} cells at places along the outlines, simulated anew from the moves.
 *
 * <p><b>Approximation:</b> walls may be off by {@link Settings#wallMm} and depths by {@link
 * Settings#depthMm} without being told. A place counts as left only where the tool could have stood
 * with a few micrometres to spare, or where it did stand: nobody insists that it goes where it only
 * just fits, but where it goes it must cut to the depth.
 */
public final class GougeCheck {
  static final byte TOO_DEEP_MARK = 1;
  static final byte LEFT_MARK = 2;

  private static final double MICROMETRES = 1000;

  /**
   * How strict the check is.
   *
   * @param wallMm how far a wall may be off, sideways
   * @param depthMm how far a floor may be off
   * @param windows how many places along all outlines are looked at closely
   * @param longestTabMm a stretch of a through cut that still stands counts as a tab up to here
   * @param most how many discrepancies of a sort are listed; all are counted
   */
  public record Settings(
      double wallMm, double depthMm, int windows, double longestTabMm, int most) {
    public static final Settings DEFAULT = new Settings(0.02, 0.01, 200, 30, 50);

    public Settings {
      if (!(wallMm > 0) || !(depthMm > 0)) {
        throw new IllegalArgumentException(
            "wallMm and depthMm must be > 0 but were " + wallMm + ", " + depthMm + " mm");
      }
    }
  }

  /**
   * What was found.
   *
   * @param discrepancies the worst of each sort first: too deep, left, not freed
   * @param tooDeep how many places are too deep, listed or not
   * @param left how many places were left, listed or not
   * @param map for a picture
   * @param cells how many cells were compared
   * @param windows how many windows were compared
   */
  public record Result(
      List<Discrepancy> discrepancies,
      int tooDeep,
      int left,
      GougeMap map,
      long cells,
      int windows) {
    public Result {
      discrepancies = List.copyOf(discrepancies);
    }

    /** Whether the stock is what the design asks for, as far as was compared. */
    public boolean isClean() {
      return discrepancies.isEmpty();
    }
  }

  private final List<Wish> wishes;
  private final StockField field;
  private final SweptMoves moves;
  private final Settings settings;

  private GougeCheck(List<Wish> wishes, StockField field, SweptMoves moves, Settings settings) {
    this.wishes = wishes;
    this.field = field;
    this.moves = moves;
    this.settings = settings;
  }

  /**
   * Compares.
   *
   * @param intents of the panel that the setup holds
   * @param field cut by all programs of the setup
   * @param moves the same moves that cut the field
   */
  public static Result check(
      List<Intent> intents, Setup setup, StockField field, SweptMoves moves) {
    return check(intents, setup, field, moves, Settings.DEFAULT);
  }

  /** Compares as strictly as told. */
  public static Result check(
      List<Intent> intents, Setup setup, StockField field, SweptMoves moves, Settings settings) {
    List<Wish> wishes =
        intents.stream()
            .flatMap(intent -> Wish.of(intent, setup, settings.wallMm()).stream())
            .toList();
    return new GougeCheck(wishes, field, moves, settings).run();
  }

  private Result run() {
    short[] offences = new CoarseCheck(wishes, field, moves, settings).run();
    GougeMap map = map(offences);
    List<Blobs.Blob> blobs = new Blobs(offences, field.columns()).gather();
    FineCheck fine = new FineCheck(wishes, field.thicknessMm(), moves, settings);
    List<Discrepancy> close = fine.run();
    close.sort(Comparator.comparingDouble(d -> -d.amountMm()));
    Places deep = new Places(settings.most());
    Places left = new Places(settings.most());
    blobs.forEach(blob -> (blob.worst() > 0 ? deep : left).offer(discrepancy(blob)));
    close.forEach(d -> (d.kind() == Discrepancy.Kind.TOO_DEEP ? deep : left).offer(d));
    List<Discrepancy> found = new ArrayList<>(deep.kept());
    found.addAll(left.kept());
    for (Wish wish : wishes) {
      found.addAll(new FreedCheck(wish, field, settings.longestTabMm()).run());
    }
    return new Result(found, deep.count(), left.count(), map, field.cells(), fine.windows());
  }

  private Discrepancy discrepancy(Blobs.Blob blob) {
    double cell = field.cellMm();
    Point place = new Point((blob.worstColumn() + 0.5) * cell, (blob.worstRow() + 0.5) * cell);
    Nearby nearby = Nearby.of(wishes, place);
    boolean deep = blob.worst() > 0;
    return new Discrepancy(
        deep ? Discrepancy.Kind.TOO_DEEP : Discrepancy.Kind.LEFT,
        nearby.name(),
        place,
        Math.abs(blob.worst()) / MICROMETRES,
        blob.cells() * cell * cell,
        deep ? nearby.sidewaysMm() : 0);
  }

  /** Marks each cell of the map that holds an offence; too deep goes before left. */
  private GougeMap map(short[] offences) {
    int largest = Math.max(field.columns(), field.rows());
    int step = Math.max(1, -Math.floorDiv(-largest, MOST_MAP_COLUMNS));
    int width = -Math.floorDiv(-field.columns(), step);
    int height = -Math.floorDiv(-field.rows(), step);
    byte[] marks = new byte[width * height];
    for (int at = 0; at < offences.length; at++) {
      if (offences[at] != 0) {
        int to = at / field.columns() / step * width + at % field.columns() / step;
        if (offences[at] > 0) {
          marks[to] = TOO_DEEP_MARK;
        } else if (marks[to] == 0) {
          marks[to] = LEFT_MARK;
        }
      }
    }
    return new GougeMap(width, height, step * field.cellMm(), marks);
  }

  private static final int MOST_MAP_COLUMNS = 1600;
}
