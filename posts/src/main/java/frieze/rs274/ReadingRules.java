package frieze.rs274;

import java.util.OptionalDouble;
import java.util.Set;

/**
 * How a controller understands a program: its dialect as a reader sees it, and what is known of the
 * machine when the program starts.
 *
 * <p>{@link #REPORT} is the language of NISTIR 6556 on a machine that nothing is known of. Other
 * rules are made from it: {@code ReadingRules.REPORT.but().semicolonComments(true).build()}.
 *
 * @param grammar what a line may look like
 * @param codes which codes there are
 * @param meaning what they mean where controllers differ
 * @param paths how the machine moves between the points that it is told
 * @param start what is known when the program starts
 */
public record ReadingRules(
    Grammar grammar, Codes codes, Meaning meaning, Paths paths, Start start) {
  /** The report NISTIR 6556, with nothing known of the machine. */
  public static final ReadingRules REPORT =
      new ReadingRules(
          new Grammar(256, 5, false, false, true, true, false, ""),
          new Codes(Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of()),
          new Meaning(DwellWord.P_SECONDS, 0.002, 0.0002, 0.1, ProbeEnd.UNKNOWN, "XYZABC", false),
          new Paths(Rapids.UNSAID, OptionalDouble.empty()),
          Start.UNKNOWN);

  /**
   * What a line may look like.
   *
   * @param maxLineLength in characters; 0 allows as many as the reader holds, 65,536
   * @param lineNumberDigits the most digits after N
   * @param semicolonComments whether {@code ;} starts a comment that goes to the line's end
   * @param programNumbers whether a line may start with O or {@code :} and a number
   * @param percentRules whether {@code %} lines must come in pairs
   * @param endRequired whether a program must end with M2, M30 or a second {@code %} line
   * @param blockDelete whether the operator's switch is on that passes over lines with {@code /}
   * @param extraLetters letters that the report has not, for the words of extra codes
   */
  public record Grammar(
      int maxLineLength,
      int lineNumberDigits,
      boolean semicolonComments,
      boolean programNumbers,
      boolean percentRules,
      boolean endRequired,
      boolean blockDelete,
      String extraLetters) {
    public Grammar {
      if (maxLineLength < 0) {
        throw new IllegalArgumentException(
            "maxLineLength must be >= 0 but was " + maxLineLength + " characters");
      }
      if (lineNumberDigits < 1) {
        throw new IllegalArgumentException(
            "lineNumberDigits must be >= 1 but was " + lineNumberDigits);
      }
      for (int i = 0; i < extraLetters.length(); i++) {
        char c = extraLetters.charAt(i);
        if (c < 'A' || c > 'Z') {
          throw new IllegalArgumentException(
              "extraLetters must be capitals but were " + extraLetters);
        }
      }
    }
  }

  /**
   * Which codes there are. G codes are given times ten: 382 is G38.2.
   *
   * @param extraG codes that the report has not; they move nothing and take any spare words
   * @param extraM the same for M codes
   * @param missingG codes of the report that this controller has not
   * @param missingM the same for M codes
   * @param torchOn M codes that light a torch, whatever else the report makes of them
   * @param torchOff M codes that put it out
   */
  public record Codes(
      Set<Integer> extraG,
      Set<Integer> extraM,
      Set<Integer> missingG,
      Set<Integer> missingM,
      Set<Integer> torchOn,
      Set<Integer> torchOff) {
    public Codes {
      extraG = Set.copyOf(extraG);
      extraM = Set.copyOf(extraM);
      missingG = Set.copyOf(missingG);
      missingM = Set.copyOf(missingM);
      torchOn = Set.copyOf(torchOn);
      torchOff = Set.copyOf(torchOff);
    }
  }

  /**
   * What codes mean where controllers differ.
   *
   * @param dwell which word of G4 tells the time, and in what unit
   * @param arcToleranceMm by how much the radii at an arc's start and end may differ, in G21
   * @param arcToleranceInch the same in G20, in inches
   * @param peckBackOffMm how far above the bottom reached G83 returns in rapid
   * @param probeEnd where a probe move is taken to end
   * @param axes the letters of the axes that the machine has
   * @param pathTolerance whether G64 may have a P word
   */
  public record Meaning(
      DwellWord dwell,
      double arcToleranceMm,
      double arcToleranceInch,
      double peckBackOffMm,
      ProbeEnd probeEnd,
      String axes,
      boolean pathTolerance) {
    public Meaning {
      requirePositive("arcToleranceMm", arcToleranceMm, "mm");
      requirePositive("arcToleranceInch", arcToleranceInch, "in");
      requirePositive("peckBackOffMm", peckBackOffMm, "mm");
    }

    private static void requirePositive(String name, double value, String unit) {
      if (!(value > 0) || !Double.isFinite(value)) {
        throw new IllegalArgumentException(name + " must be > 0 but was " + value + " " + unit);
      }
    }
  }

  /**
   * How the machine moves between the points that it is told.
   *
   * @param rapids whether the axes of a rapid arrive together
   * @param cornersMm how far the tool may pass from a corner of its path in continuous mode (G64);
   *     empty if nobody said. The report, 2.1.2.16, says only that corners may be rounded slightly.
   */
  public record Paths(Rapids rapids, OptionalDouble cornersMm) {
    public Paths {
      if (cornersMm.isPresent() && !(cornersMm.getAsDouble() >= 0)) {
        throw new IllegalArgumentException(
            "cornersMm must be >= 0 but was " + cornersMm.getAsDouble() + " mm");
      }
    }
  }

  /** How the axes of a rapid move. */
  public enum Rapids {
    /** Along the straight line, as in the report (3.5.1); but nobody has said so. */
    UNSAID,
    /** Along the straight line, by the controller's manual. */
    STRAIGHT,
    /** Each axis as fast as it can until it is there, so that the path has bends. */
    EACH_AXIS
  }

  /** Which word of a dwell tells the time. */
  public enum DwellWord {
    P_SECONDS('P', 1),
    P_MILLISECONDS('P', 0.001),
    X_SECONDS('X', 1);

    private final char letter;
    private final double seconds;

    DwellWord(char letter, double seconds) {
      this.letter = letter;
      this.seconds = seconds;
    }

    char letter() {
      return letter;
    }

    /** How many seconds one unit of the word is. */
    double seconds() {
      return seconds;
    }
  }

  /** Where a probe move is taken to end. */
  public enum ProbeEnd {
    /** Somewhere on the way: the probed axes are unknown afterwards. */
    UNKNOWN,
    /** At the programmed point, as if the probe had tripped just there. */
    PROGRAMMED_POINT
  }

  /** Starts from these rules to make others. */
  public RulesBuilder but() {
    return new RulesBuilder(this);
  }
}
