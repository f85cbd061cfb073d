package frieze.trace;

import frieze.curve.Bounds;
import frieze.diagnostic.Amounts;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;

/**
 * What was too small to be drawn.
 *
 * @param bounds of each speck and pinhole, in millimetres
 * @param smallestMm the least size of what is kept
 */
record Specks(List<Bounds> bounds, double smallestMm) {
  /** Places that are told: those of the largest. */
  private static final int PLACES = 5;

  /** The count, and the places of the largest from the lower left corner of what is kept. */
  String said(Bounds kept) {
    StringJoiner places = new StringJoiner("; ");
    bounds.stream()
        .sorted(Comparator.comparingDouble(b -> -size(b)))
        .limit(PLACES)
        .forEach(b -> places.add(place(b, kept)));
    return bounds.size()
        + (bounds.size() == 1 ? " speck or pinhole" : " specks and pinholes")
        + " smaller than "
        + Amounts.length(smallestMm)
        + (bounds.size() == 1 ? " is" : " are")
        + " left out, at (mm) "
        + places
        + (bounds.size() > PLACES ? "; ..." : "");
  }

  private static String place(Bounds b, Bounds kept) {
    return String.format(
        Locale.ROOT,
        "%.1f, %.1f (%.2f)",
        b.centre().x() - kept.minX(),
        b.centre().y() - kept.minY(),
        size(b));
  }

  static double size(Bounds b) {
    return Math.max(b.width(), b.height());
  }
}
