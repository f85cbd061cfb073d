package frieze.job;

import frieze.post.DialectFile;
import frieze.post.Post;
import frieze.post.Posts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The post that a job names: one that is built in or plugged in, or a dialect file. */
final class ChosenPost {
  private ChosenPost() {}

  /** Whether a name is that of a file. */
  static boolean isFile(String name) {
    return name.endsWith(".yaml") || name.endsWith(".yml");
  }

  /**
   * Finds a post that the job's reader has found to exist.
   *
   * @throws frieze.diagnostic.BadInputException with everything that is wrong in a dialect file
   */
  static Post of(String name, SourceFiles files) {
    if (!isFile(name)) {
      return Posts.find(name)
          .orElseThrow(() -> new IllegalArgumentException("no post named " + name));
    }
    try {
      return DialectFile.read(name, new String(files.read(name), StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
