package frieze.artwork;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.diagnostic.Diagnostic;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;

/**
 * A drawing in millimetres, Y up.
 *
 * @param source the file as the user named it
 * @param sizeAssumed in words, where its real size comes from
 * @param notes what was left out or mended while reading
 */
public record Artwork(
    String source, List<Piece> pieces, String sizeAssumed, List<Diagnostic> notes) {
  public Artwork {
    pieces = List.copyOf(pieces);
    notes = List.copyOf(notes);
  }

  /** The same drawing with other pieces. */
  public Artwork withPieces(List<Piece> others) {
    return new Artwork(source, others, sizeAssumed, notes);
  }

  /** The exact bounds of all paths, without the width of lines, cut by no clip. */
  public Bounds bounds() {
    Bounds bounds = Bounds.EMPTY;
    for (Piece piece : pieces) {
      bounds = bounds.with(piece.bounds());
    }
    return bounds;
  }

  public Artwork transformed(Affine map) {
    return new Artwork(
        source, pieces.stream().map(p -> p.transformed(map)).toList(), sizeAssumed, notes);
  }

  /** This drawing with its bounds that high, and its lower left corner at the origin. */
  public Artwork withHeight(double heightMm) {
    Bounds b = bounds();
    return placedAtOrigin(heightMm / b.height());
  }

  /** This drawing with its bounds that wide, and its lower left corner at the origin. */
  public Artwork withWidth(double widthMm) {
    return placedAtOrigin(widthMm / bounds().width());
  }

  private Artwork placedAtOrigin(double scale) {
    Bounds b = bounds();
    return transformed(Affine.translation(-b.minX(), -b.minY()).then(Affine.scaling(scale, scale)));
  }

  /** The area of all filled pieces together. */
  public Region filled(double flattenMm) {
    List<Region> areas = new ArrayList<>();
    for (Piece piece : pieces) {
      if (piece.fill().isPresent()) {
        areas.add(Region.of(piece.paths(), piece.fill().get(), flattenMm));
      }
    }
    return Region.union(areas);
  }

  /** The centre lines of all stroked pieces. */
  public List<Path> strokes() {
    return pieces.stream()
        .filter(p -> p.strokeWidthMm().isPresent())
        .flatMap(p -> p.paths().stream())
        .toList();
  }
}
