package frieze.sheet;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.artwork.look.Fineness;
import frieze.artwork.look.Narrow;
import frieze.artwork.look.ToolReach;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.region.Region;
import frieze.sheet.Canvas.View;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Shows a drawing with its size, its narrowest places, and what a tool leaves of it. */
public final class LookPicture {
  private static final int WIDTH = 1200;
  private static final int LEAST_HIGH = 160;
  private static final int MOST_HIGH = 760;
  private static final int SIDE = 90;
  private static final int TOP = 40;
  private static final int DIMENSION = 34;
  private static final int DETAIL = 130;
  private static final int LINE = 26;
  private static final int NAMES = 150;
  private static final double LETTERS = 18;

  /** How wide a narrow place is drawn in its detail. */
  private static final double NARROW_PX = 56;

  private static final double CHORD_PX = 0.2;
  private static final int FIGURE = 0xb9b9b9;
  private static final int PEN = 0x4d4d4d;
  private static final int INSIDE = 0xd55e00;
  private static final int AROUND = 0x0072b2;
  private static final int INK = 0x111111;
  private static final int PAPER = 0xffffff;

  private final Artwork artwork;
  private final Fineness fine;
  private final Optional<ToolReach> inside;
  private final Optional<ToolReach> around;
  private final Bounds bounds;
  private final Canvas canvas;
  private final View main;
  private final int below;

  private LookPicture(
      Artwork artwork,
      Fineness fine,
      Optional<ToolReach> inside,
      Optional<ToolReach> around,
      int rows) {
    this.artwork = artwork;
    this.fine = fine;
    this.inside = inside;
    this.around = around;
    this.bounds = fine.bounds();
    double room = WIDTH - 2.0 * SIDE;
    double w = Math.max(bounds.width(), Double.MIN_NORMAL);
    double h = Math.max(bounds.height(), Double.MIN_NORMAL);
    double scale = Math.min(room / w, MOST_HIGH / h);
    double high = Math.max(LEAST_HIGH, scale * bounds.height());
    this.main = new View(bounds.centre(), scale, WIDTH / 2.0, TOP + high / 2);
    this.below = (int) (TOP + high + 2 * DIMENSION);
    int details = fine.web().isPresent() ? 2 * DETAIL + 2 * LINE : 0;
    this.canvas = new Canvas(WIDTH, below + details + (rows + 3) * LINE);
  }

  /**
   * Draws it.
   *
   * @param inside what the tool to show leaves of the area
   * @param around what the tool to show leaves around the area
   * @param words names and facts to write below
   */
  public static byte[] png(
      Artwork artwork,
      Fineness fine,
      Optional<ToolReach> inside,
      Optional<ToolReach> around,
      List<List<String>> words) {
    LookPicture picture = new LookPicture(artwork, fine, inside, around, words.size());
    return picture.draw(words);
  }

  private byte[] draw(List<List<String>> words) {
    scene(main);
    dimensions();
    fine.web().ifPresent(web -> mark(web, "A"));
    fine.gap().ifPresent(gap -> mark(gap, "B"));
    fine.web().ifPresent(web -> detail(web, "A", "narrowest web", WIDTH / 4.0));
    fine.gap().ifPresent(gap -> detail(gap, "B", "narrowest gap", WIDTH * 3 / 4.0));
    int y = below + (fine.web().isPresent() ? 2 * DETAIL + 2 * LINE : 0);
    for (List<String> line : words) {
      y += LINE;
      canvas.text(SIDE, y, line.get(0), LETTERS);
      canvas.text(SIDE + NAMES, y, line.get(1), LETTERS);
    }
    legend(y + LINE, inside, INSIDE, " clears the inside");
    legend(y + 2 * LINE, around, AROUND, " goes around");
    return canvas.png();
  }

  private void legend(int y, Optional<ToolReach> reach, int rgb, String how) {
    if (reach.isPresent() && !reach.get().left().isEmpty()) {
      Point middle = new Point(SIDE + LETTERS / 2, y - LETTERS / 3);
      canvas.line(middle.minus(new Point(9, 0)), middle.plus(new Point(9, 0)), 14, rgb);
      String bit = Amounts.length(reach.get().diameterMm());
      canvas.text(SIDE + NAMES, y, "left standing where a bit of " + bit + how, LETTERS);
    }
  }

