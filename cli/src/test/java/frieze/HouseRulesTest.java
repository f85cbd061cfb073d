package frieze;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules about the sources that no compiler checks. */
class HouseRulesTest {
  private static final Path ROOT = Path.of("..");
  private static final int LONGEST_FILE = 400;

  /**
   * The declarative table of keys: data, read from top to bottom, with no logic to hold in mind.
   */
  private static final String TABLE = "JobKeys.java";

  private static final Pattern FORMAT_WITHOUT_LOCALE =
      Pattern.compile("String\\.format\\(\\s*\"|\\.formatted\\(|to(Lower|Upper)Case\\(\\)");

  @Test
  void every_package_says_what_comes_in_and_what_goes_out() {
    List<Path> without = new ArrayList<>();
    for (Path source : mainSources()) {
      Path info = source.resolveSibling("package-info.java");
      if (!Files.exists(info) || !read(info).contains("In:")) {
        without.add(source.getParent());
      }
    }
    assertThat(without.stream().distinct()).isEmpty();
  }

  @Test
  void no_file_is_longer_than_a_reader_can_hold() {
    assertThat(mainSources())
        .filteredOn(p -> read(p).lines().count() > LONGEST_FILE && !p.endsWith(TABLE))
        .as("files of more than %d lines", LONGEST_FILE)
        .isEmpty();
  }

  @Test
  void no_text_depends_on_the_locale() {
    assertThat(mainSources())
        .filteredOn(p -> FORMAT_WITHOUT_LOCALE.matcher(read(p)).find())
        .as("files that format or change case without naming a locale")
        .isEmpty();
  }

  @Test
  void the_top_level_holds_what_it_should() throws IOException {
    try (Stream<Path> top = Files.list(ROOT)) {
      assertThat(
              top.map(p -> p.getFileName().toString())
                  .filter(n -> !n.startsWith(".") && !n.equals("target")))
          .containsExactlyInAnyOrder(
              "README.md",
              "DEVELOPERS.md",
              "pom.xml",
              "cli",
              "geometry",
              "posts",
              "test-fixtures",
              "docs");
    }
  }

  private static List<Path> mainSources() {
    List<Path> sources = new ArrayList<>();
    for (String module : List.of("test-fixtures", "geometry", "posts", "cli")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src/main/java"))) {
        files
            .filter(p -> p.toString().endsWith(".java"))
            .filter(p -> !p.endsWith("package-info.java"))
            .forEach(sources::add);
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
    }
    assertThat(sources).hasSizeGreaterThan(40);
    return sources;
  }

  private static String read(Path path) {
    try {
      return Files.readString(path);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
