package frieze.job;

import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.keys.Key;
import frieze.keys.Values;
import frieze.screw.ScrewCode;
import frieze.screw.Screws;
import frieze.shop.Tool;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/** Reads the screws of one panel. */
final class ScrewReader {
  /** What a clearance hole is wider than the screw; common practice. */
  private static final double USUAL_PLAY_MM = 0.5;

  private final WorkReader tools;
  private final Diagnostics found;

  /**
   * @param tools finds tools in the shop
   */
  ScrewReader(WorkReader tools, Diagnostics found) {
    this.tools = tools;
    this.found = found;
  }

  /** Reads them; empty after an error. */
  Optional<Screws> read(Values v) {
    Optional<Tool> tool = tools.tool(v, ScrewKeys.TOOL);
    List<Point> at = v.get(ScrewKeys.AT).stream().map(PanelReader::point).toList();
    double size = v.get(ScrewKeys.SIZE);
    double clearance = v.find(ScrewKeys.CLEARANCE).orElse(size + USUAL_PLAY_MM);
    Optional<Integer> held = v.find(ScrewKeys.HELD);
    boolean good = tool.isPresent();
    if (clearance <= size) {
      good = bad(v, ScrewKeys.CLEARANCE, "a clearance hole of " + Amounts.length(clearance), size);
    }
    double pilot = v.find(ScrewKeys.PILOT).orElse(tool.map(Tool::diameterMm).orElse(0.0));
    if (pilot >= size) {
      good = bad(v, ScrewKeys.PILOT, "a pilot of " + Amounts.length(pilot), size);
    }
    if (held.filter(number -> number > at.size()).isPresent()) {
      found.error(
          ScrewCode.BAD_SCREW,
          v.where(ScrewKeys.HELD),
          "there is no screw " + held.get() + ": the list has " + at.size(),
          "count from 1, in the order of the list");
      good = false;
    }
    if (!good) {
      return Optional.empty();
    }
    Screws.Steel steel =
        new Screws.Steel(
            clearance,
            v.get(ScrewKeys.SLOTS),
            held.map(number -> OptionalInt.of(number - 1)).orElse(OptionalInt.empty()));
    Screws.Pilot pilots =
        new Screws.Pilot(
            pilot,
            v.get(ScrewKeys.DEPTH),
            tool.orElseThrow(),
            tools.mills(tool.orElseThrow()),
            v.get(ScrewKeys.FROM_BACK),
            v.get(ScrewKeys.LEAVE));
    return Optional.of(new Screws(at, size, steel, pilots, v.where()));
  }

  private boolean bad(Values v, Key<Double> key, String hole, double sizeMm) {
    boolean clearance = key.equals(ScrewKeys.CLEARANCE);
    found.error(
        ScrewCode.BAD_SCREW,
        v.where(key),
        hole
            + (clearance ? " lets no screw of " : " gives no hold to a screw of ")
            + Amounts.length(sizeMm)
            + (clearance ? " through" : ""),
        clearance
            ? "the screw and 0.5 mm is common practice"
            : "about the diameter of the screw below its thread; `size` is over the thread");
    return false;
  }
}
