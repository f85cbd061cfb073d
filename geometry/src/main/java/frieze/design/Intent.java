package frieze.design;

import frieze.curve.Path;
import frieze.curve.Point;
import frieze.region.Region;
import frieze.shop.Tool;
import java.util.List;

/**
 * A change to the stock that is wanted, in the panel frame; depths below the stock's top, in
 * millimetres. All regions come from the artwork's exact boundary.
 */
public sealed interface Intent {
  /** What a person would call it, such as {@code recess ginkgo 3}. */
  String name();

  <R> R accept(Visitor<R> visitor);

  /** One case for each kind of intent. */
  interface Visitor<R> {
    R recess(Recess recess);

    R groove(Groove groove);

    R through(Through through);

    R hole(Hole hole);
  }

  /** An area at one depth. */
  record Recess(String name, Region region, double depthMm, Tool tool) implements Intent {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.recess(this);
    }
  }

  /** What a tool leaves whose tip runs along lines at one depth. */
  record Groove(String name, List<Path> lines, double depthMm, Tool tool) implements Intent {
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
   */
  record Through(String name, Region part, Tool tool, Work.Side side, double slotMm, double skinMm)
      implements Intent {
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
   * @param depthMm the depth of its full diameter; positive infinity for a through hole
   */
  record Hole(String name, Point centre, double diameterMm, double depthMm, Tool tool)
      implements Intent {
    @Override
    public <R> R accept(Visitor<R> visitor) {
      return visitor.hole(this);
    }
  }
}
