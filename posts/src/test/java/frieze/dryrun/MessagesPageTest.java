package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.dryrun.finding.FindingCode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MessagesPageTest {
  @Test
  void every_code_has_its_section() throws Exception {
    String page = Files.readString(Path.of("../docs/reference/messages/dryrun.md"));
    Set<String> ids = new HashSet<>();
    for (FindingCode code : FindingCode.values()) {
      assertThat(page).contains("## " + code.id() + " " + code.title() + "\n");
      assertThat(code.id()).matches("DRY-\\d{3}");
      assertThat(ids.add(code.id())).as(code.id()).isTrue();
      assertThat(code.hint()).isNotEmpty();
    }
    assertThat(page.split("\n## DRY-", -1)).hasSize(FindingCode.values().length + 1);
  }
}
