package frieze.dryrun;

import frieze.dryrun.scene.Passage;
import frieze.motion.Box;
import frieze.motion.Motions;
import java.util.OptionalDouble;

/** Adds up what moves do. */
final class Tally {
  private final Reach rapid = new Reach();
  private final Reach feed = new Reach();
  private final Reach machineRapid = new Reach();
  private final Reach machineFeed = new Reach();
  private double rapidMm;
  private double feedMm;

  public void add(Passage passage, Box onMachine) {
    double length = Motions.known(passage.move()).lengthMm();
    if (passage.isRapid()) {
      rapidMm += length;
      rapid.add(passage.box());
      machineRapid.add(onMachine);
    } else {
      feedMm += length;
      feed.add(passage.box());
      machineFeed.add(onMachine);
    }
  }

  /** Whether any move covered a distance that is known. */
  boolean hasMoves() {
    return rapidMm > 0 || feedMm > 0;
  }

  double rapidMm() {
    return rapidMm;
  }

  double feedMm() {
    return feedMm;
  }

  MoveExtents program() {
    return extents(rapid.box(), feed.box());
  }

  MoveExtents machine() {
    return extents(machineRapid.box(), machineFeed.box());
  }

  OptionalDouble lowestZMm() {
    Box box = feed.box();
    return box.minZ() <= box.maxZ() ? OptionalDouble.of(box.minZ()) : OptionalDouble.empty();
  }

  private static MoveExtents extents(Box rapid, Box feed) {
    return new MoveExtents(Extents.of(rapid.with(feed)), Extents.of(rapid), Extents.of(feed));
  }
}
