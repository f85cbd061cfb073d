package frieze.sheet;

import frieze.field.StockField;
import frieze.shop.Material;
import java.util.SortedMap;
import java.util.TreeMap;

/** The pictures of a panel as PNG files. */
public final class Pictures {
  private static final int MOST_COLUMNS = 1200;

  private Pictures() {}

  /**
   * A simulated stock of which no design is known, seen from above, with a map of its depths below
   * it, as PNG.
   *
   * @param steel whether it is drawn in grey instead of a wood tone
   */
  public static byte[] png(StockField stock, boolean steel) {
    return Shading.of(stock.depthMap(MOST_COLUMNS), stock.thicknessMm()).reliefAndDepths(steel);
  }

  /** The content of each file by its name; empty when the stock was not simulated. */
  public static SortedMap<String, byte[]> png(PanelFacts panel) {
    SortedMap<String, byte[]> files = new TreeMap<>();
    panel
        .depths()
        .ifPresent(
            map -> {
              Shading shading = Shading.of(panel, map);
              boolean steel = panel.setup().stock().material().kind() == Material.Kind.STEEL;
              files.put("stock.png", shading.relief(steel));
              files.put("depths.png", shading.depths());
            });
    return files;
  }
}
