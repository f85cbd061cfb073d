package frieze.plan.cut;

import frieze.curve.Affine;
import frieze.plan.order.CutOrder;
import java.util.List;
import java.util.function.IntFunction;

/**
 * Cuts that stay together and in order, and the ways in which they may be made: a closed loop can
 * be entered at several places. All ways cut the same.
 *
 * @param ends where the tool comes down and is raised, for each way
 * @param cuts the cuts of a way, by its index in {@code ends}
 */
public record Block(List<CutOrder.Way> ends, IntFunction<List<Cut>> cuts) {
  public Block {
    ends = List.copyOf(ends);
    if (ends.isEmpty()) {
      throw new IllegalArgumentException("a block needs at least one way");
    }
  }

  /** Cuts that are made in one way. */
  public static Block of(List<Cut> cuts) {
    return anyOf(List.of(cuts));
  }

  /** Blocks that are each made in one way. */
  public static List<Block> each(List<List<Cut>> blocks) {
    return blocks.stream().map(Block::of).toList();
  }

  /** Cuts that are made in one of several ways. */
  public static Block anyOf(List<List<Cut>> ways) {
    return new Block(ways.stream().map(Block::ends).toList(), ways::get);
  }

  /** These cuts elsewhere, under a name; a map that neither stretches nor mirrors. */
  public Block moved(String name, Affine rigid) {
    return new Block(
        ends.stream()
            .map(e -> new CutOrder.Way(rigid.apply(e.from()), rigid.apply(e.to())))
            .toList(),
        way -> cuts.apply(way).stream().map(c -> c.moved(name, rigid)).toList());
  }

  /** Where the tool comes down to the first of some cuts, and where it is raised from the last. */
  public static CutOrder.Way ends(List<Cut> cuts) {
    return new CutOrder.Way(cuts.get(0).start().xy(), cuts.get(cuts.size() - 1).end().xy());
  }
}
