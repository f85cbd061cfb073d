package frieze.bridge;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.region.MedialAxis;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;

/**
 * Lists what a kerf cannot do: slots narrower than it, points that it cannot reach, and webs of
 * metal thinner than a stated least.
 *
 * <p>A jet of diameter k reaches what discs of that size within an opening cover. The openings'
 * middle lines tell where no such disc fits.
 *
 * <p><i>Guarantees:</i> each width is twice the distance from its place to the boundary, to
 * rounding. A point is listed where the cut ends at least half a kerf before it (corners of 60
 * degrees or sharper).
 *
 * <p><i>Approximation:</i> the length of a slot or web is that of its middle line.
 */
public final class KerfLimits {
  /** Middle lines leave out what covers less than this. */
  private static final double AXIS_MM = 0.02;

  private KerfLimits() {}

  /** One thing that the kerf cannot do. */
  public enum Kind {
    SLOT_NARROW(BridgeCode.SLOT_NARROW),
    WEB_THIN(BridgeCode.WEB_THIN),
    POINT_LOST(BridgeCode.POINT_LOST),
    ALL_LOST(BridgeCode.ALL_LOST);

    private final BridgeCode code;

    Kind(BridgeCode code) {
      this.code = code;
    }

    /** The code of its diagnostic. */
    public BridgeCode code() {
      return code;
    }
  }

  /**
   * Where and how much.
   *
   * @param place the narrowest place, or the tip of a point
   * @param widthMm there; 0 for a point
   * @param lengthMm of the narrow stretch; for a point, by how much it ends early
   */
  public record Trouble(Kind kind, Point place, double widthMm, double lengthMm) {
    /** The same elsewhere, by a map that keeps sizes. */
    public Trouble movedBy(Affine map) {
      return new Trouble(kind, map.apply(place), widthMm, lengthMm);
    }
  }

  /**
   * Looks at all openings and at all metal.
   *
   * @param outline the area within the panel's outline
   * @param material what stays, with its bridges
   * @param kerfMm the full width that is taken away
   * @param leastWebMm metal thinner than this would warp or burn
   */
  public static List<Trouble> find(
      Region outline, Region material, double kerfMm, double leastWebMm) {
    List<Trouble> found = new ArrayList<>();
    for (Region opening : outline.minus(material).parts()) {
      opening(opening, kerfMm, found);
    }
    for (Region part : material.parts()) {
      NarrowRuns runs = new NarrowRuns(MedialAxis.of(part, AXIS_MM), leastWebMm / 2);
      for (NarrowRuns.Run run : runs.stretches()) {
        found.add(new Trouble(Kind.WEB_THIN, run.place(), run.widthMm(), run.lengthMm()));
      }
    }
    return found;
  }

  private static void opening(Region opening, double kerfMm, List<Trouble> found) {
    MedialAxis axis = MedialAxis.of(opening, AXIS_MM);
    var widest = axis.largest();
    NarrowRuns runs = new NarrowRuns(axis, kerfMm / 2);
    if (widest.radiusMm() < kerfMm / 2) {
      found.add(
          new Trouble(Kind.ALL_LOST, widest.centre(), 2 * widest.radiusMm(), runs.totalLengthMm()));
      return;
    }
    for (NarrowRuns.Run run : runs.points()) {
      if (run.lengthMm() >= kerfMm / 2) {
        found.add(new Trouble(Kind.POINT_LOST, run.place(), 0, run.lengthMm()));
      }
    }
    for (NarrowRuns.Run run : runs.stretches()) {
      found.add(new Trouble(Kind.SLOT_NARROW, run.place(), run.widthMm(), run.lengthMm()));
    }
  }

  /**
   * Says each trouble as a warning, or as an error if told to be strict.
   *
   * @param where the place in the job to name
   */
  public static List<Diagnostic> diagnostics(
      List<Trouble> troubles, boolean strict, SourceSpan where) {
    return troubles.stream().map(t -> diagnostic(t, strict, where)).toList();
  }

  private static Diagnostic diagnostic(Trouble t, boolean strict, SourceSpan where) {
    String at = " at " + Amounts.place(t.place().x(), t.place().y());
    String text =
        switch (t.kind()) {
          case SLOT_NARROW ->
              "a slot"
                  + at
                  + " is "
                  + Amounts.length(t.widthMm())
                  + " wide, less than the kerf, over "
                  + Amounts.length(t.lengthMm());
          case WEB_THIN ->
              "a web of metal"
                  + at
                  + " is only "
                  + Amounts.length(t.widthMm())
                  + " wide over "
                  + Amounts.length(t.lengthMm());
          case POINT_LOST -> "the point" + at + " ends " + Amounts.length(t.lengthMm()) + " early";
          case ALL_LOST ->
              "the opening"
                  + at
                  + " is nowhere wider than "
                  + Amounts.length(t.widthMm())
                  + ", less than the kerf";
        };
    String hint = "change the drawing, or use a smaller nozzle";
    return strict
        ? Diagnostic.error(t.kind().code(), where, text, hint)
        : Diagnostic.warning(t.kind().code(), where, text, hint);
  }
}
