package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed;
import frieze.motion.Motion;
import frieze.motion.Motions;
import frieze.rs274.ReadingRules.Paths;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Objects to corners of cuts that the controller rounds by more than a wall may be off.
 *
 * <p>In continuous mode (G64, and before a program has named a mode) a controller may leave the
 * path before a corner and come back to it behind. A circle that touches both legs at a distance t
 * from the corner passes it at t (1 - sin(h)) / cos(h), where h is half the angle between the legs;
 * it can touch no farther than the middle of the shorter leg.
 */
public final class CornerCheck implements Check {
  /** Less than what any cut may be off. */
  static final double ALLOWED_MM = 0.05;

  private static final double STRAIGHT_ON_COS = StrictMath.cos(StrictMath.toRadians(5));

  private final boolean stockIsKnown;
  private OptionalDouble roundedByMm = OptionalDouble.empty();
  private boolean exact;
  private Optional<Motion> before = Optional.empty();
  private boolean unknownCorners;

  public CornerCheck(Surroundings known) {
    this.stockIsKnown = StockBox.of(known).isPresent();
  }

  @Override
  public void paths(Paths habits) {
    roundedByMm = habits.cornersMm();
  }

  @Override
  public void start(String program) {
    exact = false;
    before = Optional.empty();
  }

  @Override
  public void event(Executed event, FindingLog log) {
    if (event instanceof Executed.Other other && other.what().startsWith("path ")) {
      exact = !other.what().equals("path continuous");
    }
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    boolean cuts = passage.isFeed() && (passage.belowTop().isPresent() || !stockIsKnown);
    Optional<Motion> last = before;
    before =
        cuts && passage.isPlaced() && passage.path().lengthMm() > 0
            ? Optional.of(passage.path())
            : Optional.empty();
    if (exact || last.isEmpty() || before.isEmpty()) {
      return;
    }
    double cut = passesMm(last.get(), before.get(), roundedByMm.orElse(Double.POSITIVE_INFINITY));
    if (cut <= ALLOWED_MM) {
      return;
    }
    if (roundedByMm.isEmpty()) {
      unknownCorners = true;
      return;
    }
    log.add(
        FindingCode.ROUNDED_CORNER,
        passage,
        Amount.mm(cut),
        "the controller may pass the corner where this cut starts at " + Words.mm(cut));
  }

  /** How far a controller that may leave its path by some distance can pass the corner. */
  public static double passesMm(Motion first, Motion second, double mostMm) {
    double[] in = Motions.direction(first, false);
    double[] out = Motions.direction(second, true);
    double cosTurn = in[0] * out[0] + in[1] * out[1] + in[2] * out[2];
    if (cosTurn > STRAIGHT_ON_COS) {
      return 0;
    }
    double sinHalf = Math.sqrt(Math.max(0, (1 + cosTurn) / 2));
    double cosHalf = Math.sqrt(Math.max(0, (1 - cosTurn) / 2));
    double touches = Math.min(first.lengthMm(), second.lengthMm()) / 2;
    return Math.min(mostMm, touches * (1 - sinHalf) / cosHalf);
  }

  @Override
  public List<NotChecked> notChecked() {
    return unknownCorners
        ? List.of(
            new NotChecked(
                "how far corners are rounded",
                "the programs do not ask for the exact path, and how far this controller may leave"
                    + " it is not given",
                false))
        : List.of();
  }
}
