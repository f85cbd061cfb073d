package frieze.artwork.svg;

import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.curve.Affine;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Reads a {@code transform} attribute or property.
 *
 * <p>Source: SVG 1.1, 7.6 (the list {@code A B C} maps a point to {@code A(B(C p))}); units of
 * angles and lengths from CSS Transforms 1 are accepted.
 */
final class TransformList {
  private final NumberScanner in;

  private TransformList(String text) {
    this.in = new NumberScanner(text);
  }

  /**
   * Reads a list of transforms.
   *
   * @throws SyntaxException if it is not one
   */
  static Affine parse(String text) throws SyntaxException {
    return text.trim().equals("none") ? Affine.IDENTITY : new TransformList(text).parseAll();
  }

  private Affine parseAll() throws SyntaxException {
    Affine all = Affine.IDENTITY;
    in.skipSpace();
    while (!in.atEnd()) {
      all = parseOne().then(all);
      in.skipSeparator();
    }
    return all;
  }

  private Affine parseOne() throws SyntaxException {
    String name = in.word().toLowerCase(Locale.ROOT);
    in.skipSpace();
    if (in.peek() != '(') {
      throw in.fail(name.isEmpty() ? "the name of a transform is expected" : "\"(\" is expected");
    }
    in.next();
    in.skipSpace();
    List<Double> values = new ArrayList<>();
    while (in.peek() != ')') {
      double value = in.number();
      values.add(value * unit(in.word().toLowerCase(Locale.ROOT)));
      in.skipSeparator();
    }
    in.next();
    return map(name, values);
  }

  /** Angles are kept in degrees, lengths in px. */
  private double unit(String name) throws SyntaxException {
    return switch (name) {
      case "", "deg", "px" -> 1;
      case "rad" -> Math.toDegrees(1);
      case "grad" -> 0.9;
      case "turn" -> 360;
      case "mm" -> Length.PX_PER_MM;
      case "cm" -> 10 * Length.PX_PER_MM;
      case "q" -> Length.PX_PER_MM / 4;
      case "pt" -> Length.PX_PER_INCH / 72;
      case "pc" -> Length.PX_PER_INCH / 6;
      case "in" -> Length.PX_PER_INCH;
      default -> throw in.fail("the unit " + name + " is not known here");
    };
  }

  private Affine map(String name, List<Double> v) throws SyntaxException {
    int n = v.size();
    return switch (name) {
      case "matrix" -> {
        require(name, n == 6, n);
        yield new Affine(v.get(0), v.get(1), v.get(2), v.get(3), v.get(4), v.get(5));
      }
      case "translate" -> {
        require(name, n == 1 || n == 2, n);
        yield Affine.translation(v.get(0), n == 2 ? v.get(1) : 0);
      }
      case "translatex" -> oneValue(name, v, Affine.translation(first(v), 0));
      case "translatey" -> oneValue(name, v, Affine.translation(0, first(v)));
      case "scale" -> {
        require(name, n == 1 || n == 2, n);
        yield Affine.scaling(v.get(0), v.get(n - 1));
      }
      case "scalex" -> oneValue(name, v, Affine.scaling(first(v), 1));
      case "scaley" -> oneValue(name, v, Affine.scaling(1, first(v)));
      case "rotate" -> {
        require(name, n == 1 || n == 3, n);
        yield n == 1 ? turn(v.get(0)) : turnAbout(v.get(0), v.get(1), v.get(2));
      }
      case "skewx" -> oneValue(name, v, new Affine(1, 0, tangent(first(v)), 1, 0, 0));
      case "skewy" -> oneValue(name, v, new Affine(1, tangent(first(v)), 0, 1, 0, 0));
      default -> throw in.fail("the transform " + name + " is not known");
    };
  }

  private Affine oneValue(String name, List<Double> v, Affine map) throws SyntaxException {
    require(name, v.size() == 1, v.size());
    return map;
  }

  private static double first(List<Double> v) {
    return v.isEmpty() ? 0 : v.get(0);
  }

  private void require(String name, boolean right, int count) throws SyntaxException {
    if (!right) {
      throw in.fail(name + " does not take " + count + " numbers");
    }
  }

  private static double tangent(double degrees) {
    return StrictMath.tan(Math.toRadians(degrees));
  }

  /** Quarter turns are exact. */
  private static Affine turn(double degrees) {
    double quarters = degrees / 90;
    return Affine.rotation(
        quarters == Math.rint(quarters) ? quarters % 4 * (Math.PI / 2) : Math.toRadians(degrees));
  }

  private static Affine turnAbout(double degrees, double x, double y) {
    return Affine.translation(-x, -y).then(turn(degrees)).then(Affine.translation(x, y));
  }
}
