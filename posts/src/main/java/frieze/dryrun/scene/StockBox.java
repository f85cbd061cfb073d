package frieze.dryrun.scene;

import frieze.shop.Stock;
import frieze.shop.Zero;
import java.util.Optional;

/**
 * The stock in the program's frame, in millimetres.
 *
 * @param topMm its top; with zero on the bed, at the thickest reading
 * @param bottomMm its bottom; with zero on the top, at the thickest reading
 */
public record StockBox(
    double minXMm, double minYMm, double maxXMm, double maxYMm, double topMm, double bottomMm) {

  /** Places the stock if both it and the zero are known. */
  public static Optional<StockBox> of(Surroundings known) {
    return known.stock().flatMap(stock -> known.zero().map(zero -> of(stock, zero)));
  }

  private static StockBox of(Stock stock, Zero zero) {
    double x =
        switch (zero.x()) {
          case LEFT -> 0;
          case CENTRE -> -stock.lengthMm() / 2;
          case RIGHT -> -stock.lengthMm();
        };
    double left = x - zero.pushedMm();
    double y =
        switch (zero.y()) {
          case FRONT -> 0;
          case CENTRE -> -stock.widthMm() / 2;
          case BACK -> -stock.widthMm();
        };
    double top = zero.z() == Zero.AlongZ.TOP ? 0 : stock.thickestMm();
    return new StockBox(
        left, y, left + stock.lengthMm(), y + stock.widthMm(), top, top - stock.thickestMm());
  }

  /** How far a place lies beside the stock: 0 on it, else along the worse axis. */
  public double beyondMm(double minX, double minY, double maxX, double maxY) {
    double beyondX = Math.max(minXMm - minX, maxX - maxXMm);
    double beyondY = Math.max(minYMm - minY, maxY - maxYMm);
    return Math.max(0, Math.max(beyondX, beyondY));
  }
}
