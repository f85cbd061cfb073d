package frieze.dryrun;

/** The extents of rapid moves and of feed moves (with probing), and of both. */
public record MoveExtents(Extents all, Extents rapid, Extents feed) {}
