package frieze.artwork.pen;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.artwork.Stroke;
import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Turns drawn lines into the areas that their width covers.
 *
 * <p><i>Guarantees:</i> width, caps, joins, the limit of mitres and dashes are those of the stroke;
 * a piece that is filled too gets one area of both; sides of lines and arcs are lines and arcs.
 *
 * <p><i>Approximation:</i> sides of other curves, and lines that a pen draws thick and thin, are
 * within the tolerance.
 *
 * <p><i>Cost:</i> about that of a union of all the stretches of one piece.
 *
 * <p><i>Source:</i> SVG 1.1, 11.4.
 */
public final class StrokeOutline {
  private StrokeOutline() {}

  /**
   * Outlines all lines that have a width; bare lines stay lines.
   *
   * @param toleranceMm the most by which an outline departs from the exact one
   */
  public static Artwork of(Artwork artwork, double toleranceMm) {
    if (!(toleranceMm > 0)) {
      throw new IllegalArgumentException("toleranceMm must be > 0 but was " + toleranceMm + " mm");
    }
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      boolean wide = piece.stroke().isPresent() && piece.stroke().get().widthMm() > 0;
      if (!wide) {
        pieces.add(piece);
        continue;
      }
      List<Path> paths = outlines(piece, piece.stroke().get(), toleranceMm);
      if (!paths.isEmpty()) {
        pieces.add(
            new Piece(
                piece.label(),
                paths,
                Optional.of(FillRule.NONZERO),
                Optional.empty(),
                piece.clips()));
      }
    }
    return new Artwork(artwork.source(), pieces, artwork.sizeAssumed(), artwork.notes());
  }

  /** The work is done in the units of the pen, where it is round. */
  private static List<Path> outlines(Piece piece, Stroke stroke, double toleranceMm) {
    Affine pen = stroke.pen();
    Affine back = pen.inverse();
    double tolerance = toleranceMm / stretch(pen);
    PenTrack track = new PenTrack(stroke, tolerance);
    List<Path> bands = new ArrayList<>();
    for (Path path : piece.paths()) {
      for (Path dash : Dashes.of(path.transformed(back), stroke, tolerance)) {
        bands.addAll(track.around(dash));
      }
    }
    if (bands.isEmpty() && piece.fill().isEmpty()) {
      return List.of();
    }
    Region covered = Region.of(bands, FillRule.NONZERO, tolerance);
    List<Path> sources = new ArrayList<>(bands);
    if (piece.fill().isPresent()) {
      List<Path> filled = piece.paths().stream().map(p -> p.transformed(back)).toList();
      covered = covered.union(Region.of(filled, piece.fill().get(), tolerance));
      sources.addAll(filled);
    }
    return new ExactRings(sources, tolerance)
        .of(covered).stream().map(p -> oriented(p.transformed(pen), pen)).toList();
  }

  /** A mirroring pen turns the sense of an outline. */
  private static Path oriented(Path path, Affine pen) {
    return pen.isMirroring() ? path.reversed() : path;
  }

  /** The most by which a map stretches a length. */
  private static double stretch(Affine map) {
    double squares = map.a() * map.a() + map.b() * map.b() + map.c() * map.c() + map.d() * map.d();
    double det = map.determinant();
    double spread = Math.sqrt(Math.max(0, squares * squares - 4 * det * det));
    return Math.sqrt((squares + spread) / 2);
  }
}
