package frieze.torch;

import frieze.curve.Arc;
import frieze.curve.Segment;
import frieze.plan.cut.Track;
import frieze.shop.Torch;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedSet;
import java.util.TreeSet;

/**
 * Chooses where the torch goes slower and where it keeps its height. All figures are common
 * practice.
 *
 * <ul>
 *   <li>A small closed hole, up to five times the thickness and 32 mm: slow and frozen all around.
 *   <li>A tight bend, of radii up to the thickness, at least as long as that and turning by 80
 *       degrees or more: the same.
 *   <li>The last and the first two millimetres at a corner, which may be a shorter bend, and up to
 *       two between: slower, height as it is.
 *   <li>All else, however curved: full feed.
 * </ul>
 */
final class TorchFeeds {
  static final double SLOW = 0.6;
  static final double CORNER = 0.75;
  private static final double SMALL_THICKNESSES = 5;
  private static final double SMALL_MM = 32;
  private static final double TIGHT_TURN_RAD = Math.toRadians(80);
  private static final double CORNER_MM = 2;
  private static final double CORNER_TURN_RAD = Math.toRadians(40);

  private final Torch torch;

  TorchFeeds(Torch torch) {
    this.torch = torch;
  }

  /** Whether a contour is a small hole. */
  boolean isSmall(Contour contour) {
    double diameter = contour.extentMm() + torch.kerfMm();
    return contour.hole()
        && diameter <= Math.min(SMALL_MM, SMALL_THICKNESSES * torch.thicknessMm());
  }

  /** The pieces of a lap, from a place on the track around to a place beyond it. */
  List<TorchPath.Piece> lap(Contour contour, double fromMm, double toMm) {
    List<TorchPath.Piece> pieces = new ArrayList<>();
    if (isSmall(contour)) {
      contour
          .track()
          .slice(fromMm, toMm)
          .forEach(s -> pieces.add(new TorchPath.Piece(s, SLOW, true)));
      return pieces;
    }
    double length = contour.track().lengthMm();
    List<Bends.Bend> tight = new ArrayList<>();
    List<Double> corners = new ArrayList<>();
    sort(contour.track(), tight, corners);
    List<Stretch> stretches = new ArrayList<>();
    Double before = null;
    for (double cut : cuts(tight, corners, length, fromMm, toMm)) {
      if (before != null) {
        double middle = (before + cut) / 2;
        double within = middle - Math.floor(middle / length) * length;
        boolean frozen = tight.stream().anyMatch(b -> holds(b, within, length));
        boolean between = cut - before < CORNER_MM && before > fromMm && cut < toMm;
        boolean slow = between || Corners.distanceMm(corners, within, length) < CORNER_MM;
        add(stretches, new Stretch(before, cut, frozen ? SLOW : slow ? CORNER : 1, frozen));
      }
      before = cut;
    }
    for (Stretch s : stretches) {
      contour
          .track()
          .slice(s.fromMm(), s.toMm())
          .forEach(p -> pieces.add(new TorchPath.Piece(p, s.feedPart(), s.frozen())));
    }
    return joined(pieces);
  }

  /** A part of a lap that is cut in one way. */
  private record Stretch(double fromMm, double toMm, double feedPart, boolean frozen) {}

  /** Adds a stretch, or makes the last one longer. */
  private static void add(List<Stretch> stretches, Stretch next) {
    Stretch last = stretches.isEmpty() ? null : stretches.get(stretches.size() - 1);
    if (last != null && last.feedPart() == next.feedPart() && last.frozen() == next.frozen()) {
      stretches.remove(last);
      stretches.add(new Stretch(last.fromMm(), next.toMm(), next.feedPart(), next.frozen()));
    } else {
      stretches.add(next);
    }
  }

  private static boolean holds(Bends.Bend bend, double atMm, double lengthMm) {
    return (atMm > bend.fromMm() && atMm < bend.toMm())
        || (atMm + lengthMm > bend.fromMm() && atMm + lengthMm < bend.toMm());
  }

  /** The ends of a lap, and the places between them where feed or height change. */
  private static SortedSet<Double> cuts(
      List<Bends.Bend> tight, List<Double> corners, double lengthMm, double fromMm, double toMm) {
    List<Double> changes = new ArrayList<>();
    tight.forEach(b -> changes.addAll(List.of(b.fromMm(), b.toMm())));
    corners.forEach(c -> changes.addAll(List.of(c - CORNER_MM, c + CORNER_MM)));
    SortedSet<Double> cuts = new TreeSet<>(List.of(fromMm, toMm));
    for (double change : changes) {
      for (int lap = -2; lap <= 2; lap++) {
        double at = change + lap * lengthMm;
        if (at > fromMm + 0.05 && at < toMm - 0.05) {
          cuts.add(at);
        }
      }
    }
    return cuts;
  }

  /** Tells bends worth holding the height for from corners. */
  private void sort(Track track, List<Bends.Bend> tight, List<Double> corners) {
    for (Bends.Bend bend : Bends.of(track, torch.thicknessMm())) {
      double turn = Math.abs(bend.turnRad());
      if (turn >= TIGHT_TURN_RAD && bend.lengthMm() >= torch.thicknessMm()) {
        tight.add(bend);
      } else if (turn > CORNER_TURN_RAD) {
        double at = bend.middleMm();
        corners.add(at >= track.lengthMm() ? at - track.lengthMm() : at);
      }
    }
  }

  /** Slices meet to rounding; here they meet exactly. */
  static List<TorchPath.Piece> joined(List<TorchPath.Piece> pieces) {
    List<TorchPath.Piece> result = new ArrayList<>();
    for (TorchPath.Piece piece : pieces) {
      if (result.isEmpty()
          || result.get(result.size() - 1).path().end().equals(piece.path().start())) {
        result.add(piece);
      } else {
        frieze.curve.Point at = result.get(result.size() - 1).path().end();
        result.add(new TorchPath.Piece(from(at, piece.path()), piece.feedPart(), piece.frozen()));
      }
    }
    return result;
  }

  static Segment from(frieze.curve.Point at, Segment s) {
    return s instanceof Arc arc
        ? new Arc(at, arc.end(), arc.centre(), arc.sweepRad())
        : new frieze.curve.Line(at, s.end());
  }
}
