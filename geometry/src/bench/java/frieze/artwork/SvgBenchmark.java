package frieze.artwork;

import frieze.artwork.svg.BatikRendering;
import frieze.artwork.svg.SvgReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.apache.batik.bridge.BridgeContext;
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
import org.openjdk.jmh.infra.Blackhole;

/**
 * The time to read every tenth of the open icons, 410 files, by us and by Batik up to its rendering
 * tree; 410,000 over the milliseconds is the files a second.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 3, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class SvgBenchmark {
  private static final int STEP = 10;

  private final List<byte[]> files = new ArrayList<>();
  private final List<String> texts = new ArrayList<>();

  @Setup
  public void choose() {
    int number = 0;
    for (Map.Entry<String, byte[]> file : OpenIcons.all().entrySet()) {
      if (number++ % STEP == 0 && !OpenIcons.isCollection(file.getKey())) {
        files.add(file.getValue());
        texts.add(new String(file.getValue(), StandardCharsets.UTF_8));
      }
    }
  }

  @Benchmark
  public void readIcons(Blackhole hole) {
    for (byte[] file : files) {
      hole.consume(new SvgReader().read("icon.svg", file));
    }
  }

  @Benchmark
  public void buildBatikTrees(Blackhole hole) {
    for (String text : texts) {
      hole.consume(BatikRendering.tree(text, new BridgeContext[1]));
    }
  }
}
