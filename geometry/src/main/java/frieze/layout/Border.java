package frieze.layout;

import frieze.artwork.Artwork;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.FrameMap;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;

/**
 * A motif repeated around the border of a panel, a whole number on each side between square
 * corners.
 *
 * <p>The sides are those of the panel's bounds less the inset; the corners are as large as the
 * corner's drawing, or as the motif is high. Opposite sides are alike.
 *
 * <p><em>Guarantees:</em> motifs of a side are equally far apart and the first is as far from its
 * corner as the last. Unless they run one way, the border is its own mirror image, left for right
 * and below for above, and at each corner the last motif of a side is the mirror image of the next
 * side's first, if each side has an even number.
 *
 * @param meeting which motifs are mirrored
 * @param inwards whether the top of each motif points to the middle of the panel
 * @param alongX how many on each of the long sides; empty to go by the pitch
 * @param alongY how many on each of the short sides
 * @param pitchMm from one motif to the next; it is changed until a whole number fills the side
 * @param corner the drawing in the corners
 * @param cornerMm the size of the corners; empty for that of its drawing, or the motif's height
 */
public record Border(
    Meeting meeting,
    boolean inwards,
    OptionalInt alongX,
    OptionalInt alongY,
    OptionalDouble pitchMm,
    double insetMm,
    Optional<String> corner,
    OptionalDouble cornerMm)
    implements Pattern {
  private static final double EQUAL_MM = 1e-5;
  private static final int SIDES = 4;

  /** Which motifs of a side are mirrored. */
  public enum Meeting {
    /** Those of its second half. */
    MIRRORED,
    /** Every other one. */
    ALTERNATE,
    /** None: they run around the panel one way. */
    RUNNING
  }

  public Border {
    if (pitchMm.isEmpty() && (alongX.isEmpty() || alongY.isEmpty())) {
      throw new IllegalArgumentException("both counts or pitchMm must be given");
    }
    if (!(insetMm >= 0 && pitchMm.orElse(1) > 0 && cornerMm.orElse(0) >= 0)) {
      throw new IllegalArgumentException(
          "insetMm and cornerMm must be >= 0 and pitchMm > 0 but were "
              + (insetMm + ", " + cornerMm + ", " + pitchMm));
    }
  }

  @Override
  public Pattern resolved(Function<String, Artwork> drawings, SourceSpan where) {
    if (corner.isEmpty() || cornerMm.isPresent()) {
      return this;
    }
    Bounds b = drawings.apply(corner.get()).bounds();
    OptionalDouble size = OptionalDouble.of(Math.max(b.width(), b.height()));
    return new Border(meeting, inwards, alongX, alongY, pitchMm, insetMm, corner, size);
  }

  @Override
  public List<Placement> place(String motif, Hull hull, Panel panel, long seed, SourceSpan where) {
    Bounds band = panel.outline().bounds().grown(-insetMm);
    Bounds size = hull.bounds();
    double cornerSize = cornerMm.orElse(size.height());
    double[] free = {band.width() - 2 * cornerSize, band.height() - 2 * cornerSize};
    if (band.isEmpty() || Math.min(free[0], free[1]) < 0) {
      throw BadInputException.of(
          LayoutCode.BAND_TOO_NARROW,
          where,
          "corners of " + Amounts.length(cornerSize) + " leave nothing of a side",
          "make the motif, the corner or the inset smaller");
    }
    int[] counts = {
      count(alongX, free[0], size.width(), where), count(alongY, free[1], size.width(), where)
    };
    List<Placement> result = new ArrayList<>();
    for (int side = 0; side < SIDES; side++) {
      int n = counts[side % 2];
      double pitch = n == 0 ? 0 : free[side % 2] / n;
      checkWidth(motif, size.width(), free[side % 2], n, where);
      for (int i = 0; i < n; i++) {
        Affine map =
            Affine.translation(-size.centre().x(), -size.centre().y())
                .then(Affine.scaling(isMirrored(i, n) ? -1 : 1, 1))
                .then(Affine.rotation(inwards ? 0 : Math.PI))
                .then(Affine.translation(cornerSize + (i + 0.5) * pitch, size.height() / 2))
                .then(toPanel(side, band));
        result.add(new Placement(motif, result.size() + 1, new FrameMap<>(map)));
      }
    }
    if (result.isEmpty()) {
      throw BadInputException.of(
          LayoutCode.NOTHING_PLACED,
          where,
          "no motif " + motif + " fits between the corners",
          "make the motif or the corner smaller");
    }
    Band.of(panel, insetMm).requireHeld(result, hull, where);
    return result;
  }

  /** From a side, run through with the panel on the left, to the panel. */
  private static Affine toPanel(int side, Bounds b) {
    Affine turn = Affine.rotation(side * Math.PI / 2);
    return switch (side) {
      case 0 -> turn.then(Affine.translation(b.minX(), b.minY()));
      case 1 -> turn.then(Affine.translation(b.maxX(), b.minY()));
      case 2 -> turn.then(Affine.translation(b.maxX(), b.maxY()));
      default -> turn.then(Affine.translation(b.minX(), b.maxY()));
    };
  }

  private boolean isMirrored(int i, int n) {
    return switch (meeting) {
      case MIRRORED -> 2 * i >= n;
      case ALTERNATE -> i % 2 == 1;
      case RUNNING -> false;
    };
  }

  private int count(OptionalInt given, double lengthMm, double widthMm, SourceSpan where) {
    if (given.isPresent()) {
      int n = given.getAsInt();
      if (meeting == Meeting.ALTERNATE && n % 2 != 0) {
        throw BadInputException.of(
            LayoutCode.BAD_COUNT,
            where,
            "with every other motif mirrored, each side needs an even count, but one has " + n,
            "take " + (n - 1) + " or " + (n + 1));
      }
      return n;
    }
    int step = meeting == Meeting.RUNNING ? 1 : 2;
    int most = (int) Math.floor((lengthMm + EQUAL_MM) / widthMm) / step * step;
    int nearest = step * (int) Math.rint(lengthMm / pitchMm.orElseThrow() / step);
    return Math.min(most, nearest);
  }

  private static void checkWidth(
      String motif, double widthMm, double freeMm, int n, SourceSpan where) {
    double tooLong = n * widthMm - freeMm;
    if (tooLong > EQUAL_MM) {
      throw BadInputException.of(
          LayoutCode.MOTIF_TOO_WIDE,
          where,
          n
              + " motifs "
              + motif
              + ", each "
              + Amounts.length(widthMm)
              + " wide, are "
              + Amounts.length(tooLong)
              + " longer than the "
              + Amounts.length(freeMm)
              + " between two corners",
          "at most " + (int) Math.floor((freeMm + EQUAL_MM) / widthMm) + " fit there");
    }
  }
}
