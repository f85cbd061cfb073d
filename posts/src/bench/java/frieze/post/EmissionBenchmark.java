package frieze.post;

import frieze.fixtures.Seeds;
import frieze.lower.Command;
import frieze.lower.Grid;
import frieze.lower.Program;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Writes 100,000 lines of X, Y, Z and F: by a post, and by {@code String.format}. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class EmissionBenchmark {
  private static final int LINES = 100_000;

  private final Post post = Posts.find("rs274-full").orElseThrow();
  private final Program program = program();

  private static Program program() {
    SplittableRandom random = Seeds.random(51);
    List<Program.Entry> entries = new ArrayList<>();
    for (int i = 0; i < LINES; i++) {
      entries.add(
          new Program.Entry(
              new Command.Line(
                  random.nextLong(-800_000, 800_000),
                  random.nextLong(-300_000, 300_000),
                  random.nextLong(-20_000, 20_000),
                  random.nextLong(1_000, 30_000)),
              "groove"));
    }
    return new Program(
        "bench.nc",
        List.of(),
        List.of(),
        new Grid(false, 3),
        new Grid(false, 1),
        List.of(),
        entries);
  }

  @Benchmark
  public ProgramText byPost() {
    return post.write(program);
  }

  @Benchmark
  public String byFormat() {
    StringBuilder out = new StringBuilder();
    for (Program.Entry entry : program.entries()) {
      Command.Line line = (Command.Line) entry.command();
      out.append(
          String.format(
              Locale.ROOT,
              "X%.3f Y%.3f Z%.3f F%.1f\n",
              line.x() / 1e3,
              line.y() / 1e3,
              line.z() / 1e3,
              line.feed() / 1e1));
    }
    return out.toString();
  }
}
