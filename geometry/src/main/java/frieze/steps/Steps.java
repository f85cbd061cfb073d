package frieze.steps;

import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.motion.Box;
import frieze.plan.Plan;
import frieze.plan.cut.Cut;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * How a panel that is longer than its machine is carved: the stock is clamped, carved as far as the
 * machine reaches, pushed to the left by always the same distance, held by pins, and carved on.
 * Seen from the stock, the machine moves to the right.
 *
 * <p><em>Guarantees:</em> every cut of the plan is made, by one step or by two that meet at a seam
 * and overlap by {@link #OVERLAP_MM}; no step leaves its window; no seam goes through a motif where
 * another place would not.
 *
 * @param windowFromMm where the reach of the first step begins, along the stock
 * @param windowMm how far the tool's axis may travel in a step
 * @param shiftMm how far the stock is pushed
 * @param seams between the steps, from left to right
 * @param cuts of each step, in the panel's frame, in the order of cutting
 */
public record Steps(
    double windowFromMm,
    double windowMm,
    double shiftMm,
    List<Seam> seams,
    Pins pins,
    List<List<Cut>> cuts) {
  /** How far a step goes on beyond its seam, where the next one begins. */
  public static final double OVERLAP_MM = 3;

  /** What is left of the travel at either end, because nobody sets a zero to the millimetre. */
  public static final double MARGIN_MM = 5;

  /** The least room to choose a seam from, and the least that is worth a push. */
  private static final double LEAST_MM = 50;

  private static final int MOST_STEPS = 20;

  public Steps {
    seams = List.copyOf(seams);
    cuts = cuts.stream().map(List::copyOf).toList();
  }

  public int count() {
    return cuts.size();
  }

  /** Where a step begins along the stock: at its seam, or at the left edge. */
  public double fromMm(int step) {
    return step == 0 ? 0 : seams.get(step - 1).xMm();
  }

  /** Where a step ends along a stock: at its seam, or at the right edge. */
  public double toMm(int step, double stockLengthMm) {
    return step == count() - 1 ? stockLengthMm : seams.get(step).xMm();
  }

  /**
   * Shares out the cuts of a plan.
   *
   * @param plan of the whole panel, as if the machine were long enough
   * @param setup the stock on the real machine, before it is pushed
   * @param found takes what should be known of the seams
   * @throws BadInputException if it can't be done
   */
  public static Steps of(Plan plan, Setup setup, Pins.Wanted wanted, Diagnostics found) {
    Span all = Span.of(plan, setup);
    double window = windowMm(setup);
    double windowFrom = all.fromMm();
    double needed = all.lengthMm();
    int count = count(needed, window, setup, wanted);
    double least = Math.max(LEAST_MM, 3 * wanted.diameterMm());
    double shift = Math.ceil(Math.max(least, (needed - window) / (count - 1)));
    Pins pins = new PinPlaces(plan.cuts(), setup, wanted).in(windowFrom, window, shift, count);
    SeamChoice choice = new SeamChoice(onStock(Reach.of(plan.cuts()), setup.panelXMm()));
    List<Seam> seams = new ArrayList<>();
    for (int i = 1; i < count; i++) {
      double from = windowFrom + i * shift;
      double to = windowFrom + (i - 1) * shift + window - OVERLAP_MM;
      double after = seams.isEmpty() ? from : Math.max(from, seams.get(i - 2).xMm());
      Seam seam = choice.between(after, to);
      seams.add(seam);
      tell(seam, wanted, found);
    }
    return new Steps(windowFrom, window, shift, seams, pins, cuts(plan, setup, seams));
  }

  /** Whether the machine does not reach over the whole plan. */
  public static boolean areNeeded(Plan plan, Setup setup) {
    return Span.of(plan, setup).lengthMm() > windowMm(setup);
  }

  /** A stock that lies turned needs as much more of the travel as its width takes along X. */
  private static double windowMm(Setup setup) {
    double turned = Math.abs(StrictMath.sin(setup.zero().skewRad())) * setup.stock().widthMm();
    return setup.machine().travelXMm() - 2 * MARGIN_MM - turned;
  }

  /**
   * The way of the tool's axis along the stock, and of its way home: programs end at their zero.
   */
  private record Span(double fromMm, double toMm) {
    static Span of(Plan plan, Setup setup) {
      double low = 0;
      double high = 0;
      for (Cut cut : plan.cuts()) {
        for (Cut.Move move : cut.moves()) {
          Box box = move.path().box();
          low = Math.min(low, box.minX() + setup.panelXMm());
          high = Math.max(high, box.maxX() + setup.panelXMm());
        }
      }
      return new Span(low, high);
    }

    double lengthMm() {
      return toMm - fromMm;
    }
  }

  private static List<Reach> onStock(List<Reach> onPanel, double panelXMm) {
    return onPanel.stream()
        .map(r -> new Reach(r.name(), r.minMm() + panelXMm, r.maxMm() + panelXMm))
        .toList();
  }

  /** The fewest steps that leave room to choose the seams from. */
  private static int count(double neededMm, double windowMm, Setup setup, Pins.Wanted wanted) {
    for (int count = 2; count <= MOST_STEPS; count++) {
      double shift = Math.max(LEAST_MM, (neededMm - windowMm) / (count - 1)) + 1;
      if (windowMm - shift - OVERLAP_MM >= LEAST_MM) {
        return count;
      }
    }
    throw new BadInputException(
        Diagnostic.error(
            StepCode.TRAVEL_TOO_SHORT,
            wanted.where(),
            "the cuts are "
                + Amounts.length(neededMm)
                + " long, and \""
                + setup.machine().name()
                + "\" travels "
                + Amounts.length(setup.machine().travelXMm())
                + ": "
                + MOST_STEPS
                + " steps are not enough",
            "use a machine that reaches farther"));
  }

  private static List<List<Cut>> cuts(Plan plan, Setup setup, List<Seam> seams) {
    List<List<Cut>> all = new ArrayList<>();
    for (int i = 0; i <= seams.size(); i++) {
      double from = i == 0 ? Double.NEGATIVE_INFINITY : seams.get(i - 1).xMm() - setup.panelXMm();
      double to =
          i == seams.size()
              ? Double.POSITIVE_INFINITY
              : seams.get(i).xMm() + OVERLAP_MM - setup.panelXMm();
      CutSplit split = new CutSplit(from, to);
      List<Cut> cuts = new ArrayList<>();
      plan.cuts().forEach(cut -> cuts.addAll(split.of(cut)));
      all.add(cuts);
    }
    return all;
  }

  private static void tell(Seam seam, Pins.Wanted wanted, Diagnostics found) {
    if (!seam.motifs().isEmpty()) {
      found.warning(
          StepCode.SEAM_THROUGH_MOTIF,
          wanted.where(),
          "the seam at X"
              + Amounts.length(seam.xMm())
              + " of the stock goes through "
              + String.join(", ", seam.motifs())
              + ": no place within reach is free of motifs",
          "another count or pitch, or another position of the panel, may leave a gap there");
    }
  }
}
