package frieze.dryrun;

import frieze.dryrun.scene.Surroundings;
import frieze.motion.Executed.MachinePosition;
import frieze.rs274.ReadingRules;
import frieze.shop.KeepOut;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** A small shop, good programs for it, and short words for dry-running them. */
public final class Bench {
  static final Tool FLAT =
      new Tool(
          "flat 1/4",
          1,
          new ToolShape.Flat(6.35),
          2,
          22,
          32,
          false,
          OptionalDouble.of(3.2),
          OptionalDouble.empty(),
          20000,
          2000,
          400);
  static final Tool DRILL =
      new Tool(
          "drill 5",
          2,
          new ToolShape.Drill(5, Math.toRadians(118)),
          2,
          40,
          50,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          12000,
          1000,
          400);
  public static final Stock STOCK =
      new Stock(
          new Material("white ash", Material.Kind.HARDWOOD), 300, 150, List.of(19.0, 19.1), false);
  public static final Surroundings KNOWN =
      Surroundings.UNKNOWN
          .withMachine(machine(false))
          .withStock(STOCK, Zero.LEFT_FRONT_TOP)
          .withHeights(OptionalDouble.of(5), OptionalDouble.of(0.4))
          .withKeepOuts(List.of(new KeepOut("left clamp", 0, 60, 15, 90, 20)))
          .withTools(List.of(FLAT, DRILL));

  /** A rounded rectangle grooved in two passes, then cut through at one side, then two holes. */
  static final String GOOD =
      """
      (panel: test, tool 1: flat 1/4)
      G17 G21 G40 G49 G80 G90 G94
      G53 G0 Z0
      T1 M6
      S16000 M3
      G4 P3
      G0 X50 Y40
      G0 Z5
      G1 Z0 F400
      G1 X90 Z-3 F800
      G1 X150 F1200
      G3 X160 Y50 I0 J10
      G1 Y90
      G3 X150 Y100 I-10 J0
      G1 X50
      G3 X40 Y90 I0 J-10
      G1 Y50
      G3 X50 Y40 I10 J0
      G1 X90
      G1 X130 Z-6 F800
      G1 X150 F1200
      G3 X160 Y50 I0 J10
      G1 Y90
      G3 X150 Y100 I-10 J0
      G1 X50
      G3 X40 Y90 I0 J-10
      G1 Y50
      G3 X50 Y40 I10 J0
      G1 X130
      G0 Z5
      G0 X200 Y100
      G1 Z0 F400
      G1 X240 Z-2 F800
      G1 X200
      G0 Z5
      M5
      T2 M6
      S9000 M3
      G4 P3
      G0 X260 Y40
      G0 Z5
      G1 Z-19.3 F300
      G0 Z5
      G0 X260 Y110
      G1 Z-19.3 F300
      G0 Z5
      M5
      G53 G0 Z0
      M2
      """;

  private Bench() {}

  static Machine machine(boolean spindleByHand) {
    Machine.Axis plane = new Machine.Axis(5000, 3000, 500);
    Machine.Axis z = new Machine.Axis(2000, 1000, 200);
    return new Machine(
        "test bench",
        "rs274-full",
        780,
        560,
        120,
        plane,
        plane,
        z,
        new Machine.Spindle(spindleByHand, 8000, 24000, List.of(), 3),
        true,
        false,
        0);
  }

  static ProgramText program(String name, String text) {
    return ProgramText.of(name, text.getBytes(StandardCharsets.UTF_8), ReadingRules.REPORT);
  }

  public static DryRunResult run(Surroundings known, String... texts) {
    List<ProgramText> programs = new ArrayList<>();
    for (String text : texts) {
      programs.add(program("p" + (programs.size() + 1) + ".nc", text));
    }
    return DryRun.in(known).run(programs);
  }

  /** The same, on a machine that moves in its own way. */
  public static DryRunResult run(Surroundings known, ReadingRules.Paths paths, String text) {
    ReadingRules rules = ReadingRules.REPORT.but().paths(paths).build();
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    return DryRun.in(known).run(List.of(ProgramText.of("p1.nc", bytes, rules)));
  }

  /** The same with a known zero on the machine. */
  static Surroundings withZeroAt(double x, double y, double z) {
    return KNOWN.withZeroOnMachine(
        new MachinePosition(OptionalDouble.of(x), OptionalDouble.of(y), OptionalDouble.of(z)));
  }
}
