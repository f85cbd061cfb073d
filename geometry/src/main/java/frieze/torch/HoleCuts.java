package frieze.torch;

import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.TorchWay;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.region.BoundaryDistance;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Plans the openings of a part.
 *
 * <p>What comes first: a hole no larger than the chart's smallest is pierced, marked or left out,
 * as told, even if a lead would fit; any other is cut if its lead fits; one that is not, and is no
 * larger than twice the smallest, is treated as a small hole too; all else is refused.
 */
final class HoleCuts {
  /** Beyond the end of a hole, so that its slug drops; common practice: at most 1 mm. */
  private static final double OVERBURN_MM = 0.5;

  /** A hole up to this many times the chart's smallest may be pierced only. */
  private static final double STILL_SMALL = 2;

  private final Work.TorchCut work;
  private final Tolerances tolerances;
  private final Diagnostics found;
  private final List<Region> closed = new ArrayList<>();
  private final List<Joint> joints = new ArrayList<>();

  HoleCuts(Work.TorchCut work, Tolerances tolerances, Diagnostics found) {
    this.work = work;
    this.tolerances = tolerances;
    this.found = found;
  }

  /** The cuts of all openings of a part. */
  List<TorchPath> of(Region part) {
    Region grown = Offset.offset(part, work.torch().kerfMm() / 2, tolerances.offsetMm());
    LeadFinder leads =
        new LeadFinder(work.torch(), work.way(), BoundaryDistance.of(part), pierce -> true);
    List<Region> ways =
        grown.rings().stream().filter(Ring::hole).map(r -> Region.ofRing(r.points())).toList();
    List<Ring> rings = grown.rings().stream().filter(Ring::hole).toList();
    List<TorchPath> paths = new ArrayList<>();
    int number = 0;
    for (Region hole : Material.holes(part)) {
      number++;
      String name = "torchcut hole " + number;
      List<Ring> own = new ArrayList<>();
      Region.Locator inside = hole.locator();
      for (int i = 0; i < ways.size(); i++) {
        if (hole.bounds().contains(ways.get(i).bounds().centre())
            && inside.contains(rings.get(i).points().get(0))) {
          own.add(rings.get(i));
        }
      }
      paths.addAll(hole(name, hole, own, leads));
    }
    return paths;
  }

  private static double extentMm(Region hole) {
    return Math.max(hole.bounds().width(), hole.bounds().height());
  }

  private List<TorchPath> hole(String name, Region hole, List<Ring> rings, LeadFinder leads) {
    double smallest = work.torch().row().smallestHoleMm();
    if (extentMm(hole) < smallest - tolerances.totalMm()) {
      return small(name, hole, "smaller than the chart's smallest, " + Amounts.length(smallest));
    }
    boolean stillSmall = extentMm(hole) <= STILL_SMALL * smallest;
    if (rings.isEmpty()) {
      if (stillSmall) {
        return small(name, hole, "narrower than the kerf");
      }
      refuse(
          TorchCode.KERF_TOO_WIDE,
          name,
          hole,
          " is narrower than the kerf, " + Amounts.length(work.torch().kerfMm()));
      return List.of();
    }
    List<TorchPath> paths = new ArrayList<>();
    int bit = 0;
    for (Ring ring : rings) {
      bit++;
      String own = rings.size() == 1 ? name : name + ", piece " + bit;
      Contour contour = Contour.of(own, ring, work.way().partOnRight(), tolerances);
      Optional<LeadFinder.Lead> lead = leads.find(contour);
      Optional<JointCuts.Cuts> kept = kept(contour, leads);
      if (kept.isPresent()) {
        paths.addAll(kept.get().paths());
        joints.addAll(kept.get().joints());
      } else if (lead.isPresent()) {
        paths.add(cut(contour, lead.get()));
      } else if (stillSmall) {
        return small(name, hole, "too tight for a lead-in");
      } else if (rings.size() == 1 || contour.extentMm() > STILL_SMALL * smallest) {
        refuse(TorchCode.NO_LEAD, own, hole, " has no room for a lead-in");
        return List.of();
      } else {
        lost(own, contour);
      }
    }
    return paths;
  }

