package frieze.shop;

import frieze.curve.Affine;
import frieze.curve.Frame;
import frieze.curve.FrameMap;
import java.util.List;

/**
 * How a stock lies on a machine: one clamping, one zero, one or more programs.
 *
 * @param panelXMm where the panel's origin lies in the stock frame
 * @param panelYMm where the panel's origin lies in the stock frame
 * @param clearanceMm the height above the stock's top at which the tool travels
 * @param spoilboardMm how far below the stock a through cut may go
 * @param tools every tool that may be called, by T number
 * @param allowance what is taken off the panel after it is cut
 */
public record Setup(
    Machine machine,
    Stock stock,
    Zero zero,
    double panelXMm,
    double panelYMm,
    double clearanceMm,
    double spoilboardMm,
    List<KeepOut> keepOuts,
    List<Tool> tools,
    FinishAllowance allowance) {
  public Setup {
    keepOuts = List.copyOf(keepOuts);
    tools = List.copyOf(tools);
    if (!(clearanceMm > 0)) {
      throw new IllegalArgumentException("clearanceMm must be > 0 but was " + clearanceMm + " mm");
    }
  }

  /** A panel that stays as it is cut. */
  public Setup(
      Machine machine,
      Stock stock,
      Zero zero,
      double panelXMm,
      double panelYMm,
      double clearanceMm,
      double spoilboardMm,
      List<KeepOut> keepOuts,
      List<Tool> tools) {
    this(
        machine,
        stock,
        zero,
        panelXMm,
        panelYMm,
        clearanceMm,
        spoilboardMm,
        keepOuts,
        tools,
        FinishAllowance.NONE);
  }

  /** The same with a panel of which something is taken off after it is cut. */
  public Setup allowing(FinishAllowance taken) {
    return with(machine, zero, taken);
  }

  public FrameMap<Frame.Panel, Frame.Stock> stockFromPanel() {
    return new FrameMap<>(Affine.translation(panelXMm, panelYMm));
  }

  /** The plane part of the map from a program's coordinates to the stock's. */
  public FrameMap<Frame.Program, Frame.Stock> stockFromProgram() {
    double x =
        switch (zero.x()) {
          case LEFT -> 0;
          case CENTRE -> stock.lengthMm() / 2;
          case RIGHT -> stock.lengthMm();
        };
    double y =
        switch (zero.y()) {
          case FRONT -> 0;
          case CENTRE -> stock.widthMm() / 2;
          case BACK -> stock.widthMm();
        };
    return new FrameMap<>(Affine.translation(x + zero.pushedMm(), y));
  }

  /**
   * What to add to a program's Z to get the height above the stock's top. With zero on the bed, the
   * top is taken at the thickest reading.
   */
  public double stockZFromProgramZMm() {
    return zero.z() == Zero.AlongZ.TOP ? 0 : -stock.thickestMm();
  }

  /** The same stock, pushed to the left under a zero that stays where it is on the machine. */
  public Setup pushed(double byMm) {
    return with(machine, zero.pushed(byMm), allowance);
  }

  /** The same on another machine. */
  public Setup on(Machine other) {
    return with(other, zero, allowance);
  }

  private Setup with(Machine onMachine, Zero at, FinishAllowance taken) {
    return new Setup(
        onMachine,
        stock,
        at,
        panelXMm,
        panelYMm,
        clearanceMm,
        spoilboardMm,
        keepOuts,
        tools,
        taken);
  }

  public FrameMap<Frame.Panel, Frame.Program> programFromPanel() {
    return stockFromPanel().then(stockFromProgram().inverse());
  }
}
