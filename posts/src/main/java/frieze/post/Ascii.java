package frieze.post;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** Text of ASCII characters that grows. Not for several threads. */
final class Ascii {
  private static final int FIRST_ROOM = 128;

  private byte[] bytes = new byte[FIRST_ROOM];
  private int length;

  int length() {
    return length;
  }

  boolean isEmpty() {
    return length == 0;
  }

  void clear() {
    length = 0;
  }

  private void room(int more) {
    if (bytes.length - length < more) {
      bytes = Arrays.copyOf(bytes, Math.max(2 * bytes.length, length + more));
    }
  }

  Ascii append(char character) {
    room(1);
    bytes[length++] = (byte) character;
    return this;
  }

  /**
   * Appends a text.
   *
   * @throws IllegalArgumentException when it is not ASCII
   */
  Ascii append(String text) {
    int more = text.length();
    room(more);
    for (int i = 0; i < more; i++) {
      char c = text.charAt(i);
      if (c > '~') {
        throw new IllegalArgumentException("not ASCII: " + text);
      }
      bytes[length + i] = (byte) c;
    }
    length += more;
    return this;
  }

  Ascii append(Ascii other) {
    room(other.length);
    System.arraycopy(other.bytes, 0, bytes, length, other.length);
    length += other.length;
    return this;
  }

  /** Appends a number as {@link NumberText} writes it. */
  void number(long ticks, int decimals, boolean pointAlways) {
    room(2 * NumberText.LONGEST);
    int end = length + 2 * NumberText.LONGEST;
    int start = NumberText.write(ticks, decimals, pointAlways, bytes, end);
    System.arraycopy(bytes, start, bytes, length, end - start);
    length += end - start;
  }

  /** The text from a place on. */
  String from(int start) {
    return new String(bytes, start, length - start, StandardCharsets.US_ASCII);
  }

  @Override
  public String toString() {
    return new String(bytes, 0, length, StandardCharsets.ISO_8859_1);
  }
}
