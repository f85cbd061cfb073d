package frieze.sheet;

import frieze.curve.Point;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import java.util.ArrayList;
import java.util.List;

/** Finds the tabs of a cutout in its cuts: where the tool rises straight up and travels over. */
final class TabMarks {
  /** Heights that differ by less are the same. */
  private static final double SAME_MM = 1e-6;

  /** The least rise over run of a tab's end. */
  private static final double STEEP = 0.3;

  private TabMarks() {}

  /** A tab's place: the middle of the tool's way over it, and the direction of that way. */
  record Mark(Point middle, Point direction) {}

  /** The tabs of all cutouts, in the panel frame, in the order of cutting, each once. */
  static List<Mark> of(List<Cut> cuts) {
    List<Mark> marks = new ArrayList<>();
    for (Cut cut : cuts) {
      if (cut.origin().startsWith("cutout")) {
        collect(cut.moves(), marks);
      }
    }
    return marks;
  }

  private static void collect(List<Cut.Move> moves, List<Mark> marks) {
    for (int i = 1; i < moves.size(); i++) {
      Motion before = moves.get(i - 1).path();
      Motion over = moves.get(i).path();
      boolean rises = isSteep(before);
      boolean level = Math.abs(over.to().z() - over.from().z()) < SAME_MM && over.lengthMm() > 0;
      if (rises && level && over.from().z() < 0) {
        add(over, marks);
      }
    }
  }

  /** Whether a move rises, straight up or along the end of a ramped tab. */
  private static boolean isSteep(Motion motion) {
    double up = motion.to().z() - motion.from().z();
    double along =
        Math.hypot(motion.to().x() - motion.from().x(), motion.to().y() - motion.from().y());
    return up > Math.max(SAME_MM, along * STEEP);
  }

  private static void add(Motion over, List<Mark> marks) {
    Position p = over.at(0.5);
    Point middle = new Point(p.x(), p.y());
    Point way = new Point(over.to().x() - over.from().x(), over.to().y() - over.from().y());
    boolean known = marks.stream().anyMatch(m -> m.middle().distance(middle) < 1);
    if (!known && way.norm() > 0) {
      marks.add(new Mark(middle, way.times(1 / way.norm())));
    }
  }
}
