package frieze.artwork.dxf;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Label;
import frieze.artwork.Limits;
import frieze.artwork.Piece;
import frieze.artwork.Stroke;
import frieze.artwork.dxf.DxfSpline.BrokenSpline;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.region.FillRule;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Draws all entities, follows blocks, and sorts what comes out by layer and colour. */
final class DxfDrawer {
  private static final String NO_LAYER = "0";

  private final DxfFile file;
  private final Diagnostics found;
  private final DxfLeftOut leftOut;
  private final Map<Key, List<Path>> paths = new LinkedHashMap<>();
  private final Set<String> inserted = new HashSet<>();
  private int visited;
  private int segments;

  private record Key(String layer, String colour, boolean closed) {}

  /** Where entities are drawn: their map, and the layer and colour of the block around them. */
  private record Place(DxfSpace toMm, String layer, String colour, int depth) {}

  DxfDrawer(DxfFile file, Diagnostics found, DxfLeftOut leftOut) {
    this.file = file;
    this.found = found;
    this.leftOut = leftOut;
  }

  /**
   * Draws everything.
   *
   * @return one piece for the closed and one for the open lines of each layer and colour; closed
   *     ones enclose areas, by the even-odd rule
   */
  List<Piece> draw(double mmPerUnit) {
    Place all = new Place(DxfSpace.scaling(mmPerUnit, mmPerUnit, mmPerUnit), NO_LAYER, "", 0);
    file.entities().forEach(e -> draw(e, all));
    List<Piece> pieces = new ArrayList<>();
    paths.forEach((key, drawn) -> pieces.add(piece(key, drawn)));
    return pieces;
  }

  private static Piece piece(Key key, List<Path> drawn) {
    List<String> colours = key.colour().isEmpty() ? List.of() : List.of(key.colour());
    Label label = new Label("", List.of(), List.of(key.layer()), colours);
    Optional<FillRule> fill = key.closed() ? Optional.of(FillRule.EVEN_ODD) : Optional.empty();
    return new Piece(label, drawn, fill, Optional.of(Stroke.BARE));
  }

  private void draw(DxfEntity e, Place place) {
    visited++;
    if (visited > Limits.MAX_ELEMENTS) {
      throw tooBig(e, Limits.MAX_ELEMENTS + " entities");
    }
    String named = e.text(8).orElse(NO_LAYER);
    String layer = named.equals(NO_LAYER) ? place.layer() : named;
    DxfLayer known = file.layers().get(DxfParser.key(layer));
    boolean onPaper = e.integer(67, 0) == 1;
    if (onPaper || e.integer(60, 0) == 1 || (known != null && !known.shown())) {
      leftOut.countHidden();
      return;
    }
    String ofLayer = known == null ? "" : known.colour();
    String colour = e.integer(62, 256) == 0 ? place.colour() : DxfColour.hex(e, ofLayer);
    if (e.type().equals("INSERT")) {
      insert(e, new Place(place.toMm(), layer, colour, place.depth() + 1));
    } else if (DxfShapes.isShape(e.type()) && !DxfShapes.isMesh(e)) {
      shape(e, place.toMm(), layer, colour);
    } else {
      leftOut.count(e, e.type());
    }
  }

  private void shape(DxfEntity e, DxfSpace toMm, String layer, String colour) {
    try {
      Optional<Path> drawn = DxfShapes.draw(e, toMm);
      if (drawn.isEmpty()) {
        leftOut.countHidden();
        return;
      }
      segments += drawn.get().segments().size();
      if (segments > Limits.MAX_SEGMENTS) {
        throw tooBig(e, Limits.MAX_SEGMENTS + " segments");
      }
      if (DxfShapes.isThroughPoints(e)) {
        found.warning(
            ArtworkCode.CURVE_INTERPOLATED,
            e.where(),
            "the file gives points that the spline goes through, but not the curve between them;"
                + " a smooth one is drawn",
            "look at the picture; or save the drawing with the control points of its splines");
      }
      if (DxfShapes.isWide(e)) {
        leftOut.countWide(e);
      }
      Path inMm = drawn.get();
      paths
          .computeIfAbsent(new Key(layer, colour, inMm.closed()), k -> new ArrayList<>())
          .add(inMm);
    } catch (BrokenSpline broken) {
      leftOut.count(e, "SPLINE with " + broken.getMessage());
    }
  }

  private void insert(DxfEntity e, Place at) {
    e.parts().forEach(part -> leftOut.count(part, part.type()));
    String name = e.text(2).orElse("");
    DxfBlock block = file.blocks().get(DxfParser.key(name));
    if (block == null) {
      found.warning(
          ArtworkCode.NOTHING_REFERENCED, e.where(), "there is no block \"" + name + "\"", "");
      return;
    }
    if (at.depth() > Limits.MAX_DEPTH || !inserted.add(DxfParser.key(name))) {
      throw new BadInputException(
          Diagnostic.error(
              ArtworkCode.USED_IN_ITSELF,
              e.where(),
              "the block \"" + name + "\" is inserted into itself",
              "remove the loop"));
    }
    DxfSpace.Vector base = block.base();
    DxfSpace own =
        DxfSpace.translation(-base.x(), -base.y(), -base.z())
            .then(DxfSpace.scaling(e.number(41, 1), e.number(42, 1), e.number(43, 1)));
    DxfSpace.Vector to = e.vector(10);
    DxfSpace after =
        DxfSpace.turn(Math.toRadians(e.number(50, 0)))
            .then(DxfSpace.translation(to.x(), to.y(), to.z()))
            .then(DxfSpace.of(e))
            .then(at.toMm());
    int columns = Math.max(1, e.integer(70, 1));
    int rows = Math.max(1, e.integer(71, 1));
    Point step = new Point(e.number(44, 0), e.number(45, 0));
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        DxfSpace shift = DxfSpace.translation(column * step.x(), row * step.y(), 0);
        DxfSpace map = own.then(shift).then(after);
        drawBlock(block, e, new Place(map, at.layer(), at.colour(), at.depth()));
      }
    }
    inserted.remove(DxfParser.key(name));
  }

  private void drawBlock(DxfBlock block, DxfEntity insert, Place place) {
    visited++;
    if (visited > Limits.MAX_ELEMENTS) {
      throw tooBig(insert, Limits.MAX_ELEMENTS + " entities");
    }
    if (place.toMm().isDegenerate()) {
      leftOut.countHidden();
      return;
    }
    block.entities().forEach(inside -> draw(inside, place));
  }

  private static BadInputException tooBig(DxfEntity e, String limit) {
    return new BadInputException(
        Diagnostic.error(
            ArtworkCode.TOO_BIG,
            e.where(),
            "with all its blocks followed, the drawing has more than " + limit,
            "simplify the drawing"));
  }
}
