package frieze.shop;

import java.util.List;
import java.util.OptionalDouble;

/**
 * A router or a plasma table with its controller.
 *
 * @param name as written in the job
 * @param post the name of the post that its controller needs
 * @param travelXMm how far X goes, from 0 in machine coordinates
 * @param travelYMm how far Y goes, from 0
 * @param travelZMm how far Z goes, from 0 at the top down to minus this
 * @param x limits of the X axis
 * @param spindle how the spindle is driven; of no meaning on a plasma table
 * @param toolChanger whether it changes tools by itself
 * @param inches whether its programs are written in inches
 * @param touchTravelMm how far a torch that feels for the sheet goes on down, after its tip has
 *     touched, until the switch trips; 0 without such a torch
 */
public record Machine(
    String name,
    String post,
    double travelXMm,
    double travelYMm,
    double travelZMm,
    Axis x,
    Axis y,
    Axis z,
    Spindle spindle,
    boolean toolChanger,
    boolean inches,
    double touchTravelMm) {

  /**
   * The limits of an axis.
   *
   * @param rapidMmPerMin its speed in rapid moves
   * @param maxFeedMmPerMin its fastest cutting speed
   * @param accelerationMmPerS2 for speeding up and for braking
   */
  public record Axis(double rapidMmPerMin, double maxFeedMmPerMin, double accelerationMmPerS2) {
    public Axis {
      requirePositive("rapidMmPerMin", rapidMmPerMin, "mm/min");
      requirePositive("maxFeedMmPerMin", maxFeedMmPerMin, "mm/min");
      requirePositive("accelerationMmPerS2", accelerationMmPerS2, "mm/s2");
    }
  }

  /**
   * The spindle.
   *
   * @param byHand switched and set by the operator, not by the program
   * @param dial the speeds at the numbers 1, 2, ... of its dial; empty without a dial
   * @param spinUpSeconds from off to full speed
   */
  public record Spindle(
      boolean byHand, double minRpm, double maxRpm, List<Double> dial, double spinUpSeconds) {
    /** No spindle: a machine that carries a torch. */
    public static final Spindle NONE = new Spindle(false, 0, 1, List.of(), 0);

    public Spindle {
      dial = List.copyOf(dial);
      requirePositive("maxRpm", maxRpm, "rpm");
    }

    /**
     * The mark of the dial for a speed, in halves, never one that turns faster (except the first).
     *
     * @return empty without a dial
     */
    public OptionalDouble dialMark(double rpm) {
      if (dial.isEmpty()) {
        return OptionalDouble.empty();
      }
      int below = 0;
      while (below < dial.size() && dial.get(below) <= rpm * (1 + SAME_SPEED)) {
        below++;
      }
      if (below == 0 || below == dial.size()) {
        return OptionalDouble.of(Math.max(1, below));
      }
      double low = dial.get(below - 1);
      double between = Math.max(0, (rpm - low) / (dial.get(below) - low));
      return OptionalDouble.of(below + Math.floor(between * 2 + SAME_SPEED) / 2);
    }

    private static final double SAME_SPEED = 1e-6;
  }

  public Machine {
    requirePositive("travelXMm", travelXMm, "mm");
    requirePositive("travelYMm", travelYMm, "mm");
    requirePositive("travelZMm", travelZMm, "mm");
    if (!(touchTravelMm >= 0) || !Double.isFinite(touchTravelMm)) {
      throw new IllegalArgumentException(
          "touchTravelMm must be >= 0 but was " + touchTravelMm + " mm");
    }
  }

  private static void requirePositive(String name, double value, String unit) {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException(name + " must be > 0 but was " + value + " " + unit);
    }
  }

  /** The same machine, if it were long enough for a length along X. */
  public Machine reaching(double lengthMm) {
    return new Machine(
        name,
        post,
        Math.max(travelXMm, lengthMm),
        travelYMm,
        travelZMm,
        x,
        y,
        z,
        spindle,
        toolChanger,
        inches,
        touchTravelMm);
  }

  /**
   * The limits of an axis.
   *
   * @param axis 0 for X, 1 for Y, 2 for Z
   */
  public Axis axis(int axis) {
    return switch (axis) {
      case 0 -> x;
      case 1 -> y;
      case 2 -> z;
      default -> throw new IllegalArgumentException("axis must be 0, 1 or 2 but was " + axis);
    };
  }
}
