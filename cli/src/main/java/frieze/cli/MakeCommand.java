package frieze.cli;

import frieze.build.BrokenProgram;
import frieze.build.Build;
import frieze.build.BuiltPanel;
import frieze.diagnostic.Code;
import frieze.diagnostic.Diagnostic;
import frieze.dryrun.ProgramReport;
import frieze.dryrun.finding.Finding;
import frieze.job.Job;
import frieze.job.JobReader;
import frieze.keys.OptionText;
import frieze.post.Post;
import frieze.post.Posts;
import frieze.post.ProgramText;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.SortedMap;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Makes the programs of a job. */
@Command(
    name = "make",
    description = {
      "Makes the programs of a job: reads it, plans it, writes the programs, reads them back,"
          + " simulates them, and only then puts them into a folder with a setup sheet.",
      "If the dry run finds an error in any panel, nothing is written, and the files of the last"
          + " good run stay."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class MakeCommand implements Callable<Integer> {
  private static final int SHOWN_PER_CODE = 3;

  private final Console console;
  private final DiskFiles files;

  @Parameters(paramLabel = "JOB", description = "the job file; `frieze new` writes one")
  private String job = "";

  @Option(
      names = {"-o", "--out"},
      paramLabel = "FOLDER",
      description = "where to write (a folder beside the job file, with the job's name)")
  private @Nullable String out;

  @Option(
      names = "--air",
      paramLabel = "HEIGHT",
      description = {
        "write programs for a pass in the air instead: the same path, higher by HEIGHT, spindle or"
            + " torch off (40mm, 1-1/2in)"
      })
  private @Nullable String air;

  @Option(
      names = "--resume-from",
      paramLabel = "PROGRAM:LINE",
      description = {
        "write a program that goes on where the run of PROGRAM broke off, in LINE"
            + " (front-01.nc:120; or :N1200, as a controller shows it)"
      })
  private @Nullable String resumeFrom;

  @Spec private CommandSpec spec = CommandSpec.create();

  MakeCommand(Console console, DiskFiles files) {
    this.console = console;
    this.files = files;
  }

  @Override
  public Integer call() throws IOException {
    files.require(job, "name the job file in it");
    Job read = JobReader.read(job, files, Posts.all().stream().map(Post::id).toList());
    Path folder =
        out == null ? Path.of(job).resolveSibling(FolderName.of(read.name())) : Path.of(out);
    if (air != null || resumeFrom != null) {
      return special(read, folder).number();
    }
    List<BuiltPanel> panels = Build.run(read, files);
    notes(panels);
    FolderName names = new FolderName();
    Map<Path, BuiltPanel> targets = new LinkedHashMap<>();
    for (BuiltPanel panel : panels) {
      findings(panel);
      targets.put(folder.resolve(names.next(panel.name())), panel);
    }
    List<String> bad =
        panels.stream().filter(p -> !p.mayWrite()).map(p -> "\"" + p.name() + "\"").toList();
    if (!bad.isEmpty()) {
      console
          .err()
          .println(
              "NOTHING IS WRITTEN, because the dry run found an error in "
                  + String.join(", ", bad));
      return ExitCode.FINDING.number();
    }
    Map<Path, SortedMap<String, byte[]>> papers = new LinkedHashMap<>();
    targets.forEach(
        (target, panel) -> papers.put(console.folder().resolve(target), Papers.files(panel)));
    OutputFolder.replaceAll(papers);
    targets.forEach((target, panel) -> written(panel, target));
    return ExitCode.FINE.number();
  }

  /** Another run of a job that has been made already, or will be. */
  private ExitCode special(Job read, Path folder) throws IOException {
    if (air != null && resumeFrom != null) {
      throw new ParameterException(
          spec.commandLine(), "--air and --resume-from are for different runs: give one of them");
    }
    SpecialRuns runs = new SpecialRuns(console, files, read, folder);
    return air != null
        ? runs.air(option(text -> OptionText.heightMm(text, read.inches()), air))
        : runs.rescue(option(BrokenProgram::of, Objects.requireNonNull(resumeFrom)));
  }

  private <T> T option(Function<String, T> reader, String text) {
    try {
      return reader.apply(text);
    } catch (IllegalArgumentException e) {
      throw new ParameterException(spec.commandLine(), String.valueOf(e.getMessage()), e);
    }
  }

  private void notes(List<BuiltPanel> panels) {
    Set<Diagnostic> all = new LinkedHashSet<>();
    panels.forEach(panel -> all.addAll(panel.notes()));
    new Messages(console.err(), files).print(List.copyOf(all));
  }

  /** Prints the first findings of each code; the papers have all. */
  private void findings(BuiltPanel panel) {
    Map<Code, List<Finding>> byCode = new LinkedHashMap<>();
    panel.clampings().stream()
        .flatMap(c -> c.dryRun().findings().stream())
        .forEach(f -> byCode.computeIfAbsent(f.code(), k -> new ArrayList<>()).add(f));
    for (List<Finding> alike : byCode.values()) {
      alike.stream()
          .limit(SHOWN_PER_CODE)
          .forEach(finding -> console.err().println(panel.name() + ": " + finding));
      if (alike.size() > SHOWN_PER_CODE) {
        console.err().println("... and " + (alike.size() - SHOWN_PER_CODE) + " more like it");
      }
      if (!alike.get(0).hint().isEmpty()) {
        console.err().println("hint: " + alike.get(0).hint());
      }
    }
    panel.clampings().stream()
        .flatMap(c -> c.dryRun().notChecked().stream())
        .distinct()
        .forEach(open -> console.err().println(panel.name() + ": " + open));
  }

  private void written(BuiltPanel panel, Path target) {
    Table table = new Table(panel.name(), "tool", "lines", "machine", "by hand");
    List<ProgramReport> reports =
        panel.clampings().stream().flatMap(c -> c.dryRun().programs().stream()).toList();
    for (int i = 0; i < panel.programs().size(); i++) {
      ProgramText program = panel.programs().get(i);
      table.row(
          List.of(
              target.resolve(program.fileName()).toString(),
              String.join(", ", program.tools().stream().map(t -> t.name()).toList()),
              String.valueOf(reports.get(i).lines()),
              DryRunTable.time(reports.get(i).time().machineSeconds()),
              DryRunTable.time(reports.get(i).time().handSeconds())));
    }
    console.out().println(table);
  }
}
