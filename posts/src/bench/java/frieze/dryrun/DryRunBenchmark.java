package frieze.dryrun;

import frieze.dryrun.scene.Surroundings;
import frieze.rs274.ReadingRules;
import frieze.shop.Material;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
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

/**
 * The whole dry run of a program of 1,000,000 lines: waves carved over a panel of 700 by 300 mm,
 * line by line, half a millimetre a move.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 1)
@Measurement(iterations = 3)
@Fork(value = 1, jvmArgs = "-Xmx1g")
public class DryRunBenchmark {
  private static final int LINES = 1_000_000;
  private static final double ROW_MM = 0.42;

  private static final Tool BALL =
      new Tool(
          "ball 1/8",
          1,
          new ToolShape.Ball(3.175),
          2,
          15,
          25,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          20000,
          2000,
          400);

  private final byte[] text = text();

  private static byte[] text() {
    StringBuilder out =
        new StringBuilder(
            "G17 G21 G40 G90 G94\nT1 M6\nS16000 M3\nG4 P3\nG0 Z5\nG0 X10 Y10\nF1500\n");
    int lines = 7;
    boolean back = false;
    for (double y = 10; lines < LINES - 2; y += ROW_MM) {
      for (int i = 0; i <= 1400 && lines < LINES - 2; i++) {
        double x = 10 + 0.49 * (back ? 1400 - i : i);
        double z = -1.5 + Math.sin(x / 9) * Math.cos(Math.min(y, 280) / 7);
        out.append(String.format(Locale.ROOT, "G1 X%.3f Y%.3f Z%.3f\n", x, 10 + (y - 10) % 280, z));
        lines++;
      }
      back = !back;
    }
    return out.append("G0 Z5\nM2\n").toString().getBytes(StandardCharsets.US_ASCII);
  }

  @Benchmark
  public DryRunResult wholeDryRun() {
    Surroundings known =
        Surroundings.UNKNOWN
            .withStock(
                new Stock(
                    new Material("white ash", Material.Kind.HARDWOOD),
                    720,
                    320,
                    List.of(19.0),
                    false),
                Zero.LEFT_FRONT_TOP)
            .withHeights(OptionalDouble.of(5), OptionalDouble.of(0.4))
            .withTools(List.of(BALL));
    return DryRun.in(known).run(List.of(ProgramText.of("b.nc", text, ReadingRules.REPORT)));
  }
}
