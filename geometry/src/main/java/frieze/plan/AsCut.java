package frieze.plan;

import frieze.design.BoreWay;
import frieze.design.Design;
import frieze.design.Fade;
import frieze.design.Work;
import frieze.shop.FinishAllowance;
import java.util.Optional;

/**
 * Takes the depths of a work list from the stock's top instead of the finished face below it.
 *
 * <p>What depends on outlines is left to those who work them out: the walls of V-grooves, and how
 * far other walls stand proud.
 */
final class AsCut implements Work.Visitor<Work> {
  private final double proudMm;

  private AsCut(double proudMm) {
    this.proudMm = proudMm;
  }

  /** The same design with everything as much deeper as the face is taken down afterwards. */
  static Design of(Design design, FinishAllowance allowance) {
    if (allowance.faceMm() == 0) {
      return design;
    }
    AsCut deeper = new AsCut(allowance.faceMm());
    return new Design(
        design.panel(),
        design.motifs(),
        design.placements(),
        design.work().stream().map(w -> w.accept(deeper)).toList());
  }

  @Override
  public Work groove(Work.Groove g) {
    Optional<Fade> fade = g.fade().map(f -> new Fade(f.ends(), f.toMm() + proudMm, f.overMm()));
    return new Work.Groove(
        g.on(), g.tool(), g.depthMm() + proudMm, fade, g.byWidth(), g.where(), proudMm);
  }

  @Override
  public Work vgroove(Work.VGroove vgroove) {
    return vgroove;
  }

  @Override
  public Work recess(Work.Recess r) {
    return new Work.Recess(
        r.on(), r.tool(), r.depthMm() + proudMm, r.stepoverMm(), r.milling(), r.way(), r.where());
  }

  @Override
  public Work cutout(Work.Cutout cutout) {
    return cutout;
  }

  @Override
  public Work bore(Work.Bore b) {
    BoreWay way = b.way();
    BoreWay sunk =
        new BoreWay(way.countersink().map(this::wider), way.slot(), way.mills(), way.drill());
    return new Work.Bore(
        b.centres(), b.diameterMm(), b.depthMm().map(d -> d + proudMm), b.tool(), sunk, b.where());
  }

  /** The cone at the stock's top that is as wide as the head on the finished face. */
  private BoreWay.Countersink wider(BoreWay.Countersink sink) {
    double more = 2 * proudMm * StrictMath.tan(sink.angleRad() / 2);
    return new BoreWay.Countersink(sink.diameterMm() + more, sink.angleRad(), sink.tool());
  }

  /** Measured from the finished edge, like all else; only deeper. */
  @Override
  public Work edge(Work.Edge e) {
    return new Work.Edge(
        e.shape(), e.sides(), e.tool(), e.belowMm(), e.milling(), e.where(), proudMm);
  }

  @Override
  public Work torchCut(Work.TorchCut torchCut) {
    return torchCut;
  }
}
