package frieze.plan.cut;

import frieze.diagnostic.Code;

/** What can be wrong with the work asked for, and what a plan could not do. */
public enum PlanCode implements Code {
  BAD_DEPTH("PLAN-001", "a depth must be above 0"),
  DEPTH_BEYOND_STOCK("PLAN-002", "the cut is deeper than the stock is thick"),
  TOOL_TOO_SHORT("PLAN-003", "the tool is too short for the depth"),
  NOTHING_TO_CUT("PLAN-004", "nothing in the artwork suits the operation"),
  TOOL_TOO_WIDE("PLAN-005", "the tool is wider than every gap"),
  TOOL_UNSUITED("PLAN-006", "the tool's shape does not suit the operation"),
  BAD_STEPOVER("PLAN-007", "the stepover does not suit the tool"),
  HOLE_TOO_SMALL("PLAN-008", "the hole is smaller than the tool"),
  TABS_DO_NOT_FIT("PLAN-009", "the tabs do not fit along the outline"),
  PANEL_BEYOND_STOCK("PLAN-010", "the panel does not fit on the stock"),
  MACHINE_TOO_SMALL("PLAN-011", "the machine's travel is too small for the panel"),
  BLANK_NOT_CUT_OUT("PLAN-012", "a sawn blank is not cut out"),
  NOT_ALL_REACHED("PLAN-013", "the tool does not reach everywhere"),
  NO_ROOM_TO_ENTER("PLAN-014", "no room for the tool to ramp in"),
  CHIP_LOAD_LOW("PLAN-015", "the chip load is below the usual range"),
  CHIP_LOAD_HIGH("PLAN-016", "the chip load is above the usual range"),
  SPEED_TOO_HIGH("PLAN-017", "the spindle can't turn slowly enough for the tool"),
  MATERIAL_UNSUITED("PLAN-018", "the material can't be cut with a router"),
  WASTE_TOO_THIN("PLAN-019", "the waste strip beside the panel is thin"),
  NO_TABS("PLAN-020", "nothing holds the panel when it is cut free"),
  THIN_FLOOR("PLAN-021", "little is left below a cut"),
  NOT_FULL_DIAMETER("PLAN-022", "a drill's point does not clear the bottom"),
  LINE_TOO_SHORT("PLAN-023", "a line is too short to cut"),
  HOLE_OFF_PANEL("PLAN-024", "a hole reaches over the panel's edge"),
  FLAT_FLOOR("PLAN-030", "a V-groove is wider than the bit can reach"),
  THINNER_THAN_TIP("PLAN-031", "places are narrower than the bit's tip"),
  RIDGES_TOO_FINE("PLAN-032", "ridges that low would take too many passes"),
  NO_ROOM_TO_FINISH("PLAN-040", "no room for a finishing pass"),
  SKIN_TOO_THICK("PLAN-041", "the skin leaves nothing to cut"),
  BAD_TOOL_LIMIT("PLAN-042", "a tool's pass depth must be above 0"),
  FINISH_UNHELD("PLAN-043", "a finishing pass on a part that nothing holds"),
  TABS_UPRIGHT("PLAN-044", "ramped tabs do not fit and are made upright"),
  NO_FADE("PLAN-045", "a groove that can't run out as asked"),
  MILLED_NOT_DRILLED("PLAN-046", "holes are milled because the drill would turn too fast"),
  BAD_COUNTERSINK("PLAN-047", "a countersink that can't be cut as asked"),
  BAD_SLOT("PLAN-048", "a slot that is no longer than wide"),
  CHIP_THINNED("PLAN-049", "chips are thin because little of the tool is engaged"),
  LINE_TOO_WIDE("PLAN-050", "a line is drawn wider than its groove can be"),
  CORNERS_LEFT_ROUND("PLAN-051", "inside corners that can't be relieved stay round"),
  ENGAGED_AND_SLOWED("PLAN-052", "moves with too much of the rim in material are slowed"),
  TABS_WEAK("PLAN-053", "tabs are too weak for what they hold"),
  EDGE_BIT("PLAN-054", "the bit does not make the edge that is asked for"),
  EDGE_TOO_LARGE("PLAN-055", "the edge takes too much of the panel"),
  EDGE_NO_END("PLAN-056", "a side of the panel has no corner where its edge could end"),
  EDGE_INTO_TABS("PLAN-057", "the bit that works the edge cuts into the tabs"),
  TABS_CUT_BEHIND("PLAN-058", "the work on the other face cuts into the tabs"),
  NOTHING_TO_HOLD_ON("PLAN-059", "tabs or a skin have no waste to hold on to");

  private final String id;
  private final String title;

  PlanCode(String id, String title) {
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
