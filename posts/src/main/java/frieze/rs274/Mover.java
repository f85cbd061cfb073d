package frieze.rs274;

import frieze.diagnostic.SourceSpan;
import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Executed.Rotation;
import frieze.motion.Motion;
import frieze.motion.Position;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/** Carries out moves and spindle orders: tells them to the consumer and keeps the position. */
final class Mover {
  /** No machine is this long: 10 km. A coordinate beyond it is a slip. */
  static final double FARTHEST_MM = 1e7;

  /** No feed, speed or dwell is this large; a number above it is a slip. */
  static final double LARGEST = 1e9;

  private static final double SECONDS_PER_MINUTE = 60;

  final Modes modes;
  final Frames frames;
  final Target target = new Target();
  private final Findings findings;
  private final Consumer<Executed> sink;
  private SourceSpan span = SourceSpan.NONE;
  private Block block = new Block();

  /** The last end of a path, used again as the next start. */
  private Position last = new Position(0, 0, 0);

  private OptionalDouble feedMm = OptionalDouble.empty();
  private OptionalDouble seconds = OptionalDouble.empty();
  private boolean rotaryTold;
  private boolean toolTold;

  Mover(Modes modes, Frames frames, Findings findings, Consumer<Executed> sink) {
    this.modes = modes;
    this.frames = frames;
    this.findings = findings;
    this.sink = sink;
  }

  /** Starts a line: its moves are reported at its place. */
  void line(Block newBlock) {
    block = newBlock;
    span = findings.line(newBlock);
    seconds = OptionalDouble.empty();
  }

  SourceSpan span() {
    return span;
  }

  void emit(Executed event) {
    sink.accept(event);
  }

  void other(String what) {
    sink.accept(new Executed.Other(what, span));
  }

  /** Takes the present place as the target, to be changed axis by axis. */
  void aimHere() {
    frames.startAt(target);
  }

  /** Sets the target from the axis words of the line. */
  void aimAtWords() {
    aimHere();
    int axes = block.hasRotary() ? Frames.AXES : Frames.LINEAR;
    for (int axis = 0; axis < axes; axis++) {
      char letter = Frames.LETTERS.charAt(axis);
      if (block.has(letter)) {
        double value = lengthOf(letter, axis);
        if (modes.incremental) {
          target.add(axis, value);
        } else {
          target.set(axis, value + frames.base(axis), frames.baseUnknown(axis));
        }
        checkRange(letter, target.to[axis]);
      }
    }
  }

  /** Sets the target from the axis words, which are machine coordinates (G53). */
  void aimAtMachineWords() {
    aimHere();
    for (int axis = 0; axis < Frames.AXES; axis++) {
      char letter = Frames.LETTERS.charAt(axis);
      if (block.has(letter)) {
        target.set(axis, lengthOf(letter, axis), 0);
        checkRange(letter, target.to[axis]);
      }
    }
  }

  /** The value of a word in millimetres, or degrees for a rotary axis. */
  double lengthOf(char letter, int axis) {
    double value = block.get(letter);
    return axis < Frames.LINEAR ? value * modes.unit.mm() : value;
  }

  private void checkRange(char letter, double value) {
    if (!(Math.abs(value) <= FARTHEST_MM)) {
      throw new Refusal(
          ProgramCode.OUT_OF_RANGE,
          block.at(letter),
          block.end(letter),
          letter + " leads to " + value + ", beyond 10 km",
          "");
    }
  }

  /** A T word alone loads nothing; what is in the spindle then cuts. */
  private void noteToolNotLoaded() {
    if (toolTold || modes.selectedTool <= 0 || modes.tool.isPresent()) {
      return;
    }
    toolTold = true;
    findings.warning(
        block,
        ProgramCode.TOOL_NOT_LOADED,
        "a feed move, and T" + modes.selectedTool + " was chosen, but no M6 has loaded a tool",
        "write M6 after T, or make sure that this tool is in the spindle");
  }

