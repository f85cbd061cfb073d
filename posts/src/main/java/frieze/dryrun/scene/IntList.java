package frieze.dryrun.scene;

import java.util.Arrays;

/** A list of ints that grows and shrinks at its end. */
public final class IntList {
  private static final int FIRST = 1024;

  private int[] values = new int[FIRST];
  private int size;

  public void add(int value) {
    if (size == values.length) {
      values = Arrays.copyOf(values, 2 * size);
    }
    values[size++] = value;
  }

  int removeLast() {
    return values[--size];
  }

  boolean isEmpty() {
    return size == 0;
  }

  public int[] toArray() {
    return Arrays.copyOf(values, size);
  }
}
