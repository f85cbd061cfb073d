package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/**
 * Programs kept as files, to see any change of a text. They are rewritten with {@code
 * -Dgolden.update=true}, and never where the environment variable CI is set.
 */
final class GoldenFiles {
  private final Path folder;

  GoldenFiles(String folder) {
    this.folder = Path.of("src", "test", "resources").resolve(folder);
  }

  /** A program and the place of its file below the folder. */
  record Golden(String path, String text) {}

  /** Compares all programs with their files, and finds files that no program is made for. */
  void compare(List<Golden> made) {
    try {
      if (Boolean.getBoolean("golden.update")) {
        update(made);
      }
      for (Golden golden : made) {
        Path file = folder.resolve(golden.path());
        assertThat(file).exists();
        assertThat(Files.readString(file, StandardCharsets.US_ASCII))
            .as(file.toString())
            .isEqualTo(golden.text());
      }
      assertThat(files())
          .containsExactlyInAnyOrderElementsOf(made.stream().map(Golden::path).toList());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private void update(List<Golden> made) throws IOException {
    assertThat(System.getenv("CI")).as("golden files are not rewritten in CI").isNull();
    for (String old : files()) {
      Files.delete(folder.resolve(old));
    }
    for (Golden golden : made) {
      Path file = folder.resolve(golden.path());
      Files.createDirectories(file.getParent());
      Files.writeString(file, golden.text(), StandardCharsets.US_ASCII);
    }
  }

  private List<String> files() throws IOException {
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(Files::isRegularFile)
          .map(p -> folder.relativize(p).toString().replace('\\', '/'))
          .toList();
    }
  }
}