  /** Finds the feed of a feed move; warns of one that is not set. */
  void useFeed() {
    noteToolNotLoaded();
    if (modes.inverseTime) {
      inverseTime();
      return;
    }
    if (Double.isNaN(modes.feed)) {
      feedMm = OptionalDouble.empty();
      findings.warning(
          block, ProgramCode.FEED_NEVER_SET, "a feed move, but no F was given yet", "give F first");
      return;
    }
    if (modes.feed == 0) {
      findings.warning(
          block, ProgramCode.FEED_ZERO, 'F', "a feed move with feed 0: it never ends", "");
    }
    double mm = modes.feed * modes.unit.mm();
    if (feedMm.isEmpty() || feedMm.getAsDouble() != mm) {
      feedMm = OptionalDouble.of(mm);
    }
  }

  private void inverseTime() {
    feedMm = OptionalDouble.empty();
    if (!block.has('F')) {
      throw new Refusal(
          ProgramCode.FEED_ABSENT,
          block.from(),
          block.to(),
          "in inverse time mode (G93) each feed move needs an F",
          "");
    }
    double f = block.get('F');
    if (f == 0) {
      findings.warning(block, ProgramCode.FEED_ZERO, 'F', "F0 asks for a move without end", "");
    } else {
      seconds = OptionalDouble.of(SECONDS_PER_MINUTE / f);
    }
  }

  /** Moves straight to the target. */
  void straight(Kind kind) {
    Position from = drawnFrom();
    Position to = drawnTo();
    rotaryNote();
    move(kind, new Motion.Straight(from, to));
  }

  /** Moves straight to the target unless the tool is there already. */
  void straightUnlessThere(Kind kind) {
    for (int axis = 0; axis < Frames.AXES; axis++) {
      if (target.to[axis] != frames.at[axis] || target.unknown[axis] != frames.unknown[axis]) {
        straight(kind);
        return;
      }
    }
  }

  /** Moves along a path that ends at the target. */
  void move(Kind kind, Motion path) {
    firstMove();
    boolean feed = kind != Kind.RAPID;
    Executed.KnownAxes fromKnown = frames.known(frames.unknown);
    Executed.Move event =
        new Executed.Move(
            kind,
            path,
            fromKnown,
            frames.known(target.unknown),
            frames.machine(target),
            feed ? feedMm : OptionalDouble.empty(),
            feed ? seconds : OptionalDouble.empty(),
            modes.state(),
            span);
    frames.arrive(target);
    last = path.to();
    sink.accept(event);
  }

  private void firstMove() {
    if (!modes.unitSet) {
      modes.unitSet = true;
      findings.warning(
          block,
          ProgramCode.UNITS_NEVER_SET,
          "a move before G20 or G21; the unit is taken to be "
              + (modes.unit == LengthUnit.INCH ? "inches" : "millimetres"),
          "write G20 or G21 on the first lines");
    }
    if (!modes.distanceSet) {
      modes.distanceSet = true;
      findings.note(
          block, ProgramCode.DISTANCE_NEVER_SET, "a move before G90 or G91; taken as G90");
    }
  }

  private void rotaryNote() {
    if (rotaryTold) {
      return;
    }
    for (int axis = Frames.LINEAR; axis < Frames.AXES; axis++) {
      if (target.to[axis] != frames.at[axis]) {
        rotaryTold = true;
        findings.warning(
            block,
            ProgramCode.ROTARY_NOT_FOLLOWED,
            "axis "
                + Frames.LETTERS.charAt(axis)
                + " turns; what it does to the work is not followed",
            "");
        return;
      }
    }
  }

  Position drawnFrom() {
    double x = frames.drawnFrom(0);
    double y = frames.drawnFrom(1);
    double z = frames.drawnFrom(2);
    if (x == last.x() && y == last.y() && z == last.z()) {
      return last;
    }
    return new Position(x, y, z);
  }

  Position drawnTo() {
    return new Position(
        frames.drawnTo(0, target), frames.drawnTo(1, target), frames.drawnTo(2, target));
  }

  void dwell(double dwellSeconds) {
    sink.accept(new Executed.Dwell(dwellSeconds, modes.state(), span));
  }

  void spindle(Rotation rotation) {
    modes.rotation = rotation;
    modes.stateChanged();
    sink.accept(new Executed.SpindleChange(rotation, modes.rpm, span));
  }

  void torch(boolean on) {
    modes.torchOn = on;
    modes.stateChanged();
    sink.accept(new Executed.Torch(on, span));
  }
}
