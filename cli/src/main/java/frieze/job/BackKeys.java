package frieze.job;

import frieze.keys.ChoiceType;
import frieze.keys.ChoiceType.Word;
import frieze.keys.Key;
import frieze.keys.ListType;
import frieze.keys.Located;
import frieze.keys.NamedType;
import frieze.keys.OneOfType;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.SectionType;
import frieze.keys.Types;
import frieze.keys.Values;
import java.util.List;
import java.util.Map;

/** The keys of the back of a panel. */
final class BackKeys {
  private BackKeys() {}

  /** Pins on which a board is turned over. */
  static final class Pins {
    static final Key<Double> DIAMETER =
        Key.optional(
            "diameter",
            Types.length(Range.POSITIVE),
            "the tool's diameter",
            "The diameter of the pins, and of their holes.");
    static final Key<String> TOOL =
        Key.required("tool", Types.TEXT, "the tool that bores their holes").alsoCalled("bit");
    static final Key<Double> DEPTH =
        Key.withDefault(
            "depth",
            Types.length(Range.POSITIVE),
            "6 mm",
            "How deep they stand in the spoilboard: the holes go through the stock and on.");
    static final Section SECTION =
        new Section(
            "pins",
            "Two pins in the waste, on the line about which the board is turned: their holes come"
                + " to the same places on both sides.",
            List.of(DIAMETER, TOOL, DEPTH));

    private Pins() {}
  }

  static final Key<Boolean> END_TO_END =
      Key.withDefault(
          "turned",
          new ChoiceType<>(List.of(Word.of(false, "front to back"), Word.of(true, "end to end"))),
          "front to back",
          "How the board is turned over between the two sides: its front edge goes to the back, or"
              + " its right end to the left.");
  static final Key<Values> PINS =
      Key.optional(
          "pins",
          new SectionType(Pins.SECTION),
          "the board is laid to the same edge and the same end again",
          "Pins that the board is laid on after it is turned.");
  static final Key<List<Values>> CLAMPS =
      Key.optional(
          "clamps",
          ListType.of(new SectionType(JobKeys.Clamp.SECTION)),
          "those of the panel go along with the board, as screws in its waste do",
          "What the tool must not touch while the back is up.");
  static final Key<List<Values>> DESIGN =
      Key.optional(
          "design",
          ListType.of(new SectionType(PatternKeys.Design.SECTION)),
          "no drawing",
          "The drawings on it, seen from the back.");
  static final Key<Map<String, Located<Values>>> BORDER_LINES =
      Key.optional(
          LineKeys.SECTION.name(),
          new NamedType<>("border lines", new SectionType(LineKeys.SECTION)),
          "no border lines",
          LineKeys.SECTION.doc());
  static final Key<List<Values>> WORK =
      Key.optional(
          "work",
          ListType.of(new OneOfType(JobKeys.WorkItem.SECTION)),
          "the pilots of `screws` that come from the back",
          "What else is cut on it. The panel is cut free from the front.");
  static final Section SECTION =
      new Section(
          "back",
          "The back of the panel. It is made first, in a setup of its own; then the board is turned"
              + " over.",
          List.of(END_TO_END, PINS, CLAMPS, DESIGN, BORDER_LINES, WORK));
}
