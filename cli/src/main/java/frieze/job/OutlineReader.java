package frieze.job;

import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostics;
import frieze.keys.JobCode;
import frieze.keys.Values;
import frieze.layout.Panel;
import frieze.region.FillRule;
import frieze.region.Region;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Reads a panel whose edge is drawn in a file. */
final class OutlineReader {
  /** So many outlines are listed with their places where one is wanted. */
  private static final int MOST_LISTED = 5;

  private final DrawingReader drawings;
  private final SourceFiles files;
  private final Diagnostics found;

  OutlineReader(DrawingReader drawings, SourceFiles files, Diagnostics found) {
    this.drawings = drawings;
    this.files = files;
    this.found = found;
  }

  /**
   * Reads the outline.
   *
   * @param name of the panel
   * @param outline the drawing's section
   * @return a panel with its lower left corner at the origin; empty after an error
   */
  Optional<Panel> read(String name, Values outline) {
    int before = found.sorted().size();
    Job.Drawing drawing = drawings.drawing(name, outline);
    if (found.sorted().size() > before) {
      return Optional.empty();
    }
    try {
      List<Path> paths =
          DrawingContent.read(drawing, files.read(drawing.file())).artwork().pieces().stream()
              .map(Piece::paths)
              .flatMap(List::stream)
              .toList();
      return one(name, drawing, paths).map(path -> new Panel(name, atOrigin(path)));
    } catch (BadInputException e) {
      found.addAll(e.diagnostics());
    } catch (IOException e) {
      found.error(
          JobCode.FILE_NOT_READ,
          drawing.where(),
          "can't read " + drawing.file(),
          "check the permissions of the file");
    }
    return Optional.empty();
  }

  /** The only path, if it is closed and crosses nothing. */
  private Optional<Path> one(String name, Job.Drawing drawing, List<Path> paths) {
    @Nullable String what = null;
    if (paths.size() != 1) {
      what = "has " + paths.size() + " outlines, " + places(paths);
    } else if (!paths.get(0).closed()) {
      what =
          String.format(
              Locale.ROOT,
              "is open: it starts at (mm) %.2f, %.2f and ends at %.2f, %.2f",
              paths.get(0).start().x(),
              paths.get(0).start().y(),
              paths.get(0).end().x(),
              paths.get(0).end().y());
    } else if (area(paths.get(0)).rings().size() != 1) {
      what =
          "crosses or touches itself, so that it encloses "
              + area(paths.get(0)).rings().size()
              + " areas";
    }
    if (what == null) {
      return Optional.of(paths.get(0));
    }
    found.error(
        JobCode.NO_ONE_OUTLINE,
        drawing.where(),
        "the edge of the panel \""
            + name
            + "\" must be one closed outline, but "
            + drawing.file()
            + " "
            + what,
        paths.size() > 1
            ? "take one out with `pick`, by its id, class, colour or layer"
            : "close it in the drawing program; a `gap` joins ends that nearly meet");
    return Optional.empty();
  }

  private static Region area(Path path) {
    return Region.of(List.of(path), FillRule.EVEN_ODD, Tolerances.DEFAULT.flattenMm());
  }

  private static String places(List<Path> paths) {
    StringBuilder text = new StringBuilder("at (mm)");
    for (Path path : paths.subList(0, Math.min(MOST_LISTED, paths.size()))) {
      Bounds b = path.bounds();
      text.append(
          String.format(
              Locale.ROOT,
              "%s %.1f, %.1f to %.1f, %.1f",
              text.length() > "at (mm)".length() ? ";" : "",
              b.minX(),
              b.minY(),
              b.maxX(),
              b.maxY()));
    }
    return text + (paths.size() > MOST_LISTED ? "; ..." : "");
  }

  /** Counter-clockwise, its lower left corner at the origin. */
  private static Path atOrigin(Path path) {
    Bounds b = path.bounds();
    Path moved = path.transformed(Affine.translation(-b.minX(), -b.minY()));
    return isClockwise(moved) ? moved.reversed() : moved;
  }

  private static boolean isClockwise(Path path) {
    List<Point> points = Flattener.flatten(path, Tolerances.DEFAULT.flattenMm());
    double twice = 0;
    for (int i = 0; i < points.size(); i++) {
      twice += points.get(i).cross(points.get((i + 1) % points.size()));
    }
    return twice < 0;
  }
}
