package frieze.lower;

import frieze.curve.Point;
import frieze.shop.Tool;
import java.util.List;

/**
 * One file's worth of commands for one controller.
 *
 * @param fileName unique in its job, sorted in running order
 * @param header short lines for the operator, as comments at the top
 * @param tools in the order of use
 * @param grid the digits of lengths
 * @param feedGrid the digits of feeds
 * @param touchSpots where Z is found again after tool changes by hand, in program coordinates (mm)
 */
public record Program(
    String fileName,
    List<String> header,
    List<Tool> tools,
    Grid grid,
    Grid feedGrid,
    List<Point> touchSpots,
    List<Entry> entries) {
  public Program {
    header = List.copyOf(header);
    tools = List.copyOf(tools);
    touchSpots = List.copyOf(touchSpots);
    entries = List.copyOf(entries);
  }

  /**
   * A command and where it comes from.
   *
   * @param origin what a person would call the piece of work; empty for what lowering added
   */
  public record Entry(Command command, String origin) {}
}
