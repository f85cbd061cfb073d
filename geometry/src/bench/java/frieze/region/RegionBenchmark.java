package frieze.region;

import frieze.curve.Shapes;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
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
import org.openjdk.jmh.infra.Blackhole;

/** Times for 20 smooth outlines of about 600 vertices, 60 mm wide. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
@Fork(1)
public class RegionBenchmark {
  @Param({"-1.59", "1.59", "6.35"})
  double distance;

  private final List<Region> outlines = new ArrayList<>();

  @Setup
  public void outlines() {
    SplittableRandom random = new SplittableRandom(5);
    for (int i = 0; i < 20; i++) {
      outlines.add(Region.of(List.of(Shapes.blob(random, 5 + i % 7, 60)), FillRule.NONZERO, 0.002));
    }
  }

  @Benchmark
  public void offset(Blackhole hole) {
    for (Region outline : outlines) {
      hole.consume(Offset.offset(outline, distance, 0.002));
    }
  }

  /** The library's own offset with its default parameters. */
  @Benchmark
  public void libraryDefaults(Blackhole hole) {
    for (Region outline : outlines) {
      Geometry result = BufferOp.bufferOp(outline.geometry(), distance);
      hole.consume(result);
    }
  }

  @Benchmark
  public void medialAxis(Blackhole hole) {
    for (Region outline : outlines) {
      hole.consume(MedialAxis.of(outline, 0.003));
    }
  }
}
