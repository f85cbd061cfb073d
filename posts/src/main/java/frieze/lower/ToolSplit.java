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

  /**
   * Splits parts that are too long where the tool travels at its height; what follows starts anew
   * with the same tool and speed.
   */
  static List<Part> shorten(List<Part> parts, int mostSteps) {
    List<Part> out = new ArrayList<>();
    for (Part part : parts) {
      if (part.steps().size() <= mostSteps) {
        out.add(part);
      } else {
        shorten(part, mostSteps, out);
      }
    }
    return out;
  }

  private static void shorten(Part part, int mostSteps, List<Part> out) {
    List<Step> current = new ArrayList<>();
    List<Tool> tools = new ArrayList<>();
    List<Step> again = new ArrayList<>();
    for (Step step : part.steps()) {
      boolean travels = step.instruction() instanceof Instruction.RapidXy;
      if (travels && current.size() >= mostSteps) {
        out.add(new Part(List.copyOf(tools), List.copyOf(current)));
        current = new ArrayList<>(again);
        tools = new ArrayList<>(tools.isEmpty() ? List.of() : List.of(last(tools)));
      }
      if (step.instruction() instanceof Instruction.ToolChange change) {
        tools.add(change.tool());
        again.clear();
        again.add(step);
      } else if (step.instruction() instanceof Instruction.Spindle
          || (step.instruction() instanceof Instruction.Stop && again.size() == 1)) {
        again.subList(Math.min(1, again.size()), again.size()).clear();
        again.add(step);
      }
      current.add(step);
    }
    out.add(new Part(List.copyOf(tools), List.copyOf(current)));
  }

  private static Tool last(List<Tool> tools) {
    return tools.get(tools.size() - 1);
  }
}
