package frieze.field;

import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.motion.Box;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * The cutting moves of a setup, kept so that small places can be looked at more closely than a
 * stock field does.
 *
 * <p>In the stock frame. Not for programs of millions of moves: each one is kept.
 */
public final class SweptMoves {
  /** The side of the squares by which moves are found. */
  private static final double SQUARE_MM = 8;

  private record Kept(Motion path, Profile profile) {}

  private final List<Kept> moves = new ArrayList<>();
  private final Map<ToolShape, Profile> profiles = new HashMap<>();
  private final Map<Long, List<Integer>> squares = new HashMap<>();

  /** Adds a move that cuts below the stock's top; others are of no interest. */
  public void add(Motion path, ToolShape shape) {
    Box box = path.box();
    if (box.minZ() >= 0) {
      return;
    }
    Profile whole = profiles.computeIfAbsent(shape, Profile::of);
    Profile profile = whole.upTo(-box.minZ());
    int number = moves.size();
    moves.add(new Kept(path, profile));
    Bounds reach =
        new Bounds(box.minX(), box.minY(), box.maxX(), box.maxY()).grown(profile.radiusMm());
    visitSquares(
        reach, square -> squares.computeIfAbsent(square, k -> new ArrayList<>()).add(number));
  }

  /** The number of moves kept. */
  public int size() {
    return moves.size();
  }

  private interface SquareVisitor {
    void visit(long square);
  }

  private static void visitSquares(Bounds b, SquareVisitor visitor) {
    long lastX = (long) Math.floor(b.maxX() / SQUARE_MM);
    long lastY = (long) Math.floor(b.maxY() / SQUARE_MM);
    for (long y = (long) Math.floor(b.minY() / SQUARE_MM); y <= lastY; y++) {
      for (long x = (long) Math.floor(b.minX() / SQUARE_MM); x <= lastX; x++) {
        visitor.visit((y << Integer.SIZE) ^ (x & 0xFFFF_FFFFL));
      }
    }
  }

  /**
   * Cuts a window.
   *
   * @param area the same as the window's
   */
  public void lower(Window window, Bounds area) {
    List<Sweep> sweeps = sweepsNear(area);
    // The order does not matter to the heights. After the deepest, the others find little to do.
    sweeps.sort(Comparator.comparingDouble(Sweep::lowestMm));
    sweeps.forEach(window::lower);
  }

  /**
   * How deep a tool's tip came at a place, whatever the tool.
   *
   * @param withinMm how far from the place its axis may have passed
   * @return the lowest Z; 0 if nothing passed below the stock's top
   */
  public double lowestTipMm(Point place, double withinMm) {
    Bounds around = Bounds.of(place).grown(withinMm);
    Profile needle = new Profile(withinMm, 0, 0, 0, 0);
    Position corner = new Position(around.minX(), around.minY(), 0);
    Window cell = Window.of(corner, 1, 1, 2 * withinMm);
    for (Kept kept : keptNear(around)) {
      Sweeps.of(kept.path(), needle, false, cell::lower);
    }
    return cell.heights()[0];
  }

  /** The sweeps that may meet a rectangle, in the order of cutting. */
  List<Sweep> sweepsNear(Bounds rectangle) {
    List<Sweep> sweeps = new ArrayList<>();
    for (Kept kept : keptNear(rectangle)) {
      Sweeps.of(
          kept.path(),
          kept.profile(),
          false,
          sweep -> {
            if (sweep.bounds().touches(rectangle) && sweep.mayMeet(rectangle)) {
              sweeps.add(sweep);
            }
          });
    }
    return sweeps;
  }

  private List<Kept> keptNear(Bounds rectangle) {
    List<Integer> numbers = new ArrayList<>();
    visitSquares(rectangle, square -> numbers.addAll(squares.getOrDefault(square, List.of())));
    return numbers.stream().distinct().sorted().map(moves::get).toList();
  }
}
