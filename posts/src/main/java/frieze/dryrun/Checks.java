package frieze.dryrun;

import frieze.dryrun.check.CornerCheck;
import frieze.dryrun.check.EndCheck;
import frieze.dryrun.check.EngagementCheck;
import frieze.dryrun.check.FeedCheck;
import frieze.dryrun.check.FreePieceCheck;
import frieze.dryrun.check.KeepOutCheck;
import frieze.dryrun.check.LowTravelCheck;
import frieze.dryrun.check.MaterialCheck;
import frieze.dryrun.check.PlungeCheck;
import frieze.dryrun.check.ReachCheck;
import frieze.dryrun.check.SpeedCheck;
import frieze.dryrun.check.SpindleCheck;
import frieze.dryrun.check.SpoilboardCheck;
import frieze.dryrun.check.StockEdgeCheck;
import frieze.dryrun.check.ThinStripCheck;
import frieze.dryrun.check.ToolCheck;
import frieze.dryrun.check.TouchOffCheck;
import frieze.dryrun.check.TravelCheck;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.StockCutter;
import frieze.dryrun.scene.Surroundings;
import frieze.dryrun.scene.TorchFacts;
import frieze.dryrun.torch.TorchCheck;
import frieze.dryrun.torch.TorchPartCheck;
import frieze.rs274.ReadingRules.Paths;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * All checks, in the order in which they see a move.
 *
 * <ul>
 *   <li>{@link TravelCheck}: moves stay within the machine's travel, with a known or unknown zero.
 *   <li>{@link StockEdgeCheck}: cuts lie on the stock.
 *   <li>{@link SpoilboardCheck}: nothing goes deeper than the stock and the spoilboard's allowance.
 *   <li>{@link LowTravelCheck}: rapids travel at the clearance height.
 *   <li>{@link MaterialCheck}: rapids meet no material, and no pass takes too much.
 *   <li>{@link EngagementCheck}: no tool has more of its rim in material than its limit.
 *   <li>{@link SpindleCheck}: cuts have the spindle on, or a stop to switch it on by hand.
 *   <li>{@link SpeedCheck}: speeds are within the tool's and the machine's limits.
 *   <li>{@link FeedCheck}: feed moves have a feed within the machine's and the tool's limits.
 *   <li>{@link PlungeCheck}: tools go down as fast and as steeply as they can.
 *   <li>{@link ReachCheck}: neither shank nor collet rubs on what stands beside a cut.
 *   <li>{@link CornerCheck}: rounded corners stay near the path.
 *   <li>{@link KeepOutCheck}: tool and holder stay clear of clamps.
 *   <li>{@link ToolCheck}: the shop knows the tools, and the machine can change them.
 *   <li>{@link FreePieceCheck}: pieces are held when they come free, and are not cut afterwards.
 *   <li>{@link ThinStripCheck}: strips of waste can stand.
 *   <li>{@link TouchOffCheck}: the next tool can be touched off where the zero is.
 *   <li>{@link TorchCheck}: a torch is lit where it cuts, and nowhere else.
 *   <li>{@link TorchPartCheck}: what a torch cuts is what it was asked for.
 *   <li>{@link EndCheck}: programs cut something, and end with the tool up.
 * </ul>
 */
final class Checks implements Check {
  private final List<Check> checks;

  Checks(Surroundings known, Optional<StockCutter> cutter, Optional<TorchFacts> torch) {
    List<Check> all =
        List.of(
            new TravelCheck(known),
            new StockEdgeCheck(known),
            new SpoilboardCheck(known),
            new LowTravelCheck(known),
            new MaterialCheck(known),
            new EngagementCheck(known, cutter),
            new SpindleCheck(known),
            new SpeedCheck(known),
            new FeedCheck(known),
            new PlungeCheck(known),
            new ReachCheck(known, cutter),
            new CornerCheck(known),
            new KeepOutCheck(known),
            new ToolCheck(known),
            new FreePieceCheck(known, cutter),
            new ThinStripCheck(known, cutter),
            new TouchOffCheck(known, cutter),
            new TorchCheck(torch.isPresent()),
            new EndCheck(known));
    this.checks = new ArrayList<>(all);
    torch.ifPresent(facts -> checks.add(new TorchPartCheck(facts)));
  }

  @Override
  public void paths(Paths habits) {
    checks.forEach(c -> c.paths(habits));
  }

  @Override
  public void start(String program) {
    checks.forEach(c -> c.start(program));
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    for (Check check : checks) {
      check.move(passage, log);
    }
  }

  @Override
  public void event(frieze.motion.Executed event, FindingLog log) {
    for (Check check : checks) {
      check.event(event, log);
    }
  }

  @Override
  public void end(FindingLog log) {
    checks.forEach(c -> c.end(log));
  }

  @Override
  public void finish(FindingLog log) {
    checks.forEach(c -> c.finish(log));
  }

  @Override
  public List<NotChecked> notChecked() {
    List<NotChecked> all = new ArrayList<>();
    for (Check check : checks) {
      for (NotChecked one : check.notChecked()) {
        if (!all.contains(one)) {
          all.add(one);
        }
      }
    }
    return all;
  }
}
