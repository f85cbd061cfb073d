package frieze.artwork.dxf;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.ArtworkReader;
import frieze.artwork.Limits;
import frieze.artwork.Piece;
import frieze.curve.Bounds;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Reads DXF drawings in text form.
 *
 * <p><i>Guarantees:</i> lines, circles, arcs and bulges come out as exact lines and arcs, to the
 * rounding of a {@code double}; splines of degree 3 or less without weights are exact cubics;
 * closed lines enclose areas, by the even-odd rule within a layer and colour; each kind of entity
 * that is not understood is in the notes with its count.
 *
 * <p><i>Approximation:</i> other splines are within 1e-7 of their size.
 *
 * <p><i>Cost:</i> linear in the file and in what its blocks draw, both bounded.
 *
 * <p><i>Source:</i> the published DXF reference, as known from memory.
 */
public final class DxfReader implements ArtworkReader {
  private final OptionalDouble mmPerUnit;

  /** Makes a reader that takes the unit from the file, and millimetres if it names none. */
  public DxfReader() {
    this.mmPerUnit = OptionalDouble.empty();
  }

  private DxfReader(double mmPerUnit) {
    this.mmPerUnit = OptionalDouble.of(mmPerUnit);
  }

  /** Makes a reader for drawings whose unit is known, whatever the file says. */
  public static DxfReader withScale(double mmPerUnit) {
    if (!(mmPerUnit > 0) || !Double.isFinite(mmPerUnit)) {
      throw new IllegalArgumentException("mmPerUnit must be > 0 but was " + mmPerUnit + " mm");
    }
    return new DxfReader(mmPerUnit);
  }

  @Override
  public Artwork read(String source, byte[] content) {
    DxfFile file = DxfParser.parse(source, content);
    Diagnostics found = new Diagnostics();
    DxfLeftOut leftOut = new DxfLeftOut();
    double stated = DxfUnits.mmPerUnit(file.unitCode());
    double scale = mmPerUnit.orElse(Double.isNaN(stated) ? 1 : stated);
    List<Piece> pieces = new DxfDrawer(file, found, leftOut).draw(scale);
    leftOut.report(source, found);
    if (mmPerUnit.isEmpty() && Double.isNaN(stated)) {
      found.warning(
          ArtworkCode.SIZE_ASSUMED,
          SourceSpan.file(source),
          "the drawing does not say its unit; one unit is taken as 1 mm",
          "say it in the job with `unit: 1 in` or `unit: 1 mm`, or give a height or a width");
    }
    Artwork artwork = new Artwork(source, pieces, said(file.unitCode(), scale), found.sorted());
    requireSomething(artwork);
    return artwork;
  }

  private String said(int unitCode, double scale) {
    if (mmPerUnit.isPresent()) {
      return "one unit of the drawing is " + Amounts.length(scale) + ", as asked for";
    }
    return Double.isNaN(DxfUnits.mmPerUnit(unitCode))
        ? "the drawing has no unit: one unit taken as 1 mm"
        : "in " + DxfUnits.name(unitCode) + ", as the file says";
  }

  private static void requireSomething(Artwork artwork) {
    Diagnostics found = new Diagnostics();
    found.addAll(artwork.notes());
    Bounds bounds = artwork.bounds();
    if (Math.max(bounds.width(), bounds.height()) > Limits.MAX_EXTENT_MM) {
      found.add(
          error(
              artwork.source(),
              ArtworkCode.NUMBER_OUT_OF_RANGE,
              "the drawing is more than a kilometre wide or high",
              "say its unit in the job with `unit: 1 mm`"));
    } else if (artwork.pieces().isEmpty()) {
      found.add(
          error(
              artwork.source(),
              ArtworkCode.NOTHING_TO_CUT,
              "there are no lines, arcs or curves in the drawing that show",
              "check that the layers are visible"));
    }
    if (found.hasErrors()) {
      throw new BadInputException(found.sorted());
    }
  }

  private static Diagnostic error(String source, ArtworkCode code, String message, String hint) {
    return Diagnostic.error(code, SourceSpan.file(source), message, hint);
  }
}
