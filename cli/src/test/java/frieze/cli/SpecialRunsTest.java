package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Passes in the air, and programs that go on where a run broke off. */
class SpecialRunsTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void write_the_job() throws IOException {
    SmallJob.write(folder);
    shell = new Shell(folder);
  }

  private String text(String file) throws IOException {
    return Files.readString(folder.resolve(file));
  }

  @Test
  void an_air_pass_is_written_beside_the_programs_and_says_what_it_is() throws IOException {
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    Shell.Result result = shell.run("make", "job.yaml", "--air", "30 mm");
    assertThat(result.code()).as(result.err()).isZero();
    assertThat(result.out()).contains("removes 0 mm3");
    String usual = text("small/front/front-01.nc");
    String air = text("small/air-front/air-front-01.nc");
    assertThat(air)
        .contains("AIR PASS", "SPINDLE OFF, AND KEPT OFF", "Z35", "Z28.5")
        .doesNotContain("DIAL", "Z-");
    assertThat(usual).contains("Z5", "Z-1.5");
    assertThat(air.lines().filter(l -> l.contains("X")).count())
        .isEqualTo(usual.lines().filter(l -> l.contains("X")).count());
  }

  @Test
  void an_air_pass_that_would_cut_is_refused_with_the_depth() throws IOException {
    Shell.Result result = shell.run("make", "job.yaml", "--air", "2");
    assertThat(result.code()).isEqualTo(ExitCode.FINDING.number());
    assertThat(result.err())
        .contains("NOTHING IS WRITTEN")
        .containsPattern("still reach 8\\.\\d mm deep");
    assertThat(folder.resolve("small/air-front")).doesNotExist();
  }

  @Test
  void a_rescue_goes_on_from_a_line_with_zero_found_again() throws IOException {
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    List<String> lines = text("small/front/front-02.nc").lines().toList();
    int line = lines.size() / 2;
    Shell.Result result = shell.run("make", "job.yaml", "--resume-from", "front-02.nc:" + line);
    assertThat(result.code()).as(result.err()).isZero();
    String made = "small/rescue-front-02-nc-" + line + "/";
    String rescue = text(made + "rescue-front-01.nc");
    assertThat(rescue)
        .contains("RESCUE of front-02.nc from line " + line)
        .contains("FIND X AND Y ZERO AGAIN");
    assertThat(rescue.indexOf("SPINDLE ON")).isLessThan(rescue.indexOf("G1 "));
    // What follows the broken line is there as it was.
    List<String> end = lines.subList(line + 5, lines.size());
    assertThat(rescue).endsWith(String.join("\n", end) + "\n");
    assertThat(text(made + "rescue.svg")).contains(">Z</text>");
    // The usual programs are as they were.
    assertThat(text("small/front/front-02.nc").lines()).containsExactlyElementsOf(lines);
  }

  @Test
  void a_rescue_of_another_program_than_the_one_on_the_disk_is_refused() throws IOException {
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    Files.writeString(
        folder.resolve("job.yaml"), SmallJob.TEXT.replace("depth: 1.5", "depth: 1.2"));
    Shell.Result result = shell.run("make", "job.yaml", "--resume-from", "front-01.nc:60");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err()).contains("CLI-002").contains("small/front/front-01.nc");
  }

  @Test
  void places_that_do_not_exist_are_told() {
    assertThat(shell.run("make", "job.yaml", "--resume-from", "other.nc:5").err())
        .contains("JOB-028")
        .contains("front-01.nc, front-02.nc");
    assertThat(shell.run("make", "job.yaml", "--resume-from", "front-01.nc:99999").err())
        .contains("no line 99999");
    assertThat(shell.run("make", "job.yaml", "--resume-from", "front-01.nc:N50").err())
        .contains("no line N50");
    for (String[] wrong :
        new String[][] {
          {"--resume-from", "front-01.nc"},
          {"--resume-from", "front-01.nc:x"},
          {"--air", "up"},
          {"--air", "0"},
          {"--air", "5", "--resume-from", "front-01.nc:5"}
        }) {
      String[] all = new String[wrong.length + 2];
      all[0] = "make";
      all[1] = "job.yaml";
      System.arraycopy(wrong, 0, all, 2, wrong.length);
      assertThat(shell.run(all).code())
          .as(String.join(" ", wrong))
          .isEqualTo(ExitCode.USAGE.number());
    }
  }

  @Test
  void after_the_last_cut_nothing_is_left() throws IOException {
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    long lines = text("small/front/front-02.nc").lines().count();
    Shell.Result result = shell.run("make", "job.yaml", "--resume-from", "front-02.nc:" + lines);
    assertThat(result.code()).isZero();
    assertThat(result.out()).contains("Nothing is left to cut");
  }

  @Test
  void a_line_can_be_named_by_its_n_word() throws IOException {
    Files.writeString(
        folder.resolve("job.yaml"),
        SmallJob.TEXT.replace("artwork:", "post: iso-blocks\nartwork:"));
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    assertThat(shell.run("make", "job.yaml", "--resume-from", "front-02.nc:N300").code()).isZero();
    try (var made = Files.list(folder.resolve("small"))) {
      assertThat(made.map(p -> p.getFileName().toString()))
          .anyMatch(name -> name.startsWith("rescue-front-02-nc-"));
    }
  }
}
