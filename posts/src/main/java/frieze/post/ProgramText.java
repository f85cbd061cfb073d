package frieze.post;

import frieze.curve.Point;
import frieze.shop.Tool;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A program as it is given to the machine.
 *
 * @param fileName unique in its job, sorted in running order
 * @param tools in the order of use
 * @param inches whether its lengths are inches
 * @param touchSpots where Z is found again after tool changes by hand, in program coordinates (mm)
 * @param text ASCII, each line with its line end
 * @param origins for each line the piece of work that it comes from; empty where there is none
 */
public record ProgramText(
    String fileName,
    List<Tool> tools,
    boolean inches,
    List<Point> touchSpots,
    String text,
    List<String> origins) {
  public ProgramText {
    tools = List.copyOf(tools);
    touchSpots = List.copyOf(touchSpots);
    origins = List.copyOf(origins);
  }

  public byte[] bytes() {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  /** Where a line comes from; lines count from 1. */
  public String origin(int line) {
    return origins.get(line - 1);
  }
}
