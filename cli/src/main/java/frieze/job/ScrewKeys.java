package frieze.job;

import frieze.keys.ChoiceType;
import frieze.keys.ChoiceType.Word;
import frieze.keys.Key;
import frieze.keys.ListType;
import frieze.keys.Range;
import frieze.keys.Section;
import frieze.keys.SectionType;
import frieze.keys.Type;
import frieze.keys.Types;
import frieze.keys.Values;
import java.util.List;

/** The keys of screws. */
final class ScrewKeys {
  private static final Type<Double> POSITIVE = Types.length(Range.POSITIVE);

  private ScrewKeys() {}

  static final Key<List<Values>> AT =
      Key.required(
          "at",
          ListType.of(new SectionType(JobKeys.Place.SECTION)),
          "their places, from the panel's lower left corner, seen from the front");
  static final Key<Double> SIZE =
      Key.required("size", POSITIVE, "the diameter of a screw over its thread");
  static final Key<Double> CLEARANCE =
      Key.optional(
          "clearance",
          POSITIVE,
          "the screw and 0.5 mm",
          "The diameter of a hole in the steel that the screw goes through freely, or the width of"
              + " a slot.");
  static final Key<Boolean> SLOTS =
      Key.withDefault(
          "steel holes",
          new ChoiceType<>(List.of(Word.of(true, "slots"), Word.of(false, "round"))),
          "slots",
          "Whether the holes in the steel are drawn out to slots as long as the wood moves.");
  static final Key<Integer> HELD =
      Key.optional(
          "held by",
          Types.count(1, 1000),
          "the panel's middle stays where it is",
          "The number of the screw in the list that holds the panel in its place; its hole in the"
              + " steel stays round.");
  static final Key<Double> PILOT =
      Key.optional("pilot", POSITIVE, "the tool's diameter", "The diameter of the pilots.");
  static final Key<Double> DEPTH =
      Key.required("depth", POSITIVE, "the depth of the pilots, without the point of a drill");
  static final Key<String> TOOL =
      Key.required("tool", Types.TEXT, "the tool that bores the pilots").alsoCalled("bit");
  static final Key<Boolean> FROM_BACK =
      Key.withDefault(
          "from",
          new ChoiceType<>(List.of(Word.of(false, "front"), Word.of(true, "back"))),
          "front",
          "The face that the pilots are bored from. From the back they are mirrored, and bored in a"
              + " setup of their own before the front is made.");
  static final Key<Double> LEAVE =
      Key.withDefault(
          "leave",
          POSITIVE,
          "1.5 mm",
          "The wood that must stay between a pilot and the other face, or what is carved there.");
  static final Section SECTION =
      new Section(
          "screws",
          "Screws that hold the panel in its frame: one list for the holes in the steel, which"
              + " `frieze template` draws, and for the pilots in the wood.",
          List.of(AT, SIZE, CLEARANCE, SLOTS, HELD, PILOT, DEPTH, TOOL, FROM_BACK, LEAVE));
}
