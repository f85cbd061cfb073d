package frieze.sheet;

import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.Selection;
import frieze.design.Work;
import frieze.layout.Placement;
import frieze.shop.KeepOut;
import frieze.shop.Setup;
import frieze.torch.TorchPath;
import frieze.torch.TorchPlan;
import java.util.ArrayList;
import java.util.List;

/** Draws a panel on its stock, seen from above: outlines, areas, lines, holes, tabs, clamps. */
final class PlanView implements Work.Visitor<Void> {
  private static final double TAB_LONG = 3.4;
  static final String GROOVE = "#2c2417";

  /** Grooves are drawn as lines, whatever width their tool gives them. */
  private static final double GROOVE_MM = 0.3;

  /** As thin as the lines of dimensions. */
  private static final double EDGE_MM = 0.18;

  private static final double HATCH = 1.6;
  private static final double TOUCH_REACH = 3.4;
  private static final double TOUCH_LETTER = 2.5;

  private final PanelFacts panel;
  private final Sheet sheet;
  private final Markup out;
  private final Ink ink;
  private final Depths depths;
  private final String idPrefix;
  private int shapes;

  /**
   * Prepares a view.
   *
   * @param idPrefix makes ids unique when several drawings share a page
   */
  PlanView(PanelFacts panel, Sheet sheet, Markup out, String idPrefix) {
    this.panel = panel;
    this.sheet = sheet;
    this.out = out;
    this.ink = new Ink(out);
    this.depths = new Depths(panel.design().work());
    this.idPrefix = idPrefix;
  }

  void draw() {
    stock();
    for (Work work : panel.design().work()) {
      if (isArea(work)) {
        work.accept(this);
      }
    }
    for (Work work : panel.design().work()) {
      if (!isArea(work)) {
        work.accept(this);
      }
    }
    outline();
    tabs();
    new UncutMarks(panel, sheet, out).draw();
    clamps();
    panel.part().ifPresent(part -> new StepMarks(part, panel, sheet, out).draw());
    touchSpots();
    zero();
  }

  /** Where Z is found again on top of the stock, after a change of tools or to go on. */
  private void touchSpots() {
    for (Point spot : panel.programs().stream().flatMap(p -> p.touchSpots().stream()).toList()) {
      Point p = sheet.at(setup().stockFromProgram().apply(spot));
      ink.zeroMark(p.x(), p.y());
      ink.centre(p.x(), p.y(), TOUCH_REACH);
      ink.text(p.x() + TOUCH_REACH, p.y() - 1, "Z", "start", TOUCH_LETTER);
    }
  }

  private Setup setup() {
    return panel.setup();
  }

  private Design design() {
    return panel.design();
  }

  private Point onPaper(Point onPanel) {
    return sheet.at(setup().stockFromPanel().apply(onPanel));
  }

  private void stock() {
    double w = setup().stock().lengthMm() / sheet.scale();
    double h = setup().stock().widthMm() / sheet.scale();
    out.empty(
        "rect",
        "x",
        Ink.n(sheet.left()),
        "y",
        Ink.n(sheet.top()),
        "width",
        Ink.n(w),
        "height",
        Ink.n(h),
        "fill",
        "#faf7f1",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        Ink.NARROW,
        "stroke-dasharray",
        setup().stock().blank() ? "none" : Ink.BEFORE_FORMING);
  }

