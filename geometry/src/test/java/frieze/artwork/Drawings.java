package frieze.artwork;

import frieze.artwork.svg.SvgReader;
import frieze.curve.Path;
import frieze.curve.Segment;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads small drawings written in tests. */
public final class Drawings {
  private Drawings() {}

  /** A drawing whose units are millimetres, its origin at the upper left, so that y = -y. */
  public static Artwork inMm(String body) {
    return SvgReader.withScale(1)
        .read("t.svg", bytes("<svg xmlns='http://www.w3.org/2000/svg'>" + body + "</svg>"));
  }

  static Artwork read(String whole) {
    return new SvgReader().read("t.svg", bytes(whole));
  }

  /** A drawing with attributes of the outermost element given, sizes taken from it. */
  public static Artwork page(String attributes, String body) {
    return read(
        "<svg xmlns='http://www.w3.org/2000/svg' xmlns:xlink='http://www.w3.org/1999/xlink' "
            + attributes
            + ">"
            + body
            + "</svg>");
  }

  /** The paths of a d attribute, in millimetres, y = -y. */
  static List<Path> paths(String d) {
    return inMm("<path stroke='black' d='" + d + "'/>").pieces().get(0).paths();
  }

  public static List<Segment> segments(String d) {
    return paths(d).stream().flatMap(p -> p.segments().stream()).toList();
  }

  public static List<Diagnostic> refused(String whole) {
    return refused(bytes(whole));
  }

  public static List<Diagnostic> refused(byte[] content) {
    try {
      new SvgReader().read("t.svg", content);
    } catch (BadInputException e) {
      return e.diagnostics();
    }
    throw new AssertionError("the drawing was read");
  }

  public static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
