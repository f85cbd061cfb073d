package frieze.sheet;

import frieze.plan.cut.Cut;
import frieze.shop.Machine;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeSet;

/**
 * What one tool is set to and does on a panel.
 *
 * @param rpm each speed that it turns at, slow first
 * @param fastestMmPerMin its fastest feed
 * @param deepestMm the lowest it goes below the stock's top
 * @param works what it is used for, such as {@code recess ginkgo}
 */
record ToolUse(
    Tool tool, List<Double> rpm, double fastestMmPerMin, double deepestMm, List<String> works) {

  /** The tools of a plan, in the order of use. */
  static List<ToolUse> of(List<Cut> cuts) {
    Map<Integer, List<Cut>> byTool = new LinkedHashMap<>();
    for (Cut cut : cuts) {
      byTool.computeIfAbsent(cut.tool().number(), n -> new ArrayList<>()).add(cut);
    }
    return byTool.values().stream().map(ToolUse::ofOne).toList();
  }

  private static ToolUse ofOne(List<Cut> cuts) {
    TreeSet<Double> rpm = new TreeSet<>();
    double fastest = 0;
    double lowest = 0;
    List<String> works = new ArrayList<>();
    for (Cut cut : cuts) {
      rpm.add(cut.spindleRpm());
      for (Cut.Move move : cut.moves()) {
        fastest = Math.max(fastest, move.feedMmPerMin());
        lowest = Math.min(lowest, move.path().box().min(2));
      }
      String work = cut.origin().replaceAll(",.*", "").replaceAll(" \\d+$", "");
      if (!works.contains(work)) {
        works.add(work);
      }
    }
    return new ToolUse(cuts.get(0).tool(), List.copyOf(rpm), fastest, -lowest, works);
  }

  /** How to set the spindle by hand, or what the program sets it to. */
  String setting(Machine.Spindle spindle) {
    List<String> settings = new ArrayList<>();
    for (double speed : rpm) {
      OptionalDouble mark = spindle.dialMark(speed);
      settings.add(
          mark.isPresent()
              ? "dial "
                  + Measures.decimals(mark.getAsDouble(), 1)
                  + " ("
                  + Measures.rpm(speed)
                  + ")"
              : Measures.rpm(speed));
    }
    return String.join(", ", settings);
  }
}
