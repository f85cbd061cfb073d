package frieze.image;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.trace.GreyImage;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Pictures of cameras that were held in each of the eight ways.
 *
 * <p>Source: TIFF 6.0, tag 274: at which side of the scene the first row and the first column are;
 * from memory.
 */
class OrientationTest {
  private static final int WIDTH = 48;
  private static final int HEIGHT = 32;
  private static final int MARK = 8;
  private static final double DARK = 0.2;
  private static final double GREY = 0.5;

  /** Dark where the first row and the first column meet, grey at the other end of that row. */
  private static byte[] picture(String kind) throws IOException {
    BufferedImage image = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, WIDTH, HEIGHT);
    g.setColor(new Color((float) DARK, (float) DARK, (float) DARK));
    g.fillRect(0, 0, MARK, MARK);
    g.setColor(new Color((float) GREY, (float) GREY, (float) GREY));
    g.fillRect(WIDTH - MARK, 0, MARK, MARK);
    g.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    assertThat(ImageIO.write(image, kind, out)).isTrue();
    return out.toByteArray();
  }

  /** A TIFF directory with this one tag. */
  private static byte[] exif(int value, ByteOrder order) {
    ByteBuffer out = ByteBuffer.allocate(26).order(order);
    out.put((order == ByteOrder.LITTLE_ENDIAN ? "II" : "MM").getBytes(StandardCharsets.US_ASCII));
    out.putShort((short) 42).putInt(8);
    out.putShort((short) 1).putShort((short) 274).putShort((short) 3).putInt(1);
    return out.putShort((short) value).putShort((short) 0).putInt(0).array();
  }

  private static byte[] jpeg(int value) throws IOException {
    byte[] plain = picture("jpg");
    byte[] exif = exif(value, value % 2 == 0 ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    ByteBuffer out = ByteBuffer.allocate(plain.length + 10 + exif.length);
    out.put(plain, 0, 2).putShort((short) 0xffe1).putShort((short) (8 + exif.length));
    out.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII)).put(exif);
    return out.put(plain, 2, plain.length - 2).array();
  }

  private static byte[] png(int value) throws IOException {
    byte[] plain = picture("png");
    byte[] exif = exif(value, ByteOrder.BIG_ENDIAN);
    ByteBuffer chunk = ByteBuffer.allocate(4 + exif.length);
    chunk.put("eXIf".getBytes(StandardCharsets.US_ASCII)).put(exif);
    CRC32 crc = new CRC32();
    crc.update(chunk.array());
    int header = 33;
    ByteBuffer out = ByteBuffer.allocate(plain.length + 12 + exif.length);
    out.put(plain, 0, header).putInt(exif.length).put(chunk.array()).putInt((int) crc.getValue());
    return out.put(plain, header, plain.length - header).array();
  }

  /** Its directory gets one more tag, and is moved to the end of the file. */
  private static byte[] tiff(int value) throws IOException {
    byte[] plain = picture("tif");
    ByteBuffer in = ByteBuffer.wrap(plain);
    in.order(plain[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int from = in.getInt(4);
    int count = in.getShort(from);
    ByteBuffer out = ByteBuffer.allocate(plain.length + 6 + 12 * (count + 1)).order(in.order());
    out.put(plain).putInt(4, plain.length).putShort((short) (count + 1));
    boolean written = false;
    for (int i = 0; i < count; i++) {
      int entry = from + 2 + 12 * i;
      if (!written && in.getShort(entry) > 274) {
        out.putShort((short) 274).putShort((short) 3).putInt(1);
        out.putShort((short) value).putShort((short) 0);
        written = true;
      }
      out.put(plain, entry, 12);
    }
    assertThat(written).isTrue();
    return out.putInt(0).array();
  }

  @ParameterizedTest
  @CsvSource({
    "1, top, left",
    "2, top, right",
    "3, bottom, right",
    "4, bottom, left",
    "5, left, top",
    "6, right, top",
    "7, right, bottom",
    "8, left, bottom"
  })
  void pictures_are_turned_upright(int value, String firstRow, String firstColumn)
      throws IOException {
    for (byte[] file : new byte[][] {jpeg(value), png(value), tiff(value)}) {
      GreyImage image = ImageFile.read("p", file);
      boolean onItsSide = value >= 5;
      assertThat(image.width()).isEqualTo(onItsSide ? HEIGHT : WIDTH);
      assertThat(image.height()).isEqualTo(onItsSide ? WIDTH : HEIGHT);
      assertThat(corner(image, firstRow, firstColumn)).isBetween(DARK - 0.03, DARK + 0.03);
      assertThat(corner(image, firstRow, opposite(firstColumn)))
          .isBetween(GREY - 0.03, GREY + 0.03);
    }
  }

  private static String opposite(String side) {
    return switch (side) {
      case "left" -> "right";
      case "right" -> "left";
      case "top" -> "bottom";
      default -> "top";
    };
  }

  private static double corner(GreyImage image, String one, String other) {
    boolean right = one.equals("right") || other.equals("right");
    boolean bottom = one.equals("bottom") || other.equals("bottom");
    int x = right ? image.width() - MARK / 2 : MARK / 2;
    int y = bottom ? image.height() - MARK / 2 : MARK / 2;
    return image.value(y * image.width() + x);
  }
}
