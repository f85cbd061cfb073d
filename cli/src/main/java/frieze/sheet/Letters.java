package frieze.sheet;

import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Outlines of letters for pictures, from the open font that comes with the PDF library: a picture
 * looks alike on machines that have no fonts.
 */
final class Letters {
  private static final String FONT = "/org/apache/pdfbox/resources/ttf/LiberationSans-Regular.ttf";

  private final TrueTypeFont font;

  private Letters(TrueTypeFont font) {
    this.font = font;
  }

  static Letters load() {
    try (InputStream in = PDDocument.class.getResourceAsStream(FONT)) {
      if (in == null) {
        throw new IllegalStateException("the font is not in the PDF library: " + FONT);
      }
      return new Letters(new TTFParser().parse(new RandomAccessReadBuffer(in)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** How wide a text of that size is. */
  double width(String text, double size) {
    try {
      double sum = 0;
      for (int i = 0; i < text.length(); i++) {
        sum += font.getAdvanceWidth(glyph(text.charAt(i)));
      }
      return sum * size / font.getUnitsPerEm();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A line of text that starts at the origin, Y down. */
  Shape outline(String text, double size) {
    try {
      double scale = size / font.getUnitsPerEm();
      Path2D line = new Path2D.Double();
      double x = 0;
      for (int i = 0; i < text.length(); i++) {
        int glyph = glyph(text.charAt(i));
        var data = font.getGlyph().getGlyph(glyph);
        if (data != null) {
          AffineTransform place = new AffineTransform(scale, 0, 0, -scale, x * scale, 0);
          line.append(data.getPath().getPathIterator(place), false);
        }
        x += font.getAdvanceWidth(glyph);
      }
      return line;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private int glyph(char letter) throws IOException {
    return font.getUnicodeCmapLookup().getGlyphId(letter);
  }
}
