package frieze.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** Dry-runs programs. */
@Command(
    name = "dryrun",
    description = "Says what programs would do.",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class DryRunCommand implements Callable<Integer> {
  private final Console console;
  private final DiskFiles files;

  DryRunCommand(Console console, DiskFiles files) {
    this.console = console;
    this.files = files;
  }

  @Override
  public Integer call() {
    console.out().println(files.exists("x"));
    return 0;
  }
}
