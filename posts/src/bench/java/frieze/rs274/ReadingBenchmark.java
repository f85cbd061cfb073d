package frieze.rs274;

import frieze.fixtures.Seeds;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
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
 * Reads a program of 200,000 lines: with all checks and every move worked out, and by only
 * splitting its lines into words with a regular expression and parsing the numbers.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 6, time = 1)
@Fork(2)
public class ReadingBenchmark {
  private static final int LINES = 200_000;
  private static final Pattern WORD = Pattern.compile("([A-Z])(-?[0-9]*\\.?[0-9]+)");

  private final byte[] text = text();

  private static byte[] text() {
    SplittableRandom random = Seeds.random(77);
    StringBuilder out = new StringBuilder("G17 G21 G40 G90 G94\nG0 X0 Y0 Z5\nF1200\n");
    for (int i = 0; i < LINES; i++) {
      out.append(
          String.format(
              Locale.ROOT,
              "G1 X%.3f Y%.3f Z%.3f\n",
              random.nextDouble(0, 700),
              random.nextDouble(0, 300),
              random.nextDouble(-19, 0)));
    }
    return out.append("M2\n").toString().getBytes(StandardCharsets.US_ASCII);
  }

  /** Reads, checks and carries out. */
  @Benchmark
  public double interpreted() throws IOException {
    double[] sum = {0};
    Interpreter.run(
        "bench.nc",
        new ByteArrayInputStream(text),
        ReadingRules.REPORT,
        event -> sum[0] += event.span().line());
    return sum[0];
  }

  /** Reads every line and sorts its codes, with all checks of a line, and carries nothing out. */
  @Benchmark
  public double read() throws IOException {
    ReadingRules rules = ReadingRules.REPORT;
    BlockReader reader = new BlockReader(rules, new Parameters());
    LineCodes codes = new LineCodes(rules);
    Modes modes = new Modes(rules.start());
    Block block = new Block();
    LineSource lines = new LineSource(new ByteArrayInputStream(text));
    double sum = 0;
    while (lines.next()) {
      reader.read(lines, block);
      codes.sort(block);
      codes.settle(block, modes);
      sum += block.line();
    }
    return sum;
  }

  /** Splits and parses, and checks nothing. */
  @Benchmark
  public double regularExpressions() {
    double[] sum = {0};
    new String(text, StandardCharsets.US_ASCII)
        .lines()
        .forEach(
            line -> {
              Matcher word = WORD.matcher(line);
              while (word.find()) {
                sum[0] += word.group(1).charAt(0) + Double.parseDouble(word.group(2));
              }
            });
    return sum[0];
  }
}
