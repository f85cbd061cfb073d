package frieze.post;

import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.lower.Capabilities;
import frieze.lower.Capabilities.ArcFormat;
import frieze.lower.Capabilities.CommentForm;
import frieze.lower.Capabilities.DwellWord;
import frieze.lower.Capabilities.ToolChanging;
import frieze.motion.Plane;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Refuses a dialect that contradicts itself, or whose lines its controller could not read. */
final class DialectCheck {
  private static final Pattern CODE = Pattern.compile("[GM]\\d{1,3}(\\.\\d)?");
  private static final Pattern PLACEHOLDER = Pattern.compile("\\{([^{}]*)\\}");
  private static final Pattern WORD = Pattern.compile("([A-Z])(-?(?:\\d+\\.?\\d*|\\.\\d+))");
  private static final Pattern NAME = Pattern.compile("[a-z0-9][a-z0-9-]*");
  private static final Pattern ENDING = Pattern.compile("\\.[A-Za-z0-9]{1,8}");

  /** A number in the place of each placeholder, as long as it may get. */
  private static final Map<String, String> EXAMPLES =
      Map.of("units", "G21", "tool", "99", "rpm", "99999", "z", "-99.999");

  private static final int EIGHT = 8;

  /** Room for an arc with every word at full length. */
  private static final int ARC_LINE = 64;

  private final YamlMap file;
  private final Capabilities has;
  private final Diagnostics problems;

  DialectCheck(YamlMap file, Capabilities capabilities, Diagnostics problems) {
    this.file = file;
    this.has = capabilities;
    this.problems = problems;
  }

  void check(Map<Moment, List<YamlMap.Text>> lines) {
    names();
    codes();
    arcs();
    time();
    tools(lines);
    torch(lines);
    unused(lines);
    needed(lines, Moment.START);
    needed(lines, Moment.END);
    lines.forEach((moment, texts) -> texts.forEach(text -> line(moment, text)));
    state(lines);
  }

  private void contradiction(String key, String message, String hint) {
    problems.error(PostCode.CONTRADICTION, file.where(key), message, hint);
  }

  private void needsCode(String key, String why, String... codes) {
    for (String code : codes) {
      if (!has.codes().contains(code)) {
        contradiction(
            key, why + ", but " + code + " is not among the codes", "add " + code + " to codes");
      }
    }
  }

  private void names() {
    if (file.has("post") && !NAME.matcher(file.required("post")).matches()) {
      problems.error(
          PostCode.WRONG_VALUE,
          file.where("post"),
          "the name of a post has small letters, digits and hyphens only",
          "");
    }
    String ending = has.files().extension();
    if (!ENDING.matcher(ending).matches()) {
      problems.error(
          PostCode.WRONG_VALUE,
          file.where("files"),
          "the ending of files must be a point and letters, not \"" + ending + "\"",
          "such as .nc");
    }
    if (has.files().upperCase() && has.files().maxNameLength() > EIGHT) {
      contradiction(
          "files",
          "names with capitals only are for controllers that show 8 characters",
          "name: 8");
    }
  }

  private void codes() {
    for (String code : has.codes()) {
      if (!CODE.matcher(code).matches()) {
        problems.error(
            PostCode.WRONG_VALUE,
            file.where("codes"),
            "\"" + code + "\" is no G or M code",
            "write codes as G0 G1 M3, without leading noughts");
      }
    }
    needsCode("codes", "every program moves and says its units", "G0", "G1", "G20", "G21", "G90");
    needsCode("codes", "a program may have to stop for the operator", "M0");
  }

  private void arcs() {
    if (has.arcs().format() == ArcFormat.NONE) {
      return;
    }
    needsCode("arcs", "the controller draws arcs", "G2", "G3", "G17");
    if (has.arcs().planes().contains(Plane.ZX)) {
      needsCode("arcs", "arcs lie in ZX", "G18");
    }
    if (has.arcs().planes().contains(Plane.YZ)) {
      needsCode("arcs", "arcs lie in YZ", "G19");
    }
    if (has.arcs().format() == ArcFormat.RADIUS && has.arcs().fullCircles()) {
      contradiction("arcs", "the radius format cannot draw full circles", "full circles: no");
    }
    if (has.layout().maxLineLength() < ARC_LINE) {
      contradiction(
          "lines",
          "a line with an arc can need " + ARC_LINE + " characters",
          "longest: 64 or more");
    }
  }

