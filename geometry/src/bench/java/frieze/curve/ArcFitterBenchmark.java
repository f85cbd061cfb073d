package frieze.curve;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The time for a smooth outline of about 1,000 vertices. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class ArcFitterBenchmark {
  private List<Point> points = List.of();

  @Setup
  public void points() {
    points = Flattener.flatten(Shapes.blob(new SplittableRandom(5), 24, 49), 0.002);
    if (points.size() < 900 || points.size() > 1100) {
      throw new IllegalStateException("not about 1,000 vertices but " + points.size());
    }
  }

  @Benchmark
  public Path fitThousandVertices() {
    return ArcFitter.fit(points, true, 0.005);
  }
}
