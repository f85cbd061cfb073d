package frieze.build;

import frieze.curve.Point;
import frieze.design.Intent;
import frieze.diagnostic.BadInputException;
import frieze.dryrun.Clamping;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.scene.Surroundings;
import frieze.job.Job;
import frieze.job.SourceFiles;
import frieze.lower.FileNames;
import frieze.lower.RelightSpot;
import frieze.post.ProgramText;
import frieze.post.Rescuer;
import frieze.sheet.PanelFacts;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What goes on where the run of a program broke off.
 *
 * @param panel the panel's name
 * @param broken the program that broke off, as it was made
 * @param line where, counted from 1
 * @param facts for a drawing: the rescue programs, and the dry run of the clamping
 * @param all what the dry runs of all clampings found
 */
public record Rescued(
    String panel, ProgramText broken, int line, PanelFacts facts, List<Finding> all) {
  public Rescued {
    all = List.copyOf(all);
  }

  /** Added to the name of the program of which only the first lines were run. */
  private static final String BROKEN_OFF = ", broken off";

  /**
   * Writes the programs that do the rest, and dry-runs them after what was done.
   *
   * @return empty when nothing is left to cut
   * @throws BadInputException if the job makes no such program, or the program has no such line
   */
  public static Optional<Rescued> of(Job job, SourceFiles files, BrokenProgram asked) {
    PlannedJob planned = Build.planned(job, files);
    FileNames names = new FileNames(planned.post().capabilities().files());
    List<String> known = new ArrayList<>();
    for (PlannedPanel panel : planned.panels()) {
      Rescuer rescuer = rescuer(planned, panel, names);
      for (int i = 0; i < rescuer.programs().size(); i++) {
        String name = rescuer.programs().get(i).fileName();
        known.add(name);
        if (name.equalsIgnoreCase(asked.program())) {
          return rescue(planned, panel, rescuer, i, asked);
        }
      }
    }
    throw BrokenProgram.unknown(
        "this job makes no program " + asked.program(), "it makes " + String.join(", ", known));
  }

  private static Optional<Rescued> rescue(
      PlannedJob job, PlannedPanel panel, Rescuer rescuer, int program, BrokenProgram asked) {
    ProgramText broken = rescuer.programs().get(program);
    int line = asked.lineIn(broken.text());
    List<String> header = new ArrayList<>();
    header.add("RESCUE of " + broken.fileName() + " from line " + line);
    header.addAll(ProgramHeader.lines(job.job(), panel));
    List<Point> inKerf = new ArrayList<>();
    RelightSpot relight = panel.relight();
    RelightSpot noting =
        (at, ahead, done) -> {
          Optional<Point> spot = relight.find(at, ahead, done);
          if (spot.isEmpty()) {
            inKerf.add(at);
          }
          return spot;
        };
    List<ProgramText> rest = rescuer.from(program, line, header, noting);
    if (rest.isEmpty()) {
      return Optional.empty();
    }
    List<ProgramText> all = new ArrayList<>(rescuer.programs().subList(0, program));
    all.add(upTo(broken, line));
    all.addAll(rest);
    all.addAll(rescuer.programs().subList(program + 1, rescuer.programs().size()));
    if (panel.part().isPresent()) {
      return Optional.of(inSteps(job, panel, new Rest(broken, line, rest, all)));
    }
    List<Intent> intents = panel.intents();
    DryRunResult dryRun = panel.dryRun(intents, inKerf).run(ReadBack.texts(all, job.post()));
    PanelFacts facts = facts(panel, rest, intents, dryRun);
    return Optional.of(new Rescued(panel.asked().name(), broken, line, facts, dryRun.findings()));
  }

  /**
   * The rest of a broken program.
   *
   * @param all programs of its clamping as they run now
   */
  private record Rest(
      ProgramText broken, int line, List<ProgramText> programs, List<ProgramText> all) {}

  /** The other clampings are as they would have been: the design is compared after the last. */
  private static Rescued inSteps(PlannedJob job, PlannedPanel panel, Rest rest) {
    FileNames names = new FileNames(job.post().capabilities().files());
    List<PlannedPanel> steps =
        job.panels().stream()
            .filter(p -> p.part().isPresent() && p.asked().equals(panel.asked()))
            .toList();
    List<Clamping> clampings = new ArrayList<>();
    for (PlannedPanel each : steps) {
      List<ProgramText> programs =
          each.equals(panel) ? rest.all() : rescuer(job, each, names).programs();
      clampings.add(
          new Clamping(Surroundings.of(each.setup()), ReadBack.texts(programs, job.post())));
    }
    List<Intent> intents = Clampings.intents(steps);
    List<DryRunResult> results = steps.get(steps.size() - 1).dryRun(intents).runMoved(clampings);
    return new Rescued(
        panel.asked().name(),
        rest.broken(),
        rest.line(),
        facts(panel, rest.programs(), intents, results.get(steps.indexOf(panel))),
        results.stream().flatMap(r -> r.findings().stream()).toList());
  }

  private static Rescuer rescuer(PlannedJob job, PlannedPanel panel, FileNames names) {
    List<String> header = ProgramHeader.lines(job.job(), panel);
    return new Rescuer(panel.sequence(), panel.setup(), job.post(), header, names);
  }

  private static PanelFacts facts(
      PlannedPanel panel, List<ProgramText> rest, List<Intent> intents, DryRunResult dryRun) {
    return new PanelFacts(
        panel.design(),
        panel.asked().insert().opening(),
        panel.asked().insert().gapMm(),
        panel.setup(),
        intents,
        panel.plan(),
        rest,
        dryRun,
        Optional.empty(),
        List.of(),
        panel.asked().insert().sitting(),
        panel.torch(),
        panel.asked().flip(),
        panel.part());
  }

  /** The lines that were run. */
  private static ProgramText upTo(ProgramText broken, int line) {
    StringBuilder done = new StringBuilder();
    broken.text().lines().limit(line - 1L).forEach(l -> done.append(l).append('\n'));
    return new ProgramText(
        broken.fileName() + BROKEN_OFF,
        broken.tools(),
        broken.inches(),
        broken.touchSpots(),
        done.toString(),
        broken.origins().subList(0, line - 1));
  }

  /** The programs that do the rest of the broken one. */
  public List<ProgramText> programs() {
    return facts.programs();
  }

  /** What is to be said of anything but the broken program, which ends in the midst of its work. */
  public List<Finding> findings() {
    return all.stream().filter(f -> !f.program().endsWith(BROKEN_OFF)).toList();
  }

  /** Whether the rescue may be run; every text that cannot be read has an error. */
  public boolean mayWrite() {
    return findings().stream().noneMatch(Finding::isError);
  }
}
