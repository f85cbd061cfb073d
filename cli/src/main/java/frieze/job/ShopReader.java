package frieze.job;

import frieze.diagnostic.Diagnostics;
import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Located;
import frieze.keys.Reading;
import frieze.keys.SectionType;
import frieze.keys.Units;
import frieze.keys.Values;
import frieze.keys.YamlText;
import frieze.shop.CutChart;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.Node;

/** Reads a shop file. */
public final class ShopReader {
  private static final String BUILT_IN = "built-in shop";

  private final Diagnostics found = new Diagnostics();

  private ShopReader() {}

  /** The generic machines, tools and materials that are known without a shop file. */
  public static Shop builtIn() {
    try (InputStream in = ShopReader.class.getResourceAsStream("shop.yaml")) {
      if (in == null) {
        throw new IllegalStateException("the built-in shop is missing from the class path");
      }
      return read(BUILT_IN, in.readAllBytes());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Reads a shop file alone, without the built-in shop.
   *
   * @throws frieze.diagnostic.BadInputException with everything that is wrong in it
   */
  public static Shop read(String source, byte[] content) {
    return new ShopReader().readFile(source, content);
  }

  private Shop readFile(String source, byte[] content) {
    Optional<Node> root = YamlText.parse(source, content);
    if (root.isEmpty()) {
      return new Shop(List.of(), List.of(), List.of(), List.of());
    }
    Reading reading = new Reading(source, Units.inches(root.get()), found);
    Optional<Values> values = new SectionType(ShopKeys.Root.SECTION).read(root.get(), reading);
    found.throwIfErrors();
    Values shop = values.orElseThrow();
    List<Machine> machines = new ArrayList<>();
    named(shop, ShopKeys.Root.MACHINES)
        .forEach((name, section) -> machines.add(machine(name, section.value())));
    List<Material> materials = new ArrayList<>();
    named(shop, ShopKeys.Root.MATERIALS)
        .forEach(
            (name, section) ->
                materials.add(
                    new Material(
                        name,
                        section.value().get(ShopKeys.Materials.KIND),
                        section.value().get(ShopKeys.Materials.ZINC))));
    List<Tool> tools = tools(named(shop, ShopKeys.Root.TOOLS));
    List<CutChart> charts = new ArrayList<>();
    named(shop, ShopKeys.Root.CHARTS)
        .forEach((name, section) -> chart(name, section.value()).ifPresent(charts::add));
    found.throwIfErrors();
    return new Shop(machines, tools, materials, charts);
  }

  private static Map<String, Located<Values>> named(
      Values shop, Key<Map<String, Located<Values>>> key) {
    return shop.find(key).orElse(Map.of());
  }

  private static Machine machine(String name, Values m) {
    Values travel = m.get(ShopKeys.Machines.TRAVEL);
    return new Machine(
        name,
        m.get(ShopKeys.Machines.POST),
        travel.get(ShopKeys.Axes.X),
        travel.get(ShopKeys.Axes.Y),
        travel.get(ShopKeys.Axes.Z),
        axis(m, ShopKeys.Axes.FEED_X, ShopKeys.Axes.ACCELERATION_X),
        axis(m, ShopKeys.Axes.FEED_Y, ShopKeys.Axes.ACCELERATION_Y),
        axis(m, ShopKeys.Axes.FEED_Z, ShopKeys.Axes.ACCELERATION_Z),
        m.find(ShopKeys.Machines.SPINDLE).map(ShopReader::spindle).orElse(Machine.Spindle.NONE),
        m.get(ShopKeys.Machines.CHANGER),
        m.get(ShopKeys.Machines.WRITES),
        m.get(ShopKeys.Machines.TOUCH_TRAVEL));
  }

  private static Machine.Spindle spindle(Values spindle) {
    return new Machine.Spindle(
        spindle.get(ShopKeys.Spindle.BY_HAND),
        spindle.get(ShopKeys.Spindle.LOWEST),
        spindle.get(ShopKeys.Spindle.HIGHEST),
        spindle.find(ShopKeys.Spindle.DIAL).orElse(List.of()),
        spindle.get(ShopKeys.Spindle.SPIN_UP));
  }

  /** Reads a cut chart; empty after an error. */
  private Optional<CutChart> chart(String name, Values chart) {
    List<CutChart.Row> rows = new ArrayList<>();
    Set<Double> seen = new HashSet<>();
    for (Values row : chart.get(ShopKeys.Charts.ROWS)) {
      double thicknessMm = row.get(ShopKeys.ChartRow.THICKNESS);
      if (!seen.add(thicknessMm)) {
        found.error(
            JobCode.DUPLICATE_KEY,
            row.where(ShopKeys.ChartRow.THICKNESS),
            "the cut chart \"" + name + "\" has two rows for one thickness",
            "keep the one that is right");
        return Optional.empty();
      }
      rows.add(
          new CutChart.Row(
              thicknessMm,
              row.get(ShopKeys.ChartRow.KERF),
              row.get(ShopKeys.ChartRow.FEED),
              row.get(ShopKeys.ChartRow.PIERCE_HEIGHT),
              row.get(ShopKeys.ChartRow.CUT_HEIGHT),
              row.get(ShopKeys.ChartRow.PIERCE_DELAY),
              row.get(ShopKeys.ChartRow.SMALLEST_HOLE)));
    }
    return Optional.of(
        new CutChart(
            name,
            chart.get(ShopKeys.Charts.MATERIAL),
            chart.get(ShopKeys.Charts.CURRENT),
            chart.get(ShopKeys.Charts.NOZZLE),
            chart.get(ShopKeys.Charts.AFTER_FLOW),
            rows));
  }

  private static Machine.Axis axis(Values m, Key<Double> feed, Key<Double> acceleration) {
    return new Machine.Axis(
        m.get(ShopKeys.Machines.RAPID).get(feed),
        m.get(ShopKeys.Machines.TOP_FEED).get(feed),
        m.get(ShopKeys.Machines.ACCELERATION).get(acceleration));
  }

  private List<Tool> tools(Map<String, Located<Values>> sections) {
    Set<Integer> taken = new HashSet<>();
    for (Map.Entry<String, Located<Values>> entry : sections.entrySet()) {
      Values tool = entry.getValue().value();
      tool.find(ShopKeys.Tools.NUMBER)
          .filter(number -> !taken.add(number))
          .ifPresent(
              number ->
                  found.error(
                      JobCode.NUMBER_TAKEN,
                      tool.where(ShopKeys.Tools.NUMBER),
                      "tool number " + number + " is taken by another tool",
                      "leave the number out, or give a free one"));
    }
    List<Tool> tools = new ArrayList<>();
    for (Map.Entry<String, Located<Values>> entry : sections.entrySet()) {
      Values values = entry.getValue().value();
      int number = values.find(ShopKeys.Tools.NUMBER).orElseGet(() -> Shop.nextFree(taken));
      taken.add(number);
      new ShapeReader(entry.getKey(), values, found)
          .read()
          .ifPresent(shape -> tools.add(tool(entry.getKey(), number, shape, values)));
    }
    return tools;
  }

  private static Tool tool(String name, int number, ToolShape shape, Values t) {
    double flute = t.get(ShopKeys.Tools.FLUTE_LENGTH);
    ShopKeys.Shape kind = t.get(ShopKeys.Tools.SHAPE);
    boolean plunges = kind == ShopKeys.Shape.VEE || kind == ShopKeys.Shape.DRILL;
    return new Tool(
        name,
        number,
        shape,
        t.get(ShopKeys.Tools.FLUTES),
        flute,
        t.find(ShopKeys.Tools.REACH).orElse(flute),
        t.find(ShopKeys.Tools.PLUNGES).orElse(plunges),
        optional(t, ShopKeys.Tools.PASS_DEPTH),
        optional(t, ShopKeys.Tools.CHIP_LOAD),
        t.get(ShopKeys.Tools.TOP_SPEED),
        t.get(ShopKeys.Tools.TOP_FEED),
        t.get(ShopKeys.Tools.TOP_PLUNGE),
        optional(t, ShopKeys.Tools.ENGAGEMENT));
  }

  private static OptionalDouble optional(Values values, Key<Double> key) {
    return values.find(key).map(OptionalDouble::of).orElse(OptionalDouble.empty());
  }
}
