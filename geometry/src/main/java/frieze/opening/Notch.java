package frieze.opening;

import frieze.curve.Affine;
import frieze.curve.Point;
import java.util.List;

/**
 * What is left out of a panel for a lug.
 *
 * @param lug what stands in it
 * @param box a rectangle in the panel frame, counter-clockwise: a flank from outside the panel to
 *     the floor, the floor, and the other flank
 * @param widthMm of the notch as cut
 * @param depthMm from the panel's edge
 * @param fromMm from the panel's left or lower corner, along its edge, to the notch
 * @param clearanceMm around the lug, as cut
 * @param gap the least one around the lug, in the seasons
 */
public record Notch(
    Lug lug,
    List<Point> box,
    double widthMm,
    double depthMm,
    double fromMm,
    double clearanceMm,
    Sitting.Gap gap) {
  public Notch {
    box = List.copyOf(box);
  }

  /** The least gap in any season. */
  public double leastMm() {
    return gap.leastMm();
  }

  /** The box with flanks and floor farther away. */
  List<Point> grown(double byMm) {
    Point in = box.get(1).minus(box.get(0));
    Point across = box.get(0).minus(box.get(3));
    Point deeper = in.times(byMm / in.norm());
    Point wider = across.times(byMm / across.norm());
    return List.of(
        box.get(0).plus(wider),
        box.get(1).plus(wider).plus(deeper),
        box.get(2).minus(wider).plus(deeper),
        box.get(3).minus(wider));
  }

  /** The box from the panel's edge on. */
  List<Point> inPanel() {
    Point in = box.get(1).minus(box.get(0));
    Point out = in.times(-depthMm / in.norm());
    return List.of(box.get(1).plus(out), box.get(1), box.get(2), box.get(2).plus(out));
  }

  /** The same elsewhere. */
  Notch moved(Affine map) {
    List<Point> there = box.stream().map(map::apply).toList();
    return new Notch(lug, there, widthMm, depthMm, fromMm, clearanceMm, gap);
  }
}
