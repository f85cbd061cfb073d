package frieze.design;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.Region;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;

/**
 * A change to the stock that is wanted, in the panel frame; depths below the finished face, in
 * millimetres. All regions come from the artwork's exact boundary.
 */
public sealed interface Intent {
  /** What a person would call it, such as {@code recess ginkgo 3}. */
  String name();

  <R> R accept(Visitor<R> visitor);

  /** One case for each kind of intent. */
  interface Visitor<R> {
    R recess(Recess recess);

    R vrecess(VRecess vrecess);

    R groove(Groove groove);

    R through(Through through);

    R hole(Hole hole);

    R edge(Edge edge);

    R insetGroove(InsetGroove groove);
  }

  /**
   * An area at one depth.
   *
   * @param asCut whether its walls stay as they are cut, whatever finishing takes off others
   */
  record Recess(String name, Region region, double depthMm, Tool tool, boolean asCut)
      implements Intent {
    /** An area whose walls are finished like the panel. */
    public Recess(String name, Region region, double depthMm, Tool tool) {
      this(name, region, depthMm, tool, false);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.recess(this);
    }
  }

  /**
   * An area whose walls slope from its outline, as a V-bit makes them, down to where they meet or
   * to a flat floor.
   *
   * @param floorMm the deepest that is wanted
   * @param tool the V-bit
   * @param floorTools the tools of which one clears the floor; elsewhere ridges may stay
   * @param ridgeMm how high those ridges may be
   */
  record VRecess(
      String name, Region region, double floorMm, Tool tool, List<Tool> floorTools, double ridgeMm)
      implements Intent {
    public VRecess {
      floorTools = List.copyOf(floorTools);
    }

    /** The depth that is wanted at a distance from the outline, inside, by a sharp bit. */
    public double depthMm(double fromOutlineMm) {
      ToolShape.Vee vee = (ToolShape.Vee) tool.shape();
      double sloping = fromOutlineMm / StrictMath.tan(vee.angleRad() / 2);
      return Math.max(0, Math.min(floorMm, sloping));
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.vrecess(this);
    }
  }

  /**
   * What a tool leaves whose tip runs along lines at one depth, or between two that are near.
   *
   * @param leastMm how deep it runs at least
   * @param depthMm how deep it runs at most
   */
  record Groove(String name, List<Path> lines, double leastMm, double depthMm, Tool tool)
      implements Intent {
    /** A groove of one depth. */
    public Groove(String name, List<Path> lines, double depthMm, Tool tool) {
      this(name, lines, depthMm, depthMm, tool);
    }

    public Groove {
      lines = List.copyOf(lines);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.groove(this);
    }
  }

  /**
   * A slot cut along the outline of a part or of an opening.
   *
   * @param part what the outline encloses
   * @param side where the slot lies: outside, so that the part stays as it is; inside, so that all
   *     around it does; or half on either side
   * @param slotMm how wide it may be
   * @param skinMm what stays at the stock's bottom; 0 to go through
   * @param asCut whether its wall stays as it is cut, whatever finishing takes off others
   */
  record Through(
      String name,
      Region part,
      Tool tool,
      Work.Side side,
      double slotMm,
      double skinMm,
      boolean asCut)
      implements Intent {
    /** A slot along a wall that is finished like the panel. */
    public Through(
        String name, Region part, Tool tool, Work.Side side, double slotMm, double skinMm) {
      this(name, part, tool, side, slotMm, skinMm, false);
    }

    /** A part freed from the stock by a slot of the tool's width around it. */
    public Through(String name, Region part, Tool tool) {
      this(name, part, tool, Work.Side.OUTSIDE, tool.diameterMm(), 0);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.through(this);
    }
  }

  /**
   * A round hole.
   *
   * @param depthMm the depth of its full diameter; positive infinity for a through hole; more than
   *     the stock's thickness for one that goes on so far into the board below
   */
  record Hole(String name, Point centre, double diameterMm, double depthMm, Tool tool)
      implements Intent {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.hole(this);
    }
  }

  /**
   * The corner between the face and the edge of a part taken off along some of its outline.
   *
   * @param part what the outline encloses
   * @param runs the stretches of the outline that are worked: polylines, or the outline itself
   * @param passing the same with what the tool may go on straight beyond their ends
   * @param tipMm how deep the tool may go beside the part
   * @param axisMm how far outside the outline its axis may come
   */
  record Edge(
      String name,
      Region part,
      List<Path> runs,
      List<Path> passing,
      EdgeShape shape,
      Tool tool,
      double tipMm,
      double axisMm)
      implements Intent {
    public Edge {
      runs = List.copyOf(runs);
      passing = List.copyOf(passing);
    }

    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.edge(this);
    }
  }

  /**
   * What a tool leaves whose tip runs all round at a distance inside an outline.
   *
   * @param part what the outline encloses
   */
  record InsetGroove(String name, Region part, double insetMm, double depthMm, Tool tool)
      implements Intent {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.insetGroove(this);
    }
  }
}
