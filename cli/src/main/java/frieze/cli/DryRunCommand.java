package frieze.cli;

import frieze.build.Build;
import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.ProgramText;
import frieze.dryrun.scene.Surroundings;
import frieze.field.StockField;
import frieze.job.ChosenPost;
import frieze.job.Job;
import frieze.job.JobReader;
import frieze.job.StrangersRules;
import frieze.post.Post;
import frieze.post.Posts;
import frieze.rs274.ReadingRules;
import frieze.sheet.Pictures;
import frieze.shop.Material;
import frieze.shop.Stock;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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

  /** As many as fit into the memory of a small computer. */
  private static final double MOST_CELLS = 1e8;

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
      description = {
        "which panel of the job; without it, the one that the programs were made for, as the"
            + " report.json beside them says"
      })
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

  @Option(
      names = "--picture",
      paramLabel = "FILE",
      description = "draws the stock after all programs, and a map of its depths, as PNG")
  private @Nullable String picture;

  @Option(
      names = "--cell",
      paramLabel = "LENGTH",
      description = {
        "the side of the cells in which the stock is simulated (the finest usual one that makes at"
            + " most 4 million of them)"
      })
  private @Nullable String cell;

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
    DryRunResult result = dryRun(known).run(texts(rules()));
    if (picture != null) {
      draw(picture, known, result);
    }
    console
        .out()
        .print(format.equals("json") ? DryRunJson.write(result) : DryRunTable.write(result));
    if (!result.readable()) {
      return ExitCode.BAD_INPUT.number();
    }
    return (result.mayWrite() ? ExitCode.FINE : ExitCode.FINDING).number();
  }

  private DryRun dryRun(Surroundings known) {
    DryRun usual = DryRun.in(known);
    if (cell == null) {
      return usual;
    }
    double sideMm = place.options().lengthsMm("--cell", cell, 1).get(0);
    if (!(sideMm > 0)) {
      throw place.options().wrong("--cell", "must be more than 0");
    }
    Stock stock =
        known
            .stock()
            .orElseThrow(
                () -> place.options().wrong("--cell", "needs a stock; give --stock or --job"));
    double finestMm = Math.sqrt(stock.lengthMm() * stock.widthMm() / MOST_CELLS);
    if (sideMm < finestMm) {
      throw place
          .options()
          .wrong(
              "--cell",
              String.format(
                  Locale.ROOT,
                  "%.4f mm is too small for a stock of %.1f x %.1f mm; take %.3f mm or more",
                  sideMm,
                  stock.lengthMm(),
                  stock.widthMm(),
                  finestMm));
    }
    return usual.withCell(sideMm);
  }

  private void draw(String file, Surroundings known, DryRunResult result) throws IOException {
    boolean steel =
        known.stock().map(s -> s.material().kind() == Material.Kind.STEEL).orElse(false);
    StockField stock =
        result
            .stock()
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(), "--picture: needs a stock; give --stock or --job"));
    Files.write(console.path(file), Pictures.png(stock, steel));
  }

  private ReadingRules rules() {
    if (post == null) {
      return StrangersRules.any();
    }
    Post named =
        ChosenPost.find(post, files)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(),
                        "--post: no post named \"" + post + "\"; see `frieze posts`"));
    return named.reading();
  }

  private Surroundings fromJob() {
    if (job == null) {
      return Surroundings.UNKNOWN;
    }
    files.require(job, "name the job file in it");
    Job read = JobReader.read(job, files, Posts.all().stream().map(Post::id).toList());
    String wanted = panel(read);
    Job.PanelJob chosen =
        read.panels().stream()
            .filter(p -> p.name().equals(wanted))
            .findFirst()
            .orElseThrow(() -> wrongPanel("no panel named \"" + wanted + "\" in " + job));
    return Surroundings.of(Build.setup(read, chosen));
  }

  private String panel(Job read) {
    if (panel != null) {
      return panel;
    }
    if (read.panels().size() == 1) {
      return read.panels().get(0).name();
    }
    return report(programs.get(0))
        .map(MadeReport::panel)
        .orElseThrow(() -> wrongPanel("the job has several panels; say which one this is for"));
  }

  private ParameterException wrongPanel(String why) {
    return new ParameterException(spec.commandLine(), "--panel: " + why);
  }

  /** What the report beside a program says, if there is one. */
  private Optional<MadeReport> report(String program) {
    Path beside = Path.of(program).resolveSibling(MadeReport.FILE_NAME);
    try {
      return files.exists(beside.toString())
          ? MadeReport.read(files.read(beside.toString()))
          : Optional.empty();
    } catch (IOException e) {
      return Optional.empty();
    }
  }

  /** The rules for one program; with a job, its report tells which tool it starts with. */
  private ReadingRules rules(ReadingRules usual, String program) {
    String file = String.valueOf(Path.of(program).getFileName());
    return (job == null ? Optional.<MadeReport>empty() : report(program))
        .map(r -> r.firstTools().get(file))
        .map(tool -> usual.but().start(usual.start().withTool(tool)).build())
        .orElse(usual);
  }

  private List<ProgramText> texts(ReadingRules rules) throws IOException {
    List<ProgramText> texts = new ArrayList<>();
    for (String name : programs) {
      if (name.equals(STANDARD_INPUT)) {
        texts.add(ProgramText.of("standard input", System.in.readAllBytes(), rules));
      } else {
        files.require(name, "name the programs in it, in the order in which they run");
        texts.add(
            ProgramText.of(
                name, () -> Files.newInputStream(console.path(name)), rules(rules, name)));
      }
    }
    return texts;
  }
}
