package frieze.artwork.source;

import frieze.artwork.Artwork;
import frieze.artwork.ArtworkCode;
import frieze.artwork.ArtworkReader;
import frieze.artwork.Limits;
import frieze.artwork.Piece;
import frieze.artwork.dxf.DxfReader;
import frieze.artwork.mend.Repair;
import frieze.artwork.pen.Clipping;
import frieze.artwork.pen.StrokeOutline;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Bounds;
import frieze.curve.Tolerances;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.Locale;

/** Reads drawings of every kind and gives them the size and the pieces that are asked for. */
public final class DrawingFile {
  /** The endings of the names of files that can be read. */
  public static final List<String> ENDINGS = List.of(".svg", ".dxf");

  /** Outlines of lines are not made finer than for a drawing that grows by this. */
  private static final double MOST_GROWTH = 1000;

  /** Bounds of what is clipped are found first with this share of the drawing as tolerance. */
  private static final double ROUGHLY = 1e-3;

  /** Names that are listed where one is not found. */
  private static final int MOST_NAMES = 12;

  private DrawingFile() {}

  /** Whether a file of that name can be read. */
  public static boolean isKnown(String name) {
    return ENDINGS.stream().anyMatch(name.toLowerCase(Locale.ROOT)::endsWith);
  }

  /** Whether the text in a file of that name is left out. */
  public static boolean isWithoutText(String name) {
    return isDxf(name);
  }

  private static boolean isDxf(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(".dxf");
  }

  /**
   * Reads, picks, scales, then mends, so that gaps are measured at the real size.
   *
   * @throws BadInputException if it can't be read, or nothing is left to cut
   */
  public static Repair read(String name, byte[] content, DrawingRequest asked) {
    return shaped(reader(name, asked).read(name, content), asked);
  }

  /**
   * Picks, scales and mends a drawing that was read already.
   *
   * @throws BadInputException if nothing is left to cut
   */
  public static Repair shaped(Artwork read, DrawingRequest asked) {
    Artwork picked = picked(read, asked);
    Effort.check(picked, Tolerances.DEFAULT.offsetMm() / growth(picked.bounds(), asked));
    double tolerance = Tolerances.DEFAULT.offsetMm() / growth(seenBounds(picked), asked);
    Artwork drawn = clipped(outlined(picked, asked, tolerance), tolerance);
    Artwork sized = drawn;
    if (asked.heightMm().isPresent() && drawn.bounds().height() > 0) {
      sized = drawn.withHeight(asked.heightMm().getAsDouble());
    } else if (asked.widthMm().isPresent() && drawn.bounds().width() > 0) {
      sized = drawn.withWidth(asked.widthMm().getAsDouble());
    } else if (asked.heightMm().isPresent() || asked.widthMm().isPresent()) {
      throw bad(
          drawn,
          ArtworkCode.NOTHING_TO_CUT,
          "a drawing that is one straight line has no height or no width to scale to",
          "give the other one");
    }
    return Repair.of(sized, asked.gapMm(), asked.smallestMm());
  }

  /** How much a drawing will grow, so that scaling up keeps the tolerance; at least 1. */
  private static double growth(Bounds b, DrawingRequest asked) {
    double grows =
        Math.max(
            asked.heightMm().orElse(0) / Math.max(b.height(), Double.MIN_NORMAL),
            asked.widthMm().orElse(0) / Math.max(b.width(), Double.MIN_NORMAL));
    return Double.isFinite(grows) ? Math.min(MOST_GROWTH, Math.max(1, grows)) : 1;
  }

  private static Bounds seenBounds(Artwork drawn) {
    Bounds b = drawn.bounds();
    double rough = Math.max(b.width(), b.height()) * ROUGHLY;
    return Clipping.isNeeded(drawn) && rough > 0 ? Clipping.of(drawn, rough).bounds() : b;
  }

  private static Artwork outlined(Artwork drawn, DrawingRequest asked, double toleranceMm) {
    if (!asked.outlineStrokes()) {
      return drawn;
    }
    Artwork areas = StrokeOutline.of(drawn, toleranceMm);
    if (areas.pieces().isEmpty()) {
      throw bad(drawn, ArtworkCode.NOTHING_TO_CUT, "no line in the drawing has a width", "");
    }
    Bounds b = areas.bounds();
    if (Math.max(b.width(), b.height()) > Limits.MAX_EXTENT_MM) {
      throw bad(
          drawn,
          ArtworkCode.NUMBER_OUT_OF_RANGE,
          String.format(
              Locale.ROOT,
              "with the width of its lines the drawing is %.4g m wide or high",
              Math.max(b.width(), b.height()) / 1000),
          "limit the mitres of its lines, or make the lines thinner");
    }
    return areas;
  }

  private static Artwork clipped(Artwork drawn, double toleranceMm) {
    Artwork seen = Clipping.of(drawn, toleranceMm);
    if (seen.pieces().isEmpty()) {
      throw bad(
          drawn,
          ArtworkCode.NOTHING_TO_CUT,
          "nothing in the drawing shows through its clips",
          "remove the clips in the drawing program");
    }
    return seen;
  }

  private static ArtworkReader reader(String name, DrawingRequest asked) {
    if (isDxf(name)) {
      return asked.unitMm().isPresent()
          ? DxfReader.withScale(asked.unitMm().getAsDouble())
          : new DxfReader();
    }
    SvgReader svg =
        asked.unitMm().isPresent()
            ? SvgReader.withScale(asked.unitMm().getAsDouble())
            : new SvgReader();
    return svg.withFonts(asked.fonts());
  }

  private static Artwork picked(Artwork drawn, DrawingRequest asked) {
    if (asked.pick().isEmpty()) {
      return drawn;
    }
    String word = asked.pick().get();
    List<Piece> pieces = drawn.pieces().stream().filter(p -> p.label().answersTo(word)).toList();
    if (pieces.isEmpty()) {
      throw bad(
          drawn,
          ArtworkCode.NOTHING_PICKED,
          "nothing in the drawing has the id, class, colour or group \"" + word + "\"",
          "without `pick`, all of the drawing is taken" + names(drawn));
    }
    return new Artwork(drawn.source(), pieces, drawn.sizeAssumed(), drawn.notes());
  }

  /** The groups and layers of a drawing, as far as they fit into a hint. */
  private static String names(Artwork drawn) {
    List<String> names =
        drawn.pieces().stream().flatMap(p -> p.label().groups().stream()).distinct().toList();
    String some = String.join(", ", names.subList(0, Math.min(MOST_NAMES, names.size())));
    String more = names.size() > MOST_NAMES ? ", ..." : "";
    return names.isEmpty() ? "" : "; its groups and layers are: " + some + more;
  }

  private static BadInputException bad(
      Artwork drawn, ArtworkCode code, String message, String hint) {
    return new BadInputException(
        Diagnostic.error(code, SourceSpan.file(drawn.source()), message, hint));
  }
}
