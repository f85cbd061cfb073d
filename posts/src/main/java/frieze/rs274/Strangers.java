package frieze.rs274;

import frieze.diagnostic.Severity;

/**
 * Says of codes that neither the report nor the dialect has what becomes of their lines.
 *
 * <p>The words that are known are carried out, so that a unit or a feed on such a line stays in
 * force. Axis words beside an unknown G code are not: they may be its own.
 */
final class Strangers {
  /** G90.1 and G91.1, which say how arc centres are counted. */
  private static final int CENTRES_ABSOLUTE = 901;

  private static final int CENTRES_FROM_START = 911;

  /** Calls of macros. */
  private static final int MACRO = 650;

  private static final int MACRO_AT_EACH_MOVE = 660;
  private static final int CALL = 98;
  private static final int RETURN = 99;

  /** What a program that cannot be followed should do instead. */
  static final String WRITE_OUT =
      "write its lines out where they are run; nothing after this line can be trusted";

  private final Findings findings;

  Strangers(Findings findings) {
    this.findings = findings;
  }

  /** Tells of each such code of a line. */
  void tell(Block block, LineCodes codes) {
    boolean lost = codes.axisWordsLost(block);
    for (int i = 0; i < block.gCount; i++) {
      if (codes.isStrangeG(block.g[i])) {
        tellG(block, i, lost);
      }
    }
    for (int i = 0; i < block.mCount; i++) {
      if (codes.isStrangeM(block.m[i])) {
        tellM(block, i);
      }
    }
  }

  private void tellG(Block block, int i, boolean lost) {
    String name = LineCodes.name(block.g[i]);
    switch (block.g[i]) {
      case CENTRES_FROM_START ->
          findings.add(
              Severity.WARNING,
              ProgramCode.ARC_CENTRES,
              findings.span(block, block.gAt[i], block.gEnd[i]),
              name + " is not in the report; centres are counted from the start of the arc anyway",
              "leave it out if your controller does not know it");
      case CENTRES_ABSOLUTE ->
          error(
              block,
              ofG(block, i, ProgramCode.ARC_CENTRES, "centres given as coordinates"),
              "give each centre from the start of its arc (G91.1); no arc after this line can be"
                  + " trusted");
      case MACRO, MACRO_AT_EACH_MOVE ->
          error(block, ofG(block, i, ProgramCode.SUBPROGRAM, "calls of macros"), WRITE_OUT);
      default ->
          error(
              block,
              Refusal.ofG(block, i, ProgramCode.UNKNOWN_G, name + " is not known"),
              lost
                  ? "its axis words are not followed, so where the tool stands from here on is not"
                      + " known; nothing after this line can be trusted"
                  : "the other words of the line are carried out; what this one changes is not"
                      + " known, so nothing after it can be trusted");
    }
  }

  private static Refusal ofG(Block block, int i, ProgramCode code, String what) {
    return Refusal.ofG(
        block, i, code, LineCodes.name(block.g[i]) + ": " + what + " are not followed");
  }

  private void tellM(Block block, int i) {
    int code = block.m[i];
    if (code == CALL || code == RETURN) {
      String what = code == CALL ? "M98: subprograms are" : "M99: the way back or around is";
      error(
          block, Refusal.ofM(block, i, ProgramCode.SUBPROGRAM, what + " not followed"), WRITE_OUT);
    } else {
      error(
          block,
          Refusal.ofM(block, i, ProgramCode.UNKNOWN_M, "M" + code + " is not known"),
          "the other words of the line are carried out; what this one does to the machine is not"
              + " known");
    }
  }

  private void error(Block block, Refusal refusal, String hint) {
    findings.error(block, refusal.withHint(hint));
  }
}
