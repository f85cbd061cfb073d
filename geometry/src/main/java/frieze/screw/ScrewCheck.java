package frieze.screw;

import frieze.curve.Point;
import frieze.design.Intent;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.shop.Stock;
import java.util.List;
import java.util.Optional;

/**
 * Checks screws: that their pilots leave wood below them and keep clear of what is carved on the
 * face, and that the wood can move.
 */
public final class ScrewCheck {
  /** A seat lies about a screw if their centres are this near. */
  private static final double SAME_PLACE_MM = 0.01;

  private final Screws screws;
  private final Stock stock;
  private final Diagnostics found;

  private ScrewCheck(Screws screws, Stock stock, Diagnostics found) {
    this.screws = screws;
    this.stock = stock;
    this.found = found;
  }

  /**
   * Reports pilots that leave too little wood or meet what is carved, as errors.
   *
   * @param face what is wanted of the front face, without the pilots themselves
   */
  public static void pilots(Screws screws, Stock stock, List<Intent> face, Diagnostics found) {
    ScrewCheck check = new ScrewCheck(screws, stock, found);
    check.below();
    for (int i = 0; i < screws.at().size(); i++) {
      if (screws.pilot().fromBack()) {
        check.above(i, face);
      } else {
        check.beside(i, face);
      }
    }
  }

  /**
   * Warns if the wood can't move as far as the seasons make it.
   *
   * @param movement of the panel; empty if it is not known
   */
  public static void movement(Screws screws, Optional<Movement> movement, Diagnostics found) {
    if (movement.isEmpty()) {
      found.warning(
          ScrewCode.MOVEMENT_UNKNOWN,
          screws.where(),
          "how far the wood moves is not known: the holes in the steel are drawn round, SLOTS NOT"
              + " SIZED",
          "give the wood and its seasons: fit: {species: white ash, moisture: {now: 8%, lowest: 6%,"
              + " highest: 10%}}");
      return;
    }
    if (!screws.steel().slots()) {
      tight(screws, movement.get(), found);
    }
  }

  private static void tight(Screws screws, Movement movement, Diagnostics found) {
    double playMm = (screws.steel().clearanceMm() - screws.sizeMm()) / 2;
    int worst = 0;
    double mostMm = 0;
    for (int i = 0; i < screws.at().size(); i++) {
      Point p = screws.at().get(i);
      double moves = Math.max(p.distance(movement.driest(p)), p.distance(movement.wettest(p)));
      if (moves > mostMm) {
        mostMm = moves;
        worst = i;
      }
    }
    if (mostMm > playMm) {
      Point p = screws.at().get(worst);
      found.warning(
          ScrewCode.SCREWED_TIGHT,
          screws.where(),
          "a panel that is screwed tight can't move, and splits: screw "
              + (worst + 1)
              + " at "
              + Amounts.place(p.x(), p.y())
              + " moves by "
              + Amounts.length(mostMm)
              + " with the seasons but its round hole in the steel gives it "
              + Amounts.length(playMm),
          "leave out \"steel holes: round\", or make the clearance "
              + Amounts.length(screws.sizeMm() + 2 * mostMm)
              + " or more");
    }
  }

  /** The wood below a pilot, with nothing carved on the other face. */
  private void below() {
    double leftMm = stock.thinnestMm() - screws.pilot().deepestMm();
    if (leftMm < screws.pilot().leaveMm()) {
      String what = "pilots " + Amounts.length(screws.pilot().deepestMm()) + " deep";
      tooLittle(what + (leftMm > 0 ? " leave " : " break through by "), leftMm);
    }
  }

  /** What is carved on the face above a pilot that comes from the back. */
  private void above(int index, List<Intent> face) {
    Point axis = screws.at().get(index);
    double most = Together.APART;
    String deepest = "";
    for (Intent intent : face) {
      double depth = intent.accept(new Together(axis, screws.pilot()));
      if (depth > most) {
        most = depth;
        deepest = intent.name();
      }
    }
    double leftMm = stock.thinnestMm() - most;
    boolean toldAlready =
        stock.thinnestMm() - screws.pilot().deepestMm() < screws.pilot().leaveMm();
    if (leftMm < screws.pilot().leaveMm() && !toldAlready) {
      if (most == Double.POSITIVE_INFINITY) {
        meets(index, deepest);
      } else {
        tooLittle(
            "pilot "
                + (index + 1)
                + " at "
                + Amounts.place(axis.x(), axis.y())
                + ", "
                + Amounts.length(screws.pilot().deepestMm())
                + " deep from the back, below "
                + deepest
                + (leftMm > 0 ? ", leaves " : ", breaks through by "),
            leftMm);
      }
    }
  }

  private void tooLittle(String what, double leftMm) {
    found.error(
        ScrewCode.TOO_LITTLE_WOOD,
        screws.where(),
        what
            + Amounts.length(Math.abs(leftMm))
            + " of a board "
            + Amounts.length(stock.thinnestMm())
            + " thick where it is thinnest; "
            + Amounts.length(screws.pilot().leaveMm())
            + " must stay",
        "make the pilots "
            + Amounts.length(screws.pilot().leaveMm() - leftMm)
            + " less deep, or move the screw");
  }

  /** What is carved beside a pilot that comes from the front; a seat about the screw may be. */
  private void beside(int index, List<Intent> face) {
    Point axis = screws.at().get(index);
    for (Intent intent : face) {
      boolean seat =
          intent instanceof Intent.Hole hole && hole.centre().distance(axis) < SAME_PLACE_MM;
      if (!seat && intent.accept(new Together(axis, screws.pilot())) > Together.APART) {
        meets(index, intent.name());
        return;
      }
    }
  }

  private void meets(int index, String name) {
    Point axis = screws.at().get(index);
    found.error(
        ScrewCode.MEETS_CARVING,
        screws.where(),
        "pilot "
            + (index + 1)
            + " at "
            + Amounts.place(axis.x(), axis.y())
            + ", "
            + Amounts.length(screws.pilot().diameterMm())
            + " wide, meets "
            + name,
        "move the screw, or let the drawing avoid it: avoid: {space: 3 mm}");
  }
}
