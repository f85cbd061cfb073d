package frieze.sheet;

import frieze.shop.Material;
import java.util.SortedMap;
import java.util.TreeMap;

/** The pictures of a panel as PNG files. */
public final class Pictures {
  private Pictures() {}

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
