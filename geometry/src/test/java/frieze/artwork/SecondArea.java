package frieze.artwork;

import frieze.artwork.svg.SecondPathReader;
import java.awt.geom.Area;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Areas of drawings of mere paths, by a second reader and the area code of Java2D. */
public final class SecondArea {
  private static final Pattern PATH = Pattern.compile("<path[^>]*? d=\"([^\"]*)\"[^>]*");
  private static final Pattern OTHER = Pattern.compile("<rect|<circle|transform=");

  private SecondArea() {}

  /** Whether there is nothing in a drawing but paths. */
  public static boolean isKnown(String svg) {
    return !OTHER.matcher(svg).find();
  }

  /**
   * The area that all paths cover.
   *
   * @param flatness of their curves, in the units of the paths
   */
  public static double of(String svg, double flatness) {
    Area all = new Area();
    Matcher paths = PATH.matcher(svg);
    while (paths.find()) {
      boolean evenOdd = paths.group().contains("evenodd");
      int rule = evenOdd ? PathIterator.WIND_EVEN_ODD : PathIterator.WIND_NON_ZERO;
      Path2D flat = new Path2D.Double(rule);
      flat.append(
          SecondPathReader.read(paths.group(1), rule).getPathIterator(null, flatness), false);
      all.add(new Area(flat));
    }
    return signedArea(all);
  }

  private static double signedArea(Area area) {
    double sum = 0;
    double[] c = new double[6];
    double x = 0;
    double y = 0;
    double startX = 0;
    double startY = 0;
    for (PathIterator i = area.getPathIterator(null, 1e-4); !i.isDone(); i.next()) {
      int kind = i.currentSegment(c);
      if (kind == PathIterator.SEG_MOVETO) {
        startX = c[0];
        startY = c[1];
      } else {
        double toX = kind == PathIterator.SEG_CLOSE ? startX : c[0];
        double toY = kind == PathIterator.SEG_CLOSE ? startY : c[1];
        sum += x * toY - y * toX;
      }
      x = kind == PathIterator.SEG_CLOSE ? startX : c[0];
      y = kind == PathIterator.SEG_CLOSE ? startY : c[1];
    }
    return Math.abs(sum) / 2;
  }
}
