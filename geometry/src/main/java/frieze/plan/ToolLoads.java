package frieze.plan;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Finds the order of jobs that loads tools least often.
 *
 * <p><i>Guarantees:</i> every job comes after all that must come before it; no other such order
 * needs fewer loads, as long as no more than {@value #MOST_STATES} states are met (beyond that, the
 * tool that comes first in the list is taken next). Among orders with as few loads, the one that is
 * nearest to the order given.
 *
 * <p>With a tool in the spindle, doing all that it can do now never makes more loads necessary; so
 * it is a search, breadth first, over the tools that come next.
 */
final class ToolLoads {
  private static final int MOST_STATES = 20_000;

  private final List<Integer> tools;
  private final List<BitSet> before;

  private ToolLoads(List<Integer> tools, List<BitSet> before) {
    this.tools = tools;
    this.before = before;
  }

  /** What is done and in which order. */
  private record State(BitSet done, List<Integer> order) {}

  /**
   * Orders jobs.
   *
   * @param tools the tool of each job
   * @param before for each job the ones that must be done before it, all with lower numbers
   * @return the numbers of the jobs
   */
  static List<Integer> order(List<Integer> tools, List<BitSet> before) {
    return new ToolLoads(tools, before).search();
  }

  private List<Integer> search() {
    Deque<State> open = new ArrayDeque<>();
    Set<BitSet> met = new HashSet<>();
    open.add(new State(new BitSet(), List.of()));
    while (true) {
      State state = open.remove();
      if (state.order().size() == tools.size()) {
        return state.order();
      }
      boolean tooMany = met.size() > MOST_STATES;
      if (tooMany) {
        open.clear();
      }
      for (int tool : available(state)) {
        State next = withTool(state, tool);
        if (met.add(next.done()) || tooMany) {
          open.add(next);
        }
        if (tooMany) {
          break;
        }
      }
    }
  }

  /** The tools of jobs that nothing keeps back, in the order of those jobs. */
  private List<Integer> available(State state) {
    List<Integer> available = new ArrayList<>();
    for (int job = 0; job < tools.size(); job++) {
      if (isFree(job, state.done()) && !available.contains(tools.get(job))) {
        available.add(tools.get(job));
      }
    }
    return available;
  }

  private boolean isFree(int job, BitSet done) {
    BitSet missing = (BitSet) before.get(job).clone();
    missing.andNot(done);
    return !done.get(job) && missing.isEmpty();
  }

  /** Does all that a tool can do: what it frees comes later in the list. */
  private State withTool(State state, int tool) {
    BitSet done = (BitSet) state.done().clone();
    List<Integer> order = new ArrayList<>(state.order());
    for (int job = 0; job < tools.size(); job++) {
      if (tools.get(job) == tool && isFree(job, done)) {
        done.set(job);
        order.add(job);
      }
    }
    return new State(done, order);
  }
}
