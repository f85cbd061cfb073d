package frieze.wood;

import frieze.diagnostic.Code;

/** What can be wrong with a panel of wood in a frame that does not move. */
public enum WoodCode implements Code {
  PANEL_BINDS("WOOD-001", "the panel binds when it swells"),
  BEYOND_RULE("WOOD-002", "moisture beyond the published range"),
  UNKNOWN_SPECIES("WOOD-003", "unknown species"),
  BAD_MOISTURE("WOOD-004", "moisture that can't be");

  private final String id;
  private final String title;

  WoodCode(String id, String title) {
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
