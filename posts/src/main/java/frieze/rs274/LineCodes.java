package frieze.rs274;

import java.util.Arrays;

/**
 * Sorts the codes of a line into their modal groups and finds out what uses the axis words.
 *
 * <p>G codes are times ten. Source: NISTIR 6556, tables 4, 5 and 7, and 3.4.
 */
final class LineCodes {
  static final int NONE = -1;

  private static final int G_GROUPS = 14;
  private static final int M_GROUPS = 10;
  private static final int MOST_M = 4;
  private static final byte[] G_GROUP = new byte[1000];
  private static final byte[] M_GROUP = new byte[100];

  /** The axis letters, as bits. */
  static final int AXES = bits("XYZABC");

  private static final int ALWAYS = bits("FST");
  private static final int ARC_WORDS = bits("RIJK");
  private static final int CYCLE_WORDS = bits("RL");

  static {
    Arrays.fill(G_GROUP, (byte) NONE);
    Arrays.fill(M_GROUP, (byte) NONE);
    group(0, 40, 100, 280, 300, 530, 920, 921, 922, 923);
    group(1, 0, 10, 20, 30, 382, 800, 810, 820, 830, 840, 850, 860, 870, 880, 890);
    group(2, 170, 180, 190);
    group(3, 900, 910);
    group(5, 930, 940);
    group(6, 200, 210);
    group(7, 400, 410, 420);
    group(8, 430, 490);
    group(10, 980, 990);
    group(12, 540, 550, 560, 570, 580, 590, 591, 592, 593);
    group(13, 610, 611, 640);
    for (int m : new int[] {0, 1, 2, 30, 60}) {
      M_GROUP[m] = 4;
    }
    M_GROUP[6] = 6;
    M_GROUP[3] = 7;
    M_GROUP[4] = 7;
    M_GROUP[5] = 7;
    M_GROUP[7] = 8;
    M_GROUP[8] = 8;
    M_GROUP[9] = 8;
    M_GROUP[48] = 9;
    M_GROUP[49] = 9;
  }

  private final ReadingRules rules;
  private final int[] g = new int[G_GROUPS];
  private final int[] gWord = new int[G_GROUPS];
  private final int[] m = new int[M_GROUPS];

  /** The groups that have a code, as bits. */
  private int gFilled;

  private int mFilled;
  private final int missingAxes;
  private boolean extraG;
  private boolean extraM;
  private boolean strangeG;
  private boolean strangeM;
  private int torchWord;
  private boolean torchOn;
  private int motion;

  LineCodes(ReadingRules rules) {
    this.rules = rules;
    this.missingAxes = AXES & ~bits(rules.meaning().axes());
    Arrays.fill(g, NONE);
    Arrays.fill(m, NONE);
  }

  private static void group(int group, int... codes) {
    for (int code : codes) {
      G_GROUP[code] = (byte) group;
    }
  }

  static int bits(String letters) {
    int bits = 0;
    for (int i = 0; i < letters.length(); i++) {
      char c = letters.charAt(i);
      bits |= 1 << (c - 'A');
    }
    return bits;
  }

  /** The G code of a group on the line, or {@link #NONE}. */
  int g(int group) {
    return g[group];
  }

  /** The M code of a group on the line, or {@link #NONE}. */
  int m(int group) {
    return m[group];
  }

  /** The motion code that the line carries out, written or in force; {@link #NONE} for none. */
  int motion() {
    return motion;
  }

  boolean hasTorch() {
    return torchWord != NONE;
  }

  boolean torchOn() {
    return torchOn;
  }

  boolean hasExtra() {
    return extraG || extraM;
  }

  /** Tells whether there are codes that neither the report nor the dialect has. */
  boolean hasStrange() {
    return strangeG || strangeM;
  }

  /** Tells whether the axis words may belong to a code that nobody knows. */
  boolean axisWordsLost(Block block) {
    return strangeG && (block.present & AXES) != 0;
  }

  boolean isStrangeG(int code) {
    boolean known = code >= 0 && code < G_GROUP.length && G_GROUP[code] != NONE;
    return !known && !rules.codes().extraG().contains(code);
  }

