package frieze.curve;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.artwork.svg.SvgReader;
import frieze.diagnostic.BadInputException;
import frieze.fixtures.OpenIcons;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** How many pieces the curved stretches of real drawings take, against straight ones. */
class ArcSumTest {
  private static final double TOLERANCE_MM = 0.005;
  private static final double FLATTEN_MM = 0.002;
  private static final double SIZE_MM = 60;

  /** Close enough to the curve that chords of it are judged by it. */
  private static final double FINE_MM = 0.00005;

  private int pieces;
  private int chords;
  private double freeChords;
  private int stretches;

  @Test
  @Tag("corpus")
  void curved_stretches_of_the_ginkgo_and_300_icons_take_a_fifth_of_the_straight_pieces()
      throws IOException {
    addGinkgo();
    for (Map.Entry<String, byte[]> icon : OpenIcons.sample(300).entrySet()) {
      try {
        Artwork art = new SvgReader().read(icon.getKey(), icon.getValue());
        Bounds b = art.bounds();
        add(b.width() > b.height() ? art.withWidth(SIZE_MM) : art.withHeight(SIZE_MM));
      } catch (BadInputException e) {
        assertThat(e.diagnostics()).isNotEmpty();
      }
    }
    System.out.println(report());
    assertThat(stretches).isGreaterThan(500);
    assertFifth();
  }

  private void assertFifth() {
    assertThat(pieces).as(this::report).isPositive().isLessThanOrEqualTo(chords / 5);
    assertThat(pieces).as(this::report).isLessThanOrEqualTo((int) (freeChords / 5));
  }

  private String report() {
    return stretches
        + " stretches: "
        + pieces
        + " lines and arcs; "
        + chords
        + " chords with their ends on the curve; at least "
        + Math.round(freeChords)
        + " straight pieces with their ends anywhere";
  }

  private void addGinkgo() throws IOException {
    byte[] svg =
        Files.readAllBytes(java.nio.file.Path.of("../docs/examples/hall-bench/ginkgo.svg"));
    add(new SvgReader().read("ginkgo.svg", svg).withHeight(70));
  }

  private void add(Artwork art) {
    for (Piece piece : art.pieces()) {
      for (Path path : piece.paths()) {
        curved(path).forEach(this::add);
      }
    }
  }

  /** The runs of segments that are not straight. */
  private static List<Path> curved(Path path) {
    List<Segment> segments = path.segments();
    int n = segments.size();
    int first = 0;
    while (first < n && !(segments.get(first) instanceof Line)) {
      first++;
    }
    if (first == n) {
      return List.of(path);
    }
    List<Path> runs = new ArrayList<>();
    List<Segment> run = new ArrayList<>();
    int from = path.closed() ? first : 0;
    for (int k = 0; k < n; k++) {
      Segment segment = segments.get((from + k) % n);
      if (!(segment instanceof Line)) {
        run.add(segment);
      } else if (!run.isEmpty()) {
        runs.add(new Path(run, false));
        run = new ArrayList<>();
      }
    }
    if (!run.isEmpty()) {
      runs.add(new Path(run, false));
    }
    return runs;
  }

  private void add(Path stretch) {
    List<Point> fine = new ArrayList<>(Flattener.flatten(stretch, FINE_MM));
    List<Point> source = Flattener.flatten(stretch, FLATTEN_MM);
    if (source.size() < 3) {
      return;
    }
    if (stretch.closed()) {
      fine.add(fine.get(0));
    }
    stretches++;
    pieces += ArcFitter.fit(source, stretch.closed(), TOLERANCE_MM).segments().size();
    chords += longestChords(fine);
    freeChords += leastStraight(fine);
  }

  /** Chords as long as the tolerance allows, one after the other. */
  private static int longestChords(List<Point> curve) {
    int count = 0;
    int at = 0;
    while (at < curve.size() - 1) {
      int to = at + 1;
      while (to + 1 < curve.size() && within(curve, at, to + 1)) {
        to++;
      }
      at = to;
      count++;
    }
    return count;
  }

  private static boolean within(List<Point> curve, int from, int to) {
    Line chord = new Line(curve.get(from), curve.get(to));
    for (int i = from + 1; i < to; i++) {
      if (LeastPieces.toPiece(curve.get(i), chord) > TOLERANCE_MM) {
        return false;
      }
    }
    return true;
  }

  /**
   * With its ends a tolerance outside of the curve and its middle a tolerance inside, a straight
   * piece is 4 sqrt(tolerance / curvature) long.
   */
  private static double leastStraight(List<Point> curve) {
    double sum = 0;
    for (int i = 1; i + 1 < curve.size(); i++) {
      Point a = curve.get(i).minus(curve.get(i - 1));
      Point b = curve.get(i + 1).minus(curve.get(i));
      double turn = Math.abs(Math.atan2(a.cross(b), a.dot(b)));
      double length = (a.norm() + b.norm()) / 2;
      sum += turn < CORNER_RAD ? Math.sqrt(turn * length) : 0;
    }
    return sum / (4 * Math.sqrt(TOLERANCE_MM));
  }

  /** More than this between two fine chords is a corner. */
  private static final double CORNER_RAD = 0.2;
}
