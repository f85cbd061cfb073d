package frieze.plan.recess;

import frieze.curve.Affine;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Selection;
import frieze.design.Work;
import frieze.region.BoundaryDistance;
import frieze.region.Region;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/**
 * How deep the recesses of a motif have cleared the places that its grooves go over, in the motif's
 * own frame.
 *
 * <p>A place counts as cleared for a tool when the recess's tool has cleared all around it what the
 * groove's tool takes up above the recess's floor. Recesses are cut before grooves wherever the two
 * meet.
 */
public final class ClearedAreas {
  private static final double SAMPLE_MM = 0.5;
  private static final int HALVINGS = 40;

  /**
   * A recess.
   *
   * @param proudMm how far its walls stand inside its border
   */
  private record Area(
      BoundaryDistance border, double depthMm, double toolRadiusMm, double proudMm) {}

  private final Tolerances tolerances;
  private final List<Area> areas = new ArrayList<>();

  private ClearedAreas(Tolerances tolerances) {
    this.tolerances = tolerances;
  }

  /**
   * Finds the recesses of a motif.
   *
   * @param proudMm how far their walls stand inside their borders
   */
  public static ClearedAreas of(Design design, Motif motif, double proudMm, Tolerances tolerances) {
    ClearedAreas cleared = new ClearedAreas(tolerances);
    for (Work work : design.work()) {
      if (work instanceof Work.Recess recess && recess.on().motif().equals(motif.name())) {
        Region area = Selection.area(motif, recess.on(), Affine.IDENTITY, tolerances.flattenMm());
        if (!area.isEmpty()) {
          cleared.areas.add(
              new Area(
                  BoundaryDistance.of(area), recess.depthMm(), recess.tool().radiusMm(), proudMm));
        }
      }
    }
    return cleared;
  }

  /**
   * How deep a place is cleared for a tool; 0 if it is not.
   *
   * @param scale how much larger than in the motif's frame the motif is cut
   */
  public double depthMm(Point at, Tool tool, double scale) {
    double deepest = 0;
    for (Area area : areas) {
      double cutter = area.toolRadiusMm();
      double wide = radiusBelow(tool, area.depthMm());
      double margin =
          (wide <= cutter ? cutter : wide + cutter) + area.proudMm() + tolerances.totalMm();
      if (area.depthMm() > deepest && area.border().signed(at) * scale >= margin) {
        deepest = area.depthMm();
      }
    }
    return deepest;
  }

  /** How deep a whole line is cleared. */
  public double depthMm(Path line, Tool tool, double scale) {
    if (areas.isEmpty()) {
      return 0;
    }
    List<Point> points = Flattener.flatten(line, tolerances.flattenMm());
    double least = depthMm(points.get(0), tool, scale);
    for (int i = 1; i < points.size() && least > 0; i++) {
      Point from = points.get(i - 1);
      int parts = (int) Math.max(1, Math.ceil(from.distance(points.get(i)) / SAMPLE_MM));
      for (int k = 1; k <= parts; k++) {
        Point at = from.towards(points.get(i), (double) k / parts);
        least = Math.min(least, depthMm(at, tool, scale));
      }
    }
    return least;
  }

  /** The radius of a tool at a height above its tip. */
  public static double radiusBelow(Tool tool, double heightMm) {
    double low = 0;
    double high = tool.radiusMm();
    if (tool.shape().heightAtMm(high) <= heightMm) {
      return high;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (tool.shape().heightAtMm(middle) <= heightMm) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return high;
  }
}
