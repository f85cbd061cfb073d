package frieze.dryrun.scene;

import frieze.motion.Box;
import java.util.OptionalDouble;

/** Works out where a move lies in machine coordinates. */
public final class MachineBox {
  private MachineBox() {}

  /** The extent in machine coordinates; empty along axes where it is not known. */
  public static Box of(Passage passage) {
    double[] min = new double[3];
    double[] max = new double[3];
    Box box = passage.box();
    for (int axis = 0; axis < 3; axis++) {
      OptionalDouble told = passage.move().machineTo().get(axis);
      if (told.isPresent() && passage.move().toKnown().get(axis)) {
        double shift = told.getAsDouble() - passage.path().to().get(axis);
        min[axis] = box.min(axis) + shift;
        max[axis] = box.max(axis) + shift;
      } else {
        min[axis] = told.orElse(Double.POSITIVE_INFINITY);
        max[axis] = told.orElse(Double.NEGATIVE_INFINITY);
      }
    }
    return new Box(min[0], min[1], min[2], max[0], max[1], max[2]);
  }
}
