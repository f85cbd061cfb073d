package frieze.dryrun;

import java.util.Arrays;

/** A list of ints that grows and shrinks at its end. */
final class IntList {
  private static final int FIRST = 1024;

  private int[] values = new int[FIRST];
  private int size;

  void add(int value) {
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

  int[] toArray() {
    return Arrays.copyOf(values, size);
  }
}
