package frieze.lower;

import frieze.motion.Step;
import java.util.List;

/** One step of lowering. Gives each new step the origin of the one that it replaces. */
interface Pass {
  List<Step> apply(List<Step> steps);
}
