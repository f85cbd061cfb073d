package frieze.cli;

import frieze.build.Build;
import frieze.build.Designed;
import frieze.job.Job;
import frieze.job.JobReader;
import frieze.post.Post;
import frieze.post.Posts;
import frieze.template.InFrame;
import frieze.template.Paper;
import frieze.template.PaperTemplate;
import frieze.template.TemplateMaker;
import frieze.template.TemplatePdf;
import frieze.template.TemplateSvg;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The panels of a job at full size, on paper. */
@Command(
    name = "template",
    description = {
      "Draws the panels of a job at full size: as pages to print and glue together (PDF), and as"
          + " one large sheet (SVG).",
      "Lay them in the real frame before you cut, drill through them, bend rod over them."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class TemplateCommand implements Callable<Integer> {
  private final Console console;
  private final DiskFiles files;

  @Parameters(paramLabel = "JOB", description = "the job file")
  private String job = "";

  @Option(
      names = {"-o", "--out"},
      paramLabel = "FOLDER",
      description = "where to write (the folder templates in the job's own)")
  private @Nullable String out;

  @Option(names = "--paper", paramLabel = "A4|Letter", description = "the paper to print on (A4)")
  private String paper = "A4";

  @Spec private CommandSpec spec = CommandSpec.create();

  TemplateCommand(Console console, DiskFiles files) {
    this.console = console;
    this.files = files;
  }

  @Override
  public Integer call() throws IOException {
    Paper sheet =
        Paper.named(paper)
            .orElseThrow(
                () ->
                    new ParameterException(
                        spec.commandLine(), "--paper must be A4 or Letter but is " + paper));
    files.require(job, "name the job file in it");
    Job read = JobReader.read(job, files, Posts.all().stream().map(Post::id).toList());
    Path folder =
        out == null
            ? Path.of(job).resolveSibling(FolderName.of(read.name())).resolve("templates")
            : Path.of(out);
    SortedMap<String, byte[]> papers = new TreeMap<>();
    FolderName names = new FolderName();
    Table table = new Table("panel", "pages", "sheet");
    List<List<String>> rows = new ArrayList<>();
    List<Designed> panels = Build.designs(read, files);
    new Messages(console.err(), files)
        .print(panels.stream().flatMap(p -> p.notes().stream()).distinct().toList());
    for (Designed panel : panels) {
      if (panel.asked().isBack()) {
        continue; // Its holes are on the template of the face.
      }
      PaperTemplate template =
          TemplateMaker.of(
              read.name(),
              panel.design(),
              new InFrame(panel.asked().insert().sitting(), panel.beyond(), panel.asked().screws()),
              read.inches());
      String name = names.next(panel.asked().name());
      papers.put(name + ".pdf", TemplatePdf.bytes(template, sheet));
      papers.put(name + ".svg", TemplateSvg.text(template).getBytes(StandardCharsets.UTF_8));
      rows.add(
          List.of(
              panel.asked().name(),
              folder.resolve(name + ".pdf").toString(),
              folder.resolve(name + ".svg").toString()));
    }
    new OutputFolder(console.folder().resolve(folder)).replace(papers);
    rows.forEach(table::row);
    console.out().println(table);
    return ExitCode.FINE.number();
  }
}
