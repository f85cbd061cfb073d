package frieze.cli;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/** Runs commands in this process, in a folder, and keeps what they print. */
final class Shell {
  private final Path folder;

  Shell(Path folder) {
    this.folder = folder;
  }

  /** What a command gave. */
  record Result(int code, String out, String err) {}

  Result run(String... args) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ByteArrayOutputStream err = new ByteArrayOutputStream();
    int code;
    try (PrintStream outPrint = new PrintStream(out, false, StandardCharsets.UTF_8);
        PrintStream errPrint = new PrintStream(err, false, StandardCharsets.UTF_8)) {
      code = Frieze.run(new Console(outPrint, errPrint, folder), args);
    }
    return new Result(
        code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
  }
}
