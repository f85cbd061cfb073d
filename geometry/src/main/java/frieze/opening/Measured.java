package frieze.opening;

import java.util.List;

/**
 * What a tape said about an opening with four sides, seen from the front.
 *
 * @param sidesMm bottom, right, top, left; between the sharp corners, or where they would be
 * @param heights square to the bottom rail, at other places than the corners; they tell the bow
 * @param diagonalsMm from the lower left corner to the upper right, then the other
 * @param beadRadiusMm of the weld in the corners; 0 for sharp ones
 * @param diagonalsIntoBead whether the diagonals were taken into the bead, where a tape stops short
 * @param marksMm how far from the corners the marks on the bottom and the top rail are between
 *     which the diagonals were taken; 0 for the corners themselves
 * @param tapeMm the standard uncertainty of one measurement
 */
public record Measured(
    List<Double> sidesMm,
    List<Station> heights,
    List<Double> diagonalsMm,
    double beadRadiusMm,
    boolean diagonalsIntoBead,
    double marksMm,
    double tapeMm) {
  /** A height of the opening at a distance from its lower left corner. */
  public record Station(double fromLeftMm, double heightMm) {}

  /** Diagonals from corner to corner. */
  public Measured(
      List<Double> sidesMm,
      List<Station> heights,
      List<Double> diagonalsMm,
      double beadRadiusMm,
      boolean diagonalsIntoBead,
      double tapeMm) {
    this(sidesMm, heights, diagonalsMm, beadRadiusMm, diagonalsIntoBead, 0, tapeMm);
  }

  public Measured {
    sidesMm = List.copyOf(sidesMm);
    heights = List.copyOf(heights);
    diagonalsMm = List.copyOf(diagonalsMm);
    if (sidesMm.size() != 4 || diagonalsMm.size() != 2) {
      throw new IllegalArgumentException(
          "four sides and two diagonals are needed but there were "
              + sidesMm.size()
              + " and "
              + diagonalsMm.size());
    }
    if (!(beadRadiusMm >= 0 && marksMm >= 0 && tapeMm > 0)) {
      throw new IllegalArgumentException(
          "beadRadiusMm, marksMm must be >= 0 and tapeMm > 0 but were "
              + (beadRadiusMm + ", " + marksMm + ", " + tapeMm));
    }
    if (diagonalsIntoBead && marksMm > 0) {
      throw new IllegalArgumentException("diagonals go into the bead or to marks, not both");
    }
  }
}
