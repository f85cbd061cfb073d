package frieze.torch;

import frieze.curve.Arc;
import frieze.curve.Segment;
import frieze.plan.Track;
import frieze.shop.Torch;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

/**
 * Chooses where the torch goes slower and where it keeps its height. All figures are common
 * practice.
 *
 * <ul>
 *   <li>A small closed hole, up to five times the thickness and 32 mm: slow and frozen all around.
 *   <li>A tight arc, of a radius up to the thickness that turns by 80 degrees or more: the same.
 *   <li>The last and the first millimetres at a corner: slower, height as it is.
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
    List<Double> corners = sharp(contour.track());
    TreeSet<Double> cuts = new TreeSet<>(List.of(fromMm, toMm));
    double length = contour.track().lengthMm();
    for (double corner : corners) {
      for (int lap = -1; lap <= 2; lap++) {
        for (double side : new double[] {-CORNER_MM, CORNER_MM}) {
          double at = corner + lap * length + side;
          if (at > fromMm + 0.05 && at < toMm - 0.05) {
            cuts.add(at);
          }
        }
      }
    }
    Double before = null;
    for (double cut : cuts) {
      if (before != null) {
        double middle = (before + cut) / 2;
        double within = middle - Math.floor(middle / length) * length;
        boolean slow = Corners.distanceMm(corners, within, length) < CORNER_MM;
        contour.track().slice(before, cut).forEach(s -> pieces.add(piece(s, slow)));
      }
      before = cut;
    }
    return joined(pieces);
  }

  private TorchPath.Piece piece(Segment s, boolean corner) {
    boolean tight =
        s instanceof Arc arc
            && arc.radius() <= torch.thicknessMm()
            && Math.abs(arc.sweepRad()) >= TIGHT_TURN_RAD;
    return new TorchPath.Piece(s, tight ? SLOW : corner ? CORNER : 1, tight);
  }

  private static List<Double> sharp(Track track) {
    List<Segment> pieces = track.path().segments();
    List<Double> joints = track.joints();
    List<Double> corners = new ArrayList<>();
    for (int i = 0; i < pieces.size(); i++) {
      if (Corners.turnRad(pieces.get(i), pieces.get((i + 1) % pieces.size())) > CORNER_TURN_RAD) {
        corners.add(joints.get(i));
      }
    }
    return corners;
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
