package frieze.dryrun.scene;

import frieze.field.Met;
import frieze.field.StockField;
import frieze.field.SweptMoves;
import frieze.motion.Executed.Kind;
import frieze.motion.Motion;
import frieze.motion.Motions;
import frieze.shop.Stock;
import frieze.shop.Tool;
import java.util.Optional;
import java.util.OptionalDouble;

/** Cuts moves into the simulated stock, and tells each of them what material it meets. */
public final class StockCutter {
  private final StockField field;
  private final StockBox box;
  private final SweptMoves moves;
  private final boolean keepsMoves;
  private final Engagement engagement;
  private boolean cutAll = true;

  /** Whether the last move was a probe's. */
  private boolean onSurface;

  private StockCutter(StockField field, StockBox box, SweptMoves moves, boolean keepsMoves) {
    this.field = field;
    this.box = box;
    this.moves = moves;
    this.keepsMoves = keepsMoves;
    this.engagement = new Engagement(field);
  }

  /** The side of the cells in which the stock is kept. */
  public double cellMm() {
    return field.cellMm();
  }

  /**
   * Makes one for an uncut stock; empty if the stock or the zero on it is not known.
   *
   * @param cellMm the field's cell; empty for the usual one
   * @param keepsMoves whether the moves will be looked at again
   */
  public static Optional<StockCutter> of(
      Surroundings known, OptionalDouble cellMm, boolean keepsMoves) {
    return known
        .stock()
        .flatMap(
            stock ->
                StockBox.of(known)
                    .map(
                        box ->
                            new StockCutter(
                                field(stock, cellMm), box, new SweptMoves(), keepsMoves)));
  }

  /** The same stock as it is now, in other surroundings; it goes on to be cut there. */
  public Optional<StockCutter> movedTo(Surroundings known) {
    Optional<StockCutter> moved =
        StockBox.of(known).map(there -> new StockCutter(field, there, moves, keepsMoves));
    moved.ifPresent(cutter -> cutter.cutAll = cutAll);
    return moved;
  }

  private static StockField field(Stock stock, OptionalDouble cellMm) {
    return cellMm.isPresent() ? StockField.of(stock, cellMm.getAsDouble()) : StockField.of(stock);
  }

  public void move(Passage passage) {
    if (probes(passage)) {
      passage.setMet(Met.NOTHING);
      return;
    }
    if (passage.tool().isEmpty() || !passage.isPlaced()) {
      cutAll &= passage.belowTop().isEmpty();
      return;
    }
    if (passage.belowTop().isEmpty() && passage.tool().isPresent()) {
      passage.setMet(Met.NOTHING);
      return;
    }
    Tool tool = passage.tool().get();
    Motion path = inStock(passage.path());
    if (keepsMoves) {
      moves.add(path, tool.shape());
    }
    // What is only grazed does not count: a sliver of a wall is as thick as the wall is high.
    Met met = field.materialUnder(path, tool.shape());
    passage.setMet(met);
    if (EngagementLimit.asks(passage, tool, met.deepestMm())) {
      passage.setEngagedRad(
          engagement.largestRad(path, tool, met.standingMm() - path.box().minZ()));
    }
    field.cut(path, tool.shape());
  }

  /**
   * Whether a move feels for a surface, or comes back from it. A probe ends where it meets
   * something; a head may have given way below its tip's height by then. Nothing is taken.
   */
  private boolean probes(Passage passage) {
    boolean probe = passage.move().kind() == Kind.PROBE;
    boolean back =
        onSurface
            && passage.isRapid()
            && passage.planarMm() <= Slack.LENGTH_MM
            && passage.path().to().z() > passage.path().from().z();
    onSurface = probe;
    return probe || back;
  }

  /**
   * How far material stands above the tip on a path, within a distance of the axis and a cell.
   *
   * @param path in the program's frame, already cut
   */
  public double besideMm(Motion path, double distanceMm) {
    field.settle();
    return new Beside(field).highestAboveTipMm(inStock(path), distanceMm + 2 * field.cellMm());
  }

  /** A path of the program in the stock frame. */
  public Motion inStock(Motion path) {
    return Motions.shifted(path, -box.minXMm(), -box.minYMm(), -box.topMm());
  }

  public StockField field() {
    return field;
  }

  public SweptMoves moves() {
    return moves;
  }

  /** Whether no cut was left out for want of a known tool or place. */
  boolean cutAll() {
    return cutAll;
  }
}