  private void outline() {
    Path placed = setup().stockFromPanel().apply(design().panel().outline());
    out.empty(
        "path",
        "d",
        SvgPath.data(List.of(placed)),
        "transform",
        sheet.matrix(),
        "fill",
        "none",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        Ink.n(0.5 * sheet.scale()));
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only draws
  public Void recess(Work.Recess recess) {
    area(recess.on(), recess.depthMm());
    return null;
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only draws
  public Void vgroove(Work.VGroove vgroove) {
    area(vgroove.on(), vgroove.deepestMm().orElse(vgroove.floorMm()));
    return null;
  }

  private static boolean isArea(Work work) {
    return work instanceof Work.Recess || work instanceof Work.VGroove;
  }

  private void area(Work.Target on, double depthMm) {
    design().shapesOf(on.motif()).values().forEach(alike -> area(on, alike, depthMm));
  }

  private void area(Work.Target on, List<Placement> alike, double depthMm) {
    List<Path> paths = new ArrayList<>();
    boolean evenOdd = false;
    for (Piece piece : picked(design().motifAt(alike.get(0)), on)) {
      if (piece.fill().isPresent()) {
        paths.addAll(piece.paths());
        evenOdd |= piece.fill().get() == frieze.region.FillRule.EVEN_ODD;
      }
    }
    place(
        alike,
        paths,
        "fill",
        depths.tint(depthMm),
        "fill-rule",
        evenOdd ? "evenodd" : "nonzero",
        "stroke",
        Ink.BLACK,
        "stroke-width",
        Ink.n(0.25 * sheet.scale()));
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only draws
  public Void groove(Work.Groove groove) {
    for (List<Placement> alike : design().shapesOf(groove.on().motif()).values()) {
      lines(alike, Selection.lines(design().motifAt(alike.get(0)), groove.on()));
    }
    return null;
  }

  private void lines(List<Placement> alike, List<Path> lines) {
    place(
        alike,
        lines,
        "fill",
        "none",
        "stroke",
        GROOVE,
        "stroke-width",
        Ink.n(GROOVE_MM * sheet.scale()),
        "stroke-linecap",
        "round");
  }

  private static List<Piece> picked(Motif motif, Work.Target target) {
    return motif.artwork().pieces().stream().filter(p -> Selection.isPicked(p, target)).toList();
  }

  /** Draws one shape at all its placements, by reference. */
  private void place(List<Placement> alike, List<Path> paths, String... look) {
    if (paths.isEmpty()) {
      return;
    }
    String id = idPrefix + "s" + shapes++;
    String[] all = new String[look.length + 4];
    all[0] = "id";
    all[1] = id;
    all[2] = "d";
    all[3] = SvgPath.data(paths);
    System.arraycopy(look, 0, all, 4, look.length);
    out.open("defs").empty("path", all).close();
    out.open("g", "transform", sheet.matrix());
    for (Placement placement : alike) {
      Affine map = placement.map().then(setup().stockFromPanel()).affine();
      out.empty("use", "href", "#" + id, "transform", matrix(map));
    }
    out.close();
  }

  private static String matrix(Affine m) {
    double[] values = {m.a(), m.b(), m.c(), m.d(), m.e(), m.f()};
    StringBuilder text = new StringBuilder("matrix(");
    for (int i = 0; i < values.length; i++) {
      text.append(i == 0 ? "" : " ").append(Measures.decimals(values[i], i < 4 ? 6 : 3));
    }
    return text.append(')').toString();
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only draws
  public Void cutout(Work.Cutout cutout) {
    return null;
  }

  @Override
  @SuppressWarnings("NullAway") // a visit that only draws
  public Void bore(Work.Bore bore) {
    String width = Ink.n(0.25 * sheet.scale());
    for (Point centre : bore.centres()) {
      List<Path> edges = new ArrayList<>();
      bore.way().countersink().ifPresent(c -> edges.add(Path.circle(centre, c.diameterMm() / 2)));
      edges.add(bore.edge(centre));
      for (Path edge : edges) {
        shape(List.of(setup().stockFromPanel().apply(edge)), "#fff", width, Ink.BLACK);
      }
      Point p = onPaper(centre);
      ink.centre(p.x(), p.y(), Math.max(bore.reachMm() / sheet.scale() + 1.2, 2));
    }
    return null;
  }

  /** A thin line where the face ends. */
  @Override
  @SuppressWarnings("NullAway") // a visit that only draws
  public Void edge(Work.Edge edge) {
    Affine map = setup().stockFromPanel().affine();
    List<Path> lines =
        EdgeLine.of(design().panel(), edge).stream().map(p -> p.transformed(map)).toList();
    shape(lines, "none", Ink.n(EDGE_MM * sheet.scale()), Ink.BLACK);
    return null;
  }

  /** What stays, and where the torch goes: thin, with a dot at each pierce. */
  @Override
  @SuppressWarnings("NullAway") // a visit that only draws
  public Void torchCut(Work.TorchCut torchCut) {
    panel.torch().ifPresent(this::torch);
    return null;
  }

  private void torch(TorchPlan plan) {
    Affine map = setup().stockFromPanel().affine();
    List<Path> parts = new ArrayList<>();
    plan.parts().stream()
        .flatMap(r -> r.rings().stream())
        .forEach(ring -> parts.add(Path.polyline(ring.points(), true).transformed(map)));
    shape(parts, "#c9d1d6", Ink.n(0.35 * sheet.scale()), Ink.BLACK);
    List<Path> ways = new ArrayList<>();
    for (TorchPath path : plan.paths()) {
      List<frieze.curve.Segment> pieces = path.pieces().stream().map(p -> p.path()).toList();
      if (!pieces.isEmpty()) {
        ways.add(new Path(pieces, false).transformed(map));
      }
    }
    shape(ways, "none", Ink.n(0.15 * sheet.scale()), "#b3261e");
    for (TorchPath path : plan.paths()) {
      Point p = onPaper(path.pierce());
      out.empty("circle", "cx", Ink.n(p.x()), "cy", Ink.n(p.y()), "r", "0.45", "fill", "#b3261e");
    }
  }

  private void shape(List<Path> paths, String fill, String width, String stroke) {
    out.empty(
        "path",
        "d",
        SvgPath.data(paths),
        "transform",
        sheet.matrix(),
        "fill",
        fill,
        "fill-rule",
        "evenodd",
        "stroke",
        stroke,
        "stroke-width",
        width);
  }

  private void tabs() {
    for (TabMarks.Mark mark : TabMarks.of(panel.plan().cuts())) {
      Point p = onPaper(mark.middle());
      double half = TAB_LONG / 2;
      double dx = mark.direction().x() * half;
      double dy = -mark.direction().y() * half;
      out.empty(
          "line",
          "x1",
          Ink.n(p.x() - dx),
          "y1",
          Ink.n(p.y() - dy),
          "x2",
          Ink.n(p.x() + dx),
          "y2",
          Ink.n(p.y() + dy),
          "stroke",
          Ink.BLACK,
          "stroke-width",
          "1.7");
    }
  }

  private void clamps() {
    for (KeepOut k : setup().keepOuts()) {
      double x = sheet.x(k.minXMm());
      double y = sheet.y(k.maxYMm());
      double w = (k.maxXMm() - k.minXMm()) / sheet.scale();
      double h = (k.maxYMm() - k.minYMm()) / sheet.scale();
      out.empty(
          "rect",
          "x",
          Ink.n(x),
          "y",
          Ink.n(y),
          "width",
          Ink.n(w),
          "height",
          Ink.n(h),
          "fill",
          "#fff",
          "stroke",
          Ink.BLACK,
          "stroke-width",
          Ink.NARROW);
      hatch(x, y, w, h);
    }
  }

  /** Narrow lines at 45 degrees. */
  private void hatch(double x, double y, double w, double h) {
    StringBuilder d = new StringBuilder();
    for (double s = HATCH; s < w + h; s += HATCH) {
      double x1 = x + Math.max(0, s - h);
      double y1 = y + Math.min(h, s);
      double x2 = x + Math.min(w, s);
      double y2 = y + Math.max(0, s - w);
      d.append('M').append(Ink.n(x1)).append(' ').append(Ink.n(y1));
      d.append('L').append(Ink.n(x2)).append(' ').append(Ink.n(y2));
    }
    out.empty(
        "path", "d", d.toString(), "stroke", Ink.BLACK, "stroke-width", "0.18", "fill", "none");
  }

  private void zero() {
    Point p = sheet.at(setup().stockFromProgram().apply(Point.ORIGIN));
    ink.zero(p.x(), p.y());
  }
}
