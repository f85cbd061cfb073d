package frieze.layout;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The line midway between the lower and the upper edge of a panel, from left to right, or between
 * two lines of a drawing.
 *
 * <p><em>Approximation:</em> it is worked out in {@link #SAMPLES} places and straight between them;
 * an arch that rises a tenth of its width is met within a thousandth of its rise, a circle within
 * 31 millionths of its radius.
 */
final class Midway implements Guide {
  private static final int SAMPLES = 400;

  /** Upright ends of a panel are met just inside of them. */
  private static final double INSIDE_MM = 1e-3;

  private final List<Point> points;
  private final double[] directions;
  private final double[] sizes;
  private final double[] lengths;
  private final boolean closed;

  private Midway(List<Point> points, double[] heights, double[] directions, boolean closed) {
    this.closed = closed;
    this.points = List.copyOf(points);
    this.directions = directions;
    double most = Arrays.stream(heights).max().orElseThrow();
    this.sizes = Arrays.stream(heights).map(h -> h / most).toArray();
    this.lengths = new double[points.size()];
    for (int i = 1; i < lengths.length; i++) {
      double size = 2 / (1 / sizes[i - 1] + 1 / sizes[i]);
      lengths[i] = lengths[i - 1] + points.get(i - 1).distance(points.get(i)) / size;
    }
  }

  /**
   * Finds it between the edges of a panel.
   *
   * @param insetMm what stays free along both edges and at both ends
   * @param swelling whether motifs are as large as the band is high; else all are of one size
   * @throws BadInputException if the edges leave nothing between them
   */
  static Midway of(Panel panel, double insetMm, boolean swelling, SourceSpan where) {
    Bounds band = panel.whole().bounds().grown(-Math.max(insetMm, INSIDE_MM));
    if (band.isEmpty()) {
      throw tooNarrow(insetMm, where);
    }
    List<Lane.Span> spans = Lane.upAt(panel, xs(band));
    List<Point> points = spans.stream().map(Lane.Span::middle).toList();
    double[] directions = directions(points, false);
    double[] heights = new double[points.size()];
    for (int i = 0; i < points.size(); i++) {
      double across = spans.get(i).length() * StrictMath.cos(directions[i]) - 2 * insetMm;
      if (!(across > 0)) {
        throw tooNarrow(insetMm, where);
      }
      heights[i] = swelling ? across : 1;
    }
    return new Midway(points, heights, directions, false);
  }

  /**
   * Finds it between two lines: everywhere equally far from both. It ends in the middle between
   * their ends.
   *
   * @param insetMm what stays free along both lines
   * @throws BadInputException if the lines leave nothing between them
   */
  static Midway of(LinePair lines, double insetMm, boolean swelling, SourceSpan where) {
    List<Point> points = new ArrayList<>();
    for (int i = 0; i <= SAMPLES; i++) {
      points.add(
          lines.isClosed() && i == SAMPLES
              ? points.get(0)
              : lines.midwayFrom(lines.between((double) i / SAMPLES)));
    }
    double[] heights = new double[points.size()];
    for (int i = 0; i < points.size(); i++) {
      double across = 2 * (lines.distance(points.get(i)) - insetMm);
      if (!(across > 0)) {
        throw tooNarrow(insetMm, where);
      }
      heights[i] = swelling ? across : 1;
    }
    return new Midway(points, heights, directions(points, lines.isClosed()), lines.isClosed());
  }

  /** At each place that from the one before it to the one after it, unwound. */
  private static double[] directions(List<Point> points, boolean closed) {
    int last = points.size() - 1;
    double[] directions = new double[points.size()];
    for (int i = 0; i <= last; i++) {
      Point before = points.get(i > 0 ? i - 1 : closed ? last - 1 : 0);
      Point after = points.get(i < last ? i + 1 : closed ? 1 : last);
      double angle = after.minus(before).angleRad();
      double turn = 2 * Math.PI;
      double was = i == 0 ? angle : directions[i - 1];
      directions[i] = angle - turn * Math.rint((angle - was) / turn);
    }
    return directions;
  }

  private static List<Double> xs(Bounds band) {
    List<Double> xs = new ArrayList<>();
    for (int i = 0; i <= SAMPLES; i++) {
      xs.add(band.minX() + band.width() * i / SAMPLES);
    }
    return xs;
  }

  private static BadInputException tooNarrow(double insetMm, SourceSpan where) {
    return BadInputException.of(
        LayoutCode.BAND_TOO_NARROW,
        where,
        "an inset of " + Amounts.length(insetMm) + " leaves nothing between the two edges",
        "make the inset smaller");
  }

  @Override
  public double lengthMm() {
    return lengths[lengths.length - 1];
  }

  @Override
  public boolean isClosed() {
    return closed;
  }

  @Override
  public Place at(double mm) {
    int found = Arrays.binarySearch(lengths, mm);
    int i = Math.max(0, Math.min(lengths.length - 2, found >= 0 ? found : -found - 2));
    double t = Math.max(0, Math.min(1, (mm - lengths[i]) / (lengths[i + 1] - lengths[i])));
    return new Place(
        points.get(i).towards(points.get(i + 1), t),
        directions[i] + t * (directions[i + 1] - directions[i]),
        sizes[i] + t * (sizes[i + 1] - sizes[i]));
  }
}
