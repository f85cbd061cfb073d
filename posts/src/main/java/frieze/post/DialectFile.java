package frieze.post;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostics;
import frieze.lower.Capabilities;
import frieze.lower.Capabilities.ArcFormat;
import frieze.lower.Capabilities.CommentForm;
import frieze.lower.Capabilities.Cycle;
import frieze.lower.Capabilities.DwellWord;
import frieze.lower.Capabilities.ToolChanging;
import frieze.motion.Plane;
import frieze.rs274.ReadingRules.Paths;
import frieze.rs274.ReadingRules.Rapids;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;

/**
 * Reads a dialect file: YAML that says what a controller understands and which lines it wants.
 *
 * <p>What is not said is taken as not understood: no arcs, no cycles, no changer, no comments, the
 * spindle by hand. {@link DialectCheck} then refuses what contradicts itself and lines that the
 * controller, as declared, could not read.
 */
public final class DialectFile {
  private static final int USUAL_LINE_LENGTH = 70;
  private static final int LONGEST_LINE = 256;
  private static final int USUAL_NAME_LENGTH = 8;
  private static final int LONGEST_NAME = 100;
  private static final int KIB = 1024;
  private static final double LARGEST_RADIUS_MM = 100_000;

  private DialectFile() {}

  /** Who drives the spindle. */
  private enum SpindleDrive {
    BY_PROGRAM,
    BY_HAND
  }

  /** What a torch can do. */
  private enum TorchKind {
    NONE,
    PLAIN,
    TOUCH
  }

  /** How whole numbers are written. */
  private enum Point {
    AS_NEEDED,
    ALWAYS
  }

  /** Which words a line has. */
  private enum WordUse {
    WHEN_CHANGED,
    ALWAYS
  }

  /** What ends a line. */
  private enum LineEnd {
    LF,
    CRLF
  }

  /** How codes below ten are written. */
  private enum CodeForm {
    SHORT,
    TWO_DIGITS
  }

  /**
   * Reads a file.
   *
   * @param source its name, for diagnostics
   * @throws BadInputException with everything that is wrong, each with line and column
   */
  public static Post read(String source, String text) {
    Diagnostics problems = new Diagnostics();
    YamlMap file = YamlMap.parse(source, text, problems);
    String id = file.required("post");
    String summary = file.required("suits");
    Capabilities capabilities = capabilities(file);
    Paths paths = paths(file.map("motion"));
    Map<Moment, List<YamlMap.Text>> lines = lines(file);
    file.refuseOthers();
    new DialectCheck(file, capabilities, problems).check(lines);
    problems.throwIfErrors();
    Map<Moment, List<String>> texts = new EnumMap<>(Moment.class);
    lines.forEach((m, l) -> texts.put(m, l.stream().map(YamlMap.Text::value).toList()));
    return new DialectPost(new Dialect(id, summary, capabilities, paths, texts));
  }

  private static Capabilities capabilities(YamlMap file) {
    Set<String> codes = new TreeSet<>();
    file.words("codes").forEach(c -> codes.add(c.toUpperCase(Locale.ROOT)));
    return new Capabilities(
        codes,
        arcs(file.map("arcs")),
        cycles(codes),
        file.choice("tool change", ToolChanging.SEPARATE_PROGRAMS),
        new Capabilities.Coordinates(
            file.yes("finds home"), codes.contains("G54"), codes.contains("G43")),
        file.choice("dwell", DwellWord.NONE),
        file.choice("spindle", SpindleDrive.BY_HAND) == SpindleDrive.BY_PROGRAM,
        torch(file),
        numbers(file.map("numbers")),
        layout(file.map("lines")),
        files(file.map("files")));
  }

