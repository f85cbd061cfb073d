package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.StandingMap;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.StockCutter;
import frieze.dryrun.scene.Surroundings;
import frieze.field.Met;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Objects to pieces that come free with nothing to hold them, and to cuts into pieces that are free
 * already.
 *
 * <p>What hangs together is seen on the simulated stock, after each run of cuts that go through: at
 * the next rapid, or the next feed above the stock where a program travels at feed. Whatever
 * reaches the edge of the stock counts as held: only clamps could tell more.
 *
 * <p><em>Approximation:</em> pieces below {@link #SMALLEST_MM2} are passed over; bridges count
 * however thin they are; after {@link #MOST_LOOKS} looks in a program only its end is looked at.
 */
public final class FreePieceCheck implements Check {
  /** Smaller pieces are chips. */
  static final double SMALLEST_MM2 = 100;

  public static final int MOST_LOOKS = 40;

  private final Optional<StockCutter> cutter;
  private final Optional<StockBox> stock;
  private boolean[] free = {};
  private @Nullable StandingMap map;
  private @Nullable Passage through;
  private boolean dirty;
  private int looks;

  public FreePieceCheck(Surroundings known, Optional<StockCutter> cutter) {
    this.cutter = cutter;
    this.stock = StockBox.of(known);
  }

  @Override
  public void start(String program) {
    looks = 0;
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (cutter.isEmpty()) {
      return;
    }
    boolean leftCut = passage.isRapid() || passage.belowTop().isEmpty();
    if (leftCut && dirty && looks < MOST_LOOKS) {
      look(log);
    }
    if (passage.isRapid()) {
      return;
    }
    cutsFreePiece(passage, log);
    boolean sideways = passage.planarMm() > Slack.LENGTH_MM;
    if (sideways && passage.lowZ().orElse(0) <= stock.orElseThrow().bottomMm()) {
      dirty = true;
      through = passage;
    }
  }

  private void cutsFreePiece(Passage passage, FindingLog log) {
    Optional<Met> met = passage.met().filter(m -> m.deepestMm() > Slack.STANDING_MM);
    if (map == null || met.isEmpty()) {
      return;
    }
    int index = map.indexAt(met.get().place().x(), met.get().place().y());
    if (index < free.length && free[index]) {
      log.add(
          FindingCode.FREED_EARLY,
          passage,
          Amount.mm(met.get().deepestMm()),
          "cuts into a piece that earlier cuts have freed");
    }
  }

  @Override
  public void end(FindingLog log) {
    if (dirty) {
      look(log);
    }
  }

  private void look(FindingLog log) {
    dirty = false;
    looks++;
    StandingMap now = StandingMap.of(cutter.orElseThrow().field());
    int[] piece = now.pieces();
    boolean[] held = now.reachesEdge(piece);
    double[] area = new double[held.length];
    boolean[] known = new boolean[held.length];
    for (int i = 0; i < piece.length; i++) {
      area[piece[i]] += now.squareMm() * now.squareMm();
      known[piece[i]] |= free.length == piece.length && free[i];
    }
    boolean[] freeNow = new boolean[piece.length];
    for (int i = 0; i < piece.length; i++) {
      int p = piece[i];
      freeNow[i] = p > 0 && !held[p] && area[p] >= SMALLEST_MM2;
    }
    for (int p = 1; p < held.length; p++) {
      if (!held[p] && !known[p] && area[p] >= SMALLEST_MM2 && through != null) {
        log.add(
            FindingCode.FREED_UNHELD,
            through,
            new Amount(area[p], "mm2"),
            "frees a piece of "
                + Amount.text(Math.rint(area[p]))
                + " mm2 with neither tab nor skin to hold it");
      }
    }
    free = freeNow;
    map = now;
  }

  @Override
  public List<NotChecked> notChecked() {
    return cutter.isPresent()
        ? List.of()
        : List.of(
            new NotChecked(
                "pieces that come free", "the stock or the zero on it is not given", true));
  }
}
