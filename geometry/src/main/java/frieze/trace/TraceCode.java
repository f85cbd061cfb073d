package frieze.trace;

import frieze.diagnostic.Code;

/** What can be wrong with, or worth knowing about, a picture that is traced. */
public enum TraceCode implements Code {
  NO_CONTRAST("TRC-001", "ink and paper can't be told apart"),
  NOTHING_TRACED("TRC-002", "nothing in the picture is large enough"),
  NOT_A_SHEET("TRC-003", "the corners of the sheet do not go round it"),
  SPECKS_LEFT_OUT("TRC-004", "specks are left out"),
  AT_THE_EDGE("TRC-005", "an outline runs out of the picture"),
  EDGES_BENT("TRC-006", "the edges of the sheet look bent");

  private final String id;
  private final String title;

  TraceCode(String id, String title) {
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