  boolean isStrangeM(int code) {
    ReadingRules.Codes codes = rules.codes();
    boolean known = code >= 0 && code < M_GROUP.length && M_GROUP[code] != NONE;
    boolean torch = codes.torchOn().contains(code) || codes.torchOff().contains(code);
    return !known && !torch && !codes.extraM().contains(code);
  }

  /** The index of the G word of a group. */
  int word(int group) {
    return gWord[group];
  }

  /** Sorts the codes into their groups. */
  void sort(Block block) {
    forget();
    for (int i = 0; i < block.gCount; i++) {
      addG(block, i);
    }
    if (block.mCount > 0) {
      if (block.mCount > MOST_M) {
        throw new Refusal(
            ProgramCode.TOO_MANY_M,
            block.mAt[MOST_M],
            block.mEnd[MOST_M],
            "a line may have " + MOST_M + " M words, not " + block.mCount,
            "");
      }
      for (int i = 0; i < block.mCount; i++) {
        addM(block, i);
      }
    }
  }

  /** Finds the motion of the sorted line, and checks that each word is used. */
  void settle(Block block, Modes modes) {
    if (axisWordsLost(block)) {
      motion = NONE;
      return;
    }
    findMotion(block, modes);
    checkWords(block);
  }

  /** Empties the groups that the last line has filled. */
  private void forget() {
    for (; gFilled != 0; gFilled &= gFilled - 1) {
      g[Integer.numberOfTrailingZeros(gFilled)] = NONE;
    }
    for (; mFilled != 0; mFilled &= mFilled - 1) {
      m[Integer.numberOfTrailingZeros(mFilled)] = NONE;
    }
    extraG = false;
    extraM = false;
    strangeG = false;
    strangeM = false;
    torchWord = NONE;
  }

  private void addG(Block block, int i) {
    int code = block.g[i];
    int group = code >= 0 && code < G_GROUP.length ? G_GROUP[code] : NONE;
    if (group == NONE) {
      if (rules.codes().extraG().contains(code)) {
        extraG = true;
      } else {
        strangeG = true;
      }
      return;
    }
    if (!rules.codes().missingG().isEmpty() && rules.codes().missingG().contains(code)) {
      throw Refusal.ofG(
          block, i, ProgramCode.NOT_IN_DIALECT, "this controller has no " + name(code));
    }
    if (g[group] != NONE) {
      throw Refusal.ofG(
          block,
          i,
          ProgramCode.GROUP_G,
          name(code) + " and " + name(g[group]) + " are of one modal group");
    }
    g[group] = code;
    gFilled |= 1 << group;
    gWord[group] = i;
  }

  private void addM(Block block, int i) {
    int code = block.m[i];
    ReadingRules.Codes codes = rules.codes();
    boolean on = codes.torchOn().contains(code);
    if (on || codes.torchOff().contains(code)) {
      if (torchWord != NONE) {
        throw Refusal.ofM(block, i, ProgramCode.GROUP_M, "the torch is switched twice");
      }
      torchWord = i;
      torchOn = on;
      return;
    }
    int group = code >= 0 && code < M_GROUP.length ? M_GROUP[code] : NONE;
    if (group == NONE) {
      if (codes.extraM().contains(code)) {
        extraM = true;
      } else {
        strangeM = true;
      }
      return;
    }
    if (codes.missingM().contains(code)) {
      throw Refusal.ofM(block, i, ProgramCode.NOT_IN_DIALECT, "this controller has no M" + code);
    }
    if (m[group] != NONE) {
      throw Refusal.ofM(
          block, i, ProgramCode.GROUP_M, "M" + code + " and M" + m[group] + " are of one group");
    }
    m[group] = code;
    mFilled |= 1 << group;
  }

