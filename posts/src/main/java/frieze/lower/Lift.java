package frieze.lower;

import java.util.List;

/** Raises every height that a program names, by whole last digits, so that its path stays as is. */
final class Lift implements Command.Visitor<Command> {
  private final long ticks;

  private Lift(long ticks) {
    this.ticks = ticks;
  }

  static List<Program.Entry> by(long ticks, List<Program.Entry> entries) {
    if (ticks == 0) {
      return entries;
    }
    Lift lift = new Lift(ticks);
    return entries.stream()
        .map(e -> new Program.Entry(e.command().accept(lift), e.origin()))
        .toList();
  }

  @Override
  public Command raise(Command.Raise raise) {
    return raise;
  }

  @Override
  public Command rapidXy(Command.RapidXy rapid) {
    return rapid;
  }

  @Override
  public Command rapidZ(Command.RapidZ rapid) {
    return new Command.RapidZ(rapid.z() + ticks);
  }

  @Override
  public Command line(Command.Line line) {
    return new Command.Line(line.x(), line.y(), line.z() + ticks, line.feed());
  }

  @Override
  public Command arc(Command.Arc arc) {
    return new Command.Arc(
        arc.x(),
        arc.y(),
        arc.z() + ticks,
        arc.plane(),
        arc.clockwise(),
        arc.offsetU(),
        arc.offsetV(),
        arc.radius(),
        arc.feed());
  }

  @Override
  public Command drill(Command.Drill drill) {
    return new Command.Drill(
        drill.x(),
        drill.y(),
        drill.retractZ() + ticks,
        drill.bottomZ() + ticks,
        drill.peck(),
        drill.dwellSeconds(),
        drill.feed());
  }

  @Override
  public Command toolChange(Command.ToolChange change) {
    return change;
  }

  @Override
  public Command spindleOn(Command.SpindleOn on) {
    return on;
  }

  @Override
  public Command spindleOff(Command.SpindleOff off) {
    return off;
  }

  @Override
  public Command dwell(Command.Dwell dwell) {
    return dwell;
  }

  @Override
  public Command stop(Command.Stop stop) {
    return stop;
  }

  @Override
  public Command probe(Command.Probe probe) {
    return new Command.Probe(
        probe.x(), probe.y(), probe.z() + ticks, probe.feed(), probe.tripsAtZ());
  }

  @Override
  public Command torch(Command.Torch torch) {
    return torch;
  }

  @Override
  public Command heightControl(Command.HeightControl control) {
    return control;
  }

  @Override
  public Command remark(Command.Remark remark) {
    return remark;
  }
}
