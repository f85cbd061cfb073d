package frieze.rs274;

import frieze.rs274.ReadingRules.Codes;
import frieze.rs274.ReadingRules.DwellWord;
import frieze.rs274.ReadingRules.Grammar;
import frieze.rs274.ReadingRules.Meaning;
import frieze.rs274.ReadingRules.Paths;
import frieze.rs274.ReadingRules.ProbeEnd;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;

/** Makes rules that differ from others in some points. Start with {@link ReadingRules#but}. */
public final class RulesBuilder {
  private int maxLineLength;
  private int lineNumberDigits;
  private boolean semicolonComments;
  private boolean programNumbers;
  private boolean percentRules;
  private boolean endRequired;
  private boolean blockDelete;
  private String extraLetters;
  private Codes codes;
  private DwellWord dwell;
  private double arcToleranceMm;
  private double arcToleranceInch;
  private double peckBackOffMm;
  private ProbeEnd probeEnd;
  private String axes;
  private boolean pathTolerance;
  private Paths paths;
  private Start start;

  RulesBuilder(ReadingRules rules) {
    Grammar grammar = rules.grammar();
    maxLineLength = grammar.maxLineLength();
    lineNumberDigits = grammar.lineNumberDigits();
    semicolonComments = grammar.semicolonComments();
    programNumbers = grammar.programNumbers();
    percentRules = grammar.percentRules();
    endRequired = grammar.endRequired();
    blockDelete = grammar.blockDelete();
    extraLetters = grammar.extraLetters();
    codes = rules.codes();
    Meaning meaning = rules.meaning();
    dwell = meaning.dwell();
    arcToleranceMm = meaning.arcToleranceMm();
    arcToleranceInch = meaning.arcToleranceInch();
    peckBackOffMm = meaning.peckBackOffMm();
    probeEnd = meaning.probeEnd();
    axes = meaning.axes();
    pathTolerance = meaning.pathTolerance();
    paths = rules.paths();
    start = rules.start();
  }

  /** Sets the longest line, in characters; 0 allows as many as the reader holds. */
  public RulesBuilder maxLineLength(int characters) {
    maxLineLength = characters;
    return this;
  }

  public RulesBuilder lineNumberDigits(int most) {
    lineNumberDigits = most;
    return this;
  }

  public RulesBuilder semicolonComments(boolean allowed) {
    semicolonComments = allowed;
    return this;
  }

  /** Allows lines that start with O or {@code :} and a number. */
  public RulesBuilder programNumbers(boolean allowed) {
    programNumbers = allowed;
    return this;
  }

  /** Tells whether {@code %} lines must come in pairs. */
  public RulesBuilder percentRules(boolean applied) {
    percentRules = applied;
    return this;
  }

  /** Tells whether a program must say where it ends. */
  public RulesBuilder endRequired(boolean required) {
    endRequired = required;
    return this;
  }

  public RulesBuilder blockDelete(boolean on) {
    blockDelete = on;
    return this;
  }

  public RulesBuilder extraLetters(String letters) {
    extraLetters = letters;
    return this;
  }

  /** Allows G codes that the report has not; they move nothing. */
  public RulesBuilder extraG(double... numbers) {
    codes =
        new Codes(
            with(codes.extraG(), tenths(numbers)),
            codes.extraM(),
            codes.missingG(),
            codes.missingM(),
            codes.torchOn(),
            codes.torchOff());
    return this;
  }

  /** Allows M codes that the report has not; they move nothing. */
  public RulesBuilder extraM(int... numbers) {
    codes =
        new Codes(
            codes.extraG(),
            with(codes.extraM(), numbers),
            codes.missingG(),
            codes.missingM(),
            codes.torchOn(),
            codes.torchOff());
    return this;
  }

  /** Takes away G codes of the report. */
  public RulesBuilder missingG(double... numbers) {
    codes =
        new Codes(
            codes.extraG(),
            codes.extraM(),
            with(codes.missingG(), tenths(numbers)),
            codes.missingM(),
            codes.torchOn(),
            codes.torchOff());
    return this;
  }

  /** Takes away M codes of the report. */
  public RulesBuilder missingM(int... numbers) {
    codes =
        new Codes(
            codes.extraG(),
            codes.extraM(),
            codes.missingG(),
            with(codes.missingM(), numbers),
            codes.torchOn(),
            codes.torchOff());
    return this;
  }

  /** Takes away G2 and G3. */
  public RulesBuilder noArcs() {
    return missingG(2, 3);
  }

  /** Takes away the canned cycles G81 to G89. */
  public RulesBuilder noCycles() {
    return missingG(81, 82, 83, 84, 85, 86, 87, 88, 89);
  }

  /** Names the M codes that light a torch and put it out, such as 3 and 5 on a plasma table. */
  public RulesBuilder torch(int on, int off) {
    codes =
        new Codes(
            codes.extraG(),
            codes.extraM(),
            codes.missingG(),
            codes.missingM(),
            with(codes.torchOn(), on),
            with(codes.torchOff(), off));
    return this;
  }

  public RulesBuilder dwell(DwellWord word) {
    dwell = word;
    return this;
  }

  /** Sets by how much the radii of an arc may differ: in G21, and in G20 in inches. */
  public RulesBuilder arcTolerance(double mm, double inch) {
    arcToleranceMm = mm;
    arcToleranceInch = inch;
    return this;
  }

  public RulesBuilder peckBackOffMm(double mm) {
    peckBackOffMm = mm;
    return this;
  }

  public RulesBuilder probeEnd(ProbeEnd end) {
    probeEnd = end;
    return this;
  }

  public RulesBuilder axes(String letters) {
    axes = letters;
    return this;
  }

  /** Allows a P word with G64. */
  public RulesBuilder pathTolerance(boolean allowed) {
    pathTolerance = allowed;
    return this;
  }

  /** Tells how the machine moves between the points that it is told. */
  public RulesBuilder paths(Paths habits) {
    paths = habits;
    return this;
  }

  public RulesBuilder start(Start known) {
    start = known;
    return this;
  }

  public ReadingRules build() {
    return new ReadingRules(
        new Grammar(
            maxLineLength,
            lineNumberDigits,
            semicolonComments,
            programNumbers,
            percentRules,
            endRequired,
            blockDelete,
            extraLetters),
        codes,
        new Meaning(
            dwell, arcToleranceMm, arcToleranceInch, peckBackOffMm, probeEnd, axes, pathTolerance),
        paths,
        start);
  }

  private static int[] tenths(double[] numbers) {
    int[] tenths = new int[numbers.length];
    for (int i = 0; i < tenths.length; i++) {
      tenths[i] = (int) Math.round(numbers[i] * 10);
    }
    return tenths;
  }

  private static Set<Integer> with(Set<Integer> old, int... more) {
    Set<Integer> all = new TreeSet<>(old);
    IntStream.of(more).forEach(all::add);
    return all;
  }
}
