package frieze.dryrun.check;

import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed.Rotation;
import frieze.shop.Machine;
import java.util.Optional;
import java.util.OptionalDouble;

/** Objects to spindle speeds beyond the machine or the tool, and to a start without a speed. */
public final class SpeedCheck implements Check {
  private final Optional<Machine.Spindle> spindle;
  private double lastRpm = Double.NaN;
  private Optional<Integer> lastTool = Optional.empty();

  public SpeedCheck(Surroundings known) {
    this.spindle = known.machine().map(Machine::spindle);
  }

  @Override
  public void start(String program) {
    lastRpm = Double.NaN;
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (!passage.isFeed() || passage.move().state().rotation() == Rotation.STOPPED) {
      return;
    }
    OptionalDouble rpm = passage.move().state().rpm();
    double now = rpm.orElse(0);
    if (now == lastRpm && passage.toolNumber().equals(lastTool)) {
      return;
    }
    lastRpm = now;
    lastTool = passage.toolNumber();
    if (!(now > 0)) {
      log.add(FindingCode.NO_SPEED, passage, Amount.NONE, "no S word above 0 has been given");
      return;
    }
    compareTool(passage, now, log);
    compareMachine(passage, now, log);
  }

  private static void compareTool(Passage passage, double rpm, FindingLog log) {
    double limit = passage.tool().map(t -> t.maxRpm()).orElse(Double.POSITIVE_INFINITY);
    if (rpm > limit * (1 + Slack.RELATIVE)) {
      log.add(
          FindingCode.SPEED_BEYOND_TOOL,
          passage,
          new Amount(rpm - limit, "rpm"),
          Amount.text(rpm) + " rpm; the tool may turn at " + Amount.text(limit) + " rpm");
    }
  }

  private void compareMachine(Passage passage, double rpm, FindingLog log) {
    if (spindle.isEmpty() || spindle.get().byHand()) {
      return;
    }
    double above = rpm - spindle.get().maxRpm();
    double below = spindle.get().minRpm() - rpm;
    double beyond = Math.max(above, below);
    if (beyond > rpm * Slack.RELATIVE) {
      log.add(
          FindingCode.SPEED_BEYOND_MACHINE,
          passage,
          new Amount(beyond, "rpm"),
          Amount.text(rpm)
              + " rpm; the spindle has "
              + Amount.text(spindle.get().minRpm())
              + " to "
              + Amount.text(spindle.get().maxRpm())
              + " rpm");
    }
  }
}
