package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import java.util.List;
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

  @ParameterizedTest
  @MethodSource("bad")
  void what_is_wrong_is_told_with_line_and_column(Bad bad) {
    assertThat(SMALLEST).contains(bad.from());
    List<Diagnostic> problems = problems(SMALLEST.replace(bad.from(), bad.to()));

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
}
