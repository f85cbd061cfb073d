package frieze.region;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.fixtures.OpenIcons;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/** The open icon sets at 60 mm: offsets and axes against distances to every edge. */
class OpenIconsRegionTest {
  private static final double SIZE_MM = 60;
  private static final double FLATTEN_MM = 0.002;
  private static final double TOLERANCE_MM = 0.002;

  /** Tool radii and stepovers, both ways, up to 13 mm. */
  private static final double[] DISTANCES = {-1.5, 1.5875, -0.4, 6.35, -3, 13, -13, 0.1};

  private static final double MICROMETRE = 0.001;

  @Test
  void offsets_of_two_hundred_icons_keep_to_the_bound() {
    assertThat(checkOffsets(OpenIcons.sample(200), 2)).isGreaterThanOrEqualTo(190);
  }

  /** Two icons at which the library's buffer leaves a hole open, and cuts what is too thin. */
  @Test
  void parts_are_right_where_a_buffer_has_them_wrong() {
    Region notes = icon("bootstrap-icons/1.11.3/icons/stickies.svg");
    assertThat(miss(notes, OffsetChecks.edges(notes), 6.35)).isLessThanOrEqualTo(TOLERANCE_MM);
    Region diamond = icon("bootstrap-icons/1.11.3/icons/x-diamond-fill.svg");
    assertThat(MedialAxis.of(diamond, 0.003).largest().radiusMm()).isLessThan(13);
    assertThat(Offset.offset(diamond, -13, TOLERANCE_MM).isEmpty()).isTrue();
  }

  /** Here the buffer leaves a sliver of a hole half a millimetre too near to the outline. */
  @Test
  void a_hole_that_should_have_closed_is_gone() {
    Region pencil = icon("bootstrap-icons/1.11.3/icons/pencil.svg");
    assertThat(miss(pencil, OffsetChecks.edges(pencil), 6.35)).isLessThanOrEqualTo(TOLERANCE_MM);
  }

  /**
   * A stroke twice as wide as the distance: the buffer's two sides lie on each other, and edges
   * that miss were split until the memory was full.
   */
  @Test
  void an_offset_with_a_place_as_thin_as_nothing_stays_small() {
    Region signature = icon("font-awesome/6.5.2/svgs/solid/signature.svg");
    BufferParameters parameters = new BufferParameters(31);
    parameters.setSimplifyFactor(TOLERANCE_MM / 30);
    Geometry raw = new BufferOp(signature.geometry(), parameters).getResultGeometry(-3);
    BoundaryDistance source = BoundaryDistance.of(signature);
    Geometry corrected = new OffsetCorrection(source, 3, TOLERANCE_MM).correct(raw);
    assertThat(corrected.isValid()).isTrue();
    assertThat(corrected.getNumPoints()).isLessThan(3 * raw.getNumPoints());
    assertThat(corrected.getArea()).isGreaterThan(0.99 * raw.getArea());
  }

  private static Region icon(String name) {
    Map<String, byte[]> found = new TreeMap<>(OpenIcons.drawings());
    found.keySet().removeIf(key -> !key.endsWith(name));
    Map.Entry<String, byte[]> only = found.entrySet().iterator().next();
    return outline(only.getKey(), only.getValue()).orElseThrow();
  }

  @Test
  @Tag("corpus")
  void offsets_of_all_icons_keep_to_the_bound() {
    assertThat(checkOffsets(OpenIcons.drawings(), DISTANCES.length)).isGreaterThanOrEqualTo(3000);
  }

  @Test
  void axes_of_sixty_icons_touch_the_boundary() {
    assertThat(checkAxes(OpenIcons.sample(60))).isGreaterThanOrEqualTo(55);
  }

  @Test
  @Tag("corpus")
  void axes_of_all_icons_touch_the_boundary() {
    assertThat(checkAxes(OpenIcons.drawings())).isGreaterThanOrEqualTo(3000);
  }

  private static Optional<Region> outline(String name, byte[] svg) {
    try {
      Artwork art = new SvgReader().read(name, svg);
      Bounds b = art.bounds();
      Artwork sized = b.width() > b.height() ? art.withWidth(SIZE_MM) : art.withHeight(SIZE_MM);
      Region filled = sized.filled(FLATTEN_MM);
      return filled.isEmpty() ? Optional.empty() : Optional.of(filled);
    } catch (BadInputException e) {
      return Optional.empty();
    }
  }

  /** Checks some distances for each icon; returns how many icons had an outline. */
  private static int checkOffsets(Map<String, byte[]> icons, int distances) {
    List<String> bad = new ArrayList<>();
    int checked = 0;
    int next = 0;
    for (Map.Entry<String, byte[]> icon : icons.entrySet()) {
      Optional<Region> outline = outline(icon.getKey(), icon.getValue());
      if (outline.isPresent()) {
        checked++;
        double[] edges = OffsetChecks.edges(outline.get());
        for (int k = 0; k < distances; k++) {
          double distance = DISTANCES[next++ % DISTANCES.length];
          double miss = miss(outline.get(), edges, distance);
          if (!(miss <= TOLERANCE_MM)) {
            bad.add(icon.getKey() + " at " + distance + ": " + miss);
          }
        }
      }
    }
    assertThat(bad).isEmpty();
    return checked;
  }

  private static double miss(Region outline, double[] edges, double distance) {
    Region offset = Offset.offset(outline, distance, TOLERANCE_MM);
    if (!offset.geometry().isValid()) {
      return Double.POSITIVE_INFINITY;
    }
    double worst = 0;
    for (Ring ring : offset.rings()) {
      worst = Math.max(worst, OffsetChecks.worstMiss(ring.points(), edges, Math.abs(distance)));
    }
    return worst;
  }

  private static int checkAxes(Map<String, byte[]> icons) {
    List<String> bad = new ArrayList<>();
    int checked = 0;
    for (Map.Entry<String, byte[]> icon : icons.entrySet()) {
      Optional<Region> outline = outline(icon.getKey(), icon.getValue());
      if (outline.isPresent()) {
        checked++;
        double miss = missOfAxis(outline.get());
        if (!(miss <= MICROMETRE)) {
          bad.add(icon.getKey() + ": " + miss);
        }
      }
    }
    assertThat(bad).isEmpty();
    return checked;
  }

  /**
   * The most by which a radius misses the distance to the boundary; infinite if a part has none.
   */
  private static double missOfAxis(Region outline) {
    double[] edges = OffsetChecks.edges(outline);
    Region.Locator inside = outline.locator();
    MedialAxis axis = MedialAxis.of(outline, 0.003);
    boolean[] reached = new boolean[axis.parts()];
    double worst = 0;
    for (MedialAxis.Branch branch : axis.branches()) {
      reached[branch.part()] = true;
      for (Disc d : branch.discs()) {
        Point c = d.centre();
        worst = Math.max(worst, Math.abs(OffsetChecks.distance(c, edges) - d.radiusMm()));
        boolean outside = d.radiusMm() > MICROMETRE && !inside.contains(c);
        worst = outside ? Double.POSITIVE_INFINITY : worst;
      }
    }
    for (boolean part : reached) {
      worst = part ? worst : Double.POSITIVE_INFINITY;
    }
    return worst;
  }
}
