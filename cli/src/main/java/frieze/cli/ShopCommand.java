package frieze.cli;

import frieze.diagnostic.Amounts;
import frieze.job.Shop;
import frieze.job.ShopReader;
import frieze.shop.CutChart;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Lists what the shop has. */
@Command(
    name = "shop",
    description = {
      "Lists the machines, tools and materials that a job can name.",
      "They come from a generic shop that is built in, and from your shop file, which wins."
    },
    mixinStandardHelpOptions = true,
    usageHelpAutoWidth = true)
final class ShopCommand implements Callable<Integer> {
  private static final String SHOP_FILE = "shop.yaml";

  private final Console console;
  private final DiskFiles files;

  @Option(
      names = "--shop",
      paramLabel = "FILE",
      description = "your shop file (shop.yaml in this folder, if there is one)")
  private @Nullable String shop;

  ShopCommand(Console console, DiskFiles files) {
    this.console = console;
    this.files = files;
  }

  @Override
  public Integer call() throws IOException {
    print(load(files, Optional.ofNullable(shop)));
    return ExitCode.FINE.number();
  }

  /** The built-in shop with a named file, or with {@code shop.yaml} if there is one, over it. */
  static Shop load(DiskFiles files, Optional<String> named) throws IOException {
    String file = named.orElse(SHOP_FILE);
    if (named.isEmpty() && !files.exists(file)) {
      return ShopReader.builtIn();
    }
    return ShopReader.read(file, files.read(file)).over(ShopReader.builtIn());
  }

  private void print(Shop all) {
    Table machines = new Table("machine", "post", "travel x, y, z (mm)", "spindle", "tool changer");
    all.machines().forEach(m -> machines.row(machine(m)));
    Table tools = new Table("tool", "T", "shape", "diameter", "flutes", "cuts deep", "plunges");
    all.tools().stream()
        .sorted(Comparator.comparingInt(Tool::number))
        .forEach(t -> tools.row(tool(t)));
    Table materials = new Table("material", "kind");
    for (Material m : all.materials()) {
      materials.row(List.of(m.name(), m.kind().name().toLowerCase(Locale.ROOT)));
    }
    Table charts =
        new Table("cut chart", "material", "current", "nozzle", "thickness (mm)", "kerf (mm)");
    all.charts().forEach(c -> charts.row(chart(c)));
    console.out().print(machines + "\n" + tools + "\n" + materials + "\n" + charts);
  }

  private static List<String> machine(Machine m) {
    String travel =
        String.format(Locale.ROOT, "%.0f, %.0f, %.0f", m.travelXMm(), m.travelYMm(), m.travelZMm());
    String range =
        String.format(Locale.ROOT, "%.0f to %.0f rpm", m.spindle().minRpm(), m.spindle().maxRpm());
    return List.of(
        m.name(),
        m.post(),
        travel,
        m.spindle().equals(Machine.Spindle.NONE)
            ? "none: a torch"
            : range + (m.spindle().byHand() ? ", by hand" : ", by program"),
        m.toolChanger() ? "yes" : "no");
  }

  private static List<String> chart(CutChart c) {
    CutChart.Row thin = c.rows().get(0);
    CutChart.Row thick = c.rows().get(c.rows().size() - 1);
    return List.of(
        c.name(),
        c.material(),
        String.format(Locale.ROOT, "%.0f A", c.currentA()),
        c.nozzle(),
        String.format(Locale.ROOT, "%.1f to %.1f", c.thinnestMm(), c.thickestMm()),
        String.format(Locale.ROOT, "%.2f to %.2f", thin.kerfMm(), thick.kerfMm()));
  }

  private static List<String> tool(Tool t) {
    List<String> cells = new ArrayList<>();
    cells.add(t.name());
    cells.add(String.valueOf(t.number()));
    cells.add(t.shape().accept(SHAPE));
    cells.add(Amounts.length(t.diameterMm()));
    cells.add(String.valueOf(t.flutes()));
    cells.add(Amounts.length(t.fluteLengthMm()));
    cells.add(t.cutsAtCentre() ? "yes" : "no");
    return cells;
  }

  private static final ToolShape.Visitor<String> SHAPE =
      new ToolShape.Visitor<>() {
        @Override
        public String flat(ToolShape.Flat flat) {
          return "flat";
        }

        @Override
        public String ball(ToolShape.Ball ball) {
          return "ball";
        }

        @Override
        public String vee(ToolShape.Vee vee) {
          String tip =
              vee.tipMm() > 0 ? String.format(Locale.ROOT, ", tip %.2f mm", vee.tipMm()) : "";
          return "vee " + degrees(vee.angleRad()) + tip;
        }

        @Override
        public String tapered(ToolShape.Tapered tapered) {
          return "tapered " + degrees(tapered.angleRad());
        }

        @Override
        public String drill(ToolShape.Drill drill) {
          return "drill " + degrees(drill.angleRad());
        }

        @Override
        public String roundOver(ToolShape.RoundOver bit) {
          return String.format(
              Locale.ROOT, "round over, radius %.2f mm, tip %.2f mm", bit.cornerMm(), bit.tipMm());
        }
      };

  private static String degrees(double angleRad) {
    String tenths = String.format(Locale.ROOT, "%.1f", Math.toDegrees(angleRad));
    return tenths.replace(".0", "") + " deg";
  }
}
