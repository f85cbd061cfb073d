package frieze.cli;

import frieze.build.AirPrograms;
import frieze.build.BrokenProgram;
import frieze.build.Rescued;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.job.Job;
import frieze.post.ProgramText;
import frieze.sheet.Drawing;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Writes the programs of runs that are not the usual one: in the air, or the rest of a broken run.
 */
final class SpecialRuns {
  private final Console console;
  private final DiskFiles files;
  private final Job job;
  private final Path folder;

  /**
   * @param folder where the usual run puts the folders of its panels
   */
  SpecialRuns(Console console, DiskFiles files, Job job, Path folder) {
    this.console = console;
    this.files = files;
    this.job = job;
    this.folder = folder;
  }

  /**
   * Writes a folder of programs beside that of each panel, unless one of them would touch
   * something.
   */
  ExitCode air(double liftMm) throws IOException {
    FolderName names = new FolderName();
    Map<Path, SortedMap<String, byte[]>> all = new LinkedHashMap<>();
    boolean mayWrite = true;
    for (AirPrograms panel : AirPrograms.of(job, files, liftMm)) {
      Path target = folder.resolve("air-" + names.next(panel.name()));
      findings(panel.name(), panel.dryRun().findings());
      if (!panel.mayWrite()) {
        mayWrite = false;
        console.err().println(panel.name() + ": NOTHING IS WRITTEN, because " + why(panel));
      }
      SortedMap<String, byte[]> programs = new TreeMap<>();
      panel.programs().forEach(p -> programs.put(p.fileName(), p.bytes()));
      all.put(target, programs);
    }
    if (!mayWrite) {
      return ExitCode.FINDING;
    }
    Map<Path, SortedMap<String, byte[]>> onDisk = new LinkedHashMap<>();
    all.forEach((target, programs) -> onDisk.put(console.folder().resolve(target), programs));
    OutputFolder.replaceAll(onDisk);
    all.forEach(
        (target, programs) ->
            programs.keySet().forEach(name -> console.out().println(target.resolve(name))));
    console.out().println("The dry run removes 0 mm3 of stock; spindle or torch stay off.");
    return ExitCode.FINE;
  }

  private static String why(AirPrograms panel) {
    return panel.removedMm3() > 0
        ? String.format(
            Locale.ROOT,
            "the tool would still reach %.1f mm deep into the stock: give a height more than"
                + " that much larger",
            panel.deepestMm())
        : "the dry run found an error";
  }

  /** Writes a folder with the rest of a broken program and a drawing of where Z is found again. */
  ExitCode rescue(BrokenProgram broken) throws IOException {
    Optional<Rescued> rescued = Rescued.of(job, files, broken);
    if (rescued.isEmpty()) {
      console.out().println("Nothing is left to cut in " + broken.program() + " from there on.");
      return ExitCode.FINE;
    }
    Rescued rescue = rescued.get();
    checkUnchanged(rescue.broken());
    findings(rescue.panel(), rescue.findings());
    if (!rescue.mayWrite()) {
      console.err().println("the rescue is NOT WRITTEN, because the dry run found an error");
      return ExitCode.FINDING;
    }
    String name = FolderName.of("rescue " + rescue.broken().fileName() + " " + rescue.line());
    SortedMap<String, byte[]> more = new TreeMap<>();
    more.put(
        "rescue.svg", Drawing.svg(rescue.facts(), job.inches()).getBytes(StandardCharsets.UTF_8));
    write(folder.resolve(name), rescue.programs(), more);
    rescue
        .programs()
        .get(0)
        .text()
        .lines()
        .takeWhile(l -> !l.startsWith("M0"))
        .forEach(l -> console.out().println("  " + l));
    return ExitCode.FINE;
  }

  /** Line numbers mean nothing in a program that is not the one that ran. */
  private void checkUnchanged(ProgramText made) throws IOException {
    boolean seen = false;
    Path all = console.folder().resolve(folder);
    if (Files.isDirectory(all)) {
      try (var walk = Files.walk(all, 2)) {
        for (Path path : walk.filter(p -> p.endsWith(made.fileName())).toList()) {
          seen = true;
          if (!Arrays.equals(Files.readAllBytes(path), made.bytes())) {
            throw new BadInputException(
                Diagnostic.error(
                    CliCode.PROGRAM_CHANGED,
                    SourceSpan.file(folder.resolve(all.relativize(path)).toString()),
                    "this is not the program that the job makes now, so the line would not fit",
                    "put job, drawings and shop back as they were when the program was made"));
          }
        }
      }
    }
    if (!seen) {
      console
          .err()
          .println(
              "warning: "
                  + made.fileName()
                  + " is not in "
                  + folder
                  + "; make sure that the program that ran is the one that the job makes now");
    }
  }

  private void findings(String panel, List<Finding> findings) {
    for (Finding finding : findings) {
      if (finding.code() != FindingCode.CUTS_NOTHING) {
        console.err().println(panel + ": " + finding);
      }
    }
  }

  private void write(Path target, List<ProgramText> programs, SortedMap<String, byte[]> more)
      throws IOException {
    SortedMap<String, byte[]> all = new TreeMap<>(more);
    programs.forEach(p -> all.put(p.fileName(), p.bytes()));
    new OutputFolder(console.folder().resolve(target)).replace(all);
    all.keySet().forEach(name -> console.out().println(target.resolve(name)));
  }
}
