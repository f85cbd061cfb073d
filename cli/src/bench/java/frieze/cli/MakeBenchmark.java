package frieze.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
 * The whole of {@code frieze make} on the example, pictures and papers included, against the start
 * of a virtual machine that does nothing; both as processes of their own with the same flags.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 1)
@Measurement(iterations = 5)
public class MakeBenchmark {
  private Path out;

  /** Does nothing. */
  public static final class Nothing {
    private Nothing() {}

    public static void main(String[] args) {}
  }

  @Setup
  public void makeFolder() throws IOException {
    out = Files.createTempDirectory("frieze-bench");
  }

  @Benchmark
  public int emptyVirtualMachine() throws IOException, InterruptedException {
    return run(Nothing.class.getName());
  }

  @Benchmark
  public int makeExample() throws IOException, InterruptedException {
    return run(
        Main.class.getName(),
        "make",
        "../docs/examples/hall-bench/bench.yaml",
        "--out",
        out.toString());
  }

  private static int run(String... mainAndArguments) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto"));
    command.addAll(List.of("-cp", System.getProperty("java.class.path")));
    command.addAll(List.of(mainAndArguments));
    Process process =
        new ProcessBuilder(command)
            .redirectOutput(ProcessBuilder.Redirect.DISCARD)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    int code = process.waitFor();
    if (code != 0) {
      throw new IllegalStateException(mainAndArguments[0] + " ended with " + code);
    }
    return code;
  }
}
