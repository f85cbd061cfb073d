package frieze.gouge;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.field.SweptMoves;
import frieze.field.Window;
import frieze.motion.Position;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Looks closely at places along the outlines: simulates a small window anew from the moves, and
 * compares each of its cells with the wishes by exact distances.
 */
final class FineCheck {
  /** The side of a cell of a window. */
  static final double CELL_MM = 0.005;

  /** Cells along each side of a window. */
  private static final int CELLS = 48;

  /** Cells along each side of a block, for which the nearest edges are looked for together. */
  private static final int BLOCK = 6;

  private static final int BLOCKS = CELLS / BLOCK;

  /** A part of the length that no usual pattern repeats with: the golden section. */
  private static final double GOLDEN = 0.6180339887498949;

  private final List<Wish> wishes;
  private final double thickness;
  private final SweptMoves moves;
  private final GougeCheck.Settings settings;
  private int windows;

  FineCheck(List<Wish> wishes, double thickness, SweptMoves moves, GougeCheck.Settings settings) {
    this.wishes = wishes;
    this.thickness = thickness;
    this.moves = moves;
    this.settings = settings;
  }

  int windows() {
    return windows;
  }

  List<Discrepancy> run() {
    List<Discrepancy> found = new ArrayList<>();
    double total = wishes.stream().mapToDouble(w -> w.edges().totalLength()).sum();
    double spacing = total / Math.max(1, settings.windows());
    double next = spacing * GOLDEN;
    for (Wish wish : wishes) {
      Edges edges = wish.edges();
      for (int e = 0; e < edges.count(); e++) {
        double length = edges.length(e);
        for (; next < length; next += spacing) {
          look(wish, edges, e, next / length, found);
        }
        next -= length;
      }
    }
    return found;
  }

  /** Looks at a point of an edge of a wish. */
  private void look(Wish wish, Edges edges, int edge, double along, List<Discrepancy> found) {
    windows++;
    Point at = edges.start(edge).towards(edges.end(edge), along);
    double half = CELLS * CELL_MM / 2;
    Point inward = inward(edges, edge);
    Bounds window = Bounds.of(at.plus(inward.times(wish.wallAtMm()))).grown(half);
    float[] heights = simulate(window);
    List<Near> near = new ArrayList<>();
    for (Wish w : wishes) {
      if (w.bounds().touches(window)) {
        near.add(Near.of(w, window));
      }
    }
    Stance stance = new Stance(wish, edges, wishes, moves, settings);
    Point axis = stance.axis(at, inward);
    boolean fits = wish.openingMm() > 0 && stance.isAsked(at, inward);
    Worst deep = new Worst(Discrepancy.Kind.TOO_DEEP, settings.depthMm());
    Worst left = new Worst(Discrepancy.Kind.LEFT, settings.depthMm());
    for (int j = 0; j < CELLS; j++) {
      for (int i = 0; i < CELLS; i++) {
        Point q =
            new Point(window.minX() + (i + 0.5) * CELL_MM, window.minY() + (j + 0.5) * CELL_MM);
        double depth = -heights[j * CELLS + i];
        double most = 0;
        double least = fits ? wish.least().depthMm(q.distance(axis)) : 0;
        for (Near n : near) {
          double signed = n.signed(q, i, j);
          most = Math.max(most, n.wish.most().depthMm(signed));
          least = n.wish.openingMm() > 0 ? least : Math.max(least, n.wish.least().depthMm(signed));
        }
        deep.add(q, depth - most);
        left.add(q, Math.min(least, thickness) - depth);
      }
    }
    deep.report(wishes, found);
    left.report(wishes, found);
  }

  private float[] simulate(Bounds window) {
    Window cells = Window.of(new Position(window.minX(), window.minY(), 0), CELLS, CELLS, CELL_MM);
    moves.lower(cells, window);
    return cells.heights();
  }

  /** The direction into the area at an edge, of length 1. */
  private static Point inward(Edges edges, int edge) {
    Point direction = edges.end(edge).minus(edges.start(edge));
    return new Point(-direction.y(), direction.x()).times(1 / direction.norm());
  }

  /** A wish, those of its edges that matter in a window, and which cells lie inside it. */
  private static final class Near {
    private final Wish wish;

    /** For each block of the window, row by row. */
    private final List<Edges> edges;

    private final boolean[] inside;

    private Near(Wish wish, List<Edges> edges, boolean[] inside) {
      this.wish = wish;
      this.edges = edges;
      this.inside = inside;
    }

    static Near of(Wish wish, Bounds window) {
      return new Near(wish, edgesOfBlocks(wish, window), inside(wish, window));
    }

    private static List<Edges> edgesOfBlocks(Wish wish, Bounds window) {
      Edges near = wish.edges().near(window, wish.reachMm()).nearestOf(window);
      List<Edges> blocks = new ArrayList<>();
      double side = BLOCK * CELL_MM;
      for (int j = 0; j < BLOCKS; j++) {
        for (int i = 0; i < BLOCKS; i++) {
          double x = window.minX() + i * side;
          double y = window.minY() + j * side;
          blocks.add(near.nearestOf(new Bounds(x, y, x + side, y + side)));
        }
      }
      return blocks;
    }

    private static boolean[] inside(Wish wish, Bounds window) {
      boolean[] inside = new boolean[CELLS * CELLS];
      Edges band = wish.outline().between(window.minY(), window.maxY());
      for (int j = 0; j < CELLS; j++) {
        double y = window.minY() + (j + 0.5) * CELL_MM;
        double[] crossings = band.crossings(y);
        for (int i = 0, passed = 0; i < CELLS; i++) {
          double x = window.minX() + (i + 0.5) * CELL_MM;
          while (passed < crossings.length && crossings[passed] <= x) {
            passed++;
          }
          inside[j * CELLS + i] = passed % 2 != 0;
        }
      }
      return inside;
    }

    double signed(Point q, int column, int row) {
      Edges block = edges.get(row / BLOCK * BLOCKS + column / BLOCK);
      double distance = Math.min(wish.reachMm(), block.distance(q.x(), q.y()));
      return inside[row * CELLS + column] ? distance : -distance;
    }
  }

  /** The worst cell of a window, of those above what is tolerated, and how many there are. */
  private static final class Worst {
    private final Discrepancy.Kind kind;
    private final double toleranceMm;
    private int cells;
    private double amountMm;
    private @Nullable Point place;

    Worst(Discrepancy.Kind kind, double toleranceMm) {
      this.kind = kind;
      this.toleranceMm = toleranceMm;
    }

    void add(Point at, double amount) {
      if (amount > toleranceMm) {
        cells++;
        if (amount > amountMm) {
          amountMm = amount;
          place = at;
        }
      }
    }

    void report(List<Wish> wishes, List<Discrepancy> found) {
      if (place != null) {
        Nearby nearby = Nearby.of(wishes, place);
        found.add(
            new Discrepancy(
                kind,
                nearby.name(),
                place,
                amountMm,
                cells * CELL_MM * CELL_MM,
                kind == Discrepancy.Kind.TOO_DEEP ? nearby.sidewaysMm() : 0));
      }
    }
  }
}
