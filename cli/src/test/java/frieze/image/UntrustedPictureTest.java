package frieze.image;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import frieze.diagnostic.BadInputException;
import frieze.fixtures.Seeds;
import frieze.trace.GreyImage;
import frieze.trace.RealSize;
import frieze.trace.TraceSettings;
import frieze.trace.Tracer;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Arrays;
import java.util.SplittableRandom;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Pictures that are damaged, or made to do harm. */
class UntrustedPictureTest {
  private static byte[] picture(String kind) {
    BufferedImage image = new BufferedImage(60, 50, BufferedImage.TYPE_INT_RGB);
    Graphics2D g = image.createGraphics();
    g.setColor(Color.WHITE);
    g.fillRect(0, 0, 60, 50);
    g.setColor(new Color(0x204010));
    g.fillOval(10, 10, 30, 25);
    g.drawLine(5, 45, 55, 5);
    g.dispose();
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      assertThat(ImageIO.write(image, kind, out)).isTrue();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  private static BadInputException refused(byte[] content) {
    BadInputException e =
        catchThrowableOfType(BadInputException.class, () -> ImageFile.read("p", content));
    assertThat(e).isNotNull();
    return e;
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpg", "bmp", "gif", "tif"})
  void a_picture_that_breaks_off_is_refused(String kind) {
    byte[] whole = picture(kind);
    assertThat(ImageFile.read("p", whole).width()).isEqualTo(60);
    for (double share : new double[] {0.4, 0.7, 0.9}) {
      byte[] half = Arrays.copyOf(whole, (int) (whole.length * share));
      assertThat(refused(half).diagnostics().get(0).code())
          .as("%s, %s of it", kind, share)
          .isIn(ImageCode.BROKEN_PICTURE, ImageCode.NOT_A_PICTURE);
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"png", "jpg", "bmp", "gif", "tif"})
  void a_spoilt_picture_is_read_or_refused(String kind) {
    mutate(kind, kind.equals("png") ? 200 : 40);
  }

  @Tag("soak")
  @ParameterizedTest
  @ValueSource(strings = {"png", "jpg", "bmp", "gif", "tif"})
  void many_spoilt_pictures_are_read_or_refused(String kind) {
    mutate(kind, kind.equals("png") ? 10_000 : 2_000);
  }

  private static void mutate(String kind, int count) {
    byte[] whole = picture(kind);
    long seed = Seeds.seed(kind.hashCode());
    SplittableRandom random = new SplittableRandom(seed);
    for (int i = 0; i < count; i++) {
      byte[] spoilt = whole.clone();
      int changes = 1 + random.nextInt(4);
      for (int k = 0; k < changes; k++) {
        // Half of the changes hit the headers, where they do most harm.
        int within = random.nextBoolean() ? Math.min(120, spoilt.length) : spoilt.length;
        spoilt[random.nextInt(within)] = (byte) random.nextInt(256);
      }
      try {
        GreyImage image = ImageFile.read("p", spoilt);
        Tracer.trace("p", image, TraceSettings.of(new RealSize.Height(20)));
      } catch (BadInputException e) {
        assertThat(e.diagnostics()).isNotEmpty();
      } catch (RuntimeException | Error e) {
        throw new AssertionError(kind + ", seed " + seed + ", round " + i, e);
      }
    }
  }
}
