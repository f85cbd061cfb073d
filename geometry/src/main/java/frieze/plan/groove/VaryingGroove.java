package frieze.plan.groove;

import frieze.curve.Path;
import frieze.curve.Segment;
import frieze.design.DepthAlong;
import frieze.motion.Position;
import frieze.plan.cut.Cut;
import frieze.plan.cut.DepthPasses;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.Track;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the cut of a groove that is as deep, place by place, as its line is drawn wide.
 *
 * <p>The tool starts at the shallower end (on a closed line at its shallowest place), follows the
 * floor as far down as the pass goes, and keeps that depth where the floor lies below; each further
 * pass goes to and fro over what is still deeper. So nothing is ever cut below the floor. A tool
 * that cuts at its centre comes down at the start to the depth of the floor there; any other sinks
 * to and fro over places that are as deep.
 */
public final class VaryingGroove {
  private static final double SAME_MM = 1e-9;

  private final Track line;
  private final DepthAlong floor;
  private final MoveBuilder moves;

  private VaryingGroove(Track line, DepthAlong floor, MoveBuilder moves) {
    this.line = line;
    this.floor = floor;
    this.moves = moves;
  }

  /** A line from the end where the cut begins, and the depths along it. */
  public record Run(Track line, DepthAlong floor) {
    public static Run of(Track line, DepthAlong depths) {
      if (!line.closed()) {
        Run run = new Run(line, depths).withoutEmptyEnds();
        List<Double> d = run.floor().depthsMm();
        return d.get(0) <= d.get(d.size() - 1)
            ? run
            : new Run(run.line().reversed(), run.floor().reversed());
      }
      int least = 0;
      for (int i = 1; i < depths.depthsMm().size() - 1; i++) {
        least = depths.depthsMm().get(i) < depths.depthsMm().get(least) ? i : least;
      }
      return new Run(line.startingAt(depths.atMm().get(least)), depths.startingAt(least));
    }

    /** Without what is no wider than the tip at either end: there is nothing to cut. */
    private Run withoutEmptyEnds() {
      List<Double> d = floor.depthsMm();
      int first = 0;
      int last = d.size() - 1;
      while (first + 2 < last && d.get(first + 1) <= 0) {
        first++;
      }
      while (last - 2 > first && d.get(last - 1) <= 0) {
        last--;
      }
      if (first == 0 && last == d.size() - 1) {
        return this;
      }
      double from = floor.atMm().get(first);
      List<Double> at = floor.atMm().subList(first, last + 1);
      Path rest = new Path(line.slice(from, floor.atMm().get(last)), false);
      return new Run(
          new Track(rest),
          new DepthAlong(at.stream().map(a -> a - from).toList(), d.subList(first, last + 1)));
    }

    /** Where the floor, from the start on, is nowhere above that of the start. */
    private double entryMm() {
      double start = floor.depthsMm().get(0);
      int i = 1;
      while (i < floor.atMm().size() && floor.depthsMm().get(i) >= start - SAME_MM) {
        i++;
      }
      return floor.atMm().get(i - 1);
    }

    private double steepestRad() {
      double steepest = 0;
      for (int i = 1; i < floor.atMm().size(); i++) {
        double drop = Math.abs(floor.depthsMm().get(i) - floor.depthsMm().get(i - 1));
        double along = floor.atMm().get(i) - floor.atMm().get(i - 1);
        steepest = Math.max(steepest, StrictMath.atan2(drop, along));
      }
      return steepest;
    }

    /** Whether a tool can get in and follow the floor. */
    public boolean canCut(Tool tool) {
      return tool.cutsAtCentre()
          || (entryMm() >= tool.radiusMm() && steepestRad() <= MoveBuilder.RAMP_RAD);
    }
  }

  /**
   * Cuts one line.
   *
   * @param limitMm the most that a pass may take
   */
  public static Cut cut(String origin, Run run, Tool tool, Feeds feeds, double limitMm) {
    Track line = run.line();
    MoveBuilder moves =
        new MoveBuilder(tool, feeds, new Position(line.start(), MoveBuilder.AIR_MM));
    VaryingGroove groove = new VaryingGroove(line, run.floor(), moves);
    groove.enter(tool, run.entryMm(), limitMm);
    groove.cut(DepthPasses.depths(run.floor().mostMm(), limitMm));
    return moves.cut(origin);
  }

  private void enter(Tool tool, double entryMm, double limitMm) {
    double depth = Math.min(limitMm, floor.depthMm(0));
    if (tool.cutsAtCentre()) {
      moves.verticalTo(-depth);
    } else {
      moves.enter(new Track(new Path(line.slice(0, entryMm), false)), -depth);
    }
  }

  private void cut(List<Double> passes) {
    double at = 0;
    double done = 0;
    for (double pass : passes) {
      List<Double> ends = done == 0 ? List.of(0.0, line.lengthMm()) : deeperThan(done);
      double first = ends.get(0);
      double last = ends.get(1);
      boolean forward = Math.abs(at - first) <= Math.abs(at - last);
      at = go(at, forward ? first : last, done);
      at = go(at, forward ? last : first, pass);
      done = pass;
    }
  }

  /** The first and the last place where the floor lies below a depth. */
  private List<Double> deeperThan(double depthMm) {
    double first = line.lengthMm();
    double last = 0;
    for (double stop : stops(depthMm)) {
      if (floor.depthMm(stop) >= depthMm - SAME_MM) {
        first = Math.min(first, stop);
        last = Math.max(last, stop);
      }
    }
    return List.of(first, last);
  }

  /** The places where the slope changes of the floor, or of a pass that it stops. */
  private List<Double> stops(double passMm) {
    List<Double> stops = new ArrayList<>();
    List<Double> at = floor.atMm();
    List<Double> depth = floor.depthsMm();
    for (int i = 0; i < at.size(); i++) {
      if (i > 0 && (depth.get(i - 1) - passMm) * (depth.get(i) - passMm) < 0) {
        double part = (passMm - depth.get(i - 1)) / (depth.get(i) - depth.get(i - 1));
        stops.add(at.get(i - 1) + part * (at.get(i) - at.get(i - 1)));
      }
      stops.add(at.get(i));
    }
    return stops;
  }

  /** Goes along the line from one length to another at the depth of a pass, or of the floor. */
  private double go(double from, double to, double passMm) {
    List<Double> stops = new ArrayList<>(stops(passMm));
    stops.removeIf(s -> s <= Math.min(from, to) + SAME_MM || s >= Math.max(from, to) - SAME_MM);
    stops.add(to);
    if (to < from) {
      stops.sort((a, b) -> Double.compare(b, a));
    }
    double at = from;
    for (double stop : stops) {
      double z = -Math.min(passMm, floor.depthMm(stop));
      double drop = Math.abs(z - moves.at().z());
      double slope = drop <= SAME_MM ? 0 : StrictMath.atan2(drop, Math.abs(stop - at));
      if (Math.abs(stop - at) > SAME_MM) {
        moves.slope(pieces(at, stop), z, slope);
      }
      at = stop;
    }
    return to;
  }

  private List<Segment> pieces(double from, double to) {
    if (from < to) {
      return line.slice(from, to);
    }
    double length = line.lengthMm();
    return line.reversed().slice(length - from, length - to);
  }
}
