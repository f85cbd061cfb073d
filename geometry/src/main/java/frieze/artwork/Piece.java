package frieze.artwork;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.region.FillRule;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One drawn thing: an area, a line, or both.
 *
 * @param id as in the file; empty if it has none
 * @param classes the class names on it and on the groups around it, outermost first
 * @param fill how its paths enclose an area; empty if it is not filled
 * @param strokeWidthMm how wide its line is drawn; empty if it has none
 */
public record Piece(
    String id,
    List<String> classes,
    List<Path> paths,
    Optional<FillRule> fill,
    OptionalDouble strokeWidthMm) {
  public Piece {
    classes = List.copyOf(classes);
    paths = List.copyOf(paths);
  }

  /** The image under a map; the width of its line grows with the map's scale. */
  public Piece transformed(Affine map) {
    OptionalDouble width =
        strokeWidthMm.isPresent()
            ? OptionalDouble.of(strokeWidthMm.getAsDouble() * map.scale())
            : strokeWidthMm;
    return new Piece(
        id, classes, paths.stream().map(p -> p.transformed(map)).toList(), fill, width);
  }
}