  private void time() {
    if (has.dwell() != DwellWord.NONE) {
      needsCode("dwell", "the controller can wait", "G4");
    }
  }

  private void tools(Map<Moment, List<YamlMap.Text>> lines) {
    if (has.coordinates().machine()) {
      needsCode("finds home", "the tool is raised in machine coordinates", "G53");
      needed(lines, Moment.RAISE);
    }
    if (has.toolChanging() == ToolChanging.CHANGER) {
      needsCode("tool change", "there is a changer", "M6");
      needed(lines, Moment.TOOL_CHANGE);
      if (!has.coordinates().machine()) {
        contradiction(
            "tool change",
            "after a change by itself nothing tells how high the new tool stands",
            "finds home: yes, or tool change: stop");
      }
    }
    if (has.spindle()) {
      needed(lines, Moment.SPINDLE_ON);
      needed(lines, Moment.SPINDLE_OFF);
      if (has.torch().present()) {
        contradiction("spindle", "a program drives a spindle or a torch, not both", "");
      }
    }
    needed(lines, Moment.STOP);
    boolean says =
        texts(lines, Moment.STOP).stream().anyMatch(t -> t.value().contains("{message}"));
    if (!says
        && has.layout().comments() != CommentForm.NONE
        && !texts(lines, Moment.STOP).isEmpty()) {
      contradiction("write", "a stop must say why: {message} is missing", "");
    }
    if (has.toolChanging() == ToolChanging.STOP && has.layout().comments() == CommentForm.NONE) {
      contradiction(
          "tool change",
          "without comments nobody is told which tool to put in at a stop",
          "tool change: separate programs");
    }
  }

  private void torch(Map<Moment, List<YamlMap.Text>> lines) {
    if (!has.torch().present()) {
      if (has.torch().heightControl()) {
        contradiction("height control", "there is no torch to hold at a height", "torch: plain");
      }
      return;
    }
    if (has.dwell() == DwellWord.NONE) {
      contradiction(
          "torch", "a torch has to wait until it is through the sheet", "dwell: P seconds");
    }
    needed(lines, Moment.TORCH_ON);
    needed(lines, Moment.TORCH_OFF);
    if (has.torch().touch()) {
      needsCode("torch", "the torch feels for the sheet", "G38.2");
      needed(lines, Moment.TOUCHED);
      touchedSaysWhere(lines);
    }
    if (has.torch().heightControl()) {
      needed(lines, Moment.HEIGHT_HOLD);
      needed(lines, Moment.HEIGHT_FOLLOW);
    }
  }

  /** A fixed number would be wrong on the next machine, and for a zero below the stock. */
  private void touchedSaysWhere(Map<Moment, List<YamlMap.Text>> lines) {
    List<YamlMap.Text> touched = texts(lines, Moment.TOUCHED);
    if (!touched.isEmpty() && touched.stream().noneMatch(t -> t.value().contains("{z}"))) {
      problems.error(
          PostCode.CONTRADICTION,
          touched.get(0).where(),
          "the lines for \"touched\" do not say where the tip is",
          "write {z} for the number, as in G92 Z{z}; `touch travel` in the shop file gives what"
              + " the switch needs");
    }
  }

  /** Lines that would never be written tell of something that was forgotten. */
  private void unused(Map<Moment, List<YamlMap.Text>> lines) {
    boolean touch = has.torch().present() && has.torch().touch();
    unless(has.coordinates().machine(), "finds home: yes", lines, Moment.RAISE);
    boolean changer = has.toolChanging() == ToolChanging.CHANGER;
    unless(changer, "tool change: changer", lines, Moment.TOOL_CHANGE);
    unless(has.spindle(), "spindle: by program", lines, Moment.SPINDLE_ON, Moment.SPINDLE_OFF);
    unless(has.spindle(), "spindle: by program", lines, Moment.DUST_ON, Moment.DUST_OFF);
    unless(has.torch().present(), "torch: plain", lines, Moment.TORCH_ON, Moment.TORCH_OFF);
    unless(touch, "torch: touch", lines, Moment.TOUCHED);
    boolean control = has.torch().heightControl();
    unless(control, "height control: yes", lines, Moment.HEIGHT_HOLD, Moment.HEIGHT_FOLLOW);
  }

