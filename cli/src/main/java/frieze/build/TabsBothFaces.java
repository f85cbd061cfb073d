package frieze.build;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.field.DepthMap;
import frieze.motion.Motion;
import frieze.plan.cut.Cut;
import frieze.plan.cut.PlanCode;
import frieze.sheet.PanelFacts;
import frieze.shop.Flip;
import frieze.shop.Stock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What the work on one face takes of the tabs or the skin that a cutout from the other face leaves:
 * they stand at the bottom, which is the first cut's top. Where tabs stand is read from the plan,
 * what is cut there from the depths that both dry runs leave.
 *
 * <p><em>Approximation:</em> a cell holds the deepest within it; the slot is looked at up to a cell
 * from its walls, so that a groove beside it is not taken for one in it.
 */
final class TabsBothFaces {
  /** What a cut may be deeper than asked for: a cell's rounding. */
  private static final double ROUNDING_MM = 0.05;

  /** A tab may be thinner than asked for by this, as little as the thickness of a board varies. */
  private static final double TOLERANCE_MM = 0.1;

  private static final double SAMPLE_MM = 0.5;

  /** Rays from the axis across the slot. */
  private static final int RAYS = 8;

  private static final double LEVEL_MM = 1e-6;

  private final PanelFacts cutFree;
  private final PanelFacts other;
  private final DepthMap depths;
  private final DepthMap otherDepths;
  private final Stock stock;
  private final Affine turned;
  private final String face;

  /**
   * A face with a cutout, and the other one.
   *
   * @param face in words, the one that is not cut out
   */
  TabsBothFaces(PanelFacts cutFree, PanelFacts other, Flip flip, Stock stock, String face) {
    this.cutFree = cutFree;
    this.other = other;
    this.depths = cutFree.depths().orElseThrow();
    this.otherDepths = other.depths().orElseThrow();
    this.stock = stock;
    this.turned = flip.turned(stock.lengthMm(), stock.widthMm());
    this.face = face;
  }

  /** A place in a tab, in the stock frame of the cutout, and how deep it is cut from behind. */
  private record Notch(Point onStock, double depthMm) {}

  void check(Diagnostics found) {
    for (Work work : cutFree.design().work()) {
      if (work instanceof Work.Cutout cutout) {
        double thick = cutout.tabs().map(Tabs::thicknessMm).orElse(cutout.way().skinMm());
        deepest(cutout, thick).stream()
            .max(Comparator.comparingDouble(Notch::depthMm))
            .filter(n -> n.depthMm() > TOLERANCE_MM)
            .ifPresent(n -> tell(cutout, thick, n, found));
      }
    }
  }

  private void tell(Work.Cutout cutout, double thickMm, Notch notch, Diagnostics found) {
    Point p = cutFree.setup().stockFromPanel().inverse().affine().apply(notch.onStock());
    double left = Math.max(0, thickMm - notch.depthMm());
    found.error(
        PlanCode.TABS_CUT_BEHIND,
        cutout.where(),
        (cutout.tabs().isPresent() ? "the tabs of this cutout are" : "the skin of this cutout is")
            + " to be "
            + Amounts.length(thickMm)
            + " thick, but \""
            + worker(notch.onStock())
            + "\" on the "
            + face
            + " runs "
            + Amounts.length(notch.depthMm())
            + " deep at "
            + Amounts.place(p.x(), p.y())
            + ", which leaves "
            + (left > 0 ? Amounts.length(left) : "nothing")
            + " there",
        "make that work less deep, keep it off the tabs with \"sides\", do it once the panel is"
            + " free, or ask for "
            + (cutout.tabs().isPresent() ? "tabs" : "a skin")
            + " thicker by what is taken");
  }

  private List<Notch> deepest(Work.Cutout cutout, double thickMm) {
    double tabDepth = stock.thinnestMm() - thickMm;
    Affine toStock = cutFree.setup().stockFromPanel().affine();
    List<Notch> notches = new ArrayList<>();
    if (thickMm <= 0) {
      return notches;
    }
    for (Cut cut : cutFree.plan().cuts()) {
      if (!cut.origin().startsWith(cutout.operation()) || !cut.tool().equals(cutout.tool())) {
        continue;
      }
      for (Cut.Move move : cut.moves()) {
        if (isLevel(move.path(), -tabDepth)) {
          samples(move.path())
              .forEach(p -> across(toStock.apply(p), cut.tool().radiusMm(), tabDepth, notches));
        }
      }
    }
    return notches;
  }

  private static boolean isLevel(Motion path, double z) {
    return Math.abs(path.from().z() - z) < LEVEL_MM && Math.abs(path.to().z() - z) < LEVEL_MM;
  }

  private static List<Point> samples(Motion path) {
    int steps = (int) Math.ceil(path.lengthMm() / SAMPLE_MM);
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= steps; i++) {
      points.add(path.at(steps == 0 ? 0 : (double) i / steps).xy());
    }
    return points;
  }

  /** Looks all round an axis, as far as the slot surely reaches. */
  private void across(Point axis, double radiusMm, double tabDepthMm, List<Notch> notches) {
    double reach = Math.max(0, radiusMm - depths.cellMm());
    double step = Math.max(SAMPLE_MM, depths.cellMm() / 2);
    look(axis, tabDepthMm, notches);
    for (double r = reach; r > 0; r -= step) {
      for (int ray = 0; ray < RAYS; ray++) {
        double angle = 2 * Math.PI * ray / RAYS;
        Point away = new Point(r * StrictMath.cos(angle), r * StrictMath.sin(angle));
        look(axis.plus(away), tabDepthMm, notches);
      }
    }
  }

  /** Where the slot is cut down to a tab and not through it, the other face counts. */
  private void look(Point at, double tabDepthMm, List<Notch> notches) {
    double here = depth(depths, at);
    if (here >= tabDepthMm - ROUNDING_MM && here < stock.thinnestMm() - ROUNDING_MM) {
      double behind = depth(otherDepths, turned.apply(at));
      if (behind > 0) {
        notches.add(new Notch(at, behind));
      }
    }
  }

  private static double depth(DepthMap map, Point at) {
    return map.depthMm(
        BothFaces.index(at.x(), map.cellMm(), map.columns()),
        BothFaces.index(at.y(), map.cellMm(), map.rows()));
  }

  /** The cut of the other face whose tool comes nearest to a place, by its rim. */
  private String worker(Point onStock) {
    Point there = other.setup().stockFromPanel().inverse().affine().apply(turned.apply(onStock));
    String best = "the work";
    double nearest = Double.POSITIVE_INFINITY;
    for (Cut cut : other.plan().cuts()) {
      for (Cut.Move move : cut.moves()) {
        for (Point p : samples(move.path())) {
          double apart = Math.max(0, p.distance(there) - cut.tool().radiusMm());
          if (move.path().to().z() < 0 && apart < nearest) {
            nearest = apart;
            best = cut.origin();
          }
        }
      }
    }
    return best;
  }
}
