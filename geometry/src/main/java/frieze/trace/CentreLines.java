package frieze.trace;

import frieze.artwork.Label;
import frieze.artwork.Piece;
import frieze.artwork.Stroke;
import frieze.curve.Affine;
import frieze.curve.ArcFitter;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Turns an area that a pen has drawn into the lines that the pen went along.
 *
 * <p>Strokes that go on straight through a junction are one line. A stroke that ends at another one
 * starts there: at its root. One that ends at no other starts at its lower end.
 *
 * <p><i>Approximation:</i> lines and arcs within the tolerance of the middle line; at a junction
 * the middle line, which bends there, is bridged. Flat ends of strokes become round.
 */
final class CentreLines {
  /** Two strokes that turn less than this at a junction are one. */
  private static final double STRAIGHT_RAD = Math.toRadians(40);

  /** The direction of a stroke's end is taken over so many half widths. */
  private static final double TANGENT = 2;

  private static final int PASSES = 3;

  private final PenAxis axis;

  /** For each end of a stroke (start 2 i, end 2 i + 1) the end that it goes on with. */
  private final int[] partner;

  private CentreLines(PenAxis axis) {
    this.axis = axis;
    this.partner = new int[2 * axis.strokes().size()];
  }

  /**
   * Finds the lines of a piece.
   *
   * @param widestMm a wider pen draws areas
   * @return a piece of the lines with one width of the pen, and one for each line drawn thick and
   *     thin; empty if the piece is an area
   */
  static List<Piece> of(Piece area, double widestMm, double toleranceMm) {
    Region region = Region.of(area.paths(), area.fill().orElseThrow(), toleranceMm / 4);
    return PenAxis.of(region, widestMm)
        .map(CentreLines::new)
        .map(lines -> lines.pieces(area, lines.found(toleranceMm)))
        .orElse(List.of());
  }

  /**
   * A line.
   *
   * @param widths at even steps along it; empty if it is as wide all along
   */
  private record Found(Path path, List<Double> widths) {
    Found reversed() {
      List<Double> back = new ArrayList<>(widths);
      Collections.reverse(back);
      return new Found(path.reversed(), back);
    }
  }

  /** One piece with all lines of even width, and one for each other. */
  private List<Piece> pieces(Piece area, List<Found> found) {
    List<Piece> pieces = new ArrayList<>();
    List<Path> even = found.stream().filter(f -> f.widths().isEmpty()).map(Found::path).toList();
    if (!even.isEmpty()) {
      pieces.add(
          new Piece(label(area.id()), even, Optional.empty(), Optional.of(pen(2 * axis.radius()))));
    }
    for (Found line : found) {
      if (!line.widths().isEmpty()) {
        double most = Collections.max(line.widths());
        Stroke pen = pen(most).varying(line.widths().stream().map(w -> w / most).toList());
        String id = pieces.isEmpty() ? area.id() : area.id() + "-" + (pieces.size() + 1);
        pieces.add(new Piece(label(id), List.of(line.path()), Optional.empty(), Optional.of(pen)));
      }
    }
    return pieces;
  }

  private static Label label(String id) {
    return new Label(id, List.of("traced", "line"), List.of(), List.of());
  }

  private static Stroke pen(double width) {
    return new Stroke(width, Stroke.Cap.ROUND, Stroke.Join.ROUND, 4, List.of(), 0, Affine.IDENTITY);
  }

  private List<Found> found(double toleranceMm) {
    pair();
    List<Found> paths = new ArrayList<>();
    boolean[] used = new boolean[axis.strokes().size()];
    for (int pass = 0; pass < PASSES; pass++) {
      for (int end = 0; end < partner.length; end++) {
        if (!used[end / 2] && mayStart(end, pass)) {
          line(end, used, toleranceMm).ifPresent(paths::add);
        }
      }
    }
    return paths;
  }

  /** Lines start at their roots; those without a root at a free end; loops anywhere. */
  private boolean mayStart(int end, int pass) {
    boolean tip = partner[end] == PenAxis.FREE;
    return switch (pass) {
      case 0 -> tip && node(end) != PenAxis.FREE;
      case 1 -> tip;
      default -> true;
    };
  }

  private int node(int end) {
    PenAxis.Stroke stroke = axis.strokes().get(end / 2);
    return end % 2 == 0 ? stroke.from() : stroke.to();
  }

