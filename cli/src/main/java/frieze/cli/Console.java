package frieze.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * The place that a command runs in.
 *
 * @param out for data: what a script would read
 * @param err for messages to a person
 * @param folder from which relative file names are taken
 */
record Console(PrintStream out, PrintStream err, Path folder) {
  /** The console of the process, in UTF-8 whatever the locale says. */
  static Console ofProcess() {
    return new Console(
        new PrintStream(System.out, false, StandardCharsets.UTF_8),
        new PrintStream(System.err, true, StandardCharsets.UTF_8),
        Path.of(""));
  }

  Path path(String name) {
    return folder.resolve(name);
  }
}
