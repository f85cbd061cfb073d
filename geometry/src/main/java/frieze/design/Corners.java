package frieze.design;

/** What becomes of inside corners, in which a round tool leaves its radius. */
public enum Corners {
  /** They stay round. */
  ROUND,
  /** The tool goes straight into each until it touches the drawn corner. */
  EAR,
  /** The tool goes on along the longer side of each until it touches the drawn corner. */
  ALONG_SIDE
}
