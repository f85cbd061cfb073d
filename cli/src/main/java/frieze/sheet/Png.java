package frieze.sheet;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes pictures of 8-bit red, green and blue.
 *
 * <p>Source: PNG (second edition), ISO/IEC 15948. Each row is filtered by "up", which suits smooth
 * shading. It is here because loading the platform's picture code takes longer than all of this.
 */
final class Png {
  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
  private static final byte UP = 2;

  private Png() {}

  /** Gives the colour of a pixel as {@code 0xRRGGBB}; rows count from the top. */
  interface Pixels {
    int rgb(int column, int row);
  }

  static byte[] write(int width, int height, Pixels pixels) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(SIGNATURE);
    ByteBuffer header = ByteBuffer.allocate(13).putInt(width).putInt(height);
    header.put((byte) 8).put((byte) 2).put((byte) 0).put((byte) 0).put((byte) 0);
    chunk(out, "IHDR", header.array());
    chunk(out, "IDAT", deflated(width, height, pixels));
    chunk(out, "IEND", new byte[0]);
    return out.toByteArray();
  }

  private static byte[] deflated(int width, int height, Pixels pixels) {
    Deflater deflater = new Deflater(Deflater.DEFAULT_COMPRESSION);
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    byte[] above = new byte[3 * width];
    byte[] row = new byte[3 * width];
    byte[] filtered = new byte[3 * width + 1];
    byte[] buffer = new byte[1 << 16];
    filtered[0] = UP;
    for (int y = 0; y < height; y++) {
      for (int x = 0; x < width; x++) {
        int rgb = pixels.rgb(x, y);
        row[3 * x] = (byte) (rgb >> 16);
        row[3 * x + 1] = (byte) (rgb >> 8);
        row[3 * x + 2] = (byte) rgb;
      }
      for (int i = 0; i < row.length; i++) {
        filtered[i + 1] = (byte) (row[i] - above[i]);
      }
      deflater.setInput(filtered);
      while (!deflater.needsInput()) {
        out.write(buffer, 0, deflater.deflate(buffer));
      }
      byte[] swap = above;
      above = row;
      row = swap;
    }
    deflater.finish();
    while (!deflater.finished()) {
      out.write(buffer, 0, deflater.deflate(buffer));
    }
    deflater.end();
    return out.toByteArray();
  }

  private static void chunk(ByteArrayOutputStream out, String type, byte[] content) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 crc = new CRC32();
    crc.update(name);
    crc.update(content);
    out.writeBytes(ByteBuffer.allocate(4).putInt(content.length).array());
    out.writeBytes(name);
    out.writeBytes(content);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) crc.getValue()).array());
  }
}
