package frieze.rs274;

import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Executed.Rotation;
import frieze.motion.Plane;
import java.util.Arrays;

/**
 * Carries out the canned cycles G81 to G89.
 *
 * <p>Source: NISTIR 6556, 3.5.16. Where it is silent: P, Q, I, J and K stay in force like R and Z
 * while the same cycle does; the level that G98 returns to is the one before the line; R is
 * compared with Z as levels; after G88 the axis stands at the bottom.
 */
final class Cycles {
  /** More strokes on one line than this are taken as a slip. */
  static final long MOST_STROKES = 1_000_000;

  private static final String STICKY = "RZYXPQIJK";
  private static final String OFFSETS = "IJK";

  private final ReadingRules rules;
  private final Mover mover;
  private final Frames frames;
  private final Modes modes;
  private final Findings findings;

  /** The numbers that stay in force, by letter; NaN where there is none. */
  private final double[] kept = new double[Block.LETTERS];

  private int cycle;
  private int drillAxis;
  private double retract;
  private double depth;
  private double clear;
  private long repeats;

  /** The unknown amount in the levels of R and of the depth. */
  private long levelUnknown;

  private boolean heightKnown;

  Cycles(ReadingRules rules, Mover mover, Findings findings) {
    this.rules = rules;
    this.mover = mover;
    this.frames = mover.frames;
    this.modes = mover.modes;
    this.findings = findings;
    Arrays.fill(kept, Double.NaN);
  }

  /** Drills as the words of a line say. */
  void run(Block block, int code) {
    cycle = code;
    drillAxis = modes.plane.normal();
    check(block);
    keep(block);
    levels(block);
    mover.useFeed();
    checkSpindle(block);
    checkStrokes(block);
    int oldPath = modes.path;
    boolean exact = oldPath != 0 && oldPath != 610;
    if (exact) {
      mover.other("path exact");
    }
    if (below(frames.at[drillAxis], retract)) {
      rapidTo(retract);
    }
    for (long i = 0; i < repeats; i++) {
      approach(block);
      stroke();
    }
    if (exact) {
      mover.other(oldPath == 640 ? "path continuous" : "path exact stop");
    }
  }

  private void check(Block block) {
    if ((block.present & LineCodes.bits("XYZ")) == 0) {
      throw Refusal.ofLine(block, ProgramCode.CYCLE_NO_AXIS, "the cycle needs X, Y or Z");
    }
    if (modes.compensation) {
      throw Refusal.ofLine(
          block, ProgramCode.COMPENSATION_ON, "no cycle while radius compensation is on");
    }
    if (modes.inverseTime) {
      throw Refusal.ofLine(
          block, ProgramCode.CYCLE_INVERSE_TIME, "no cycle in inverse time mode (G93)");
    }
    for (int axis = Frames.LINEAR; axis < Frames.AXES; axis++) {
      if (block.has(Frames.LETTERS.charAt(axis))) {
        char letter = Frames.LETTERS.charAt(axis);
        throw new Refusal(
            ProgramCode.CYCLE_ROTARY,
            block.at(letter),
            block.end(letter),
            "a rotary axis may not move in a cycle",
            "");
      }
    }
    repeats = 1;
    if (block.has('L')) {
      double l = block.get('L');
      repeats = Math.round(l);
      if (Math.abs(l - repeats) > LineScanner.WHOLE || repeats < 1) {
        throw new Refusal(
            ProgramCode.CYCLE_REPEATS,
            block.at('L'),
            block.end('L'),
            "L must be a whole number above 0, not " + l,
            "");
      }
    }
  }

