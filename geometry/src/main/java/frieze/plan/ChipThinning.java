package frieze.plan;

import frieze.design.Work;
import frieze.diagnostic.Diagnostic;
import frieze.plan.cut.ChipLoads;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.PlanCode;
import frieze.shop.Material;
import frieze.shop.Tool;
import java.util.Locale;
import java.util.Optional;

/**
 * How thick chips are when a tool takes less than half of its diameter.
 *
 * <p>An edge that is still on the rim's flank when it leaves the material cuts a chip that is
 * nowhere as thick as the advance. With x the engaged part of the diameter, the thickest place is 2
 * sqrt(x (1 - x)) of it. Common practice; it is the sine of the angle at which the edge enters.
 * Feeds are not raised for it: that is the user's to decide.
 */
final class ChipThinning {
  /** Thinning that a chip load is not known well enough to mind. */
  private static final double MINDED = 0.9;

  private ChipThinning() {}

  /**
   * The thickest place of a chip, as a part of the advance for each flute and turn.
   *
   * @param engagedMm how much of the diameter stands in the material, across the feed
   */
  static double factor(double engagedMm, double diameterMm) {
    double part = engagedMm / diameterMm;
    return part >= 0.5 ? 1 : 2 * Math.sqrt(part * (1 - part));
  }

  /** Warns of chips thinner than usual because loops lie close together. */
  static Optional<Diagnostic> warning(Work.Recess recess, Feeds feeds, Material material) {
    Tool tool = recess.tool();
    double factor = factor(recess.stepoverMm(), tool.diameterMm());
    double chip = factor * feeds.chipLoadMm();
    ChipLoads.Range usual = ChipLoads.range(material.kind(), tool.diameterMm());
    if (factor > MINDED || chip >= usual.lowMm()) {
      return Optional.empty();
    }
    String message =
        String.format(
            Locale.ROOT,
            "tool %s is engaged by %.0f%% of its diameter only: its chips are %.3f mm thick, %.0f%%"
                + " of its %.3f mm for each flute and turn and below the usual %.3f to %.3f mm; it"
                + " may rub and burn the wood",
            tool.name(),
            100 * recess.stepoverMm() / tool.diameterMm(),
            chip,
            100 * factor,
            feeds.chipLoadMm(),
            usual.lowMm(),
            usual.highMm());
    return Optional.of(
        Diagnostic.warning(
            PlanCode.CHIP_THINNED,
            recess.where(),
            message,
            "a wider stepover makes thicker chips; feeds are never raised for you"));
  }
}
