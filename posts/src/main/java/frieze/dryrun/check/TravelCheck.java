package frieze.dryrun.check;

import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.NotChecked;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.Check;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.MachineBox;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.Range;
import frieze.dryrun.scene.Slack;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Box;
import frieze.shop.Machine;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Objects to moves beyond the machine's travel.
 *
 * <p>Where machine coordinates are known, each move is compared with the travel. Where they are
 * not, the moves of all programs together must fit for some zero.
 */
public final class TravelCheck implements Check {
  /** The move that reaches furthest along an axis in one direction. */
  private static final class Extreme {
    double atMm;
    int program;
    SourceSpan span = SourceSpan.NONE;

    Extreme(double atMm) {
      this.atMm = atMm;
    }
  }

  private final Optional<Machine> machine;
  private final Extreme[] low = new Extreme[3];
  private final Extreme[] high = new Extreme[3];
  private final boolean[] judged = new boolean[3];

  /** The reach of moves along an axis while the program has not said where it stands. */
  private final @Nullable Range[] adrift = new Range[3];

  private final boolean[] adriftTooFar = new boolean[3];

  public TravelCheck(Surroundings known) {
    this.machine = known.machine();
    for (int axis = 0; axis < 3; axis++) {
      low[axis] = new Extreme(Double.POSITIVE_INFINITY);
      high[axis] = new Extreme(Double.NEGATIVE_INFINITY);
    }
  }

  @Override
  public void move(Passage passage, FindingLog log) {
    if (machine.isEmpty()) {
      return;
    }
    Box onMachine = MachineBox.of(passage);
    for (int axis = 0; axis < 3; axis++) {
      if (onMachine.min(axis) <= onMachine.max(axis)) {
        judged[axis] = true;
        compare(passage, axis, onMachine, log);
      } else {
        remember(passage, axis, log.programIndex());
        drift(passage, axis, log);
      }
    }
  }

  /** Follows increments from an unknown place: they can be too long for any place. */
  private void drift(Passage passage, int axis, FindingLog log) {
    if (passage.move().fromKnown().get(axis) || passage.move().toKnown().get(axis)) {
      adrift[axis] = null;
      return;
    }
    Box path = passage.path().box();
    Range before = adrift[axis];
    Range now =
        before == null
            ? new Range(path.min(axis), path.max(axis))
            : new Range(
                Math.min(before.minMm(), path.min(axis)), Math.max(before.maxMm(), path.max(axis)));
    adrift[axis] = now;
    double travel = travel(machine.orElseThrow(), axis).sizeMm();
    if (!adriftTooFar[axis] && now.sizeMm() - travel > Slack.LENGTH_MM) {
      adriftTooFar[axis] = true;
      log.add(
          FindingCode.BEYOND_TRAVEL,
          passage,
          Amount.mm(now.sizeMm() - travel),
          Words.axisName(axis)
              + " moves over "
              + Words.mm(now.sizeMm())
              + " from a place that is not known: the machine has "
              + Words.mm(travel)
              + ", so it leaves the travel from anywhere");
    }
  }

  private void compare(Passage passage, int axis, Box box, FindingLog log) {
    Range travel = travel(machine.orElseThrow(), axis);
    double below = travel.minMm() - box.min(axis);
    double above = box.max(axis) - travel.maxMm();
    double beyond = Math.max(below, above);
    if (beyond > Slack.LENGTH_MM) {
      double at = below > above ? box.min(axis) : box.max(axis);
      log.add(
          FindingCode.BEYOND_TRAVEL,
          passage,
          Amount.mm(beyond),
          Words.axisName(axis)
              + " reaches "
              + Words.mm(at)
              + " in machine coordinates, "
              + Words.mm(beyond)
              + " beyond the travel from "
              + Amount.text(travel.minMm())
              + " to "
              + Words.mm(travel.maxMm()));
    }
  }

  private void remember(Passage passage, int axis, int program) {
    Box box = passage.box();
    if (box.min(axis) < low[axis].atMm) {
      set(low[axis], box.min(axis), passage, program);
    }
    if (box.max(axis) > high[axis].atMm) {
      set(high[axis], box.max(axis), passage, program);
    }
  }

  private static void set(Extreme extreme, double atMm, Passage passage, int program) {
    extreme.atMm = atMm;
    extreme.program = program;
    extreme.span = passage.span();
  }

  @Override
  public void finish(FindingLog log) {
    if (machine.isEmpty()) {
      return;
    }
    for (int axis = 0; axis < 3; axis++) {
      double needed = high[axis].atMm - low[axis].atMm;
      double travel = travel(machine.get(), axis).sizeMm();
      if (needed - travel > Slack.LENGTH_MM) {
        String name = Words.axisName(axis);
        log.addAt(
            high[axis].program,
            FindingCode.BEYOND_TRAVEL,
            high[axis].span,
            Amount.mm(needed - travel),
            String.format(
                Locale.ROOT,
                "%s goes from %s (%s) to %s, %s from end to end: the machine has %s, so no zero"
                    + " fits",
                name,
                Words.mm(low[axis].atMm),
                "line " + low[axis].span.line(),
                Words.mm(high[axis].atMm),
                Words.mm(needed),
                Words.mm(travel)));
      }
    }
  }

  /** The machine's travel along an axis, in machine coordinates: Z is 0 at its top. */
  public static Range travel(Machine machine, int axis) {
    return switch (axis) {
      case 0 -> new Range(0, machine.travelXMm());
      case 1 -> new Range(0, machine.travelYMm());
      default -> new Range(-machine.travelZMm(), 0);
    };
  }

  @Override
  public List<NotChecked> notChecked() {
    if (machine.isEmpty()) {
      return List.of(new NotChecked("travel", "no machine is given", true));
    }
    if (!judged[0] || !judged[1] || !judged[2]) {
      return List.of(
          new NotChecked(
              "place on the machine",
              "the zero in machine coordinates is not known; only the size of the moves was"
                  + " compared with the travel",
              false));
    }
    return List.of();
  }
}