  /** Takes the numbers that stay in force, and asks for those that must be there. */
  private void keep(Block block) {
    if (modes.motion != cycle) {
      Arrays.fill(kept, Double.NaN);
    }
    char depthLetter = Frames.LETTERS.charAt(drillAxis);
    for (int i = 0; i < STICKY.length(); i++) {
      char letter = STICKY.charAt(i);
      boolean axis = letter >= 'X';
      if (block.has(letter) && (!axis || letter == depthLetter)) {
        double value = block.get(letter);
        if (!(Math.abs(value) <= Mover.FARTHEST_MM)) {
          throw Refusal.ofWord(block, letter, ProgramCode.OUT_OF_RANGE, letter + " is too large");
        }
        kept[letter - 'A'] = value;
      }
    }
    if (Double.isNaN(number(depthLetter))) {
      throw Refusal.ofLine(
          block, ProgramCode.CYCLE_NO_DEPTH, "the cycle needs " + depthLetter + " for its depth");
    }
    require(block, "R");
    switch (cycle) {
      case 820, 860, 880, 890 -> {
        require(block, "P");
        if (number('P') < 0) {
          throw Refusal.ofWord(block, 'P', ProgramCode.DWELL_NEGATIVE, "the dwell is negative");
        }
      }
      case 830 -> {
        require(block, "Q");
        if (!(number('Q') > 0)) {
          throw Refusal.ofWord(block, 'Q', ProgramCode.CYCLE_PECK, "Q must be above 0");
        }
      }
      case 870 -> require(block, OFFSETS);
      default -> {}
    }
  }

  private double number(char letter) {
    return kept[letter - 'A'];
  }

  private double lengthMm(char letter) {
    return number(letter) * modes.unit.mm();
  }

  private void require(Block block, String letters) {
    for (int i = 0; i < letters.length(); i++) {
      char letter = letters.charAt(i);
      if (Double.isNaN(number(letter))) {
        throw Refusal.ofLine(
            block, ProgramCode.WORD_MISSING, LineCodes.name(cycle) + " needs " + letter);
      }
    }
  }

  private void levels(Block block) {
    char depthLetter = Frames.LETTERS.charAt(drillAxis);
    double now = frames.at[drillAxis];
    double base = frames.base(drillAxis);
    if (modes.incremental) {
      retract = now + lengthMm('R');
      depth = retract + lengthMm(depthLetter);
      levelUnknown = frames.unknown[drillAxis];
    } else {
      retract = base + lengthMm('R');
      depth = base + lengthMm(depthLetter);
      levelUnknown = frames.baseUnknown(drillAxis);
    }
    if (!(Math.abs(retract) <= Mover.FARTHEST_MM && Math.abs(depth) <= Mover.FARTHEST_MM)) {
      throw Refusal.ofLine(
          block, ProgramCode.OUT_OF_RANGE, "R or " + depthLetter + " is beyond 10 km");
    }
    if (retract < depth) {
      throw Refusal.ofLine(
          block,
          ProgramCode.CYCLE_RETRACT_BELOW_DEPTH,
          "R lies below " + depthLetter + ": the cycle would drill upward");
    }
    heightKnown = frames.unknown[drillAxis] == levelUnknown;
    if (!heightKnown) {
      findings.warning(
          block,
          ProgramCode.CYCLE_HEIGHT_UNKNOWN,
          "the height at the start of the cycle is not known; it is taken to be above R",
          "give " + depthLetter + " with G0 first");
    }
    clear = modes.retractToR || !heightKnown || now < retract ? retract : now;
  }

  private boolean below(double height, double level) {
    return heightKnown && height < level;
  }

  private void checkSpindle(Block block) {
    boolean turning = modes.rotation != Rotation.STOPPED;
    if (cycle == 840 && modes.rotation != Rotation.CLOCKWISE) {
      throw Refusal.ofLine(
          block, ProgramCode.CYCLE_SPINDLE, "G84 needs a spindle that turns clockwise");
    }
    if (cycle == 860 && !turning) {
      throw Refusal.ofLine(block, ProgramCode.CYCLE_SPINDLE, "G86 needs a turning spindle");
    }
    if ((cycle == 870 || cycle == 880) && !turning) {
      findings.warning(
          block,
          ProgramCode.CYCLE_SPINDLE,
          LineCodes.name(cycle) + " with the spindle standing still",
          "start the spindle first");
    }
  }

  private void checkStrokes(Block block) {
    double pecks = cycle == 830 ? Math.ceil((retract - depth) / lengthMm('Q')) : 1;
    if (!(repeats * Math.max(1, pecks) <= MOST_STROKES)) {
      throw Refusal.ofLine(
          block, ProgramCode.CYCLE_ENDLESS, "more than " + MOST_STROKES + " strokes on one line");
    }
  }

