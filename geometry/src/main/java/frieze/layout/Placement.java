package frieze.layout;

import frieze.curve.Frame;
import frieze.curve.FrameMap;

/**
 * A motif put somewhere on a panel.
 *
 * @param motif the name of the motif
 * @param number counted from 1, in the order along the band
 */
public record Placement(String motif, int number, FrameMap<Frame.Artwork, Frame.Panel> map) {}
