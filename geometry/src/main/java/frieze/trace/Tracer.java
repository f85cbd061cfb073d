package frieze.trace;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Traces the outlines of a picture.
 *
 * <p>Grey values, light evened out, share of ink, printed lines taken out, a slight blur, the line
 * of half ink between the pixels, corners, smooth runs between them, lines and arcs.
 *
 * <p><i>Guarantees:</i> outlines are closed, ink to their left, holes kept; what is left out is
 * counted in the notes.
 *
 * <p><i>Approximation:</i> lines and arcs within the stated tolerance of the smoothed outline; how
 * far that lies from what was drawn depends on the picture, and is measured in the tests.
 *
 * <p><i>Cost:</i> linear in the pixels; about 20 bytes of memory a pixel.
 */
public final class Tracer {
  private static final double QUIET = 0.02;
  private static final double BLUR_PX = 1;

  /** What rounding to ink or paper alone does to the pixels of an outline, as noise. */
  private static final double ROUNDED_NOISE = 0.1;

  private static final double QUIET_WINDOW_PX = 3.5;
  private static final double NOISY_WINDOW_PX = 6;

  /**
   * The tolerance of lines and arcs, in pixels, where none is asked for: the more the outline
   * scatters, the less would be gained by following it.
   */
  private static final double LEAST_FIT_PX = 0.085;

  private static final double FIT_BY_SCATTER = 7;
  private static final double MOST_FIT_PX = 0.3;
  private static final double HALF = 0.5;
  private static final int SIZE_ROUNDS = 6;

  /** A line nearer to the border than this was closed along it. */
  private static final double BORDER_PX = 0.6;

  private final TipBudget tips = new TipBudget();
  private final String source;
  private final GreyImage image;
  private final TraceSettings settings;
  private final Diagnostics found = new Diagnostics();
  private LensBend bend;

  private Tracer(String source, GreyImage image, TraceSettings settings) {
    this.source = source;
    this.image = image;
    this.settings = settings;
    this.bend = new LensBend(settings.lensBend(), OptionalDouble.empty());
  }

  /**
   * Traces a picture.
   *
   * @param source the name to use in diagnostics
   * @throws BadInputException if there is nothing to trace
   */
  public static Traced trace(String source, GreyImage image, TraceSettings settings) {
    return new Tracer(source, image, settings).trace();
  }

  private Traced trace() {
    GreyImage seen = image;
    if (settings.size() instanceof RealSize.Sheet sheet) {
      squared(sheet); // Corners that go round nothing are told before all else.
      bend = LensBend.of(image, sheet.corners(), settings.lensBend());
      tellBend();
      seen = SheetCrop.crop(image, sheet.corners());
    }
    Paper.Ink ink = Paper.ink(settings.paperOnInk() ? negative(seen) : seen);
    if (!(ink.contrast() >= Paper.LEAST_CONTRAST)) {
      throw refused(
          TraceCode.NO_CONTRAST,
          "ink and paper can't be told apart",
          "take the picture in better light, or draw with a darker pen");
    }
    double seenNoise = Edges.noise(ink.share());
    if (seenNoise < QUIET) {
      Ruling.remove(ink.share(), ink.contrast());
    }
    double noise = image.hasTwoShades() ? Math.max(seenNoise, ROUNDED_NOISE) : seenNoise;
    GreyImage soft = shifted(Blur.gaussian(ink.share(), BLUR_PX));
    List<List<Point>> lines = Contours.of(soft);
    PixelMap map = map(lines);
    List<List<Point>> kept = withoutSpecks(lines, map);
    List<Outline> outlines = new ArrayList<>();
    for (List<Point> line : kept) {
      outlines.add(Outline.of(line, grain(ink.share(), soft, line, noise)));
    }
    return result(outlines, map, fitPx(outlines));
  }

  private Outline.Grain grain(GreyImage ink, GreyImage soft, List<Point> line, double noise) {
    double sigma = Edges.blurPx(soft, line);
    double left = noise / (2 * Math.sqrt(Math.PI) * BLUR_PX); // after the blur
    double scatter = left * Math.sqrt(2 * Math.PI) * sigma;
    double asTaken = Math.sqrt(Math.max(0, sigma * sigma - BLUR_PX * BLUR_PX));
    Optional<TipFit> fit =
        settings.threshold() == HALF && TipFit.isOfUse(asTaken)
            ? Optional.of(new TipFit(ink, asTaken, noise, tips))
            : Optional.empty();
    double window = noise < QUIET ? QUIET_WINDOW_PX : NOISY_WINDOW_PX;
    return new Outline.Grain(sigma, scatter, window, fit);
  }

