package frieze.rs274;

import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Executed.Rotation;
import frieze.motion.Plane;
import frieze.rs274.ReadingRules.ProbeEnd;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * Carries out a line: all its codes, in the order of the report's table 8.
 *
 * <p>Settings of parameters take effect before everything else; G38.2, which the table leaves out,
 * has the place of the other motions.
 */
final class Executor {
  private static final double PROBE_NEAREST_MM = 0.254;
  private static final String MESSAGE = "MSG,";

  private final ReadingRules rules;
  private final Parameters parameters;
  private final Findings findings;
  private final LineCodes codes;
  private final Modes modes;
  private final Frames frames;
  private final Mover mover;
  private final Arcs arcs;
  private final Cycles cycles;
  private final Offsets offsets;
  private boolean ended;
  private long probes;

  Executor(ReadingRules rules, Parameters parameters, Findings findings, Consumer<Executed> sink) {
    this.rules = rules;
    this.parameters = parameters;
    this.findings = findings;
    this.codes = new LineCodes(rules);
    this.modes = new Modes(rules.start());
    parameters.unit(modes.unit);
    this.frames = new Frames(rules.start(), parameters);
    this.mover = new Mover(modes, frames, findings, sink);
    this.arcs = new Arcs(rules, mover, findings);
    this.cycles = new Cycles(rules, mover, findings);
    this.offsets = new Offsets(rules, parameters, mover, findings);
  }

  Modes modes() {
    return modes;
  }

  Frames frames() {
    return frames;
  }

  /** Tells whether M2 or M30 was carried out. */
  boolean ended() {
    return ended;
  }

  /**
   * Carries out a line.
   *
   * @throws Refusal at the first thing that is wrong; what comes before it in the order of doing is
   *     done
   */
  void run(Block block) {
    mover.line(block);
    comment(block);
    if (block.isEmpty()) {
      return;
    }
    codes.sort(block, modes);
    for (int i = 0; i < block.setCount; i++) {
      parameters.set(block.setNumber[i], block.setValue[i]);
    }
    if (codes.hasExtra()) {
      extras(block);
    }
    feedAndSpeed(block);
    toolAndSpindle(block);
    if (codes.g(0) == 40) {
      dwell(block);
    }
    if (block.gCount > 0) {
      settings(block);
    }
    nonModal(block);
    motion(block);
    if (codes.m(4) != LineCodes.NONE) {
      stop();
    }
  }

  private void comment(Block block) {
    String comment = block.comment;
    if (comment == null) {
      return;
    }
    String packed = comment.stripLeading();
    String letters = packed.replace(" ", "").replace("\t", "").toUpperCase(Locale.ROOT);
    modes.lastComment =
        letters.startsWith(MESSAGE)
            ? packed.substring(packed.indexOf(',') + 1).strip()
            : packed.strip();
  }

  private void extras(Block block) {
    for (int i = 0; i < block.gCount; i++) {
      if (rules.codes().extraG().contains(block.g[i])) {
        mover.other(LineCodes.name(block.g[i]).toLowerCase(Locale.ROOT));
      }
    }
    for (int i = 0; i < block.mCount; i++) {
      if (rules.codes().extraM().contains(block.m[i])) {
        mover.other("m" + block.m[i]);
      }
    }
  }

  private void feedAndSpeed(Block block) {
    int mode = codes.g(5);
    if (mode != LineCodes.NONE && modes.inverseTime != (mode == 930)) {
      modes.inverseTime = mode == 930;
      modes.feed = Double.NaN;
    }
    if (block.has('F')) {
      if (block.get('F') < 0) {
        throw word(block, 'F', ProgramCode.FEED_NEGATIVE, "the feed is negative");
      }
      checkSize(block, 'F');
      if (!modes.inverseTime) {
        modes.feed = block.get('F');
      }
    }
    if (block.has('S')) {
      double s = block.get('S');
      if (s < 0) {
        throw word(block, 'S', ProgramCode.SPEED_NEGATIVE, "the spindle speed is negative");
      }
      checkSize(block, 'S');
      boolean changed = modes.rpm.isEmpty() || modes.rpm.getAsDouble() != s;
      modes.rpm = OptionalDouble.of(s);
      modes.stateChanged();
      if (changed && modes.rotation != Rotation.STOPPED && codes.m(7) == LineCodes.NONE) {
        mover.spindle(modes.rotation);
      }
    }
  }

  private void toolAndSpindle(Block block) {
    if (block.has('T')) {
      modes.selectedTool = offsets.slot(block, 'T');
    }
    if (block.mCount == 0) {
      return;
    }
    if (codes.m(6) != LineCodes.NONE) {
      changeTool(block);
    }
    if (codes.hasTorch()) {
      mover.torch(codes.torchOn());
    }
    switch (codes.m(7)) {
      case 3, 4 -> {
        if (modes.rpm.isEmpty() || modes.rpm.getAsDouble() == 0) {
          findings.warning(
              block,
              ProgramCode.SPEED_ABSENT,
              "the spindle is started, but its speed is " + (modes.rpm.isEmpty() ? "not set" : "0"),
              "write S");
        }
        mover.spindle(codes.m(7) == 3 ? Rotation.CLOCKWISE : Rotation.COUNTER_CLOCKWISE);
      }
      case 5 -> mover.spindle(Rotation.STOPPED);
      default -> {}
    }
    coolant(codes.m(8));
    switch (codes.m(9)) {
      case 48 -> mover.other("overrides on");
      case 49 -> mover.other("overrides off");
      default -> {}
    }
  }