  private static Capabilities.Arcs arcs(YamlMap map) {
    ArcFormat format = map.choice("format", ArcFormat.NONE);
    Set<Plane> planes = planes(map);
    double smallest = Math.min(map.lengthMm("smallest radius", 0.1), LARGEST_RADIUS_MM);
    double largest = Math.min(map.lengthMm("largest radius", 2_000), LARGEST_RADIUS_MM);
    if (smallest > largest) {
      map.wrong("smallest radius", "smallest radius is larger than largest radius", "");
      smallest = largest;
    }
    Capabilities.Arcs arcs =
        new Capabilities.Arcs(
            format,
            planes.isEmpty() && format != ArcFormat.NONE ? EnumSet.of(Plane.XY) : planes,
            map.yes("helices"),
            map.yes("full circles"),
            smallest,
            largest);
    map.refuseOthers();
    return arcs;
  }

  private static Set<Plane> planes(YamlMap map) {
    Set<Plane> planes = EnumSet.noneOf(Plane.class);
    for (String word : map.words("planes")) {
      try {
        planes.add(Plane.valueOf(word.toUpperCase(Locale.ROOT)));
      } catch (IllegalArgumentException e) {
        map.wrong("planes", "no plane is named \"" + word + "\"", "XY, ZX and YZ are");
      }
    }
    return planes;
  }

  private static Set<Cycle> cycles(Set<String> codes) {
    Set<Cycle> cycles = EnumSet.noneOf(Cycle.class);
    if (codes.contains("G99") && codes.contains("G80")) {
      addIf(cycles, Cycle.PLAIN, codes.contains("G81"));
      addIf(cycles, Cycle.DWELL, codes.contains("G82"));
      addIf(cycles, Cycle.PECK, codes.contains("G83"));
    }
    return cycles;
  }

  private static void addIf(Set<Cycle> cycles, Cycle cycle, boolean there) {
    if (there) {
      cycles.add(cycle);
    }
  }

  private static Paths paths(YamlMap map) {
    OptionalDouble corners =
        map.text("corners").isPresent()
            ? OptionalDouble.of(map.lengthMm("corners", 0))
            : OptionalDouble.empty();
    Paths paths = new Paths(map.choice("rapids", Rapids.UNSAID), corners);
    map.refuseOthers();
    return paths;
  }

  private static Capabilities.Torch torch(YamlMap file) {
    TorchKind kind = file.choice("torch", TorchKind.NONE);
    return new Capabilities.Torch(
        kind != TorchKind.NONE, kind == TorchKind.TOUCH, file.yes("height control"));
  }

  private static Capabilities.Numbers numbers(YamlMap map) {
    Capabilities.Numbers numbers =
        new Capabilities.Numbers(
            map.number("mm", 3, 1, 6),
            map.number("inch", 4, 1, 6),
            map.choice("point", Point.AS_NEEDED) == Point.ALWAYS);
    map.refuseOthers();
    return numbers;
  }

  private static Capabilities.Layout layout(YamlMap map) {
    Capabilities.Layout layout =
        new Capabilities.Layout(
            map.choice("comments", CommentForm.NONE),
            map.number("longest", USUAL_LINE_LENGTH, 40, LONGEST_LINE),
            map.yes("numbered"),
            map.choice("words", WordUse.WHEN_CHANGED) == WordUse.ALWAYS,
            map.choice("codes", CodeForm.SHORT) == CodeForm.TWO_DIGITS,
            map.yes("percent"),
            map.choice("end", LineEnd.LF) == LineEnd.CRLF);
    map.refuseOthers();
    return layout;
  }

  private static Capabilities.Files files(YamlMap map) {
    Capabilities.Files files =
        new Capabilities.Files(
            map.number("name", USUAL_NAME_LENGTH, 4, LONGEST_NAME),
            map.text("ending").orElse(".nc"),
            map.yes("capitals"),
            (long) KIB * map.number("largest kib", Integer.MAX_VALUE, 1, Integer.MAX_VALUE));
    map.refuseOthers();
    return files;
  }

  private static Map<Moment, List<YamlMap.Text>> lines(YamlMap file) {
    YamlMap map = file.map("write");
    Map<Moment, List<YamlMap.Text>> lines = new EnumMap<>(Moment.class);
    for (Moment moment : Moment.values()) {
      lines.put(moment, map.lines(moment.key()));
    }
    map.refuseOthers();
    return lines;
  }
}
