package frieze.image;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;

/**
 * How many pixels the first picture of a GIF file really holds, found from the lengths of its codes
 * alone: the platform's reader takes what is missing for black, and goes on long after the last
 * pixel.
 *
 * <p>Source: Graphics Interchange Format, version 89a, and its appendix F.
 */
final class GifData {
  private static final int COLOUR_BYTES = 3;
  private static final int HAS_TABLE = 0x80;
  private static final int TABLE_SIZE = 7;
  private static final int EXTENSION = 0x21;
  private static final int IMAGE = 0x2c;
  private static final int MOST_CODES = 4096;
  private static final int MOST_BITS = 12;

  private final ByteBuffer in;
  private final int[] lengths = new int[MOST_CODES];
  private int blockLeft;
  private int bits;
  private int bitCount;

  private GifData(byte[] file) {
    this.in = ByteBuffer.wrap(file).order(ByteOrder.LITTLE_ENDIAN);
  }

  static boolean isGif(byte[] file) {
    return file.length > 3 && file[0] == 'G' && file[1] == 'I' && file[2] == 'F';
  }

  /**
   * Counts pixels.
   *
   * @param enough where counting may stop
   * @throws java.nio.BufferUnderflowException if the file breaks off outside of its pixels
   */
  static long pixels(byte[] file, long enough) {
    return new GifData(file).pixels(enough);
  }

  private long pixels(long enough) {
    in.position(10);
    int flags = in.get();
    in.position(in.position() + 2);
    skipTable(flags);
    int kind = in.get();
    while (kind == EXTENSION) {
      in.get();
      skipBlocks();
      kind = in.get();
    }
    if (kind != IMAGE) {
      return 0;
    }
    in.position(in.position() + 8);
    skipTable(in.get());
    int literalBits = in.get();
    return literalBits >= 1 && literalBits < MOST_BITS ? codes(literalBits, enough) : 0;
  }

  private void skipTable(int flags) {
    if ((flags & HAS_TABLE) != 0) {
      in.position(in.position() + COLOUR_BYTES * (2 << (flags & TABLE_SIZE)));
    }
  }

  private void skipBlocks() {
    int length = in.get() & 0xff;
    while (length > 0) {
      in.position(in.position() + length);
      length = in.get() & 0xff;
    }
  }

  /** Each code stands for the row of pixels of an earlier one and one more. */
  private long codes(int literalBits, long enough) {
    int clear = 1 << literalBits;
    Arrays.fill(lengths, 0, clear, 1);
    int size = literalBits + 1;
    int next = clear + 2;
    int before = 0;
    long pixels = 0;
    while (pixels < enough) {
      int code = code(size);
      if (code == clear) {
        size = literalBits + 1;
        next = clear + 2;
        before = 0;
        continue;
      }
      boolean known = code >= 0 && (code < clear || (code > clear + 1 && code < next));
      boolean newest = code == next && before > 0;
      if (!known && !newest) {
        return pixels; // The end, or damage.
      }
      int length = known ? lengths[code] : before + 1;
      pixels += length;
      if (before > 0 && next < MOST_CODES) {
        lengths[next] = before + 1;
        next++;
        if (next == 1 << size && size < MOST_BITS) {
          size++;
        }
      }
      before = length;
    }
    return pixels;
  }

  /** The next code; less than 0 after the last one. */
  private int code(int size) {
    while (bitCount < size) {
      if (blockLeft == 0) {
        blockLeft = in.hasRemaining() ? in.get() & 0xff : 0;
      }
      if (blockLeft == 0 || !in.hasRemaining()) {
        return -1;
      }
      bits |= (in.get() & 0xff) << bitCount;
      bitCount += Byte.SIZE;
      blockLeft--;
    }
    int code = bits & ((1 << size) - 1);
    bits >>>= size;
    bitCount -= size;
    return code;
  }
}
