package frieze.artwork.dxf;

import frieze.artwork.ArtworkCode;
import frieze.artwork.Limits;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * One entity with its groups, and those that follow it and belong to it (the vertices of a
 * polyline).
 */
final class DxfEntity {
  private static final int LONGEST_QUOTE = 30;
  private static final String DIGITS_AND_SIGNS = "0123456789+-.eE";

  private final String source;
  private final String type;
  private final int line;
  private final List<DxfTag> tags = new ArrayList<>();
  private final List<DxfEntity> parts = new ArrayList<>();

  DxfEntity(String source, String type, int line) {
    this.source = source;
    this.type = type;
    this.line = line;
  }

  String type() {
    return type;
  }

  SourceSpan where() {
    return new SourceSpan(source, line, 1, type.length());
  }

  List<DxfTag> tags() {
    return tags;
  }

  List<DxfEntity> parts() {
    return parts;
  }

  boolean has(int code) {
    for (DxfTag tag : tags) {
      if (tag.code() == code) {
        return true;
      }
    }
    return false;
  }

  Optional<String> text(int code) {
    for (DxfTag tag : tags) {
      if (tag.code() == code) {
        return Optional.of(tag.value());
      }
    }
    return Optional.empty();
  }

  /** The first number with a code. */
  double number(int code, double otherwise) {
    for (DxfTag tag : tags) {
      if (tag.code() == code) {
        return number(tag);
      }
    }
    return otherwise;
  }

  int integer(int code, int otherwise) {
    return (int) number(code, otherwise);
  }

  boolean flag(int code, int bit) {
    return (integer(code, 0) & bit) != 0;
  }

  /** A point of which x has the code, and y the code and ten. */
  Point point(int code) {
    return new Point(number(code, 0), number(code + 10, 0));
  }

  /** A point in space of which x has the code. */
  DxfSpace.Vector vector(int code) {
    return new DxfSpace.Vector(number(code, 0), number(code + 10, 0), number(code + 20, 0));
  }

  /** All numbers with a code. */
  double[] numbers(int code) {
    return tags.stream().filter(t -> t.code() == code).mapToDouble(this::number).toArray();
  }

  /** All points of which x has the code; a y or z that is missing is 0. */
  List<DxfSpace.Vector> vectors(int code) {
    List<DxfSpace.Vector> points = new ArrayList<>();
    for (DxfTag tag : tags) {
      int axis = (tag.code() - code) / 10;
      if (tag.code() == code) {
        points.add(new DxfSpace.Vector(number(tag), 0, 0));
      } else if (!points.isEmpty() && (tag.code() == code + 10 || tag.code() == code + 20)) {
        DxfSpace.Vector last = points.get(points.size() - 1);
        double y = axis == 1 ? number(tag) : last.y();
        double z = axis == 2 ? number(tag) : last.z();
        points.set(points.size() - 1, new DxfSpace.Vector(last.x(), y, z));
      }
    }
    return points;
  }

  /**
   * Reads a number.
   *
   * @throws BadInputException if it is none, or beyond all sizes
   */
  double number(DxfTag tag) {
    String text = tag.value().strip();
    double value = parsed(text);
    if (Math.abs(value) <= Limits.MAX_COORDINATE) {
      return value;
    }
    boolean size = Double.isNaN(value);
    String quoted =
        text.length() <= LONGEST_QUOTE ? text : text.substring(0, LONGEST_QUOTE) + "...";
    throw new BadInputException(
        Diagnostic.error(
            size ? ArtworkCode.UNREADABLE_VALUE : ArtworkCode.NUMBER_OUT_OF_RANGE,
            new SourceSpan(source, tag.line() + 1, 1, Math.min(text.length(), LONGEST_QUOTE)),
            type
                + ": \""
                + quoted
                + "\" is not a number that can be drawn (group "
                + tag.code()
                + ")",
            "save the drawing again, as DXF in text form"));
  }

  /** A decimal number; NaN for all else, such as the hexadecimal and named ones of the language. */
  private static double parsed(String text) {
    for (int i = 0; i < text.length(); i++) {
      if (DIGITS_AND_SIGNS.indexOf(text.charAt(i)) < 0) {
        return Double.NaN;
      }
    }
    try {
      return Double.parseDouble(text);
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }
}
