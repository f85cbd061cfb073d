package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Input that reads well and would hurt: found by people who tried to break Frieze. */
class UnsafeInputTest {
  private static final String ROUTER = "large router";

  @TempDir Path folder;

  private Shell shell;
  private Path job;

  @BeforeEach
  void start() throws IOException {
    shell = new Shell(folder);
    assertThat(shell.run("new", "b").code()).isZero();
    job = folder.resolve("b/job.yaml");
  }

  private Shell.Result make(String from, String to) throws IOException {
    String text = Files.readString(job);
    assertThat(text).containsPattern(from);
    Files.writeString(job, text.replaceFirst(from, to));
    return shell.run("make", "b/job.yaml");
  }

  private static void refused(Shell.Result result, String place, String code) {
    assertThat(result.code()).as(result.err()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err()).containsPattern(place + " error\\[" + code + "\\]");
  }

  @Test
  void readings_of_one_board_that_differ_by_much_are_refused() throws IOException {
    refused(make("thickness: [^}]*", "thickness: [0.75, 0.5]"), ":\\d+:\\d+:", "JOB-026");
  }

  @Test
  void a_clearance_of_nothing_is_refused() throws IOException {
    refused(make("    work:", "    clearance: 0.01 mm\n    work:"), ":\\d+:\\d+:", "JOB-009");
  }

  @Test
  void a_torch_post_is_refused_on_a_router() throws IOException {
    refused(make("(?m)^machine:", "post: plasma-plain\nmachine:"), ":\\d+:\\d+:", "JOB-033");
  }

  @Test
  void a_hole_over_the_edge_is_refused() throws IOException {
    String bore = "    work:\n      - bore: {tool: flat 1/8, diameter: 1/2, at: [{x: 1/8, y: 1}]}";
    refused(make("    work:", bore), ":\\d+:\\d+:", "PLAN-024");
  }

  @Test
  void brackets_without_end_are_refused_with_their_place() throws IOException {
    refused(make("(?m)^job: .*", "job: " + "[".repeat(5000)), ":\\d+:\\d+:", "JOB-001");
  }

  @Test
  void a_drawing_named_with_a_null_character_does_not_exist() throws IOException {
    refused(make("file: leaf.svg", "file: \"a\\\\0b.svg\""), ":\\d+:\\d+:", "JOB-016");
  }

  private Shell.Result dryRun(String text) throws IOException {
    Files.writeString(folder.resolve("p.nc"), text);
    return shell.run(
        "dryrun",
        "--machine",
        ROUTER,
        "--stock",
        "1300 x 800 x 18 mm",
        "--zero",
        "left front top",
        "--tool",
        "1=flat 1/8",
        "p.nc");
  }

  @Test
  void increments_longer_than_the_travel_are_an_error_from_anywhere() throws IOException {
    Shell.Result result = dryRun("G21 G91\nM3 S9000\nG0 Z5\nG1 Z-10 F200\nX5000 F900\nG0 Z5\nM2\n");
    assertThat(result.code()).isEqualTo(ExitCode.FINDING.number());
    assertThat(result.out()).contains("DRY-001").contains("from a place that is not known");
  }

  @Test
  void a_still_spindle_is_an_error_even_where_the_start_is_not_known() throws IOException {
    Shell.Result result = dryRun("G21 G90\nG0 Z5\nG1 Z-1 F200\nX50 F900\nG0 Z5\nM2\n");
    assertThat(result.code()).isEqualTo(ExitCode.FINDING.number());
    assertThat(result.out()).contains("DRY-010");
  }

  @Test
  void an_empty_program_is_not_called_fine() throws IOException {
    Shell.Result result = dryRun("");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.out() + result.err()).contains("RS-023");
  }

  @Test
  void names_that_would_speak_to_the_terminal_are_refused_and_shown_as_pictures()
      throws IOException {
    Shell.Result escaped = make("  front:", "  \"fr\\\\e[31mont\":");
    refused(escaped, ":\\d+:\\d+:", "JOB-0\\d+");
    assertThat(escaped.err()).doesNotContain("\u001b");
  }

  @Test
  void a_raw_control_character_in_a_job_is_shown_as_a_picture() throws IOException {
    Shell.Result raw = make("(?m)^job: .*", "job: a\u001b[31mb");
    assertThat(raw.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(raw.err()).doesNotContain("\u001b");
  }

  @Test
  void a_job_that_is_not_utf_8_is_refused_with_the_byte() throws IOException {
    byte[] text = Files.readAllBytes(job);
    text[text.length / 2] = (byte) 0xE9;
    Files.write(job, text);
    refused(shell.run("make", "b/job.yaml"), "job.yaml:\\d+:\\d+:", "JOB-001");
  }

  @Test
  void a_job_of_many_megabytes_is_refused_by_its_size() throws IOException {
    Files.writeString(job, "# " + "x".repeat(5_000_000) + "\n", StandardOpenOption.APPEND);
    Shell.Result result = shell.run("make", "b/job.yaml");
    refused(result, "job.yaml:", "JOB-001");
    assertThat(result.err()).contains("at most 3000000");
  }

  @Test
  void a_folder_is_called_a_folder() {
    Shell.Result result = shell.run("make", "b");
    refused(result, "b:", "CLI-001");
    assertThat(result.err()).contains("this is a folder");
  }

  @Test
  void names_of_folders_suit_every_system() {
    assertThat(FolderName.of("con")).isEqualTo("the-con");
    assertThat(FolderName.of("\ud83c\udf3f")).isEqualTo("unnamed");
    assertThat(FolderName.of("x ".repeat(500)).length()).isBetween(50, 60);
  }
}
