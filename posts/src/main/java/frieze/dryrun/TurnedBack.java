package frieze.dryrun;

import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.FindingCount;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Executed.MachinePosition;
import frieze.motion.Motions;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Shows the moves of a program as a stock that lies turned on the machine sees them, so that all
 * checks may go on along its edges. Only the machine's travel is judged as the text has it.
 *
 * <p><em>Approximation:</em> a rapid whose axes do not wait for each other is taken apart along the
 * stock's edges instead of the machine's axes.
 */
final class TurnedBack {
  private TurnedBack() {}

  /** How far the stock lies turned. */
  static double skewRad(Surroundings known) {
    return known.zero().map(Zero::skewRad).orElse(0.0);
  }

  /** An event as the stock sees it. */
  static Executed seen(Executed event, double skewRad) {
    return skewRad != 0 && event instanceof Executed.Move move ? seen(move, skewRad) : event;
  }

  private static Executed.Move seen(Executed.Move move, double skewRad) {
    return new Executed.Move(
        move.kind(),
        Motions.turned(move.path(), -skewRad),
        together(move.fromKnown()),
        together(move.toKnown()),
        new MachinePosition(OptionalDouble.empty(), OptionalDouble.empty(), move.machineTo().z()),
        move.feedMmPerMin(),
        move.seconds(),
        move.state(),
        move.span());
  }

  /** A place along one edge is known only if both axes are. */
  private static KnownAxes together(KnownAxes axes) {
    boolean both = axes.x() && axes.y();
    return new KnownAxes(both, both, axes.z());
  }

  /** The same result, but for the travel, which is judged by the text as it is. */
  static DryRunResult withTravel(
      DryRunResult seen, Surroundings known, List<ProgramText> programs) {
    if (skewRad(known) == 0 || known.machine().isEmpty()) {
      return seen;
    }
    Surroundings bare =
        Surroundings.UNKNOWN
            .withMachine(known.machine().get())
            .withZeroOnMachine(known.zeroOnMachine())
            .withTools(known.tools());
    DryRunResult asRun = DryRun.in(bare).run(programs);
    List<Finding> findings = new ArrayList<>();
    List<FindingCount> counts = new ArrayList<>();
    asRun.findings().stream().filter(f -> isTravel(f.code())).forEach(findings::add);
    asRun.counts().stream().filter(c -> isTravel(c.code())).forEach(counts::add);
    seen.findings().stream().filter(f -> !isTravel(f.code())).forEach(findings::add);
    seen.counts().stream().filter(c -> !isTravel(c.code())).forEach(counts::add);
    return seen.withFindings(findings).withCounts(counts).withExtents(asRun);
  }

  private static boolean isTravel(frieze.diagnostic.Code code) {
    return code == FindingCode.BEYOND_TRAVEL;
  }
}
