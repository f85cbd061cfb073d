package frieze.rs274;

import frieze.diagnostic.Code;

/**
 * Everything that the reader and interpreter can say about a program.
 *
 * <p>{@code docs/reference/messages/rs274.md} explains each.
 */
public enum ProgramCode implements Code {
  NOT_PLAIN_TEXT("RS-001", "The file is not plain text"),
  PERCENT_UNCLOSED("RS-002", "The file opens with a % line and has no second one"),
  PERCENT_UNEXPECTED("RS-003", "A % line in a file that did not open with one"),
  NO_END("RS-004", "The program has no end"),
  BAD_CHARACTER("RS-005", "A character that has no place here"),
  LINE_TOO_LONG("RS-006", "The line is too long"),
  LINE_NUMBER("RS-007", "The line number is wrong"),
  NUMBER("RS-008", "Not a number"),
  SIGN("RS-009", "A sign before something that is not a number"),
  COMMENT_IN_WORD("RS-010", "A comment inside a word"),
  NOT_WHOLE("RS-011", "The value must be whole"),
  PARAMETER_NUMBER("RS-012", "No such parameter"),
  EXPRESSION("RS-013", "The expression is wrong"),
  COMMENT_OPEN("RS-014", "The comment is not closed on its line"),
  COMMENT_NESTED("RS-015", "A ( inside a comment"),
  ARITHMETIC("RS-016", "The arithmetic has no result"),
  TOO_DEEP("RS-017", "Brackets are nested too deeply"),
  OUT_OF_RANGE("RS-018", "The value is too large to mean anything"),
  PARAMETER_UNKNOWN("RS-019", "Only the machine knows this parameter"),
  WORD_REPEATED("RS-020", "The same letter twice on a line"),
  NOT_A_WORD("RS-021", "No word starts with this letter"),
  AFTER_END("RS-022", "Text after the end of the program"),
  EMPTY("RS-023", "The file is empty"),

  GROUP_G("RS-030", "Two G words of one modal group"),
  GROUP_M("RS-031", "Two M words of one modal group"),
  TOO_MANY_M("RS-032", "More than four M words"),
  AXIS_WORDS_CLAIMED_TWICE("RS-033", "Two codes that both use the axis words"),
  WORD_MISSING("RS-034", "A word that the code needs is missing"),
  WORD_UNUSED("RS-035", "No code on the line uses this word"),
  UNKNOWN_G("RS-036", "Unknown G code"),
  UNKNOWN_M("RS-037", "Unknown M code"),
  NOT_IN_DIALECT("RS-038", "The controller has no such code"),
  NO_AXIS_WORD("RS-039", "The code needs an axis word"),
  AXIS_WORDS_WITHOUT_MOTION("RS-040", "Axis words while no motion is in force"),
  NO_SUCH_AXIS("RS-041", "The machine has no such axis"),
  SUBPROGRAM("RS-042", "Subprograms and loops are not followed"),
  ARC_CENTRES("RS-043", "How arc centres are counted"),

  FEED_NEGATIVE("RS-050", "The feed is negative"),
  FEED_ABSENT("RS-051", "No F on a line in inverse time mode"),
  FEED_NEVER_SET("RS-052", "A feed move before any F word"),
  FEED_ZERO("RS-053", "The feed is 0"),
  SPEED_NEGATIVE("RS-054", "The spindle speed is negative"),
  SPEED_ABSENT("RS-055", "The spindle is started without a speed"),
  SLOT("RS-056", "The tool slot is wrong"),
  DWELL_NEGATIVE("RS-057", "The dwell is negative"),
  NO_TOOL_SELECTED("RS-058", "M6 with no tool selected"),
  SYSTEM_NUMBER("RS-059", "No such coordinate system"),
  PROBE_TOO_NEAR("RS-060", "The probe point is too near"),
  PROBE_INVERSE_TIME("RS-061", "Probing in inverse time mode"),
  PROBE_ROTARY("RS-062", "Probing with a rotary axis"),
  MACHINE_MOVE_MODE("RS-063", "G53 without G0 or G1"),
  HOME_UNKNOWN("RS-064", "Where home is was not said"),

  ARC_NO_END("RS-070", "The arc has no end point in its plane"),
  ARC_NO_CENTRE("RS-071", "The arc has no centre"),
  ARC_RADII_DIFFER("RS-072", "The arc starts and ends at different radii"),
  ARC_END_IS_START("RS-073", "A radius arc that ends where it starts"),
  ARC_RADIUS("RS-074", "The radius does not fit the arc"),
  ARC_R_AND_CENTRE("RS-075", "Both a radius and a centre"),
  ARC_START_UNKNOWN("RS-076", "The arc starts at an unknown place"),
  ARC_UNSURE("RS-077", "A radius arc that is sensitive to rounding"),
  ARC_NEARLY_FULL("RS-078", "Start and end of the arc nearly coincide"),

  CYCLE_NO_AXIS("RS-080", "The cycle has no X, Y or Z"),
  CYCLE_REPEATS("RS-081", "The number of repeats is wrong"),
  CYCLE_ROTARY("RS-082", "A rotary axis moves in a cycle"),
  CYCLE_INVERSE_TIME("RS-083", "A cycle in inverse time mode"),
  CYCLE_NO_DEPTH("RS-084", "The cycle has no depth"),
  CYCLE_RETRACT_BELOW_DEPTH("RS-085", "The cycle retracts to below its depth"),
  CYCLE_PECK("RS-086", "The peck must be above 0"),
  CYCLE_SPINDLE("RS-087", "The spindle does not turn as the cycle needs"),
  CYCLE_ENDLESS("RS-088", "The cycle would take too many strokes"),
  CYCLE_HEIGHT_UNKNOWN("RS-089", "The cycle starts at an unknown height"),

  COMPENSATION_PLANE("RS-090", "Radius compensation outside the XY plane"),
  COMPENSATION_ON("RS-091", "Not allowed while radius compensation is on"),
  COMPENSATION_AGAIN("RS-092", "Radius compensation is on already"),
  COMPENSATION_NOT_FOLLOWED("RS-093", "Radius compensation is not followed"),

  UNITS_NEVER_SET("RS-100", "A move before G20 or G21"),
  UNITS_CHANGED("RS-101", "The units change"),
  DISTANCE_NEVER_SET("RS-102", "A move before G90 or G91"),
  ROTARY_NOT_FOLLOWED("RS-103", "Rotary axes are not followed"),
  TOOL_NOT_LOADED("RS-104", "A tool is chosen but not loaded");

  private final String id;
  private final String title;

  ProgramCode(String id, String title) {
    this.id = id;
    this.title = title;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title() {
    return title;
  }
}
