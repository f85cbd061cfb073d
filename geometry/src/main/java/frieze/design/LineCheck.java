package frieze.design;

import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Line;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.layout.LayoutCode;
import frieze.region.BoundaryDistance;
import frieze.region.Region;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Checks what is carved on border lines: clear of the panel's edge, of each other, and of all other
 * work.
 *
 * <p>Lines are looked at in steps of {@value #STEP_MM} mm.
 */
public final class LineCheck {
  private static final double STEP_MM = 0.5;

  /** Wood thinner than this between a groove and an edge, or two grooves, breaks off: common. */
  private static final double THIN_MM = 1;

  private static final int HALVINGS = 40;

  private final Design design;
  private final BorderLines lines;
  private final double flattenMm;
  private final Diagnostics found;

  private LineCheck(Design design, BorderLines lines, double flattenMm, Diagnostics found) {
    this.design = design;
    this.lines = lines;
    this.flattenMm = flattenMm;
    this.found = found;
  }

  /** Checks all work on the lines; the design holds their motif. */
  public static void check(Design design, BorderLines lines, double flattenMm, Diagnostics found) {
    LineCheck check = new LineCheck(design, lines, flattenMm, found);
    for (Work work : design.work()) {
      check.on(work);
    }
  }

  private void on(Work work) {
    if (work instanceof Work.Groove groove && isOn(groove.on())) {
      double half = halfMm(groove);
      atEdge(work, groove.on(), half);
      eachOther(work, groove.on(), half);
      crossed(work, groove.on(), half);
    } else if (work instanceof Work.VGroove vgroove && isOn(vgroove.on())) {
      area(work, vgroove.on());
    } else if (work instanceof Work.Recess recess && isOn(recess.on())) {
      area(work, recess.on());
    } else if (work instanceof Work.Cutout cutout
        && cutout.way().on().filter(this::isOn).isPresent()) {
      area(work, cutout.way().on().get());
    } else if (work instanceof Work.TorchCut torch) {
      torch.on().stream().filter(this::isOn).forEach(on -> area(work, on));
    }
  }

  private boolean isOn(Work.Target target) {
    return target.motif().equals(lines.name());
  }

  private void area(Work work, Work.Target on) {
    if (lines.widthMm() == 0) {
      found.error(
          LayoutCode.LINE_WITHOUT_WIDTH,
          work.where(),
          work.operation()
              + " works on areas, but the border lines \""
              + lines.name()
              + "\" have no width",
          "give the lines a \"width\", or use a groove");
      return;
    }
    double half = lines.widthMm() / 2;
    atEdge(work, on, half);
    eachOther(work, on, half);
    crossed(work, on, half);
  }

  /** Half of the groove's width at the top. */
  private double halfMm(Work.Groove groove) {
    if (groove.byWidth()) {
      return lines.widthMm() / 2;
    }
    ToolShape shape = groove.tool().shape();
    double low = 0;
    double high = groove.tool().radiusMm();
    if (shape.heightAtMm(high) < groove.depthMm()) {
      return high;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      boolean cuts = shape.heightAtMm(middle) < groove.depthMm();
      low = cuts ? middle : low;
      high = cuts ? high : middle;
    }
    return high;
  }

  /** The insets of the lines that a target means. */
  private List<Double> insets(Work.Target on) {
    List<Double> insets = new ArrayList<>();
    for (int i = 0; i < lines.insetsMm().size(); i++) {
      if (on.pick().isEmpty() || on.pick().get().equals(String.valueOf(i + 1))) {
        insets.add(lines.insetsMm().get(i));
      }
    }
    return insets;
  }

  private void atEdge(Work work, Work.Target on, double halfMm) {
    for (double inset : insets(on)) {
      double left = inset - halfMm;
      if (left < 0) {
        found.error(
            LayoutCode.LINE_OFF_EDGE,
            work.where(),
            wide(work, halfMm)
                + " on a border line "
                + Amounts.length(inset)
                + " inside the outline runs "
                + Amounts.length(-left)
                + " over the panel's edge",
            "make the inset more than half of that width, or the groove narrower");
      } else if (left < THIN_MM) {
        found.warning(
            LayoutCode.LINE_OFF_EDGE,
            work.where(),
            wide(work, halfMm)
                + " on a border line "
                + Amounts.length(inset)
                + " inside the outline leaves only "
                + Amounts.length(left)
                + " of wood at the panel's edge",
            "make the inset larger, or the groove narrower");
      }
    }
  }

  private static String wide(Work work, double halfMm) {
    return "a " + work.operation() + " " + Amounts.length(2 * halfMm) + " wide";
  }

  private void eachOther(Work work, Work.Target on, double halfMm) {
    List<Double> insets = insets(on).stream().sorted().toList();
    for (int i = 1; i < insets.size(); i++) {
      double left = insets.get(i) - insets.get(i - 1) - 2 * halfMm;
      if (left < THIN_MM) {
        found.warning(
            LayoutCode.LINES_OVERLAP,
            work.where(),
            wide(work, halfMm)
                + " on border lines "
                + Amounts.length(insets.get(i) - insets.get(i - 1))
                + " apart "
                + (left > 0
                    ? "leaves only " + Amounts.length(left) + " of wood between them"
                    : "leaves no wood between them"),
            "move the lines apart");
      }
    }
  }

  /** Warns of each other work that reaches into the lines' grooves, with the first place. */
  private void crossed(Work work, Work.Target on, double halfMm) {
    List<Point> along = new ArrayList<>();
    for (Path line : linesOf(on)) {
      along.addAll(steps(Flattener.flatten(line, flattenMm), line.closed()));
    }
    for (Work other : design.work()) {
      if (!isOnLines(other)) {
        Map<String, Point> met = new LinkedHashMap<>();
        for (Intent intent : intents(other)) {
          Near near = intent.accept(new Reach(flattenMm));
          along.stream()
              .filter(p -> near.bounds().grown(halfMm).contains(p))
              .filter(p -> near.law().outsideMm(p) < halfMm)
              .findFirst()
              .ifPresent(p -> met.putIfAbsent(intent.name(), p));
        }
        if (!met.isEmpty()) {
          warn(work, met);
        }
      }
    }
  }

  private void warn(Work work, Map<String, Point> met) {
    Map.Entry<String, Point> first = met.entrySet().iterator().next();
    found.warning(
        LayoutCode.LINE_CROSSED,
        work.where(),
        "the "
            + work.operation()
            + " on the border lines \""
            + lines.name()
            + "\" is crossed by "
            + first.getKey()
            + " at "
            + Amounts.place(first.getValue().x(), first.getValue().y())
            + (met.size() > 1 ? " and by " + (met.size() - 1) + " more like it" : ""),
        "move the lines or what crosses them, if this is not meant");
  }

  private List<Path> linesOf(Work.Target on) {
    return Selection.lines(design.motif(lines.name()), on);
  }

  private boolean isOnLines(Work work) {
    return (work instanceof Work.Groove g && isOn(g.on()))
        || (work instanceof Work.VGroove v && isOn(v.on()))
        || (work instanceof Work.Recess r && isOn(r.on()))
        || (work instanceof Work.Cutout c && c.way().on().map(this::isOn).orElse(true));
  }

  private List<Intent> intents(Work work) {
    Design one = new Design(design.panel(), design.motifs(), design.placements(), List.of(work));
    return Intents.of(one, flattenMm);
  }

  private static List<Point> steps(List<Point> line, boolean closed) {
    List<Point> places = new ArrayList<>();
    int count = closed ? line.size() : line.size() - 1;
    for (int i = 0; i < count; i++) {
      Point from = line.get(i);
      Point to = line.get((i + 1) % line.size());
      int parts = (int) Math.max(1, Math.ceil(from.distance(to) / STEP_MM));
      for (int k = 0; k < parts; k++) {
        places.add(from.towards(to, (double) k / parts));
      }
    }
    return places;
  }

  /** How far places lie outside of an intent. */
  private record Near(Bounds bounds, Law law) {}

  /** How far a place lies outside; below 0 inside. */
  @FunctionalInterface
  private interface Law {
    double outsideMm(Point place);
  }

  private record Reach(double flattenMm) implements Intent.Visitor<Near> {
    @Override
    public Near recess(Intent.Recess recess) {
      return area(recess.region());
    }

    @Override
    public Near vrecess(Intent.VRecess vrecess) {
      return area(vrecess.region());
    }

    @Override
    public Near through(Intent.Through through) {
      return area(through.part());
    }

    @Override
    public Near hole(Intent.Hole hole) {
      double radius = hole.diameterMm() / 2;
      return new Near(
          Bounds.of(hole.centre()).grown(radius), p -> p.distance(hole.centre()) - radius);
    }

    @Override
    public Near edge(Intent.Edge edge) {
      Near lines = lines(edge.runs());
      return new Near(
          lines.bounds().grown(edge.shape().widthMm()),
          p -> lines.law().outsideMm(p) - edge.shape().widthMm());
    }

    @Override
    public Near groove(Intent.Groove groove) {
      Near lines = lines(groove.lines());
      double radius = groove.tool().radiusMm();
      return new Near(lines.bounds().grown(radius), p -> lines.law().outsideMm(p) - radius);
    }

    @Override
    public Near insetGroove(Intent.InsetGroove groove) {
      BoundaryDistance distance = BoundaryDistance.of(groove.part());
      double radius = groove.tool().radiusMm();
      return new Near(
          groove.part().bounds(), p -> Math.abs(distance.signed(p) - groove.insetMm()) - radius);
    }

    private Near lines(List<Path> paths) {
      List<Line> pieces = new ArrayList<>();
      Bounds bounds = Bounds.EMPTY;
      for (Path path : paths) {
        List<Point> points = Flattener.flatten(path, flattenMm);
        for (int i = 1; i < points.size(); i++) {
          pieces.add(new Line(points.get(i - 1), points.get(i)));
        }
        if (path.closed()) {
          pieces.add(new Line(points.get(points.size() - 1), points.get(0)));
        }
        bounds = bounds.with(path.bounds());
      }
      double far = Double.POSITIVE_INFINITY;
      return new Near(
          bounds, p -> pieces.stream().mapToDouble(l -> l.distance(p)).min().orElse(far));
    }

    private static Near area(Region region) {
      if (region.isEmpty()) {
        return new Near(Bounds.EMPTY, p -> Double.POSITIVE_INFINITY);
      }
      BoundaryDistance distance = BoundaryDistance.of(region);
      return new Near(region.bounds(), p -> -distance.signed(p));
    }
  }
}
