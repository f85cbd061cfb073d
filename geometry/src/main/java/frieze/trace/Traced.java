package frieze.trace;

import frieze.artwork.Artwork;
import frieze.curve.Path;
import frieze.curve.Point;
import java.util.List;

/**
 * What was found in a picture.
 *
 * @param artwork the outlines in millimetres, its lower left corner at the origin
 * @param originMm where that corner lies, from the lower left corner of the picture or the sheet
 * @param toleranceMm within which lines and arcs follow the smoothed outline
 * @param corners the corners of all outlines, where the outline is not smooth
 * @param overPicture the smoothed outlines over the picture: pixels from its upper left corner
 * @param bend what is known of the bend of the lens
 */
public record Traced(
    Artwork artwork,
    Point originMm,
    double toleranceMm,
    List<Point> corners,
    List<List<Point>> overPicture,
    LensBend bend) {
  public Traced {
    corners = List.copyOf(corners);
    overPicture = List.copyOf(overPicture);
  }

  /** How many lines and arcs the outlines have. */
  public int segments() {
    return artwork.pieces().stream()
        .flatMap(p -> p.paths().stream())
        .mapToInt(Traced::segments)
        .sum();
  }

  private static int segments(Path path) {
    return path.segments().size();
  }
}
