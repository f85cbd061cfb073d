package frieze.sheet;

import frieze.steps.Steps;

/**
 * What is done in one clamping of a panel that is carved in steps: holes are bored for the pins, or
 * the step is carved.
 *
 * @param steps of the panel
 * @param step counted from 0
 * @param boring whether only holes are bored
 */
public record StepPart(Steps steps, int step, boolean boring) {
  /** In words, such as {@code step 2 of 3}. */
  public String title() {
    String which = (step + 1) + " of " + steps.count();
    return boring ? "pins for step " + (step + 2) + " of " + steps.count() : "step " + which;
  }

  /** A title from which its programs get their names. */
  public String shortTitle() {
    return boring ? "pins " + (step + 1) : "step " + (step + 1);
  }

  /** How far the stock has been pushed to the left by then. */
  public double pushedMm() {
    return step * steps.shiftMm();
  }
}
