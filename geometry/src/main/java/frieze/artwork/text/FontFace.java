package frieze.artwork.text;

import frieze.curve.Point;
import java.awt.geom.GeneralPath;
import java.awt.geom.PathIterator;
import java.io.EOFException;
import java.io.IOException;
import java.util.Optional;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.HorizontalHeaderTable;
import org.apache.fontbox.ttf.KerningSubtable;
import org.apache.fontbox.ttf.KerningTable;
import org.apache.fontbox.ttf.NamingTable;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.OTFParser;
import org.apache.fontbox.ttf.OpenTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.jspecify.annotations.Nullable;

/**
 * One face of a font. All lengths are parts of the letter size, Y up from the line that letters
 * stand on.
 *
 * <p><i>Guarantees:</i> outlines, widths and kerned pairs are those of the font file (its {@code
 * kern} table), without hints for a screen.
 *
 * <p><i>Cost:</i> a glyph is read whenever it is drawn.
 */
public final class FontFace {
  /** What stands for a character that a font has no glyph for. */
  public static final int MISSING = 0;

  private static final double USUAL_X_HEIGHT = 0.5;

  private final String name;
  private final OpenTypeFont font;
  private final CmapLookup characters;
  private final @Nullable KerningSubtable pairs;
  private final double unitsPerEm;
  private final double xHeight;
  private final double centre;

  private FontFace(OpenTypeFont font) throws IOException {
    this.font = font;
    this.name = name(font.getNaming());
    this.characters = font.getUnicodeCmapLookup();
    KerningTable kerning = font.getKerning();
    this.pairs = kerning == null ? null : kerning.getHorizontalKerningSubtable();
    this.unitsPerEm = font.getUnitsPerEm();
    OS2WindowsMetricsTable os2 = font.getOS2Windows();
    double height = os2 == null ? 0 : os2.getHeight();
    this.xHeight = height > 0 ? height / unitsPerEm : USUAL_X_HEIGHT;
    HorizontalHeaderTable lines = font.getHorizontalHeader();
    this.centre = (lines.getAscender() + lines.getDescender()) / 2.0 / unitsPerEm;
  }

  /**
   * Reads a TrueType or OpenType font.
   *
   * @throws IOException if the bytes are none, with words for the user
   */
  public static FontFace read(byte[] file) throws IOException {
    try {
      OpenTypeFont font = new OTFParser().parse(new RandomAccessReadBuffer(file));
      FontFace face = new FontFace(font);
      if (!(face.unitsPerEm > 0)) {
        throw new IOException("its letters have no size");
      }
      return face;
    } catch (EOFException e) {
      throw new IOException("it ends before it is whole", e);
    } catch (RuntimeException e) {
      throw new IOException("it is damaged", e);
    }
  }

  private static String name(@Nullable NamingTable naming) {
    String family = naming == null ? null : naming.getFontFamily();
    String style = naming == null ? null : naming.getFontSubFamily();
    String words = family == null ? "a font without a name" : family.strip();
    return style == null || style.equals("Regular") ? words : words + " " + style.strip();
  }

  /** The family and the style, as the font names itself. */
  public String name() {
    return name;
  }

  /** The number of the glyph of a character, or {@link #MISSING}. */
  public int glyph(int codePoint) {
    return characters.getGlyphId(codePoint);
  }

  /** The height of small letters without ascenders. */
  public double xHeight() {
    return xHeight;
  }

  /** The middle between the top and the foot of a line. */
  public double centre() {
    return centre;
  }

  /** How far the next glyph is away; 0 if the font is damaged there. */
  public synchronized double advance(int glyph) {
    try {
      return font.getAdvanceWidth(glyph) / unitsPerEm;
    } catch (IOException | RuntimeException e) {
      return 0;
    }
  }

  /** What is added to the advance between two glyphs; 0 if the font is damaged there. */
  public double kerning(int left, int right) {
    try {
      return pairs == null ? 0 : pairs.getKerning(left, right) / unitsPerEm;
    } catch (RuntimeException e) {
      return 0;
    }
  }

  /**
   * Draws the outline of a glyph; its area is that inside by the nonzero rule.
   *
   * @return false if the font is damaged there, and nothing was drawn
   */
  public boolean draw(int glyph, GlyphPen pen) {
    Optional<GeneralPath> outline = outline(glyph);
    if (outline.isEmpty()) {
      return false;
    }
    double[] c = new double[6];
    for (PathIterator i = outline.get().getPathIterator(null); !i.isDone(); i.next()) {
      switch (i.currentSegment(c)) {
        case PathIterator.SEG_MOVETO -> pen.moveTo(point(c, 0));
        case PathIterator.SEG_LINETO -> pen.lineTo(point(c, 0));
        case PathIterator.SEG_QUADTO -> pen.quadraticTo(point(c, 0), point(c, 2));
        case PathIterator.SEG_CUBICTO -> pen.cubicTo(point(c, 0), point(c, 2), point(c, 4));
        default -> pen.close();
      }
    }
    return true;
  }

  private synchronized Optional<GeneralPath> outline(int glyph) {
    try {
      if (font.isPostScript()) {
        return Optional.of(font.getCFF().getFont().getType2CharString(glyph).getPath());
      }
      GlyphData data = font.getGlyph().getGlyph(glyph);
      return Optional.of(data == null ? new GeneralPath() : data.getPath());
    } catch (IOException | RuntimeException e) {
      return Optional.empty();
    }
  }

  private Point point(double[] c, int at) {
    return new Point(c[at] / unitsPerEm, c[at + 1] / unitsPerEm);
  }
}