  /** The cuts of a contour whose slug is to be kept; empty if it is not, or can't be. */
  private Optional<JointCuts.Cuts> kept(Contour contour, LeadFinder leads) {
    Optional<JointCuts> cutter =
        work.way().joints().map(j -> new JointCuts(work.torch(), j, leads));
    if (cutter.isEmpty() || !cutter.get().keeps(contour)) {
      return Optional.empty();
    }
    Optional<JointCuts.Cuts> cuts = cutter.get().of(contour, TorchPath.Kind.HOLE);
    if (cuts.isEmpty()) {
      Notes.noJoint(contour, work, found);
    }
    return cuts;
  }

  /** The micro-joints that hold slugs. */
  List<Joint> joints() {
    return List.copyOf(joints);
  }

  /** A corner of an opening beyond a neck narrower than the kerf. */
  private void lost(String name, Contour contour) {
    Point at = contour.inside().bounds().centre();
    found.warning(
        TorchCode.NO_LEAD,
        work.where(),
        name + " has no room for a lead-in and is not cut, at " + Amounts.place(at.x(), at.y()),
        "widen the neck to it beyond the kerf");
  }

  private void refuse(TorchCode code, String name, Region hole, String why) {
    Point at = hole.bounds().centre();
    found.error(
        code,
        work.where(),
        name
            + ", "
            + Amounts.length(hole.bounds().width())
            + " by "
            + Amounts.length(hole.bounds().height())
            + " at "
            + Amounts.place(at.x(), at.y())
            + ","
            + why,
        "make the drawing larger, widen it there, or pick the pieces without it");
  }

  private TorchPath cut(Contour contour, LeadFinder.Lead lead) {
    Notes.nearPierce(contour.name(), lead, work, found);
    TorchFeeds feeds = new TorchFeeds(work.torch());
    boolean small = feeds.isSmall(contour);
    double from = lead.atMm();
    double to = from + contour.track().lengthMm() + (small ? 0 : OVERBURN_MM);
    List<TorchPath.Piece> pieces = new ArrayList<>();
    pieces.add(new TorchPath.Piece(lead.path(), small ? TorchFeeds.SLOW : 1, small));
    pieces.addAll(feeds.lap(contour, from, to));
    return new TorchPath(
        contour.name(),
        TorchPath.Kind.HOLE,
        lead.path().start(),
        TorchFeeds.joined(pieces),
        Optional.of(contour.inside()));
  }

  private List<TorchPath> small(String name, Region hole, String why) {
    Point at = hole.bounds().centre();
    TorchWay.SmallHole asked = work.way().smallHoles();
    String done =
        switch (asked) {
          case PIERCE -> "pierced only";
          case MARK -> "marked only";
          case LEAVE -> "left out";
        };
    found.warning(
        TorchCode.SMALL_HOLE,
        work.where(),
        name
            + ", "
            + Amounts.length(extentMm(hole))
            + " wide at "
            + Amounts.place(at.x(), at.y())
            + ", is "
            + why
            + ": it is "
            + done,
        "drill it to size afterwards");
    closed.add(hole);
    if (asked == TorchWay.SmallHole.LEAVE || !hole.contains(at)) {
      return List.of();
    }
    TorchPath.Kind kind =
        asked == TorchWay.SmallHole.MARK ? TorchPath.Kind.MARK : TorchPath.Kind.PIERCE;
    return List.of(new TorchPath(name, kind, at, List.of(), Optional.empty()));
  }

  /** A part with the holes closed that are not cut. */
  Region remaining(Region part) {
    Region all = part;
    for (Region hole : closed) {
      all = all.union(hole);
    }
    return all;
  }
}
