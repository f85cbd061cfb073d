package frieze.layout;

import frieze.curve.ArcLength;
import frieze.curve.Path;
import frieze.curve.Point;

/**
 * A line that motifs are set along, and how large they are on it.
 *
 * <p>Lengths along it are those of motifs at full size: where motifs are half as large, half of a
 * length takes as much room.
 */
sealed interface Guide permits Guide.Even, Midway {
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
}