  private void scene(View view) {
    canvas.fill(fine.area(), view, FIGURE);
    inside.ifPresent(reach -> reach.left().forEach(r -> canvas.fill(r, view, INSIDE)));
    around.ifPresent(reach -> reach.left().forEach(r -> canvas.fill(r, view, AROUND)));
    for (Region part : fine.area().parts()) {
      part.rings().forEach(ring -> canvas.polyline(ring.points(), true, view, 1.2, PEN));
    }
    for (Piece piece : artwork.pieces()) {
      if (piece.fill().isEmpty()) {
        double wide = Math.max(1.5, piece.strokeWidthMm().orElse(0) * view.pxPerMm());
        piece.paths().forEach(path -> line(path, view, wide));
      }
    }
  }

  private void line(Path path, View view, double widthPx) {
    List<Point> points = Flattener.flatten(path, CHORD_PX / view.pxPerMm());
    canvas.polyline(points, path.closed(), view, widthPx, PEN);
  }

  private void dimensions() {
    Point low = main.seen(new Point(bounds.minX(), bounds.minY()));
    Point high = main.seen(new Point(bounds.maxX(), bounds.maxY()));
    double y = low.y() + DIMENSION;
    double x = high.x() + DIMENSION;
    canvas.line(new Point(low.x(), low.y() + 4), new Point(low.x(), y + 6), 1, INK);
    canvas.line(new Point(high.x(), low.y() + 4), new Point(high.x(), y + 6), 1, INK);
    between(new Point(low.x(), y), new Point(high.x(), y));
    canvas.centred((low.x() + high.x()) / 2, y - 6, Amounts.length(bounds.width()), LETTERS);
    canvas.line(new Point(high.x() + 4, low.y()), new Point(x + 6, low.y()), 1, INK);
    canvas.line(new Point(high.x() + 4, high.y()), new Point(x + 6, high.y()), 1, INK);
    between(new Point(x, low.y()), new Point(x, high.y()));
    canvas.upright(x - 6, (low.y() + high.y()) / 2, Amounts.length(bounds.height()), LETTERS);
  }

  private void between(Point a, Point b) {
    canvas.line(a, b, 1, INK);
    if (a.distance(b) > 0) {
      canvas.arrow(a, a.minus(b), INK);
      canvas.arrow(b, b.minus(a), INK);
    }
  }

  private void mark(Narrow narrow, String letter) {
    Point at = main.seen(narrow.middle());
    double radius = Math.max(14, narrow.widthMm() * main.pxPerMm() * 0.7);
    canvas.circle(at, radius, 3, PAPER);
    canvas.circle(at, radius, 1.5, INK);
    double x = at.x() + radius * 0.8;
    canvas.text(Math.min(x, WIDTH - LETTERS), at.y() - radius * 0.8, letter, LETTERS * 1.2);
  }

  private void detail(Narrow narrow, String letter, String name, double x) {
    double scale = Math.max(NARROW_PX / narrow.widthMm(), DETAIL / 2.0 * main.pxPerMm() / DETAIL);
    Point middle = new Point(x, below + DETAIL);
    View view = new View(narrow.middle(), scale, middle.x(), middle.y());
    canvas.within(middle, DETAIL, () -> scene(view));
    canvas.circle(middle, DETAIL, 1.5, INK);
    Point a = view.seen(narrow.from());
    Point b = view.seen(narrow.to());
    Point out = b.minus(a).times(1 / b.distance(a));
    canvas.line(a.minus(out.times(26)), a, 1.5, INK);
    canvas.line(b, b.plus(out.times(26)), 1.5, INK);
    canvas.arrow(a, out, INK);
    canvas.arrow(b, out.times(-1), INK);
    String text =
        String.format(Locale.ROOT, "%s  %s %s", letter, name, Amounts.length(narrow.widthMm()));
    canvas.centred(x, middle.y() + DETAIL + LINE, text, LETTERS);
  }
}
