package frieze.artwork.svg;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Label;
import frieze.artwork.Limits;
import frieze.artwork.Piece;
import frieze.artwork.Stroke;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.region.FillRule;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The pieces that a walk has drawn so far. */
final class Drawn {
  /** Parts of a line's width, at even steps along it: an attribute of our own. */
  private static final String WIDTH_PARTS = "data-width-parts";

  private final Report report;
  private final LeftOut leftOut;
  private List<Piece> pieces = new ArrayList<>();
  private int segments;
  private int letters;

  Drawn(Report report, LeftOut leftOut) {
    this.report = report;
    this.leftOut = leftOut;
  }

  /** All pieces, in the order they are painted. */
  List<Piece> pieces() {
    return pieces;
  }

  int size() {
    return pieces.size();
  }

  /** The pieces drawn since there were so many; changes go through. */
  List<Piece> since(int before) {
    return pieces.subList(before, pieces.size());
  }

  /** Goes on with another list, and gives the one before. */
  List<Piece> exchange(List<Piece> others) {
    List<Piece> before = pieces;
    pieces = others;
    return before;
  }

  /** Counts segments of an element, which are bounded. */
  void count(SvgElement shape, int more) {
    segments += more;
    if (segments > Limits.MAX_SEGMENTS) {
      throw tooMany(shape, Limits.MAX_SEGMENTS + " segments");
    }
  }

  /** Counts a letter of an element; letters are bounded before they are drawn. */
  void countLetter(SvgElement text) {
    letters++;
    if (letters > Limits.MAX_LETTERS) {
      throw tooMany(text, Limits.MAX_LETTERS + " letters");
    }
  }

  private BadInputException tooMany(SvgElement shape, String what) {
    return new BadInputException(
        Diagnostic.error(
            ArtworkCode.TOO_BIG,
            report.span(shape),
            "the drawing has more than " + what,
            "simplify it"));
  }

  /** Whether anything of an element could show; counts it if not. */
  boolean isPainted(WalkContext context) {
    Style style = context.style();
    boolean painted = context.clipping() || style.isFilled() || style.isStroked();
    if (style.hidden() || !painted) {
      leftOut.countInvisible();
      return false;
    }
    return true;
  }

  /** Adds what an element has drawn, or counts it if nothing of it shows. */
  void add(SvgElement shape, WalkContext context, PathBuilder builder) {
    count(shape, builder.segmentCount());
    Style style = context.style();
    FillRule rule = context.clipping() ? style.clipRule() : style.fillRule();
    boolean shown = add(shape, context, builder.finish(), rule);
    leftOut.countDoubled(shape, builder.doubled());
    if (!addDots(shape, context, builder.dots()) && !shown) {
      leftOut.countInvisible(shape);
    }
  }

  /** Adds what of some paths shows; says whether something does. */
  boolean add(SvgElement shape, WalkContext context, List<Path> paths, FillRule rule) {
    Style style = context.style();
    List<Path> seen = new ArrayList<>(paths);
    if (!context.clipping() && style.isFilled() && !style.isStroked()) {
      seen.stream()
          .filter(p -> !shows(p, style) && isLong(p))
          .forEach(p -> leftOut.tellFlat(shape, p.bounds()));
    }
    seen.removeIf(path -> !shows(path, style));
    if (seen.isEmpty()) {
      return false;
    }
    if (context.clipping()) {
      pieces.add(new Piece(Label.NONE, seen, Optional.of(rule), Optional.empty()));
      return true;
    }
    if (style.isFilled()) {
      leftOut.checkPaint(shape, style);
    }
    Optional<FillRule> fill = style.isFilled() ? Optional.of(rule) : Optional.empty();
    Optional<Stroke> stroke =
        style.isStroked()
            ? Optional.of(thickAndThin(shape, context.stroke(), seen.size()))
            : Optional.empty();
    pieces.add(new Piece(context.label(shape.attribute("id", "")), seen, fill, stroke));
    return true;
  }

  /** A line of which a tracing has kept how wide it is place by place. */
  private Stroke thickAndThin(SvgElement shape, Stroke stroke, int lines) {
    String written = shape.attribute(WIDTH_PARTS, "").trim();
    if (written.isEmpty() || lines != 1) {
      return stroke;
    }
    try {
      return stroke.varying(NumberScanner.shares(written));
    } catch (NumberScanner.SyntaxException e) {
      report.unreadable(shape, WIDTH_PARTS, written, e);
      return stroke;
    }
  }

  /** A line without length that is drawn with round or square ends leaves an area. */
  private boolean addDots(SvgElement shape, WalkContext context, List<Point> dots) {
    if (context.clipping() || !context.style().isStroked()) {
      return false;
    }
    List<Path> areas = dots.stream().flatMap(p -> context.stroke().dot(p).stream()).toList();
    if (!areas.isEmpty()) {
      Label label = context.label(shape.attribute("id", ""));
      pieces.add(new Piece(label, areas, Optional.of(FillRule.NONZERO), Optional.empty()));
    }
    return !areas.isEmpty();
  }

  private static boolean isLong(Path path) {
    Bounds b = path.bounds();
    return Math.max(b.width(), b.height()) > Limits.MIN_EXTENT_MM;
  }

  /** A line without width, or an area without extent, is not drawn. */
  private static boolean shows(Path path, Style style) {
    Bounds b = path.bounds();
    double smaller = Math.min(b.width(), b.height());
    double larger = Math.max(b.width(), b.height());
    return (style.isStroked() ? larger : smaller) > Limits.MIN_EXTENT_MM;
  }
}
