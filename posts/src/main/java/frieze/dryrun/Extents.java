package frieze.dryrun;

import frieze.dryrun.scene.Range;
import frieze.motion.Box;
import java.util.Optional;

/**
 * How far moves reach along each axis; empty along an axis whose coordinate was never known.
 *
 * <p>Arcs count with their true extent.
 */
public record Extents(Optional<Range> x, Optional<Range> y, Optional<Range> z) {
  public static final Extents NONE =
      new Extents(Optional.empty(), Optional.empty(), Optional.empty());

  /** The range along an axis: 0 is X, 1 is Y, 2 is Z. */
  public Optional<Range> get(int axis) {
    return axis == 0 ? x : axis == 1 ? y : z;
  }

  /** Reads a box whose axes may be empty one by one. */
  static Extents of(Box box) {
    return new Extents(range(box, 0), range(box, 1), range(box, 2));
  }

  /** The extents of both. */
  Extents with(Extents other) {
    return new Extents(both(x, other.x), both(y, other.y), both(z, other.z));
  }

  private static Optional<Range> both(Optional<Range> a, Optional<Range> b) {
    if (a.isEmpty() || b.isEmpty()) {
      return a.isPresent() ? a : b;
    }
    return Optional.of(
        new Range(
            Math.min(a.get().minMm(), b.get().minMm()),
            Math.max(a.get().maxMm(), b.get().maxMm())));
  }

  private static Optional<Range> range(Box box, int axis) {
    return box.min(axis) <= box.max(axis)
        ? Optional.of(new Range(box.min(axis), box.max(axis)))
        : Optional.empty();
  }
}
