package frieze.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes a job to start from. */
@Command(
    name = "new",
    description = {
      "Writes a commented job and a drawing to start from. It works as it is: make it, look at the"
          + " sheet, then change it line by line.",
      "Files that are there already are never overwritten."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class NewCommand implements Callable<Integer> {
  static final List<String> FILES = List.of("job.yaml", "leaf.svg");

  private final Console console;

  @Parameters(paramLabel = "FOLDER", description = "the folder for it; made if it is not there")
  private String folder = "";

  NewCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    Path target = console.path(folder);
    for (String file : FILES) {
      if (Files.exists(target.resolve(file))) {
        throw new FileAlreadyExistsException(
            Path.of(folder, file).toString(), null, "it is there already, and is left as it is");
      }
    }
    Files.createDirectories(target);
    for (String file : FILES) {
      Files.write(target.resolve(file), starter(file));
      console.out().println(Path.of(folder, file));
    }
    console.err().println("now: frieze make " + Path.of(folder, FILES.get(0)));
    return ExitCode.FINE.number();
  }

  /** The content of one of the starter's files. */
  static byte[] starter(String file) throws IOException {
    try (InputStream in = NewCommand.class.getResourceAsStream("starter/" + file)) {
      if (in == null) {
        throw new IllegalStateException("the starter's " + file + " is missing");
      }
      return in.readAllBytes();
    }
  }
}
