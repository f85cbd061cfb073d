package frieze.job;

import frieze.build.Build;
import frieze.build.PlannedJob;
import frieze.build.PlannedPanel;
import frieze.build.ProgramHeader;
import frieze.build.ReadBack;
import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.design.Intent;
import frieze.diagnostic.Diagnostic;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.Finding;
import frieze.lower.FileNames;
import frieze.post.Post;
import frieze.post.Posting;
import frieze.post.Posts;
import frieze.post.ProgramText;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The first panel of a small job, its programs, and where they lead the tool's axis. */
record Traced(PlannedPanel panel, List<ProgramText> programs) {
  private static final Post POST = Posts.find("short-arcs").orElseThrow();

  /** Planned and written, which takes a tenth of the time of a dry run. */
  static Traced of(MemoryFiles files) {
    Job read = JobReader.read("job.yaml", files, List.of("short-arcs"));
    PlannedJob planned = Build.planned(read, files);
    PlannedPanel panel = planned.panels().get(0);
    return new Traced(
        panel,
        Posting.write(
            panel.sequence(),
            panel.setup(),
            planned.post(),
            ProgramHeader.lines(read, panel),
            new FileNames(planned.post().capabilities().files())));
  }

  Path outline() {
    return panel.design().panel().outline();
  }

  List<Diagnostic> notes() {
    return panel.plan().notes();
  }

  /** What the dry run finds. */
  List<Finding> findings() {
    return dryRun(panel.intents()).findings();
  }

  /** Compares what the programs cut with what may be something else than was asked for. */
  DryRunResult dryRun(List<Intent> intents) {
    return panel.dryRun(intents).run(ReadBack.texts(programs, POST));
  }

  /** The places that the tool's axis passes at a depth, a tenth of a millimetre apart or less. */
  List<List<Point>> at(double z) {
    Pattern word = Pattern.compile("([GXYZIJF])(-?[0-9.]+)");
    List<List<Point>> runs = new ArrayList<>();
    for (ProgramText program : programs) {
      double[] now = new double[26];
      now['Z' - 'A'] = 99;
      int motion = 0;
      for (String line : new String(program.bytes(), StandardCharsets.US_ASCII).split("\n")) {
        Matcher m = word.matcher(line.replaceAll("\\(.*?\\)", ""));
        double[] next = now.clone();
        next['I' - 'A'] = 0;
        next['J' - 'A'] = 0;
        while (m.find()) {
          double value = Double.parseDouble(m.group(2));
          if (m.group(1).equals("G")) {
            motion = value <= 3 ? (int) value : motion;
          } else {
            next[m.group(1).charAt(0) - 'A'] = value;
          }
        }
        if (motion > 0 && Math.abs(now[25] - z) < 0.004 && Math.abs(next[25] - z) < 0.004) {
          runs.add(places(motion, now, next));
        }
        now = next;
      }
    }
    return runs;
  }

  private List<Point> places(int motion, double[] from, double[] to) {
    Affine toPanel = panel.setup().programFromPanel().inverse().affine();
    Point a = toPanel.apply(new Point(from['X' - 'A'], from['Y' - 'A']));
    Point b = toPanel.apply(new Point(to['X' - 'A'], to['Y' - 'A']));
    List<Point> places = new ArrayList<>();
    Point centre = a.plus(new Point(to['I' - 'A'], to['J' - 'A']));
    double start = a.minus(centre).angleRad();
    double sweep = b.minus(centre).angleRad() - start;
    sweep -= Math.floor(sweep / (2 * Math.PI)) * 2 * Math.PI;
    sweep -= motion == 2 ? 2 * Math.PI : 0;
    int parts = (int) Math.ceil(10 * a.distance(b)) + 10;
    for (int i = 0; i <= parts; i++) {
      double part = (double) i / parts;
      places.add(
          motion == 1
              ? a.towards(b, part)
              : Point.polar(centre, a.distance(centre), start + part * sweep));
    }
    return places;
  }

  static double lengthMm(List<List<Point>> runs) {
    double sum = 0;
    for (List<Point> run : runs) {
      for (int i = 1; i < run.size(); i++) {
        sum += run.get(i - 1).distance(run.get(i));
      }
    }
    return sum;
  }

  /** The distance to the nearest point of all segments, by trying them all. */
  static double fromEdge(Path outline, Point p) {
    double least = Double.MAX_VALUE;
    for (Segment s : outline.segments()) {
      double d = Math.min(p.distance(s.start()), p.distance(s.end()));
      if (s instanceof Line line) {
        d = Math.min(d, line.distance(p));
      } else if (s instanceof Arc arc) {
        double turned = p.minus(arc.centre()).angleRad() - arc.startAngleRad();
        double along = arc.counterClockwise() ? turned : -turned;
        along -= Math.floor(along / (2 * Math.PI)) * 2 * Math.PI;
        double radius = arc.start().distance(arc.centre());
        d = along <= Math.abs(arc.sweepRad()) ? Math.abs(p.distance(arc.centre()) - radius) : d;
      }
      least = Math.min(least, d);
    }
    return least;
  }
}
