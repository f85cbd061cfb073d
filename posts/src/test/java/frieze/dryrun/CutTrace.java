package frieze.dryrun;

import frieze.lower.Command;
import frieze.lower.Program;
import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.motion.Sequence;
import java.util.ArrayList;
import java.util.List;

/**
 * What a tool cuts, in order: runs of feed moves between travels, and drilled holes. Taken from a
 * planned sequence, or from the lowered programs; both tell it in their own words.
 */
final class CutTrace {
  /** A feed move. */
  record Piece(Motion path, double feedMmPerMin) {}

  /** Feed moves without a travel between them. */
  record Run(String origin, int tool, List<Piece> pieces) {
    Position from() {
      return pieces.get(0).path().from();
    }

    Position to() {
      return pieces.get(pieces.size() - 1).path().to();
    }

    boolean isHole() {
      return pieces.size() == 1 && to().z() < from().z() && to().xy().equals(from().xy());
    }
  }

  private final List<Run> runs = new ArrayList<>();
  private double[] at = {Double.NaN, Double.NaN, Double.NaN};
  private String origin = "";
  private int tool;
  private boolean isOpen;

  static CutTrace of(Sequence sequence) {
    CutTrace trace = new CutTrace();
    sequence
        .steps()
        .forEach(
            step -> {
              trace.origin = step.origin();
              step.instruction().accept(trace.new Planned());
            });
    return trace;
  }

  static CutTrace of(List<Program> programs) {
    CutTrace trace = new CutTrace();
    for (Program program : programs) {
      trace.travel();
      trace.tool = program.tools().isEmpty() ? 0 : program.tools().get(0).number();
      for (Program.Entry entry : program.entries()) {
        trace.origin = entry.origin();
        entry.command().accept(trace.new Lowered(program));
      }
    }
    return trace;
  }

  /** The same, with a hole that is drilled in several pecks as one. */
  List<Run> runs() {
    List<Run> merged = new ArrayList<>();
    for (Run run : runs) {
      Run before = merged.isEmpty() ? run : merged.get(merged.size() - 1);
      boolean again = before != run && before.isHole() && run.isHole();
      if (again && before.origin().equals(run.origin()) && before.to().xy().equals(run.to().xy())) {
        Motion whole = new Motion.Straight(before.from(), run.to());
        double feed = run.pieces().get(0).feedMmPerMin();
        merged.set(
            merged.size() - 1, new Run(run.origin(), run.tool(), List.of(new Piece(whole, feed))));
      } else {
        merged.add(run);
      }
    }
    return merged;
  }

  private Void travel() {
    isOpen = false;
    return null;
  }

  private Void travel(double x, double y, double z) {
    at = new double[] {x, y, z};
    return travel();
  }

  private Position here() {
    return new Position(at[0], at[1], at[2]);
  }

  private Void cut(Motion path, double feed) {
    if (!isOpen) {
      runs.add(new Run(origin, tool, new ArrayList<>()));
      isOpen = true;
    }
    runs.get(runs.size() - 1).pieces().add(new Piece(path, feed));
    at = new double[] {path.to().x(), path.to().y(), path.to().z()};
    return null;
  }

  private Void hole(double x, double y, double top, double bottom, double feed) {
    travel();
    cut(new Motion.Straight(new Position(x, y, top), new Position(x, y, bottom)), feed);
    return travel(x, y, top);
  }

  private final class Planned implements Instruction.Visitor<Void> {
    @Override
    public Void raiseToSafe(Instruction.RaiseToSafe raise) {
      return travel(at[0], at[1], Double.NaN);
    }

    @Override
    public Void rapidXy(Instruction.RapidXy rapid) {
      return travel(rapid.x(), rapid.y(), at[2]);
    }

    @Override
    public Void rapidZ(Instruction.RapidZ rapid) {
      return travel(at[0], at[1], rapid.z());
    }

    @Override
    public Void feed(Instruction.Feed feed) {
      return cut(new Motion.Straight(here(), feed.to()), feed.feedMmPerMin());
    }

