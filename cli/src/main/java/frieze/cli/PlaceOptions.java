package frieze.cli;

import frieze.dryrun.scene.Surroundings;
import frieze.job.Shop;
import frieze.keys.OptionText;
import frieze.motion.Executed.MachinePosition;
import frieze.shop.KeepOut;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the command line tells of the machine and the stock that programs run on. */
final class PlaceOptions {
  private static final Material UNKNOWN_MATERIAL =
      new Material("unknown material", Material.Kind.HARDWOOD);

  @Option(
      names = "--shop",
      paramLabel = "FILE",
      description = "your shop file (shop.yaml in this folder, if there is one)")
  private @Nullable String shopFile;

  @Option(
      names = "--machine",
      paramLabel = "NAME",
      description = "a machine of the shop; `frieze shop` lists them")
  private @Nullable String machine;

  @Option(
      names = "--stock",
      paramLabel = "LENGTHS",
      description = "length, width and thickness of the stock: \"18 x 5-1/2 x 3/4 in\"")
  private @Nullable String stock;

  @Option(
      names = "--zero",
      paramLabel = "WORDS",
      description = "where zero is on the stock: \"left front top\" (this is assumed)")
  private @Nullable String zero;

  @Option(
      names = "--zero-at",
      paramLabel = "LENGTHS",
      description = "zero in machine coordinates, X, Y and Z: \"40, 55, -62 mm\"")
  private @Nullable String zeroAt;

  @Option(
      names = "--tool",
      paramLabel = "[T=]NAME",
      description = {
        "a tool of the shop that the programs call; with a T number if the shop has another:"
            + " \"3=flat 1/4\". May be given several times."
      })
  private List<String> tools = new ArrayList<>();

  @Option(
      names = "--keep-out",
      paramLabel = "LENGTHS",
      description = {
        "a clamp: X and Y of its lower left corner on the stock, its size along X and Y, and how"
            + " far it stands above the stock: \"0, 0, 2, 1, 3/4 in\". May be given several times."
      })
  private List<String> keepOuts = new ArrayList<>();

  @Option(
      names = "--clearance",
      paramLabel = "LENGTH",
      description = "the height above the stock at which the tool should travel")
  private @Nullable String clearance;

  @Option(
      names = "--spoilboard",
      paramLabel = "LENGTH",
      description = "how far below the stock a cut may go (0)")
  private @Nullable String spoilboard;

  @Option(
      names = "--units",
      paramLabel = "UNIT",
      description = "what a bare number in these options means: mm or in (mm)")
  private String units = "mm";

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command = CommandSpec.create();

  /** Adds what the options say to what is known already; an option wins. */
  Surroundings over(Surroundings known, DiskFiles files) throws IOException {
    options().inches(); // Wrong units are told whether or not a length is given.
    Shop shop = ShopCommand.load(files, Optional.ofNullable(shopFile));
    Surroundings result = known;
    if (machine != null) {
      result = result.withMachine(machine(shop, machine));
    }
    Optional<Stock> given = stock();
    if (given.isPresent()) {
      result = result.withStock(given.get(), zero().orElse(Zero.LEFT_FRONT_TOP));
    } else if (zero().isPresent() && result.stock().isPresent()) {
      result = result.withStock(result.stock().get(), zero().get());
    }
    if (zeroAt != null) {
      result = result.withZeroOnMachine(position(options().lengthsMm("--zero-at", zeroAt, 3)));
    }
    result =
        result.withHeights(
            length("--clearance", clearance).or(result.clearanceMm()),
            length("--spoilboard", spoilboard).or(result.spoilboardMm()));
    if (!keepOuts.isEmpty()) {
      result = result.withKeepOuts(keepOuts());
    }
    return tools.isEmpty() ? result : result.withTools(tools(shop));
  }

  /** An optional length that another may stand in for. */
  private record Length(OptionalDouble mm) {
    OptionalDouble or(OptionalDouble other) {
      return mm.isPresent() ? mm : other;
    }
  }

  private Length length(String option, @Nullable String text) {
    if (text == null) {
      return new Length(OptionalDouble.empty());
    }
    double mm = options().lengthsMm(option, text, 1).get(0);
    if (mm < 0) {
      throw options().wrong(option, "must not be below 0");
    }
    return new Length(OptionalDouble.of(mm));
  }

  private Optional<Stock> stock() {
    if (stock == null) {
      return Optional.empty();
    }
    List<Double> size = options().lengthsMm("--stock", stock, 3);
    if (size.stream().anyMatch(mm -> mm <= 0)) {
      throw options().wrong("--stock", "all three lengths must be more than 0");
    }
    return Optional.of(
        new Stock(UNKNOWN_MATERIAL, size.get(0), size.get(1), List.of(size.get(2)), false));
  }

  private Optional<Zero> zero() {
    return zero == null
        ? Optional.empty()
        : Optional.of(options().read("--zero", zero, OptionText::zero));
  }

  private static MachinePosition position(List<Double> mm) {
    return new MachinePosition(
        OptionalDouble.of(mm.get(0)), OptionalDouble.of(mm.get(1)), OptionalDouble.of(mm.get(2)));
  }

  private List<KeepOut> keepOuts() {
    List<KeepOut> all = new ArrayList<>();
    for (String text : keepOuts) {
      List<Double> mm = options().lengthsMm("--keep-out", text, 5);
      if (mm.get(2) <= 0 || mm.get(3) <= 0) {
        throw options().wrong("--keep-out", "its size along X and Y must be more than 0");
      }
      double right = mm.get(0) + mm.get(2);
      double back = mm.get(1) + mm.get(3);
      String name = "keep-out " + (all.size() + 1);
      all.add(new KeepOut(name, mm.get(0), mm.get(1), right, back, mm.get(4)));
    }
    return all;
  }

  private Machine machine(Shop shop, String name) {
    return shop.machine(name)
        .orElseThrow(
            () ->
                options()
                    .wrong("--machine", "no machine named \"" + name + "\"; see `frieze shop`"));
  }

  private List<Tool> tools(Shop shop) {
    List<Tool> all = new ArrayList<>();
    for (String text : tools) {
      int equals = text.indexOf('=');
      String name = text.substring(equals + 1).strip();
      Tool tool =
          shop.tool(name)
              .orElseThrow(
                  () ->
                      options()
                          .wrong("--tool", "no tool named \"" + name + "\"; see `frieze shop`"));
      all.add(equals < 0 ? tool : tool.withNumber(number(text.substring(0, equals))));
    }
    return all;
  }

  private int number(String text) {
    try {
      return Integer.parseInt(text.strip().replaceFirst("^[Tt]", ""));
    } catch (NumberFormatException e) {
      throw options().wrong("--tool", "\"" + text + "\" is not a tool number");
    }
  }

  OptionReader options() {
    return new OptionReader(command, units);
  }
}
