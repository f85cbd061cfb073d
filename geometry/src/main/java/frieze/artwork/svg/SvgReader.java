package frieze.artwork.svg;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.ArtworkReader;
import frieze.artwork.Limits;
import frieze.artwork.Piece;
import frieze.artwork.text.FontFamilies;
import frieze.curve.Bounds;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostics;
import java.util.List;
import java.util.Locale;

/**
 * Reads SVG drawings.
 *
 * <p><i>Guarantees:</i> lines and circular arcs come out as exact lines and arcs, to the rounding
 * of a {@code double}; Y points up and the picture is not mirrored; what is not drawn is not there;
 * whatever is left out is in the notes; nothing outside the file is opened and nothing in it is
 * run.
 *
 * <p><i>Approximation:</i> none; curves are flattened by whoever needs it.
 *
 * <p><i>Cost:</i> linear in the file and in what its {@code use} elements draw, both bounded.
 *
 * <p><i>Source:</i> SVG 1.1 (second edition), and SVG 2 where it is stricter.
 */
public final class SvgReader implements ArtworkReader {
  private final double mmPerUnit;
  private final FontFamilies fonts;

  /** Makes a reader that takes sizes from the file, at 96 px to the inch. */
  public SvgReader() {
    this(Double.NaN, FontFamilies.BUNDLED);
  }

  private SvgReader(double mmPerUnit, FontFamilies fonts) {
    this.mmPerUnit = mmPerUnit;
    this.fonts = fonts;
  }

  /**
   * Makes a reader for drawings whose outermost units have a known size, whatever their width and
   * height say.
   *
   * @param mmPerUnit millimetres to one unit of the outermost coordinates
   */
  public static SvgReader withScale(double mmPerUnit) {
    if (!(mmPerUnit > 0) || !Double.isFinite(mmPerUnit)) {
      throw new IllegalArgumentException("mmPerUnit must be > 0 but was " + mmPerUnit + " mm");
    }
    return new SvgReader(mmPerUnit, FontFamilies.BUNDLED);
  }

  /** A reader that sizes drawings like this one and sets text in other fonts. */
  public SvgReader withFonts(FontFamilies others) {
    return new SvgReader(mmPerUnit, others);
  }

  @Override
  public Artwork read(String source, byte[] content) {
    SourceText text = SourceText.decode(source, content);
    SvgElement root = SvgParser.parse(text);
    Diagnostics found = new Diagnostics();
    Page page = Page.of(root, mmPerUnit, new Report(text, found));
    List<Piece> pieces = new SvgWalker(root, text, found, fonts).draw(page);
    found.throwIfErrors();
    Artwork artwork = new Artwork(source, pieces, page.sizeAssumed(), found.sorted());
    requireSomething(artwork, new Report(text, found), root);
    return artwork;
  }

  private static void requireSomething(Artwork artwork, Report report, SvgElement root) {
    Bounds bounds = artwork.bounds();
    double extent = Math.max(bounds.width(), bounds.height());
    if (extent > Limits.MAX_EXTENT_MM) {
      report.error(
          ArtworkCode.NUMBER_OUT_OF_RANGE,
          root,
          String.format(Locale.ROOT, "the drawing is %.4g m wide or high", extent / 1000),
          "give the svg element a width and a height in mm or in");
    } else if (artwork.pieces().isEmpty()) {
      report.error(
          ArtworkCode.NOTHING_TO_CUT,
          root,
          "nothing in the drawing has an outline that shows",
          "trace pictures; check that the layers are visible");
    }
    if (report.found().hasErrors()) {
      throw new BadInputException(report.found().sorted());
    }
  }
}
