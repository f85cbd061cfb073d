package frieze.artwork.look;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.ArcLength;
import frieze.curve.Bounds;
import frieze.curve.Tolerances;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.Optional;

/**
 * How fine a drawing is.
 *
 * @param area of all filled pieces together
 * @param holes in that area
 * @param lines drawn lines that are no areas
 * @param web the narrowest place of the area; empty if there is none
 * @param gap the narrowest place between walls of the ground; empty if none face each other
 */
public record Fineness(
    Region area,
    Bounds bounds,
    int holes,
    Lines lines,
    Optional<Narrow> web,
    Optional<Narrow> gap) {
  /**
   * Drawn lines.
   *
   * @param narrowestMm the least width, 0 if one has none
   * @param widestMm the largest width
   */
  public record Lines(int count, double lengthMm, double narrowestMm, double widestMm) {}

  /** Measures a drawing. Cost: that of two medial axes. */
  public static Fineness of(Artwork artwork) {
    Bounds bounds = artwork.bounds();
    double grown = Math.hypot(bounds.width(), bounds.height()) / Narrowest.MEASURED_MM;
    Region area = artwork.filled(Tolerances.DEFAULT.flattenMm() * Math.max(1, grown));
    return new Fineness(
        area,
        bounds,
        (int) area.rings().stream().filter(Ring::hole).count(),
        lines(artwork),
        Narrowest.web(area),
        Narrowest.gap(area));
  }

  /** How many connected areas there are. */
  public int parts() {
    return area.parts().size();
  }

  private static Lines lines(Artwork artwork) {
    int count = 0;
    double length = 0;
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (Piece piece : artwork.pieces()) {
      if (piece.fill().isEmpty() && piece.strokeWidthMm().isPresent()) {
        double width = piece.strokeWidthMm().getAsDouble();
        least = Math.min(least, width);
        most = Math.max(most, width);
        count += piece.paths().size();
        length += piece.paths().stream().mapToDouble(ArcLength::lengthMm).sum();
      }
    }
    return new Lines(count, length, count == 0 ? 0 : least, most);
  }
}
