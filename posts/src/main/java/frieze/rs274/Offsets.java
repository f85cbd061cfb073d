package frieze.rs274;

import frieze.motion.Executed.Kind;

/**
 * Carries out what moves origins or asks for stored places: G10, G28, G30, G43, G49, G54 .. G59.3,
 * G92 .. G92.3.
 *
 * <p>Stored lengths keep their place when the unit changes; their numbers follow. Source: NISTIR
 * 6556, 3.5.5, 3.5.8, 3.5.11, 3.5.13, 3.5.18.
 */
final class Offsets {
  private final Start start;
  private final Parameters parameters;
  private final Mover mover;
  private final Frames frames;
  private final Modes modes;
  private final Findings findings;

  Offsets(ReadingRules rules, Parameters parameters, Mover mover, Findings findings) {
    this.start = rules.start();
    this.parameters = parameters;
    this.mover = mover;
    this.frames = mover.frames;
    this.modes = mover.modes;
    this.findings = findings;
  }

  /** G10: says where a coordinate system lies. */
  void setOrigin(Block block) {
    for (char letter : new char[] {'L', 'P'}) {
      if (!block.has(letter)) {
        throw Refusal.ofLine(block, ProgramCode.WORD_MISSING, "G10 needs " + letter);
      }
    }
    if (Math.abs(block.get('L') - 2) > LineScanner.WHOLE) {
      throw Refusal.ofWord(block, 'L', ProgramCode.SYSTEM_NUMBER, "G10 needs L2");
    }
    double p = block.get('P');
    int system = (int) Math.rint(p);
    if (Math.abs(p - system) > LineScanner.WHOLE || system < 1 || system > Frames.SYSTEMS) {
      throw Refusal.ofWord(block, 'P', ProgramCode.SYSTEM_NUMBER, "P must be 1 to 9, not " + p);
    }
    for (int axis = 0; axis < Frames.AXES; axis++) {
      char letter = Frames.LETTERS.charAt(axis);
      if (block.has(letter)) {
        parameters.store(
            Parameters.origin(system, axis),
            ranged(block, letter, mover.lengthOf(letter, axis)),
            0);
      }
    }
    if (system == modes.system) {
      select(block, system);
    }
    mover.other("origin of system " + system);
  }

  /** G54 to G59.3. */
  void selectSystem(Block block, int code) {
    if (modes.compensation) {
      throw Refusal.ofLine(
          block,
          ProgramCode.COMPENSATION_ON,
          "no change of coordinate system while radius compensation is on");
    }
    modes.system = code <= 590 ? code / 10 - 53 : 6 + code - 590;
    parameters.set(Parameters.SYSTEM, modes.system);
    select(block, modes.system);
    mover.other("system " + modes.system);
  }

  /** G92, G92.1, G92.2, G92.3. */
  void shift(Block block, int code) {
    if (modes.compensation) {
      throw Refusal.ofLine(
          block,
          ProgramCode.COMPENSATION_ON,
          "no change of offsets while radius compensation is on");
    }
    switch (code) {
      case 920 -> {
        if ((block.present & LineCodes.AXES) == 0) {
          throw Refusal.ofLine(block, ProgramCode.NO_AXIS_WORD, "G92 needs an axis word");
        }
        for (int axis = 0; axis < Frames.AXES; axis++) {
          char letter = Frames.LETTERS.charAt(axis);
          if (block.has(letter)) {
            frames.shiftTo(axis, ranged(block, letter, mover.lengthOf(letter, axis)));
          }
        }
        frames.rememberShift();
      }
      case 921 -> {
        frames.clearShift();
        frames.rememberShift();
      }
      case 922 -> frames.clearShift();
      default -> {
        checkStored(block, Parameters.G92);
        frames.recallShift();
      }
    }
    mover.other(frames.shifted() ? "offset g92" : "offset g92 cancelled");
  }

  /** G43 and G49. */
  void toolLength(Block block, int code) {
    if (code == 490) {
      frames.toolLength(0, 0);
      return;
    }
    if (!block.has('H')) {
      throw Refusal.ofLine(block, ProgramCode.WORD_MISSING, "G43 needs H");
    }
    int slot = slot(block, 'H');
    Double length = slot == 0 ? Double.valueOf(0) : start.toolLengthsMm().get(slot);
    if (length == null) {
      frames.toolLength(0, Unknowns.of(Unknowns.Kind.TOOL, slot));
    } else {
      frames.toolLength(length, 0);
    }
  }

  /** Reads a word that names a tool slot. */
  int slot(Block block, char letter) {
    double value = block.get(letter);
    double near = Math.rint(value);
    if (Math.abs(value - near) > LineScanner.WHOLE || near < 0 || near > Integer.MAX_VALUE) {
      throw Refusal.ofWord(
          block, letter, ProgramCode.SLOT, letter + " must be a whole number from 0, not " + value);
    }
    int slot = (int) near;
    if (start.toolSlots().isPresent() && slot > start.toolSlots().getAsInt()) {
      throw Refusal.ofWord(
          block,
          letter,
          ProgramCode.SLOT,
          "slot " + slot + ": the machine has " + start.toolSlots().getAsInt());
    }
    return slot;
  }

  /** G28 and G30: goes home, over a point on the way if one is given. */
  void home(Block block, int first) {
    if (modes.compensation) {
      throw Refusal.ofLine(
          block, ProgramCode.COMPENSATION_ON, "no G28 or G30 while radius compensation is on");
    }
    if ((block.present & LineCodes.AXES) != 0) {
      mover.aimAtWords();
      mover.straight(Kind.RAPID);
    }
    checkStored(block, first);
    mover.aimHere();
    boolean known = true;
    for (int axis = 0; axis < Frames.AXES; axis++) {
      long unknown = parameters.unknown(first + axis);
      known &= unknown == 0;
      mover.target.set(axis, parameters.stored(first + axis), unknown);
    }
    if (!known) {
      findings.note(
          block, ProgramCode.HOME_UNKNOWN, "the machine goes home; where that is was not said");
    }
    mover.straight(Kind.RAPID);
  }

  private void select(Block block, int system) {
    checkStored(block, Parameters.origin(system, 0));
    frames.selectSystem(system);
  }

  /** Refuses stored places that a program has set beyond all sense. */
  private void checkStored(Block block, int first) {
    for (int axis = 0; axis < Frames.AXES; axis++) {
      double value = parameters.stored(first + axis);
      if (!(Math.abs(value) <= Mover.FARTHEST_MM)) {
        throw Refusal.ofLine(
            block, ProgramCode.OUT_OF_RANGE, "parameter #" + (first + axis) + " is beyond 10 km");
      }
    }
  }

  private static double ranged(Block block, char letter, double value) {
    if (!(Math.abs(value) <= Mover.FARTHEST_MM)) {
      throw Refusal.ofWord(block, letter, ProgramCode.OUT_OF_RANGE, letter + " is beyond 10 km");
    }
    return value;
  }
}
