package frieze.bridge;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class MessagesPageTest {
  @Test
  void every_code_has_its_section() throws Exception {
    String page = Files.readString(Path.of("../docs/reference/messages/bridge.md"));
    for (BridgeCode code : BridgeCode.values()) {
      assertThat(page).contains("## " + code.id() + " " + code.title() + "\n");
    }
    assertThat(page.split("\n## BRG-", -1)).hasSize(BridgeCode.values().length + 1);
  }
}
