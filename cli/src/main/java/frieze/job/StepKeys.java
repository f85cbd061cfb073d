package frieze.job;

import frieze.keys.Key;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.Types;
import java.util.List;

/** The keys of a panel that is carved in steps. */
final class StepKeys {
  static final Key<Double> PIN =
      Key.required("pin", Types.length(Range.POSITIVE), "the diameter of the two pins");
  static final Key<String> TOOL =
      Key.required("tool", Types.TEXT, "the tool that bores the holes for them").alsoCalled("bit");
  static final Key<Double> DEEP =
      Key.withDefault(
          "deep",
          Types.length(Range.POSITIVE),
          "8 mm",
          "How deep the pins stand in the board below the stock.");
  static final Section SECTION =
      new Section(
          "steps",
          "For a panel that is longer than the machine: the stock is carved as far as the machine"
              + " reaches, pushed to the left onto two pins, and carved on.",
          List.of(PIN, TOOL, DEEP));

  private StepKeys() {}
}
