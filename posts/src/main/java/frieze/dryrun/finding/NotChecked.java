package frieze.dryrun.finding;

import java.util.Locale;

/**
 * A question that the dry run did not ask, and why.
 *
 * @param what such as {@code clamps}
 * @param why what was missing
 * @param canHurt whether people or the machine may come to harm; then it is said in capitals
 */
public record NotChecked(String what, String why, boolean canHurt) {
  /** The line as it is shown, such as {@code CLAMPS NOT CHECKED: no keep-outs are given}. */
  @Override
  public String toString() {
    String head = what + " not checked";
    return (canHurt ? head.toUpperCase(Locale.ROOT) : head) + ": " + why;
  }
}
