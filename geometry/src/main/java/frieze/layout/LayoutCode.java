package frieze.layout;

import frieze.diagnostic.Code;

/** What can be wrong with a panel and with the motifs on it. */
public enum LayoutCode implements Code {
  GAP_LEAVES_NOTHING("LAY-001", "the gap leaves nothing of the opening"),
  CORNER_TOO_LARGE("LAY-002", "the corner radius is larger than half of the opening"),
  BAD_COUNT("LAY-003", "the count of motifs does not suit the group"),
  BAND_TOO_NARROW("LAY-004", "the inset leaves no band"),
  MOTIF_TOO_WIDE("LAY-005", "the motifs do not fit along the band"),
  MOTIF_TOO_HIGH("LAY-006", "the motif does not fit across the band"),
  BEYOND_BORDER("LAY-007", "a motif reaches beyond the panel"),
  MOTIFS_OVERLAP("LAY-008", "motifs overlap"),
  NOTHING_PLACED("LAY-009", "no whole motif on the panel"),
  NO_ROOM("LAY-010", "no room for so many motifs"),
  NO_WAY_AROUND("LAY-011", "a motif finds no place beside what it avoids"),
  NO_LINE("LAY-012", "the drawing has no line to follow"),
  NO_ARCH("LAY-013", "no such arched panel can be"),
  LEFT_OUT("LAY-014", "motifs are left out"),
  LINE_NO_ROOM("LAY-015", "a border line has no room on the panel"),
  LINE_IN_PARTS("LAY-016", "a border line falls into parts"),
  LINE_OFF_EDGE("LAY-017", "a border line is cut over the panel's edge, or close to it"),
  LINE_CROSSED("LAY-018", "a border line is crossed by other work"),
  LINES_OVERLAP("LAY-019", "border lines run into each other"),
  LINE_WITHOUT_WIDTH("LAY-020", "a border line without a width is no area");

  private final String id;
  private final String title;

  LayoutCode(String id, String title) {
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