    @Override
    public Void turn(Instruction.Turn t) {
      return cut(
          new Motion.Turn(here(), t.to(), t.plane(), t.centreU(), t.centreV(), t.sweepRad()),
          t.feedMmPerMin());
    }

    @Override
    public Void drill(Instruction.Drill d) {
      return hole(d.x(), d.y(), d.retractZ(), d.bottomZ(), d.feedMmPerMin());
    }

    @Override
    public Void toolChange(Instruction.ToolChange change) {
      tool = change.tool().number();
      return travel();
    }

    @Override
    public Void spindle(Instruction.Spindle spindle) {
      return null;
    }

    @Override
    public Void dwell(Instruction.Dwell dwell) {
      return null;
    }

    @Override
    public Void stop(Instruction.Stop stop) {
      return null;
    }

    @Override
    public Void probe(Instruction.Probe probe) {
      return travel(probe.to().x(), probe.to().y(), probe.tripsAtZMm());
    }

    @Override
    public Void torch(Instruction.Torch torch) {
      return travel();
    }

    @Override
    public Void heightControl(Instruction.HeightControl control) {
      return null;
    }

    @Override
    public Void remark(Instruction.Remark remark) {
      return null;
    }
  }

  private final class Lowered implements Command.Visitor<Void> {
    private final Program program;

    Lowered(Program program) {
      this.program = program;
    }

    private double mm(long ticks) {
      return program.grid().mm(ticks);
    }

    private double feed(long ticks) {
      return program.feedGrid().mm(ticks);
    }

    @Override
    public Void raise(Command.Raise raise) {
      return travel(at[0], at[1], Double.NaN);
    }

    @Override
    public Void rapidXy(Command.RapidXy rapid) {
      return travel(mm(rapid.x()), mm(rapid.y()), at[2]);
    }

    @Override
    public Void rapidZ(Command.RapidZ rapid) {
      return travel(at[0], at[1], mm(rapid.z()));
    }

    @Override
    public Void line(Command.Line l) {
      Position to = new Position(mm(l.x()), mm(l.y()), mm(l.z()));
      return cut(new Motion.Straight(here(), to), feed(l.feed()));
    }

    /** The sweep from the two ends and the direction; none is a whole turn. */
    @Override
    public Void arc(Command.Arc a) {
      Position to = new Position(mm(a.x()), mm(a.y()), mm(a.z()));
      int u = a.plane().first();
      int v = a.plane().second();
      double centreU = at[u] + mm(a.offsetU());
      double centreV = at[v] + mm(a.offsetV());
      double start = Math.atan2(at[v] - centreV, at[u] - centreU);
      double end = Math.atan2(to.get(v) - centreV, to.get(u) - centreU);
      double sweep = end - start;
      if (a.clockwise() && sweep >= 0) {
        sweep -= 2 * Math.PI;
      } else if (!a.clockwise() && sweep <= 0) {
        sweep += 2 * Math.PI;
      }
      return cut(new Motion.Turn(here(), to, a.plane(), centreU, centreV, sweep), feed(a.feed()));
    }

    @Override
    public Void drill(Command.Drill d) {
      return hole(mm(d.x()), mm(d.y()), mm(d.retractZ()), mm(d.bottomZ()), feed(d.feed()));
    }

    @Override
    public Void toolChange(Command.ToolChange change) {
      tool = change.tool().number();
      return travel();
    }

    @Override
    public Void spindleOn(Command.SpindleOn on) {
      return null;
    }

    @Override
    public Void spindleOff(Command.SpindleOff off) {
      return null;
    }

    @Override
    public Void dwell(Command.Dwell dwell) {
      return null;
    }

    @Override
    public Void stop(Command.Stop stop) {
      return null;
    }

    @Override
    public Void probe(Command.Probe probe) {
      return travel(mm(probe.x()), mm(probe.y()), mm(probe.tripsAtZ()));
    }

    @Override
    public Void torch(Command.Torch torch) {
      return travel();
    }

    @Override
    public Void heightControl(Command.HeightControl control) {
      return null;
    }

    @Override
    public Void remark(Command.Remark remark) {
      return null;
    }
  }
}
