package frieze.plan;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.Design;
import frieze.design.Fade;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.diagnostic.SourceSpan;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.layout.Placement;
import frieze.region.FillRule;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Plain tools, motifs and setups for the tests of planning. */
public final class Bench {
  public static final SourceSpan WHERE = new SourceSpan("bench.yaml", 20, 7, 0);
  public static final Tool FLAT_6 = flat(6, 1, true);
  public static final Tool FLAT_3 = flat(3, 2, true);
  public static final Tool SIDE_ONLY_6 = flat(6, 3, false);
  static final Tool DRILL_5 =
      new Tool(
          "drill 5",
          4,
          new ToolShape.Drill(5, StrictMath.toRadians(118)),
          2,
          60,
          80,
          true,
          OptionalDouble.empty(),
          OptionalDouble.of(0.1),
          12_000,
          1_200,
          300);

  private Bench() {}

  static Tool flat(double diameterMm, int number, boolean cutsAtCentre) {
    return new Tool(
        "flat " + diameterMm + (cutsAtCentre ? "" : " side"),
        number,
        new ToolShape.Flat(diameterMm),
        2,
        25,
        30,
        cutsAtCentre,
        OptionalDouble.empty(),
        OptionalDouble.empty(),
        24_000,
        4_000,
        600);
  }

  static Machine machine(boolean byHand) {
    Machine.Axis plane = new Machine.Axis(5_000, 3_000, 200);
    Machine.Axis vertical = new Machine.Axis(2_000, 800, 100);
    Machine.Spindle spindle =
        byHand
            ? new Machine.Spindle(
                true, 10_000, 27_000, List.of(10_000.0, 12_000.0, 17_000.0, 22_000.0, 27_000.0), 2)
            : new Machine.Spindle(false, 8_000, 24_000, List.of(), 3);
    return new Machine(
        "benchtop", "short-arcs", 780, 400, 80, plane, plane, vertical, spindle, false, false, 0);
  }

  public static Setup setup() {
    return setup(Material.Kind.HARDWOOD, false, Zero.LEFT_FRONT_TOP, false);
  }

  public static Setup setup(Material.Kind kind, boolean byHand, Zero zero, boolean blank) {
    Stock stock =
        new Stock(new Material("white ash", kind), 740, 160, List.of(19.0, 19.2, 18.9), blank);
    return new Setup(machine(byHand), stock, zero, 8, 12, 5, 0.5, List.of(), List.of());
  }

  static Panel panel() {
    return new Opening(727, 133, 5).panel("front apron", 1.5, SourceSpan.NONE);
  }

  public static Path rectangle(double x, double y, double width, double height) {
    return Path.polyline(
        List.of(
            new Point(x, y),
            new Point(x + width, y),
            new Point(x + width, y + height),
            new Point(x, y + height)),
        true);
  }

  public static Motif filled(String name, Path... paths) {
    Piece piece =
        new Piece(
            "", List.of(), List.of(paths), Optional.of(FillRule.EVEN_ODD), OptionalDouble.empty());
    return motif(name, piece);
  }

  public static Motif stroked(String name, Path... paths) {
    return motif(
        name, new Piece("", List.of(), List.of(paths), Optional.empty(), OptionalDouble.of(1)));
  }

  private static Motif motif(String name, Piece piece) {
    return new Motif(name, new Artwork("own.svg", List.of(piece), "millimetres", List.of()));
  }

  static Placement at(String motif, int number, Affine map) {
    return new Placement(motif, number, new FrameMap<>(map));
  }

  public static Work.Recess recess(String motif, Tool tool, double depthMm) {
    return recess(motif, tool, depthMm, Work.Milling.CLIMB);
  }

  public static Work.Recess recess(String motif, Tool tool, double depthMm, Work.Milling milling) {
    return new Work.Recess(
        new Work.Target(motif, Optional.empty()),
        tool,
        depthMm,
        0.45 * tool.diameterMm(),
        milling,
        WHERE);
  }

  /** A groove that runs out. */
  public static Work fading(String motif, Tool tool, double depthMm, Fade fade) {
    return new Work.Groove(
        new Work.Target(motif, Optional.empty()), tool, depthMm, Optional.of(fade), WHERE);
  }

  public static Work.Groove groove(String motif, Tool tool, double depthMm) {
    return new Work.Groove(new Work.Target(motif, Optional.empty()), tool, depthMm, WHERE);
  }

  public static Design design(Motif motif, Affine map, Work... work) {
    return new Design(panel(), List.of(motif), List.of(at(motif.name(), 1, map)), List.of(work));
  }
}
