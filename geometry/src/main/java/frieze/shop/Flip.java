package frieze.shop;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import java.util.List;
import java.util.Optional;

/**
 * One of the two sides of a stock that is turned over: the back is up first, then the face.
 *
 * <p>The zero lies at the same edge and the same end of the stock on both sides, so that its true
 * width and length do not matter.
 *
 * @param endToEnd whether the right end goes to the left, about the line across; else the front
 *     edge goes to the back, about the line along
 * @param backUp whether this is the first side
 * @param pins that hold the stock in its place on both sides; none where it is laid to its edges
 */
public record Flip(boolean endToEnd, boolean backUp, Optional<Pins> pins) {
  /**
   * Two pins on the line about which the stock is turned, so that their holes come to the same
   * places.
   *
   * @param at in the stock frame
   * @param depthMm how deep they stand in the spoilboard
   */
  public record Pins(List<Point> at, double diameterMm, double depthMm) {
    public Pins {
      at = List.copyOf(at);
    }
  }

  /** The other side of the same stock. */
  public Flip otherSide() {
    return new Flip(endToEnd, !backUp, pins);
  }

  /** Where a place of something comes to when it is turned over in its own place. */
  public Affine turned(double lengthMm, double widthMm) {
    return endToEnd
        ? Affine.scaling(-1, 1).then(Affine.translation(lengthMm, 0))
        : Affine.scaling(1, -1).then(Affine.translation(0, widthMm));
  }

  /** The zero at the same edges, seen from the other side. */
  public Zero turned(Zero zero) {
    return endToEnd
        ? new Zero(turned(zero.x()), zero.y(), zero.z())
        : new Zero(zero.x(), turned(zero.y()), zero.z());
  }

  private static Zero.AlongX turned(Zero.AlongX x) {
    return switch (x) {
      case LEFT -> Zero.AlongX.RIGHT;
      case CENTRE -> Zero.AlongX.CENTRE;
      case RIGHT -> Zero.AlongX.LEFT;
    };
  }

  private static Zero.AlongY turned(Zero.AlongY y) {
    return switch (y) {
      case FRONT -> Zero.AlongY.BACK;
      case CENTRE -> Zero.AlongY.CENTRE;
      case BACK -> Zero.AlongY.FRONT;
    };
  }

  /** A clamp that goes along with the stock, such as a screw in its waste. */
  public KeepOut turned(KeepOut clamp, Stock stock) {
    Affine map = turned(stock.lengthMm(), stock.widthMm());
    Bounds b =
        Bounds.EMPTY
            .with(map.apply(new Point(clamp.minXMm(), clamp.minYMm())))
            .with(map.apply(new Point(clamp.maxXMm(), clamp.maxYMm())));
    return new KeepOut(clamp.name(), b.minX(), b.minY(), b.maxX(), b.maxY(), clamp.topMm());
  }
}
