package frieze.torch;

import frieze.curve.Point;
import frieze.design.TorchWay;
import frieze.plan.cut.Track;
import frieze.shop.Torch;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Cuts a contour in several cuts with stubs of metal between them.
 *
 * <p>Between the end of a cut and the start of the next lie a stub's width and one kerf, since the
 * arc takes half a kerf beyond both. Each cut comes in square to the contour, or leaning towards
 * where it goes, so that the lead stays clear of the stub. Stubs are spread evenly, away from
 * corners.
 *
 * <p><i>Approximation:</i> on an arc of radius R a stub is narrower by gap<sup>3</sup> / (24
 * R<sup>2</sup>): 1 µm for a gap of 2.3 mm and R of 22 mm.
 */
final class JointCuts {
  private final Torch torch;
  private final TorchWay.Joints joints;
  private final LeadFinder leads;

  JointCuts(Torch torch, TorchWay.Joints joints, LeadFinder leads) {
    this.torch = torch;
    this.joints = joints;
    this.leads = leads;
  }

  /** The cuts of a contour, and the stubs that they leave. */
  record Cuts(List<TorchPath> paths, List<Joint> joints) {}

  /** Whether what a contour cuts loose is small enough to be kept. */
  boolean keeps(Contour contour) {
    boolean drops = new TorchFeeds(torch).isSmall(contour);
    double kerf = contour.hole() ? -torch.kerfMm() : torch.kerfMm();
    return !drops && contour.extentMm() - kerf <= joints.belowMm();
  }

  /** Cuts a contour; empty if leads or stubs find no room. */
  Optional<Cuts> of(Contour contour, TorchPath.Kind kind) {
    Track track = contour.track();
    double gap = joints.widthMm() + torch.kerfMm();
    if (track.lengthMm() < joints.count() * 4 * gap) {
      return Optional.empty();
    }
    for (LeadFinder.Lead first : starts(contour, gap)) {
      List<LeadFinder.Lead> all = spread(contour, first, starts(contour, gap));
      if (all.size() == joints.count()) {
        return Optional.of(cuts(contour, kind, all, gap));
      }
    }
    return Optional.empty();
  }

  private List<LeadFinder.Lead> starts(Contour contour, double gap) {
    List<Double> corners = Corners.of(contour.track());
    double length = contour.track().lengthMm();
    return leads.besideStubs(contour).stream()
        .filter(
            l -> {
              double middle = l.atMm() - gap / 2;
              double within = middle - Math.floor(middle / length) * length;
              return Corners.distanceMm(corners, within, length) > gap / 2 + torch.kerfMm();
            })
        .toList();
  }

  /** A first start, and for each other stub the start nearest to where it should be. */
  private List<LeadFinder.Lead> spread(
      Contour contour, LeadFinder.Lead first, List<LeadFinder.Lead> others) {
    double length = contour.track().lengthMm();
    double step = length / joints.count();
    List<LeadFinder.Lead> all = new ArrayList<>(List.of(first));
    for (int i = 1; i < joints.count(); i++) {
      double wanted = first.atMm() + i * step;
      Optional<LeadFinder.Lead> best = Optional.empty();
      double least = step / 4;
      for (LeadFinder.Lead lead : others) {
        double away = Math.abs(Math.IEEEremainder(lead.atMm() - wanted, length));
        if (away < least) {
          least = away;
          best = Optional.of(lead);
        }
      }
      best.ifPresent(all::add);
    }
    return all;
  }

  private Cuts cuts(
      Contour contour, TorchPath.Kind kind, List<LeadFinder.Lead> starts, double gap) {
    TorchFeeds feeds = new TorchFeeds(torch);
    double length = contour.track().lengthMm();
    List<TorchPath> paths = new ArrayList<>();
    List<Joint> stubs = new ArrayList<>();
    for (int i = 0; i < starts.size(); i++) {
      LeadFinder.Lead lead = starts.get(i);
      double from = lead.atMm();
      double next = starts.get((i + 1) % starts.size()).atMm();
      double to = next > from ? next : next + length;
      List<TorchPath.Piece> pieces = new ArrayList<>();
      pieces.add(new TorchPath.Piece(lead.path(), 1, false));
      pieces.addAll(feeds.lap(contour, from, to - gap));
      paths.add(
          new TorchPath(
              contour.name() + ", cut " + (i + 1) + " of " + starts.size(),
              kind,
              lead.path().start(),
              TorchFeeds.joined(pieces),
              Optional.empty()));
      stubs.add(stub(contour, to - gap / 2));
    }
    return new Cuts(paths, stubs);
  }

  private Joint stub(Contour contour, double atMm) {
    Point at = contour.track().pointAt(atMm);
    Point ahead =
        contour
            .track()
            .pointAt(atMm + torch.kerfMm() / 8)
            .minus(contour.track().pointAt(atMm - torch.kerfMm() / 8));
    Point left = new Point(-ahead.y(), ahead.x()).times(torch.kerfMm() / ahead.norm());
    Point part = at.plus(contour.partOnRight() ? left.times(-1) : left);
    Point scrap = at.plus(contour.partOnRight() ? left : left.times(-1));
    return contour.hole()
        ? new Joint(at, scrap, part, joints.widthMm())
        : new Joint(at, part, scrap, joints.widthMm());
  }
}
