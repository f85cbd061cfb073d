package frieze.lower;

import frieze.curve.Tolerances;
import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Plane;
import frieze.motion.Position;
import frieze.motion.Step;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Rounds every number to what the program can say, and makes commands of the steps.
 *
 * <p>Moves that round to nothing are left out. An arc that rounds to less than its own bulge
 * becomes a line; one that no centre on the grid can draw becomes lines.
 */
final class Rounding {
  private static final int FEED_DECIMALS_MM = 1;
  private static final int FEED_DECIMALS_INCH = 2;

  /** Below this radius, in last digits, an arc is not worth an arc. */
  private static final double SMALLEST_RADIUS_TICKS = 10;

  private final Capabilities.Arcs arcs;
  private final Grid grid;
  private final Grid feedGrid;

  Rounding(Capabilities capabilities, boolean inches) {
    this.arcs = capabilities.arcs();
    this.grid = new Grid(inches, capabilities.decimals(inches));
    this.feedGrid = new Grid(inches, inches ? FEED_DECIMALS_INCH : FEED_DECIMALS_MM);
  }

  Grid grid() {
    return grid;
  }

  Grid feedGrid() {
    return feedGrid;
  }

  List<Program.Entry> apply(List<Step> steps) {
    Writing writing = new Writing();
    for (Step step : steps) {
      writing.origin = step.origin();
      step.instruction().accept(writing);
      writing.exact.follow(step.instruction());
    }
    return writing.out;
  }

  private final class Writing implements Instruction.Visitor<Boolean> {
    private final List<Program.Entry> out = new ArrayList<>();
    private final Cursor exact = new Cursor();
    private String origin = "";
    private long x;
    private long y;
    private long z;

    private boolean add(Command command) {
      return out.add(new Program.Entry(command, origin));
    }

    private long feed(double mmPerMin) {
      return Math.max(1, feedGrid.ticksBelow(mmPerMin));
    }

    private void at(Position p) {
      x = grid.ticks(p.x());
      y = grid.ticks(p.y());
      z = grid.ticks(p.z());
    }

    @Override
    public Boolean raiseToSafe(Instruction.RaiseToSafe raise) {
      return add(new Command.Raise());
    }

    @Override
    public Boolean rapidXy(Instruction.RapidXy rapid) {
      x = grid.ticks(rapid.x());
      y = grid.ticks(rapid.y());
      return add(new Command.RapidXy(x, y));
    }

    @Override
    public Boolean rapidZ(Instruction.RapidZ rapid) {
      z = grid.ticks(rapid.z());
      return add(new Command.RapidZ(z));
    }

    @Override
    public Boolean feed(Instruction.Feed feed) {
      exact.position(origin);
      return line(feed.to(), feed.feedMmPerMin());
    }

    private boolean line(Position to, double feedMmPerMin) {
      long oldX = x;
      long oldY = y;
      long oldZ = z;
      at(to);
      boolean moves = x != oldX || y != oldY || z != oldZ;
      return moves && add(new Command.Line(x, y, z, feed(feedMmPerMin)));
    }

    @Override
    public Boolean turn(Instruction.Turn turn) {
      Motion.Turn path = TurnPass.path(turn, exact, origin);
      Optional<Command.Arc> arc = arc(turn, path);
      if (arc.isPresent()) {
        x = arc.get().x();
        y = arc.get().y();
        z = arc.get().z();
        return add(arc.get());
      }
      double tolerance = Tolerances.DEFAULT.textMm();
      for (Instruction chord : Chords.of(path, tolerance, turn.feedMmPerMin())) {
        Instruction.Feed feed = (Instruction.Feed) chord;
        line(feed.to(), feed.feedMmPerMin());
      }
      return true;
    }

