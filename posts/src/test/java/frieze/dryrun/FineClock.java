package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.clock.ClockAccount;
import frieze.clock.ClockSettings;
import frieze.clock.MotionClock;
import frieze.dryrun.scene.Passage;
import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.rs274.Interpreter;
import frieze.shop.Machine;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Integrates a run of moves in steps of 0.02 mm. Takes no length, direction, limit or speed from
 * the clock: all of them come from points on the paths.
 */
public final class FineClock {
  private static final double STEP_MM = 0.02;

  private final double[] accelerations;
  private final double[] feedLimits;
  private final double[] rapidLimits;
  private final double deviationMm;

  /** Places along the way, and what may not be exceeded there and up to the next. */
  private final List<Position> places = new ArrayList<>();

  private final List<Double> limits = new ArrayList<>();
  private final List<Boolean> joints = new ArrayList<>();
  private double seconds;

  FineClock(Machine m, double deviationMm) {
    this.deviationMm = deviationMm;
    Machine.Axis[] axes = {m.x(), m.y(), m.z()};
    accelerations = new double[3];
    feedLimits = new double[3];
    rapidLimits = new double[3];
    for (int i = 0; i < 3; i++) {
      accelerations[i] = axes[i].accelerationMmPerS2();
      feedLimits[i] = axes[i].maxFeedMmPerMin() / 60;
      rapidLimits[i] = axes[i].rapidMmPerMin() / 60;
    }
  }

  /**
   * Holds the clock against fine steps on all moves of a program whose places are known.
   *
   * @return the seconds that its moves take, by fine steps
   */
  public static double compare(ProgramText program, Machine machine) throws IOException {
    MotionClock clock = new MotionClock(Optional.of(machine), ClockSettings.USUAL);
    ClockAccount account = new ClockAccount();
    FineClock fine = new FineClock(machine, ClockSettings.USUAL.deviationMm());
    Interpreter.run(
        program.name(),
        program.open(),
        program.rules(),
        event -> {
          if (event instanceof Executed.Move move) {
            if (new Passage(move, Optional.empty(), Optional.empty(), Optional.empty())
                .isPlaced()) {
              clock.move(move, account);
              fine.move(move);
            }
          } else {
            clock.stop();
            fine.stop();
          }
        });
    double expected = fine.seconds();
    double told = account.spent().totalSeconds();
    assertThat(expected).isGreaterThan(1);
    assertThat(told)
        .as("%s: %s s by the clock, %s s in fine steps", program.name(), told, expected)
        .isCloseTo(expected, within(expected * 0.02));
    return expected;
  }

  void move(Executed.Move move) {
    Motion path = move.path();
    double rough = 0;
    Position last = path.from();
    for (int i = 1; i <= 64; i++) {
      Position next = path.at(i / 64.0);
      rough += last.distance(next);
      last = next;
    }
    if (rough == 0) {
      return;
    }
    int steps = (int) Math.ceil(rough / STEP_MM);
    boolean rapid = move.kind() == Kind.RAPID;
    double asked = rapid ? Double.POSITIVE_INFINITY : move.feedMmPerMin().orElseThrow() / 60;
    double[] axes = rapid ? rapidLimits : feedLimits;
    double turning = turningMmPerS(path);
    if (places.isEmpty()) {
      places.add(path.from());
      joints.add(false);
    }
    joints.set(joints.size() - 1, places.size() > 1);
    for (int i = 1; i <= steps; i++) {
      Position here = path.at((double) i / steps);
      double along = limit(places.get(places.size() - 1), here, axes);
      limits.add(Math.min(Math.min(asked, along), turning));
      places.add(here);
      joints.add(false);
    }
  }

  /** The speed at which the pull towards the centre reaches the weaker axis's acceleration. */
  private double turningMmPerS(Motion path) {
    Position a = path.at(0.4999);
    Position b = path.at(0.5);
    Position c = path.at(0.5001);
    double flat = Math.hypot(c.x() - a.x(), c.y() - a.y());
    double cross = Math.abs((b.x() - a.x()) * (c.y() - a.y()) - (b.y() - a.y()) * (c.x() - a.x()));
    boolean curved = cross > 1e-7 * flat * flat;
    if (!curved) {
      return Double.POSITIVE_INFINITY;
    }
    double ab = Math.hypot(b.x() - a.x(), b.y() - a.y());
    double bc = Math.hypot(c.x() - b.x(), c.y() - b.y());
    double radius = ab * bc * flat / (2 * cross);
    double share = flat / a.distance(c);
    return Math.sqrt(Math.min(accelerations[0], accelerations[1]) * radius) / share;
  }

  private static double limit(Position a, Position b, double[] axes) {
    double d = a.distance(b);
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      double share = Math.abs(b.get(i) - a.get(i)) / d;
      if (share > 1e-9) {
        least = Math.min(least, axes[i] / share);
      }
    }
    return least;
  }

  /** Comes to a stop, and adds up the time. */
  void stop() {
    int n = places.size();
    if (n > 1) {
      double[] v = new double[n];
      for (int i = 1; i + 1 < n; i++) {
        double most = Math.min(limits.get(i - 1), limits.get(i));
        v[i] = joints.get(i) ? Math.min(most, joint(i)) : most;
      }
      for (int i = 1; i < n; i++) {
        v[i] = Math.min(v[i], reached(v[i - 1], i));
      }
      for (int i = n - 1; i > 0; i--) {
        v[i - 1] = Math.min(v[i - 1], reached(v[i], i));
        double d = places.get(i - 1).distance(places.get(i));
        seconds += 2 * d / (v[i - 1] + v[i]);
      }
    }
    places.clear();
    limits.clear();
    joints.clear();
  }

  private double reached(double from, int step) {
    Position a = places.get(step - 1);
    Position b = places.get(step);
    return Math.sqrt(from * from + 2 * limit(a, b, accelerations) * a.distance(b));
  }

  /** The corner between two moves, from the steps before and after it. */
  private double joint(int i) {
    Position a = places.get(i - 1);
    Position b = places.get(i);
    Position c = places.get(i + 1);
    double ab = a.distance(b);
    double bc = b.distance(c);
    double weakest = Double.POSITIVE_INFINITY;
    double dot = 0;
    for (int axis = 0; axis < 3; axis++) {
      double u = (b.get(axis) - a.get(axis)) / ab;
      double w = (c.get(axis) - b.get(axis)) / bc;
      dot += u * w;
      if (Math.abs(u - w) > 1e-2) {
        weakest = Math.min(weakest, accelerations[axis]);
      }
    }
    double angle = Math.PI - Math.acos(Math.max(-1, Math.min(1, dot)));
    double s = Math.sin(angle / 2);
    if (weakest == Double.POSITIVE_INFINITY || s >= 1) {
      return Double.POSITIVE_INFINITY;
    }
    return Math.sqrt(weakest * deviationMm * s / (1 - s));
  }

  double seconds() {
    return seconds;
  }
}
