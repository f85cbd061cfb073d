package frieze.dryrun.scene;

import frieze.diagnostic.SourceSpan;
import frieze.field.Met;
import frieze.motion.Box;
import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Motion;
import frieze.motion.Motion.Turn;
import frieze.motion.Motions;
import frieze.shop.Tool;
import java.util.Optional;
import java.util.OptionalDouble;

/** A move with what all checks want to know of it, worked out once. */
public final class Passage {
  private final Executed.Move move;
  private final Optional<Integer> toolNumber;
  private final Optional<Tool> tool;
  private final Box box;
  private final Optional<Motion> cutting;
  private Optional<Met> met = Optional.empty();
  private OptionalDouble engagedRad = OptionalDouble.empty();

  /**
   * @param stock where the stock lies, if that is known
   */
  public Passage(
      Executed.Move move,
      Optional<Integer> toolNumber,
      Optional<Tool> tool,
      Optional<StockBox> stock) {
    this.move = move;
    this.toolNumber = toolNumber;
    this.tool = tool;
    this.box = knownBox(move);
    this.cutting =
        stock.isPresent() && placed(move)
            ? Motions.below(move.path(), stock.get().topMm() - Slack.LENGTH_MM)
            : Optional.empty();
  }

  public Executed.Move move() {
    return move;
  }

  public Motion path() {
    return move.path();
  }

  public SourceSpan span() {
    return move.span();
  }

  public Optional<Integer> toolNumber() {
    return toolNumber;
  }

  public Optional<Tool> tool() {
    return tool;
  }

  public boolean isRapid() {
    return move.kind() == Kind.RAPID;
  }

  public boolean isFeed() {
    return move.kind() == Kind.FEED;
  }

  /** The extent in the program's frame; along an axis that is not known it is empty. */
  public Box box() {
    return box;
  }

  /** The lowest known height, in the program's frame. */
  public OptionalDouble lowZ() {
    return box.minZ() <= box.maxZ() ? OptionalDouble.of(box.minZ()) : OptionalDouble.empty();
  }

  /** Whether both ends are known along all axes. */
  public boolean isPlaced() {
    return placed(move);
  }

  /** The part of the path below the stock's top; empty if there is none, or if it is not known. */
  public Optional<Motion> belowTop() {
    return cutting;
  }

  /** Tells what material the move meets; the stock field works it out before the checks see it. */
  public void setMet(Met material) {
    met = Optional.of(material);
  }

  /** What material the move meets or takes; empty when nobody knows. */
  public Optional<Met> met() {
    return met;
  }

  /** Tells the largest part of the tool's rim that stands in material, if that was measured. */
  void setEngagedRad(double angleRad) {
    engagedRad = OptionalDouble.of(angleRad);
  }

  /** The largest part of the tool's rim that stands in material; empty when nobody asked. */
  public OptionalDouble engagedRad() {
    return engagedRad;
  }

  /** The distance travelled in the XY plane, as far as it is known. */
  public double planarMm() {
    return Motions.planarMm(Motions.known(move));
  }

  /** The feed that is asked for, from F or from the time; empty without one. */
  public OptionalDouble feedMmPerMin() {
    if (move.seconds().isPresent() && move.seconds().getAsDouble() > 0) {
      return OptionalDouble.of(path().lengthMm() / move.seconds().getAsDouble() * 60);
    }
    return move.feedMmPerMin();
  }

  private static boolean placed(Executed.Move move) {
    return all(move.fromKnown()) && all(move.toKnown());
  }

  private static boolean all(Executed.KnownAxes known) {
    return known.x() && known.y() && known.z();
  }

  private static Box knownBox(Executed.Move move) {
    if (placed(move)) {
      return move.path().box();
    }
    double[] min = new double[3];
    double[] max = new double[3];
    boolean arc = move.path() instanceof Turn;
    Box whole = move.path().box();
    for (int axis = 0; axis < 3; axis++) {
      boolean from = move.fromKnown().get(axis);
      boolean to = move.toKnown().get(axis);
      double a = from ? move.path().from().get(axis) : Double.NaN;
      double b = to ? move.path().to().get(axis) : Double.NaN;
      if (arc && from && to) {
        min[axis] = whole.min(axis);
        max[axis] = whole.max(axis);
      } else {
        min[axis] = from && to ? Math.min(a, b) : from ? a : to ? b : Double.POSITIVE_INFINITY;
        max[axis] = from && to ? Math.max(a, b) : from ? a : to ? b : Double.NEGATIVE_INFINITY;
      }
    }
    return new Box(min[0], min[1], min[2], max[0], max[1], max[2]);
  }
}
