package frieze.rs274;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;

/**
 * Cuts a stream of bytes into lines that end with CR, LF or both.
 *
 * <p>Guarantees: holds one buffer whatever the length of the text; of a line that does not fit it,
 * only the beginning is kept. Cost: one pass.
 */
final class LineSource {
  /** The longest line that is kept whole, in bytes. */
  static final int LONGEST = 1 << 16;

  /** Eight bytes of an array as one number. */
  private static final VarHandle EIGHT =
      MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);

  /** A 1 in each of eight bytes. */
  private static final long EACH = 0x0101010101010101L;

  private static final long TOP_BITS = EACH << 7;

  private final InputStream in;
  private final byte[] buffer = new byte[2 * LONGEST];
  private int limit;
  private int cursor;
  private boolean endOfStream;
  private boolean skipLineFeed;

  private int from;
  private int to;
  private long length;
  private int number;

  LineSource(InputStream in) {
    this.in = in;
  }

  /** Goes to the next line; false at the end of the text. */
  boolean next() {
    if (!startLine()) {
      return false;
    }
    number++;
    from = cursor;
    int i = cursor;
    while (true) {
      i = lineEnd(i);
      if (i < limit) {
        finish(i);
        return true;
      }
      if (i - from > LONGEST) {
        dropRest();
        return true;
      }
      int shift = from;
      if (!fill()) {
        to = limit;
        length = (long) to - from;
        cursor = limit;
        return true;
      }
      i -= shift;
      from = 0;
    }
  }

  private boolean startLine() {
    if (cursor >= limit) {
      from = cursor;
      if (!fill()) {
        return false;
      }
    }
    if (skipLineFeed) {
      skipLineFeed = false;
      if (buffer[cursor] == '\n') {
        cursor++;
        return startLine();
      }
    }
    return true;
  }

  /** A byte is 0 where taking 1 away turns its top bit on; later bytes may then seem 0 as well. */
  private static boolean hasLineEnd(long eight) {
    long feeds = eight ^ ('\n' * EACH);
    long returns = eight ^ ('\r' * EACH);
    return ((((feeds - EACH) & ~feeds) | ((returns - EACH) & ~returns)) & TOP_BITS) != 0;
  }

  private int lineEnd(int start) {
    byte[] b = buffer;
    int i = start;
    int stop = limit;
    while (i + Long.BYTES <= stop && !hasLineEnd((long) EIGHT.get(b, i))) {
      i += Long.BYTES;
    }
    while (i < stop && b[i] != '\n' && b[i] != '\r') {
      i++;
    }
    return i;
  }

  private void finish(int end) {
    to = end;
    length = (long) end - from;
    skipLineFeed = buffer[end] == '\r';
    cursor = end + 1;
  }

  /** Keeps the beginning of a very long line and passes over the rest of it. */
  private void dropRest() {
    byte[] kept = new byte[LONGEST];
    System.arraycopy(buffer, from, kept, 0, LONGEST);
    long seen = (long) limit - from;
    boolean ended = false;
    while (!ended) {
      limit = 0;
      cursor = 0;
      from = 0;
      if (!fill()) {
        break;
      }
      int end = lineEnd(0);
      seen += end;
      if (end < limit) {
        skipLineFeed = buffer[end] == '\r';
        cursor = end + 1;
        ended = true;
      }
    }
    // What follows the long line is moved up to make room for its beginning.
    int rest = limit - cursor;
    byte[] tail = new byte[rest];
    System.arraycopy(buffer, cursor, tail, 0, rest);
    int room = Math.min(LONGEST, buffer.length - rest);
    System.arraycopy(kept, 0, buffer, 0, room);
    System.arraycopy(tail, 0, buffer, room, rest);
    from = 0;
    to = room;
    cursor = room;
    limit = room + rest;
    length = seen;
  }

  /** Moves what is left to the front and reads on; false when nothing more comes. */
  private boolean fill() {
    if (endOfStream) {
      return false;
    }
    int left = limit - from;
    System.arraycopy(buffer, from, buffer, 0, left);
    cursor -= from;
    limit = left;
    try {
      int got = in.read(buffer, limit, buffer.length - limit);
      if (got <= 0) {
        endOfStream = true;
        return false;
      }
      limit += got;
      return true;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      from = 0;
    }
  }

  /**
   * The bytes that hold the line between {@link #from} and {@link #to}; good until the next call.
   */
  byte[] bytes() {
    return buffer;
  }

  int from() {
    return from;
  }

  int to() {
    return to;
  }

  /** The whole length of the line in bytes, of which {@link #LONGEST} at most are kept. */
  long length() {
    return length;
  }

  /** The line's number, counted from 1. */
  int number() {
    return number;
  }

  /** The first bytes of the text, for a look at its encoding; at most {@code count}. */
  byte[] peek(int count) {
    while (limit - cursor < count && fill()) {
      // Reads until there is enough.
    }
    int n = Math.min(count, limit - cursor);
    byte[] head = new byte[n];
    System.arraycopy(buffer, cursor, head, 0, n);
    return head;
  }

  /** Passes over bytes at the start of the text. */
  void skip(int count) {
    cursor += count;
    from = cursor;
  }
}
