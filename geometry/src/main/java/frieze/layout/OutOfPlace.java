package frieze.layout;

import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.function.Predicate;

/** Refuses motifs that lie where they must not. */
final class OutOfPlace {
  private OutOfPlace() {}

  /**
   * Requires that each motif is where it may be.
   *
   * @param motif the hull of the drawing
   * @param mayBe tells for the hull of a placed motif
   * @param where the place in the job
   * @param fault what a motif does that may not be there, after its number and place
   * @throws BadInputException with the first that may not
   */
  static void refuse(
      List<Placement> placed,
      Hull motif,
      Predicate<Hull> mayBe,
      SourceSpan where,
      String fault,
      String hint) {
    for (Placement p : placed) {
      Hull hull = p.hull(motif);
      if (!mayBe.test(hull)) {
        Point at = hull.bounds().centre();
        throw BadInputException.of(
            LayoutCode.BEYOND_BORDER,
            where,
            "motif "
                + p.motif()
                + " "
                + p.number()
                + " at "
                + Amounts.place(at.x(), at.y())
                + fault,
            hint);
      }
    }
  }
}
