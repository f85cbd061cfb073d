package frieze.dryrun.torch;

import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.motion.Motion;
import java.util.ArrayList;
import java.util.List;

/** What the torch does between being lit and being put out. */
final class TorchRun {
  /** Arcs are followed by chords of this length at most, and of this departure. */
  private static final double CHORD_MM = 0.001;

  final int program;
  final SourceSpan span;
  final Point pierce;
  double dwellSeconds;

  /** Straight pieces: four numbers each. */
  final List<double[]> chords = new ArrayList<>();

  /** The line that each piece comes from. */
  final List<SourceSpan> spans = new ArrayList<>();

  TorchRun(int program, SourceSpan span, Point pierce) {
    this.program = program;
    this.span = span;
    this.pierce = pierce;
  }

  void add(Motion path, SourceSpan from) {
    int pieces = 1;
    if (path instanceof Motion.Turn turn) {
      double radius = Math.max(turn.radiusMm(), CHORD_MM);
      double step = 2 * StrictMath.acos(Math.max(0, 1 - CHORD_MM / radius));
      pieces = (int) Math.max(1, Math.ceil(Math.abs(turn.sweepRad()) / step));
    }
    for (int i = 0; i < pieces; i++) {
      var a = path.at((double) i / pieces);
      var b = path.at((double) (i + 1) / pieces);
      chords.add(new double[] {a.x(), a.y(), b.x(), b.y()});
      spans.add(from);
    }
  }
}
