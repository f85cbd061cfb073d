package frieze.sheet;

import frieze.design.EdgeShape;
import frieze.design.PanelSide;
import frieze.design.Work;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Says how the edges of a panel are worked, and what must not be where the bit runs. */
final class EdgeItems {
  private final Measures measures;

  EdgeItems(Measures measures) {
    this.measures = measures;
  }

  /** For each edge one sentence or two. */
  List<String> items(List<Work> work, Setup setup) {
    List<String> items = new ArrayList<>();
    for (Work each : work) {
      if (each instanceof Work.Edge edge) {
        items.add(setup.stock().blank() ? onBlank(edge, setup) : inWaste(edge, setup));
      }
    }
    return items;
  }

  /** Such as {@code chamfer 1/8 wide}. */
  String name(Work.Edge edge) {
    return edge.shape() instanceof EdgeShape.Chamfer chamfer
        ? "chamfer "
            + measures.one(chamfer.widthMm())
            + " wide"
            + (Math.abs(chamfer.downMm() - chamfer.widthMm()) > LEGS_ALIKE_MM
                ? ", " + measures.about(chamfer.downMm()) + " down"
                : "")
        : "round of radius " + measures.one(edge.shape().widthMm());
  }

  private static final double LEGS_ALIKE_MM = 0.02;

  private String inWaste(Work.Edge edge, Setup setup) {
    return PanelPage.sentence(name(edge))
        + sides(edge)
        + " with "
        + edge.tool().name()
        + ", before the panel is cut free: the waste around it holds it. The tip runs "
        + measures.about(tipMm(edge, setup))
        + " below the top beside the panel: no screw in the waste within "
        + measures.about(edge.axisMm() + edge.tool().radiusMm())
        + " of it.";
  }

  private String onBlank(Work.Edge edge, Setup setup) {
    double out = 2 * edge.tool().radiusMm();
    return PanelPage.sentence(name(edge))
        + sides(edge)
        + " with "
        + edge.tool().name()
        + ": THE BIT RUNS OUTSIDE OF THE BOARD, up to "
        + measures.about(out)
        + " from its edge and "
        + measures.about(tipMm(edge, setup))
        + " below its top. No clamp, stop or screw there; hold the board from below.";
  }

  private static double tipMm(Work.Edge edge, Setup setup) {
    return edge.tipDepthMm() + setup.allowance().faceMm();
  }

  private static String sides(Work.Edge edge) {
    return edge.allRound()
        ? " all round"
        : " along the "
            + edge.sides().stream()
                .sorted()
                .map(PanelSide::name)
                .map(n -> n.toLowerCase(Locale.ROOT))
                .collect(Collectors.joining(" and the "));
  }
}
