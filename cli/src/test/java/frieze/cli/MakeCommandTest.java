package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MakeCommandTest {
  @TempDir Path folder;
  private Shell shell;

  @BeforeEach
  void write_the_job() throws IOException {
    SmallJob.write(folder);
    shell = new Shell(folder);
  }

  private Map<String, String> made() throws IOException {
    Map<String, String> files = new TreeMap<>();
    Path made = folder.resolve("small");
    if (Files.exists(made)) {
      try (Stream<Path> all = Files.walk(made)) {
        for (Path file : all.filter(Files::isRegularFile).toList()) {
          files.put(
              made.relativize(file).toString(),
              new String(Files.readAllBytes(file), java.nio.charset.StandardCharsets.ISO_8859_1));
        }
      }
    }
    return files;
  }

  @Test
  void a_job_makes_one_program_for_each_tool_and_a_manifest() throws IOException {
    Shell.Result result = shell.run("make", "job.yaml");
    assertThat(result.code()).as(result.err()).isZero();
    assertThat(made().keySet())
        .contains("front/front-01.nc", "front/front-02.nc", "front/" + OutputFolder.MANIFEST);
    assertThat(result.out()).contains("small/front/front-01.nc").contains("vee 60");
    assertThat(result.err()).contains("CLAMPS NOT CHECKED");
    assertThat(made().keySet()).noneMatch(name -> name.endsWith(".part"));
  }

  @Test
  void the_same_job_gives_the_same_bytes_in_every_locale() throws IOException {
    Locale usual = Locale.getDefault();
    try {
      assertThat(shell.run("make", "job.yaml").code()).isZero();
      Map<String, String> first = made();
      for (String tag : List.of("de-DE", "tr-TR", "ar-EG")) {
        Locale.setDefault(Locale.forLanguageTag(tag));
        assertThat(shell.run("make", "job.yaml").code()).isZero();
        assertThat(made()).as(tag).isEqualTo(first);
      }
    } finally {
      Locale.setDefault(usual);
    }
  }

  @Test
  void its_programs_pass_a_dry_run_from_the_command_line() {
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    Shell.Result result =
        shell.run(
            "dryrun", "--job", "job.yaml", "small/front/front-01.nc", "small/front/front-02.nc");
    assertThat(result.out()).contains("no errors");
    assertThat(result.code()).isZero();
  }

  private static String withSecond(String more) {
    return SmallJob.TEXT.stripTrailing() + "\n  second:\n    like: front\n" + more;
  }

  /** The first panel is fine; it is not written either. */
  @Test
  void a_dry_run_error_in_one_panel_leaves_the_files_of_all() throws IOException {
    Files.writeString(folder.resolve("job.yaml"), withSecond(""));
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    Map<String, String> before = made();
    // A clamp in the middle of the leaf, taller than the clearance; and all is a little deeper.
    Files.writeString(
        folder.resolve("job.yaml"),
        withSecond("    clamps: [{name: clamp, x: 45, y: 40, width: 10, depth: 10, above: 20}]\n")
            .replace("depth: 1.5", "depth: 1.6"));
    Shell.Result result = shell.run("make", "job.yaml");
    assertThat(result.code()).as(result.err()).isEqualTo(ExitCode.FINDING.number());
    assertThat(result.err()).contains("NOTHING IS WRITTEN", "in \"second\"", "DRY-040");
    assertThat(result.out()).isEmpty();
    assertThat(made()).isEqualTo(before);
  }

  @Test
  void programs_that_are_not_made_any_more_are_removed_unless_somebody_changed_them()
      throws IOException {
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    Path second = folder.resolve("small/front/front-02.nc");
    assertThat(second).exists();
    Path own = Files.writeString(folder.resolve("small/front/own.nc"), "(mine)\n");
    Files.writeString(
        folder.resolve("job.yaml"),
        SmallJob.TEXT.substring(0, SmallJob.TEXT.indexOf("      - cutout")));
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    assertThat(second).doesNotExist();
    assertThat(own).exists();

    Files.writeString(folder.resolve("job.yaml"), SmallJob.TEXT);
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    Files.writeString(second, "(changed by hand)\n");
    Files.writeString(
        folder.resolve("job.yaml"),
        SmallJob.TEXT.substring(0, SmallJob.TEXT.indexOf("      - cutout")));
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    assertThat(second).hasContent("(changed by hand)");
  }

  @Test
  void a_folder_that_can_not_be_written_is_exit_code_4() throws IOException {
    // A file where the folder should be: fails for every user, also for one who may write anywhere.
    Files.writeString(folder.resolve("small"), "in the way");
    Shell.Result result = shell.run("make", "job.yaml");
    assertThat(result.code()).as(result.err()).isEqualTo(ExitCode.DISK.number());
    assertThat(result.err()).contains("small");
    assertThat(folder.resolve("small")).hasContent("in the way");
  }

  /** The second folder can't be made: the first panel keeps its files, and no part is left. */
  @Test
  void a_disk_that_fails_at_one_panel_leaves_the_files_of_all() throws IOException {
    assertThat(shell.run("make", "job.yaml").code()).isZero();
    Map<String, String> before = made();
    Files.writeString(folder.resolve("small/second"), "in the way");
    Files.writeString(
        folder.resolve("job.yaml"), withSecond("").replace("depth: 1.5", "depth: 1.6"));
    assertThat(shell.run("make", "job.yaml").code()).isEqualTo(ExitCode.DISK.number());
    Files.delete(folder.resolve("small/second"));
    assertThat(made()).isEqualTo(before);
  }
}
