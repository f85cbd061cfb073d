package frieze.artwork.mend;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.Piece;
import frieze.curve.Path;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/**
 * Mends a drawing that has its real size.
 *
 * <p><i>Guarantees:</i> ends move by no more than the gap; lines that lie on each other by no more
 * than the tolerance of flattening; outlines that cross by no more than that and the one of fitting
 * arcs; nothing else moves. Each mend is in the list with its place, and in the notes of the
 * drawing by count, but for outlines that were only turned round.
 *
 * @param artwork the mended drawing, with its notes
 * @param mends what was done, in the order of the passes
 */
public record Repair(Artwork artwork, List<Mend> mends) {
  /** Ends nearer than this are one, unless a job says otherwise. */
  public static final double USUAL_GAP_MM = 0.05;

  private static final int PLACES = 5;

  public Repair {
    mends = List.copyOf(mends);
  }

  /**
   * Mends a drawing.
   *
   * @param gapMm ends nearer than this are joined, and areas thinner than this are slivers
   * @param smallestMm what is smaller than this in both directions is left out; 0 to keep all
   * @throws BadInputException if nothing is left
   */
  public static Repair of(Artwork drawn, double gapMm, double smallestMm) {
    if (!(gapMm >= 0 && smallestMm >= 0) || !Double.isFinite(gapMm + smallestMm)) {
      throw new IllegalArgumentException(
          "gapMm and smallestMm must be >= 0 but were " + gapMm + ", " + smallestMm + " mm");
    }
    List<Mend> mends = new ArrayList<>();
    Artwork once = new Doubled(mends).apply(new Repeats(mends).apply(drawn));
    Artwork straight = new Overlaps(gapMm, mends).apply(once);
    Artwork apart = new ArcOverlaps(gapMm, mends).apply(straight);
    Artwork joined = new JoinEnds(gapMm, mends).apply(apart);
    Artwork ordered = new Areas(mends).apply(new Flat(mends).apply(joined));
    Artwork kept = new Smallest(smallestMm, gapMm, mends).apply(ordered);
    requireSomething(drawn, kept);
    List<Diagnostic> notes = new ArrayList<>(drawn.notes());
    for (Mend.Kind kind : Mend.Kind.values()) {
      List<Mend> some = mends.stream().filter(m -> m.kind() == kind).toList();
      if (!some.isEmpty() && kind != Mend.Kind.TURNED) {
        notes.add(note(kind.code(), drawn.source(), text(kind, some)));
      }
    }
    openLines(kept, notes);
    return new Repair(new Artwork(kept.source(), kept.pieces(), kept.sizeAssumed(), notes), mends);
  }

  private static void requireSomething(Artwork drawn, Artwork kept) {
    if (kept.pieces().isEmpty()) {
      throw new BadInputException(
          Diagnostic.error(
              ArtworkCode.NOTHING_TO_CUT,
              SourceSpan.file(drawn.source()),
              "everything in the drawing is smaller or thinner than what is to be kept",
              "check the size of the drawing; make `smallest` or `gap` smaller"));
    }
  }

  private static String counted(int count, String noun) {
    return count + " " + noun + (count == 1 ? "" : "s");
  }

  private static Diagnostic note(ArtworkCode code, String source, String message) {
    return Diagnostic.note(code, SourceSpan.file(source), message);
  }

  /** The count, and the places of the largest. */
  private static String text(Mend.Kind kind, List<Mend> some) {
    StringBuilder text = new StringBuilder(kind.words()).append(": ").append(some.size());
    List<Mend> largest =
        some.stream().sorted(Comparator.comparingDouble(m -> -m.amountMm())).limit(PLACES).toList();
    String between = ", at (mm) ";
    for (Mend mend : largest) {
      text.append(between)
          .append(String.format(Locale.ROOT, "%.3f, %.3f", mend.at().x(), mend.at().y()));
      if (mend.amountMm() > 0) {
        text.append(String.format(Locale.ROOT, " (%.4f)", mend.amountMm()));
      }
      between = "; ";
    }
    return text + (some.size() > PLACES ? "; ..." : "");
  }

  /** Tells of a drawing of bare lines which are open, since those enclose nothing. */
  private static void openLines(Artwork artwork, List<Diagnostic> notes) {
    List<Path> bare = new ArrayList<>();
    for (Piece piece : artwork.pieces()) {
      if (piece.stroke().isPresent() && piece.stroke().get().width() == 0) {
        bare.addAll(piece.paths());
      }
    }
    List<Path> open = bare.stream().filter(p -> !p.closed()).toList();
    if (!open.isEmpty()) {
      String first =
          String.format(
              Locale.ROOT, "%.3f, %.3f", open.get(0).start().x(), open.get(0).start().y());
      notes.add(
          note(
              ArtworkCode.MENDED,
              artwork.source(),
              counted(bare.size() - open.size(), "closed outline")
                  + " and "
                  + counted(open.size(), "open line")
                  + "; what is open encloses no area; the first open line starts at (mm) "
                  + first));
    }
  }
}
