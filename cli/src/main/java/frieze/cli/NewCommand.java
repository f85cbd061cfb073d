package frieze.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

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
  /** What a folder can start with. */
  enum Kind {
    BENCH("bench", "leaf.svg"),
    BIT_TEST("bit-test", "grooves.svg"),
    KERF_COUPON("kerf-coupon", "coupon.svg");

    private final String word;
    private final String drawing;

    Kind(String word, String drawing) {
      this.word = word;
      this.drawing = drawing;
    }

    List<String> files() {
      return List.of("job.yaml", drawing);
    }

    static Optional<Kind> of(String word) {
      return Arrays.stream(values()).filter(k -> k.word.equals(word)).findFirst();
    }
  }

  private final Console console;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description = {
        "bench: a panel with a leaf; bit-test: grooves to measure the real angle of a V-bit;"
            + " kerf-coupon: a square and a slot, to measure how wide a torch cuts (bench)"
      })
  private String kind = Kind.BENCH.word;

  @Spec private CommandSpec spec = CommandSpec.create();

  @Parameters(paramLabel = "FOLDER", description = "the folder for it; made if it is not there")
  private String folder = "";

  NewCommand(Console console) {
    this.console = console;
  }

  @Override
  public Integer call() throws IOException {
    Kind wanted =
        Kind.of(kind)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(), "--kind: must be bench, bit-test or kerf-coupon"));
    Path target = console.path(folder);
    for (String file : wanted.files()) {
      if (Files.exists(target.resolve(file))) {
        throw new FileAlreadyExistsException(
            Path.of(folder, file).toString(), null, "it is there already, and is left as it is");
      }
    }
    Files.createDirectories(target);
    for (String file : wanted.files()) {
      Files.write(target.resolve(file), starter(wanted, file));
      console.out().println(Path.of(folder, file));
    }
    console.err().println("now: frieze make " + Path.of(folder, wanted.files().get(0)));
    return ExitCode.FINE.number();
  }

  /** The content of one of the starter's files. */
  static byte[] starter(Kind kind, String file) throws IOException {
    try (InputStream in =
        NewCommand.class.getResourceAsStream("starter/" + kind.word + "/" + file)) {
      if (in == null) {
        throw new IllegalStateException("the starter's " + kind.word + "/" + file + " is missing");
      }
      return in.readAllBytes();
    }
  }
}
