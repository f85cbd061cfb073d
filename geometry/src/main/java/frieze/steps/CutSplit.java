package frieze.steps;

import frieze.motion.Box;
import frieze.motion.Motion;
import frieze.motion.Motions;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Takes from cuts the parts that one step makes.
 *
 * <p>A part that begins at the step's left end begins where the step before has cut already. One
 * that begins at its right end begins in the solid, and the tool goes down along it, to and fro, as
 * on a ramp. Takes the cuts of a step in their order: where an earlier pass has begun at the same
 * place, the next one goes down from there.
 */
final class CutSplit {
  /** The slope of a ramp; 2 to 5 degrees are common practice. */
  private static final double RAMP = StrictMath.tan(StrictMath.toRadians(3));

  /** The slope of a ramp along moves that go down themselves, both together. */
  private static final double STEEPEST = StrictMath.tan(StrictMath.toRadians(4.8));

  /** The least slope of a ramp. */
  private static final double FLATTEST = StrictMath.tan(StrictMath.toRadians(1));

  /** The height above the material at which a ramp begins: the top may not be quite flat. */
  private static final double AIR_MM = 0.5;

  private static final double SAME_MM = 1e-6;
  private static final double GRAIN = 1e3;

  private final double fromMm;
  private final double toMm;
  private final Map<List<Long>, Double> openTo = new HashMap<>();

  /**
   * Makes one for a step.
   *
   * @param fromMm where it begins along X, in the frame of the cuts
   * @param toMm where it ends
   */
  CutSplit(double fromMm, double toMm) {
    this.fromMm = fromMm;
    this.toMm = toMm;
  }

  /** The parts of a cut, in order; none if it lies elsewhere. */
  List<Cut> of(Cut cut) {
    List<Cut> parts = new ArrayList<>();
    List<Cut.Move> run = new ArrayList<>();
    for (Cut.Move move : cut.moves()) {
      for (Motion part : MotionPart.split(move.path(), List.of(fromMm, toMm))) {
        if (isWithin(part)) {
          run.add(new Cut.Move(part, move.feedMmPerMin()));
        } else if (!run.isEmpty()) {
          parts.add(part(cut, run));
          run = new ArrayList<>();
        }
      }
    }
    if (!run.isEmpty()) {
      parts.add(part(cut, run));
    }
    return parts;
  }

  private boolean isWithin(Motion part) {
    Box box = part.box();
    double middle = (box.minX() + box.maxX()) / 2;
    return middle >= fromMm - SAME_MM && middle <= toMm + SAME_MM;
  }

  private Cut part(Cut cut, List<Cut.Move> run) {
    Position start = run.get(0).path().from();
    boolean whole = start.equals(cut.start());
    boolean inTheSolid = !whole && Math.abs(start.x() - toMm) <= SAME_MM;
    List<Cut.Move> moves = inTheSolid ? entered(cut.tool(), run) : run;
    return new Cut(cut.origin(), cut.tool(), cut.spindleRpm(), moves, cut.peckMm());
  }

  /** The same with a ramp before it, from above what is there. */
  private List<Cut.Move> entered(Tool tool, List<Cut.Move> run) {
    Position start = run.get(0).path().from();
    List<Long> place =
        List.of((long) tool.number(), Math.round(start.x() * GRAIN), Math.round(start.y() * GRAIN));
    double top = openTo.getOrDefault(place, 0.0) + AIR_MM;
    openTo.merge(place, start.z(), Math::min);
    double drop = top - start.z();
    double total = run.stream().mapToDouble(m -> m.path().lengthMm()).sum();
    if (drop <= 0 || total < tool.radiusMm()) {
      return run;
    }
    double leg = Math.min(total, Math.max(drop / RAMP / 2, tool.diameterMm()));
    List<Cut.Move> out = first(run, leg);
    double own = steepest(out);
    double slope = own + RAMP <= STEEPEST ? RAMP : Math.max(FLATTEST, STEEPEST - own);
    double deepest = out.stream().mapToDouble(m -> m.path().box().minZ()).min().orElseThrow();
    int legs = 2 * (int) Math.max(1, Math.ceil((top - deepest) / slope / (2 * leg)));
    double most = tool.maxPlungeMmPerMin() / StrictMath.sin(StrictMath.atan(own + slope));
    List<Cut.Move> back = reversed(out);
    List<Cut.Move> moves = new ArrayList<>();
    for (int i = 0; i < legs; i++) {
      moves.addAll(sinking(i % 2 == 0 ? out : back, top, i, legs, most));
    }
    return Stream.concat(moves.stream(), run.stream()).toList();
  }

