package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.ChamferDistance;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.GridPieces;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.StandingMap;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.StockCutter;
import frieze.dryrun.scene.Surroundings;
import frieze.shop.Stock;
import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Objects to strips between through cuts, or between one and the edge of the stock, that are too
 * thin to stand: they break off and are thrown about.
 *
 * <p>A strip is what vanishes when the standing stock is worn away by half the least width and
 * grown again. <em>Source:</em> {@link #LEAST_MM} and {@link #SLENDERNESS} are common practice.
 */
public final class ThinStripCheck implements Check {
  static final double LEAST_MM = 1.5;

  /** A strip must be at least this fraction of the thickness wide. */
  static final double SLENDERNESS = 8;

  /** A strip is that many times longer than it may be thin. */
  private static final double LENGTHS = 10;

  private final Optional<StockCutter> cutter;
  private final Optional<StockBox> box;
  private final double widthMm;
  private @Nullable Passage through;

  public ThinStripCheck(Surroundings known, Optional<StockCutter> cutter) {
    this.cutter = cutter;
    this.box = StockBox.of(known);
    this.widthMm =
        known
            .stock()
            .map(Stock::thickestMm)
            .map(t -> Math.max(LEAST_MM, t / SLENDERNESS))
            .orElse(0.0);
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    boolean cutsThrough =
        box.isPresent()
            && !passage.isRapid()
            && passage.planarMm() > Slack.LENGTH_MM
            && passage.lowZ().orElse(0) <= box.get().bottomMm();
    if (cutsThrough) {
      through = passage;
    }
  }

  @Override
  public void finish(FindingLog log) {
    if (cutter.isEmpty() || through == null) {
      return;
    }
    StandingMap map = StandingMap.of(cutter.get().field());
    double longest = longestStripMm(map, widthMm);
    if (longest >= LENGTHS * widthMm) {
      log.add(
          FindingCode.THIN_STRIP,
          through,
          Amount.mm(longest),
          "leaves a strip "
              + Words.mm(Math.rint(longest))
              + " long that is thinner than "
              + Words.mm(widthMm));
    }
  }

  /** The longest strip thinner than a width; 0 without one. */
  public static double longestStripMm(StandingMap map, double widthMm) {
    int columns = map.columns();
    int rows = map.rows();
    int n = columns * rows;
    double half = widthMm / 2 / map.squareMm();
    boolean[] stands = new boolean[n];
    for (int i = 0; i < n; i++) {
      stands[i] = map.stands(i);
    }
    float[] depth = ChamferDistance.toFalse(stands, columns, rows);
    boolean[] worn = new boolean[n];
    for (int i = 0; i < n; i++) {
      worn[i] = depth[i] <= half;
    }
    float[] back = ChamferDistance.toFalse(worn, columns, rows, false);
    boolean[] lost = new boolean[n];
    for (int i = 0; i < n; i++) {
      lost[i] = stands[i] && back[i] > half + 2;
    }
    return longest(lost, columns, rows) * map.squareMm();
  }

  private static double longest(boolean[] lost, int columns, int rows) {
    int[] piece = GridPieces.of(lost, columns, rows);
    int count = Arrays.stream(piece).max().orElse(0);
    int[][] box = new int[count + 1][];
    double longest = 0;
    for (int i = 0; i < piece.length; i++) {
      int p = piece[i];
      if (p > 0) {
        int x = i % columns;
        int y = i / columns;
        int[] b = box[p] == null ? new int[] {x, y, x, y} : box[p];
        b[0] = Math.min(b[0], x);
        b[1] = Math.min(b[1], y);
        b[2] = Math.max(b[2], x);
        b[3] = Math.max(b[3], y);
        box[p] = b;
        longest = Math.max(longest, Math.hypot(b[2] - b[0] + 1, b[3] - b[1] + 1));
      }
    }
    return longest;
  }
}
