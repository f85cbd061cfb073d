package frieze.artwork.svg;

import frieze.artwork.Clip;
import frieze.artwork.Label;
import frieze.artwork.Piece;
import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.FillRule;
import java.util.List;
import java.util.Optional;

/** Reads lengths in their viewport, and enters nested ones. */
record Viewports(Report report) {

  /** The length of an attribute in user units, or NaN if it is absent, "auto" or unreadable. */
  double length(SvgElement element, String attribute, Shapes.Axis axis, WalkContext context) {
    String text = element.attribute(attribute);
    if (text == null || text.trim().equals("auto")) {
      return Double.NaN;
    }
    double hundred = hundredPercent(axis, context);
    try {
      Length length = Length.parse(text);
      return length.px(new Length.Basis(context.style().fontSizePx(), hundred));
    } catch (SyntaxException e) {
      report.unreadable(element, attribute, text, e);
      return Double.NaN;
    }
  }

  /** The list of lengths of an attribute in user units; empty if it is absent or unreadable. */
  double[] lengths(SvgElement element, String attribute, Shapes.Axis axis, WalkContext context) {
    String text = element.attribute(attribute, "").strip();
    if (text.isEmpty()) {
      return new double[0];
    }
    String[] parts = Length.parts(text);
    double[] values = new double[parts.length];
    try {
      Length.Basis basis =
          new Length.Basis(context.style().fontSizePx(), hundredPercent(axis, context));
      for (int i = 0; i < parts.length; i++) {
        values[i] = Length.parse(parts[i]).px(basis);
      }
      return values;
    } catch (SyntaxException e) {
      report.unreadable(element, attribute, text, e);
      return new double[0];
    }
  }

  private static double hundredPercent(Shapes.Axis axis, WalkContext context) {
    return switch (axis) {
      case X -> context.width();
      case Y -> context.height();
      case DIAGONAL -> context.diagonal();
    };
  }

  private double length(
      SvgElement element, String attribute, Shapes.Axis axis, WalkContext context, double other) {
    double value = length(element, attribute, axis, context);
    return Double.isNaN(value) ? other : value;
  }

  /** The shift that x and y of an element ask for. */
  Affine offset(SvgElement element, WalkContext context) {
    return Affine.translation(
        length(element, "x", Shapes.Axis.X, context, 0),
        length(element, "y", Shapes.Axis.Y, context, 0));
  }

  /**
   * A viewport that was entered.
   *
   * @param frame the rectangle that cuts what is inside; empty if all shows
   */
  record Inside(WalkContext context, Optional<Clip> frame) {}

  /**
   * Enters the viewport of a nested {@code svg} or a {@code symbol}.
   *
   * @param sized the element whose width and height win: a {@code use}, or the element itself
   * @return nothing if the viewport has no size
   */
  Optional<Inside> enter(
      SvgElement element, SvgElement sized, String overflow, WalkContext context) {
    double width = size(element, sized, "width", Shapes.Axis.X, context);
    double height = size(element, sized, "height", Shapes.Axis.Y, context);
    if (width <= 0 || height <= 0) {
      return Optional.empty();
    }
    boolean nested = element.name().equals("svg");
    WalkContext at = nested ? context.moved(offset(element, context)) : context;
    boolean open = overflow.equals("visible") || overflow.equals("auto");
    Optional<Clip> frame = open ? Optional.empty() : frame(width, height, at.toMm());
    return content(element, at, width, height).map(inside -> new Inside(inside, frame));
  }

  private static Optional<Clip> frame(double width, double height, Affine toMm) {
    if (!Double.isFinite(width) || !Double.isFinite(height)) {
      return Optional.empty();
    }
    List<Point> corners =
        List.of(
            new Point(0, 0), new Point(width, 0), new Point(width, height), new Point(0, height));
    Path border = Path.polyline(corners, true).transformed(toMm);
    Piece pane =
        new Piece(Label.NONE, List.of(border), Optional.of(FillRule.NONZERO), Optional.empty());
    return Optional.of(new Clip(List.of(pane)));
  }

  private Optional<WalkContext> content(
      SvgElement element, WalkContext at, double width, double height) {
    String text = element.attribute("viewBox");
    if (text == null) {
      return Optional.of(at.viewport(Affine.IDENTITY, width, height));
    }
    String attribute = "viewBox";
    try {
      ViewBox box = ViewBox.parse(text);
      if (box.isEmpty()) {
        return Optional.empty();
      }
      attribute = "preserveAspectRatio";
      text = element.attribute("preserveAspectRatio", "xMidYMid");
      double w = Double.isNaN(width) ? box.width() : width;
      double h = Double.isNaN(height) ? box.height() : height;
      return Optional.of(at.viewport(box.toViewport(w, h, text), box.width(), box.height()));
    } catch (SyntaxException e) {
      report.unreadable(element, attribute, text, e);
      return Optional.empty();
    }
  }

  private double size(
      SvgElement element, SvgElement sized, String name, Shapes.Axis axis, WalkContext context) {
    double asUsed = length(sized, name, axis, context);
    double own = Double.isNaN(asUsed) ? length(element, name, axis, context) : asUsed;
    double full = axis == Shapes.Axis.X ? context.width() : context.height();
    return Double.isNaN(own) ? full : own;
  }
}
