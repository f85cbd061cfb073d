package frieze.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class BetweenEdgesTest {
  private static final double NEAR = 5e-3;
  private static final Hull LEAF =
      Hull.of(List.of(new Point(0, 0), new Point(12, 3), new Point(8, 20), new Point(2, 16)));

  /** 300 long, 60 high at the left and 30 at the right. */
  private static final Panel WEDGE =
      new Panel(
          "wedge",
          Path.polyline(
              List.of(new Point(0, 0), new Point(300, 0), new Point(300, 30), new Point(0, 60)),
              true));

  private static List<Placement> follow(
      FriezeGroup group, int count, double insetMm, boolean swelling, Panel panel) {
    return new Follow(
            new Follow.Between(swelling),
            group,
            count,
            insetMm,
            OptionalDouble.empty(),
            OptionalDouble.empty(),
            false)
        .place("leaf", LEAF, panel, 0, SourceSpan.NONE);
  }

  @Test
  void between_straight_edges_it_is_the_straight_band() {
    Panel panel = new Opening(300, 60, 0).panel("apron", 0, SourceSpan.NONE);
    for (FriezeGroup group : FriezeGroup.values()) {
      OptionalDouble rise = group.rows() == 2 ? OptionalDouble.of(10) : OptionalDouble.empty();
      List<Placement> straight =
          new Arrangement(group, 8, 5, rise).place("leaf", LEAF, panel, 0, SourceSpan.NONE);
      List<Placement> between = follow(group, 8, 5, true, panel);
      for (int i = 0; i < 8; i++) {
        Affine a = straight.get(i).map().affine();
        Affine b = between.get(i).map().affine();
        assertThat(List.of(b.a(), b.b(), b.c(), b.d()))
            .as("%s %d", group, i)
            .usingElementComparator((x, y) -> Math.abs(x - y) < 1e-9 ? 0 : 1)
            .isEqualTo(List.of(a.a(), a.b(), a.c(), a.d()));
        assertThat(b.e()).as("%s %d", group, i).isCloseTo(a.e(), within(1e-6));
        assertThat(b.f()).as("%s %d", group, i).isCloseTo(a.f(), within(1e-6));
      }
    }
  }

  /**
   * Along the midline of a wedge, with a slope of 15 in 300, the size falls as exp(-u cos / 600):
   * du = dx / cos * 60 / h, and h = 60 - x / 10.
   */
  @Test
  void motifs_of_a_wedge_swell_with_it_and_stand_apart_in_proportion() {
    double cos = Math.cos(Math.atan2(-15, 300));
    double whole = 600 * Math.log(2) / cos;
    List<Placement> placed = follow(FriezeGroup.P1, 12, 0, true, WEDGE);
    Point middle = LEAF.bounds().centre();
    for (int i = 0; i < 12; i++) {
      double high = 60 * Math.exp(-(i + 0.5) / 12 * whole * cos / 600);
      Point at = placed.get(i).map().affine().apply(middle);
      assertThat(at.x()).as("motif %d", i).isCloseTo((60 - high) * 10, within(NEAR));
      assertThat(at.y()).as("motif %d", i).isCloseTo(high / 2, within(NEAR));
      assertThat(placed.get(i).map().affine().scale())
          .as("motif %d", i)
          .isCloseTo(high / 60, within(1e-4));
    }
    double first = place(placed, 1).distance(place(placed, 0));
    double last = place(placed, 11).distance(place(placed, 10));
    assertThat(last / first)
        .isCloseTo(
            placed.get(10).map().affine().scale() / placed.get(0).map().affine().scale(),
            within(1e-3));
    // Without swelling they are alike, and evenly apart along the same line.
    List<Placement> even = follow(FriezeGroup.P1, 12, 0, false, WEDGE);
    assertThat(even)
        .allSatisfy(p -> assertThat(p.map().affine().scale()).isCloseTo(1, within(1e-12)));
    assertThat(place(even, 7).distance(place(even, 6)))
        .isCloseTo(Math.hypot(300, 15) / 12, within(NEAR));
  }

  private static Point place(List<Placement> placed, int i) {
    return placed.get(i).map().affine().apply(LEAF.bounds().centre());
  }

  @Test
  void motifs_between_an_arch_and_a_straight_edge_keep_the_inset() {
    Panel apron = new Panel("apron", new ArchedOutline(700, 110, 0, 32).path(SourceSpan.NONE));
    for (FriezeGroup group : FriezeGroup.values()) {
      List<Placement> placed = follow(group, 12, 12, true, apron);
      Band band = Band.of(apron, 12);
      assertThat(placed).as("%s", group).hasSize(12);
      assertThat(placed).allMatch(p -> band.holds(p.hull(LEAF)));
    }
    assertThatThrownBy(() -> follow(FriezeGroup.P1, 9, 45, true, apron))
        .hasMessageContaining("LAY-004");
  }
}
