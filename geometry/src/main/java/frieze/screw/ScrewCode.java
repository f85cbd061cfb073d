package frieze.screw;

import frieze.diagnostic.Code;

/** What can be wrong with screws. */
public enum ScrewCode implements Code {
  TOO_LITTLE_WOOD("SCREW-001", "a pilot leaves too little wood"),
  MEETS_CARVING("SCREW-002", "a pilot meets what is carved"),
  SCREWED_TIGHT("SCREW-003", "a panel that is screwed tight"),
  MOVEMENT_UNKNOWN("SCREW-004", "screws in wood whose movement is not known"),
  BAD_SCREW("SCREW-005", "sizes that no screw can have"),
  THROUGH_TOGETHER("SCREW-006", "what is cut on both faces leaves too little wood");

  private final String id;
  private final String title;

  ScrewCode(String id, String title) {
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