  private void findMotion(Block block, Modes modes) {
    int axisWords = block.present & AXES;
    if (g[0] == 40 && rules.meaning().dwell().letter() == 'X') {
      axisWords &= ~bits("X");
    }
    boolean claimed = g[0] == 100 || g[0] == 280 || g[0] == 300 || g[0] == 920;
    int written = g[1];
    if (claimed) {
      if (written != NONE && written != Modes.G80) {
        throw Refusal.ofG(
            block,
            gWord[1],
            ProgramCode.AXIS_WORDS_CLAIMED_TWICE,
            name(written) + " and " + name(g[0]) + " both use the axis words");
      }
      motion = written;
    } else if (written != NONE) {
      motion = written;
    } else {
      motion = axisWords != 0 && !extraG ? modes.motion : NONE;
    }
    if (motion == Modes.G80 && axisWords != 0 && !claimed && g[0] != 530) {
      char letter = (char) ('A' + Integer.numberOfTrailingZeros(axisWords));
      throw new Refusal(
          ProgramCode.AXIS_WORDS_WITHOUT_MOTION,
          block.at(letter),
          block.end(letter),
          "axis words while G80 is in force",
          "write the motion code");
    }
    if (g[0] == 530) {
      checkMachineMove(block, axisWords);
    }
    if (g[0] == 40 && motion != NONE && rules.meaning().dwell().letter() == 'X') {
      throw Refusal.ofG(
          block,
          gWord[0],
          ProgramCode.AXIS_WORDS_CLAIMED_TWICE,
          "X belongs to the dwell and to the motion");
    }
  }

  private void checkMachineMove(Block block, int axisWords) {
    if (axisWords == 0) {
      throw Refusal.ofG(block, gWord[0], ProgramCode.NO_AXIS_WORD, "G53 without an axis word");
    }
    if (motion != Modes.G0 && motion != Modes.G1) {
      throw Refusal.ofG(block, gWord[0], ProgramCode.MACHINE_MOVE_MODE, "G53 needs G0 or G1");
    }
  }

  private void checkWords(Block block) {
    int present = block.present;
    if ((present & missingAxes) != 0) {
      throw noSuchAxis(block);
    }
    if (hasExtra() || hasStrange()) {
      return;
    }
    int spare = present & ~(ALWAYS | AXES);
    if (spare != 0) {
      spare &= ~(usedByMotion() | usedByOthers());
    }
    if (spare != 0) {
      char letter = (char) ('A' + Integer.numberOfTrailingZeros(spare));
      throw new Refusal(
          ProgramCode.WORD_UNUSED,
          block.at(letter),
          block.end(letter),
          "no code on this line uses " + letter,
          "");
    }
  }

  private Refusal noSuchAxis(Block block) {
    int axis = 0;
    while ((block.present & missingAxes & bits(Frames.LETTERS.substring(axis, axis + 1))) == 0) {
      axis++;
    }
    char letter = Frames.LETTERS.charAt(axis);
    return new Refusal(
        ProgramCode.NO_SUCH_AXIS,
        block.at(letter),
        block.end(letter),
        "the machine has no axis " + letter,
        "");
  }

  private int usedByMotion() {
    return switch (motion) {
      case Modes.G2, Modes.G3 -> ARC_WORDS;
      case 810, 840, 850 -> CYCLE_WORDS;
      case 820, 860, 880, 890 -> CYCLE_WORDS | bits("P");
      case 830 -> CYCLE_WORDS | bits("Q");
      case 870 -> CYCLE_WORDS | bits("IJK");
      default -> 0;
    };
  }

  private int usedByOthers() {
    int used = 0;
    if (g[0] == 40) {
      used |= 1 << (rules.meaning().dwell().letter() - 'A');
    } else if (g[0] == 100) {
      used |= bits("LP");
    }
    if (g[7] == 410 || g[7] == 420) {
      used |= bits("D");
    }
    if (g[8] == 430) {
      used |= bits("H");
    }
    if (g[13] == 640 && rules.meaning().pathTolerance()) {
      used |= bits("P");
    }
    return used;
  }

  /** Writes a code times ten as a program would. */
  static String name(int code) {
    return code % 10 == 0 ? "G" + code / 10 : "G" + code / 10 + "." + code % 10;
  }
}
