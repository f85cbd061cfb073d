package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Each kind of bad input ends with exit code 3, a place, and nothing written. */
class BadInputTest {
  private static final String JOB =
      """
      job: Small
      units: mm
      artwork:
        leaf: {file: leaf.svg, height: 40}
      panels:
        front:
          size: {width: 70, height: 60}
          stock: {material: white ash, length: 100, width: 90, thickness: 10}
          design:
            - place: leaf
              along: {count: 1}
          work:
            - recess: {on: leaf, tool: flat 1/8, depth: 2}
            - cutout: {tool: flat 1/4}
      """;
  private static final String LEAF =
      "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"30mm\" height=\"40mm\""
          + " viewBox=\"0 0 30 40\"><path d=\"M15 0 L30 40 L0 40 Z\"/></svg>";
  private static final String BOMB =
      "<!DOCTYPE svg [<!ENTITY a \"aaaaaaaaaa\"><!ENTITY b \"&a;&a;&a;&a;&a;&a;&a;&a;\">"
          + "<!ENTITY c \"&b;&b;&b;&b;&b;&b;&b;&b;\"><!ENTITY d \"&c;&c;&c;&c;&c;&c;&c;&c;\">]>"
          + "<svg xmlns=\"http://www.w3.org/2000/svg\"><text>&d;</text></svg>";

  @TempDir Path folder;

  static Stream<Arguments> bad_jobs() {
    return Stream.of(
        Arguments.of("unknown key", "depth: 2", "dept: 2", "job.yaml:13:44: error[JOB-002]"),
        Arguments.of(
            "duplicate key",
            "{count: 1}",
            "{count: 1, count: 2}",
            "job.yaml:11:27: error[JOB-003]"),
        Arguments.of(
            "drawing that is traced",
            "{file: leaf.svg,",
            "{file: leaf.svg, trace: {},",
            "job.yaml:4:33: error[JOB-019]"),
        Arguments.of("wrong unit", "depth: 2", "depth: 2 rpm", "job.yaml:13:51: error[JOB-008]"),
        Arguments.of("not finite", "depth: 2", "depth: .inf", "job.yaml:13:51: error[JOB-009]"),
        Arguments.of("NaN", "width: 70", "width: .nan", "job.yaml:7:19: error[JOB-009]"),
        Arguments.of("missing artwork", "leaf.svg", "none.svg", "job.yaml:4:16: error[JOB-016]"),
        Arguments.of(
            "motif wider than the panel",
            "height: 40",
            "height: 100",
            "job.yaml:11:16: error[LAY-"),
        Arguments.of(
            "tool wider than every gap", "flat 1/8", "flat 1/2", "job.yaml:13:17: error[PLAN-"),
        Arguments.of(
            "depth beyond the stock", "depth: 2", "depth: 12", "job.yaml:13:51: error[JOB-022]"),
        Arguments.of(
            "machine smaller than the panel",
            "size: {width: 70, height: 60}\n    stock: {material: white ash, length: 100,",
            "size: {width: 900, height: 60}\n    stock: {material: white ash, length: 1000,",
            "job.yaml:7:19: error[JOB-021]"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bad_jobs")
  void a_bad_job_is_refused_with_its_place(String what, String right, String wrong, String expected)
      throws IOException {
    assertThat(JOB).as(what).contains(right);
    String job = what.startsWith("tool wider") ? JOB.replace("height: 40", "height: 9") : JOB;
    Shell.Result result = make(job.replace(right, wrong), LEAF);
    assertThat(result.err()).contains(expected).contains("^");
    refused(result);
  }

  static Stream<Arguments> bad_drawings() {
    return Stream.of(
        Arguments.of("not XML", "<svg><path"),
        Arguments.of("no drawing at all", "just text"),
        Arguments.of("an entity bomb", BOMB),
        Arguments.of("nothing to cut", "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"9\"/>"),
        Arguments.of(
            "only an external image",
            "<svg xmlns=\"http://www.w3.org/2000/svg\" xmlns:xlink=\"http://www.w3.org/1999/xlink\">"
                + "<image xlink:href=\"http://127.0.0.1:9/x.png\" width=\"9\" height=\"9\"/></svg>"));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("bad_drawings")
  void a_bad_drawing_is_refused_by_name(String what, String svg) throws IOException {
    Shell.Result result = make(JOB, svg);
    assertThat(result.err()).as(what).contains("leaf.svg").contains("error[ART-");
    refused(result);
  }

  @Test
  void a_job_that_is_not_there_is_bad_input() {
    Shell.Result result = new Shell(folder).run("make", "none.yaml");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err()).contains("none.yaml");
  }

  @Test
  void at_most_twenty_mistakes_are_shown() throws IOException {
    StringBuilder job = new StringBuilder("job: Many\n");
    for (int i = 0; i < 30; i++) {
      job.append("wrong").append(i).append(": 1\n");
    }
    Shell.Result result = make(job.toString(), LEAF);
    List<String> errors = result.err().lines().filter(l -> l.contains("error[")).toList();
    assertThat(errors).hasSize(Messages.SHOWN);
    assertThat(result.err()).contains("... and 11 more");
  }

  @Test
  void a_mistake_is_printed_with_its_line_a_caret_and_a_hint() throws IOException {
    Shell.Result result = make(JOB.replace("flat 1/4", "flat 1/5"), LEAF);
    assertThat(result.err())
        .isEqualTo(
            """
            job.yaml:14:24: error[JOB-012]: no tool named "flat 1/5" in the shop
                    - cutout: {tool: flat 1/5}
                                     ^^^^^^^^
            hint: did you mean "flat 1/2"?
            """);
  }

  private Shell.Result make(String job, String svg) throws IOException {
    Files.writeString(folder.resolve("job.yaml"), job);
    Files.writeString(folder.resolve("leaf.svg"), svg);
    return new Shell(folder).run("make", "job.yaml");
  }

  private void refused(Shell.Result result) {
    assertThat(result.code()).as(result.err()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.out()).isEmpty();
    assertThat(result.err()).doesNotContain("\tat ");
    assertThat(folder.resolve("small")).doesNotExist();
  }
}
