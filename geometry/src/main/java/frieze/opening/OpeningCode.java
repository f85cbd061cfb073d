package frieze.opening;

import frieze.diagnostic.Code;

/** What can be wrong with an opening as measured. */
public enum OpeningCode implements Code {
  CONTRADICTION("OPEN-001", "the measurements contradict each other");

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
