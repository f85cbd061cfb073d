package frieze.job;

import frieze.post.DialectFile;
import frieze.post.Post;
import frieze.post.Posts;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** The post that a job names: one that is built in or plugged in, or a dialect file. */
public final class ChosenPost {
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
  public static Post of(String name, SourceFiles files) {
    return find(name, files)
        .orElseThrow(() -> new IllegalArgumentException("no post named " + name));
  }

  /**
   * Finds a post.
   *
   * @param name of a post, or of a dialect file as the files know it
   * @return empty if there is no post of that name
   * @throws frieze.diagnostic.BadInputException with everything that is wrong in a dialect file
   * @throws UncheckedIOException if a dialect file cannot be read
   */
  public static Optional<Post> find(String name, SourceFiles files) {
    if (!isFile(name)) {
      return Posts.find(name);
    }
    try {
      String text = new String(files.read(name), StandardCharsets.UTF_8);
      return Optional.of(DialectFile.read(name, text));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
