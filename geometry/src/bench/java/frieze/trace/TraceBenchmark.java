package frieze.trace;

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

/**
 * The time for a noisy picture of the ginkgo of four million pixels; 4,000 over the milliseconds is
 * the megapixels a second.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 5)
@Measurement(iterations = 3, time = 5)
@Fork(1)
public class TraceBenchmark {
  private static final int SIDE_PX = 2000;
  private static final double PX_PER_MM = 22;

  private GreyImage picture = new GreyImage(1, 1, new float[1]);

  @Setup
  public void draw() {
    Render render =
        Render.of(
            Motifs.ginkgo().rings(),
            SIDE_PX,
            SIDE_PX,
            p -> new frieze.curve.Point(60 + p.x() * PX_PER_MM, 1900 - p.y() * PX_PER_MM));
    picture = render.noisy(0.85, 0.15, 0.02, new SplittableRandom(3));
  }

  @Benchmark
  public Traced traceFourMegapixels() {
    return Tracer.trace("ginkgo", picture, TraceSettings.of(new RealSize.Height(60)));
  }
}
