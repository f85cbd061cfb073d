package frieze.artwork.svg;

import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import java.util.Locale;

/**
 * Reads the point that stays where it is under a transform.
 *
 * <p>Source: CSS Transforms 1, 5: lengths from the origin of the units of an SVG element, per cent
 * and words of its viewport; a third length, for depth, is passed over.
 */
final class TransformOrigin {
  private TransformOrigin() {}

  /** Whether a value of {@code transform-box} is the box of the element itself. */
  static boolean isOwnBox(String transformBox) {
    return transformBox.equals("fill-box") || transformBox.equals("content-box");
  }

  /**
   * Reads a value that is measured from the upper left corner of a box.
   *
   * @param text empty for that corner
   * @throws SyntaxException if it is none
   */
  static Point parse(String text, Bounds box, WalkContext at) throws SyntaxException {
    Point corner = new Point(box.minX(), box.minY());
    WalkContext inside = at.viewport(Affine.IDENTITY, box.width(), box.height());
    return text.isEmpty() ? corner : corner.plus(parse(text, inside));
  }

  /**
   * Reads a value.
   *
   * @throws SyntaxException if it is none
   */
  static Point parse(String text, WalkContext at) throws SyntaxException {
    String[] words = text.strip().toLowerCase(Locale.ROOT).split("[\\s,]+", -1);
    String first = words[0];
    String second = words.length > 1 ? words[1] : "center";
    if (words.length > 3) {
      throw new SyntaxException("an origin has two lengths", 0, false);
    }
    if (isAlongY(first) || isAlongX(second)) {
      String swap = first;
      first = second;
      second = swap;
    }
    if (isAlongY(first) || isAlongX(second)) {
      throw new SyntaxException("an origin has one place along X and one along Y", 0, false);
    }
    return new Point(px(first, at.width(), at), px(second, at.height(), at));
  }

  private static boolean isAlongX(String word) {
    return word.equals("left") || word.equals("right");
  }

  private static boolean isAlongY(String word) {
    return word.equals("top") || word.equals("bottom");
  }

  private static double px(String word, double hundredPercent, WalkContext at)
      throws SyntaxException {
    String length =
        switch (word) {
          case "left", "top" -> "0";
          case "center" -> "50%";
          case "right", "bottom" -> "100%";
          default -> word;
        };
    return Length.parse(length).px(new Length.Basis(at.style().fontSizePx(), hundredPercent));
  }

  /** The transform with its origin moved. */
  static Affine about(Point origin, Affine transform) {
    return Affine.translation(-origin.x(), -origin.y())
        .then(transform)
        .then(Affine.translation(origin.x(), origin.y()));
  }
}
