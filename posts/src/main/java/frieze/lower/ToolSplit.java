package frieze.lower;

import frieze.motion.Instruction;
import frieze.motion.Step;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;

/** Makes one part for each tool, or one of all where the controller can go on after a change. */
final class ToolSplit {
  private ToolSplit() {}

  /** The steps of one program; each tool that they use is named by a tool change first. */
  record Part(List<Tool> tools, List<Step> steps) {}

  static List<Part> split(List<Step> steps, Lowering.Request request) {
    boolean separate = request.toolChanging() == Capabilities.ToolChanging.SEPARATE_PROGRAMS;
    List<Part> parts = new ArrayList<>();
    List<Tool> tools = new ArrayList<>();
    List<Step> current = new ArrayList<>();
    for (Step step : steps) {
      if (step.instruction() instanceof Instruction.ToolChange change) {
        if (!tools.isEmpty() && last(tools).number() == change.tool().number()) {
          continue;
        }
        if (separate && !tools.isEmpty()) {
          parts.add(new Part(List.copyOf(tools), List.copyOf(current)));
          tools.clear();
          current.clear();
        }
        tools.add(change.tool());
      }
      current.add(step);
    }
    if (!current.isEmpty()) {
      parts.add(new Part(List.copyOf(tools), List.copyOf(current)));
    }
    return parts;
  }

  private static Tool last(List<Tool> tools) {
    return tools.get(tools.size() - 1);
  }
}
