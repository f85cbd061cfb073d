package frieze.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;

/** A file that a command makes from another one, in a folder that need not be there yet. */
final class OutputFile {
  private final Path path;

  /**
   * @param source what the file is made from, and must not replace
   * @param kind what the source is, in words
   * @throws ParameterException if both are the same file
   */
  OutputFile(Console console, CommandSpec spec, String name, String source, String kind) {
    path = console.path(name);
    if (path.normalize().equals(console.path(source).normalize())) {
      throw new ParameterException(
          spec.commandLine(), name + " is the " + kind + " itself; name another file");
    }
  }

  /** The name of a file with another ending. */
  static String beside(String source, String ending) {
    return source.replaceFirst("\\.[^.]*$", "") + ending;
  }

  void write(byte[] content) throws IOException {
    Path parent = path.toAbsolutePath().getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
    Files.write(path, content);
  }
}
