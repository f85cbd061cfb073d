package frieze.post;

import java.util.Locale;
import java.util.Set;

/** A place in a program where a dialect has lines of its own, and what they may name. */
enum Moment {
  START("units"),
  END(),
  RAISE(),
  STOP("message"),
  TOOL_CHANGE("tool"),
  SPINDLE_ON("rpm"),
  SPINDLE_OFF(),
  DUST_ON(),
  DUST_OFF(),
  /** After a probing move has found the sheet. */
  TOUCHED("z"),
  TORCH_ON(),
  TORCH_OFF(),
  HEIGHT_HOLD(),
  HEIGHT_FOLLOW();

  /** Separated by blanks. */
  private final String placeholders;

  Moment(String... placeholders) {
    this.placeholders = String.join(" ", placeholders);
  }

  /** The words that may stand in braces in its lines. */
  Set<String> placeholders() {
    return placeholders.isEmpty() ? Set.of() : Set.of(placeholders.split(" ", -1));
  }

  /** The key in a dialect file, such as {@code tool change}. */
  String key() {
    return name().toLowerCase(Locale.ROOT).replace('_', ' ');
  }
}
