package frieze.plan.groove;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.Fade;
import frieze.design.Work;
import frieze.motion.Position;
import frieze.plan.cut.Block;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Entries;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.Track;
import frieze.plan.order.CutOrder;
import java.util.List;

/** Makes the cuts of a tool that follows lines. */
public final class GroovePlanner {
  private GroovePlanner() {}

  /**
   * A line as it is to be cut.
   *
   * @param clearedMm how deep the place where the tool comes down is cleared already
   * @param depths after each pass, the last one the whole
   */
  public record Job(Track line, double clearedMm, List<Double> depths) {
    public Job {
      depths = List.copyOf(depths);
    }

    Job along(Track other) {
      return new Job(other, clearedMm, depths);
    }

    double depthMm() {
      return depths.get(depths.size() - 1);
    }

    /** Over a place, as low as no material can be. */
    Position above(Point place) {
      return new Position(place, MoveBuilder.AIR_MM - clearedMm);
    }
  }

  /** Whether a tool can get into a line without a plunge that it can't make. */
  public static boolean canCut(Work.Groove groove, Track line) {
    return MoveBuilder.canEnter(groove.tool(), line.lengthMm())
        && groove
            .fade()
            .map(f -> FadingGroove.canCut(groove.tool(), line, f, groove.depthMm()))
            .orElse(true);
  }

  /** Where the tool comes down to a line. */
  public static Point entry(Work.Groove groove, Path line) {
    boolean atEnd = groove.fade().map(f -> f.ends() == Fade.Ends.END).orElse(false);
    return atEnd ? line.end() : line.start();
  }

  /**
   * The ways to cut a line: in at several places of a closed one, from both ends of an open one. A
   * line that fades, or begins where a recess has cleared the way, is cut from its start.
   */
  public static Block block(String origin, Job job, Work.Groove groove, Feeds feeds) {
    Track line = job.line();
    if (groove.fade().isPresent() || job.clearedMm() > 0) {
      return Block.of(List.of(cut(origin, job, groove, feeds)));
    }
    if (!line.closed()) {
      List<Cut> backwards = List.of(cut(origin, job.along(line.reversed()), groove, feeds));
      return Block.anyOf(List.of(List.of(cut(origin, job, groove, feeds)), backwards));
    }
    if (!MoveBuilder.canSpiral(groove.tool(), line)) {
      return Block.of(List.of(cut(origin, job, groove, feeds)));
    }
    List<Track> ways =
        Entries.of(line, groove.tool().diameterMm()).stream().map(line::startingAt).toList();
    return new Block(
        ways.stream().map(w -> new CutOrder.Way(w.start(), w.start())).toList(),
        k -> List.of(cut(origin, job.along(ways.get(k)), groove, feeds)));
  }

  /**
   * Follows one line at all depths without leaving it: round and round a closed one, to and fro on
   * an open one. One that runs out is a {@link FadingGroove}.
   */
  static Cut cut(String origin, Job job, Work.Groove groove, Feeds feeds) {
    if (groove.fade().isPresent()) {
      return FadingGroove.cut(origin, job, groove.fade().get(), groove.tool(), feeds);
    }
    Track line = job.line();
    MoveBuilder moves = new MoveBuilder(groove.tool(), feeds, job.above(line.start()));
    if (line.closed() && MoveBuilder.canSpiral(groove.tool(), line)) {
      moves.helix(line, 0, -job.depthMm(), job.depths().get(0) - job.clearedMm());
      return moves.cut(origin);
    }
    Track run = line;
    for (double depth : job.depths()) {
      moves.enter(run, -depth);
      moves.follow(run.slice(0, run.lengthMm()));
      run = line.closed() ? run : run.reversed();
    }
    return moves.cut(origin);
  }
}
