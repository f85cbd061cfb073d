package frieze.plan.recess;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.plan.cut.Block;
import frieze.plan.cut.RimUse;
import frieze.region.Region;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * The cuts of a recess at one of its places.
 *
 * <p>They are made once, and once more for mirrored places, where the tool goes round the other
 * way; each place only moves them.
 */
public final class RecessCuts {
  private static final Affine MIRROR = Affine.scaling(-1, 1);

  private final RecessGeometry.Result result;
  private final Function<RecessGeometry.Part, Made> maker;
  private final Map<Boolean, List<Made>> made;
  private final Affine map;

  /**
   * The cuts of one part of an area.
   *
   * @param block empty if nothing can be cut
   * @param noRoom places that are not cut because the tool can't get down there
   * @param rim how much of the tool's rim they engage
   */
  public record Made(Optional<Block> block, List<Point> noRoom, RimUse.Tally rim) {
    public Made {
      noRoom = List.copyOf(noRoom);
    }

    private Made moved(String name, Affine rigid) {
      return new Made(
          block.map(b -> b.moved(name, rigid)), noRoom.stream().map(rigid::apply).toList(), rim);
    }
  }

  private RecessCuts(
      RecessGeometry.Result result,
      Function<RecessGeometry.Part, Made> maker,
      Map<Boolean, List<Made>> made,
      Affine map) {
    this.result = result;
    this.maker = maker;
    this.made = made;
    this.map = map;
  }

  /** Where the area was worked out. */
  static RecessCuts of(RecessGeometry.Result result, Function<RecessGeometry.Part, Made> maker) {
    return new RecessCuts(result, maker, new HashMap<>(), Affine.IDENTITY);
  }

  /** Elsewhere. */
  RecessCuts placed(Affine there) {
    return new RecessCuts(result, maker, made, map.then(there));
  }

  /** The cuts of each part, under a name. */
  public List<Made> parts(String name) {
    Affine first = map.isMirroring() ? MIRROR : Affine.IDENTITY;
    List<Made> here = made.computeIfAbsent(map.isMirroring(), m -> make(first));
    Affine rest = first.inverse().then(map);
    return here.stream().map(m -> m.moved(name, rest)).toList();
  }

  private List<Made> make(Affine first) {
    return result.placed(first).parts().stream().map(maker).toList();
  }

  /** What the tool does not reach. */
  public Region leftover() {
    return result.leftover().transformed(map);
  }
}
