package frieze.artwork.svg;

import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.curve.Affine;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The part of a drawing that fills a viewport. Source: SVG 1.1, 7.7 and 7.8. */
record ViewBox(double minX, double minY, double width, double height) {
  private static final Pattern ALIGNMENT =
      Pattern.compile(
          "\\s*(?:defer\\s+)?(none|x(Min|Mid|Max)Y(Min|Mid|Max))(?:\\s+(meet|slice))?\\s*");

  /**
   * Reads a {@code viewBox}.
   *
   * @throws SyntaxException if it is not four numbers, or a size is negative
   */
  static ViewBox parse(String text) throws SyntaxException {
    NumberScanner in = new NumberScanner(text);
    double[] v = new double[4];
    in.skipSpace();
    for (int i = 0; i < 4; i++) {
      v[i] = in.number();
      if (i < 3) {
        in.skipSeparator();
      }
    }
    in.skipSpace();
    if (!in.atEnd()) {
      throw in.fail("a viewBox has four numbers");
    }
    if (v[2] < 0 || v[3] < 0) {
      throw new SyntaxException("the width and the height must not be negative", 0, false);
    }
    return new ViewBox(v[0], v[1], v[2], v[3]);
  }

  boolean isEmpty() {
    return width == 0 || height == 0;
  }

  /**
   * The map from this box to a viewport of the given size with its origin at 0, 0.
   *
   * @param preserveAspectRatio as the attribute of that name
   * @throws SyntaxException if that is none
   */
  Affine toViewport(double viewportWidth, double viewportHeight, String preserveAspectRatio)
      throws SyntaxException {
    Matcher asked = ALIGNMENT.matcher(preserveAspectRatio);
    if (!asked.matches()) {
      throw new SyntaxException("this is no way to align", 0, false);
    }
    double sx = viewportWidth / width;
    double sy = viewportHeight / height;
    Affine toOrigin = Affine.translation(-minX, -minY);
    if (asked.group(1).equals("none")) {
      return toOrigin.then(Affine.scaling(sx, sy));
    }
    double s = "slice".equals(asked.group(4)) ? Math.max(sx, sy) : Math.min(sx, sy);
    double dx = share(asked.group(2)) * (viewportWidth - s * width);
    double dy = share(asked.group(3)) * (viewportHeight - s * height);
    return toOrigin.then(Affine.scaling(s, s)).then(Affine.translation(dx, dy));
  }

  private static double share(String place) {
    return switch (place) {
      case "Min" -> 0;
      case "Mid" -> 0.5;
      default -> 1;
    };
  }
}
