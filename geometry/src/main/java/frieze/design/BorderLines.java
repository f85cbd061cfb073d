package frieze.design;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.ArcFitter;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.layout.LayoutCode;
import frieze.layout.Panel;
import frieze.layout.Placement;
import frieze.region.BoundaryDistance;
import frieze.region.FillRule;
import frieze.region.MedialAxis;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Lines that run round a panel, each at a distance inside its outline: a motif that the panel
 * itself makes, placed once and where it is.
 *
 * <p><i>Guarantees</i>
 *
 * <ul>
 *   <li>Each point of a line lies at its inset from the outline; where an outward corner is rounded
 *       it lies farther in, nowhere nearer.
 *   <li>Around a corner that points into the panel, such as a notch's, the line is an arc about it.
 * </ul>
 *
 * <p><i>Approximation:</i> the tolerances of flattening, offset and arc fitting together.
 *
 * @param name by which the work list calls them
 * @param insetsMm of the lines, each above 0
 * @param widthMm how wide they are drawn, so that they can be carved by their width; 0 for bare
 *     lines
 * @param cornerMm the least radius of their outward corners; 0 leaves them as the outline gives
 *     them
 * @param where the place of the name in the job
 */
public record BorderLines(
    String name, List<Double> insetsMm, double widthMm, double cornerMm, SourceSpan where) {
  /** How exactly the room that a panel has is told. */
  private static final double ROOM_MM = 0.01;

  public BorderLines {
    insetsMm = List.copyOf(insetsMm);
    if (insetsMm.isEmpty() || insetsMm.stream().anyMatch(i -> !(i > 0))) {
      throw new IllegalArgumentException("insetsMm must be > 0, one at least, but was " + insetsMm);
    }
    if (!(widthMm >= 0) || !(cornerMm >= 0)) {
      throw new IllegalArgumentException(
          "widthMm and cornerMm must be >= 0 but were " + widthMm + ", " + cornerMm + " mm");
    }
  }

  /** Where they lie: as they are made. */
  public Placement placement() {
    return new Placement(name, 1, new FrameMap<>(Affine.IDENTITY));
  }

  /**
   * Makes the lines of a panel. Their pieces can be picked by number, from 1, in the order of the
   * insets; each line with a width is an area as well.
   *
   * @param notes takes a warning for each line that falls into several
   * @throws BadInputException if a line has no room
   */
  public Motif on(Panel panel, Tolerances tolerances, Diagnostics notes) {
    Region outline = Region.of(List.of(panel.outline()), FillRule.NONZERO, tolerances.flattenMm());
    List<Piece> pieces = new ArrayList<>();
    for (int i = 0; i < insetsMm.size(); i++) {
      double inset = insetsMm.get(i);
      String id = String.valueOf(i + 1);
      requireInside(inset);
      Region line = within(outline, inset, tolerances);
      requireRoom(line, outline, inset);
      if (line.parts().size() > 1) {
        notes.add(inParts(line, outline, inset));
      }
      pieces.add(
          new Piece(
              id,
              List.of(),
              paths(line, tolerances),
              Optional.empty(),
              OptionalDouble.of(widthMm)));
      if (widthMm > 0) {
        List<Path> band =
            new ArrayList<>(paths(within(outline, inset - widthMm / 2, tolerances), tolerances));
        band.addAll(paths(within(outline, inset + widthMm / 2, tolerances), tolerances));
        Optional<FillRule> between = Optional.of(FillRule.EVEN_ODD);
        pieces.add(new Piece(id, List.of(), band, between, OptionalDouble.empty()));
      }
    }
    Artwork drawn = new Artwork("the panel's outline", pieces, "the panel's", List.of());
    return new Motif(name, drawn, List.of(), cornerMm == 0 ? insetsMm : List.of());
  }

  /** What lies at least a distance inside, its outward corners rounded. */
  private Region within(Region outline, double insetMm, Tolerances tolerances) {
    if (cornerMm == 0 || insetMm <= 0) {
      return Offset.offset(outline, -insetMm, tolerances.offsetMm());
    }
    Region core = Offset.offset(outline, -insetMm - cornerMm, tolerances.offsetMm());
    return Offset.offset(core, cornerMm, tolerances.offsetMm());
  }

  private static List<Path> paths(Region region, Tolerances tolerances) {
    List<Path> paths = new ArrayList<>();
    for (Ring ring : region.rings()) {
      paths.add(ArcFitter.fit(ring.points(), true, tolerances.arcFitMm()));
    }
    return paths;
  }

  private void requireInside(double insetMm) {
    double beyond = widthMm / 2 - insetMm;
    if (beyond > 0) {
      throw BadInputException.of(
          LayoutCode.LINE_OFF_EDGE,
          where,
          "a border line "
              + Amounts.length(widthMm)
              + " wide and "
              + Amounts.length(insetMm)
              + " inside the outline reaches "
              + Amounts.length(beyond)
              + " over the panel's edge",
          "make \"width\" less than twice the inset");
    }
  }

  private void requireRoom(Region line, Region outline, double insetMm) {
    if (!line.isEmpty()) {
      return;
    }
    double most = MedialAxis.of(outline, ROOM_MM).largest().radiusMm();
    boolean byCorner = insetMm < most;
    throw BadInputException.of(
        LayoutCode.LINE_NO_ROOM,
        where,
        "the border line "
            + Amounts.length(insetMm)
            + " inside the outline"
            + (byCorner ? ", with corners rounded by " + Amounts.length(cornerMm) + "," : "")
            + " has no room: no place of the panel lies farther inside than "
            + Amounts.length(most),
        byCorner ? "make \"corner\" smaller" : "make \"inset\" smaller");
  }

  private Diagnostic inParts(Region line, Region outline, double insetMm) {
    Point at = neck(line);
    return Diagnostic.warning(
        LayoutCode.LINE_IN_PARTS,
        where,
        "the border line "
            + Amounts.length(insetMm)
            + " inside the outline falls into "
            + line.parts().size()
            + " parts, because the panel is only about "
            + Amounts.length(2 * BoundaryDistance.of(outline).distance(at))
            + " wide at "
            + Amounts.place(at.x(), at.y()),
        "make \"inset\" less than half of that for a line in one");
  }

  /** The middle between two parts that are nearest to each other, roughly. */
  private static Point neck(Region line) {
    List<Region> parts = line.parts();
    Point middle = parts.get(0).bounds().centre();
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < parts.size(); i++) {
      BoundaryDistance one = BoundaryDistance.of(parts.get(i));
      for (int k = 0; k < parts.size(); k++) {
        for (Point p : k == i ? List.<Point>of() : parts.get(k).rings().get(0).points()) {
          BoundaryDistance.Nearest nearest = one.nearest(p);
          if (nearest.distanceMm() < least) {
            least = nearest.distanceMm();
            middle = p.towards(nearest.foot(), 0.5);
          }
        }
      }
    }
    return middle;
  }
}
