package frieze.job;

import frieze.design.EdgeShape;
import frieze.design.PanelSide;
import frieze.design.Work;
import frieze.keys.Values;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads how a panel's edge is worked. */
final class EdgeReader {
  private EdgeReader() {}

  /** A chamfer; what is not given of it is as the bit makes it. */
  static Work chamfer(Values v, Tool tool) {
    double width = v.get(EdgeKeys.WIDTH);
    Optional<Double> down = v.find(EdgeKeys.DOWN);
    double byBit =
        tool.shape() instanceof ToolShape.Vee vee
            ? width / StrictMath.tan(vee.angleRad() / 2)
            : width;
    return new Work.Edge(
        new EdgeShape.Chamfer(width, down.orElse(byBit)),
        sides(v),
        tool,
        v.get(EdgeKeys.BELOW),
        v.get(JobKeys.Operation.CUT),
        v.where(),
        0);
  }

  /** A round edge; the check refuses a tool that has no radius. */
  static Work roundover(Values v, Tool tool) {
    double byBit =
        tool.shape() instanceof ToolShape.RoundOver bit ? bit.cornerMm() : tool.radiusMm();
    return new Work.Edge(
        new EdgeShape.Round(v.find(EdgeKeys.RADIUS).orElse(byBit)),
        sides(v),
        tool,
        0,
        v.get(JobKeys.Operation.CUT),
        v.where(),
        0);
  }

  private static Set<PanelSide> sides(Values v) {
    List<PanelSide> all = List.of(PanelSide.values());
    return EnumSet.copyOf(v.find(EdgeKeys.SIDES).orElse(all));
  }

  /** The same on the other one of a pair: left and right change places. */
  static Work mirrored(Work.Edge edge) {
    Set<PanelSide> sides = EnumSet.noneOf(PanelSide.class);
    for (PanelSide side : edge.sides()) {
      sides.add(
          side == PanelSide.LEFT
              ? PanelSide.RIGHT
              : side == PanelSide.RIGHT ? PanelSide.LEFT : side);
    }
    return new Work.Edge(
        edge.shape(),
        sides,
        edge.tool(),
        edge.belowMm(),
        edge.milling(),
        edge.where(),
        edge.proudMm());
  }
}
