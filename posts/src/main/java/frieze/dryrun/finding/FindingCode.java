package frieze.dryrun.finding;

import frieze.diagnostic.Code;
import frieze.diagnostic.Severity;

/**
 * Every kind of thing that a dry run objects to, with its severity and what to do about it.
 *
 * <p>Errors block writing. An id is never used again for something else.
 */
public enum FindingCode implements Code {
  // Place
  BEYOND_TRAVEL(
      "DRY-001",
      Severity.ERROR,
      "a move goes beyond the machine's travel",
      "move the zero, turn the stock, or cut in steps"),
  CUT_OFF_STOCK(
      "DRY-002",
      Severity.ERROR,
      "a cut lies beside the stock",
      "check the zero, the units and the size of the stock"),
  OVER_STOCK_EDGE(
      "DRY-003",
      Severity.WARNING,
      "the tool runs over the edge of the stock",
      "make sure that nothing is clamped there, or use a larger stock"),
  INTO_SPOILBOARD(
      "DRY-004",
      Severity.ERROR,
      "a cut goes deeper than the spoilboard may be cut",
      "check the Z zero, the thickness of the stock and the depth"),
  NOTHING_MOVES(
      "DRY-019",
      Severity.WARNING,
      "a program moves nothing",
      "check that the file is whole, and that it is the right one"),
  TRAVEL_IN_STOCK(
      "DRY-005",
      Severity.ERROR,
      "a rapid travels sideways below the top of the stock",
      "raise the tool before it travels"),
  LOW_TRAVEL(
      "DRY-006",
      Severity.WARNING,
      "a rapid travels sideways below the clearance height",
      "raise the tool to the clearance height before it travels"),
  RAPID_INTO_MATERIAL(
      "DRY-007",
      Severity.ERROR,
      "a rapid runs into standing material",
      "feed into the material, or raise the tool first"),
  TRAVEL_AT_UNKNOWN_HEIGHT(
      "DRY-008",
      Severity.WARNING,
      "the first travel runs at whatever height the tool was left",
      "raise the tool before the first travel"),
  CUTS_NOTHING(
      "DRY-009",
      Severity.WARNING,
      "a program feeds sideways above the stock and cuts nothing there",
      "check the sign of Z and where zero is"),

  // Spindle and feed
  SPINDLE_OFF(
      "DRY-010",
      Severity.ERROR,
      "a cut with the spindle off",
      "start the spindle before the first cut (M3), or say that it is switched by hand"),
  NO_STOP_FOR_SPINDLE(
      "DRY-011",
      Severity.ERROR,
      "no stop to switch on the spindle by hand before a cut",
      "stop with a message (M0) before the first plunge of each tool"),
  NO_FEED(
      "DRY-012",
      Severity.ERROR,
      "a feed move without a feed rate",
      "give an F word before the first feed move"),
  FEED_BEYOND_MACHINE(
      "DRY-013",
      Severity.ERROR,
      "a feed that the machine cannot follow",
      "lower the feed, or check its units"),
  FEED_BEYOND_TOOL(
      "DRY-014", Severity.ERROR, "a feed above the tool's limit", "lower the feed of this tool"),
  SPEED_BEYOND_TOOL(
      "DRY-015",
      Severity.ERROR,
      "a spindle speed above the tool's limit",
      "lower the speed: a bit that turns too fast can break"),
  SPEED_BEYOND_MACHINE(
      "DRY-016",
      Severity.ERROR,
      "a spindle speed that the machine does not have",
      "choose a speed within the spindle's range"),
  SPINDLE_BACKWARDS(
      "DRY-017",
      Severity.ERROR,
      "a cut with the spindle turning backwards",
      "use M3: router bits cut clockwise as seen from above"),
  NO_SPEED(
      "DRY-018",
      Severity.WARNING,
      "the spindle starts without a speed",
      "give an S word with the start of the spindle"),

  // Entry
  PLUNGE_TOO_FAST(
      "DRY-020",
      Severity.ERROR,
      "a plunge faster than the tool's limit",
      "lower the feed of the plunge"),
  PLUNGE_OFF_CENTRE(
      "DRY-021",
      Severity.ERROR,
      "a straight plunge with a tool that does not cut at its centre",
      "ramp into the material"),
  RAMP_TOO_STEEP(
      "DRY-022",
      Severity.ERROR,
      "a ramp too steep for a tool that does not cut at its centre",
      "make the ramp longer"),
  DRILL_SIDEWAYS(
      "DRY-023",
      Severity.ERROR,
      "a drill is fed sideways",
      "use a drill for holes only, or check the tool number"),

  // Depth
  DEEPER_THAN_FLUTES(
      "DRY-030",
      Severity.ERROR,
      "a cut deeper than the tool's cutting edge",
      "use a tool with longer flutes, or cut less deep"),
  DEEPER_THAN_REACH(
      "DRY-031",
      Severity.ERROR,
      "the collet would rub on the stock",
      "let the tool stick out further, or cut less deep"),
  PASS_TOO_DEEP(
      "DRY-032",
      Severity.ERROR,
      "one pass takes more depth than the tool's limit",
      "take the depth in more passes"),
  ENGAGED_TOO_FAR(
      "DRY-033",
      Severity.WARNING,
      "more of the tool's rim stands in material than its limit",
      "cut less width at a time, or less depth, and slow down in corners"),

  // Fixtures
  ROUNDED_CORNER(
      "DRY-034",
      Severity.WARNING,
      "the controller rounds a corner of a cut by more than a wall may be off",
      "ask for the exact path (G61) where the controller has it, or feed slower"),
  HITS_KEEP_OUT(
      "DRY-040",
      Severity.ERROR,
      "the tool or its holder runs into a keep-out",
      "move the clamp, or travel above it"),
  DOGLEG_MAY_HIT(
      "DRY-041",
      Severity.WARNING,
      "a rapid may run into a keep-out if its axes do not arrive together",
      "raise the tool before it travels, or go around the clamp"),

