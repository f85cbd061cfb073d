package frieze.plan.order;

import frieze.curve.Point;
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

/** Times for tours and orders of random points. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class TourBenchmark {
  @Param({"100", "1000"})
  int count;

  private final List<Point> points = new ArrayList<>();
  private final List<CutOrder.Stop> stops = new ArrayList<>();

  @Setup
  public void points() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < count; i++) {
      Point p = new Point(random.nextDouble() * 600, random.nextDouble() * 400);
      points.add(p);
      stops.add(new CutOrder.Stop(List.of(new CutOrder.Way(p, p))));
    }
  }

  @Benchmark
  public int[] closedTour() {
    return Tour.closed(points, 1);
  }

  @Benchmark
  public List<CutOrder.Visit> order() {
    return CutOrder.order(stops, List.of(), Point.ORIGIN, 1);
  }
}
