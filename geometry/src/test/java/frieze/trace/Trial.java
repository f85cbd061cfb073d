package frieze.trace;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.trace.Motifs.Motif;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import java.util.function.UnaryOperator;

/**
 * A motif drawn at ten pixels to the millimetre, traced, and compared where it was drawn: nothing
 * is shifted to fit.
 */
final class Trial {
  static final double PX_PER_MM = 10;
  private static final int MARGIN_PX = 30;
  private static final double DX = MARGIN_PX + 0.37;
  private static final double DY = MARGIN_PX + 0.61;

  final Motif motif;
  final Traced traced;
  final Agreement agreement;
  final int segments;
  final int segmentsOfExact;
  final double worstCorner;
  final Point shift;

  private Trial(Motif motif, Traced traced, Point shift) {
    this.motif = motif;
    this.shift = shift;
    this.traced = traced;
    Affine back = Affine.translation(shift.x(), shift.y());
    List<Path> paths = new ArrayList<>();
    traced
        .artwork()
        .pieces()
        .forEach(piece -> piece.paths().forEach(path -> paths.add(path.transformed(back))));
    this.agreement = Agreement.between(motif.rings(), Agreement.flat(paths));
    this.segments = traced.segments();
    this.segmentsOfExact = motif.segments(traced.toleranceMm());
    this.worstCorner = worstCorner(traced.corners().stream().map(back::apply).toList());
  }

  private double worstCorner(List<Point> found) {
    double worst = 0;
    for (Point corner : motif.corners(Math.toRadians(30))) {
      worst = Math.max(worst, found.stream().mapToDouble(corner::distance).min().orElse(99));
    }
    return worst;
  }

  /** Draws, makes a picture and traces it. */
  static Trial of(Motif motif, Function<Render, GreyImage> picture, TraceSettings settings) {
    return of(motif, picture, settings, (p, w, h) -> p);
  }

  /** Where a point of the ideal picture is seen; pixels, Y down. */
  interface Lens {
    Point seen(Point p, int width, int height);
  }

  static Trial of(
      Motif motif, Function<Render, GreyImage> picture, TraceSettings settings, Lens lens) {
    int w = (int) Math.ceil(motif.bounds().width() * PX_PER_MM) + 2 * MARGIN_PX + 1;
    int h = (int) Math.ceil(motif.bounds().height() * PX_PER_MM) + 2 * MARGIN_PX + 1;
    UnaryOperator<Point> ideal = p -> new Point(p.x() * PX_PER_MM + DX, h - p.y() * PX_PER_MM - DY);
    Render render = Render.of(finely(motif.rings()), w, h, p -> lens.seen(ideal.apply(p), w, h));
    Traced traced = Tracer.trace(motif.name(), picture.apply(render), settings);
    Point origin = traced.originMm();
    return new Trial(motif, traced, origin.minus(new Point(DX / PX_PER_MM, DY / PX_PER_MM)));
  }

  /** A lens bends straight lines, so they need points between their ends. */
  private static List<List<Point>> finely(List<List<Point>> rings) {
    List<List<Point>> fine = new ArrayList<>();
    for (List<Point> ring : rings) {
      List<Point> points = new ArrayList<>();
      for (int i = 0; i < ring.size(); i++) {
        Point a = ring.get(i);
        Point b = ring.get((i + 1) % ring.size());
        int n = Math.max(1, (int) Math.ceil(a.distance(b)));
        for (int k = 0; k < n; k++) {
          points.add(a.towards(b, (double) k / n));
        }
      }
      fine.add(points);
    }
    return fine;
  }

  static TraceSettings scan() {
    return TraceSettings.of(new RealSize.Pixel(1 / PX_PER_MM)).withSmallest(0.5);
  }

  @Override
  public String toString() {
    return String.format(
        Locale.ROOT,
        "%-34s 95%% within %.4f, all %.4f mm; worst corner %.3f of %d, found %d; segments %d, exact %d",
        motif.name(),
        agreement.percentile(0.95),
        agreement.worst(),
        worstCorner,
        motif.corners(Math.toRadians(30)).size(),
        traced.corners().size(),
        segments,
        segmentsOfExact);
  }
}
