package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Cubic;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

/** Expected places are those of circles, of the parabola's closed form, and of mirrors. */
class FollowTest {
  private static final SourceSpan NOWHERE = SourceSpan.NONE;
  private static final OptionalDouble NONE = OptionalDouble.empty();

  private static final Hull LEAF =
      Hull.of(List.of(new Point(0, 0), new Point(8, 1), new Point(9, 6), new Point(1, 10)));

  private static Panel panel(double width, double height) {
    return new Opening(width, height, 0).panel("panel", 0, NOWHERE);
  }

  private static Follow arch(FriezeGroup group, int count, double rise, OptionalDouble pitch) {
    return new Follow(new Follow.Arch(rise), group, count, 5, NONE, pitch, false);
  }

  private static Follow along(Path path, FriezeGroup group, int count, OptionalDouble pitch) {
    Piece piece =
        new Piece("line", List.of(), List.of(path), Optional.empty(), OptionalDouble.of(1));
    Artwork artwork = new Artwork("line.svg", List.of(piece), "", List.of());
    Follow follow =
        new Follow(
            new Follow.Drawn("line", Optional.of("line")), group, count, 0, NONE, pitch, false);
    return (Follow) follow.resolved(name -> artwork, NOWHERE);
  }

  private static Point middle(Placement p) {
    return p.map().affine().apply(LEAF.bounds().centre());
  }

  private static double directionRad(Placement p) {
    return p.map().affine().applyToDirection(new Point(1, 0)).angleRad();
  }

  @Test
  void motifs_on_an_arch_stand_at_equal_angles_about_its_middle_and_are_turned_by_them() {
    double half = 195;
    double rise = 40;
    double radius = (half * half + rise * rise) / (2 * rise);
    double sweep = 4 * Math.atan2(rise, half);
    Point centre = new Point(200, 60 + rise / 2 - radius);
    List<Placement> all =
        arch(FriezeGroup.P1, 9, rise, NONE).place("leaf", LEAF, panel(400, 120), 0, NOWHERE);
    assertThat(all).hasSize(9);
    for (int i = 0; i < 9; i++) {
      double angle = Math.PI / 2 + sweep / 2 - (i + 0.5) * sweep / 9;
      assertThat(middle(all.get(i)).distance(Point.polar(centre, radius, angle)))
          .isCloseTo(0, within(1e-9));
      assertThat(directionRad(all.get(i))).isCloseTo(angle - Math.PI / 2, within(1e-12));
    }
  }

  @Test
  void an_arch_below_is_the_mirror_image_of_one_above() {
    List<Placement> above =
        arch(FriezeGroup.P1, 5, 30, NONE).place("leaf", LEAF, panel(300, 120), 0, NOWHERE);
    List<Placement> below =
        arch(FriezeGroup.P1, 5, -30, NONE).place("leaf", LEAF, panel(300, 120), 0, NOWHERE);
    for (int i = 0; i < 5; i++) {
      Point a = middle(above.get(i));
      assertThat(middle(below.get(i)).distance(new Point(a.x(), 120 - a.y())))
          .isCloseTo(0, within(1e-9));
    }
  }

  @Test
  void the_spaces_along_a_parabola_are_equal_by_its_closed_form() {
    // y = x^2 / (2 p) from -60 to 60 with p = 50 is a cubic exactly; its length from the middle is
    // x sqrt(1 + x^2 / p^2) / 2 + p asinh(x / p) / 2.
    Path parabola =
        new Path(
            List.of(Cubic.fromQuadratic(new Point(-60, 36), new Point(0, -36), new Point(60, 36))),
            false);
    List<Placement> all =
        along(parabola, FriezeGroup.P1, 7, NONE).place("leaf", LEAF, panel(200, 120), 0, NOWHERE);
    double whole = 2 * fromMiddle(60);
    for (int i = 0; i < 7; i++) {
      Point m = middle(all.get(i));
      assertThat(fromMiddle(m.x() - 100)).isCloseTo((i - 3) * whole / 7, within(1e-6));
      assertThat(m.y() - 60 + 18).isCloseTo(Math.pow(m.x() - 100, 2) / 100, within(1e-6));
    }
  }

