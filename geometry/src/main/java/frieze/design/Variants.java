package frieze.design;

import frieze.artwork.Artwork;
import frieze.artwork.Clip;
import frieze.artwork.Label;
import frieze.artwork.Piece;
import frieze.artwork.pen.Clipping;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Tolerances;
import frieze.layout.Bend;
import frieze.layout.Hull;
import frieze.layout.Placement;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Makes the shapes of motifs that are not everywhere as drawn: bent ones, and ones that are cut
 * where they reach over a border.
 *
 * <p>Motifs that are bent alike share a shape, so that it is planned once.
 */
public final class Variants {
  /** A tip of less than this, of the motif's bounds, looks like a slip of the tool. */
  private static final double LEAST_SHARE = 0.02;

  private final Tolerances tolerances;
  private final Map<String, List<Artwork>> made = new LinkedHashMap<>();
  private final Map<BentMotif, Integer> bent = new HashMap<>();

  private record BentMotif(String motif, double perMm) {}

  public Variants(Tolerances tolerances) {
    this.tolerances = tolerances;
  }

  /** Gives a placement the shape of its bend. */
  public Placement bent(Placement placement, Motif motif) {
    if (placement.bendPerMm() == 0) {
      return placement;
    }
    return placement.shaped(
        bent.computeIfAbsent(
            new BentMotif(motif.name(), placement.bendPerMm()),
            key -> add(motif.name(), bent(motif.artwork(), key.perMm()))));
  }

  private Artwork bent(Artwork drawn, double perMm) {
    Bend bend = Bend.of(drawn.bounds(), perMm);
    List<Piece> pieces = new ArrayList<>();
    for (Piece piece : drawn.pieces()) {
      List<Path> paths =
          piece.paths().stream().map(p -> bend.apply(p, tolerances.flattenMm())).toList();
      pieces.add(piece.withPaths(paths));
    }
    return drawn.withPieces(pieces);
  }

  /**
   * Cuts a motif down to what lies in a window.
   *
   * @param window in the panel frame
   * @return empty if nothing worth carving is left of it; the same placement if all of it is
   */
  public Optional<Placement> cut(Placement placement, Motif motif, Region window) {
    Artwork shape = shape(placement, motif);
    if (isInside(Hull.of(shape).transformed(placement.map().affine()), window)) {
      return Optional.of(placement);
    }
    Affine fromPanel = placement.map().affine().inverse();
    List<Path> panes =
        window.rings().stream()
            .map(r -> Path.polyline(r.points(), true).transformed(fromPanel))
            .toList();
    Clip clip =
        new Clip(
            List.of(
                new Piece(Label.NONE, panes, Optional.of(FillRule.EVEN_ODD), Optional.empty())));
    Artwork cut =
        Clipping.of(
            shape.withPieces(shape.pieces().stream().map(p -> p.clippedBy(clip)).toList()),
            tolerances.flattenMm());
    return cut.pieces().isEmpty() || share(cut.bounds(), shape.bounds()) < LEAST_SHARE
        ? Optional.empty()
        : Optional.of(placement.shaped(add(motif.name(), cut)));
  }

  /** How much of the bounds is left; of their length, if they are only a line. */
  private static double share(Bounds left, Bounds of) {
    double wide = of.width() > 0 ? left.width() / of.width() : 1;
    double high = of.height() > 0 ? left.height() / of.height() : 1;
    return wide * high;
  }

  private static boolean isInside(Hull hull, Region window) {
    return hull.points().size() > 2 && Region.ofRing(hull.points()).minus(window).isEmpty();
  }

  private Artwork shape(Placement placement, Motif motif) {
    return placement.variant() == 0
        ? motif.artwork()
        : made.getOrDefault(motif.name(), List.of()).get(placement.variant() - 1);
  }

  private int add(String motif, Artwork artwork) {
    List<Artwork> all = made.computeIfAbsent(motif, m -> new ArrayList<>());
    all.add(artwork);
    return all.size();
  }

  /** The motif with all shapes that were made of it. */
  public Motif with(Motif motif) {
    return new Motif(
        motif.name(),
        motif.artwork(),
        made.getOrDefault(motif.name(), List.of()),
        motif.insetsMm());
  }
}
