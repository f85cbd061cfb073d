package frieze.artwork.pen;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.Limits;
import frieze.artwork.Piece;
import frieze.artwork.Stroke;
import frieze.curve.Affine;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.region.Crowding;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
  private static final Crowding.Limits MOST =
      new Crowding.Limits(Limits.MAX_BAND_CROSSINGS, Limits.MAX_PAIRS);

  /** So few points can't cross too often. */
  private static final int FEW_POINTS = 600;

  private final double toleranceMm;
  private final List<Piece> pieces = new ArrayList<>();
  private final Diagnostics found = new Diagnostics();
  private final String source;
  private int dashes;
  private long points;

  private StrokeOutline(String source, double toleranceMm) {
    this.source = source;
    this.toleranceMm = toleranceMm;
  }

  /**
   * Outlines all lines that have a width; bare lines stay lines.
   *
   * @param toleranceMm the most by which an outline departs from the exact one
   * @throws BadInputException if the lines have too many dashes or points
   */
  public static Artwork of(Artwork artwork, double toleranceMm) {
    if (!(toleranceMm > 0)) {
      throw new IllegalArgumentException("toleranceMm must be > 0 but was " + toleranceMm + " mm");
    }
    StrokeOutline work = new StrokeOutline(artwork.source(), toleranceMm);
    artwork.pieces().forEach(work::countWork);
    artwork.pieces().forEach(work::add);
    List<Diagnostic> notes = new ArrayList<>(artwork.notes());
    notes.addAll(work.found.sorted());
    return new Artwork(artwork.source(), work.pieces, artwork.sizeAssumed(), notes);
  }

  private static boolean isWide(Piece piece) {
    return piece.stroke().isPresent() && piece.stroke().get().widthMm() > 0;
  }

  private void add(Piece piece) {
    if (!isWide(piece)) {
      pieces.add(piece);
      return;
    }
    List<Path> paths = outlines(piece, piece.stroke().get());
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

  /** The work is done in the units of the pen, where it is round. */
  private List<Path> outlines(Piece piece, Stroke stroke) {
    Affine pen = stroke.pen();
    Affine back = pen.inverse();
    double tolerance = toleranceMm / stretch(pen);
    PenTrack track = new PenTrack(stroke, tolerance);
    List<Path> bands = new ArrayList<>();
    for (Path path : piece.paths()) {
      Dashes.Drawn drawn = Dashes.of(path.transformed(back), stroke, tolerance);
      drawn.dashes().forEach(dash -> bands.addAll(track.around(dash)));
      drawn.dots().forEach(dot -> track.around(dot).ifPresent(bands::add));
      if (drawn.tooMany()) {
        reportTooMany(piece, path);
      }
    }
    if (bands.isEmpty() && piece.fill().isEmpty()) {
      return List.of();
    }
    checkBands(bands, tolerance);
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

  /** Counts the dashes, and the points along lines, before any is outlined. */
  private void countWork(Piece piece) {
    if (!isWide(piece)) {
      return;
    }
    Stroke stroke = piece.stroke().get();
    Affine back = stroke.pen().inverse();
    double tolerance = toleranceMm / stretch(stroke.pen());
    for (Path path : piece.paths()) {
      Path line = path.transformed(back);
      dashes += Dashes.count(line, stroke, tolerance);
      points += Flattener.flatten(line, tolerance).size();
    }
    if (dashes > Dashes.MOST) {
      throw tooMany(
          Dashes.MOST + " dashes together",
          "make the dashes longer in the drawing program, or the lines whole");
    }
    if (points > Limits.MAX_PEN_POINTS) {
      throw tooMany(
          Limits.MAX_PEN_POINTS + " points together, as polygons",
          "simplify them, or turn them into areas in the drawing program");
    }
  }

  /** Wide lines beside each other cover each other again and again. */
  private void checkBands(List<Path> bands, double tolerance) {
    List<List<Point>> rings = new ArrayList<>();
    long size = 0;
    for (Path band : bands) {
      rings.add(Flattener.flatten(band, tolerance));
      size += rings.get(rings.size() - 1).size();
      if (size > Limits.MAX_POINTS) {
        throw tooMany(Limits.MAX_POINTS + " points around one of them", "make it thinner");
      }
    }
    if (size > FEW_POINTS && Crowding.isBeyond(MOST, rings)) {
      throw tooMany(
          MOST.crossings() + " places where parts of one of them cross, with its width",
          "make it thinner, or simplify it");
    }
  }

  private BadInputException tooMany(String what, String hint) {
    return new BadInputException(
        Diagnostic.error(
            ArtworkCode.TOO_BIG,
            SourceSpan.file(source),
            "the lines of the drawing have more than " + what,
            hint));
  }

  private void reportTooMany(Piece piece, Path path) {
    String name = piece.id().isEmpty() ? "a line" : "the line \"" + piece.id() + "\"";
    found.warning(
        ArtworkCode.EFFECT_LEFT_OUT,
        SourceSpan.file(source),
        String.format(
            Locale.ROOT,
            "%s that starts at x %.2f, y %.2f mm would have more than %d dashes; it is outlined"
                + " whole",
            name,
            path.start().x(),
            path.start().y(),
            Dashes.MOST),
        "make the dashes longer in the drawing program");
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
