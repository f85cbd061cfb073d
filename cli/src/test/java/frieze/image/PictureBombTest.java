package frieze.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Small files that state, or hold, far more pixels than anyone could trace. */
class PictureBombTest {
  private static final int HUGE = 30_000;

  private static byte[] picture(String kind, int type) throws IOException {
    BufferedImage image = new BufferedImage(60, 50, type);
    for (int i = 10; i < 40; i++) {
      image.setRGB(i, i, 0xffffffff);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, kind, out)).isTrue();
    return out.toByteArray();
  }

  private static Diagnostic refused(byte[] content) {
    BadInputException e =
        catchThrowableOfType(BadInputException.class, () -> ImageFile.read("p", content));
    assertThat(e).isNotNull();
    return e.diagnostics().get(0);
  }

  private static void assertTooManyPixels(byte[] content) {
    Diagnostic told = refused(content);
    assertThat(told.code()).isEqualTo(ImageCode.TOO_MANY_PIXELS);
    assertThat(told.message()).contains("30000 x 30000 pixels");
  }

  /** Source of the colour types and of the interlacing: PNG, 4.1.1. */
  @ParameterizedTest
  @CsvSource({"1, 0, 0", "8, 0, 0", "8, 0, 1", "1, 3, 0", "8, 3, 1", "16, 6, 0"})
  void a_huge_png_is_refused(int bits, int colourType, int interlaced) throws IOException {
    byte[] png = picture("png", BufferedImage.TYPE_BYTE_GRAY);
    ByteBuffer out = ByteBuffer.wrap(png);
    out.putInt(16, HUGE).putInt(20, HUGE).put(24, (byte) bits).put(25, (byte) colourType);
    out.put(28, (byte) interlaced);
    CRC32 crc = new CRC32();
    crc.update(png, 12, 17);
    out.putInt(29, (int) crc.getValue());
    assertTooManyPixels(png);
  }

  /** Source of the frame headers: ITU-T T.81, table B.1; baseline and progressive. */
  @ParameterizedTest
  @ValueSource(ints = {0xc0, 0xc2})
  void a_huge_jpeg_is_refused(int frame) throws IOException {
    byte[] jpeg = picture("jpg", BufferedImage.TYPE_INT_RGB);
    int at = frameHeader(jpeg);
    ByteBuffer.wrap(jpeg)
        .put(at + 1, (byte) frame)
        .putShort(at + 5, (short) HUGE)
        .putShort(at + 7, (short) HUGE);
    assertTooManyPixels(jpeg);
  }

  private static int frameHeader(byte[] jpeg) {
    int at = 2;
    while ((jpeg[at + 1] & 0xff) != 0xc0) {
      at += 2 + (ByteBuffer.wrap(jpeg).getShort(at + 2) & 0xffff);
    }
    return at;
  }

  /** A picture that comes in more scans than anyone sends, each over all its pixels. */
  @Test
  void a_jpeg_of_many_scans_is_refused() throws IOException {
    byte[] jpeg = picture("jpg", BufferedImage.TYPE_BYTE_GRAY);
    assertThat(JpegData.scans(jpeg)).isEqualTo(1);
    int scan = frameHeader(jpeg);
    ByteBuffer.wrap(jpeg).putShort(scan + 5, (short) 5000).putShort(scan + 7, (short) 5000);
    while ((jpeg[scan + 1] & 0xff) != 0xda) {
      scan += 2 + (ByteBuffer.wrap(jpeg).getShort(scan + 2) & 0xffff);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.write(jpeg, 0, scan);
    for (int i = 0; i < 2000; i++) {
      out.write(jpeg, scan, jpeg.length - 2 - scan);
    }
    out.write(jpeg, jpeg.length - 2, 2);
    assertThat(refused(out.toByteArray()).message())
        .contains("2000 times over the 25000000 pixels");
  }

  /** As spoilt in transfer: the platform's reader makes the rest grey and only warns. */
  @Test
  void a_jpeg_whose_middle_is_missing_is_refused() throws IOException {
    byte[] jpeg = picture("jpg", BufferedImage.TYPE_INT_RGB);
    byte[] gap = Arrays.copyOf(jpeg, jpeg.length - 60);
    System.arraycopy(jpeg, jpeg.length - 2, gap, gap.length - 2, 2);
    assertThat(refused(gap).message()).contains("breaks off");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 8, 24, 32})
  void a_huge_bmp_is_refused(int bits) throws IOException {
    byte[] bmp = picture("bmp", BufferedImage.TYPE_INT_RGB);
    ByteBuffer out = ByteBuffer.wrap(bmp).order(ByteOrder.LITTLE_ENDIAN);
    out.putInt(18, HUGE).putInt(22, HUGE).putShort(28, (short) bits);
    // The size of the pixels, which the platform's reader compares with nothing else.
    out.putInt(34, (HUGE * bits + 31) / 32 * 4 * HUGE);
    assertThat(refused(bmp).code()).isIn(ImageCode.TOO_MANY_PIXELS, ImageCode.BROKEN_PICTURE);
  }

  @Test
  void a_huge_gif_is_refused() throws IOException {
    byte[] gif = picture("gif", BufferedImage.TYPE_BYTE_GRAY);
    resize(gif, HUGE, HUGE);
    assertTooManyPixels(gif);
  }

  /** Source: GIF 89a, 20: the image descriptor begins with a comma and its place. */
  private static void resize(byte[] gif, int width, int height) {
    int tableBytes = 3 * (2 << (gif[10] & 7));
    int at = 13 + ((gif[10] & 0x80) == 0 ? 0 : tableBytes);
    while (gif[at] == 0x21) {
      at += 2;
      while (gif[at] != 0) {
        at += 1 + (gif[at] & 0xff);
      }
      at++;
    }
    assertThat(gif[at]).isEqualTo((byte) ',');
    ByteBuffer.wrap(gif)
        .order(ByteOrder.LITTLE_ENDIAN)
        .putShort(at + 5, (short) width)
        .putShort(at + 7, (short) height);
  }

  @Test
  void a_gif_without_enough_pixels_is_refused() throws IOException {
    byte[] gif = picture("gif", BufferedImage.TYPE_BYTE_GRAY);
    resize(gif, 4000, 4000);
    assertThat(refused(gif).message()).contains("after 3000 of its 16000000 pixels");
  }

  @Test
  void a_gif_with_far_too_many_pixels_is_refused() throws IOException {
    byte[] gif = picture("gif", BufferedImage.TYPE_BYTE_GRAY);
    resize(gif, 6, 5);
    assertThat(refused(gif).message()).contains("more than twice the 30 pixels");
  }

  /** Pictures with codes of all lengths: the count is that of the pixels, not an estimate. */
  @ParameterizedTest
  @ValueSource(ints = {1, 7, 100, 600})
  void pixels_of_a_gif_are_counted(int size) throws IOException {
    BufferedImage image = new BufferedImage(size, size, BufferedImage.TYPE_BYTE_INDEXED);
    for (int i = 0; i < size * size; i++) {
      image.setRGB(i % size, i / size, (i * 2_654_435_761L >> 8) % 7 == 0 ? 0 : i * i);
    }
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    ImageIO.write(image, "gif", out);
    assertThat(GifData.pixels(out.toByteArray(), Long.MAX_VALUE)).isEqualTo(size * size);
    assertThat(ImageFile.read("p", out.toByteArray()).width()).isEqualTo(size);
  }

  /** Source: TIFF 6.0, section 2 and tags 256 and 257. */
  @ParameterizedTest
  @ValueSource(ints = {BufferedImage.TYPE_BYTE_BINARY, BufferedImage.TYPE_BYTE_GRAY})
  void a_huge_tiff_is_refused(int type) throws IOException {
    byte[] tiff = picture("tif", type);
    set(tiff, 256, HUGE);
    set(tiff, 257, HUGE);
    assertTooManyPixels(tiff);
  }

  private static void set(byte[] tiff, int tag, int value) {
    ByteBuffer in = ByteBuffer.wrap(tiff);
    in.order(tiff[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int directory = in.getInt(4);
    for (int i = 0; i < in.getShort(directory); i++) {
      int entry = directory + 2 + 12 * i;
      if (in.getShort(entry) == tag) {
        boolean isShort = in.getShort(entry + 2) == 3;
        if (isShort) {
          in.putShort(entry + 8, (short) value);
        } else {
          in.putInt(entry + 8, value);
        }
        return;
      }
    }
    throw new AssertionError("no tag " + tag);
  }
}
