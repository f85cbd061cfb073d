package frieze.design;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Torch;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;

/** One line of the work list of a panel. Depths are below the stock's top, in millimetres. */
public sealed interface Work {
  /** The operation's name in a job, such as {@code recess}. */
  String operation();

  Tool tool();

  /** All tools that may be used, the tool itself first. */
  default List<Tool> tools() {
    return List.of(tool());
  }

  /** Where the job asks for it. */
  SourceSpan where();

  <R> R accept(Visitor<R> visitor);

  /** One case for each operation. */
  interface Visitor<R> {
    R groove(Groove groove);

    R vgroove(VGroove vgroove);

    R recess(Recess recess);

    R cutout(Cutout cutout);

    R bore(Bore bore);

    R edge(Edge edge);

    R torchCut(TorchCut torchCut);
  }

  /** The sense of travel along the material, for a spindle that turns clockwise. */
  enum Milling {
    CLIMB,
    CONVENTIONAL
  }

  /**
   * What an operation works on.
   *
   * @param motif the name of the motif, on all its placements
   * @param pick an id or a class of some of its pieces; empty for all that suit the operation
   */
  record Target(String motif, Optional<String> pick) {}

  /**
   * The tool's axis follows lines: strokes where there are some, else outlines.
   *
   * @param depthMm how deep, or how deep at most if by width
   * @param fade how the depth changes towards the ends of open lines; not if by width
   * @param byWidth whether each line is as deep as makes its groove as wide as it is drawn
   * @param proudMm how much of the depth is above the face on which lines are as wide as drawn
   */
  record Groove(
      Target on,
      Tool tool,
      double depthMm,
      Optional<Fade> fade,
      boolean byWidth,
      SourceSpan where,
      double proudMm)
      implements Work {
    /** A groove from the stock's top. */
    public Groove(
        Target on,
        Tool tool,
        double depthMm,
        Optional<Fade> fade,
        boolean byWidth,
        SourceSpan where) {
      this(on, tool, depthMm, fade, byWidth, where, 0);
    }

    public Groove {
      if (byWidth && fade.isPresent()) {
        throw new IllegalArgumentException("fade must be empty by width");
      }
    }

    /** A groove whose depth does not depend on how wide lines are drawn. */
    public Groove(Target on, Tool tool, double depthMm, Optional<Fade> fade, SourceSpan where) {
      this(on, tool, depthMm, fade, false, where);
    }

    /**
     * The depth of a line; 0 if it is by width and the line no wider than the tool's tip.
     *
     * @param drawnMm how wide the line is drawn, at the size in which it is placed
     */
    public double depthMm(double drawnMm) {
      double radius = Math.min(drawnMm / 2, tool.radiusMm());
      double below = tool.shape().heightAtMm(radius);
      if (!byWidth || below <= 0) {
        return byWidth ? 0 : depthMm;
      }
      return Math.min(depthMm, below + proudMm);
    }

    /** A groove of one depth. */
    public Groove(Target on, Tool tool, double depthMm, SourceSpan where) {
      this(on, tool, depthMm, Optional.empty(), where);
    }

    @Override
    public String operation() {
      return "groove";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.groove(this);
    }
  }

  /**
   * Areas cut down to a floor.
   *
   * @param stepoverMm the distance between neighbouring passes
   */
  record Recess(
      Target on,
      Tool tool,
      double depthMm,
      double stepoverMm,
      Milling milling,
      RecessWay way,
      SourceSpan where)
      implements Work {
    /** An area cleared in rings, at once to its size. */
    public Recess(
        Target on,
        Tool tool,
        double depthMm,
        double stepoverMm,
        Milling milling,
        SourceSpan where) {
      this(on, tool, depthMm, stepoverMm, milling, RecessWay.PLAIN, where);
    }

    @Override
    public String operation() {
      return "recess";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.recess(this);
    }
  }

  /**
   * Areas carved with a V-bit, as deep as they are wide, so that the walls meet the outline.
   *
   * @param deepestMm where the area is wider, a flat floor at this depth; empty for as deep as the
   *     bit can
   * @param floorTools flat tools, one of which clears the floor first; none leaves it to the V-bit
   * @param ridgeMm the most that ridges may stand above the part of the floor that the V-bit takes
   * @param lastPassMm what the last pass takes, where there are several
   */
  record VGroove(
      Target on,
      Tool tool,
      OptionalDouble deepestMm,
      List<Tool> floorTools,
      double ridgeMm,
      double lastPassMm,
      Milling milling,
      SourceSpan where)
      implements Work {
    public VGroove {
      floorTools = List.copyOf(floorTools);
    }

    @Override
    public String operation() {
      return "vgroove";
    }

    @Override
    public List<Tool> tools() {
      return Stream.concat(Stream.of(tool), floorTools.stream()).distinct().toList();
    }

    /** The depth beyond which the floor is flat: as asked, or as deep as the bit can. */
    public double floorMm() {
      return Math.min(deepestMm.orElse(Double.MAX_VALUE), bitReachMm());
    }

    /** How deep the bit can go with its walls still cutting at the top. */
    public double bitReachMm() {
      return Math.min(tool.fluteLengthMm(), tool.shape().heightAtMm(tool.radiusMm()));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.vgroove(this);
    }
  }

