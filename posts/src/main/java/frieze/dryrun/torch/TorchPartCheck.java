package frieze.dryrun.torch;

import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.NearLines;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.TorchFacts;
import frieze.motion.Executed;
import frieze.motion.Position;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Holds what a torch cuts against the parts that were asked for, from the text alone.
 *
 * <p>While the programs run: the pierce delay is waited for, and the torch travels unlit at the
 * clear height only. At the end: pierces lie in scrap, far enough from each part; edges lie half a
 * kerf beside the cut; each part is one piece, free of the sheet; openings come before the outline;
 * and what changes if the kerf is wider or narrower.
 */
public final class TorchPartCheck implements Check {
  private static final double SECONDS = 1e-3;

  /** A pierce on purpose is where it should be. */
  private static final double ON_PURPOSE_MM = 0.1;

  private final TorchFacts facts;
  private final List<TorchRun> runs = new ArrayList<>();
  private Optional<TorchRun> lit = Optional.empty();
  private Optional<Position> at = Optional.empty();

  public TorchPartCheck(TorchFacts facts) {
    this.facts = facts;
  }

  @Override
  public void start(String program) {
    lit = Optional.empty();
    at = Optional.empty();
  }

  @Override
  public void event(Executed event, FindingLog log) {
    if (event instanceof Executed.Torch torch) {
      lit = Optional.empty();
      if (torch.on() && at.isPresent()) {
        Point here = new Point(at.get().x(), at.get().y());
        TorchRun run = new TorchRun(log.programIndex(), torch.span(), here);
        runs.add(run);
        lit = Optional.of(run);
      }
    } else if (event instanceof Executed.Dwell dwell && lit.isPresent()) {
      TorchRun run = lit.get();
      run.dwellSeconds += run.chords.isEmpty() ? dwell.seconds() : 0;
    }
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    boolean sideways = passage.planarMm() > Slack.LENGTH_MM;
    if (sideways && passage.isPlaced() && lit.isPresent()) {
      TorchRun run = lit.get();
      if (run.chords.isEmpty() && run.dwellSeconds < facts.pierceSeconds() - SECONDS) {
        log.add(
            FindingCode.PIERCE_CUT_SHORT,
            passage,
            new Amount(facts.pierceSeconds() - run.dwellSeconds, "s"),
            "moves off after "
                + Amount.text(run.dwellSeconds)
                + " s, but the pierce takes "
                + Amount.text(facts.pierceSeconds())
                + " s");
      }
      run.add(passage.path(), passage.span());
    } else if (sideways && lit.isEmpty() && passage.lowZ().isPresent()) {
      double low = facts.clearZMm() - passage.lowZ().getAsDouble();
      if (low > Slack.LENGTH_MM) {
        log.add(
            FindingCode.TORCH_TRAVELS_LOW,
            passage,
            Amount.mm(low),
            "travels unlit " + Words.mm(low) + " below the clear height");
      }
    }
    at = passage.isPlaced() ? Optional.of(passage.path().to()) : Optional.empty();
  }

  @Override
  public void finish(FindingLog log) {
    if (facts.parts().isEmpty() || runs.isEmpty()) {
      return;
    }
    for (Region part : facts.parts()) {
      pierces(part, log);
      new TorchEdges(part, runs, facts).check(log);
    }
    new TorchPieces(facts, runs, log).check();
    widths(log);
  }

  /** The metal that the cuts leave of each micro-joint. */
  private void widths(FindingLog log) {
    List<double[]> chords = runs.stream().flatMap(r -> r.chords.stream()).toList();
    NearLines cuts = new NearLines(chords, facts.kerfMm());
    for (TorchFacts.Joint joint : facts.joints()) {
      Point at = joint.at();
      double look = joint.widthMm() + facts.kerfMm();
      double width = 2 * cuts.nearest(at.x(), at.y(), look).distanceMm() - facts.kerfMm();
      if (width < joint.widthMm() - TorchEdges.EDGE_MM) {
        log.addAt(
            runs.get(0).program,
            FindingCode.JOINT_BURNT,
            SourceSpan.NONE,
            Amount.mm(width),
            "the micro-joint at X"
                + Amount.text(at.x())
                + " Y"
                + Amount.text(at.y())
                + " is "
                + Words.mm(Math.max(0, width))
                + " wide, but "
                + Words.mm(joint.widthMm())
                + " are asked for");
      }
    }
  }

  private void pierces(Region part, FindingLog log) {
    double clear = facts.pierceClearMm();
    NearLines edges = new NearLines(TorchSheet.edges(part), Math.max(1, clear));
    Region.Locator inside = part.locator();
    for (TorchRun run : runs) {
      Point p = run.pierce;
      boolean inKerf = facts.relit().stream().anyMatch(o -> o.distance(p) <= ON_PURPOSE_MM);
      boolean wanted =
          run.chords.isEmpty()
              && facts.pierceOnly().stream().anyMatch(o -> o.distance(p) <= ON_PURPOSE_MM);
      if (wanted) {
        continue;
      }
      double gap = edges.nearest(p.x(), p.y(), Math.max(clear, Slack.LENGTH_MM)).distanceMm();
      if (inside.contains(p)) {
        log.addAt(
            run.program, FindingCode.PIERCE_ON_PART, run.span, Amount.NONE, "pierces the part");
      } else if (gap < clear - Slack.LENGTH_MM && inKerf) {
        log.addAt(
            run.program,
            FindingCode.LIT_IN_KERF,
            run.span,
            Amount.mm(gap),
            "is lit in the kerf, " + Words.mm(gap) + " from the part");
      } else if (gap < clear - Slack.LENGTH_MM) {
        log.addAt(
            run.program,
            FindingCode.PIERCE_ON_PART,
            run.span,
            Amount.mm(gap),
            "pierces " + Words.mm(gap) + " from the part, but " + Words.mm(clear) + " are needed");
      }
    }
  }
}