    /** The arc on the grid; empty when lines say it better. */
    private Optional<Command.Arc> arc(Instruction.Turn turn, Motion.Turn path) {
      Plane plane = turn.plane();
      long[] from = {x, y, z};
      long[] to = {grid.ticks(turn.to().x()), grid.ticks(turn.to().y()), grid.ticks(turn.to().z())};
      if (TurnSplit.isWholeTurns(turn.sweepRad())) {
        to[plane.first()] = from[plane.first()];
        to[plane.second()] = from[plane.second()];
      }
      double tick = grid.tickMm();
      ArcCentre.Wanted wanted =
          new ArcCentre.Wanted(
              from[plane.first()],
              from[plane.second()],
              to[plane.first()],
              to[plane.second()],
              turn.centreU() / tick,
              turn.centreV() / tick,
              path.radiusMm() / tick,
              turn.sweepRad());
      if (!worthAnArc(wanted)) {
        return Optional.empty();
      }
      return ArcCentre.choose(wanted, grid)
          .filter(c -> withinRadii(wanted, c))
          .map(c -> command(turn, wanted, c, to));
    }

    private boolean worthAnArc(ArcCentre.Wanted arc) {
      boolean whole = TurnSplit.isWholeTurns(arc.sweepRad());
      double half = Math.min(Math.PI, Math.abs(arc.sweepRad())) / 2;
      double bulge = arc.radius() * (1 - StrictMath.cos(half));
      return arc.radius() >= SMALLEST_RADIUS_TICKS && bulge >= 1 && (whole || !arc.closed(grid));
    }

    private boolean withinRadii(ArcCentre.Wanted arc, ArcCentre c) {
      double start =
          Math.hypot((double) (arc.startU() - c.u()), (double) (arc.startV() - c.v()))
              * grid.tickMm();
      double end =
          Math.hypot((double) (arc.endU() - c.u()), (double) (arc.endV() - c.v())) * grid.tickMm();
      return Math.min(start, end) >= arcs.minRadiusMm()
          && Math.max(start, end) <= arcs.maxRadiusMm();
    }

    private Command.Arc command(
        Instruction.Turn turn, ArcCentre.Wanted arc, ArcCentre c, long[] to) {
      boolean radiusFormat = arcs.format() == Capabilities.ArcFormat.RADIUS;
      return new Command.Arc(
          to[0],
          to[1],
          to[2],
          turn.plane(),
          turn.sweepRad() < 0,
          c.u() - arc.startU(),
          c.v() - arc.startV(),
          radiusFormat ? Math.round(arc.radius()) : 0,
          feed(turn.feedMmPerMin()));
    }

    @Override
    public Boolean drill(Instruction.Drill drill) {
      x = grid.ticks(drill.x());
      y = grid.ticks(drill.y());
      z = grid.ticks(drill.retractZ());
      return add(
          new Command.Drill(
              x,
              y,
              z,
              grid.ticks(drill.bottomZ()),
              grid.ticks(drill.peckMm()),
              drill.dwellSeconds(),
              feed(drill.feedMmPerMin())));
    }

    @Override
    public Boolean toolChange(Instruction.ToolChange change) {
      return add(new Command.ToolChange(change.tool()));
    }

    @Override
    public Boolean spindle(Instruction.Spindle spindle) {
      return spindle.rpm().isPresent()
          ? add(new Command.SpindleOn((long) Math.floor(spindle.rpm().get())))
          : add(new Command.SpindleOff());
    }

    @Override
    public Boolean dwell(Instruction.Dwell dwell) {
      return add(new Command.Dwell(dwell.seconds()));
    }

    @Override
    public Boolean stop(Instruction.Stop stop) {
      return add(new Command.Stop(stop.message()));
    }

    @Override
    public Boolean probe(Instruction.Probe probe) {
      at(probe.to());
      return add(
          new Command.Probe(x, y, z, feed(probe.feedMmPerMin()), grid.ticks(probe.tripsAtZMm())));
    }

    @Override
    public Boolean torch(Instruction.Torch torch) {
      return add(new Command.Torch(torch.on()));
    }

    @Override
    public Boolean heightControl(Instruction.HeightControl control) {
      return add(new Command.HeightControl(control.on()));
    }

    @Override
    public Boolean remark(Instruction.Remark remark) {
      return add(new Command.Remark(remark.text()));
    }
  }
}
