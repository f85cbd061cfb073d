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

  /** A picture that becomes clearer while it arrives goes about ten times over its pixels. */
  private static final long MOST_SCANNED = 700_000_000;

  private static final int GIF_EXCESS = 2;

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
        refuseDamaged(name, content, reader);
        return Orientation.of(content).upright(grey(pixels(name, reader)));
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

  /** Refuses what the platform's readers take for a picture without a word. */
  private static void refuseDamaged(String name, byte[] content, ImageReader reader)
      throws IOException {
    long pixels = (long) reader.getWidth(0) * reader.getHeight(0);
    if (JpegData.isJpeg(content)) {
      if (!JpegData.isWhole(content)) {
        throw breaksOff(name, "before its end");
      }
      int scans = JpegData.scans(content);
      if (scans > MOST_SCANNED / pixels) {
        throw bad(
            ImageCode.BROKEN_PICTURE,
            name,
            String.format(
                Locale.ROOT,
                "the file goes %d times over the %d pixels of the picture",
                scans,
                pixels),
            "open it in a picture program and save it again");
      }
    } else if (GifData.isGif(content)) {
      long held = GifData.pixels(content, GIF_EXCESS * pixels);
      if (held < pixels) {
        throw breaksOff(name, "after " + held + " of its " + pixels + " pixels");
      }
      if (held >= GIF_EXCESS * pixels) {
        throw bad(
            ImageCode.BROKEN_PICTURE,
            name,
            "the file holds more than twice the " + pixels + " pixels that it says it has",
            "open it in a picture program and save it again");
      }
    }
  }

  /** Reads the pixels; where some are missing, the platform's reader for JPEG only warns. */
  private static BufferedImage pixels(String name, ImageReader reader) throws IOException {
    boolean[] endsEarly = new boolean[1];
    reader.addIIOReadWarningListener(
        (source, warning) -> {
          if (warning.toLowerCase(Locale.ROOT).contains("premature end")) {
            endsEarly[0] = true;
            source.abort();
          }
        });
    BufferedImage picture = reader.read(0);
    if (endsEarly[0]) {
      throw breaksOff(name, "before its end");
    }
    return picture;
  }

  private static BadInputException breaksOff(String name, String where) {
    return bad(
        ImageCode.BROKEN_PICTURE,
        name,
        "the picture breaks off " + where,
        "copy it from the camera or from where it was saved again");
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
