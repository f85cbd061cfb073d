package frieze.clock;

import frieze.motion.Executed;
import frieze.shop.Machine;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells how long moves take on a machine whose axes have limited speed and acceleration and that
 * slows down at corners.
 *
 * <p><em>Guarantees:</em> no axis is faster than its limits; the speed changes along the path at no
 * more than the acceleration of the weakest axis; corners and facetted curves are passed as {@link
 * Corner} allows. Memory does not grow with the number of moves: at most {@link #WINDOW} are looked
 * ahead. <em>Approximation:</em> no jerk limit; beyond the window the machine is taken to stop, so
 * that a time may be too long, never too short, for moves that need more than half the window to
 * brake. <em>Cost:</em> constant for each move. Without a machine, feed moves run at their feed and
 * rapids take no time.
 */
public final class MotionClock {
  /** How many moves are looked ahead. */
  static final int WINDOW = 1024;

  private final Optional<Machine> machine;
  private final ClockSettings settings;
  private final List<Leg> queue = new ArrayList<>();
  private double speedMmPerS;
  private boolean exactStop;

  public MotionClock(Optional<Machine> machine, ClockSettings settings) {
    this.machine = machine;
    this.settings = settings;
    this.exactStop = settings.deviationMm() == 0;
  }

  /** Stops at the end of every move from here on, or goes back to the settings' deviation. */
  public void setExactStop(boolean on) {
    exactStop = on || settings.deviationMm() == 0;
  }

  /** Takes the next move. */
  public void move(Executed.Move move, ClockAccount account) {
    Leg.of(move, machine, account).ifPresent(this::add);
  }

  /** Stands still: for a dwell, a stop, a tool change, the end. */
  public void stop() {
    plan(queue.size());
    speedMmPerS = 0;
  }

  /** Waits for the machine. */
  public void dwell(double seconds, ClockAccount account) {
    stop();
    account.addWait(seconds);
  }

  /** Waits for the spindle, if the program starts it. */
  public void spindleUp(ClockAccount account) {
    stop();
    machine
        .map(Machine::spindle)
        .filter(s -> !s.byHand())
        .ifPresent(s -> account.addWait(s.spinUpSeconds()));
  }

  /** Waits for the operator at a stop. */
  public void operatorStop(ClockAccount account) {
    stop();
    account.addHand(settings.stopSeconds());
  }

  /** Changes the tool. */
  public void toolChange(ClockAccount account) {
    stop();
    if (machine.map(Machine::toolChanger).orElse(false)) {
      account.addWait(settings.toolChangeSeconds());
    } else {
      account.addHand(settings.toolChangeByHandSeconds());
    }
  }

  private void add(Leg leg) {
    leg.entryLimitMmPerS = queue.isEmpty() ? speedMmPerS : cornerMmPerS(lastLeg(), leg);
    queue.add(leg);
    if (queue.size() >= WINDOW) {
      plan(WINDOW / 2);
    }
  }

  private Leg lastLeg() {
    return queue.get(queue.size() - 1);
  }

  private double cornerMmPerS(Leg before, Leg after) {
    if (exactStop) {
      return 0;
    }
    double cruise = Math.min(before.cruiseMmPerS, after.cruiseMmPerS);
    double[] u = before.exit;
    double[] w = after.entry;
    double cos = Math.max(-1, Math.min(1, u[0] * w[0] + u[1] * w[1] + u[2] * w[2]));
    double acceleration =
        machine
            .map(
                m ->
                    Accelerations.weakest(
                        Accelerations.of(m), w[0] - u[0], w[1] - u[1], w[2] - u[2]))
            .orElse(Double.POSITIVE_INFINITY);
    if (acceleration == Double.POSITIVE_INFINITY) {
      return cruise;
    }
    double corner = Corner.speedMmPerS(cos, settings.deviationMm(), acceleration);
    if (before.isStraight && after.isStraight) {
      corner =
          Math.min(
              corner, Corner.facetSpeedMmPerS(cos, before.lengthMm, after.lengthMm, acceleration));
    }
    return Math.min(cruise, corner);
  }

  /** Works out the speeds of all waiting legs, from back to front, and spends the first ones. */
  private void plan(int count) {
    int n = queue.size();
    double[] exits = new double[n];
    double exit = 0;
    for (int i = n - 1; i >= 0; i--) {
      exits[i] = exit;
      Leg leg = queue.get(i);
      exit =
          Math.min(
              leg.entryLimitMmPerS,
              Ramp.reachableMmPerS(exit, leg.accelerationMmPerS2, leg.lengthMm));
    }
    for (int i = 0; i < count; i++) {
      spend(queue.get(i), exits[i]);
    }
    queue.subList(0, count).clear();
  }

  private void spend(Leg leg, double exitMmPerS) {
    double reached = Ramp.reachableMmPerS(speedMmPerS, leg.accelerationMmPerS2, leg.lengthMm);
    double exit = Math.min(exitMmPerS, reached);
    double a = leg.accelerationMmPerS2;
    double seconds =
        a == Double.POSITIVE_INFINITY
            ? leg.lengthMm / leg.cruiseMmPerS
            : Ramp.seconds(leg.lengthMm, leg.cruiseMmPerS, a, a, speedMmPerS, exit);
    leg.account.addMove(leg.isRapid, seconds);
    speedMmPerS = exit;
  }
}
