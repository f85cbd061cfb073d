package frieze.opening;

import frieze.diagnostic.Code;

/** What can be wrong with an opening as measured. */
public enum OpeningCode implements Code {
  CONTRADICTION("OPEN-001", "the measurements contradict each other"),
  LUG_BEYOND("OPEN-002", "a lug reaches beyond its side"),
  LUG_PARTS_PANEL("OPEN-003", "a lug cuts the panel apart"),
  NOTCH_STAYS_ROUND("OPEN-004", "a lug does not go into the round corners of its notch"),
  GAP_PARTS_PANEL("OPEN-005", "the gap parts the panel"),
  WOOD_IN_STEELS_PLACE("OPEN-006", "wood stays uncut where the steel is to go");

  private final String id;
  private final String title;

  OpeningCode(String id, String title) {
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
