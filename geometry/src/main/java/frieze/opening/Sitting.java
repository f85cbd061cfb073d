package frieze.opening;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Flattener;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.layout.Panel;
import java.util.ArrayList;
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
 * @param notches what is left out for what is welded in
 * @param drawn where the opening's edge is drawn: then {@code opening} is its bounds, without a
 *     bead, and there are no gaps at corners, and none at a side where no steel lies
 */
public record Sitting(
    Panel panel,
    FittedOpening opening,
    Bead bead,
    double tapeMm,
    List<Gap> gaps,
    boolean wood,
    InsertRequest asked,
    List<Notch> notches,
    Optional<DrawnHole> drawn) {
  /**
   * The least gap at one place, after coating and sanding; below 0 the panel binds.
   *
   * @param place such as {@code top} or {@code upper right corner}
   */
  public record Gap(String place, double nowMm, double driestMm, double wettestMm) {
    /** The least in any season. */
    public double leastMm() {
      return Math.min(nowMm, Math.min(driestMm, wettestMm));
    }
  }

  public Sitting {
    gaps = List.copyOf(gaps);
    notches = List.copyOf(notches);
    if (drawn.isEmpty() && gaps.size() != 8) {
      throw new IllegalArgumentException("gaps must be eight but were " + gaps.size());
    }
  }

  /** The gaps at the sides. */
  public List<Gap> sides() {
    return drawn.isPresent() ? gaps : gaps.subList(0, 4);
  }

  /** The gaps at the corners. */
  public List<Gap> corners() {
    return drawn.isPresent() ? List.of() : gaps.subList(4, 8);
  }

  /** The gaps at sides and corners, then those at lugs. */
  public List<Gap> allGaps() {
    List<Gap> all = new ArrayList<>(gaps);
    notches.forEach(n -> all.add(n.gap()));
    return all;
  }

  /** The place that is tightest in any season; lugs not counted. */
  public Gap tightest() {
    return gaps.stream().min(Comparator.comparingDouble(Gap::leastMm)).orElseThrow();
  }

  /** The corner that is tightest at the wettest; of an opening that was measured. */
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
    if (drawn.isPresent()) {
      return drawn.map(DrawnHole::beyond);
    }
    double more = bead.shape() == Bead.Shape.ROUND ? tapeMm : (2 - Math.sqrt(2)) * tapeMm;
    double size = bead.sizeMm() == 0 ? 0 : bead.sizeMm() + more;
    return new Quadrilateral(opening.corners(), bead)
        .inset(Collections.nCopies(4, -tapeMm))
        .outline(Collections.nCopies(4, size))
        .flatMap(this::withoutLugs);
  }

  /** Lugs smaller on each side by the tape's uncertainty, as the opening is larger. */
  private Optional<Path> withoutLugs(Path outline) {
    Quadrilateral sides = new Quadrilateral(opening.corners(), bead);
    Optional<Path> left = Optional.of(outline);
    for (Notch notch : notches) {
      Lug lug = notch.lug();
      if (Math.min(lug.depthMm(), lug.widthMm() / 2) > tapeMm) {
        List<Point> box = NotchFitter.box(sides, lug, -tapeMm, 3 * tapeMm);
        left = left.flatMap(path -> BoxCut.of(path, box));
      }
    }
    return left;
  }

  /**
   * What the opening must let pass: the panel at its wettest with the frame's coating, about its
   * own middle, in the panel frame.
   *
   * <p><em>Approximation:</em> coating and sanding widen and narrow it along X and Y; at round
   * corners that is as if their radius had been scaled.
   */
  public Path largest() {
    if (drawn.isPresent()) {
      return drawn.get().largest();
    }
    Bounds b = panel.whole().bounds();
    double coating = asked.allowances().coatingMm();
    double sanded = asked.allowances().sandedMm();
    Affine swells = asked.swelling(b.centre(), asked.moisture().wettestPct());
    Affine allowed =
        Affine.translation(-b.centre().x(), -b.centre().y())
            .then(
                Affine.scaling(
                    1 - 2 * (sanded - coating / swells.a()) / b.width(),
                    1 - 2 * (sanded - coating / swells.d()) / b.height()))
            .then(Affine.translation(b.centre().x(), b.centre().y()));
    Path path = panel.whole().transformed(allowed.then(swells));
    if (notches.isEmpty()) {
      return path;
    }
    // Round corners that are scaled are no arcs any more, and only lines and arcs can be cut.
    path = Path.polyline(Flattener.flatten(path, Tolerances.DEFAULT.flattenMm()), true);
    for (Notch notch : notches) {
      List<Point> box = notch.grown(sanded - coating).stream().map(swells::apply).toList();
      path = BoxCut.of(path, box).orElse(path);
    }
    return path;
  }
}
