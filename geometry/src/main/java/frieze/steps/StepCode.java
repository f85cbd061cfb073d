package frieze.steps;

import frieze.diagnostic.Code;

/** What can be wrong with a panel that is carved in steps. */
public enum StepCode implements Code {
  NO_ROOM_FOR_PINS("STEP-001", "the waste has no room for the pins"),
  TRAVEL_TOO_SHORT("STEP-002", "the travel is too short for steps"),
  SEAM_THROUGH_MOTIF("STEP-003", "a seam goes through a motif"),
  ONE_STEP_IS_ENOUGH("STEP-004", "the panel needs no steps"),
  ZERO_OUT_OF_REACH("STEP-005", "the zero is not where steps need it");

  private final String id;
  private final String title;

  StepCode(String id, String title) {
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
