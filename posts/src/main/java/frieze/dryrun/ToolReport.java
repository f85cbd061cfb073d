package frieze.dryrun;

import frieze.clock.TimeSpent;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one tool does.
 *
 * @param toolNumber empty when no text says which tool is in the spindle
 * @param toolName as the shop calls it; empty when it is not known there
 * @param program extents in program coordinates
 * @param feedMm the length of its feed moves
 * @param rapidMm the length of its rapid moves
 * @param lowestZMm its lowest point in a feed move, in program coordinates; empty without one
 * @param deepestMm the same below the stock's top; empty when the stock or the zero is unknown
 * @param time with its own tool change
 */
public record ToolReport(
    Optional<Integer> toolNumber,
    Optional<String> toolName,
    MoveExtents program,
    double feedMm,
    double rapidMm,
    OptionalDouble lowestZMm,
    OptionalDouble deepestMm,
    TimeSpent time) {}
