package frieze.rs274;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.function.LongFunction;

/** A text of any length that is made while it is read. */
final class GeneratedText extends InputStream {
  private final long pieces;
  private final LongFunction<String> piece;
  private long next;
  private byte[] current = new byte[0];
  private int pos;

  GeneratedText(long pieces, LongFunction<String> piece) {
    this.pieces = pieces;
    this.piece = piece;
  }

  private boolean more() {
    while (pos >= current.length) {
      if (next >= pieces) {
        return false;
      }
      current = piece.apply(next++).getBytes(StandardCharsets.US_ASCII);
      pos = 0;
    }
    return true;
  }

  @Override
  public int read() {
    return more() ? current[pos++] & 0xff : -1;
  }

  @Override
  public int read(byte[] b, int off, int len) {
    int got = 0;
    while (got < len && more()) {
      int n = Math.min(len - got, current.length - pos);
      System.arraycopy(current, pos, b, off + got, n);
      pos += n;
      got += n;
    }
    return got == 0 && len > 0 ? -1 : got;
  }
}
