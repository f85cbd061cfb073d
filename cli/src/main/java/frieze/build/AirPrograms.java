package frieze.build;

import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.scene.Surroundings;
import frieze.job.Job;
import frieze.job.SourceFiles;
import frieze.lower.FileNames;
import frieze.lower.Lowering;
import frieze.lower.Run;
import frieze.motion.Sequence;
import frieze.post.Post;
import frieze.post.Posting;
import frieze.post.ProgramText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The programs of a panel, raised into the air, with the spindle or the torch off.
 *
 * @param name the panel's
 * @param programs in running order
 * @param dryRun what would happen
 */
public record AirPrograms(String name, List<ProgramText> programs, DryRunResult dryRun) {
  public AirPrograms {
    programs = List.copyOf(programs);
  }

  /**
   * Writes the programs of all panels.
   *
   * @param liftMm how much higher than usual
   */
  public static List<AirPrograms> of(Job job, SourceFiles files, double liftMm) {
    PlannedJob planned = Build.planned(job, files);
    FileNames names = new FileNames(planned.post().capabilities().files());
    return planned.panels().stream().map(p -> of(planned, p, names, liftMm)).toList();
  }

  private static AirPrograms of(
      PlannedJob job, PlannedPanel panel, FileNames names, double liftMm) {
    Post post = job.post();
    List<String> header = new ArrayList<>();
    header.add(String.format(Locale.ROOT, "AIR PASS, %.1f mm higher: nothing is cut", liftMm));
    header.addAll(ProgramHeader.lines(job.job(), panel));
    Run run = Run.air(liftMm, post.capabilities().torch().present());
    List<ProgramText> programs =
        Posting.write(
            new Sequence("air " + panel.sequence().title(), panel.sequence().steps()),
            new Lowering.Request(panel.setup(), post.capabilities(), header, names, run),
            post);
    DryRunResult dryRun =
        DryRun.in(Surroundings.of(panel.setup())).run(ReadBack.texts(programs, post));
    return new AirPrograms(panel.name(), programs, dryRun);
  }

  /** Whether no material is met, and nothing else is wrong. */
  public boolean mayWrite() {
    return dryRun.mayWrite() && removedMm3() == 0;
  }

  /** The material that would be met all the same. */
  public double removedMm3() {
    return dryRun.stock().map(s -> s.removedVolumeMm3()).orElse(0.0);
  }

  /** How deep the deepest cut still reaches below the stock's top. */
  public double deepestMm() {
    return dryRun.stock().map(s -> s.deepestMm()).orElse(0.0);
  }
}
