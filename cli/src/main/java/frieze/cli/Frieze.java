package frieze.cli;

import frieze.diagnostic.BadInputException;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/**
 * The top command: it has no work of its own.
 *
 * <p>Here every exception becomes an exit code: bad input 3, the disk 4, anything else 70.
 */
@Command(
    name = "frieze",
    description =
        "Turns decorative artwork into programs for CNC routers, and checks every program before"
            + " it is written.",
    mixinStandardHelpOptions = true,
    version = "frieze 0.1.0",
    synopsisSubcommandLabel = "COMMAND",
    usageHelpAutoWidth = true)
final class Frieze implements Runnable {
  @Spec private CommandSpec spec = CommandSpec.create();

  private Frieze() {}

  /** Runs a command line and gives its exit code. It never ends the process and never throws. */
  static int run(Console console, String... args) {
    DiskFiles files = new DiskFiles(console.folder());
    try {
      return commandLine(console, files).execute(args);
    } catch (StackOverflowError | OutOfMemoryError e) {
      return bug(console, e);
    }
  }

  private static CommandLine commandLine(Console console, DiskFiles files) {
    CommandLine line = new CommandLine(new Frieze());
    line.addSubcommand(new MakeCommand(console, files));
    line.addSubcommand(new DryRunCommand(console, files));
    line.addSubcommand(new FitCommand(console));
    line.addSubcommand(new TemplateCommand(console, files));
    line.addSubcommand(new TraceCommand(console, files));
    line.addSubcommand(new LookCommand(console, files));
    line.addSubcommand(new NewCommand(console));
    line.addSubcommand(new PostsCommand(console));
    line.addSubcommand(new ShopCommand(console, files));
    line.addSubcommand(new KeysCommand(console));
    line.addSubcommand(new WarmUpCommand());
    line.setOut(new PrintWriter(console.out(), true, StandardCharsets.UTF_8));
    line.setErr(new PrintWriter(console.err(), true, StandardCharsets.UTF_8));
    line.setParameterExceptionHandler((e, arguments) -> wrongCall(e));
    line.setExecutionExceptionHandler((e, cmd, parsed) -> failed(console, files, e));
    Map<String, String> codes = new LinkedHashMap<>();
    for (ExitCode code : ExitCode.values()) {
      codes.put(String.valueOf(code.number()), code.meaning());
    }
    line.getCommandSpec().usageMessage().exitCodeListHeading("Exit codes:%n").exitCodeList(codes);
    return line;
  }

  @Override
  public void run() {
    throw new ParameterException(spec.commandLine(), "Missing the command");
  }

  /** The whole list of options would push the one line that matters off the screen. */
  private static int wrongCall(ParameterException e) {
    CommandLine command = e.getCommandLine();
    PrintWriter err = command.getErr();
    err.println("error: " + e.getMessage());
    if (!CommandLine.UnmatchedArgumentException.printSuggestions(e, err)) {
      if (command.getParent() == null) {
        command.usage(err);
      } else {
        err.println(
            "hint: `" + command.getCommandSpec().qualifiedName() + " --help` shows what it takes");
      }
    }
    err.flush();
    return command.getCommandSpec().exitCodeOnInvalidInput();
  }

  private static int failed(Console console, DiskFiles files, Exception e) {
    console.out().flush();
    if (e instanceof BadInputException bad) {
      new Messages(console.err(), files).print(bad.diagnostics());
      return ExitCode.BAD_INPUT.number();
    }
    if (e instanceof UncheckedIOException unchecked) {
      return disk(console, Objects.requireNonNullElseGet(unchecked.getCause(), IOException::new));
    }
    return e instanceof IOException io ? disk(console, io) : bug(console, e);
  }

  private static int disk(Console console, IOException e) {
    String what =
        e instanceof FileSystemException file && file.getReason() == null
            ? file.getFile() + ": " + e.getClass().getSimpleName()
            : String.valueOf(e.getMessage());
    console.err().println("error: can't read or write " + what);
    return ExitCode.DISK.number();
  }

  private static int bug(Console console, Throwable e) {
    console.err().println("Frieze itself has failed. This is a bug, not a mistake of yours.");
    console
        .err()
        .println("Nothing more was written. Please report it with your job, your drawings,");
    console.err().println("the command line and these lines:");
    console.err().println("frieze 0.1.0, Java " + System.getProperty("java.version"));
    e.printStackTrace(console.err());
    return ExitCode.BUG.number();
  }
}
