package frieze.artwork.svg;

import frieze.artwork.Stroke;
import frieze.artwork.svg.NumberScanner.SyntaxException;
import frieze.curve.Affine;
import java.util.ArrayList;
import java.util.List;

/**
 * How lines are drawn, apart from their width and paint.
 *
 * @param dashes in user units, an even number of them; empty for whole lines
 * @param dashOffset in user units
 */
record PenStyle(
    Stroke.Cap cap, Stroke.Join join, double miterLimit, List<Double> dashes, double dashOffset) {
  /** What a drawing starts with. Source: SVG 1.1, property index. */
  static final PenStyle INITIAL = new PenStyle(Stroke.Cap.BUTT, Stroke.Join.MITER, 4, List.of(), 0);

  PenStyle {
    dashes = List.copyOf(dashes);
  }

  /** The style inside an element, from what is declared for it. */
  PenStyle inside(Style.Values values, Length.Basis basis) {
    double limit = values.share("stroke-miterlimit", miterLimit);
    return new PenStyle(
        cap(values.word("stroke-linecap", "")),
        join(values.word("stroke-linejoin", "")),
        limit >= 1 ? limit : miterLimit,
        dashes(values, basis),
        values.length("stroke-dashoffset", dashOffset, basis));
  }

  private Stroke.Cap cap(String word) {
    return switch (word) {
      case "butt" -> Stroke.Cap.BUTT;
      case "round" -> Stroke.Cap.ROUND;
      case "square" -> Stroke.Cap.SQUARE;
      default -> cap;
    };
  }

  private Stroke.Join join(String word) {
    return switch (word) {
      case "miter", "miter-clip", "arcs" -> Stroke.Join.MITER;
      case "round" -> Stroke.Join.ROUND;
      case "bevel" -> Stroke.Join.BEVEL;
      default -> join;
    };
  }

  /** An odd number of lengths is said twice; one below 0, or a sum of 0, makes a whole line. */
  private List<Double> dashes(Style.Values values, Length.Basis basis) {
    String text = values.word("stroke-dasharray", "");
    if (text.isEmpty()) {
      return dashes;
    }
    if (text.equals("none")) {
      return List.of();
    }
    List<Double> lengths = new ArrayList<>();
    double sum = 0;
    try {
      for (String part : Length.parts(text)) {
        double length = Length.parse(part).px(basis);
        if (length < 0) {
          return List.of();
        }
        lengths.add(length);
        sum += length;
      }
    } catch (SyntaxException e) {
      values.complaint().unreadable("stroke-dasharray", text, e);
      return List.of();
    }
    if (sum == 0) {
      return List.of();
    }
    if (lengths.size() % 2 == 1) {
      lengths.addAll(List.copyOf(lengths));
    }
    return lengths;
  }

  /** The stroke of a width in user units. */
  Stroke stroke(double width, Affine pen) {
    Affine linear = new Affine(pen.a(), pen.b(), pen.c(), pen.d(), 0, 0);
    return new Stroke(width, cap, join, miterLimit, dashes, dashOffset, linear);
  }
}
