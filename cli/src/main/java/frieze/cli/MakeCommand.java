package frieze.cli;

import frieze.job.Job;
import frieze.job.JobReader;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Makes the programs of a job. */
@Command(
    name = "make",
    description = "Makes the programs of a job.",
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class MakeCommand implements Callable<Integer> {
  private final Console console;
  private final DiskFiles files;

  @Parameters(paramLabel = "JOB", description = "the job file")
  private String job = "";

  MakeCommand(Console console, DiskFiles files) {
    this.console = console;
    this.files = files;
  }

  @Override
  public Integer call() {
    Job read = JobReader.read(job, files, List.of("short-arcs", "rs274-full"));
    console.out().println(read);
    return ExitCode.FINE.number();
  }
}
