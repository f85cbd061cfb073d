package frieze.dryrun.torch;

import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Amount;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.finding.Words;
import frieze.dryrun.scene.FindingLog;
import frieze.dryrun.scene.NearLines;
import frieze.dryrun.scene.TorchFacts;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;

/** Compares the edges of one part with the cuts beside them, and the order of the cuts. */
final class TorchEdges {
  /** How far an edge may be from where it should be, on a perfect machine. */
  static final double EDGE_MM = 0.02;

  private static final double STEP_MM = 0.3;

  /** Around a micro-joint an edge is left, this many half kerfs beyond its own half width. */
  private static final double JOINT_KERFS = 2;

  /** How much further than the kerf a cut is looked for. */
  private static final double LOOK_KERFS = 3;

  private final Region part;
  private final List<TorchRun> runs;
  private final double half;
  private final List<TorchFacts.Joint> joints;
  private final List<double[]> cuts = new ArrayList<>();
  private final List<Integer> runOfCut = new ArrayList<>();
  private final List<SourceSpan> spanOfCut = new ArrayList<>();
  private final NearLines nearCuts;
  private final NearLines nearEdges;

  /** The cut that takes most, and the deepest that is left. */
  private double intoMm;

  private int intoCut = -1;
  private double leftMm;
  private String leftAt = "";

  TorchEdges(Region part, List<TorchRun> runs, TorchFacts facts) {
    double kerfMm = facts.kerfMm();
    this.joints = facts.joints();
    this.part = part;
    this.runs = runs;
    this.half = kerfMm / 2;
    for (int r = 0; r < runs.size(); r++) {
      cuts.addAll(runs.get(r).chords);
      spanOfCut.addAll(runs.get(r).spans);
      for (int i = 0; i < runs.get(r).chords.size(); i++) {
        runOfCut.add(r);
      }
    }
    this.nearCuts = new NearLines(cuts, kerfMm);
    this.nearEdges = new NearLines(TorchSheet.edges(part), kerfMm);
  }

  void check(FindingLog log) {
    for (double[] e : TorchSheet.edges(part)) {
      double length = Math.hypot(e[2] - e[0], e[3] - e[1]);
      int steps = (int) Math.ceil(length / STEP_MM);
      for (int i = 0; i < steps; i++) {
        double t = (i + 0.5) / steps;
        double x = e[0] + (e[2] - e[0]) * t;
        double y = e[1] + (e[3] - e[1]) * t;
        // The part lies on the left, the scrap on the right.
        edge(x, y, (e[3] - e[1]) / length, -(e[2] - e[0]) / length);
      }
    }
    cutsInside();
    tell(log);
    order(log);
  }

  private void edge(double x, double y, double outX, double outY) {
    NearLines.Nearest cut = nearCuts.nearest(x, y, half * 2 * LOOK_KERFS);
    double into = half - cut.distanceMm();
    if (cut.index() >= 0 && into > EDGE_MM && into > intoMm) {
      intoMm = into;
      intoCut = cut.index();
    }
    double room = nearEdges.nearest(x + outX * half, y + outY * half, half + EDGE_MM).distanceMm();
    boolean reachable = room >= half - EDGE_MM / 4;
    double left = cut.distanceMm() - half;
    if (reachable && !isKept(x, y) && left > EDGE_MM && left > leftMm) {
      leftMm = left;
      leftAt = "X" + Amount.text(x) + " Y" + Amount.text(y);
    }
  }

  /** Whether a place lies beside metal that is to be left. */
  private boolean isKept(double x, double y) {
    return joints.stream()
        .anyMatch(
            j ->
                Math.hypot(j.at().x() - x, j.at().y() - y) <= j.widthMm() / 2 + JOINT_KERFS * half);
  }

  /** A cut that runs through the part far from its edges. */
  private void cutsInside() {
    Region.Locator inside = part.locator();
    for (int i = 0; i < cuts.size(); i++) {
      double[] c = cuts.get(i);
      boolean in = inside.contains(new frieze.curve.Point((c[0] + c[2]) / 2, (c[1] + c[3]) / 2));
      if (in && intoMm < half) {
        intoMm = 2 * half;
        intoCut = i;
      }
    }
  }

  private void tell(FindingLog log) {
    if (intoCut >= 0) {
      log.addAt(
          runs.get(runOfCut.get(intoCut)).program,
          FindingCode.EDGE_CUT_INTO,
          spanOfCut.get(intoCut),
          Amount.mm(intoMm),
          "the kerf takes " + Words.mm(intoMm) + " of the part");
    }
    if (!leftAt.isEmpty()) {
      log.addAt(
          runs.get(0).program,
          FindingCode.EDGE_LEFT,
          SourceSpan.NONE,
          Amount.mm(leftMm),
          "at "
              + leftAt
              + " of the program the edge is "
              + Words.mm(leftMm)
              + " or more too far out");
    }
  }

  /** Looks for openings that are cut after the outline has come loose. */
  private void order(FindingLog log) {
    Region outline = Region.ofRing(outer());
    int freed = -1;
    for (double[] e : TorchSheet.edges(outline)) {
      var cut = nearCuts.nearest((e[0] + e[2]) / 2, (e[1] + e[3]) / 2, half + 2 * EDGE_MM);
      if (cut.index() < 0 && isKept((e[0] + e[2]) / 2, (e[1] + e[3]) / 2)) {
        continue;
      }
      if (cut.index() < 0) {
        return;
      }
      freed = Math.max(freed, runOfCut.get(cut.index()));
    }
    Region.Locator inside = outline.locator();
    for (int r = freed + 1; r < runs.size(); r++) {
      if (inside.contains(runs.get(r).pierce)) {
        log.addAt(
            runs.get(r).program,
            FindingCode.OPENING_LATE,
            runs.get(r).span,
            Amount.NONE,
            "cuts within a part whose outline was cut before");
      }
    }
  }

  private List<frieze.curve.Point> outer() {
    return part.rings().get(0).points();
  }
}
