package frieze.image;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.trace.GreyImage;
import java.awt.image.BufferedImage;
import java.awt.image.DataBuffer;
import java.awt.image.IndexColorModel;
import java.awt.image.WritableRaster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * Reads pictures.
 *
 * <p><i>Guarantees:</i> the size is read from the header, and a picture that is too large is
 * refused before its pixels are read; a damaged file ends in a diagnostic.
 */
public final class ImageFile {
  /** The endings of files that are taken for pictures. */
  private static final List<String> ENDINGS =
      List.of(".png", ".jpg", ".jpeg", ".bmp", ".gif", ".tif", ".tiff");

  /** Source: ITU-T T.81, table B.1. */
  private static final byte MARKER = (byte) 0xff;

  private static final byte START_OF_IMAGE = (byte) 0xd8;
  private static final byte START_OF_SCAN = (byte) 0xda;
  private static final byte END_OF_IMAGE = (byte) 0xd9;

  /** What reading and tracing take at their peak; measured. */
  private static final int BYTES_A_PIXEL = 32;

  private static final double RED = 0.299;
  private static final double GREEN = 0.587;
  private static final double BLUE = 0.114;

  private ImageFile() {}

  /** Whether a file's name says that it is a picture. */
  public static boolean isNamedLikeOne(String name) {
    String small = name.toLowerCase(Locale.ROOT);
    return ENDINGS.stream().anyMatch(small::endsWith);
  }

  /**
   * Reads a picture and turns it upright, as its camera noted.
   *
   * @param name to use in diagnostics
   * @throws BadInputException if it can't be read
   */
  public static GreyImage read(String name, byte[] content) {
    if (content.length == 0) {
      throw bad(ImageCode.NOT_A_PICTURE, name, "the file is empty", "copy or save it again");
    }
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
      Iterator<ImageReader> readers = ImageIO.getImageReaders(in);
      if (!readers.hasNext()) {
        throw bad(
            ImageCode.NOT_A_PICTURE,
            name,
            "this is not a picture that Frieze reads",
            "save it as PNG, JPEG, BMP, GIF or TIFF");
      }
      ImageReader reader = readers.next();
      try {
        // What a file says about itself is not needed, and is one more way to be hostile.
        reader.setInput(in, true, true);
        refuseHuge(name, reader);
        refuseTruncated(name, content);
        return Orientation.of(content).upright(grey(reader.read(0)));
      } finally {
        reader.dispose();
      }
    } catch (BadInputException e) {
      throw e;
    } catch (OutOfMemoryError e) {
      // Some formats state sizes of their parts that nothing can hold.
      throw bad(
          ImageCode.TOO_MANY_PIXELS,
          name,
          "there is not enough memory for the picture",
          "make it smaller, or save it as PNG");
    } catch (IOException | RuntimeException e) {
      // The platform's readers end in exceptions of many kinds when a file is damaged.
      throw bad(
          ImageCode.BROKEN_PICTURE,
          name,
          "the picture can't be read: " + String.valueOf(e.getMessage()),
          "open it in a picture program and save it again");
    }
  }

  private static void refuseHuge(String name, ImageReader reader) throws IOException {
    long width = reader.getWidth(0);
    long height = reader.getHeight(0);
    long most = Math.min(GreyImage.MAX_PIXELS, Runtime.getRuntime().maxMemory() / BYTES_A_PIXEL);
    if (width * height > most) {
      throw bad(
          ImageCode.TOO_MANY_PIXELS,
          name,
          String.format(
              Locale.ROOT,
              "the picture has %d x %d pixels, more than %d million",
              width,
              height,
              most / 1_000_000),
          "make it smaller: ten pixels to the millimetre of the work are plenty");
    }
  }

  /** A JPEG that breaks off is grey from there on; the platform's reader says nothing. */
  private static void refuseTruncated(String name, byte[] content) {
    boolean jpeg = content.length > 2 && content[0] == MARKER && content[1] == START_OF_IMAGE;
    if (jpeg && last(content, END_OF_IMAGE) < last(content, START_OF_SCAN)) {
      throw bad(
          ImageCode.BROKEN_PICTURE,
          name,
          "the picture breaks off before its end",
          "copy it from the camera again");
    }
  }

  private static int last(byte[] content, byte code) {
    int i = content.length - 2;
    while (i >= 0 && !(content[i] == MARKER && content[i + 1] == code)) {
      i--;
    }
    return i;
  }

  private static GreyImage grey(BufferedImage picture) {
    int w = picture.getWidth();
    int h = picture.getHeight();
    float[] values = new float[w * h];
    WritableRaster raster = picture.getRaster();
    boolean plain =
        raster.getNumBands() == 1
            && !(picture.getColorModel() instanceof IndexColorModel)
            && raster.getDataBuffer().getDataType() != DataBuffer.TYPE_INT;
    float[] row = new float[w];
    int[] colours = new int[w];
    double most = Math.pow(2, picture.getColorModel().getComponentSize(0)) - 1;
    for (int y = 0; y < h; y++) {
      if (plain) {
        // A grey picture is taken as it is: the platform would change its shades.
        raster.getSamples(0, y, w, 1, 0, row);
        for (int x = 0; x < w; x++) {
          values[y * w + x] = (float) (row[x] / most);
        }
      } else {
        picture.getRGB(0, y, w, 1, colours, 0, w);
        for (int x = 0; x < w; x++) {
          values[y * w + x] = grey(colours[x]);
        }
      }
    }
    return new GreyImage(w, h, values);
  }

  /** The brightness of a colour over white. Source: the weights of Recommendation BT.601. */
  private static float grey(int argb) {
    double alpha = (argb >>> 24) / 255.0;
    double bright =
        RED * ((argb >> 16) & 0xff) + GREEN * ((argb >> 8) & 0xff) + BLUE * (argb & 0xff);
    return (float) (1 - alpha + alpha * bright / 255);
  }

  private static BadInputException bad(ImageCode code, String name, String message, String hint) {
    return new BadInputException(Diagnostic.error(code, SourceSpan.file(name), message, hint));
  }
}
