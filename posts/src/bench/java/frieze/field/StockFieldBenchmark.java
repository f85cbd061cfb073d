package frieze.field;

import frieze.fixtures.Seeds;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.shop.Material;
import frieze.shop.Stock;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Cuts 50,000 segments, 40 m of winding path, into a field of 24,000,000 cells of 0.1 mm, the field
 * put back to uncut first: by exact swept surfaces on two threads, and by stamping the tool at
 * every cell's width along the path on one.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 8, time = 1)
@Fork(value = 2, jvmArgs = "-Xmx1500m")
public class StockFieldBenchmark {
  private static final double LENGTH_MM = 800;
  private static final double WIDTH_MM = 300;
  private static final double CELL_MM = 0.1;
  private static final int SEGMENTS = 50_000;
  private static final double SEGMENT_MM = 0.8;

  /** Flat and level, a V-bit at one depth, and a V-bit that rises and falls all the time. */
  public enum Kind {
    FLAT,
    VEE,
    VEE_SLOPED,
    BALL
  }

  @Param public Kind kind = Kind.FLAT;

  private ToolShape shape = new ToolShape.Flat(6);
  private List<Position> path = List.of();
  private StockField field = StockField.of(stock(), CELL_MM);
  private Stamping stamping = new Stamping(8000, 3000, CELL_MM);

  private static Stock stock() {
    return new Stock(
        new Material("white ash", Material.Kind.HARDWOOD),
        LENGTH_MM,
        WIDTH_MM,
        List.of(19.0),
        false);
  }

  /** Makes the path. */
  @Setup
  public void prepare() {
    shape =
        switch (kind) {
          case FLAT -> new ToolShape.Flat(6);
          case BALL -> new ToolShape.Ball(6);
          default -> new ToolShape.Vee(6, Math.toRadians(60), 0);
        };
    path = windingPath(kind == Kind.VEE_SLOPED);
    field = StockField.of(stock(), CELL_MM);
    stamping = new Stamping(8000, 3000, CELL_MM);
  }

  /** Turns by up to half a radian at each joint; turns back at the stock's edges. */
  private static List<Position> windingPath(boolean sloped) {
    SplittableRandom random = Seeds.random(40);
    List<Position> path = new ArrayList<>();
    double x = LENGTH_MM / 2;
    double y = WIDTH_MM / 2;
    double heading = 0;
    path.add(new Position(x, y, -4));
    while (path.size() <= SEGMENTS) {
      heading += random.nextDouble() - 0.5;
      double nextX = x + SEGMENT_MM * Math.cos(heading);
      double nextY = y + SEGMENT_MM * Math.sin(heading);
      if (nextX < 5 || nextX > LENGTH_MM - 5 || nextY < 5 || nextY > WIDTH_MM - 5) {
        heading += 2;
        continue;
      }
      x = nextX;
      y = nextY;
      path.add(new Position(x, y, sloped ? -4 + 0.6 * (random.nextDouble() - 0.5) : -4));
    }
    return path;
  }

  /** Ours. */
  @Benchmark
  public double exact() {
    field.reset();
    for (int i = 1; i < path.size(); i++) {
      field.cut(new Motion.Straight(path.get(i - 1), path.get(i)), shape);
    }
    return field.heightAtMm(LENGTH_MM / 2, WIDTH_MM / 2);
  }

  /** The usual way. */
  @Benchmark
  public double stamped() {
    stamping.reset();
    for (int i = 1; i < path.size(); i++) {
      stamping.cut(path.get(i - 1), path.get(i), shape);
    }
    return stamping.heightAt(LENGTH_MM / 2, WIDTH_MM / 2);
  }
}
