package frieze.rs274;

import frieze.motion.Executed;
import frieze.motion.Executed.Rotation;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Carries out what is not a motion: F, S, T, M6, the spindle, the torch, coolant, overrides, G4.
 *
 * <p>Source: NISTIR 6556, 3.5.4, 3.6 and 3.7.
 */
final class Auxiliaries {
  private final ReadingRules rules;
  private final Mover mover;
  private final Modes modes;
  private final Offsets offsets;
  private final Findings findings;

  Auxiliaries(ReadingRules rules, Mover mover, Offsets offsets, Findings findings) {
    this.rules = rules;
    this.mover = mover;
    this.modes = mover.modes;
    this.offsets = offsets;
    this.findings = findings;
  }

  /** F and S. */
  void feedAndSpeed(Block block, LineCodes codes) {
    int mode = codes.g(5);
    if (mode != LineCodes.NONE && modes.inverseTime != (mode == 930)) {
      modes.inverseTime = mode == 930;
      modes.feed = Double.NaN;
    }
    if (block.has('F')) {
      if (block.get('F') < 0) {
        throw Refusal.ofWord(block, 'F', ProgramCode.FEED_NEGATIVE, "the feed is negative");
      }
      checkSize(block, 'F');
      if (!modes.inverseTime) {
        modes.feed = block.get('F');
      }
    }
    if (block.has('S')) {
      double s = block.get('S');
      if (s < 0) {
        throw Refusal.ofWord(
            block, 'S', ProgramCode.SPEED_NEGATIVE, "the spindle speed is negative");
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

  /** T, M3 to M9, M48, M49. */
  void toolAndSpindle(Block block, LineCodes codes) {
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

  /** G4. */
  void dwell(Block block) {
    ReadingRules.DwellWord word = rules.meaning().dwell();
    if (!block.has(word.letter())) {
      throw new Refusal(
          ProgramCode.WORD_MISSING, block.from(), block.to(), "G4 needs " + word.letter(), "");
    }
    double value = block.get(word.letter());
    if (value < 0) {
      throw Refusal.ofWord(
          block, word.letter(), ProgramCode.DWELL_NEGATIVE, "the dwell is negative");
    }
    checkSize(block, word.letter());
    mover.dwell(value * word.seconds());
  }

  private static void checkSize(Block block, char letter) {
    if (!(block.get(letter) <= Mover.LARGEST)) {
      throw Refusal.ofWord(
          block, letter, ProgramCode.OUT_OF_RANGE, letter + " is above " + Mover.LARGEST);
    }
  }

  /** Stops what still runs, as M2 does, and ends the program. */
  void end() {
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
}
