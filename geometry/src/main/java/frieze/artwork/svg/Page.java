package frieze.artwork.svg;

import frieze.artwork.ArtworkCode;
import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.curve.Affine;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * The outermost viewport: how big a drawing is, and the way from its units to millimetres, Y up.
 *
 * @param toMm from the outermost user units to millimetres with the origin at the lower left corner
 * @param width of the page in user units; NaN if unknown
 * @param height of the page in user units; NaN if unknown
 * @param mmPerPx of the screen
 * @param sizeAssumed in words, where the size comes from
 */
record Page(Affine toMm, double width, double height, double mmPerPx, String sizeAssumed) {
  private static final double MM_PER_PX = 1 / Length.PX_PER_MM;
  private static final String FULL = "100%";

  /**
   * Reads the size of a drawing.
   *
   * @param mmPerUnit the size of a user unit if it is known better than the file says, else NaN
   */
  static Page of(SvgElement root, double mmPerUnit, Report report) {
    ViewBox box = viewBox(root, report);
    if (!Double.isNaN(mmPerUnit)) {
      return scaled(box, mmPerUnit);
    }
    Length width = length(root, "width", report);
    Length height = length(root, "height", report);
    if (box == null) {
      return withoutBox(px(width), px(height), width, height);
    }
    double w = px(width);
    double h = px(height);
    if (Double.isNaN(w) && Double.isNaN(h)) {
      report
          .found()
          .note(
              ArtworkCode.SIZE_ASSUMED,
              report.span(root),
              "the drawing has no width and height; one unit is taken as 1/96 in");
      return inBox(box, box.width(), box.height(), "none", noSize(box));
    }
    w = Double.isNaN(w) ? h * box.width() / box.height() : w;
    h = Double.isNaN(h) ? w * box.height() / box.width() : h;
    String align = root.attribute("preserveAspectRatio", "xMidYMid");
    String said = said(width, height, w, h);
    try {
      box.toViewport(w, h, align);
      return inBox(box, w, h, align, said);
    } catch (SyntaxException e) {
      report.unreadable(root, "preserveAspectRatio", align, e);
      return inBox(box, w, h, "none", said);
    }
  }

  private static Page inBox(ViewBox box, double w, double h, String align, String said) {
    try {
      Affine flip =
          Affine.scaling(MM_PER_PX, -MM_PER_PX).then(Affine.translation(0, h * MM_PER_PX));
      Affine toMm = box.toViewport(w, h, align).then(flip);
      return new Page(toMm, box.width(), box.height(), MM_PER_PX, said);
    } catch (SyntaxException e) {
      throw new IllegalArgumentException("preserveAspectRatio was not checked: " + align, e);
    }
  }

  private static Page scaled(@Nullable ViewBox box, double mmPerUnit) {
    double left = box == null ? 0 : box.minX();
    double bottom = box == null ? 0 : box.minY() + box.height();
    Affine toMm = Affine.translation(-left, -bottom).then(Affine.scaling(mmPerUnit, -mmPerUnit));
    double w = box == null ? Double.NaN : box.width();
    double h = box == null ? Double.NaN : box.height();
    String said = "one unit of the drawing is " + written(mmPerUnit) + " mm, as asked for";
    return new Page(toMm, w, h, mmPerUnit, said);
  }

  private static Page withoutBox(
      double w, double h, @Nullable Length width, @Nullable Length height) {
    double bottom = Double.isNaN(h) ? 0 : h;
    Affine toMm = Affine.translation(0, -bottom).then(Affine.scaling(MM_PER_PX, -MM_PER_PX));
    boolean known = !Double.isNaN(w) && !Double.isNaN(h);
    String said =
        known
            ? said(width, height, w, h)
            : "no width, height or viewBox: one unit taken as 1/96 in (0.264583 mm)";
    return new Page(toMm, w, h, MM_PER_PX, said);
  }

  private static @Nullable ViewBox viewBox(SvgElement root, Report report) {
    String text = root.attribute("viewBox");
    if (text == null) {
      return null;
    }
    try {
      ViewBox box = ViewBox.parse(text);
      return box.isEmpty() ? null : box;
    } catch (SyntaxException e) {
      report.unreadable(root, "viewBox", text, e);
      return null;
    }
  }

  private static @Nullable Length length(SvgElement root, String attribute, Report report) {
    String text = root.attribute(attribute, FULL).trim();
    try {
      Length length = Length.parse(text.equals("auto") ? FULL : text);
      length.px(new Length.Basis(Style.INITIAL.fontSizePx(), 0));
      if (length.value() < 0) {
        throw new SyntaxException("a size must not be negative", 0, false);
      }
      return length.isPercent() ? null : length;
    } catch (SyntaxException e) {
      report.unreadable(root, attribute, text, e);
      return null;
    }
  }

  private static double px(@Nullable Length length) {
    try {
      return length == null
          ? Double.NaN
          : length.px(new Length.Basis(Style.INITIAL.fontSizePx(), 0));
    } catch (SyntaxException e) {
      throw new IllegalArgumentException("length was not checked", e);
    }
  }

  private static String said(@Nullable Length width, @Nullable Length height, double w, double h) {
    String size = written(w * MM_PER_PX) + " x " + written(h * MM_PER_PX) + " mm";
    Length named = width == null ? height : width;
    if (named != null && named.isPhysical()) {
      return "page of " + size + ", as the file says in " + named.unit();
    }
    return "page of " + size + ", from px at 96 to the inch";
  }

  private static String noSize(ViewBox box) {
    String size = written(box.width() * MM_PER_PX) + " x " + written(box.height() * MM_PER_PX);
    return "page of " + size + " mm: no width and height, so one unit taken as 1/96 in";
  }

  private static String written(double value) {
    String text = String.format(Locale.ROOT, "%.4f", value);
    return text.replaceAll("\\.?0+$", "");
  }
}
