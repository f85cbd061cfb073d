package frieze.artwork.dxf;

/**
 * A layer.
 *
 * @param shown whether it is switched on and not frozen
 * @param colour as {@code #rrggbb}; empty if it is none of the first few
 */
record DxfLayer(String name, boolean shown, String colour) {}
