package frieze.region;

import frieze.curve.Point;

/** A disc within a region that touches its boundary; radius 0 at the tip of a corner. */
public record Disc(Point centre, double radiusMm) {}
