package frieze.artwork.svg;

import frieze.artwork.Clip;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Gives the pieces of an element the clip that is asked for it.
 *
 * <p>Source: SVG 1.1, 14.3. A bounding box is that of what shows.
 */
final class ClipPaths {
  /** What the walk knows. */
  interface Walk {
    /** The pieces that the children of a {@code clipPath} enclose, by their {@code clip-rule}. */
    List<Piece> panes(SvgElement clipPath, WalkContext at);

    /** The {@code clipPath} that a value of the property asks for; empty if there is none. */
    Optional<SvgElement> asked(SvgElement element, String value);

    Map<String, String> declared(SvgElement element);

    Affine transform(SvgElement element, Map<String, String> declared, WalkContext at);
  }

  private final Walk walk;

  ClipPaths(Walk walk) {
    this.walk = walk;
  }

  /** Whether a value of {@code clip-path} names an element. */
  static boolean isReference(String value) {
    return value.startsWith("url(");
  }

  /**
   * Clips the pieces that were drawn for an element.
   *
   * @param at the place inside the element's own transform
   * @return how many pieces are gone since nothing shows through
   */
  int apply(SvgElement element, Map<String, String> declared, WalkContext at, List<Piece> pieces) {
    String value = declared.getOrDefault("clip-path", "none");
    if (pieces.isEmpty() || !isReference(value)) {
      return 0;
    }
    Optional<SvgElement> asked = walk.asked(element, value);
    return asked.isEmpty() ? 0 : apply(asked.get(), at, pieces);
  }

  private int apply(SvgElement clipPath, WalkContext at, List<Piece> pieces) {
    Affine units = Affine.IDENTITY;
    if (clipPath.attribute("clipPathUnits", "").trim().equals("objectBoundingBox")) {
      Bounds box = box(pieces, at.toMm().inverse());
      if (!(box.width() > 0 && box.height() > 0)) {
        return 0;
      }
      units = new Affine(box.width(), 0, 0, box.height(), box.minX(), box.minY());
    }
    Map<String, String> declared = walk.declared(clipPath);
    WalkContext inside = at.moved(walk.transform(clipPath, declared, at).then(units));
    List<Piece> panes = new ArrayList<>(walk.panes(clipPath, inside));
    apply(clipPath, declared, at.deeper(), panes);
    if (panes.isEmpty()) {
      int gone = pieces.size();
      pieces.clear();
      return gone;
    }
    Clip clip = new Clip(panes);
    pieces.replaceAll(piece -> piece.clippedBy(clip));
    return 0;
  }

  /** The bounds of pieces in user units, whatever clips them. */
  static Bounds box(List<Piece> pieces, Affine toUser) {
    Bounds box = Bounds.EMPTY;
    for (Piece piece : pieces) {
      box = box.with(piece.transformed(toUser).bounds());
    }
    return box;
  }
}
