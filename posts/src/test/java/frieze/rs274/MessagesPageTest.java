package frieze.rs274;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** The page of messages has a section for each code, in order, and no other. */
class MessagesPageTest {
  @Test
  void each_code_has_its_section() throws IOException {
    Path page = Path.of(System.getProperty("basedir", ""), "../docs/reference/messages/rs274.md");
    List<String> headings =
        Files.readAllLines(page).stream()
            .filter(line -> line.startsWith("## "))
            .map(line -> line.substring(3))
            .toList();
    assertThat(headings)
        .containsExactlyElementsOf(
            Stream.of(ProgramCode.values()).map(code -> code.id() + " " + code.title()).toList());
  }
}
