package frieze.sheet;

import frieze.bridge.KerfLimits;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.plan.cut.Leftover;
import frieze.region.Region;
import frieze.torch.TorchPlan;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws on a panel's plan what no tool reaches and what the kerf cannot do: the area itself, and a
 * ring around it that is seen however small it is.
 */
final class UncutMarks {
  static final String COLOUR = "#7b2d8b";

  private static final double LEAST_RADIUS = 1.3;
  private static final double RING = 0.35;

  /** A place in the panel frame, and about how large it is. */
  private record Mark(Point place, double sizeMm) {}

  private final PanelFacts panel;
  private final Sheet sheet;
  private final Markup out;

  UncutMarks(PanelFacts panel, Sheet sheet, Markup out) {
    this.panel = panel;
    this.sheet = sheet;
    this.out = out;
  }

  /** How many places there are. */
  static int count(PanelFacts panel) {
    return marks(panel).size();
  }

  private static List<Mark> marks(PanelFacts panel) {
    List<Mark> marks = new ArrayList<>();
    for (Leftover leftover : panel.plan().leftovers()) {
      for (Region part : leftover.area().parts()) {
        Bounds b = part.bounds();
        marks.add(new Mark(b.centre(), Math.hypot(b.width(), b.height())));
      }
    }
    for (KerfLimits.Trouble t : panel.torch().map(TorchPlan::limits).orElse(List.of())) {
      marks.add(new Mark(t.place(), t.widthMm()));
    }
    return marks;
  }

  void draw() {
    areas();
    for (Mark mark : marks(panel)) {
      Point p = sheet.at(panel.setup().stockFromPanel().apply(mark.place()));
      double radius = Math.max(LEAST_RADIUS, mark.sizeMm() / 2 / sheet.scale());
      out.empty(
          "circle",
          "class",
          "uncut",
          "cx",
          Ink.n(p.x()),
          "cy",
          Ink.n(p.y()),
          "r",
          Ink.n(radius),
          "fill",
          "none",
          "stroke",
          COLOUR,
          "stroke-width",
          Ink.n(RING));
    }
  }

  private void areas() {
    Affine map = panel.setup().stockFromPanel().affine();
    List<Path> rings = new ArrayList<>();
    for (Leftover leftover : panel.plan().leftovers()) {
      leftover
          .area()
          .rings()
          .forEach(r -> rings.add(Path.polyline(r.points(), true).transformed(map)));
    }
    if (!rings.isEmpty()) {
      out.empty(
          "path",
          "d",
          SvgPath.data(rings),
          "transform",
          sheet.matrix(),
          "fill",
          COLOUR,
          "fill-rule",
          "evenodd");
    }
  }
}
