package frieze.torch;

import frieze.curve.Arc;
import frieze.curve.Line;
import frieze.curve.Point;
import frieze.curve.Segment;
import frieze.design.TorchWay;
import frieze.plan.cut.Track;
import frieze.region.BoundaryDistance;
import frieze.shop.Torch;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Finds where a contour starts and how the torch comes to it from a pierce in the scrap.
 *
 * <p>Starts far from corners and tight arcs are tried first. A lead is an arc that touches the
 * contour, or a straight line where no arc fits, or the other way round as asked.
 *
 * <p><i>Guarantees:</i> the pierce lies in scrap, no nearer to any part than told; the kerf along
 * the lead stays out of every part, so that the lead crosses no contour.
 */
final class LeadFinder {
  /** A lead is at least this long; common practice. */
  private static final double LEAST_LEAD_MM = 3;

  private static final double[] STRAIGHT_RAD = {
    Math.PI / 2, Math.PI / 3, Math.PI / 4, Math.PI / 6, Math.PI / 9
  };
  private static final double[] FORWARD_RAD = {Math.PI / 2, Math.PI / 3, Math.PI / 4};
  private static final double[] ARC_STRETCH = {1, 1.5};
  private static final int MOST_STARTS = 160;
  private static final double START_STEP_MM = 2;
  private static final double SAMPLE_MM = 0.25;

  /** How far a lead may come inside the kerf's way, by rounding. */
  private static final double SLACK_MM = 0.01;

  /** Corners farther away than this do not matter. */
  private static final double FAR_MM = 20;

  private final Torch torch;
  private final TorchWay way;
  private final BoundaryDistance parts;
  private final Sheet sheet;

  /** Where a pierce may be at all. */
  @FunctionalInterface
  interface Sheet {
    boolean allows(Point pierce);
  }

  /**
   * @param parts everything that is to stay whole
   */
  LeadFinder(Torch torch, TorchWay way, BoundaryDistance parts, Sheet sheet) {
    this.torch = torch;
    this.way = way;
    this.parts = parts;
    this.sheet = sheet;
  }

  /**
   * A way in.
   *
   * @param atMm where on the track
   * @param pierceMm from the pierce to the nearest part
   */
  record Lead(double atMm, Segment path, double pierceMm) {}

  /** The best lead; empty if there is no room for any. */
  Optional<Lead> find(Contour contour) {
    List<Double> starts = starts(contour.track());
    for (double gap : gaps()) {
      for (boolean arcs : new boolean[] {way.arcLeads(), !way.arcLeads()}) {
        for (double start : starts) {
          Optional<Lead> lead = at(contour, start, arcs, gap);
          if (lead.isPresent()) {
            return lead;
          }
        }
      }
    }
    return Optional.empty();
  }

  /**
   * Straight leads that stay clear of metal left just before the start, those far from corners
   * first.
   */
  List<Lead> besideStubs(Contour contour) {
    List<Lead> found = new ArrayList<>();
    for (double start : starts(contour.track())) {
      Frame frame = frame(contour, start);
      Optional<Lead> lead = Optional.empty();
      for (double gap : gaps()) {
        for (double angle : FORWARD_RAD) {
          lead = lead.or(() -> forward(frame, start, gap, angle));
        }
      }
      lead.ifPresent(found::add);
    }
    return found;
  }

  /**
   * A straight lead to a place where a cut goes on, leaning towards where it goes.
   *
   * @param ahead the direction of travel there, of length 1
   * @param allowed whether the lead may run where it would
   */
  Optional<Lead> onwards(Point at, Point ahead, Predicate<Segment> allowed) {
    Point left = new Point(-ahead.y(), ahead.x());
    Frame frame = new Frame(at, ahead, way.partOnRight() ? left : left.times(-1));
    for (double gap : gaps()) {
      for (double angle : FORWARD_RAD) {
        Optional<Lead> lead = forward(frame, 0, gap, angle).filter(l -> allowed.test(l.path()));
        if (lead.isPresent()) {
          return lead;
        }
      }
    }
    return Optional.empty();
  }

  private Optional<Lead> forward(Frame frame, double start, double gapMm, double angle) {
    double sin = StrictMath.sin(angle);
    double fromPath = Math.max(0, gapMm - torch.kerfMm() / 2);
    Point out = frame.scrap().times(sin).plus(frame.ahead().times(StrictMath.cos(angle)));
    Point from = frame.at().plus(out.times(Math.max(leastMm(), fromPath / sin)));
    Line path = new Line(from, frame.at());
    double pierceMm = clear(path, gapMm);
    return pierceMm > 0 ? Optional.of(new Lead(start, path, pierceMm)) : Optional.empty();
  }

  /** A place on a track with the directions of travel and of the scrap. */
  private record Frame(Point at, Point ahead, Point scrap) {}

  private static Frame frame(Contour contour, double atMm) {
    Track track = contour.track();
    double step = Math.min(0.01, track.lengthMm() / 1000);
    Point along = track.pointAt(atMm + step).minus(track.pointAt(atMm - step));
    Point ahead = along.norm() == 0 ? along : along.times(1 / along.norm());
    Point left = new Point(-ahead.y(), ahead.x());
    return new Frame(track.pointAt(atMm), ahead, contour.partOnRight() ? left : left.times(-1));
  }

