package frieze.layout;

import frieze.curve.ArcLength;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A line that motifs are set along, and how large they are on it.
 *
 * <p>Lengths along it are those of motifs at full size: where motifs are half as large, half of a
 * length takes as much room.
 */
sealed interface Guide {
  /**
   * A place on the line.
   *
   * @param size of motifs there, as a share of full size
   */
  record Place(Point point, double directionRad, double size) {}

  double lengthMm();

  /** Whether it has no ends. */
  boolean isClosed();

  /** The place at a length from the start. */
  Place at(double mm);

  /** A line along which motifs are as large everywhere. */
  record Even(ArcLength along) implements Guide {
    static Even of(Path path) {
      return new Even(ArcLength.of(path));
    }

    @Override
    public double lengthMm() {
      return along.lengthMm();
    }

    @Override
    public boolean isClosed() {
      return along.isClosed();
    }

    @Override
    public Place at(double mm) {
      ArcLength.Station at = along.at(mm);
      return new Place(at.point(), at.directionRad(), 1);
    }
  }

  /**
   * The line midway between the lower and the upper edge of a panel, from left to right.
   *
   * <p><em>Approximation:</em> it is worked out in {@link #SAMPLES} places and straight between
   * them; an arch that rises a tenth of its width is met within a thousandth of its rise.
   */
  final class Midway implements Guide {
    private static final int SAMPLES = 400;

    /** Upright ends of a panel are met just inside of them. */
    private static final double INSIDE_MM = 1e-3;

    private final List<Point> points;
    private final double[] directions;
    private final double[] sizes;
    private final double[] lengths;

    private Midway(List<Point> points, double[] heights, double[] directions) {
      this.points = points;
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
     * Finds it.
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
      double[] directions = new double[points.size()];
      double[] heights = new double[points.size()];
      for (int i = 0; i < points.size(); i++) {
        Point before = points.get(Math.max(0, i - 1));
        Point after = points.get(Math.min(points.size() - 1, i + 1));
        directions[i] = after.minus(before).angleRad();
        double across = spans.get(i).length() * StrictMath.cos(directions[i]) - 2 * insetMm;
        if (!(across > 0)) {
          throw tooNarrow(insetMm, where);
        }
        heights[i] = swelling ? across : 1;
      }
      return new Midway(points, heights, directions);
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
          "an inset of " + Amounts.length(insetMm) + " leaves nothing between the panel's edges",
          "make the inset smaller");
    }

    @Override
    public double lengthMm() {
      return lengths[lengths.length - 1];
    }

    @Override
    public boolean isClosed() {
      return false;
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
}
