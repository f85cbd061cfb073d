package frieze.shop;

/**
 * What the stock is made of.
 *
 * @param name as written in the job, such as {@code white ash}
 */
public record Material(String name, Kind kind) {
  /** How a material behaves under a cutter. */
  public enum Kind {
    SOFTWOOD,
    HARDWOOD,
    /** MDF and plywood. */
    SHEET,
    STEEL
  }
}
