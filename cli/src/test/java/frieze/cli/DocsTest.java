package frieze.cli;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.diagnostic.Code;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands in the docs are run as they stand there. */
class DocsTest {
  private static final Path DOCS = Path.of("..", "docs");
  private static final Pattern CONSOLE =
      Pattern.compile("^```console\\n(.*?)^```", Pattern.MULTILINE | Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");

  @TempDir Path folder;

  @Test
  void every_command_in_the_docs_works() throws IOException {
    List<Path> pages = new ArrayList<>();
    try (Stream<Path> all = Files.walk(DOCS)) {
      all.filter(p -> p.toString().endsWith(".md")).sorted().forEach(pages::add);
    }
    // Each page begins in a folder of its own, so that two can run at a time.
    int ran = pages.parallelStream().mapToInt(page -> run(page, pages.indexOf(page))).sum();
    assertThat(ran).as("commands in the docs").isGreaterThanOrEqualTo(8);
  }

  private int run(Path page, int number) {
    try {
      Shell shell = new Shell(withExamples(folder.resolve("page" + number)));
      List<String> commands = commands(Files.readString(page));
      for (String line : commands) {
        Shell.Result result = shell.run(words(line));
        assertThat(result.code()).as("%s: %s%n%s", page, line, result.err()).isZero();
      }
      return commands.size();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A folder that looks like the project's own: the pages name the examples from there. */
  private static Path withExamples(Path page) throws IOException {
    Path from = DOCS.resolve("examples/hall-bench");
    Path to = Files.createDirectories(page.resolve("docs/examples/hall-bench"));
    try (Stream<Path> files = Files.list(from)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Files.copy(file, to.resolve(file.getFileName()));
      }
    }
    return page;
  }

  private static List<String> commands(String page) {
    List<String> commands = new ArrayList<>();
    Matcher block = CONSOLE.matcher(page);
    while (block.find()) {
      block
          .group(1)
          .lines()
          .map(line -> line.replaceFirst("^\\$ ", "").replaceFirst("^cli/", ""))
          .filter(line -> line.startsWith("frieze "))
          .forEach(commands::add);
    }
    return commands;
  }

  private static String[] words(String line) {
    List<String> words = new ArrayList<>();
    Matcher word = WORD.matcher(line.substring("frieze ".length()));
    while (word.find()) {
      words.add(word.group(1) == null ? word.group(2) : word.group(1));
    }
    return words.toArray(new String[0]);
  }

  @Test
  void every_page_of_the_guide_can_be_found() throws IOException {
    String contents = Files.readString(DOCS.resolve("README.md"));
    for (String folder : List.of("guide", "reference")) {
      try (Stream<Path> pages = Files.list(DOCS.resolve(folder))) {
        for (Path page : pages.filter(p -> p.toString().endsWith(".md")).toList()) {
          assertThat(contents).contains("(" + folder + "/" + page.getFileName() + ")");
        }
      }
    }
  }

  @Test
  void the_page_of_commands_tells_every_exit_code() throws IOException {
    String page = Files.readString(DOCS.resolve("reference/commands.md"));
    for (ExitCode code : ExitCode.values()) {
      assertThat(page).contains("| " + code.number() + " | " + code.meaning() + " |");
    }
  }

  @Test
  void every_code_of_the_command_line_is_explained() throws IOException {
    String page = Files.readString(DOCS.resolve("reference/messages/cli.md"));
    for (Code code : CliCode.values()) {
      assertThat(page).contains("## " + code.id() + " " + code.title());
    }
  }
}
