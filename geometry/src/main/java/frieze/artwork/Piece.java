package frieze.artwork;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.region.FillRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One drawn thing: an area, a line, or both.
 *
 * @param label what it can be picked by
 * @param fill how its paths enclose an area; empty if it is not filled
 * @param stroke how its line is drawn; empty if it has none
 * @param clips what shows of it is inside all of these; paths are not cut yet
 */
public record Piece(
    Label label,
    List<Path> paths,
    Optional<FillRule> fill,
    Optional<Stroke> stroke,
    List<Clip> clips) {
  public Piece {
    paths = List.copyOf(paths);
    clips = List.copyOf(clips);
  }

  /** A piece of which all shows. */
  public Piece(Label label, List<Path> paths, Optional<FillRule> fill, Optional<Stroke> stroke) {
    this(label, paths, fill, stroke, List.of());
  }

  /**
   * A piece with an id and classes alone.
   *
   * @param strokeWidthMm how wide its line is drawn; empty if it has none
   */
  public Piece(
      String id,
      List<String> classes,
      List<Path> paths,
      Optional<FillRule> fill,
      OptionalDouble strokeWidthMm) {
    this(
        new Label(id, classes, List.of(), List.of()),
        paths,
        fill,
        strokeWidthMm.isPresent()
            ? Optional.of(Stroke.plain(strokeWidthMm.getAsDouble()))
            : Optional.empty());
  }

  public String id() {
    return label.id();
  }

  public List<String> classes() {
    return label.classes();
  }

  /** How wide its line is drawn; empty if it has none, 0 for a bare line. */
  public OptionalDouble strokeWidthMm() {
    return stroke.isPresent() ? OptionalDouble.of(stroke.get().widthMm()) : OptionalDouble.empty();
  }

  public Piece withPaths(List<Path> others) {
    return new Piece(label, others, fill, stroke, clips);
  }

  /** This piece where it is inside a clip too. */
  public Piece clippedBy(Clip clip) {
    List<Clip> all = new ArrayList<>(clips);
    all.add(clip);
    return new Piece(label, paths, fill, stroke, all);
  }

  /** The exact bounds of its paths, without the width of its line. */
  public Bounds bounds() {
    Bounds bounds = Bounds.EMPTY;
    for (Path path : paths) {
      bounds = bounds.with(path.bounds());
    }
    return bounds;
  }

  /** The image under a map; the width of its line grows with the map's scale. */
  public Piece transformed(Affine map) {
    return new Piece(
        label,
        paths.stream().map(p -> p.transformed(map)).toList(),
        fill,
        stroke.map(s -> s.transformed(map)),
        clips.stream().map(c -> c.transformed(map)).toList());
  }
}
