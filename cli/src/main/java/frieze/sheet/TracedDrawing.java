package frieze.sheet;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.artwork.Stroke;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.trace.GreyImage;
import frieze.trace.Traced;
import java.util.List;
import java.util.stream.Collectors;

/** Shows traced outlines: as a drawing that a person can edit, and over the picture. */
public final class TracedDrawing {
  private static final int INK = 0xd55e00;
  private static final String AREA = "\" fill=\"#333333\" fill-rule=\"evenodd";
  private static final String LINE =
      "\" fill=\"none\" stroke=\"#333333\" stroke-linecap=\"round\" stroke-linejoin=\"round\""
          + " stroke-width=\"";
  private static final double STEP = 0.25;

  /** A wider picture is mostly looked at smaller than it is, so its outlines are drawn thicker. */
  private static final int LARGE_PX = 800;

  private TracedDrawing() {}

  /**
   * An SVG in millimetres: one path for each outline with its holes, or for the lines of a pen that
   * hang together.
   */
  public static String svg(Artwork artwork) {
    double pen =
        artwork.pieces().stream().mapToDouble(p -> p.strokeWidthMm().orElse(0)).max().orElse(0);
    Bounds b = artwork.bounds().grown(pen / 2);
    Affine down = Affine.translation(-b.minX(), -b.maxY()).then(Affine.scaling(1, -1));
    String w = SvgPath.number(b.width());
    String h = SvgPath.number(b.height());
    StringBuilder svg = new StringBuilder();
    svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"").append(w);
    svg.append("mm\" height=\"").append(h).append("mm\" viewBox=\"0 0 ");
    svg.append(w).append(' ').append(h).append("\">\n");
    for (Piece piece : artwork.pieces()) {
      List<Path> paths = piece.paths().stream().map(p -> p.transformed(down)).toList();
      svg.append("  <path id=\"").append(piece.id()).append("\" class=\"");
      svg.append(String.join(" ", piece.classes()));
      svg.append(piece.fill().isPresent() ? AREA : line(piece)).append("\" d=\"");
      svg.append(SvgPath.data(paths)).append("\"/>\n");
    }
    return svg.append("</svg>\n").toString();
  }

  private static String line(Piece piece) {
    List<Double> parts = piece.stroke().map(Stroke::parts).orElse(List.of());
    String varying =
        parts.isEmpty()
            ? ""
            : "\" data-width-parts=\""
                + parts.stream().map(SvgPath::number).collect(Collectors.joining(" "));
    return LINE + SvgPath.number(piece.strokeWidthMm().orElse(0)) + varying;
  }

  /** A PNG of the picture, paled, with the outlines over it. */
  public static byte[] over(GreyImage image, Traced traced) {
    int w = image.width();
    int h = image.height();
    boolean[] line = new boolean[w * h];
    for (List<Point> ring : traced.overPicture()) {
      for (int i = 0; i < ring.size(); i++) {
        draw(line, w, h, ring.get(i), ring.get((i + 1) % ring.size()));
      }
    }
    return Png.write(
        w,
        h,
        (x, y) -> {
          int grey = 96 + (int) (159 * Math.max(0, Math.min(1, image.value(y * w + x))));
          return line[y * w + x] ? INK : grey * 0x10101;
        });
  }

  private static void draw(boolean[] line, int w, int h, Point a, Point b) {
    int steps = Math.max(1, (int) Math.ceil(a.distance(b) / STEP));
    for (int k = 0; k < steps; k++) {
      Point p = a.towards(b, (double) k / steps);
      int x = (int) Math.floor(p.x());
      int y = (int) Math.floor(p.y());
      int thick = w > LARGE_PX ? 1 : 0;
      for (int i = Math.max(0, y - thick); i <= Math.min(h - 1, y + thick); i++) {
        for (int j = Math.max(0, x - thick); j <= Math.min(w - 1, x + thick); j++) {
          line[i * w + j] = true;
        }
      }
    }
  }
}
