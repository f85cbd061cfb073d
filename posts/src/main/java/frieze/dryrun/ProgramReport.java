package frieze.dryrun;

import frieze.clock.TimeSpent;
import frieze.field.DepthMap;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one program does.
 *
 * @param name as it was given
 * @param lines how many lines were read
 * @param program extents in program coordinates
 * @param machine extents in machine coordinates, where these are known
 * @param feedMm the length of its feed moves
 * @param rapidMm the length of its rapid moves
 * @param lowestZMm the lowest point of a feed move, in program coordinates; empty without one
 * @param deepestMm the same below the stock's top; empty when the stock or the zero is unknown
 * @param tools the tools in the order of their first move
 * @param stockAfter depths after this program, if pictures were asked for and the stock is known
 */
public record ProgramReport(
    String name,
    int lines,
    MoveExtents program,
    MoveExtents machine,
    double feedMm,
    double rapidMm,
    OptionalDouble lowestZMm,
    OptionalDouble deepestMm,
    TimeSpent time,
    List<ToolReport> tools,
    Optional<DepthMap> stockAfter) {
  public ProgramReport {
    tools = List.copyOf(tools);
  }
}
