package frieze.rs274;

import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Plane;
import java.util.Locale;
import java.util.function.Consumer;

/**
 * Carries out a line: all its codes, in the order of the report's table 8.
 *
 * <p>Settings of parameters take effect before everything else; G38.2, which the table leaves out,
 * has the place of the other motions.
 */
final class Executor {
  /** Lines of comments are told as one up to here. */
  private static final int LONG_ENOUGH = 500;

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
  private final Auxiliaries auxiliaries;
  private final Probing probing;
  private final Strangers strangers;
  private boolean ended;

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
    this.auxiliaries = new Auxiliaries(rules, mover, offsets, findings);
    this.probing = new Probing(rules, parameters, mover);
    this.strangers = new Strangers(findings);
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
    codes.sort(block);
    if (codes.hasStrange()) {
      strangers.tell(block, codes);
    }
    codes.settle(block, modes);
    for (int i = 0; i < block.setCount; i++) {
      parameters.set(block.setNumber[i], block.setValue[i]);
    }
    if (codes.hasExtra()) {
      extras(block);
    }
    auxiliaries.feedAndSpeed(block, codes);
    auxiliaries.toolAndSpindle(block, codes);
    boolean lost = codes.axisWordsLost(block);
    if (codes.g(0) == 40 && !lost) {
      auxiliaries.dwell(block);
    }
    if (block.gCount > 0) {
      settings(block);
    }
    if (lost) {
      lose(block);
    } else {
      nonModal(block);
      motion(block);
    }
    if (codes.m(4) != LineCodes.NONE) {
      stop();
    }
  }

  /** Nobody knows where an axis goes that is named beside a code that nobody knows. */
  private void lose(Block block) {
    for (int axis = 0; axis < Frames.LINEAR; axis++) {
      if (block.has(Frames.LETTERS.charAt(axis))) {
        long number = (long) block.line() * Frames.AXES + axis;
        frames.lose(axis, Unknowns.of(Unknowns.Kind.STRANGE_CODE, number));
      }
    }
  }

  private void comment(Block block) {
    String comment = block.comment;
    if (comment == null) {
      return;
    }
    String packed = comment.stripLeading();
    String letters = packed.replace(" ", "").replace("\t", "").toUpperCase(Locale.ROOT);
    String text =
        letters.startsWith(MESSAGE)
            ? packed.substring(packed.indexOf(',') + 1).strip()
            : packed.strip();
    boolean goesOn =
        block.isEmpty()
            && modes.commentLine == block.line() - 1
            && modes.lastComment.length() < LONG_ENOUGH;
    modes.lastComment = goesOn ? modes.lastComment + " " + text : text;
    modes.commentLine = block.isEmpty() ? block.line() : Modes.NO_LINE;
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
      throw Refusal.ofG(
          block,
          codes.word(2),
          ProgramCode.COMPENSATION_ON,
          "no other plane while radius compensation is on");
    }
    modes.plane = plane;
  }

  private void unit(Block block) {
    LengthUnit unit = codes.g(6) == 200 ? LengthUnit.INCH : LengthUnit.MILLIMETRE;
    if (modes.compensation && unit != modes.unit) {
      throw Refusal.ofG(
          block,
          codes.word(6),
          ProgramCode.COMPENSATION_ON,
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
      throw Refusal.ofG(
          block, codes.word(7), ProgramCode.COMPENSATION_PLANE, name + " needs the XY plane (G17)");
    }
    if (modes.compensation) {
      throw Refusal.ofG(
          block, codes.word(7), ProgramCode.COMPENSATION_AGAIN, name + ": write G40 first");
    }
    modes.compensation = true;
    findings.error(
        block,
        Refusal.ofG(
            block,
            codes.word(7),
            ProgramCode.COMPENSATION_NOT_FOLLOWED,
            name + " moves the path aside by the tool's radius; the path shown is not moved"));
  }

  private void nonModal(Block block) {
    switch (codes.g(0)) {
      case 100 -> offsets.setOrigin(block);
      case 280 -> offsets.home(block, Parameters.HOME_28);
      case 300 -> offsets.home(block, Parameters.HOME_30);
      case 530 -> {
        if (modes.compensation) {
          throw Refusal.ofG(
              block,
              codes.word(0),
              ProgramCode.COMPENSATION_ON,
              "no G53 while radius compensation is on");
        }
      }
      case 920, 921, 922, 923 -> offsets.shift(block, codes.g(0));
      default -> {}
    }
  }

  private void motion(Block block) {
    int motion = codes.motion();
    boolean cycle = Modes.isCycle(motion);
    if (motion != LineCodes.NONE && !cycle) {
      // In force from here on, even if this line is refused: the next one may count on it.
      modes.motion = motion;
    }
    switch (motion) {
      case LineCodes.NONE, Modes.G80 -> {}
      case Modes.G0, Modes.G1 -> straight(block, motion);
      case Modes.G2, Modes.G3 -> arcs.turn(block, motion == Modes.G2);
      case Modes.G38_2 -> probing.probe(block);
      default -> cycles.run(block, motion);
    }
    if (cycle) {
      modes.motion = motion;
    }
  }

  private void straight(Block block, int motion) {
    if ((block.present & LineCodes.AXES) == 0) {
      throw Refusal.ofG(
          block,
          codes.word(1),
          ProgramCode.NO_AXIS_WORD,
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

  private void stop() {
    int code = codes.m(4);
    if (code == 2 || code == 30) {
      if (code == 30) {
        mover.other("pallet change");
      }
      ended = true;
      auxiliaries.end();
      return;
    }
    if (code == 60) {
      mover.other("pallet change");
    }
    mover.emit(new Executed.Stop(code == 1, modes.lastComment, mover.span()));
    modes.lastComment = "";
  }
}