  /** Outlines cut through: the panel's own, or those of a drawing's areas. */
  record Cutout(Tool tool, Optional<Tabs> tabs, Milling milling, CutoutWay way, SourceSpan where)
      implements Work {
    /** The panel's outline cut through, on the outside, at once to its size. */
    public Cutout(Tool tool, Optional<Tabs> tabs, Milling milling, SourceSpan where) {
      this(tool, tabs, milling, CutoutWay.PLAIN, where);
    }

    @Override
    public String operation() {
      return "cutout";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.cutout(this);
    }
  }

  /** On which side of a line the tool runs. */
  enum Side {
    /** What the line encloses is kept. */
    OUTSIDE,
    /** What the line encloses falls out. */
    INSIDE,
    /** The tool's axis follows the line. */
    ON_LINE
  }

  /**
   * Holes.
   *
   * @param centres in the panel frame
   * @param diameterMm of the holes, or the width of slots
   * @param depthMm empty for through holes
   */
  record Bore(
      List<Point> centres,
      double diameterMm,
      Optional<Double> depthMm,
      Tool tool,
      BoreWay way,
      SourceSpan where)
      implements Work {
    /** Plain round holes. */
    public Bore(
        List<Point> centres,
        double diameterMm,
        Optional<Double> depthMm,
        Tool tool,
        SourceSpan where) {
      this(centres, diameterMm, depthMm, tool, BoreWay.PLAIN, where);
    }

    public Bore {
      centres = List.copyOf(centres);
    }

    /** The edge of the hole or slot at one of the centres, without its countersink. */
    public Path edge(Point centre) {
      return way.slot()
          .map(slot -> slot.around(centre, diameterMm, diameterMm / 2))
          .orElseGet(() -> Path.circle(centre, diameterMm / 2));
    }

    /** How far a hole reaches from its centre, with its countersink. */
    public double reachMm() {
      double hole = Math.max(diameterMm, way.slot().map(BoreWay.Slot::lengthMm).orElse(0.0)) / 2;
      return Math.max(hole, way.countersink().map(c -> c.diameterMm() / 2).orElse(0.0));
    }

    /** The same in the other one of a pair, mirrored left to right. */
    public Bore mirrored(double lengthMm) {
      return new Bore(
          centres.stream().map(c -> new Point(lengthMm - c.x(), c.y())).toList(),
          diameterMm,
          depthMm,
          tool,
          way.mirrored(),
          where);
    }

    @Override
    public String operation() {
      return "bore";
    }

    @Override
    public List<Tool> tools() {
      Stream<Tool> sink = way.countersink().map(BoreWay.Countersink::tool).stream();
      return Stream.concat(Stream.of(tool), Stream.concat(sink, way.mills().stream()))
          .distinct()
          .toList();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.bore(this);
    }
  }

  /**
   * The corner between the panel's face and its edge taken off.
   *
   * @param sides those that are worked
   * @param belowMm how far the tool's tip runs below what is taken off, beside the panel
   * @param proudMm how much of the depth is above the finished face
   */
  record Edge(
      EdgeShape shape,
      Set<PanelSide> sides,
      Tool tool,
      double belowMm,
      Milling milling,
      SourceSpan where,
      double proudMm)
      implements Work {
    public Edge {
      sides = Set.copyOf(sides);
    }

    /** Whether it is all round the panel. */
    public boolean allRound() {
      return sides.size() == PanelSide.values().length;
    }

    /** How deep the tip runs below the stock's top. */
    public double tipDepthMm() {
      return shape.downMm() + belowMm + proudMm;
    }

    /** How far outside the panel's edge the tool's axis runs: the tip, wider by what is below. */
    public double axisMm() {
      return tool.shape() instanceof ToolShape.Vee vee
          ? vee.tipMm() / 2 + belowMm * vee.widensBy() / 2
          : tool.shape() instanceof ToolShape.RoundOver round ? round.tipMm() / 2 : tool.radiusMm();
    }

    @Override
    public String operation() {
      return shape instanceof EdgeShape.Chamfer ? "chamfer" : "roundover";
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.edge(this);
    }
  }

  /**
   * A panel and its openings cut out of sheet by a torch.
   *
   * @param on the drawings whose areas are openings; none for the outline alone
   */
  record TorchCut(List<Target> on, Torch torch, TorchWay way, SourceSpan where) implements Work {
    public TorchCut {
      on = List.copyOf(on);
    }

    @Override
    public String operation() {
      return "torchcut";
    }

    /** The arc as a tool as wide as the kerf. */
    @Override
    public Tool tool() {
      return torch.asTool();
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.torchCut(this);
    }
  }
}