  private void tellBend() {
    if (bend.isWorthTelling()) {
      String share = LensBend.percent(bend.found().getAsDouble());
      found.warning(
          TraceCode.EDGES_BENT,
          SourceSpan.file(source),
          "the edges of the sheet look as if the lens bent them by "
              + share
              + ", but "
              + LensBend.percent(bend.told())
              + " was told",
          "if the sheet lies flat, say `lens bend: " + share + "`, or --lens-bend " + share);
    }
  }

  /** Moves the share of ink that is asked for to one half, where the outline is looked for. */
  private GreyImage shifted(GreyImage ink) {
    float shift = (float) (HALF - settings.threshold());
    if (shift == 0) {
      return ink;
    }
    float[] values = ink.values();
    for (int i = 0; i < values.length; i++) {
      values[i] += shift;
    }
    return ink;
  }

  private static double fitPx(List<Outline> outlines) {
    double[] scatter = outlines.stream().mapToDouble(Outline::scatterPx).sorted().toArray();
    double usual = scatter[scatter.length / 2];
    return Math.min(MOST_FIT_PX, LEAST_FIT_PX + FIT_BY_SCATTER * usual);
  }

  private static GreyImage negative(GreyImage image) {
    float[] values = image.values().clone();
    for (int i = 0; i < values.length; i++) {
      values[i] = 1 - values[i];
    }
    return new GreyImage(image.width(), image.height(), values);
  }

  private BadInputException refused(TraceCode code, String message, String hint) {
    return new BadInputException(Diagnostic.error(code, SourceSpan.file(source), message, hint));
  }

  /** The map to millimetres, without a shift to the origin. */
  private PixelMap map(List<List<Point>> lines) {
    return settings
        .size()
        .accept(
            new RealSize.Visitor<PixelMap>() {
              @Override
              public PixelMap height(RealSize.Height height) {
                return toFit(lines, true, height.mm());
              }

              @Override
              public PixelMap width(RealSize.Width width) {
                return toFit(lines, false, width.mm());
              }

              @Override
              public PixelMap pixel(RealSize.Pixel pixel) {
                return straight(PixelMap.scale(pixel.mm()));
              }

              @Override
              public PixelMap sheet(RealSize.Sheet sheet) {
                return squared(sheet);
              }
            });
  }

  private PixelMap straight(PixelMap map) {
    return PixelMap.straightened(map, settings.lensBend(), image);
  }

  private PixelMap squared(RealSize.Sheet sheet) {
    List<Point> upright = new ArrayList<>();
    for (int i = sheet.corners().size() - 1; i >= 0; i--) {
      Point p = sheet.corners().get(i);
      upright.add(new Point(p.x(), image.height() - p.y()));
    }
    try {
      return straight(PixelMap.squared(upright, sheet.widthMm(), sheet.heightMm()));
    } catch (IllegalArgumentException e) {
      throw refused(
          TraceCode.NOT_A_SHEET,
          "the corners do not go round the sheet",
          "give them in this order: upper left, upper right, lower right, lower left");
    }
  }

  /** The scale that makes all outlines but specks so large; what is a speck depends on it. */
  private PixelMap toFit(List<List<Point>> lines, boolean high, double mm) {
    double mmPerPixel = 0;
    for (int round = 0; round < SIZE_ROUNDS; round++) {
      Bounds all = Bounds.EMPTY;
      for (List<Point> line : lines) {
        Bounds b = bounds(line, straight(p -> p));
        if (Specks.size(b) * mmPerPixel >= settings.smallestMm() || mmPerPixel == 0) {
          all = all.with(b);
        }
      }
      if (all.isEmpty()) {
        break;
      }
      mmPerPixel = mm / (high ? all.height() : all.width());
    }
    return straight(PixelMap.scale(mmPerPixel == 0 ? 1 : mmPerPixel));
  }

  private static Bounds bounds(List<Point> line, PixelMap map) {
    Bounds b = Bounds.EMPTY;
    for (Point p : line) {
      b = b.with(map.toMm(p));
    }
    return b;
  }