  private double[] gaps() {
    return new double[] {
      torch.goodPierceMm(),
      Math.min(torch.goodPierceMm(), 2 * torch.kerfMm()),
      torch.leastPierceMm()
    };
  }

  /** Places along the track, those far from corners first. */
  private static List<Double> starts(Track track) {
    int count = (int) Math.ceil(track.lengthMm() / START_STEP_MM);
    count = Math.max(24, Math.min(MOST_STARTS, count));
    List<Double> corners = Corners.of(track);
    List<Double> starts = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      starts.add((i + 0.5) * track.lengthMm() / count);
    }
    starts.sort(
        Comparator.comparingDouble(
            s -> -Math.min(FAR_MM, Corners.distanceMm(corners, s, track.lengthMm()))));
    return starts;
  }

  private Optional<Lead> at(Contour contour, double atMm, boolean arc, double gapMm) {
    Frame frame = frame(contour, atMm);
    if (frame.ahead().norm() == 0) {
      return Optional.empty();
    }
    Point to = frame.at();
    Point ahead = frame.ahead();
    Point scrap = frame.scrap();
    double fromPath = Math.max(0, gapMm - torch.kerfMm() / 2);
    for (Segment lead :
        arc ? arcs(to, ahead, scrap, fromPath) : lines(to, ahead, scrap, fromPath)) {
      double pierceMm = clear(lead, gapMm);
      if (pierceMm > 0) {
        return Optional.of(new Lead(atMm, lead, pierceMm));
      }
    }
    return Optional.empty();
  }

  private double leastMm() {
    double usual =
        Math.max(LEAST_LEAD_MM, Math.max(1.25 * torch.thicknessMm(), 1.5 * torch.kerfMm()));
    return way.leadMm().orElse(usual);
  }

  /** Quarter turns, the pierce at a radius from the track and a radius back along it. */
  private List<Segment> arcs(Point to, Point ahead, Point scrap, double fromPathMm) {
    List<Segment> arcs = new ArrayList<>();
    double least = Math.max(fromPathMm, leastMm() / (Math.PI / 2));
    for (double stretch : ARC_STRETCH) {
      double radius = least * stretch;
      Point centre = to.plus(scrap.times(radius));
      Point from = centre.minus(ahead.times(radius));
      boolean turnsLeft = ahead.cross(scrap) > 0;
      arcs.add(new Arc(from, to, centre, turnsLeft ? Math.PI / 2 : -Math.PI / 2));
    }
    return arcs;
  }

  private List<Segment> lines(Point to, Point ahead, Point scrap, double fromPathMm) {
    List<Segment> lines = new ArrayList<>();
    for (double angle : STRAIGHT_RAD) {
      double sin = StrictMath.sin(angle);
      double length = Math.max(leastMm(), fromPathMm / sin);
      Point back = scrap.times(sin).minus(ahead.times(StrictMath.cos(angle)));
      lines.add(new Line(to.plus(back.times(length)), to));
    }
    return lines;
  }

  /** The distance from the pierce to the nearest part; negative where the lead may not run. */
  private double clear(Segment lead, double gapMm) {
    double pierceMm = fromPartsMm(lead.start());
    double least = Math.max(torch.leastPierceMm(), gapMm - SLACK_MM);
    if (pierceMm < least || !sheet.allows(lead.start())) {
      return -1;
    }
    double length = lead instanceof Arc a ? a.length() : lead.start().distance(lead.end());
    int samples = (int) Math.ceil(length / SAMPLE_MM);
    for (int i = 1; i <= samples; i++) {
      Point p = lead.at((double) i / samples);
      if (fromPartsMm(p) < torch.kerfMm() / 2 - SLACK_MM) {
        return -1;
      }
    }
    return pierceMm;
  }

  /** The distance to the nearest part; negative inside one. */
  private double fromPartsMm(Point p) {
    return -parts.signed(p);
  }

  /**
   * A short way off the contour into the scrap, so that the arc does not go out on the part.
   *
   * @param atMm where the contour ends on the track
   */
  Optional<Segment> leadOut(Contour contour, double atMm) {
    Frame frame = frame(contour, atMm);
    if (frame.ahead().norm() == 0) {
      return Optional.empty();
    }
    Point from = frame.at();
    Point ahead = frame.ahead();
    Point scrap = frame.scrap();
    double radius = torch.kerfMm();
    Point centre = from.plus(scrap.times(radius));
    Point to = centre.plus(ahead.times(radius));
    boolean turnsLeft = ahead.cross(scrap) > 0;
    Arc out = new Arc(from, to, centre, turnsLeft ? Math.PI / 2 : -Math.PI / 2);
    for (int i = 1; i <= 8; i++) {
      if (fromPartsMm(out.at(i / 8.0)) < torch.kerfMm() / 2 - SLACK_MM) {
        return Optional.empty();
      }
    }
    return Optional.of(out);
  }
}