  private void changeTool(Block block) {
    if (modes.rotation != Rotation.STOPPED) {
      mover.spindle(Rotation.STOPPED);
    }
    if (modes.selectedTool < 0) {
      findings.warning(
          block, ProgramCode.NO_TOOL_SELECTED, "M6, but no T word selected a tool", "write T");
    } else {
      modes.tool = Optional.of(modes.selectedTool);
    }
    modes.stateChanged();
    mover.emit(new Executed.ToolChange(modes.tool, mover.span()));
  }

  private void coolant(int code) {
    switch (code) {
      case 7 -> {
        modes.mist = true;
        mover.other("coolant mist on");
      }
      case 8 -> {
        modes.flood = true;
        mover.other("coolant flood on");
      }
      case 9 -> {
        modes.mist = false;
        modes.flood = false;
        mover.other("coolant off");
      }
      default -> {}
    }
  }

  private void dwell(Block block) {
    ReadingRules.DwellWord word = rules.meaning().dwell();
    if (!block.has(word.letter())) {
      throw new Refusal(
          ProgramCode.WORD_MISSING, block.from(), block.to(), "G4 needs " + word.letter(), "");
    }
    double value = block.get(word.letter());
    if (value < 0) {
      throw word(block, word.letter(), ProgramCode.DWELL_NEGATIVE, "the dwell is negative");
    }
    checkSize(block, word.letter());
    mover.dwell(value * word.seconds());
  }

  private void settings(Block block) {
    if (codes.g(2) != LineCodes.NONE) {
      plane(block);
    }
    if (codes.g(6) != LineCodes.NONE) {
      unit(block);
    }
    if (codes.g(7) != LineCodes.NONE) {
      compensation(block);
    }
    if (codes.g(8) != LineCodes.NONE) {
      offsets.toolLength(block, codes.g(8));
    }
    if (codes.g(12) != LineCodes.NONE) {
      offsets.selectSystem(block, codes.g(12));
    }
    if (codes.g(13) != LineCodes.NONE) {
      modes.path = codes.g(13);
      mover.other(
          modes.path == 610
              ? "path exact"
              : modes.path == 611 ? "path exact stop" : "path continuous");
    }
    if (codes.g(3) != LineCodes.NONE) {
      modes.incremental = codes.g(3) == 910;
      modes.distanceSet = true;
    }
    if (codes.g(10) != LineCodes.NONE) {
      modes.retractToR = codes.g(10) == 990;
    }
  }

  private void plane(Block block) {
    Plane plane = codes.g(2) == 170 ? Plane.XY : codes.g(2) == 180 ? Plane.ZX : Plane.YZ;
    if (modes.compensation && plane != Plane.XY) {
      throw LineCodes.at(
          ProgramCode.COMPENSATION_ON,
          block,
          codes.word(2),
          "no other plane while radius compensation is on");
    }
    modes.plane = plane;
  }

  private void unit(Block block) {
    LengthUnit unit = codes.g(6) == 200 ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    if (modes.compensation && unit != modes.unit) {
      throw LineCodes.at(
          ProgramCode.COMPENSATION_ON,
          block,
          codes.word(6),
          "no change of units while radius compensation is on");
    }
    if (modes.unitSet && unit != modes.unit) {
      findings.warning(
          block,
          ProgramCode.UNITS_CHANGED,
          "the units change in the program; F keeps its number",
          "write a program in one unit");
    }
    modes.unit = unit;
    modes.unitSet = true;
    parameters.unit(unit);
  }

  private void compensation(Block block) {
    if (codes.g(7) == 400) {
      modes.compensation = false;
      return;
    }
    String name = LineCodes.name(codes.g(7));
    if (block.has('D')) {
      offsets.slot(block, 'D');
    }
    if (modes.plane != Plane.XY) {
      throw LineCodes.at(
          ProgramCode.COMPENSATION_PLANE, block, codes.word(7), name + " needs the XY plane (G17)");
    }
    if (modes.compensation) {
      throw LineCodes.at(
          ProgramCode.COMPENSATION_AGAIN, block, codes.word(7), name + ": write G40 first");
    }
    modes.compensation = true;
    findings.error(
        block,
        LineCodes.at(
            ProgramCode.COMPENSATION_NOT_FOLLOWED,
            block,
            codes.word(7),
            name + " moves the path aside by the tool's radius; the path shown is not moved"));
  }

