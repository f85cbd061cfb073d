package frieze.dryrun.scene;

import frieze.motion.Executed.MachinePosition;
import frieze.shop.KeepOut;
import frieze.shop.Machine;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is known of the place that programs will run in. Whatever is missing is not checked, and the
 * result says so.
 *
 * @param zero where the program's zero lies on the stock
 * @param zeroOnMachine the program's zero in machine coordinates, each axis known or not
 * @param clearanceMm the height above the stock's top at which the tool travels
 * @param spoilboardMm how far below the stock a cut may go; taken as 0 when missing
 * @param keepOuts clamps and screws; an empty list means that they are not known
 * @param tools by T number; if there is only one, a program that names no tool has it
 */
public record Surroundings(
    Optional<Machine> machine,
    Optional<Stock> stock,
    Optional<Zero> zero,
    MachinePosition zeroOnMachine,
    OptionalDouble clearanceMm,
    OptionalDouble spoilboardMm,
    List<KeepOut> keepOuts,
    List<Tool> tools) {
  /** Nothing is known. */
  public static final Surroundings UNKNOWN =
      new Surroundings(
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          MachinePosition.UNKNOWN,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          List.of(),
          List.of());

  public Surroundings {
    keepOuts = List.copyOf(keepOuts);
    tools = List.copyOf(tools);
  }

  /** Takes everything from a setup. Where its zero lies on the machine stays unknown. */
  public static Surroundings of(Setup setup) {
    return UNKNOWN
        .withMachine(setup.machine())
        .withStock(setup.stock(), setup.zero())
        .withHeights(
            OptionalDouble.of(setup.clearanceMm()), OptionalDouble.of(setup.spoilboardMm()))
        .withKeepOuts(setup.keepOuts())
        .withTools(setup.tools());
  }

  public Surroundings withMachine(Machine known) {
    return new Surroundings(
        Optional.of(known), stock, zero, zeroOnMachine, clearanceMm, spoilboardMm, keepOuts, tools);
  }

  public Surroundings withStock(Stock known, Zero on) {
    return new Surroundings(
        machine,
        Optional.of(known),
        Optional.of(on),
        zeroOnMachine,
        clearanceMm,
        spoilboardMm,
        keepOuts,
        tools);
  }

  public Surroundings withZeroOnMachine(MachinePosition known) {
    return new Surroundings(
        machine, stock, zero, known, clearanceMm, spoilboardMm, keepOuts, tools);
  }

  public Surroundings withHeights(OptionalDouble clearance, OptionalDouble spoilboard) {
    return new Surroundings(
        machine, stock, zero, zeroOnMachine, clearance, spoilboard, keepOuts, tools);
  }

  public Surroundings withKeepOuts(List<KeepOut> known) {
    return new Surroundings(
        machine, stock, zero, zeroOnMachine, clearanceMm, spoilboardMm, known, tools);
  }

  public Surroundings withTools(List<Tool> known) {
    return new Surroundings(
        machine, stock, zero, zeroOnMachine, clearanceMm, spoilboardMm, keepOuts, known);
  }

  /** The tool with a number. */
  public Optional<Tool> tool(int number) {
    // Asked for every move: no stream.
    for (Tool tool : tools) {
      if (tool.number() == number) {
        return Optional.of(tool);
      }
    }
    return Optional.empty();
  }
}
