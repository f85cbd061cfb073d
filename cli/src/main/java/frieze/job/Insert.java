package frieze.job;

import frieze.curve.Bounds;
import frieze.diagnostic.SourceSpan;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.opening.Sitting;
import java.util.Optional;

/**
 * What a panel goes into, and how.
 *
 * @param opening a rectangle: the finished size with a gap of 0, the opening, or the largest
 *     upright one in an opening that was measured in more places
 * @param gapMm on each side; the least of them
 * @param sitting how the panel sits, where more than a rectangle and a gap is known
 * @param shape of the panel, where it is no rectangle; its name does not count
 */
public record Insert(
    Opening opening, double gapMm, Optional<Sitting> sitting, Optional<Panel> shape) {
  static Insert plain(Opening opening, double gapMm) {
    return new Insert(opening, gapMm, Optional.empty(), Optional.empty());
  }

  /** A panel of a shape of its own. */
  static Insert shaped(Panel panel) {
    Bounds bounds = panel.outline().bounds();
    Opening box = new Opening(bounds.width(), bounds.height(), 0);
    return new Insert(box, 0, Optional.empty(), Optional.of(panel));
  }

  static Insert fitted(Sitting sitting) {
    Opening clear =
        new Opening(
            sitting.opening().clearWidthMm(),
            sitting.opening().clearHeightMm(),
            sitting.bead().sizeMm());
    double gapMm = sitting.sides().stream().mapToDouble(Sitting.Gap::nowMm).min().orElse(0);
    return new Insert(clear, gapMm, Optional.of(sitting), Optional.empty());
  }

  /** The size along X before its outline is made; for a first look at the stock. */
  double lengthMm() {
    return sitting.map(s -> s.panel().lengthMm()).orElse(opening.widthMm() - 2 * gapMm);
  }

  /** The same along Y. */
  double heightMm() {
    return sitting.map(s -> s.panel().heightMm()).orElse(opening.heightMm() - 2 * gapMm);
  }

  /**
   * The panel.
   *
   * @throws frieze.diagnostic.BadInputException if nothing is left of the opening
   */
  Panel panel(String name, SourceSpan where) {
    return shape
        .map(s -> new Panel(name, s.outline(), s.whole(), s.notches()))
        .or(() -> sitting.map(Sitting::panel))
        .orElseGet(() -> opening.panel(name, gapMm, where));
  }
}
