package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BorderTest {
  private static final SourceSpan NOWHERE = SourceSpan.NONE;
  private static final double EQUAL = 1e-9;

  /** A shape that is like none of its mirror images or turns. */
  private static final List<Point> LEAF =
      List.of(new Point(0, 0), new Point(8, 1), new Point(9, 6), new Point(1, 10));

  private static final Panel PANEL = new Opening(300, 140, 0).panel("panel", 0, NOWHERE);

  private static Border counted(Border.Meeting meeting, int alongX, int alongY) {
    return new Border(
        meeting,
        false,
        OptionalInt.of(alongX),
        OptionalInt.of(alongY),
        OptionalDouble.empty(),
        6,
        Optional.empty(),
        OptionalDouble.empty());
  }

  private static Border pitched(Border.Meeting meeting, double pitchMm) {
    return new Border(
        meeting,
        true,
        OptionalInt.empty(),
        OptionalInt.empty(),
        OptionalDouble.of(pitchMm),
        6,
        Optional.of("rose"),
        OptionalDouble.of(15));
  }

  private static List<Affine> maps(Pattern pattern) {
    return new ArrayList<>(
        pattern.place("leaf", Hull.of(LEAF), PANEL, 0, NOWHERE).stream()
            .map(p -> p.map().affine())
            .toList());
  }

  private static boolean same(Affine a, Affine b) {
    return LEAF.stream().allMatch(p -> a.apply(p).distance(b.apply(p)) < EQUAL);
  }

  private static void assertUnchangedBy(Affine operation, List<Affine> maps) {
    for (Affine map : maps) {
      Affine image = map.then(operation);
      assertThat(maps).anyMatch(m -> same(m, image));
    }
  }

  private static final Affine LEFT_FOR_RIGHT =
      Affine.scaling(-1, 1).then(Affine.translation(300, 0));
  private static final Affine BELOW_FOR_ABOVE =
      Affine.scaling(1, -1).then(Affine.translation(0, 140));

  @ParameterizedTest
  @EnumSource(
      value = Border.Meeting.class,
      names = {"MIRRORED", "ALTERNATE"})
  void the_border_is_its_own_mirror_image_both_ways(Border.Meeting meeting) {
    List<Affine> maps = maps(counted(meeting, 8, 4));
    assertThat(maps).hasSize(24);
    assertUnchangedBy(LEFT_FOR_RIGHT, maps);
    assertUnchangedBy(BELOW_FOR_ABOVE, maps);
  }

  @ParameterizedTest
  @EnumSource(
      value = Border.Meeting.class,
      names = {"MIRRORED", "ALTERNATE"})
  void the_motifs_beside_a_corner_are_mirror_images_in_its_diagonal(Border.Meeting meeting) {
    List<Affine> maps = maps(counted(meeting, 8, 4));
    // The diagonal through the lower right corner of the band, (294, 6), running up to the left.
    Affine diagonal =
        Affine.translation(-294, -6)
            .then(new Affine(0, -1, -1, 0, 0, 0))
            .then(Affine.translation(294, 6));
    Affine image = maps.get(7).then(diagonal);
    Point shift = maps.get(8).apply(Point.ORIGIN).minus(image.apply(Point.ORIGIN));
    // Half of the difference between the two pitches, (268 / 8 - 108 / 4) / 2, and no turn.
    assertThat(shift.x()).isZero();
    assertThat(Math.abs(shift.y())).isCloseTo(3.25, org.assertj.core.api.Assertions.within(EQUAL));
    assertThat(same(maps.get(8), image.then(Affine.translation(shift.x(), shift.y())))).isTrue();
  }

  @Test
  void a_running_border_is_unchanged_by_half_a_turn_and_by_no_mirror() {
    List<Affine> maps = maps(counted(Border.Meeting.RUNNING, 7, 3));
    assertUnchangedBy(LEFT_FOR_RIGHT.then(BELOW_FOR_ABOVE), maps);
    assertThat(maps).noneMatch(Affine::isMirroring);
  }

  @Test
  void a_pitch_becomes_a_whole_even_count_on_each_side() {
    // 288 - 30 = 258 and 128 - 30 = 98 are free: 258 / 20 = 12.9 and 98 / 20 = 4.9.
    assertThat(maps(pitched(Border.Meeting.MIRRORED, 20))).hasSize(2 * (12 + 4));
    assertThat(maps(pitched(Border.Meeting.RUNNING, 20))).hasSize(2 * (13 + 5));
    // No more than fit: each is 9 wide.
    assertThat(maps(pitched(Border.Meeting.RUNNING, 1))).hasSize(2 * (28 + 10));
  }

  @Test
  void all_motifs_lie_in_the_border_outside_the_corners() {
    for (Affine map : maps(pitched(Border.Meeting.MIRRORED, 20))) {
      Bounds b = Hull.of(LEAF).transformed(map).bounds();
      Bounds band = PANEL.outline().bounds().grown(-6 + EQUAL);
      assertThat(band.contains(new Point(b.minX(), b.minY()))).isTrue();
      assertThat(band.contains(new Point(b.maxX(), b.maxY()))).isTrue();
      boolean besideX = b.minX() >= 6 + 15 - EQUAL && b.maxX() <= 294 - 15 + EQUAL;
      boolean besideY = b.minY() >= 6 + 15 - EQUAL && b.maxY() <= 134 - 15 + EQUAL;
      assertThat(besideX || besideY).isTrue();
    }
  }

  @Test
  void a_point_of_a_hull_over_a_long_line_has_its_distance() {
    Hull line = Hull.of(List.of(new Point(-500, 0), new Point(500, 0)));
    Hull point = Hull.of(List.of(new Point(0, 6), new Point(5, 12), new Point(-5, 12)));
    assertThat(point.distance(line)).isEqualTo(6);
    assertThat(line.distance(point)).isEqualTo(6);
  }

  @Test
  void corner_motifs_mirror_or_turn_each_other() {
    List<Affine> mirrored = maps(new Corners(false, 6, OptionalDouble.empty()));
    assertUnchangedBy(LEFT_FOR_RIGHT, mirrored);
    assertUnchangedBy(BELOW_FOR_ABOVE, mirrored);
    assertThat(mirrored.get(0).apply(new Point(4.5, 5)).distance(new Point(11, 11)))
        .isLessThan(EQUAL);
    List<Affine> turned = maps(new Corners(true, 6, OptionalDouble.of(15)));
    assertThat(turned).noneMatch(Affine::isMirroring);
    assertUnchangedBy(LEFT_FOR_RIGHT.then(BELOW_FOR_ABOVE), turned);
  }

  @Test
  void what_does_not_fit_is_told_with_its_figures() {
    assertThatThrownBy(() -> maps(counted(Border.Meeting.MIRRORED, 40, 2)))
        .hasMessageContaining("LAY-005")
        .hasMessageContaining("92 mm");
    assertThatThrownBy(() -> maps(counted(Border.Meeting.ALTERNATE, 7, 2)))
        .hasMessageContaining("LAY-003");
  }
}