  private static double fromMiddle(double x) {
    double a = Math.abs(x) / 50;
    double length = 25 * (a * Math.sqrt(1 + a * a) + Math.log(a + Math.sqrt(1 + a * a)));
    return Math.copySign(length, x);
  }

  @Test
  void a_whole_number_of_periods_goes_round_a_circle() {
    Path circle = Path.circle(new Point(3, 7), 50);
    Panel panel = panel(140, 140);
    List<Placement> all =
        along(circle, FriezeGroup.P2MG, 0, OptionalDouble.of(19))
            .place("leaf", LEAF, panel, 0, NOWHERE);
    // 314.16 / 19 = 16.5, and a period has four columns.
    assertThat(all.size() % FriezeGroup.P2MG.columnsPerPeriod()).isZero();
    assertThat(all).hasSize(16);
    Affine period = Affine.rotation(2 * Math.PI * 4 / 16);
    Affine about = Affine.translation(-70, -70).then(period).then(Affine.translation(70, 70));
    for (int i = 0; i < 16; i++) {
      Affine moved = all.get(i).map().affine().then(about);
      Affine next = all.get((i + 4) % 16).map().affine();
      for (Point p : List.of(new Point(0, 0), new Point(8, 1), new Point(1, 10))) {
        assertThat(moved.apply(p).distance(next.apply(p))).isCloseTo(0, within(1e-9));
      }
    }
    assertThatThrownBy(
            () -> along(circle, FriezeGroup.P2MG, 10, NONE).place("leaf", LEAF, panel, 0, NOWHERE))
        .isInstanceOf(BadInputException.class)
        .hasMessageContaining("LAY-003")
        .hasMessageContaining("multiple of 4, but it is 10");
  }

  @Test
  void a_pitch_is_kept_and_the_row_centred_unless_it_is_stretched() {
    double length = 195 * 195 + 40 * 40;
    double radius = length / 80;
    double whole = radius * 4 * Math.atan2(40, 195);
    Follow kept = arch(FriezeGroup.P1, 0, 40, OptionalDouble.of(30));
    List<Placement> all = kept.place("leaf", LEAF, panel(400, 120), 0, NOWHERE);
    // As many as fit on the line, less one: turned as the line runs, its corners would stick out.
    assertThat(all).hasSize((int) Math.floor((whole - 9) / 30));
    double between = middle(all.get(0)).distance(middle(all.get(1)));
    assertThat(between).isCloseTo(2 * radius * Math.sin(15 / radius), within(1e-9));
    assertThat(middle(all.get(0)).x() + middle(all.get(all.size() - 1)).x())
        .isCloseTo(400, within(1e-9));
    Follow stretched =
        new Follow(new Follow.Arch(40), FriezeGroup.P1, 0, 5, NONE, OptionalDouble.of(30), true);
    List<Placement> filled = stretched.place("leaf", LEAF, panel(400, 120), 0, NOWHERE);
    int n = (int) Math.rint(whole / 30);
    assertThat(filled).hasSize(n);
    assertThat(middle(filled.get(0)).distance(middle(filled.get(1))))
        .isCloseTo(2 * radius * Math.sin(whole / n / 2 / radius), within(1e-9));
  }

  @Test
  void what_does_not_fit_is_told_with_its_figures() {
    Panel low = panel(400, 60);
    assertThatThrownBy(() -> arch(FriezeGroup.P1, 9, 45, NONE).place("leaf", LEAF, low, 0, NOWHERE))
        .hasMessageContaining("LAY-007")
        .hasMessageContaining("motif leaf")
        .hasMessageContaining("inset of 5 mm");
    assertThatThrownBy(
            () -> arch(FriezeGroup.P1, 60, 20, NONE).place("leaf", LEAF, low, 0, NOWHERE))
        .hasMessageContaining("LAY-005")
        .hasMessageContaining("2.45 mm");
    assertThatThrownBy(
            () -> arch(FriezeGroup.P1, 3, 250, NONE).place("leaf", LEAF, low, 0, NOWHERE))
        .hasMessageContaining("more than half a circle");
  }
}
