package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Position;

/** Follows where the tool stands while instructions go by; an axis may be unknown. */
final class Cursor {
  private double x = Double.NaN;
  private double y = Double.NaN;
  private double z = Double.NaN;

  double x() {
    return x;
  }

  double y() {
    return y;
  }

  double z() {
    return z;
  }

  /** Another that stands at the same place. */
  Cursor copy() {
    Cursor copy = new Cursor();
    copy.x = x;
    copy.y = y;
    copy.z = z;
    return copy;
  }

  boolean zKnown() {
    return !Double.isNaN(z);
  }

  /**
   * The whole position.
   *
   * @throws IllegalArgumentException when an axis was never given
   */
  Position position(String origin) {
    if (Double.isNaN(x) || Double.isNaN(y) || Double.isNaN(z)) {
      throw new IllegalArgumentException(
          "a cut needs a known start, but X, Y, Z were "
              + x
              + ", "
              + y
              + ", "
              + z
              + " mm before: "
              + origin);
    }
    return new Position(x, y, z);
  }

  private void set(Position p) {
    x = p.x();
    y = p.y();
    z = p.z();
  }

  void follow(Instruction instruction) {
    instruction.accept(new Follow());
  }

  private final class Follow extends EachInstruction<Void> {
    @Override
    @SuppressWarnings("NullAway") // Void has no other value.
    Void otherwise(Instruction instruction) {
      return null;
    }

    @Override
    public Void raiseToSafe(Instruction.RaiseToSafe raise) {
      z = Double.NaN;
      return otherwise(raise);
    }

    @Override
    public Void rapidXy(Instruction.RapidXy rapid) {
      x = rapid.x();
      y = rapid.y();
      return otherwise(rapid);
    }

    @Override
    public Void rapidZ(Instruction.RapidZ rapid) {
      z = rapid.z();
      return otherwise(rapid);
    }

    @Override
    public Void feed(Instruction.Feed feed) {
      set(feed.to());
      return otherwise(feed);
    }

    @Override
    public Void turn(Instruction.Turn turn) {
      set(turn.to());
      return otherwise(turn);
    }

    @Override
    public Void drill(Instruction.Drill drill) {
      set(new Position(drill.x(), drill.y(), drill.retractZ()));
      return otherwise(drill);
    }

    @Override
    public Void probe(Instruction.Probe probe) {
      set(probe.to());
      return otherwise(probe);
    }
  }
}
