package frieze.artwork.source;

import frieze.artwork.mend.Repair;
import frieze.artwork.text.FontFamilies;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is asked of a drawing.
 *
 * @param unitMm what one unit of the drawing measures; empty to believe the file
 * @param pick an id, class, colour or group of some pieces; empty for all
 * @param heightMm the height to scale it to
 * @param widthMm the width to scale it to, if no height is given
 * @param gapMm ends of lines nearer than this are joined
 * @param smallestMm what is smaller in both directions is left out; 0 to keep all
 * @param outlineStrokes whether lines become the areas that their width covers
 * @param fonts what text is set in
 */
public record DrawingRequest(
    OptionalDouble unitMm,
    Optional<String> pick,
    OptionalDouble heightMm,
    OptionalDouble widthMm,
    double gapMm,
    double smallestMm,
    boolean outlineStrokes,
    FontFamilies fonts) {
  /** The drawing as the file has it. */
  public static final DrawingRequest AS_DRAWN =
      new DrawingRequest(
          OptionalDouble.empty(),
          Optional.empty(),
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          Repair.USUAL_GAP_MM,
          0,
          false);

  /** A request with text in the fonts that come with Frieze. */
  public DrawingRequest(
      OptionalDouble unitMm,
      Optional<String> pick,
      OptionalDouble heightMm,
      OptionalDouble widthMm,
      double gapMm,
      double smallestMm,
      boolean outlineStrokes) {
    this(unitMm, pick, heightMm, widthMm, gapMm, smallestMm, outlineStrokes, FontFamilies.BUNDLED);
  }

  /** The same with text in other fonts. */
  public DrawingRequest withFonts(FontFamilies others) {
    return new DrawingRequest(
        unitMm, pick, heightMm, widthMm, gapMm, smallestMm, outlineStrokes, others);
  }
}
