package frieze.job;

import frieze.shop.CutChart;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** What a shop has, by name. */
public record Shop(
    List<Machine> machines, List<Tool> tools, List<Material> materials, List<CutChart> charts) {
  public Shop {
    machines = List.copyOf(machines);
    tools = List.copyOf(tools);
    materials = List.copyOf(materials);
    charts = List.copyOf(charts);
  }

  public Optional<Machine> machine(String name) {
    return machines.stream().filter(m -> m.name().equals(name)).findFirst();
  }

  public Optional<Tool> tool(String name) {
    return tools.stream().filter(t -> t.name().equals(name)).findFirst();
  }

  public Optional<Material> material(String name) {
    return materials.stream().filter(m -> m.name().equals(name)).findFirst();
  }

  public Optional<CutChart> chart(String name) {
    return charts.stream().filter(c -> c.name().equals(name)).findFirst();
  }

  List<String> chartNames() {
    return charts.stream().map(CutChart::name).toList();
  }

  List<String> machineNames() {
    return machines.stream().map(Machine::name).toList();
  }

  List<String> toolNames() {
    return tools.stream().map(Tool::name).toList();
  }

  List<String> materialNames() {
    return materials.stream().map(Material::name).toList();
  }

  /**
   * This shop and what another adds to it. Where a name is in both, this one's counts; a tool of
   * the other whose number is taken gets the next that is free.
   */
  public Shop over(Shop other) {
    return new Shop(
        merged(machines, other.machines, Machine::name),
        withOwnNumbers(merged(tools, other.tools, Tool::name)),
        merged(materials, other.materials, Material::name),
        merged(charts, other.charts, CutChart::name));
  }

  private static <T> List<T> merged(List<T> first, List<T> second, Function<T, String> name) {
    List<T> all = new ArrayList<>(first);
    Set<String> names = new HashSet<>();
    first.forEach(t -> names.add(name.apply(t)));
    second.stream().filter(t -> !names.contains(name.apply(t))).forEach(all::add);
    return all;
  }

  private static List<Tool> withOwnNumbers(List<Tool> tools) {
    Set<Integer> wanted = new HashSet<>();
    tools.forEach(t -> wanted.add(t.number()));
    Set<Integer> taken = new HashSet<>();
    List<Tool> numbered = new ArrayList<>();
    for (Tool tool : tools) {
      int number = tool.number();
      if (!taken.add(number)) {
        number = nextFree(wanted);
        wanted.add(number);
        taken.add(number);
      }
      numbered.add(tool.withNumber(number));
    }
    return numbered;
  }

  static int nextFree(Set<Integer> taken) {
    int number = 1;
    while (taken.contains(number)) {
      number++;
    }
    return number;
  }
}
