package frieze.plan.cut;

import frieze.curve.Arc;
import frieze.curve.ArcFitter;
import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.curve.Tolerances;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes paths of lines and arcs only. */
public final class Fitting {
  private Fitting() {}

  /** Replaces the curves of a path; its lines and arcs stay as they are. Empty for a mere point. */
  public static Optional<Track> track(Path path, Tolerances tolerances) {
    List<Segment> pieces = new ArrayList<>();
    for (Segment segment : path.segments()) {
      if (segment instanceof Line line) {
        if (line.length() > 0) {
          pieces.add(line);
        }
      } else if (segment instanceof Arc) {
        pieces.add(segment);
      } else {
        List<Point> points =
            Flattener.flatten(new Path(List.of(segment), false), tolerances.flattenMm());
        if (points.stream().anyMatch(p -> !p.equals(segment.start()))) {
          pieces.addAll(fit(points, false, tolerances).segments());
        }
      }
    }
    return pieces.isEmpty()
        ? Optional.empty()
        : Optional.of(new Track(new Path(pieces, path.closed())));
  }

  /** Replaces a polyline by lines and arcs. A closed one may start elsewhere afterwards. */
  public static Path fit(List<Point> points, boolean closed, Tolerances tolerances) {
    return ArcFitter.fit(points, closed, tolerances.arcFitMm());
  }
}