  /** The steepest slope of moves along their way, up or down; that of straight plunges apart. */
  private static double steepest(List<Cut.Move> moves) {
    double steepest = 0;
    for (Cut.Move move : moves) {
      double planar = Motions.planarMm(move.path());
      double rise = Math.abs(move.path().to().z() - move.path().from().z());
      if (planar > SAME_MM) {
        steepest = Math.max(steepest, rise / planar);
      }
    }
    return steepest;
  }

  /**
   * Moves raised towards a height, so that they reach their own only at the end of the last leg:
   * never below it, and each as straight or as round as it was.
   */
  private static List<Cut.Move> sinking(
      List<Cut.Move> leg, double top, int number, int legs, double mostFeed) {
    double length = leg.stream().mapToDouble(m -> m.path().lengthMm()).sum();
    double done = 0;
    List<Cut.Move> moves = new ArrayList<>();
    for (Cut.Move move : leg) {
      double before = (number + done / length) / legs;
      done += move.path().lengthMm();
      double after = (number + done / length) / legs;
      moves.add(
          new Cut.Move(
              lifted(
                  move.path(),
                  top + (move.path().from().z() - top) * before,
                  top + (move.path().to().z() - top) * after),
              Math.min(move.feedMmPerMin(), mostFeed)));
    }
    return moves;
  }

  private static Motion lifted(Motion path, double fromZ, double toZ) {
    return path.accept(
        new Motion.Visitor<Motion>() {
          @Override
          public Motion straight(Motion.Straight s) {
            return new Motion.Straight(s.from().withZ(fromZ), s.to().withZ(toZ));
          }

          @Override
          public Motion turn(Motion.Turn t) {
            return new Motion.Turn(
                t.from().withZ(fromZ),
                t.to().withZ(toZ),
                t.plane(),
                t.centreU(),
                t.centreV(),
                t.sweepRad());
          }
        });
  }

  /** The first stretch of a run. */
  private static List<Cut.Move> first(List<Cut.Move> run, double lengthMm) {
    List<Cut.Move> moves = new ArrayList<>();
    double left = lengthMm;
    for (Cut.Move move : run) {
      double length = move.path().lengthMm();
      if (length > left) {
        moves.add(new Cut.Move(Motions.part(move.path(), 0, left / length), move.feedMmPerMin()));
        return moves;
      }
      moves.add(move);
      left -= length;
      if (left < SAME_MM) {
        return moves;
      }
    }
    return moves;
  }

  private static List<Cut.Move> reversed(List<Cut.Move> run) {
    List<Cut.Move> moves = new ArrayList<>();
    for (int i = run.size() - 1; i >= 0; i--) {
      moves.add(new Cut.Move(reversed(run.get(i).path()), run.get(i).feedMmPerMin()));
    }
    return moves;
  }

  private static Motion reversed(Motion path) {
    return path.accept(
        new Motion.Visitor<Motion>() {
          @Override
          public Motion straight(Motion.Straight s) {
            return new Motion.Straight(s.to(), s.from());
          }

          @Override
          public Motion turn(Motion.Turn t) {
            return new Motion.Turn(
                t.to(), t.from(), t.plane(), t.centreU(), t.centreV(), -t.sweepRad());
          }
        });
  }
}
