package frieze.artwork.svg;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the letters of a text are told to stand.
 *
 * <p>Source: SVG 1.1, 10.5: of the lists of an element, each letter in it takes one number; inner
 * elements win; the last rotation goes on.
 */
final class TextPlaces {
  private final double[] x;
  private final double[] y;
  private final double[] dx;
  private final double[] dy;
  private final double[] rotateDeg;

  private TextPlaces(int letters) {
    x = new double[letters];
    y = new double[letters];
    dx = new double[letters];
    dy = new double[letters];
    rotateDeg = new double[letters];
    Arrays.fill(x, Double.NaN);
    Arrays.fill(y, Double.NaN);
  }

  /** NaN where the letter goes on behind the one before it. */
  double x(int letter) {
    return x[letter];
  }

  /** NaN where the letter goes on at the height of the one before it. */
  double y(int letter) {
    return y[letter];
  }

  double dx(int letter) {
    return dx[letter];
  }

  double dy(int letter) {
    return dy[letter];
  }

  double rotateDeg(int letter) {
    return rotateDeg[letter];
  }

  /** The lists of an element, and how many of its letters have taken a number. */
  private static final class Lists {
    private final double[] x;
    private final double[] y;
    private final double[] dx;
    private final double[] dy;
    private final double[] rotate;
    private int taken;

    Lists(TextContent.Level level, Viewports viewports) {
      x = viewports.lengths(level.element(), "x", Shapes.Axis.X, level.context());
      y = viewports.lengths(level.element(), "y", Shapes.Axis.Y, level.context());
      dx = viewports.lengths(level.element(), "dx", Shapes.Axis.X, level.context());
      dy = viewports.lengths(level.element(), "dy", Shapes.Axis.Y, level.context());
      rotate = viewports.lengths(level.element(), "rotate", Shapes.Axis.X, level.context());
    }

    private static void take(double[] from, int index, double[] to, int letter) {
      if (index >= 0 && index < from.length) {
        to[letter] = from[index];
      }
    }
  }

  /** Reads the places of all letters. */
  static TextPlaces of(List<TextContent.Letter> letters, Viewports viewports) {
    int n = letters.size();
    TextPlaces places = new TextPlaces(n);
    Map<SvgElement, Lists> all = new HashMap<>();
    for (int i = 0; i < n; i++) {
      for (TextContent.Level level : letters.get(i).levels()) {
        Lists own = all.get(level.element());
        if (own == null) {
          own = new Lists(level, viewports);
          all.put(level.element(), own);
        }
        int at = own.taken++;
        Lists.take(own.x, at, places.x, i);
        Lists.take(own.y, at, places.y, i);
        Lists.take(own.dx, at, places.dx, i);
        Lists.take(own.dy, at, places.dy, i);
        Lists.take(own.rotate, Math.min(at, own.rotate.length - 1), places.rotateDeg, i);
      }
    }
    return places;
  }
}
