package frieze.build;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.curve.Tolerances;
import frieze.design.BorderLines;
import frieze.design.Design;
import frieze.design.Intent;
import frieze.design.LineCheck;
import frieze.design.Motif;
import frieze.design.Variants;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.Severity;
import frieze.dryrun.Clamping;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.scene.Surroundings;
import frieze.field.DepthMap;
import frieze.job.ChosenPost;
import frieze.job.DrawingContent;
import frieze.job.Insert;
import frieze.job.Job;
import frieze.job.PanelSetup;
import frieze.job.SourceFiles;
import frieze.keys.JobCode;
import frieze.layout.Panel;
import frieze.layout.Placement;
import frieze.lower.FileNames;
import frieze.opening.Sitting;
import frieze.plan.Plan;
import frieze.post.Post;
import frieze.post.Posting;
import frieze.post.ProgramText;
import frieze.sheet.PanelFacts;
import frieze.sheet.SheetFacts;
import frieze.shop.Setup;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * Makes the programs of a job, in memory.
 *
 * <p>{@link #panel} tells the whole story. Nothing here touches the disk: what comes out is data,
 * and the caller decides whether to write it.
 */
public final class Build {
  /** The width of the stock's picture: four to the millimetre on a large panel is plenty. */
  private static final int PICTURE_COLUMNS = 2400;

  private final Job job;
  private final Post post;
  private final FileNames names;
  private final Map<String, Motif> motifs;

  private Build(Job job, Post post, Map<String, Motif> motifs) {
    this.job = job;
    this.post = post;
    this.names = new FileNames(post.capabilities().files());
    this.motifs = motifs;
  }

  /**
   * Builds all panels of a job.
   *
   * @throws BadInputException with everything that is wrong in the input; nothing is built then
   */
  public static List<BuiltPanel> run(Job job, SourceFiles files) {
    Build build = of(job, files);
    List<BuiltPanel> built =
        collect(
            job.panels().stream().<Supplier<BuiltPanel>>map(p -> () -> build.panel(p)).toList());
    BothFaces.check(job, built);
    return built;
  }

  private static Build of(Job job, SourceFiles files) {
    Post post = ChosenPost.of(job.post(), files);
    TorchOrSpindle.check(job, post);
    return new Build(job, post, motifs(job, files));
  }

  /**
   * Plans all panels of a job, and goes no further.
   *
   * @throws BadInputException with everything that is wrong in the input
   */
  public static PlannedJob planned(Job job, SourceFiles files) {
    Build build = of(job, files);
    List<PlannedPanel> panels =
        collect(
                job.panels().stream()
                    .<Supplier<List<PlannedPanel>>>map(p -> () -> build.plan(p))
                    .toList())
            .stream()
            .flatMap(List::stream)
            .toList();
    return new PlannedJob(job, build.post, panels);
  }

  /**
   * Puts the drawings of all panels in their places, and goes no further.
   *
   * @throws BadInputException with everything that is wrong in the input
   */
  public static List<Designed> designs(Job job, SourceFiles files) {
    Build build = of(job, files);
    return collect(
        job.panels().stream().<Supplier<Designed>>map(p -> () -> build.designed(p)).toList());
  }

  private Designed designed(Job.PanelJob asked) {
    Diagnostics notes = new Diagnostics();
    Design design = design(asked, asked.panel(), notes);
    checkFit(asked, design, notes);
    return new Designed(asked, design, notes.sorted());
  }

  /** Checks its screws, and warns where the sum of its wood is no more than an extrapolation. */
  private static void checkFit(Job.PanelJob asked, Design design, Diagnostics notes) {
    Diagnostics found = new Diagnostics();
    asked.screws().ifPresent(s -> ScrewWork.check(s, asked, design, found));
    double flattenMm = Tolerances.DEFAULT.flattenMm();
    asked.lines().forEach(lines -> LineCheck.check(design, lines, flattenMm, found));
    Optional<Sitting> sitting = asked.insert().sitting();
    sitting.ifPresent(s -> NotchCorners.check(s, asked.work(), found));
    sitting.ifPresent(s -> SteelsPlace.check(s, design, found));
    sitting
        .filter(Sitting::wood)
        .flatMap(s -> s.asked().moisture().beyondRule(asked.whereSize()))
        .ifPresent(found::add);
    found.throwIfErrors();
    notes.addAll(found.sorted());
  }

  /**
   * Puts a panel on its stock and its machine, as it is built.
   *
   * @throws BadInputException if it does not lie on the stock
   */
  public static Setup setup(Job job, Job.PanelJob asked) {
    Panel panel = asked.panel();
    return PanelSetup.of(job.machine(), asked, panel);
  }

  /** From one panel of a job to what a machine is to do, in one clamping or in several. */
  private List<PlannedPanel> plan(Job.PanelJob asked) {
    Panel panel = asked.panel();
    Setup setup = PanelSetup.of(job.machine(), asked, panel);
    Diagnostics notes = new Diagnostics();
    Design design = design(asked, panel, notes);
    checkFit(asked, design, notes);
    if (asked.steps().isPresent()) {
      List<PlannedPanel> clampings =
          new ArrayList<>(Clampings.of(asked, setup, design, asked.steps().get()));
      clampings.set(0, clampings.get(0).after(notes.sorted()));
      return clampings;
    }
    PlannedPanel planned =
        post.capabilities().torch().present()
            ? PlannedPanel.ofTorch(asked, setup, design)
            : PlannedPanel.ofSpindle(asked, setup, design);
    return List.of(planned.after(notes.sorted()));
  }

  /** From one panel of a job to programs that have been read back. */
  private BuiltPanel panel(Job.PanelJob asked) {
    List<PlannedPanel> planned = plan(asked);
    List<List<ProgramText>> programs = planned.stream().map(this::write).toList();
    PlannedPanel first = planned.get(0);
    boolean inSteps = first.part().isPresent();
    List<Intent> intents = inSteps ? Clampings.intents(planned) : first.intents();
    List<DryRunResult> dryRuns =
        inSteps ? moved(planned, programs, intents) : List.of(run(first, programs, intents));
    List<PanelFacts> clampings = new ArrayList<>();
    List<Diagnostic> notes = new ArrayList<>();
    for (int i = 0; i < planned.size(); i++) {
      clampings.add(facts(planned.get(i), intents, programs.get(i), dryRuns.get(i)));
      notes.addAll(notes(planned.get(i).plan(), planned.get(i).design()));
    }
    return new BuiltPanel(facts(clampings), notes.stream().distinct().toList());
  }

  private List<ProgramText> write(PlannedPanel planned) {
    return Posting.write(
        planned.sequence(), planned.setup(), post, ProgramHeader.lines(job, planned), names);
  }

  private DryRunResult run(
      PlannedPanel planned, List<List<ProgramText>> programs, List<Intent> intents) {
    return planned.dryRun(intents).run(ReadBack.texts(programs.get(0), post));
  }

  private List<DryRunResult> moved(
      List<PlannedPanel> planned, List<List<ProgramText>> programs, List<Intent> intents) {
    List<Clamping> clampings = new ArrayList<>();
    for (int i = 0; i < planned.size(); i++) {
      clampings.add(
          new Clamping(
              Surroundings.of(planned.get(i).setup()), ReadBack.texts(programs.get(i), post)));
    }
    PlannedPanel last = planned.get(planned.size() - 1);
    return last.dryRun(intents).withPictures(PICTURE_COLUMNS).runMoved(clampings);
  }

  private PanelFacts facts(
      PlannedPanel planned, List<Intent> intents, List<ProgramText> programs, DryRunResult dryRun) {
    Insert insert = planned.asked().insert();
    return new PanelFacts(
        planned.design(),
        insert.opening(),
        insert.gapMm(),
        planned.setup(),
        intents,
        planned.plan(),
        programs,
        dryRun,
        planned.torch().isPresent() ? Optional.empty() : depths(planned, dryRun),
        drawings(planned),
        insert.sitting(),
        planned.torch(),
        planned.asked().flip(),
        planned.part());
  }

  /** The stock as it is after a clamping: later ones go on with it. */
  private static Optional<DepthMap> depths(PlannedPanel planned, DryRunResult dryRun) {
    return planned.part().isPresent()
        ? dryRun.programs().get(dryRun.programs().size() - 1).stockAfter()
        : dryRun.stock().map(stock -> stock.depthMap(PICTURE_COLUMNS));
  }

  private SheetFacts facts(List<PanelFacts> clampings) {
    return new SheetFacts(
        job.name(), fromJob(job.source()), job.inches(), job.machine(), post.id(), clampings);
  }

  /** A file's name as seen from the job's folder, so that papers do not tell where that lies. */
  private String fromJob(String file) {
    Path folder = Path.of(job.source()).getParent();
    Path path = Path.of(file);
    return folder != null && path.startsWith(folder)
        ? folder.relativize(path).toString()
        : path.toString();
  }

  private List<PanelFacts.DrawingFacts> drawings(PlannedPanel planned) {
    List<String> lines = planned.asked().lines().stream().map(BorderLines::name).toList();
    return planned.design().motifs().stream()
        .filter(motif -> !lines.contains(motif.name()))
        .map(
            motif ->
                new PanelFacts.DrawingFacts(
                    motif.name(),
                    fromJob(motif.artwork().source()),
                    motif.artwork().sizeAssumed(),
                    text(motif.artwork()),
                    motif.artwork().bounds().width(),
                    motif.artwork().bounds().height()))
        .toList();
  }

  private static List<String> text(Artwork artwork) {
    return artwork.notes().stream()
        .filter(d -> d.code() == ArtworkCode.TEXT_SET)
        .map(Diagnostic::message)
        .toList();
  }

  private Design design(Job.PanelJob asked, Panel panel, Diagnostics notes) {
    List<Placement> placements = new ArrayList<>();
    Map<String, Motif> used = new LinkedHashMap<>();
    Variants variants = new Variants(Tolerances.DEFAULT);
    Diagnostics found = new Diagnostics();
    for (Job.Placing placing : asked.placings()) {
      List<Motif> turns = placing.drawings().stream().map(this::motif).toList();
      turns.forEach(motif -> used.put(motif.name(), motif));
      try {
        placements.addAll(placing.place(this::motif, panel, asked.work(), variants, notes));
      } catch (BadInputException e) {
        found.addAll(e.diagnostics());
      }
    }
    for (BorderLines lines : asked.lines()) {
      try {
        used.put(lines.name(), lines.on(panel, Tolerances.DEFAULT, notes));
        placements.add(lines.placement());
      } catch (BadInputException e) {
        found.addAll(e.diagnostics());
      }
    }
    found.throwIfErrors();
    List<Motif> shaped = used.values().stream().map(variants::with).toList();
    List<Work> work = asked.work().stream().map(w -> finished(w, asked)).toList();
    return new Design(panel, shaped, placements, work);
  }

  /** Tells a cutout what finishing takes off its walls. */
  private static Work finished(Work work, Job.PanelJob asked) {
    return work instanceof Work.Cutout cutout
        ? new Work.Cutout(
            cutout.tool(),
            cutout.tabs(),
            cutout.milling(),
            cutout.way().finished(asked.allowance().wallsMm()),
            cutout.where())
        : work;
  }

  private Motif motif(String drawing) {
    Motif motif = motifs.get(drawing);
    if (motif == null) {
      throw new IllegalStateException("the reader let pass an unknown drawing: " + drawing);
    }
    return motif;
  }

  private static List<Diagnostic> notes(Plan plan, Design design) {
    Diagnostics notes = new Diagnostics();
    design.motifs().forEach(motif -> notes.addAll(motif.artwork().notes()));
    notes.addAll(plan.notes());
    return notes.sorted().stream().distinct().filter(d -> d.severity() != Severity.ERROR).toList();
  }

  private static Map<String, Motif> motifs(Job job, SourceFiles files) {
    List<Motif> read =
        collect(
            job.drawings().stream()
                .<Supplier<Motif>>map(drawing -> () -> motif(drawing, files))
                .toList());
    Map<String, Motif> byName = new LinkedHashMap<>();
    read.forEach(motif -> byName.put(motif.name(), motif));
    return byName;
  }

  private static Motif motif(Job.Drawing drawing, SourceFiles files) {
    byte[] content;
    try {
      content = files.read(drawing.file());
    } catch (IOException e) {
      throw new BadInputException(
          Diagnostic.error(
              JobCode.FILE_NOT_READ, drawing.where(), "can't read " + drawing.file(), ""));
    }
    return new Motif(drawing.name(), DrawingContent.read(drawing, content).artwork());
  }

  /** Does all of something, so that a user sees the mistakes of all of it at once. */
  private static <T> List<T> collect(List<Supplier<T>> parts) {
    Diagnostics found = new Diagnostics();
    List<T> results = new ArrayList<>();
    for (Supplier<T> part : parts) {
      try {
        results.add(part.get());
      } catch (BadInputException e) {
        found.addAll(e.diagnostics());
      }
    }
    found.throwIfErrors();
    return results;
  }
}
