package frieze.torch;

import frieze.curve.Segment;
import frieze.curve.Tolerances;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans the cuts that free the parts from the sheet. */
final class OutlineCuts {
  private final Work.TorchCut work;
  private final Tolerances tolerances;
  private final LeadFinder leads;
  private final Diagnostics found;
  private final List<Joint> joints = new ArrayList<>();

  OutlineCuts(Work.TorchCut work, Tolerances tolerances, LeadFinder leads, Diagnostics found) {
    this.work = work;
    this.tolerances = tolerances;
    this.leads = leads;
    this.found = found;
  }

  /** The cuts around a part; none after an error. */
  List<TorchPath> of(String name, Region part) {
    Region grown = Offset.offset(part, work.torch().kerfMm() / 2, tolerances.offsetMm());
    for (Ring ring : grown.rings()) {
      if (!ring.hole()) {
        return of(Contour.of(name, ring, work.way().partOnRight(), tolerances));
      }
    }
    return List.of();
  }

  /** The micro-joints that hold parts. */
  List<Joint> joints() {
    return List.copyOf(joints);
  }

  private List<TorchPath> of(Contour contour) {
    Optional<JointCuts> cutter =
        work.way().joints().map(j -> new JointCuts(work.torch(), j, leads));
    if (cutter.isPresent() && cutter.get().keeps(contour)) {
      Optional<JointCuts.Cuts> kept = cutter.get().of(contour, TorchPath.Kind.OUTLINE);
      if (kept.isPresent()) {
        joints.addAll(kept.get().joints());
        return kept.get().paths();
      }
      Notes.noJoint(contour, work, found);
    }
    Optional<LeadFinder.Lead> lead = leads.find(contour);
    if (lead.isEmpty()) {
      found.error(
          TorchCode.NO_LEAD,
          work.where(),
          contour.name()
              + " has no room for a lead-in of "
              + Amounts.length(work.torch().leastPierceMm())
              + " or more from the part",
          "leave more sheet around the panel");
      return List.of();
    }
    Notes.nearPierce(contour.name(), lead.get(), work, found);
    double from = lead.get().atMm();
    double to = from + contour.track().lengthMm();
    List<TorchPath.Piece> pieces = new ArrayList<>();
    pieces.add(new TorchPath.Piece(lead.get().path(), 1, false));
    pieces.addAll(new TorchFeeds(work.torch()).lap(contour, from, to));
    Optional<Segment> out = leads.leadOut(contour, from);
    out.ifPresent(s -> pieces.add(new TorchPath.Piece(s, 1, false)));
    return List.of(
        new TorchPath(
            contour.name(),
            TorchPath.Kind.OUTLINE,
            lead.get().path().start(),
            TorchFeeds.joined(pieces),
            Optional.of(contour.inside())));
  }
}
