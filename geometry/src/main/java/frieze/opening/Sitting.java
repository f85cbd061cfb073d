package frieze.opening;

import frieze.curve.Path;
import frieze.layout.Panel;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A panel and how it will sit in its opening.
 *
 * @param panel what to cut now
 * @param opening the outline that it follows
 * @param tapeMm the standard uncertainty of one measurement; 0 if the tape was not told
 * @param gaps at the four sides (bottom, right, top, left), then at the four corners (lower left,
 *     lower right, upper right, upper left), with the panel in the middle
 * @param wood whether it moves with moisture
 */
public record Sitting(
    Panel panel,
    FittedOpening opening,
    Bead bead,
    double tapeMm,
    List<Gap> gaps,
    boolean wood,
    InsertRequest asked) {
  /**
   * The least gap at one place, after coating and sanding; below 0 the panel binds.
   *
   * @param place such as {@code top} or {@code upper right corner}
   */
  public record Gap(String place, double nowMm, double driestMm, double wettestMm) {}

  public Sitting {
    gaps = List.copyOf(gaps);
    if (gaps.size() != 8) {
      throw new IllegalArgumentException("gaps must be eight but were " + gaps.size());
    }
  }

  /** The gaps at the sides. */
  public List<Gap> sides() {
    return gaps.subList(0, 4);
  }

  /** The gaps at the corners. */
  public List<Gap> corners() {
    return gaps.subList(4, 8);
  }

  /** The place that is tightest at the wettest. */
  public Gap tightest() {
    return gaps.stream().min(Comparator.comparingDouble(Gap::wettestMm)).orElseThrow();
  }

  /** The corner that is tightest at the wettest. */
  public Gap tightestCorner() {
    return corners().stream().min(Comparator.comparingDouble(Gap::wettestMm)).orElseThrow();
  }

  /** The worst case of a gap: at the wettest, and the tape wrong by its uncertainty. */
  public double worstMm(Gap gap) {
    return gap.wettestMm() - tapeMm;
  }

  /**
   * The opening with its welds, larger on each side by the tape's uncertainty: whatever goes into
   * the opening is smaller. Empty only if its corners leave nothing of a side.
   *
   * <p><em>Approximation:</em> bevels are taken for those of square corners.
   */
  public Optional<Path> beyond() {
    double more = bead.shape() == Bead.Shape.ROUND ? tapeMm : (2 - Math.sqrt(2)) * tapeMm;
    double size = bead.sizeMm() == 0 ? 0 : bead.sizeMm() + more;
    return new Quadrilateral(opening.corners(), bead)
        .inset(Collections.nCopies(4, -tapeMm))
        .outline(Collections.nCopies(4, size));
  }
}
