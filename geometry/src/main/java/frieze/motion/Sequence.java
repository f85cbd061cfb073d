package frieze.motion;

import java.util.List;

/**
 * Everything that a machine does to one setup of a panel, in order, with every tool.
 *
 * @param title a short name: the panel's
 */
public record Sequence(String title, List<Step> steps) {
  public Sequence {
    steps = List.copyOf(steps);
  }
}
