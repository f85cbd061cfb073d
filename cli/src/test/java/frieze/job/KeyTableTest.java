package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Section;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class KeyTableTest {
  private static final Path DOCS = Path.of("..", "docs", "reference");

  static Stream<Section> roots() {
    return Stream.of(JobKeys.Root.SECTION, ShopKeys.Root.SECTION);
  }

  @Test
  void the_reference_page_is_what_the_table_says() throws IOException {
    assertThat(Files.readString(DOCS.resolve("job-file.md")))
        .as("write it anew with: cli/frieze keys --as page > docs/reference/job-file.md")
        .isEqualTo(KeyPage.write());
  }

  @Test
  void every_code_has_a_section_in_the_messages_page() throws IOException {
    List<String> heads =
        Files.readAllLines(DOCS.resolve("messages").resolve("job.md")).stream()
            .filter(line -> line.startsWith("## "))
            .toList();
    assertThat(heads)
        .containsExactlyElementsOf(
            Stream.of(JobCode.values()).map(c -> "## " + c.id() + " " + c.title()).toList());
  }

  @ParameterizedTest
  @MethodSource("roots")
  void names_are_unique_in_each_section_and_sections_in_each_file(Section root) {
    Set<String> sections = new HashSet<>();
    for (Section section : KeyPage.reachable(root)) {
      assertThat(sections.add(section.name())).as(section.name()).isTrue();
      Set<String> keys = new HashSet<>();
      section
          .keys()
          .forEach(
              key -> key.names().forEach(name -> assertThat(keys.add(name)).as(name).isTrue()));
    }
  }

  @ParameterizedTest
  @MethodSource("roots")
  void every_key_is_explained(Section root) {
    for (Section section : KeyPage.reachable(root)) {
      assertThat(section.doc()).as(section.name()).endsWith(".");
      for (Key<?> key : section.keys()) {
        assertThat(key.doc()).as(section.name() + "." + key.name()).isNotBlank();
        assertThat(key.type().describe()).as(section.name() + "." + key.name()).isNotBlank();
      }
    }
  }
}
