package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A dialect file of the shop's own as the post of a job. */
class DialectPostTest {
  private static final String DIALECT = "my-router.yaml";

  @TempDir Path folder;

  private Shell shell;
  private Path job;

  @BeforeEach
  void start() throws IOException {
    shell = new Shell(folder);
    assertThat(shell.run("new", "b").code()).isZero();
    job = folder.resolve("b/job.yaml");
  }

  private void post(String name) throws IOException {
    String text = Files.readString(job).replaceFirst("(?m)^post:.*\n", "");
    Files.writeString(job, text.replaceFirst("(?m)^machine:", "post: " + name + "\nmachine:"));
  }

  @Test
  void a_printed_post_used_as_a_file_writes_the_same_programs() throws IOException {
    Shell.Result printed = shell.run("posts", "straight-only");
    assertThat(printed.code()).isZero();
    Files.writeString(folder.resolve("b").resolve(DIALECT), printed.out());
    post(DIALECT);
    assertThat(shell.run("make", "b/job.yaml", "--out", "own").code()).isZero();
    post("straight-only");
    assertThat(shell.run("make", "b/job.yaml", "--out", "built-in").code()).isZero();
    String name = "front/FRONT01.NC";
    assertThat(folder.resolve("own").resolve(name))
        .hasSameTextualContentAs(folder.resolve("built-in").resolve(name));
  }

  @Test
  void a_mistake_in_a_dialect_file_is_told_with_its_place() throws IOException {
    String good = shell.run("posts", "straight-only").out();
    Files.writeString(
        folder.resolve("b").resolve(DIALECT), good.replaceFirst("(?m)^codes:", "codez:"));
    post(DIALECT);
    Shell.Result result = shell.run("make", "b/job.yaml");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err()).containsPattern("my-router\\.yaml:\\d+:1: error\\[POST-\\d+\\]");
  }

  @Test
  void a_post_that_does_not_exist_is_named() {
    Shell.Result result = shell.run("posts", "nope");
    assertThat(result.code()).isEqualTo(ExitCode.USAGE.number());
    assertThat(result.err()).contains("no built-in post named \"nope\"");
  }
}
