package frieze.gouge;

import java.util.ArrayList;
import java.util.List;

/**
 * Gathers discrepancies of one kind by place: what lies near a worse one of the same intent is part
 * of it. Offer the worst first.
 */
final class Places {
  /** About what an eye takes for one place. */
  static final double NEAR_MM = 3;

  private final int most;
  private final List<Discrepancy> kept = new ArrayList<>();
  private int count;

  /**
   * @param most how many are kept; more are only counted
   */
  Places(int most) {
    this.most = most;
  }

  void offer(Discrepancy one) {
    for (int i = 0; i < kept.size(); i++) {
      Discrepancy worse = kept.get(i);
      if (worse.intent().equals(one.intent()) && worse.place().distance(one.place()) <= NEAR_MM) {
        kept.set(i, worse.with(one));
        return;
      }
    }
    count++;
    if (kept.size() < most) {
      kept.add(one);
    }
  }

  List<Discrepancy> kept() {
    return kept;
  }

  /** The number of places, kept or not. */
  int count() {
    return count;
  }
}
