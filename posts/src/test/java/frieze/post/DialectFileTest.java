package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.rs274.ReadingRules.Paths;
import frieze.rs274.ReadingRules.Rapids;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DialectFileTest {
  private static final String SMALLEST =
      """
      post: mine
      suits: One router.
      codes: G0 G1 G20 G21 G90 M0 M2
      write:
        start: "{units} G90"
        stop: M0
        end: M2
      """;

  private static List<Diagnostic> problems(String text) {
    BadInputException refusal =
        catchThrowableOfType(BadInputException.class, () -> DialectFile.read("mine.yaml", text));
    assertThat(refusal).as("nothing was refused in\n%s", text).isNotNull();
    return refusal.diagnostics();
  }

  @Test
  void what_is_not_said_is_not_understood() {
    Post post = DialectFile.read("mine.yaml", SMALLEST);

    assertThat(post.id()).isEqualTo("mine");
    assertThat(post.capabilities().arcs().planes()).isEmpty();
    assertThat(post.capabilities().cycles()).isEmpty();
    assertThat(post.capabilities().spindle()).isFalse();
    assertThat(post.capabilities().coordinates().machine()).isFalse();
  }

  @Test
  void how_the_machine_moves_is_said_for_the_dry_run() {
    Post unsaid = DialectFile.read("mine.yaml", SMALLEST);
    Post said =
        DialectFile.read("mine.yaml", SMALLEST + "motion: {rapids: each axis, corners: 0.02 in}\n");

    assertThat(unsaid.reading().paths())
        .isEqualTo(new Paths(Rapids.UNSAID, OptionalDouble.empty()));
    assertThat(said.reading().paths())
        .isEqualTo(new Paths(Rapids.EACH_AXIS, OptionalDouble.of(0.508)));
  }

  static Stream<String> builtIn() {
    return Posts.all().stream().map(Post::id);
  }

  @ParameterizedTest
  @MethodSource("builtIn")
  void each_built_in_post_is_a_file_to_start_from(String id) {
    String text = Posts.dialectFile(id).orElseThrow();

    Post read = DialectFile.read(id + ".yaml", text);

    assertThat(read.id()).isEqualTo(id);
    assertThat(read.capabilities()).isEqualTo(Posts.find(id).orElseThrow().capabilities());
  }

  record Bad(String name, String from, String to, PostCode code, int line, int column) {
    @Override
    public String toString() {
      return name;
    }
  }

  static Stream<Bad> bad() {
    return Stream.of(
        new Bad("unknown key", "suits:", "suitz:", PostCode.UNKNOWN_KEY, 2, 1),
        new Bad(
            "tool change without words",
            "codes:",
            "tool change: stop\ncodes:",
            PostCode.CONTRADICTION,
            3,
            14),
        new Bad(
            "unknown key inside",
            "  stop: M0",
            "  halt: M0\n  stop: M0",
            PostCode.UNKNOWN_KEY,
            6,
            3),
        new Bad("duplicate key", "suits:", "post: x\nsuits:", PostCode.DUPLICATE_KEY, 2, 1),
        new Bad("missing key", "suits: One router.\n", "", PostCode.MISSING_KEY, 1, 1),
        new Bad("missing start", "  start: \"{units} G90\"\n", "", PostCode.MISSING_KEY, 5, 3),
        new Bad("name", "post: mine", "post: My Router", PostCode.WRONG_VALUE, 1, 7),
        new Bad("choice", "codes:", "dwell: P minutes\ncodes:", PostCode.WRONG_VALUE, 3, 8),
        new Bad("yes or no", "codes:", "finds home: maybe\ncodes:", PostCode.WRONG_VALUE, 3, 13),
        new Bad("number", "codes:", "numbers: {mm: 9}\ncodes:", PostCode.WRONG_VALUE, 3, 15),
        new Bad(
            "length", "codes:", "arcs: {smallest radius: 1}\ncodes:", PostCode.WRONG_VALUE, 3, 25),
        new Bad("code", "G0 G1", "G0 G01x", PostCode.WRONG_VALUE, 3, 8),
        new Bad("placeholder", "{units}", "{unit}", PostCode.UNKNOWN_PLACEHOLDER, 5, 10),
        new Bad(
            "placeholder elsewhere",
            "end: M2",
            "end: S{rpm} M2",
            PostCode.UNKNOWN_PLACEHOLDER,
            7,
            8),
        new Bad(
            "arcs without G2",
            "codes:",
            "arcs: {format: centre}\ncodes:",
            PostCode.CONTRADICTION,
            3,
            7),
        new Bad(
            "dwell without G4", "codes:", "dwell: P seconds\ncodes:", PostCode.CONTRADICTION, 3, 8),
        new Bad(
            "changer without M6",
            "codes:",
            "tool change: changer\ncodes:",
            PostCode.CONTRADICTION,
            3,
            14),
        new Bad(
            "home without G53", "codes:", "finds home: yes\ncodes:", PostCode.CONTRADICTION, 3, 13),
        new Bad(
            "touch without G38.2", "codes:", "torch: touch\ncodes:", PostCode.CONTRADICTION, 3, 8),
        new Bad("state", "\"{units} G90\"", "\"{units}\"", PostCode.CONTRADICTION, 5, 3),
        new Bad(
            "capitals",
            "codes:",
            "files: {name: 12, capitals: yes}\ncodes:",
            PostCode.CONTRADICTION,
            3,
            8),
        new Bad("code not declared", "end: M2", "end: M30", PostCode.UNREADABLE_LINE, 7, 8),
        new Bad("no word", "end: M2", "end: STOP", PostCode.UNREADABLE_LINE, 7, 8),
        new Bad("comment in a line", "end: M2", "end: M2 (bye)", PostCode.UNREADABLE_LINE, 7, 8),
        new Bad("too long", "end: M2", "end: " + "X1 ".repeat(30), PostCode.UNREADABLE_LINE, 7, 8),
        new Bad("not YAML", "post: mine", "post: [", PostCode.NOT_YAML, 3, 6));
  }

  /** A dialect with all that the smallest one has not, to be broken in one place at a time. */
  private static final String LARGEST =
      """
      post: mine
      suits: One table.
      codes: G0 G1 G2 G3 G4 G17 G20 G21 G38.2 G53 G54 G90 G92 G94 M0 M2 M3 M5 M6 M8 M9
      arcs: {format: centre, planes: XY}
      tool change: changer
      finds home: yes
      dwell: P seconds
      torch: touch
      height control: yes
      lines: {comments: parentheses}
      write:
        start: "{units} G90 G17 G94 G54"
        raise: G53 G0 Z0
        tool change: T{tool} M6
        touched: G92 Z{z}
        torch on: M3
        torch off: M5
        height follow: M8
        height hold: M9
        stop: ["{message}", M0]
        end: M2
      """;

  private static Bad contradiction(String name, String from, String to, int line, int column) {
    return new Bad(name, from, to, PostCode.CONTRADICTION, line, column);
  }

  static Stream<Bad> badLargest() {
    String codes = "G17 G20";
    return Stream.of(
        contradiction("arcs without G17", codes, "G20", 4, 7),
        contradiction("arcs in ZX without G18", "planes: XY", "planes: XY ZX", 4, 7),
        contradiction("arcs in YZ without G19", "planes: XY", "planes: YZ", 4, 7),
        contradiction(
            "full circles by radius", "format: centre", "format: radius, full circles: yes", 4, 7),
        contradiction("arcs on short lines", "lines: {", "lines: {longest: 50, ", 10, 8),
        contradiction("no M0", " M0 M2", " M2", 3, 8),
        contradiction("no units", " G20 G21", " G21", 3, 8),
        contradiction("a changer and no home", "finds home: yes", "finds home: no", 5, 14),
        contradiction("lines to raise and no home", "finds home: yes", "finds home: no", 13, 10),
        contradiction("lines to change by hand", "change: changer", "change: stop", 14, 16),
        contradiction("a spindle and a torch", "dwell:", "spindle: by program\ndwell:", 7, 10),
        contradiction("height control and no torch", "torch: touch", "torch: none", 9, 17),
        contradiction("torch lines and no torch", "torch: touch", "torch: none", 16, 13),
        contradiction("touch lines and no touch", "torch: touch", "torch: plain", 15, 12),
        contradiction("height lines and no control", "control: yes", "control: no", 18, 18),
        contradiction("spindle lines by hand", "  end: M2", "  spindle on: M3\n  end: M2", 21, 15),
        contradiction("dust lines by hand", "  end: M2", "  dust off: M9\n  end: M2", 21, 13),
        contradiction("a torch that cannot wait", "dwell: P seconds", "dwell: none", 8, 8),
        contradiction("a stop that says nothing", "[\"{message}\", M0]", "M0", 12, 3),
        contradiction("no plane at the start", "G90 G17", "G90", 12, 3),
        contradiction("no feed mode at the start", "G94 G54\"", "G54\"", 12, 3),
        contradiction("no offset at the start", "G94 G54\"", "G94\"", 12, 3),
        contradiction("a touch at a fixed height", "Z{z}", "Z-1.5", 15, 12),
        missingLines("raise: G53 G0 Z0"),
        missingLines("tool change: T{tool} M6"),
        missingLines("touched: G92 Z{z}"),
        missingLines("torch on: M3"),
        missingLines("torch off: M5"),
        missingLines("height follow: M8"),
        missingLines("height hold: M9"),
        missingLines("stop: [\"{message}\", M0]"),
        missingLines("end: M2"),
        new Bad("plane", "planes: XY", "planes: XZ", PostCode.WRONG_VALUE, 4, 32),
        new Bad(
            "radii the wrong way round",
            "planes: XY",
            "smallest radius: 5 mm, largest radius: 1 mm",
            PostCode.WRONG_VALUE,
            4,
            41),
        new Bad("ending", "lines:", "files: {ending: nc}\nlines:", PostCode.WRONG_VALUE, 10, 8),
        new Bad("keys needed", "arcs: {format: centre, planes: XY}", "arcs: yes", WRONG, 4, 7),
        new Bad("one text needed", "finds home: yes", "finds home: [yes]", WRONG, 6, 13),
        new Bad("lines of text needed", "end: M2", "end: {a: M2}", WRONG, 21, 8),
        new Bad("key that is no word", "torch: touch", "[a]: b\ntorch: touch", UNKNOWN, 8, 1),
        new Bad("empty line", "end: M2", "end: [\"\", M2]", PostCode.UNREADABLE_LINE, 21, 9),
        new Bad(
            "message beside words", "M0]", "\"{message} M0\"]", PostCode.UNREADABLE_LINE, 20, 23),
        new Bad(
            "message elsewhere",
            "end: M2",
            "end: [\"{message}\", M2]",
            PostCode.UNKNOWN_PLACEHOLDER,
            21,
            9));
  }

  private static final PostCode WRONG = PostCode.WRONG_VALUE;
  private static final PostCode UNKNOWN = PostCode.UNKNOWN_KEY;

  private static Bad missingLines(String lines) {
    return new Bad("without " + lines, "  " + lines + "\n", "", PostCode.MISSING_KEY, 12, 3);
  }

  @Test
  void the_largest_dialect_is_good_before_it_is_broken() {
    assertThat(DialectFile.read("mine.yaml", LARGEST).capabilities().torch().touch()).isTrue();
  }

  @ParameterizedTest
  @MethodSource("badLargest")
  void what_contradicts_itself_is_told_with_line_and_column(Bad bad) {
    assertToldWithPlace(LARGEST, bad);
  }

  @ParameterizedTest
  @MethodSource("bad")
  void what_is_wrong_is_told_with_line_and_column(Bad bad) {
    assertToldWithPlace(SMALLEST, bad);
  }

  private static void assertToldWithPlace(String good, Bad bad) {
    assertThat(good).contains(bad.from());
    List<Diagnostic> problems = problems(good.replace(bad.from(), bad.to()));

    assertThat(problems)
        .anySatisfy(
            d -> {
              assertThat(d.code()).isEqualTo(bad.code());
              assertThat(d.where().source()).isEqualTo("mine.yaml");
              assertThat(d.where().line()).isEqualTo(bad.line());
              assertThat(d.where().column()).isEqualTo(bad.column());
            });
  }

  @Test
  void all_errors_come_to_light_at_once() {
    List<Diagnostic> problems =
        problems(
            SMALLEST
                .replace("suits:", "suitz:")
                .replace("M2\n", "M30\n")
                .replace("{units}", "{u}"));

    assertThat(problems)
        .extracting(Diagnostic::code)
        .contains(PostCode.UNKNOWN_KEY, PostCode.MISSING_KEY, PostCode.UNKNOWN_PLACEHOLDER);
  }

  @Test
  void a_text_without_keys_is_refused() {
    for (String text : List.of("", "- a\n- b\n", "just words", "\t", "a: &x [*x]")) {
      assertThatThrownBy(() -> DialectFile.read("mine.yaml", text))
          .as(text)
          .isInstanceOf(BadInputException.class);
    }
  }

  @Test
  void brackets_too_deep_for_the_stack_are_refused() {
    List<Diagnostic> problems = problems("post: " + "[".repeat(100_000));
    assertThat(problems.get(0).code()).isEqualTo(PostCode.NOT_YAML);
    assertThat(problems.get(0).where().line()).isEqualTo(1);
  }

  @Test
  void the_example_in_the_docs_is_good() throws IOException {
    String page = Files.readString(Path.of("..", "docs", "posts", "dialect-files.md"));
    int start = page.indexOf("```yaml\n") + "```yaml\n".length();
    String example = page.substring(start, page.indexOf("```", start));
    Post post = DialectFile.read("my-router.yaml", example);
    assertThat(post.id()).isEqualTo("my-router");
    assertThat(post.capabilities().files().extension()).isEqualTo(".tap");
  }
}
