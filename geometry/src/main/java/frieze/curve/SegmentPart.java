package frieze.curve;

/** Takes parts of lines and circular arcs. */
public final class SegmentPart {
  private SegmentPart() {}

  /**
   * The part between two parameters, exact. An end at 0 or 1 is the very point of the whole.
   *
   * @param whole a line or an arc
   * @param from 0 or more
   * @param to 1 or less, not before {@code from}
   * @throws IllegalArgumentException if the whole is another curve
   */
  public static Segment between(Segment whole, double from, double to) {
    if (!(whole instanceof Arc) && !(whole instanceof Line)) {
      throw new IllegalArgumentException("whole must be a line or an arc but was " + whole);
    }
    if (from == 0 && to == 1) {
      return whole;
    }
    Point start = from == 0 ? whole.start() : whole.at(from);
    Point end = to == 1 ? whole.end() : whole.at(to);
    return whole instanceof Arc arc
        ? new Arc(start, end, arc.centre(), arc.sweepRad() * (to - from))
        : new Line(start, end);
  }
}
