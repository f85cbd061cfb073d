package frieze.plan.cutout;

import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.design.CornerRelief;
import frieze.plan.cut.Track;
import java.util.ArrayList;
import java.util.List;

/** Leads a track into the corners that are relieved, and back. */
final class Reliefs {
  /** A joint this near to where the axis turns is that corner: the tolerances add up to less. */
  private static final double SAME_MM = 0.03;

  private Reliefs() {}

  /** A closed track with the reliefs whose corners it passes. */
  static Track into(Track track, List<CornerRelief.Place> reliefs) {
    if (reliefs.isEmpty()) {
      return track;
    }
    List<Segment> pieces = new ArrayList<>();
    for (Segment piece : track.path().segments()) {
      pieces.add(piece);
      Point joint = piece.end();
      for (CornerRelief.Place relief : reliefs) {
        if (relief.from().distance(joint) < SAME_MM && !relief.to().equals(joint)) {
          pieces.add(new Line(joint, relief.to()));
          pieces.add(new Line(relief.to(), joint));
          break;
        }
      }
    }
    return new Track(new Path(pieces, true));
  }
}
