package frieze.plan.cut;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.curve.Tolerances;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;

/** The path of a tool's axis around the outside of a part. */
public final class Outline {
  /** Tangents that differ by less are taken as one direction: 0.2 seconds of arc. */
  private static final double SMOOTH_RAD = 1e-6;

  private Outline() {}

  /**
   * Moves a closed counter-clockwise outline outward, with round joins.
   *
   * <p>Exact where the outline is convex and made of lines and arcs; elsewhere to the tolerances.
   */
  public static Track outside(Path outline, double distanceMm, Tolerances tolerances) {
    if (isConvexOfLinesAndArcs(outline)) {
      return new Track(convex(outline, distanceMm));
    }
    Region part = Region.of(List.of(outline), FillRule.NONZERO, tolerances.flattenMm());
    Region grown = Offset.offset(part, distanceMm, tolerances.offsetMm());
    return new Track(Fitting.fit(grown.rings().get(0).points(), true, tolerances));
  }

  private static boolean isConvexOfLinesAndArcs(Path outline) {
    List<Segment> segments = outline.segments();
    double turned = 0;
    for (int i = 0; i < segments.size(); i++) {
      Segment segment = segments.get(i);
      double corner = cornerRad(segment, segments.get((i + 1) % segments.size()));
      double bend = segment instanceof Arc arc ? arc.sweepRad() : 0;
      if (!(segment instanceof Arc || segment instanceof Line)
          || bend < 0
          || corner < -SMOOTH_RAD) {
        return false;
      }
      turned += bend + corner;
    }
    return Math.abs(turned - 2 * Math.PI) < segments.size() * SMOOTH_RAD;
  }

  /** The turn from the end of a segment to the start of the next, positive to the left. */
  private static double cornerRad(Segment before, Segment after) {
    Point a = before.tangentAt(1);
    Point b = after.tangentAt(0);
    return StrictMath.atan2(a.cross(b), a.dot(b));
  }

  private static Path convex(Path outline, double d) {
    List<Segment> segments = outline.segments();
    List<Segment> result = new ArrayList<>();
    for (int i = 0; i < segments.size(); i++) {
      Segment before = segments.get(Math.floorMod(i - 1, segments.size()));
      Segment segment = segments.get(i);
      Segment after = segments.get((i + 1) % segments.size());
      double arriving = cornerRad(before, segment);
      double corner = cornerRad(segment, after);
      Point start = arriving > SMOOTH_RAD ? outward(segment, 0, d) : outward(before, 1, d);
      Point end = outward(segment, 1, d);
      result.add(
          segment instanceof Arc arc
              ? new Arc(start, end, arc.centre(), arc.sweepRad())
              : new Line(start, end));
      if (corner > SMOOTH_RAD) {
        result.add(new Arc(end, outward(after, 0, d), segment.end(), corner));
      }
    }
    return new Path(result, true);
  }

  /** A point of a segment moved to its right, which is outside. */
  private static Point outward(Segment segment, double t, double d) {
    Point along = segment.tangentAt(t);
    return segment.at(t).plus(new Point(along.y(), -along.x()).times(d / along.norm()));
  }
}
