package frieze.gouge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Gathers neighbouring cells with the same kind of offence. */
final class Blobs {
  /**
   * Cells that touch, also by their corners.
   *
   * @param worst the offence of the worst of them: above 0 too deep, below 0 left, micrometres
   */
  record Blob(int worstColumn, int worstRow, int worst, int cells) {}

  private final short[] offences;
  private final int columns;
  private final int rows;
  private int[] stack = new int[1024];
  private int height;

  /** Takes over {@code offences}, and clears it while gathering. */
  Blobs(short[] offences, int columns) {
    this.offences = offences;
    this.columns = columns;
    this.rows = offences.length / columns;
  }

  /** All blobs, the worst first, in a stable order. */
  List<Blob> gather() {
    List<Blob> blobs = new ArrayList<>();
    for (int at = 0; at < offences.length; at++) {
      if (offences[at] != 0) {
        blobs.add(gather(at));
      }
    }
    blobs.sort(
        Comparator.comparingInt((Blob b) -> -Math.abs(b.worst()))
            .thenComparing(b -> -b.cells())
            .thenComparing(Blob::worstRow)
            .thenComparing(Blob::worstColumn));
    return blobs;
  }

  private Blob gather(int seed) {
    int sign = Integer.signum(offences[seed]);
    int worstAt = seed;
    int worst = offences[seed];
    int cells = 0;
    push(seed);
    while (height > 0) {
      int at = stack[--height];
      int offence = offences[at];
      if (offence == 0) {
        continue;
      }
      offences[at] = 0;
      cells++;
      boolean worse = Math.abs(offence) > Math.abs(worst);
      if (worse || (offence == worst && at < worstAt)) {
        worst = offence;
        worstAt = at;
      }
      pushNeighbours(at, sign);
    }
    return new Blob(worstAt % columns, worstAt / columns, worst, cells);
  }

  private void pushNeighbours(int at, int sign) {
    int column = at % columns;
    int row = at / columns;
    for (int j = Math.max(0, row - 1); j <= Math.min(rows - 1, row + 1); j++) {
      for (int i = Math.max(0, column - 1); i <= Math.min(columns - 1, column + 1); i++) {
        int next = j * columns + i;
        if (Integer.signum(offences[next]) == sign) {
          push(next);
        }
      }
    }
  }

  private void push(int at) {
    if (height == stack.length) {
      stack = Arrays.copyOf(stack, 2 * height);
    }
    stack[height++] = at;
  }
}
