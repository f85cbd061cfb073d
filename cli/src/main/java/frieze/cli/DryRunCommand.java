package frieze.cli;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.ProgramText;
import frieze.dryrun.Surroundings;
import frieze.job.Build;
import frieze.job.DialectRules;
import frieze.job.Job;
import frieze.job.JobReader;
import frieze.post.Post;
import frieze.post.Posts;
import frieze.rs274.ReadingRules;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Says what programs would do. */
@Command(
    name = "dryrun",
    description = {
      "Reads programs in RS-274 from anywhere and says what they would do: how far they reach, how"
          + " deep they cut, how long they take, and what a machine or a stock would suffer.",
      "Several files are run one after the other on the same stock. What you do not tell of the"
          + " place is not checked, and the report says so."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class DryRunCommand implements Callable<Integer> {
  private static final String STANDARD_INPUT = "-";

  private final Console console;
  private final DiskFiles files;

  @Parameters(
      paramLabel = "FILE",
      arity = "1..*",
      description = "programs in running order; - reads from standard input")
  private List<String> programs = new ArrayList<>();

  @Mixin private PlaceOptions place = new PlaceOptions();

  @Option(
      names = "--job",
      paramLabel = "FILE",
      description = "takes machine, stock, zero, clamps and tools from a job")
  private @Nullable String job;

  @Option(
      names = "--panel",
      paramLabel = "NAME",
      description = "which panel of the job; the first one if it is not given")
  private @Nullable String panel;

  @Option(
      names = "--post",
      paramLabel = "NAME",
      description = {
        "reads as strictly as the controller of this post; `frieze posts` lists them."
            + " Without it, whatever claims to be RS-274 is read."
      })
  private @Nullable String post;

  @Option(names = "--format", paramLabel = "FORM", description = "table or json (table)")
  private String format = "table";

  @Spec private CommandSpec spec = CommandSpec.create();

  DryRunCommand(Console console, DiskFiles files) {
    this.console = console;
    this.files = files;
  }

  @Override
  public Integer call() throws IOException {
    if (!format.equals("table") && !format.equals("json")) {
      throw new ParameterException(spec.commandLine(), "--format: must be table or json");
    }
    Surroundings known = place.over(fromJob(), files);
    DryRunResult result = DryRun.in(known).run(texts(rules()));
    console
        .out()
        .print(format.equals("json") ? DryRunJson.write(result) : DryRunTable.write(result));
    if (!result.readable()) {
      return ExitCode.BAD_INPUT.number();
    }
    return (result.mayWrite() ? ExitCode.FINE : ExitCode.FINDING).number();
  }

  private ReadingRules rules() {
    if (post == null) {
      return DialectRules.any();
    }
    Post named =
        Posts.find(post)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "--post: no post named \"" + post + "\"; see `frieze posts`"));
    return DialectRules.of(named.capabilities());
  }

  private Surroundings fromJob() {
    if (job == null) {
      return Surroundings.UNKNOWN;
    }
    Job read = JobReader.read(job, files, Posts.all().stream().map(Post::id).toList());
    Job.PanelJob chosen =
        read.panels().stream()
            .filter(p -> panel == null || p.name().equals(panel))
            .findFirst()
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(), "--panel: no panel named \"" + panel + "\" in " + job));
    return Surroundings.of(Build.setup(read, chosen));
  }

  private List<ProgramText> texts(ReadingRules rules) throws IOException {
    List<ProgramText> texts = new ArrayList<>();
    for (String name : programs) {
      if (name.equals(STANDARD_INPUT)) {
        texts.add(ProgramText.of("standard input", System.in.readAllBytes(), rules));
      } else if (files.exists(name)) {
        texts.add(ProgramText.of(name, () -> Files.newInputStream(console.path(name)), rules));
      } else {
        throw new BadInputException(
            Diagnostic.error(
                CliCode.NO_SUCH_FILE, SourceSpan.file(name), "there is no such file", ""));
      }
    }
    return texts;
  }
}