  private void nonModal(Block block) {
    switch (codes.g(0)) {
      case 100 -> offsets.setOrigin(block);
      case 280 -> offsets.home(block, Parameters.HOME_28);
      case 300 -> offsets.home(block, Parameters.HOME_30);
      case 530 -> {
        if (modes.compensation) {
          throw LineCodes.at(
              ProgramCode.COMPENSATION_ON,
              block,
              codes.word(0),
              "no G53 while radius compensation is on");
        }
      }
      case 920, 921, 922, 923 -> offsets.shift(block, codes.g(0));
      default -> {}
    }
  }

  private void motion(Block block) {
    int motion = codes.motion();
    switch (motion) {
      case LineCodes.NONE, Modes.G80 -> {}
      case Modes.G0, Modes.G1 -> straight(block, motion);
      case Modes.G2, Modes.G3 -> arcs.turn(block, motion == Modes.G2);
      case Modes.G38_2 -> probe(block);
      default -> cycles.run(block, motion);
    }
    if (motion != LineCodes.NONE) {
      modes.motion = motion;
    }
  }

  private void straight(Block block, int motion) {
    if ((block.present & LineCodes.AXES) == 0) {
      throw LineCodes.at(
          ProgramCode.NO_AXIS_WORD,
          block,
          codes.word(1),
          LineCodes.name(motion) + " without an axis word");
    }
    if (codes.g(0) == 530) {
      mover.aimAtMachineWords();
    } else {
      mover.aimAtWords();
    }
    if (motion == Modes.G1) {
      mover.useFeed();
    }
    mover.straight(motion == Modes.G0 ? Kind.RAPID : Kind.FEED);
  }

  private void probe(Block block) {
    if ((block.present & LineCodes.bits("XYZ")) == 0) {
      throw refuse(block, ProgramCode.NO_AXIS_WORD, "G38.2 needs X, Y or Z");
    }
    if (modes.compensation) {
      throw refuse(block, ProgramCode.COMPENSATION_ON, "no probing while compensation is on");
    }
    if (modes.inverseTime) {
      throw refuse(block, ProgramCode.PROBE_INVERSE_TIME, "no probing in inverse time mode (G93)");
    }
    mover.aimAtWords();
    double square = 0;
    boolean known = true;
    for (int axis = 0; axis < Frames.AXES; axis++) {
      double way = mover.target.to[axis] - frames.at[axis];
      if (axis < Frames.LINEAR) {
        square += way * way;
        known &= frames.wayKnown(axis, mover.target);
      } else if (way != 0) {
        throw refuse(block, ProgramCode.PROBE_ROTARY, "a rotary axis may not move in a probing");
      }
    }
    if (known && Math.sqrt(square) < PROBE_NEAREST_MM) {
      throw refuse(
          block,
          ProgramCode.PROBE_TOO_NEAR,
          "the point is nearer than 0.254 mm (0.01 in) to the start");
    }
    mover.useFeed();
    boolean[] probed = new boolean[Frames.LINEAR];
    for (int axis = 0; axis < Frames.LINEAR; axis++) {
      probed[axis] =
          mover.target.to[axis] != frames.at[axis] || !frames.wayKnown(axis, mover.target);
    }
    mover.straight(Kind.PROBE);
    afterProbe(probed);
  }

  /** Says where the probe tripped, or that nobody knows. */
  private void afterProbe(boolean[] probed) {
    for (int axis = 0; axis < Frames.LINEAR; axis++) {
      if (rules.meaning().probeEnd() == ProbeEnd.UNKNOWN && probed[axis]) {
        frames.lose(axis, Unknowns.of(Unknowns.Kind.PROBE, probes * Frames.AXES + axis));
      }
      parameters.store(
          Parameters.PROBE + axis,
          frames.current(axis),
          frames.unknown[axis] - frames.baseUnknown(axis));
    }
    probes++;
  }

  private void stop() {
    int code = codes.m(4);
    if (code == 2 || code == 30) {
      if (code == 30) {
        mover.other("pallet change");
      }
      end();
      return;
    }
    if (code == 60) {
      mover.other("pallet change");
    }
    mover.emit(new Executed.Stop(code == 1, modes.lastComment, mover.span()));
    modes.lastComment = "";
  }

  /** Ends the program as M2 does, and sets back what it sets back. */
  private void end() {
    ended = true;
    if (modes.torchOn) {
      mover.torch(false);
    }
    if (modes.rotation != Rotation.STOPPED) {
      mover.spindle(Rotation.STOPPED);
    }
    if (modes.mist || modes.flood) {
      coolant(9);
    }
    mover.emit(new Executed.End(mover.span()));
  }

  private static void checkSize(Block block, char letter) {
    if (!(block.get(letter) <= Mover.LARGEST)) {
      throw word(block, letter, ProgramCode.OUT_OF_RANGE, letter + " is above " + Mover.LARGEST);
    }
  }

  private static Refusal refuse(Block block, ProgramCode code, String message) {
    return new Refusal(code, block.from(), block.to(), message, "");
  }

  private static Refusal word(Block block, char letter, ProgramCode code, String message) {
    return new Refusal(code, block.at(letter), block.end(letter), message, "");
  }
}