  private void unless(
      boolean written, String needs, Map<Moment, List<YamlMap.Text>> lines, Moment... moments) {
    for (Moment moment : moments) {
      if (!written && !texts(lines, moment).isEmpty()) {
        problems.error(
            PostCode.CONTRADICTION,
            texts(lines, moment).get(0).where(),
            "the lines for \"" + moment.key() + "\" would never be written",
            "they need " + needs);
      }
    }
  }

  private static List<YamlMap.Text> texts(Map<Moment, List<YamlMap.Text>> lines, Moment moment) {
    return lines.getOrDefault(moment, List.of());
  }

  private void needed(Map<Moment, List<YamlMap.Text>> lines, Moment moment) {
    if (texts(lines, moment).isEmpty()) {
      problems.error(
          PostCode.MISSING_KEY,
          file.where("write"),
          "the lines for \"" + moment.key() + "\" are missing",
          "");
    }
  }

  /** The start must leave nothing to chance. */
  private void state(Map<Moment, List<YamlMap.Text>> lines) {
    String start =
        String.join(" ", texts(lines, Moment.START).stream().map(YamlMap.Text::value).toList());
    List<String> words = List.of(start.split(" +", -1));
    for (String needed : List.of("{units}", "G90", "G17", "G94", "G54")) {
      boolean known = needed.startsWith("{") || has.codes().contains(needed);
      if (known && !start.isEmpty() && !words.contains(needed)) {
        problems.error(
            PostCode.CONTRADICTION,
            file.where("write"),
            "the start does not state " + needed + ", which the controller knows",
            "units, plane, distance mode, feed mode and offset must not be left to chance");
      }
    }
  }

  private void line(Moment moment, YamlMap.Text text) {
    if (text.value().equals("{message}")) {
      if (!moment.placeholders().contains("message")) {
        unknownPlaceholder("message", moment, text.where());
      }
      return;
    }
    Matcher m = PLACEHOLDER.matcher(text.value());
    StringBuilder filled = new StringBuilder();
    while (m.find()) {
      if (!moment.placeholders().contains(m.group(1))) {
        unknownPlaceholder(m.group(1), moment, text.where());
      }
      m.appendReplacement(filled, EXAMPLES.getOrDefault(m.group(1), ""));
    }
    m.appendTail(filled);
    readable(filled.toString(), text.where());
  }

  private void unknownPlaceholder(String name, Moment moment, SourceSpan at) {
    Set<String> known = moment.placeholders();
    problems.error(
        PostCode.UNKNOWN_PLACEHOLDER,
        at,
        "{" + name + "} is not known in \"" + moment.key() + "\"",
        known.isEmpty() ? "no placeholder is" : "known: {" + String.join("}, {", known) + "}");
  }

  private void readable(String line, SourceSpan at) {
    if (line.isBlank()) {
      unreadable(at, "an empty line", "");
      return;
    }
    for (String word : line.split(" +", -1)) {
      Matcher m = WORD.matcher(word);
      if (!m.matches()) {
        unreadable(at, "\"" + word + "\" is no word of a letter and a number", "");
      } else if ("GM".contains(m.group(1)) && !has.codes().contains(word)) {
        unreadable(at, word + " is not among the codes", "add it to codes, or leave it out");
      }
    }
    int numbered = has.layout().lineNumbers() ? "N99990 ".length() : 0;
    if (line.length() + numbered > has.layout().maxLineLength()) {
      unreadable(at, "longer than " + has.layout().maxLineLength() + " characters", "");
    }
  }

  private void unreadable(SourceSpan at, String why, String hint) {
    problems.error(
        PostCode.UNREADABLE_LINE, at, "the controller could not read this line: " + why, hint);
  }
}