  private List<List<Point>> withoutSpecks(List<List<Point>> lines, PixelMap map) {
    List<List<Point>> kept = new ArrayList<>();
    List<Bounds> specks = new ArrayList<>();
    Bounds all = Bounds.EMPTY;
    for (List<Point> line : lines) {
      Bounds b = bounds(line, map);
      if (line.size() > 3 && Specks.size(b) >= settings.smallestMm()) {
        kept.add(line);
        all = all.with(b);
      } else {
        specks.add(b);
      }
    }
    if (kept.stream().anyMatch(this::leavesPicture)) {
      found.warning(
          TraceCode.AT_THE_EDGE,
          SourceSpan.file(source),
          "an outline runs out of the picture and is closed along its border",
          "take the picture with some paper all round");
    }
    if (kept.isEmpty()) {
      throw refused(
          TraceCode.NOTHING_TRACED,
          "nothing in the picture is larger than " + Amounts.length(settings.smallestMm()),
          "check the size that you gave, or allow smaller features");
    }
    if (!specks.isEmpty()) {
      found.note(
          TraceCode.SPECKS_LEFT_OUT,
          SourceSpan.file(source),
          new Specks(specks, settings.smallestMm()).said(all));
    }
    return kept;
  }

  private boolean leavesPicture(List<Point> line) {
    Bounds b = bounds(line, p -> p);
    return b.minX() < BORDER_PX
        || b.minY() < BORDER_PX
        || b.maxX() > image.width() - BORDER_PX
        || b.maxY() > image.height() - BORDER_PX;
  }

  private Traced result(List<Outline> outlines, PixelMap map, double fitPx) {
    List<Outline> mapped = outlines.stream().map(o -> o.mapped(map)).toList();
    Bounds all = Bounds.EMPTY;
    for (Outline outline : mapped) {
      all = all.with(bounds(outline.ring(), p -> p));
    }
    double fitMm = fitPx * mmPerPixel(outlines, mapped);
    Affine toOrigin = Affine.translation(-all.minX(), -all.minY());
    double tolerance = settings.toleranceMm() > 0 ? settings.toleranceMm() : fitMm;
    List<Path> paths = new ArrayList<>();
    List<Point> corners = new ArrayList<>();
    List<List<Point>> over = new ArrayList<>();
    for (int i = 0; i < mapped.size(); i++) {
      Outline moved = mapped.get(i).mapped(toOrigin::apply);
      paths.add(moved.fitted(tolerance));
      corners.addAll(moved.corners());
      over.add(outlines.get(i).mapped(p -> new Point(p.x(), image.height() - p.y())).ring());
    }
    String size = settings.size().accept(SizeWords.INSTANCE);
    List<Piece> pieces =
        Nesting.pieces(paths, tolerance).stream()
            .flatMap(p -> linesOrArea(p, tolerance).stream())
            .toList();
    Artwork asSeen = new Artwork(source, pieces, size, found.sorted());
    Artwork artwork = sized(asSeen);
    double grown = artwork.bounds().width() / asSeen.bounds().width();
    corners.replaceAll(p -> p.times(grown));
    return new Traced(artwork, new Point(all.minX(), all.minY()), tolerance, corners, over, bend);
  }

  private List<Piece> linesOrArea(Piece area, double toleranceMm) {
    List<Piece> lines =
        settings.linesUpToMm() > 0
            ? CentreLines.of(area, settings.linesUpToMm(), toleranceMm)
            : List.of();
    return lines.isEmpty() ? List.of(area) : lines;
  }

  /** The size of a pixel where it is largest. */
  private static double mmPerPixel(List<Outline> pixels, List<Outline> mapped) {
    double most = 0;
    for (int i = 0; i < mapped.size(); i++) {
      double scale = Outline.length(mapped.get(i).ring()) / Outline.length(pixels.get(i).ring());
      most = Math.max(most, scale);
    }
    return most;
  }

  /** Makes a height or a width that was asked for exact: smoothing has changed it a little. */
  private Artwork sized(Artwork artwork) {
    if (settings.size() instanceof RealSize.Height height) {
      return artwork.withHeight(height.mm());
    }
    return settings.size() instanceof RealSize.Width width
        ? artwork.withWidth(width.mm())
        : artwork;
  }
}
