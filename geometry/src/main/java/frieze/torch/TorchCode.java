package frieze.torch;

import frieze.diagnostic.Code;

/** What can be wrong with a panel that a torch is to cut, and what should be known. */
public enum TorchCode implements Code {
  NOT_STEEL("TORCH-001", "a torch cuts steel"),
  WRONG_CHART("TORCH-002", "the cut chart is for another metal"),
  NO_OPENINGS("TORCH-003", "no areas to cut in the drawing"),
  TOUCHES_OUTLINE("TORCH-004", "an opening touches or crosses the outline"),
  OPENINGS_OVERLAP("TORCH-005", "openings overlap"),
  LOOSE_ISLAND("TORCH-006", "an island would fall out"),
  KERF_TOO_WIDE("TORCH-007", "the kerf is wider than an opening"),
  SMALL_HOLE("TORCH-008", "a hole is too small to cut"),
  NO_LEAD("TORCH-009", "no room for a lead-in"),
  NEAR_PIERCE("TORCH-010", "a pierce is near the part"),
  OFF_SHEET("TORCH-011", "the panels do not fit on the sheet"),
  ROWS_TOO_CLOSE("TORCH-012", "copies are too close to each other"),
  ZINC("TORCH-013", "the sheet is coated with zinc"),
  NOTHING_TO_CUT("TORCH-014", "nothing is left to cut"),
  SLOW_MACHINE("TORCH-015", "the machine is slower than the cut chart"),
  DROSS("TORCH-016", "an island is mere dross"),
  NO_JOINT("TORCH-017", "no room for micro-joints");

  private final String id;
  private final String title;

  TorchCode(String id, String title) {
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
