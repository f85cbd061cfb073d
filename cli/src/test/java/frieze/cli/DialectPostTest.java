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

  @Test
  void a_dialect_file_that_a_shop_names_lies_beside_the_shop() throws IOException {
    String dialect = shell.run("posts", "straight-only").out();
    Path shop = Files.createDirectories(folder.resolve("shop"));
    Files.writeString(shop.resolve(DIALECT), dialect);
    Files.writeString(
        shop.resolve("machines.yaml"),
        """
        units: mm
        machines:
          mine:
            post: my-router.yaml
            travel: {x: 760, y: 400, z: 80}
            rapid: {x: 4000, y: 4000, z: 1500}
            top feed: {x: 2500, y: 2500, z: 800}
            acceleration: {x: 200, y: 200, z: 100}
            spindle: {by hand: yes, lowest: 10000, highest: 27000}
        """);
    String text = Files.readString(job).replaceFirst("(?m)^post:.*\n", "");
    Files.writeString(
        job, text.replaceFirst("(?m)^machine:.*$", "machine: mine\nshop: ../shop/machines.yaml"));
    Shell.Result result = shell.run("make", "b/job.yaml", "--out", "own");
    assertThat(result.code()).as(result.err()).isZero();
    assertThat(folder.resolve("own/front/FRONT01.NC")).exists();
    Shell.Result read =
        shell.run(
            "dryrun",
            "--job",
            "b/job.yaml",
            "--post",
            "shop/my-router.yaml",
            "own/front/FRONT01.NC");
    assertThat(read.code()).as(read.out()).isZero();
  }

  @Test
  void a_dialect_file_that_is_not_there_is_told_with_the_place_where_it_was_looked_for()
      throws IOException {
    post("nowhere.yaml");
    Shell.Result result = shell.run("make", "b/job.yaml");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err())
        .contains("no dialect file b/nowhere.yaml")
        .contains("beside the file that names it");
  }

  @Test
  void a_dialect_file_of_too_many_brackets_is_bad_input() throws IOException {
    Files.writeString(folder.resolve("b").resolve(DIALECT), "post: " + "[".repeat(100_000));
    post(DIALECT);
    Shell.Result result = shell.run("make", "b/job.yaml");
    assertThat(result.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(result.err()).contains("POST-001");
  }
}