  /** Goes above the next hole, and down to R. */
  private void approach(Block block) {
    mover.aimHere();
    for (int axis = 0; axis < Frames.LINEAR; axis++) {
      char letter = Frames.LETTERS.charAt(axis);
      if (axis == drillAxis || !block.has(letter)) {
        continue;
      }
      double length = mover.lengthOf(letter, axis);
      if (modes.incremental) {
        mover.target.add(axis, length);
      } else {
        mover.target.set(axis, length + frames.base(axis), frames.baseUnknown(axis));
      }
      if (!(Math.abs(mover.target.to[axis]) <= Mover.FARTHEST_MM)) {
        throw Refusal.ofWord(
            block, letter, ProgramCode.OUT_OF_RANGE, letter + " leads beyond 10 km");
      }
    }
    mover.straightUnlessThere(Kind.RAPID);
    rapidTo(retract);
  }

  private void stroke() {
    switch (cycle) {
      case 810, 820 -> {
        feedTo(depth);
        dwell();
        rapidTo(clear);
      }
      case 830 -> peck();
      case 840 -> tap();
      case 860 -> {
        feedTo(depth);
        dwell();
        Rotation before = modes.rotation;
        mover.spindle(Rotation.STOPPED);
        rapidTo(clear);
        mover.spindle(before);
      }
      case 870 -> backBore();
      case 880 -> {
        feedTo(depth);
        dwell();
        Rotation before = modes.rotation;
        mover.spindle(Rotation.STOPPED);
        mover.emit(new Executed.Stop(false, modes.lastComment, mover.span()));
        mover.spindle(before);
      }
      case 850, 890 -> {
        feedTo(depth);
        dwell();
        feedTo(clear);
      }
      default -> throw new IllegalStateException("no cycle " + cycle);
    }
  }

  private void peck() {
    double q = lengthMm('Q');
    double bottom = retract;
    double backOff = rules.meaning().peckBackOffMm();
    for (long i = 1; bottom > depth; i++) {
      if (i > 1) {
        rapidTo(Math.min(clear, bottom + backOff));
      }
      bottom = Math.max(depth, retract - i * q);
      feedTo(bottom);
      rapidTo(clear);
    }
  }

  private void tap() {
    mover.other("spindle synchronised");
    feedTo(depth);
    mover.spindle(Rotation.STOPPED);
    mover.spindle(Rotation.COUNTER_CLOCKWISE);
    feedTo(clear);
    mover.other("spindle free");
    mover.spindle(Rotation.STOPPED);
    mover.spindle(Rotation.CLOCKWISE);
  }

  private void backBore() {
    Rotation before = modes.rotation;
    double x = frames.at[modes.plane.first()];
    double y = frames.at[modes.plane.second()];
    char level = OFFSETS.charAt(drillAxis);
    double upper =
        modes.incremental ? depth + lengthMm(level) : frames.base(drillAxis) + lengthMm(level);
    aside(x, y, true);
    orient();
    rapidTo(depth);
    aside(x, y, false);
    mover.spindle(before);
    feedTo(upper);
    feedTo(depth);
    orient();
    aside(x, y, true);
    rapidTo(clear);
    aside(x, y, false);
    mover.spindle(before);
  }

  private void orient() {
    modes.rotation = Rotation.STOPPED;
    modes.stateChanged();
    mover.other("spindle oriented");
  }

  /** Moves to the side by I, J and K, or back over the hole. */
  private void aside(double first, double second, boolean away) {
    Plane plane = modes.plane;
    mover.aimHere();
    double du = away ? lengthMm(OFFSETS.charAt(plane.first())) : 0;
    double dv = away ? lengthMm(OFFSETS.charAt(plane.second())) : 0;
    mover.target.set(plane.first(), first + du, frames.unknown[plane.first()]);
    mover.target.set(plane.second(), second + dv, frames.unknown[plane.second()]);
    mover.straightUnlessThere(Kind.RAPID);
  }

  private void rapidTo(double level) {
    along(level, Kind.RAPID);
  }

  private void feedTo(double level) {
    along(level, Kind.FEED);
  }

  private void along(double level, Kind kind) {
    mover.aimHere();
    mover.target.set(drillAxis, level, levelUnknown);
    mover.straightUnlessThere(kind);
  }

  /** Waits at the bottom, in the cycles that do. */
  private void dwell() {
    if (cycle == 810 || cycle == 850) {
      return;
    }
    mover.dwell(number('P') * rules.meaning().dwell().seconds());
  }
}
