package frieze.layout;

import frieze.curve.Affine;
import frieze.curve.FrameMap;
import frieze.curve.Point;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Motifs in a ring, evenly spaced, each turned so that its top points away from the middle.
 *
 * @param count the number of motifs
 * @param radiusMm from the ring's middle to those of the motifs
 * @param middle on the panel; empty for the panel's middle
 * @param startRad where the first one stands, counter-clockwise from the right
 * @param mirrored whether every other one is a mirror image
 */
public record Ring(
    int count, double radiusMm, Optional<Point> middle, double startRad, boolean mirrored)
    implements Pattern {
  public Ring {
    if (count < 1 || !(radiusMm >= 0)) {
      throw new IllegalArgumentException(
          "count must be >= 1 and radiusMm >= 0 but were " + count + ", " + radiusMm);
    }
  }

  @Override
  public double insetMm() {
    return 0;
  }

  @Override
  public boolean mayReachOver() {
    return true;
  }

  @Override
  public List<Placement> reachingOver(String motif, Hull hull, Panel panel, SourceSpan where) {
    return placed(motif, hull, panel, where);
  }

  @Override
  public List<Placement> place(String motif, Hull hull, Panel panel, long seed, SourceSpan where) {
    List<Placement> placed = placed(motif, hull, panel, where);
    Band.of(panel, 0).requireHeld(placed, hull, where);
    return placed;
  }

  private List<Placement> placed(String motif, Hull hull, Panel panel, SourceSpan where) {
    if (mirrored && count % 2 != 0) {
      Diagnostics found = new Diagnostics();
      found.error(
          LayoutCode.BAD_COUNT,
          where,
          "a ring with every other motif mirrored needs an even count, but it is " + count,
          "");
      found.throwIfErrors();
    }
    Point c = hull.bounds().centre();
    Point at = middle.orElseGet(() -> panel.outline().bounds().centre());
    List<Placement> result = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double angle = startRad + 2 * Math.PI * i / count;
      boolean mirror = mirrored && i % 2 == 1;
      Affine map =
          Affine.translation(-c.x(), -c.y())
              .then(Affine.scaling(mirror ? -1 : 1, 1))
              .then(Affine.translation(0, radiusMm))
              .then(Affine.rotation(angle - Math.PI / 2))
              .then(Affine.translation(at.x(), at.y()));
      result.add(new Placement(motif, i + 1, new FrameMap<>(map)));
    }
    return result;
  }
}
