package frieze.bridge;

import frieze.diagnostic.Code;

/** What can be wrong with openings in sheet metal and with what should stay between them. */
public enum BridgeCode implements Code {
  TOUCHES_OUTLINE("BRG-001", "an opening touches the outline"),
  OPENINGS_OVERLAP("BRG-002", "openings overlap"),
  ISLAND_TOO_SMALL("BRG-003", "an island is too small to bridge"),
  NO_PLACE("BRG-004", "no bridge finds a place"),
  WEAK_HOLD("BRG-005", "bridges carry less than is asked for"),
  NO_MATERIAL("BRG-006", "nothing of the panel is left"),
  SLOT_NARROW("BRG-010", "a slot is narrower than the kerf"),
  WEB_THIN("BRG-011", "a web of metal is thinner than the least"),
  POINT_LOST("BRG-012", "a point of an opening is lost to the kerf"),
  ALL_LOST("BRG-013", "the kerf is wider than every part of an opening");

  private final String id;
  private final String title;

  BridgeCode(String id, String title) {
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
