package frieze.cli;

import frieze.artwork.look.Fineness;
import frieze.artwork.look.Narrow;
import frieze.artwork.look.ToolReach;
import frieze.diagnostic.Amounts;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;

/** What one bit of the shop reaches of a drawing. */
record BitReach(Tool tool, ToolReach within, ToolReach outside) {
  /** A bit that is wider than a web by rounding alone still goes through. */
  private static final double SLACK_MM = 0.001;

  /** Tries bits, the smallest first. */
  static List<BitReach> of(Fineness fine, List<Tool> bits) {
    List<BitReach> tried = new ArrayList<>();
    for (Tool tool : bits) {
      double d = tool.diameterMm();
      tried.add(
          new BitReach(tool, ToolReach.within(fine.area(), d), ToolReach.around(fine.area(), d)));
    }
    return tried;
  }

  /** The largest that goes through the narrowest web. */
  static Optional<BitReach> inside(List<BitReach> bits, Fineness fine) {
    return largest(bits, fine.web());
  }

  /** The largest that goes through the narrowest gap. */
  static Optional<BitReach> around(List<BitReach> bits, Fineness fine) {
    return largest(bits, fine.gap());
  }

  static Optional<BitReach> smallest(List<BitReach> bits) {
    return bits.stream().findFirst();
  }

  private static Optional<BitReach> largest(List<BitReach> bits, Optional<Narrow> narrowest) {
    double most = narrowest.map(Narrow::widthMm).orElse(Double.POSITIVE_INFINITY);
    return bits.stream()
        .filter(b -> b.tool().diameterMm() <= most + SLACK_MM)
        .reduce((smaller, larger) -> larger);
  }

  /** What the bit does, in words. */
  static String said(Optional<BitReach> bit, Function<BitReach, ToolReach> where) {
    if (bit.isEmpty()) {
      return "none of the shop's flat bits goes everywhere";
    }
    ToolReach reach = where.apply(bit.get());
    int count = reach.left().size();
    String corners = count == 1 ? " corner" : " corners";
    return bit.get().tool().name()
        + " goes everywhere"
        + (count == 0
            ? ""
            : " but into "
                + count
                + corners
                + ", of which it stops up to "
                + Amounts.length(reach.shortMm())
                + " short");
  }

  static Table table(List<BitReach> bits, Fineness fine) {
    Table table = new Table("bit", "diameter", "inside: cleared", "left", "around: left");
    double area = fine.area().area();
    for (BitReach bit : bits) {
      double share = 1 - bit.within.leftMm2() / area;
      table.row(
          List.of(
              bit.tool.name(),
              Amounts.length(bit.tool.diameterMm()),
              String.format(Locale.ROOT, "%.1f%%", 100 * Math.max(0, share)),
              left(bit.within),
              left(bit.outside)));
    }
    return table;
  }

  private static String left(ToolReach reach) {
    int places = reach.left().size();
    return places == 0
        ? "nothing"
        : Amounts.area(reach.leftMm2()) + " in " + places + (places == 1 ? " place" : " places");
  }
}