  // Pieces
  FREED_EARLY(
      "DRY-050", Severity.ERROR, "a piece comes free before its cuts are done", "cut it free last"),
  FREED_UNHELD(
      "DRY-051",
      Severity.WARNING,
      "a piece comes free with no tab or skin to hold it",
      "leave tabs, leave a skin, or fix the piece to the spoilboard"),
  THIN_STRIP(
      "DRY-052",
      Severity.WARNING,
      "a strip of waste is too thin to stand",
      "leave a wider strip, or cut it away on purpose"),
  TOUCH_OFF_CUT_AWAY(
      "DRY-053",
      Severity.WARNING,
      "the place to touch off the next tool has been cut away",
      "touch off on the bed, or on a spot that stays"),

  // Program
  STALE_OFFSET(
      "DRY-060",
      Severity.WARNING,
      "the program leaves a G92 offset behind",
      "end with G92.1, so that the next program starts from the same zero"),
  UNKNOWN_TOOL(
      "DRY-061",
      Severity.WARNING,
      "a tool that the shop does not list",
      "add the tool to the shop, or check the T word"),
  NO_TOOL_CHANGER(
      "DRY-062",
      Severity.WARNING,
      "a tool change in the middle of a program, on a machine without a changer",
      "use one program for each tool"),
  ENDS_LOW(
      "DRY-063",
      Severity.WARNING,
      "the program ends with the tool below the clearance height",
      "raise the tool before the end"),
  SPINDLE_LEFT_ON(
      "DRY-064",
      Severity.WARNING,
      "the text ends with the spindle on",
      "stop the spindle (M5), and end the program with M2 or M30"),

  // Torch
  TORCH_OFF(
      "DRY-070",
      Severity.ERROR,
      "a cut at cutting height with the torch off",
      "light the torch before the cut"),
  TORCH_RAPID(
      "DRY-071",
      Severity.ERROR,
      "a rapid with the torch on",
      "put the torch out before it travels"),
  NO_PIERCE(
      "DRY-072",
      Severity.WARNING,
      "the torch moves off without a pierce delay",
      "wait after lighting the torch until it is through the sheet"),
  TORCH_HEIGHT(
      "DRY-073",
      Severity.WARNING,
      "the torch cuts above or below the cutting height",
      "check the cutting height and the Z zero"),
  TORCH_LEFT_ON(
      "DRY-074",
      Severity.ERROR,
      "the program ends with the torch on",
      "put the torch out before the end"),

  // Torch and part
  PIERCE_ON_PART(
      "DRY-090",
      Severity.ERROR,
      "the torch pierces the part or too near it",
      "pierce in scrap, with a longer lead-in"),
  PIERCE_CUT_SHORT(
      "DRY-091",
      Severity.ERROR,
      "the pierce delay is shorter than stated",
      "wait as long as the cut chart says before moving off"),
  TORCH_TRAVELS_LOW(
      "DRY-092",
      Severity.ERROR,
      "the unlit torch travels below the clear height",
      "raise it first: a piece that was cut may have tipped up"),
  EDGE_CUT_INTO(
      "DRY-093",
      Severity.ERROR,
      "the kerf takes metal that should stay",
      "check the kerf, its side, and the leads"),
  EDGE_LEFT(
      "DRY-094",
      Severity.ERROR,
      "an edge is not cut where it should be",
      "check the kerf, its side, and whether a cut is missing"),
  OPENING_LATE(
      "DRY-095",
      Severity.ERROR,
      "an opening is cut after its part came loose",
      "cut openings before the outline around them"),
  PART_APART(
      "DRY-096", Severity.ERROR, "a part does not come out as one piece", "check the bridges"),
  NOT_FREE(
      "DRY-097",
      Severity.ERROR,
      "a part is not cut free of the sheet",
      "let the outline close, with a little overlap"),
  KERF_MATTERS(
      "DRY-098",
      Severity.WARNING,
      "a kerf 15 % wider or narrower changes what holds together",
      "make webs and bridges wider, and cut a kerf coupon first"),
  LIT_IN_KERF(
      "DRY-100",
      Severity.WARNING,
      "the torch is lit again in a kerf",
      "the arc may go out there, and mark the edge: have a file at hand"),
  JOINT_BURNT(
      "DRY-099",
      Severity.ERROR,
      "a micro-joint does not hold as told",
      "leave its width and one kerf between two cuts, with leads away from it"),

  // Design
  GOUGE(
      "DRY-080",
      Severity.ERROR,
      "more is cut away than the design asks for",
      "look at the picture; check the tool, the depth and the programs' order"),
  LEFT_STANDING(
      "DRY-081",
      Severity.WARNING,
      "something is left that the tool could have taken",
      "look at the picture; a cut may be missing, or not deep enough"),
  NOT_FREED(
      "DRY-082",
      Severity.WARNING,
      "a stretch of a through cut still stands that is longer than a tab",
      "check the depth of the cutout against the stock's thickness");

  private final String id;
  private final Severity severity;
  private final String title;
  private final String hint;

  FindingCode(String id, Severity severity, String title, String hint) {
    this.id = id;
    this.severity = severity;
    this.title = title;
    this.hint = hint;
  }

  @Override
  public String id() {
    return id;
  }

  @Override
  public String title() {
    return title;
  }

  public Severity severity() {
    return severity;
  }

  /** What to do about it. */
  public String hint() {
    return hint;
  }
}
