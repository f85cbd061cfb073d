package frieze.keys;

import frieze.diagnostic.Code;

/** What can be wrong with a job or a shop file. */
public enum JobCode implements Code {
  NOT_YAML("JOB-001", "not YAML"),
  UNKNOWN_KEY("JOB-002", "unknown key"),
  DUPLICATE_KEY("JOB-003", "key given twice"),
  MISSING_KEY("JOB-005", "missing key"),
  WRONG_KIND("JOB-006", "wrong kind of value"),
  NOT_A_QUANTITY("JOB-007", "number can't be read"),
  WRONG_UNIT("JOB-008", "wrong unit"),
  OUT_OF_RANGE("JOB-009", "number out of range"),
  UNKNOWN_WORD("JOB-010", "unknown word"),
  NO_SUCH_ARTWORK("JOB-011", "no such artwork in the job"),
  NO_SUCH_TOOL("JOB-012", "no such tool in the shop"),
  NO_SUCH_MACHINE("JOB-013", "no such machine in the shop"),
  NO_SUCH_MATERIAL("JOB-014", "no such material in the shop"),
  NO_SUCH_POST("JOB-015", "no such post"),
  FILE_NOT_READ("JOB-016", "file can't be read"),
  NO_SUCH_PANEL("JOB-017", "no such panel in the job"),
  NOTHING_TO_DO("JOB-018", "nothing to do"),
  KEYS_EXCLUDE("JOB-019", "keys that exclude each other"),
  NOT_PLACED("JOB-020", "artwork is not placed on the panel"),
  PANEL_TOO_LARGE("JOB-021", "panel larger than its stock or the machine"),
  TOO_DEEP("JOB-022", "depth beyond the stock"),
  NUMBER_TAKEN("JOB-023", "tool number taken twice"),
  UNKNOWN_FILE_KIND("JOB-024", "unknown kind of drawing"),
  UNSUITABLE_TOOL("JOB-025", "tool of a wrong shape"),
  UNEVEN_STOCK("JOB-026", "thickness readings that disagree"),
  UNSUITABLE_POST("JOB-027", "post for another kind of machine"),
  NO_SUCH_LINE("JOB-028", "no such place in a program"),
  NO_SUCH_GAUGE("JOB-029", "no such gauge in the table"),
  GAUGE_WITHOUT_METAL("JOB-030", "gauge without its metal"),
  NO_SUCH_CHART("JOB-031", "no such cut chart in the shop"),
  BEYOND_CHART("JOB-032", "thickness beyond the cut chart"),
  TORCH_AND_SPINDLE("JOB-033", "work for a torch and for a spindle on one machine"),
  ONE_TORCHCUT("JOB-034", "more than one torchcut on a panel"),
  BAD_CLEARANCE("JOB-035", "clearance too low for a torch"),
  NO_REAL_SIZE("JOB-036", "picture without a real size"),
  BAD_TABLE("JOB-037", "table of openings that can\'t be read"),
  BAD_TEST_CUT("JOB-038", "test cut that contradicts itself"),
  NO_ROOM_FOR_PINS("JOB-039", "no room for pins in the waste"),
  LIES_TOO_SKEWED("JOB-040", "stock that lies too far turned"),
  NO_DEPTH("JOB-041", "depth that is not below the stock's top"),
  NO_SUCH_ANGLE("JOB-042", "angle that no pointed tool can have"),
  NO_LIMIT("JOB-043", "limit that lets a tool do nothing"),
  NO_ONE_OUTLINE("JOB-045", "drawing that is not one closed outline");

  private final String id;
  private final String title;

  JobCode(String id, String title) {
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
