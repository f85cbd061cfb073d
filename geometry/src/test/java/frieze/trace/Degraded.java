package frieze.trace;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageOutputStream;

/**
 * What befalls a drawing before it is traced. How strong each is was fixed before any was tried.
 */
enum Degraded {
  CLEAN,
  BLURRED_AND_NOISY,
  SHADOWED,
  LENS_BENT,
  JPEG_60,
  RULED;

  /** By which part the corners of the picture move outwards. */
  static final double BEND = 0.02;

  GreyImage picture(Render r) {
    return switch (this) {
      case CLEAN, LENS_BENT -> r.plain();
      case BLURRED_AND_NOISY ->
          r.blurred(1).noisy(0.85, 0.15, 0.05, new SplittableRandom(r.width * 31L + r.height));
      case SHADOWED -> r.shades(i -> light(r, i) * (0.9 - 0.8 * r.ink[i]));
      case JPEG_60 -> jpeg(r.plain(), 0.6f);
      case RULED -> r.shades(i -> (0.95 - 0.85 * r.ink[i]) * (1 - 0.3 * ruling(r, i)));
    };
  }

  TraceSettings settings() {
    TraceSettings scan = Trial.scan();
    return this == LENS_BENT ? scan.withLensBend(BEND) : scan;
  }

  Trial.Lens lens() {
    return this == LENS_BENT
        ? (p, w, h) -> {
          double x = p.x() - w / 2.0;
          double y = p.y() - h / 2.0;
          double by = 1 + BEND * (x * x + y * y) / (w * w / 4.0 + h * h / 4.0);
          return new frieze.curve.Point(w / 2.0 + x * by, h / 2.0 + y * by);
        }
        : (p, w, h) -> p;
  }

  Trial trial(Motifs.Motif motif) {
    return Trial.of(motif, this::picture, settings(), lens());
  }

  /** Full light at one corner, a third of it at the opposite one. */
  private static double light(Render r, int i) {
    double x = (i % r.width + 0.5) / r.width;
    int row = i / r.width;
    double y = (row + 0.5) / r.height;
    return 1 - 2 / 3.0 * (x + y) / 2;
  }

  /** Lines 0.3 mm wide, every 5 mm. */
  private static double ruling(Render r, int i) {
    return (i / r.width) % 50 >= 20 && (i / r.width) % 50 < 23 ? 1 : 0;
  }

  private static GreyImage jpeg(GreyImage grey, float quality) {
    BufferedImage image =
        new BufferedImage(grey.width(), grey.height(), BufferedImage.TYPE_BYTE_GRAY);
    for (int i = 0; i < grey.values().length; i++) {
      int value = Math.round(grey.value(i) * 255);
      image.getRaster().setSample(i % grey.width(), i / grey.width(), 0, value);
    }
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(bytes)) {
      ImageWriteParam param = writer.getDefaultWriteParam();
      param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      param.setCompressionQuality(quality);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, null), param);
      out.flush();
      BufferedImage back = ImageIO.read(new ByteArrayInputStream(bytes.toByteArray()));
      float[] values = new float[grey.values().length];
      for (int i = 0; i < values.length; i++) {
        values[i] = back.getRaster().getSample(i % grey.width(), i / grey.width(), 0) / 255f;
      }
      return new GreyImage(grey.width(), grey.height(), values);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
  }
}
