package frieze.dryrun;

import frieze.motion.Motion;
import frieze.shop.Tool;
import java.util.Optional;

/** Cuts moves into the simulated stock, and tells each of them what material it meets. */
final class StockCutter {
  private final StockField field;
  private final StockBox box;
  private boolean cutAll = true;

  private StockCutter(StockField field, StockBox box) {
    this.field = field;
    this.box = box;
  }

  /** Makes one for an uncut stock; empty if the stock or the zero on it is not known. */
  static Optional<StockCutter> of(Surroundings known) {
    return known
        .stock()
        .flatMap(
            stock -> StockBox.of(known).map(box -> new StockCutter(StockField.of(stock), box)));
  }

  void move(Passage passage) {
    if (passage.tool().isEmpty() || !passage.isPlaced()) {
      cutAll &= passage.belowTop().isEmpty();
      return;
    }
    if (passage.belowTop().isEmpty() && passage.tool().isPresent()) {
      passage.setMet(Met.NOTHING);
      return;
    }
    Tool tool = passage.tool().get();
    Motion path = inStock(passage.path());
    if (passage.isRapid()) {
      passage.setMet(field.materialUnder(path, tool.shape()));
      field.cut(path, tool.shape());
    } else {
      passage.setMet(field.cutAndMeasure(path, tool.shape()));
    }
  }

  private Motion inStock(Motion path) {
    return Motions.shifted(path, -box.minXMm(), -box.minYMm(), -box.topMm());
  }

  StockField field() {
    return field;
  }

  /** Whether no cut was left out for want of a known tool or place. */
  boolean cutAll() {
    return cutAll;
  }
}
