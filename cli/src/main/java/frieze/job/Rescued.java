package frieze.job;

import frieze.curve.Point;
import frieze.design.Intent;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.Finding;
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
 * @param facts for a drawing: the rescue programs, and the dry run of everything
 */
public record Rescued(String panel, ProgramText broken, int line, PanelFacts facts) {
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
      List<String> header = ProgramHeader.lines(job, panel);
      Rescuer rescuer = new Rescuer(panel.sequence(), panel.setup(), planned.post(), header, names);
      for (int i = 0; i < rescuer.programs().size(); i++) {
        String name = rescuer.programs().get(i).fileName();
        known.add(name);
        if (name.equalsIgnoreCase(asked.program())) {
          refuse(panel, asked);
          return rescue(planned, panel, rescuer, i, asked);
        }
      }
    }
    throw BrokenProgram.unknown(
        "this job makes no program " + asked.program(), "it makes " + String.join(", ", known));
  }

  /**
   * Another stock state and another place: the steps before would have to be run in thought too.
   */
  private static void refuse(PlannedPanel panel, BrokenProgram asked) {
    if (panel.part().isPresent()) {
      throw new BadInputException(
          Diagnostic.error(
              JobCode.NO_SUCH_LINE,
              panel.asked().where(),
              "no rescue is made for a panel that is carved in steps, and "
                  + asked.program()
                  + " is one of its programs",
              "run that program again from its start: it cuts air where it has cut already"));
    }
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
    List<Intent> intents = panel.intents();
    DryRunResult dryRun = panel.dryRun(intents, inKerf).run(ReadBack.texts(all, job.post()));
    return Optional.of(
        new Rescued(panel.asked().name(), broken, line, facts(panel, rest, intents, dryRun)));
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
    return facts.dryRun().findings().stream()
        .filter(f -> !f.program().endsWith(BROKEN_OFF))
        .toList();
  }

  /** Whether the rescue may be run; every text that cannot be read has an error. */
  public boolean mayWrite() {
    return findings().stream().noneMatch(Finding::isError);
  }
}
