package frieze.image;

import frieze.trace.GreyImage;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;

/**
 * How a camera was held, as it noted in a JPEG or PNG file, or which way up a TIFF file is.
 *
 * <p>Source: Exif 2.32, 4.5.4; tag 274 of TIFF 6.0; chunk eXIf of PNG 1.5 with its extensions.
 *
 * @param value 1 to 8; 1 is upright
 */
record Orientation(int value) {
  private static final Orientation UPRIGHT = new Orientation(1);
  private static final int START_OF_IMAGE = 0xffd8;
  private static final int APPLICATION_1 = 0xffe1;
  private static final int START_OF_SCAN = 0xffda;
  private static final int TAG = 0x0112;
  private static final int LITTLE_TIFF = 0x49492a00;
  private static final int BIG_TIFF = 0x4d4d002a;
  private static final long PNG = 0x89504e470d0a1a0aL;

  /** "eXIf". */
  private static final int EXIF_CHUNK = 0x65584966;

  /** The header of a directory. */
  private static final int LEAST_BYTES = 8;

  /** "Exif" and two zeros. */
  private static final long HEADER = 0x457869660000L;

  /** What a file says; upright if it says nothing that can be understood. */
  static Orientation of(byte[] file) {
    ByteBuffer in = ByteBuffer.wrap(file);
    if (file.length < LEAST_BYTES) {
      return UPRIGHT;
    }
    int start = in.getInt(0);
    if (start == LITTLE_TIFF || start == BIG_TIFF) {
      return inside(in);
    }
    return in.getLong(0) == PNG ? ofPng(in) : ofJpeg(in);
  }

  private static Orientation ofPng(ByteBuffer in) {
    in.position(Long.BYTES);
    while (in.remaining() >= 3 * Integer.BYTES) {
      int length = in.getInt();
      int type = in.getInt();
      if (length < 0 || length > in.remaining() - Integer.BYTES) {
        return UPRIGHT;
      }
      if (type == EXIF_CHUNK && length >= LEAST_BYTES) {
        return inside(in.slice(in.position(), length));
      }
      in.position(in.position() + length + Integer.BYTES);
    }
    return UPRIGHT;
  }

  private static Orientation ofJpeg(ByteBuffer in) {
    if ((in.getShort() & 0xffff) != START_OF_IMAGE) {
      return UPRIGHT;
    }
    while (in.remaining() >= 4) {
      int marker = in.getShort() & 0xffff;
      int length = (in.getShort() & 0xffff) - 2;
      if (marker == START_OF_SCAN || length < 0 || length > in.remaining()) {
        return UPRIGHT;
      }
      if (marker == APPLICATION_1 && length > 14 && isExif(in)) {
        return inside(in.slice(in.position() + 6, length - 6));
      }
      in.position(in.position() + length);
    }
    return UPRIGHT;
  }

  private static boolean isExif(ByteBuffer in) {
    int at = in.position();
    return (in.getInt(at) & 0xffffffffL) << 16 == HEADER && in.getShort(at + 4) == 0;
  }

  private static Orientation inside(ByteBuffer tiff) {
    tiff.order(tiff.getShort(0) == 0x4949 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = tiff.getInt(4);
    if (directory < 8 || directory > tiff.limit() - 2) {
      return UPRIGHT;
    }
    int count = tiff.getShort(directory) & 0xffff;
    for (int i = 0; i < count; i++) {
      int entry = directory + 2 + 12 * i;
      if (entry > tiff.limit() - 12) {
        return UPRIGHT;
      }
      if ((tiff.getShort(entry) & 0xffff) == TAG) {
        int value = tiff.getShort(entry + 8) & 0xffff;
        return value >= 1 && value <= 8 ? new Orientation(value) : UPRIGHT;
      }
    }
    return UPRIGHT;
  }

  /** The picture as it was seen. */
  GreyImage upright(GreyImage image) {
    if (value == 1) {
      return image;
    }
    int w = image.width();
    int h = image.height();
    boolean swaps = value >= 5;
    int outW = swaps ? h : w;
    int outH = swaps ? w : h;
    float[] out = new float[w * h];
    for (int y = 0; y < outH; y++) {
      for (int x = 0; x < outW; x++) {
        int from =
            switch (value) {
              case 2 -> y * w + w - 1 - x;
              case 3 -> (h - 1 - y) * w + w - 1 - x;
              case 4 -> (h - 1 - y) * w + x;
              case 5 -> x * w + y;
              case 6 -> (h - 1 - x) * w + y;
              case 7 -> (h - 1 - x) * w + w - 1 - y;
              default -> x * w + w - 1 - y;
            };
        out[y * outW + x] = image.value(from);
      }
    }
    return new GreyImage(outW, outH, out);
  }
}
