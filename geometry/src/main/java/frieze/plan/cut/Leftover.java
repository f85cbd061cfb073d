package frieze.plan.cut;

import frieze.region.Offset;
import frieze.region.Region;

/**
 * An area that was asked for and that no tool reached.
 *
 * @param work what a person would call the work, such as {@code recess ginkgo 3}
 * @param area in the panel frame
 */
public record Leftover(String work, Region area) {
  /** What is thinner than twice this is taken as rounding: the tolerances add up to less. */
  private static final double NOISE_MM = 0.01;

  private static final double TOLERANCE_MM = 0.002;

  /** An area without what was reached, and without the slivers that come of the tolerances. */
  public static Region without(Region area, Region reached) {
    Region left = Region.EMPTY;
    for (Region part : area.minus(reached).parts()) {
      if (!Offset.offset(part, -NOISE_MM, TOLERANCE_MM).isEmpty()) {
        left = left.union(part);
      }
    }
    return left;
  }
}
