package frieze.plan.groove;

import frieze.curve.Path;
import frieze.design.Fade;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.plan.cut.Cut;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.MoveBuilder;
import frieze.plan.cut.PlanCode;
import frieze.plan.cut.Track;
import frieze.shop.Tool;
import java.util.List;
import java.util.TreeSet;

/**
 * Makes the cut of a groove that runs out.
 *
 * <p>The tool starts at an end where the groove is shallow, follows its floor as far down as the
 * pass goes, and keeps that depth on the way; each further pass goes back only to where it can go
 * deeper. So nothing is ever cut below the groove's floor, and nowhere does the tool plunge.
 */
public final class FadingGroove {
  private static final double SAME_MM = 1e-9;

  private final Track line;
  private final Fade fade;
  private final double depthMm;
  private final MoveBuilder moves;

  private FadingGroove(Track line, Fade fade, double depthMm, MoveBuilder moves) {
    this.line = line;
    this.fade = fade;
    this.depthMm = depthMm;
    this.moves = moves;
  }

  /** Objects to a fade that the lines or the depth do not allow. */
  public static void check(Work.Groove groove, Fade fade, List<Path> lines, Diagnostics found) {
    if (fade.toMm() >= groove.depthMm()) {
      found.error(
          PlanCode.NO_FADE,
          groove.where(),
          "the groove fades to "
              + Amounts.length(fade.toMm())
              + " but is only "
              + Amounts.length(groove.depthMm())
              + " deep",
          "let it fade to less than its depth");
    }
    long closed = lines.stream().filter(Path::closed).count();
    if (closed > 0) {
      found.error(
          PlanCode.NO_FADE,
          groove.where(),
          closed + " of " + lines.size() + " lines are closed and have no end to fade at",
          "pick the open lines, and groove the closed ones in an item of their own");
    }
  }

  /** Whether a tool can follow the floor down. */
  static boolean canCut(Tool tool, Track line, Fade fade, double depthMm) {
    return tool.cutsAtCentre() || slopeRad(line, fade, depthMm) <= MoveBuilder.RAMP_RAD;
  }

  private static double slopeRad(Track line, Fade fade, double depthMm) {
    return StrictMath.atan2(Math.max(0, depthMm - fade.toMm()), fade.lengthOverMm(line.lengthMm()));
  }

  /** Cuts one line. */
  static Cut cut(String origin, GroovePlanner.Job job, Fade fade, Tool tool, Feeds feeds) {
    boolean atEnd = fade.ends() == Fade.Ends.END;
    Track run = atEnd ? job.line().reversed() : job.line();
    Fade fromStart = atEnd ? new Fade(Fade.Ends.START, fade.toMm(), fade.overMm()) : fade;
    MoveBuilder moves = new MoveBuilder(tool, feeds, job.above(run.start()));
    new FadingGroove(run, fromStart, job.depthMm(), moves).cut(job.depths(), job.clearedMm());
    return moves.cut(origin);
  }

  private void cut(List<Double> depths, double clearedMm) {
    boolean both = fade.ends() == Fade.Ends.BOTH;
    Track run = line;
    double from = 0;
    for (double pass : depths) {
      if (!both && !moves.isEmpty()) {
        // Back along what the last pass has cut, to where its depth was the floor's.
        moves.follow(line.reversed().slice(0, line.lengthMm() - from));
      }
      if (from == 0) {
        enter(run, Math.min(pass, floorMm(0)), clearedMm);
      }
      follow(run, from, pass);
      from = both ? 0 : whereFloorIs(pass);
      run = both ? run.reversed() : line;
    }
  }

  private void enter(Track run, double depth, double clearedMm) {
    if (depth <= clearedMm + SAME_MM) {
      moves.verticalTo(-depth);
    } else {
      moves.enter(run, -depth);
    }
  }

  /** Follows a run from a length to its end, at the depth of a pass or of the floor above it. */
  private void follow(Track run, double from, double pass) {
    double length = run.lengthMm();
    double over = fade.lengthOverMm(length);
    double meets = whereFloorIs(pass);
    TreeSet<Double> bends = new TreeSet<>(List.of(over, meets, length));
    if (fade.ends() == Fade.Ends.BOTH) {
      bends.addAll(List.of(length - over, length - meets));
    }
    double slope = slopeRad(line, fade, depthMm);
    double at = from;
    for (double bend : bends) {
      if (bend > at + SAME_MM && bend <= length) {
        double z = -Math.min(pass, floorMm(bend));
        boolean level = Math.abs(z - moves.at().z()) <= SAME_MM;
        moves.slope(run.slice(at, bend), z, level ? 0 : slope);
        at = bend;
      }
    }
  }

  private double floorMm(double at) {
    return fade.depthMm(at, line.lengthMm(), depthMm);
  }

  /** The length from the shallow start at which the floor is as deep as a pass. */
  private double whereFloorIs(double pass) {
    double over = fade.lengthOverMm(line.lengthMm());
    if (pass <= fade.toMm()) {
      return 0;
    }
    return pass >= depthMm ? over : over * (pass - fade.toMm()) / (depthMm - fade.toMm());
  }
}
