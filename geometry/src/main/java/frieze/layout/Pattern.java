package frieze.layout;

import frieze.artwork.Artwork;
import frieze.curve.Path;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.function.Function;

/** A way to repeat a motif on a panel. */
public sealed interface Pattern
    permits Arrangement, Border, Corners, Follow, Ring, Scatter, Tiling {
  /** What stays free along the borders of the panel. */
  double insetMm();

  /** How many placements in a row are made alike when several motifs take turns. */
  default int alike() {
    return 1;
  }

  /** Whether it sets only those motifs that lie inside the panel, instead of an exact number. */
  default boolean picksPlaces() {
    return false;
  }

  /**
   * This pattern with what it needs of other drawings than its own.
   *
   * @param drawings finds a drawing of the job by its name
   * @throws frieze.diagnostic.BadInputException if a drawing has not what is needed
   */
  default Pattern resolved(Function<String, Artwork> drawings, SourceSpan where) {
    return this;
  }

  /** Lines on a panel that no motif may cross, nor come nearer to than the inset. */
  default List<Path> fences(Panel panel) {
    return List.of();
  }

  /**
   * Places a motif.
   *
   * @param hull of its drawing at the size at which it is used
   * @param seed decides what is left to chance
   * @param where the place in the job, for the diagnostics
   * @throws frieze.diagnostic.BadInputException if it does not fit
   */
  List<Placement> place(String motif, Hull hull, Panel panel, long seed, SourceSpan where);

  /** Whether {@link #reachingOver} can be asked. */
  default boolean mayReachOver() {
    return false;
  }

  /**
   * Places a motif as if the panel went on beyond its border, wherever part of it may lie on the
   * panel; what lies beyond is to be cut off.
   *
   * @throws frieze.diagnostic.BadInputException if the motif does not suit the pattern
   * @throws IllegalStateException if the pattern has a place for each motif inside the panel
   */
  default List<Placement> reachingOver(String motif, Hull hull, Panel panel, SourceSpan where) {
    throw new IllegalStateException("motifs of this pattern do not reach over the border");
  }
}
