package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The plug-in example of the docs, built into a jar and used by a job, as its page says. */
class PluginPostTest {
  private static final Path EXAMPLE =
      Path.of("..", "docs", "examples", "post-plugin", "src", "main");
  private static final String CLASS_PATH = System.getProperty("java.class.path");
  private static final String JOB =
      """
      job: Plugged
      units: mm
      post: tight-lines
      artwork:
        leaf: {file: leaf.svg, height: 40}
      panels:
        front:
          size: {width: 70, height: 60, corner: 5}
          stock: {material: white ash, length: 100, width: 90, thickness: 10}
          design:
            - place: leaf
              along: {count: 1}
          work:
            - groove: {on: leaf, tool: vee 60, depth: 1.5}
      """;

  @TempDir Path folder;
  private Path jar;

  @BeforeEach
  void build_the_jar() throws IOException {
    Path classes = Files.createDirectories(folder.resolve("classes"));
    List<String> arguments =
        new ArrayList<>(
            List.of(
                "-proc:none",
                "-Xlint:all,-path",
                "-Werror",
                "-cp",
                CLASS_PATH,
                "-d",
                classes.toString()));
    files(EXAMPLE.resolve("java")).forEach(f -> arguments.add(f.toString()));
    assertThat(
            ToolProvider.getSystemJavaCompiler()
                .run(null, null, null, arguments.toArray(new String[0])))
        .isZero();
    jar = folder.resolve("tight-post.jar");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
      for (Path root : List.of(classes, EXAMPLE.resolve("resources"))) {
        for (Path file : files(root)) {
          out.putNextEntry(new JarEntry(root.relativize(file).toString().replace('\\', '/')));
          Files.copy(file, out);
          out.closeEntry();
        }
      }
    }
    Files.write(folder.resolve("leaf.svg"), NewCommand.starter(NewCommand.Kind.BENCH, "leaf.svg"));
    Files.writeString(folder.resolve("job.yaml"), JOB);
  }

  private static List<Path> files(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      return all.filter(Files::isRegularFile).sorted().toList();
    }
  }

  /** Runs Frieze as its launcher does, with jars added to the class path. */
  private Shell.Result frieze(String plugins, String... args) throws Exception {
    List<String> command =
        new ArrayList<>(
            List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                CLASS_PATH + plugins,
                "frieze.cli.Main"));
    command.addAll(List.of(args));
    Path err = folder.resolve("err.txt");
    Process process =
        new ProcessBuilder(command).directory(folder.toFile()).redirectError(err.toFile()).start();
    String out;
    try (InputStream in = process.getInputStream()) {
      out = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
    return new Shell.Result(process.exitValue(), out, Files.readString(err));
  }

  @Test
  void a_job_is_written_by_the_plug_in() throws Exception {
    String plugin = System.getProperty("path.separator") + jar;
    assertThat(frieze(plugin, "posts").out()).contains("tight-lines");
    Shell.Result made = frieze(plugin, "make", "job.yaml");
    assertThat(made.code()).as(made.err()).isZero();
    String text = Files.readString(folder.resolve("plugged/front/FRONT01.TXT"));
    assertThat(text).contains("G21G17G90G94\n").containsPattern("\nG1X[-0-9.]+Y[-0-9.]+Z-1\\.5\n");
    Shell.Result without = frieze("", "make", "job.yaml");
    assertThat(without.code()).isEqualTo(ExitCode.BAD_INPUT.number());
    assertThat(without.err()).contains("no post named \"tight-lines\"");
  }
}
