package frieze.artwork.dxf;

import frieze.artwork.Colours;

/** Colours of entities and layers. Source: the DXF reference, group codes 62 and 420. */
final class DxfColour {
  private static final String[] FIRST = {
    "", "#ff0000", "#ffff00", "#00ff00", "#00ffff", "#0000ff", "#ff00ff", "#000000"
  };

  private DxfColour() {}

  /** The colour as {@code #rrggbb}; the layer's if the entity has none; empty if not known. */
  static String hex(DxfEntity entity, String ofLayer) {
    if (entity.has(420)) {
      int rgb = entity.integer(420, 0);
      return Colours.hex(rgb >> 16 & 255, rgb >> 8 & 255, rgb & 255);
    }
    int index = Math.abs(entity.integer(62, 256));
    if (index == 256) {
      return ofLayer;
    }
    return index < FIRST.length ? FIRST[index] : "";
  }
}
