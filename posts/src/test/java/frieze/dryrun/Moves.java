package frieze.dryrun;

import frieze.diagnostic.SourceSpan;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.Passage;
import frieze.dryrun.scene.StockBox;
import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed;
import frieze.motion.Executed.KnownAxes;
import frieze.motion.Executed.MachinePosition;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Tool;
import java.util.Optional;
import java.util.OptionalDouble;

/** Single moves, and the passages that checks see, without a text. */
public final class Moves {
  private final Surroundings known;
  private Optional<Tool> tool = Optional.empty();
  private KnownAxes from = KnownAxes.ALL;
  private KnownAxes to = KnownAxes.ALL;
  private MachinePosition machineTo = MachinePosition.UNKNOWN;
  private SourceSpan span = SourceSpan.NONE;
  private OptionalDouble feed = OptionalDouble.of(1200);
  private OptionalDouble rpm = OptionalDouble.of(16000);
  private Executed.Rotation rotation = Executed.Rotation.CLOCKWISE;

  private Moves(Surroundings known) {
    this.known = known;
  }

  public static Moves in(Surroundings known) {
    return new Moves(known);
  }

  /** A log that has a program. */
  public static FindingLog log() {
    FindingLog log = new FindingLog();
    log.startProgram("p.nc");
    return log;
  }

  public static SourceSpan line(int number) {
    return new SourceSpan("p.nc", number, 1, 1);
  }

  Moves with(Tool inSpindle) {
    tool = Optional.of(inSpindle);
    return this;
  }

  public Moves known(KnownAxes atStart, KnownAxes atEnd) {
    from = atStart;
    to = atEnd;
    return this;
  }

  Moves machine(MachinePosition end) {
    machineTo = end;
    return this;
  }

  Moves at(int line) {
    span = line(line);
    return this;
  }

  Moves feedMmPerMin(double asked) {
    feed = OptionalDouble.of(asked);
    return this;
  }

  Moves withoutFeed() {
    feed = OptionalDouble.empty();
    return this;
  }

  Moves spindle(Executed.Rotation turning, double asked) {
    rotation = turning;
    rpm = OptionalDouble.of(asked);
    return this;
  }

  /** From three coordinates to three. */
  Passage rapid(double... ends) {
    return passage(Executed.Kind.RAPID, straight(ends));
  }

  public Passage feed(double... ends) {
    return passage(Executed.Kind.FEED, straight(ends));
  }

  Passage probe(double... ends) {
    return passage(Executed.Kind.PROBE, straight(ends));
  }

  public Passage feed(Motion path) {
    return passage(Executed.Kind.FEED, path);
  }

  private Passage passage(Executed.Kind kind, Motion path) {
    return new Passage(move(kind, path), tool.map(Tool::number), tool, StockBox.of(known));
  }

  private Executed.Move move(Executed.Kind kind, Motion path) {
    return new Executed.Move(
        kind,
        path,
        from,
        to,
        machineTo,
        feed,
        OptionalDouble.empty(),
        new Executed.State(Optional.empty(), rotation, rpm, false),
        span);
  }

  public static Motion straight(double... ends) {
    return new Motion.Straight(
        new Position(ends[0], ends[1], ends[2]), new Position(ends[3], ends[4], ends[5]));
  }
}
