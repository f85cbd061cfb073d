package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the example plug-in to the contract of every post. */
class PluginExampleTest extends PostContractTest {
  private static Post post;

  @BeforeAll
  static void compile(@TempDir Path folder) {
    post = PluginExample.load(folder);
  }

  @Override
  protected Post post() {
    return post;
  }

  @Test
  void it_comes_from_outside_the_built_in_posts() {
    assertThat(post.getClass().getName()).isEqualTo("workshop.TightPost");
    assertThat(Posts.find(post.id())).isEmpty();
  }
}