  /** The points of a stroke from one of its ends on. */
  private List<Point> from(int end) {
    List<Point> points = axis.strokes().get(end / 2).points();
    if (end % 2 == 0) {
      return points;
    }
    List<Point> back = new ArrayList<>(points);
    Collections.reverse(back);
    return back;
  }

  private List<Double> radiiFrom(int end) {
    List<Double> radii = new ArrayList<>(axis.strokes().get(end / 2).radii());
    if (end % 2 == 1) {
      Collections.reverse(radii);
    }
    return radii;
  }

  /** The direction into the stroke at one of its ends. */
  private Point inward(int end) {
    List<Point> points = from(end);
    Point start = points.get(0);
    for (Point p : points) {
      if (p.distance(start) >= TANGENT * axis.radius()) {
        return p.minus(start);
      }
    }
    return points.get(points.size() - 1).minus(start);
  }

  private record Pair(int a, int b, double turnRad) {}

  private void pair() {
    Arrays.fill(partner, PenAxis.FREE);
    List<Pair> pairs = new ArrayList<>();
    for (int a = 0; a < partner.length; a++) {
      for (int b = a + 1; b < partner.length; b++) {
        if (node(a) != PenAxis.FREE && node(a) == node(b)) {
          double turn = Math.abs(Corners.angle(inward(a).times(-1), inward(b)));
          boolean alone = endsAt(node(a)) == 2;
          if (turn <= STRAIGHT_RAD || alone) {
            pairs.add(new Pair(a, b, turn));
          }
        }
      }
    }
    pairs.sort(Comparator.comparingDouble(Pair::turnRad));
    for (Pair p : pairs) {
      if (partner[p.a()] == PenAxis.FREE && partner[p.b()] == PenAxis.FREE) {
        partner[p.a()] = p.b();
        partner[p.b()] = p.a();
      }
    }
  }

  private int endsAt(int node) {
    int count = 0;
    for (int end = 0; end < partner.length; end++) {
      count += node(end) == node ? 1 : 0;
    }
    return count;
  }

  /** Follows strokes from an end until one ends, or the first is reached again. */
  private Optional<Found> line(int start, boolean[] used, double toleranceMm) {
    List<Point> points = new ArrayList<>();
    List<Double> radii = new ArrayList<>();
    boolean closed = axis.strokes().get(start / 2).loop();
    int end = start;
    root(start).ifPresent(points::add);
    root(start).ifPresent(p -> radii.add(radiiFrom(start).get(0)));
    while (!used[end / 2]) {
      used[end / 2] = true;
      points.addAll(from(end));
      radii.addAll(radiiFrom(end));
      int far = end ^ 1;
      if (partner[far] == PenAxis.FREE) {
        root(far).ifPresent(points::add);
        root(far).ifPresent(p -> radii.add(radii.get(radii.size() - 1)));
        break;
      }
      end = partner[far];
      closed = end == start;
    }
    long distinct = points.stream().distinct().count();
    if (distinct < 2) {
      return Optional.empty();
    }
    Path path = ArcFitter.fit(points, closed && distinct > 2, toleranceMm);
    boolean rootless = node(start) == PenAxis.FREE && !path.closed();
    PenWidth width = PenWidth.along(points, radii, path.closed());
    Found line = new Found(path, width.evenly(2 * axis.radius()));
    return Optional.of(rootless && path.start().y() > path.end().y() ? line.reversed() : line);
  }

  /** Where a stroke meets the one that goes through at its end; its node if none does. */
  private Optional<Point> root(int end) {
    int node = node(end);
    if (node == PenAxis.FREE || partner[end] != PenAxis.FREE) {
      return Optional.empty();
    }
    Point tip = from(end).get(0);
    Point out = inward(end).times(-1);
    for (int a = 0; a < partner.length; a++) {
      int b = partner[a];
      if (node(a) == node && b > a) {
        Point p = from(a).get(0);
        Point across = from(b).get(0).minus(p);
        double det = out.cross(across);
        double t = det == 0 ? -1 : p.minus(tip).cross(out) / det;
        if (t >= 0 && t <= 1) {
          return Optional.of(p.plus(across.times(t)));
        }
      }
    }
    return Optional.of(axis.nodes().get(node).at());
  }
}
