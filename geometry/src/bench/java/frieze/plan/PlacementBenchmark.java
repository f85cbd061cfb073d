package frieze.plan;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.diagnostic.SourceSpan;
import frieze.layout.Arrangement;
import frieze.layout.FriezeGroup;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
 * Planning the recess of a leaf once and placed many times. The cost of an added placement is (many
 * - one) / (count - 1), to be compared with one.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
public class PlacementBenchmark {
  private static final SourceSpan HERE = SourceSpan.file("benchmark");
  private static final double PITCH_MM = 80;
  private static final double FAR_MM = 20_000;

  @Param({"1", "101"})
  private int count;

  private Design design;
  private frieze.shop.Setup setup;

  @Setup
  public void lay() throws IOException {
    Path file = Path.of("../docs/examples/hall-bench/ginkgo.svg");
    Artwork leaf = new SvgReader().read("ginkgo.svg", Files.readAllBytes(file)).withHeight(70);
    Panel panel = new Opening(PITCH_MM * count + 20, 100, 0).panel("band", 0, HERE);
    Tool tool =
        new Tool(
            "flat 1/8",
            2,
            new ToolShape.Flat(3.175),
            2,
            12.7,
            19,
            false,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            24000,
            1500,
            300);
    design =
        new Design(
            panel,
            List.of(new Motif("ginkgo", leaf)),
            new Arrangement(FriezeGroup.P2, count, 5).place("ginkgo", leaf.bounds(), panel, HERE),
            List.of(
                new Work.Recess(
                    new Work.Target("ginkgo", Optional.empty()),
                    tool,
                    3,
                    1.27,
                    Work.Milling.CONVENTIONAL,
                    HERE)));
    Machine.Axis axis = new Machine.Axis(4000, 3000, 250);
    Machine machine =
        new Machine(
            "long router",
            "rs274-full",
            FAR_MM,
            FAR_MM,
            100,
            axis,
            axis,
            axis,
            new Machine.Spindle(false, 6000, 24000, List.of(), 3),
            true,
            false,
            0);
    Stock stock =
        new Stock(
            new Material("white ash", Material.Kind.HARDWOOD),
            panel.lengthMm(),
            panel.heightMm(),
            List.of(19.0),
            true);
    setup =
        new frieze.shop.Setup(
            machine, stock, Zero.LEFT_FRONT_TOP, 0, 0, 5, 0, List.of(), List.of(tool));
  }

  @Benchmark
  public Plan plan() {
    return Planner.plan(design, setup, Tolerances.DEFAULT);
  }
}
