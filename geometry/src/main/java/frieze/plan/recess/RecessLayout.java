package frieze.plan.recess;

import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Work;
import frieze.plan.cut.AreaLayout;
import frieze.region.Offset;
import frieze.region.Region;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * Works out a recess at all placements of its motif: once for each size, and once more for each
 * group of placements that overlap, which become one area.
 */
public final class RecessLayout {
  private final Design design;
  private final Work.Recess recess;
  private final double proudMm;
  private final Tolerances tolerances;
  private final AreaLayout<RecessCuts> layout;

  /**
   * Lays a recess out.
   *
   * @param proudMm how far the walls stand inside the drawn outline
   * @param maker makes the cuts of a part
   */
  public RecessLayout(
      Design design,
      Work.Recess recess,
      double proudMm,
      Tolerances tolerances,
      Function<RecessGeometry.Part, RecessCuts.Made> maker) {
    this.design = design;
    this.recess = recess;
    this.proudMm = proudMm;
    this.tolerances = tolerances;
    this.layout =
        new AreaLayout<>(
            design,
            recess.operation(),
            recess.on(),
            tolerances,
            area -> RecessCuts.of(geometry(area), maker),
            RecessCuts::placed);
    if (recess.way().lines()) {
      layout.turnsApart();
    }
  }

  public int geometryCalls() {
    return layout.geometryCalls();
  }

  /** The items in the order of their first placements. */
  public List<AreaLayout.Item<RecessCuts>> items() {
    return layout.items();
  }

  private RecessGeometry.Result geometry(Region drawn) {
    Region area = proudMm == 0 ? drawn : Offset.offset(drawn, -proudMm, tolerances.offsetMm());
    double radius = recess.tool().radiusMm();
    double stepover = Math.min(recess.stepoverMm(), radius);
    double leave = leaveMm();
    Region rough = leave == 0 ? area : Offset.offset(area, -leave, tolerances.offsetMm());
    OptionalDouble larger =
        sameArea(design, recess)
            .mapToDouble(r -> r.tool().radiusMm())
            .filter(r -> r > radius)
            .min();
    Region todo =
        larger.isPresent()
            ? RecessGeometry.leftover(rough, larger.getAsDouble(), tolerances)
            : rough;
    RecessGeometry.Cutter cutter =
        new RecessGeometry.Cutter(radius, stepover, recess.milling(), recess.way().lines());
    RecessGeometry.Result result = RecessGeometry.of(rough, todo, cutter, tolerances);
    boolean last = sameArea(design, recess).noneMatch(r -> r.tool().radiusMm() < radius);
    return leave > 0 && last
        ? WallFinish.added(area, rough, result, cutter, leave, tolerances)
        : result;
  }

  /** What all tools of the area leave on the wall for the smallest one to take. */
  private double leaveMm() {
    return sameArea(design, recess).mapToDouble(r -> r.way().leaveMm()).max().orElse(0);
  }

  /** The other recesses of the same area to the same depth: each tool takes what is left. */
  public static Stream<Work.Recess> sameArea(Design design, Work.Recess recess) {
    return design.work().stream()
        .filter(Work.Recess.class::isInstance)
        .map(Work.Recess.class::cast)
        .filter(r -> r.on().equals(recess.on()) && r.depthMm() == recess.depthMm());
  }
}
