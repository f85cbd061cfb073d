package frieze.design;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.SourceSpan;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.layout.Placement;
import frieze.region.FillRule;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class IntentsTest {
  private static final Tool FLAT =
      new Tool(
          "flat 3",
          1,
          new ToolShape.Flat(3),
          2,
          20,
          30,
          true,
          OptionalDouble.empty(),
          OptionalDouble.empty(),
          20_000,
          3_000,
          500);
  private static final Panel PANEL = new Opening(300, 100, 5).panel("apron", 1, SourceSpan.NONE);

  private static Piece piece(String id, String group, boolean filled, Path... paths) {
    return new Piece(
        id,
        List.of(group),
        List.of(paths),
        filled ? Optional.of(FillRule.EVEN_ODD) : Optional.empty(),
        filled ? OptionalDouble.empty() : OptionalDouble.of(0.5));
  }

  private static final Motif LEAF =
      new Motif(
          "leaf",
          new Artwork(
              "own.svg",
              List.of(
                  piece("blade", "body", true, Path.circle(new Point(20, 20), 20)),
                  piece("eye", "body", true, Path.circle(new Point(60, 20), 5)),
                  piece(
                      "",
                      "veins",
                      false,
                      Path.polyline(List.of(new Point(0, 0), new Point(40, 40)), false))),
              "millimetres",
              List.of()));

  private static Design design(Work work, Affine... maps) {
    List<Placement> placements = new java.util.ArrayList<>();
    for (Affine map : maps) {
      placements.add(new Placement("leaf", placements.size() + 1, new FrameMap<>(map)));
    }
    return new Design(PANEL, List.of(LEAF), placements, List.of(work));
  }

  private static Work.Recess recess(Optional<String> pick) {
    return new Work.Recess(
        new Work.Target("leaf", pick), FLAT, 4, 1.2, Work.Milling.CLIMB, SourceSpan.NONE);
  }

  @Test
  void a_recess_has_the_area_that_is_drawn_at_every_placement() {
    Affine mirrored = Affine.scaling(-1, 1).then(Affine.translation(200, 10));
    Affine larger = Affine.scaling(1.5, 1.5).then(Affine.translation(10, 10));
    List<Intent> intents = Intents.of(design(recess(Optional.empty()), mirrored, larger), 1e-4);
    assertThat(intents).extracting(Intent::name).containsExactly("recess leaf 1", "recess leaf 2");
    double area = Math.PI * (400 + 25);
    assertThat(((Intent.Recess) intents.get(0)).region().area()).isCloseTo(area, within(0.02));
    assertThat(((Intent.Recess) intents.get(1)).region().area())
        .isCloseTo(area * 2.25, within(0.04));
    Point eye = ((Intent.Recess) intents.get(0)).region().parts().get(0).bounds().centre();
    assertThat(eye.distance(new Point(140, 30))).isLessThan(1e-3);
  }

  @Test
  void a_pick_is_an_id_or_a_class() {
    assertThat(area(recess(Optional.of("eye")))).isCloseTo(Math.PI * 25, within(0.01));
    assertThat(area(recess(Optional.of("body")))).isCloseTo(Math.PI * 425, within(0.02));
    assertThat(area(recess(Optional.of("veins")))).isZero();
  }

  private static double area(Work work) {
    Intent intent = Intents.of(design(work, Affine.IDENTITY), 1e-4).get(0);
    return ((Intent.Recess) intent).region().area();
  }

  @Test
  void a_groove_follows_strokes_and_else_outlines_exactly() {
    Work.Groove strokes =
        new Work.Groove(new Work.Target("leaf", Optional.empty()), FLAT, 2, SourceSpan.NONE);
    Intent.Groove groove =
        (Intent.Groove) Intents.of(design(strokes, Affine.translation(5, 6)), 0.002).get(0);
    assertThat(groove.lines()).hasSize(1);
    assertThat(groove.lines().get(0).end()).isEqualTo(new Point(45, 46));
    Work.Groove outline =
        new Work.Groove(new Work.Target("leaf", Optional.of("blade")), FLAT, 2, SourceSpan.NONE);
    Intent.Groove around =
        (Intent.Groove) Intents.of(design(outline, Affine.translation(5, 6)), 0.002).get(0);
    assertThat(around.lines().get(0).segments().get(0)).isInstanceOf(Arc.class);
  }

  @Test
  void a_groove_that_runs_out_is_stretches_of_nearly_one_depth() {
    Fade fade = new Fade(Fade.Ends.END, 0.5, OptionalDouble.of(10));
    Work.Groove groove =
        new Work.Groove(
            new Work.Target("leaf", Optional.empty()), FLAT, 2, Optional.of(fade), SourceSpan.NONE);
    List<Intent> stretches = Intents.of(design(groove, Affine.translation(5, 6)), 0.002);
    Point start = ((Intent.Groove) stretches.get(0)).lines().get(0).start();
    Point end = new Point(45, 46);
    double length = start.distance(end);
    Point at = start;
    for (Intent one : stretches) {
      Intent.Groove stretch = (Intent.Groove) one;
      assertThat(stretch.name()).isEqualTo("groove leaf 1");
      assertThat(stretch.lines().get(0).start()).isEqualTo(at);
      at = stretch.lines().get(0).end();
      for (Point p : List.of(stretch.lines().get(0).start(), at)) {
        double toEnd = length - start.distance(p);
        double asked = toEnd >= 10 ? 2 : 0.5 + 1.5 * toEnd / 10;
        assertThat(asked).isBetween(stretch.leastMm() - 1e-9, stretch.depthMm() + 1e-9);
      }
      assertThat(stretch.depthMm() - stretch.leastMm()).isBetween(0.0, 0.0200001);
    }
    assertThat(at.distance(end)).isLessThan(1e-9);
    assertThat(stretches).hasSizeBetween(75, 80);
  }

  @Test
  void a_cutout_is_the_panel_and_holes_are_where_they_are_asked_for() {
    Work.Cutout cutout =
        new Work.Cutout(FLAT, Optional.empty(), Work.Milling.CLIMB, SourceSpan.NONE);
    Intent.Through through = (Intent.Through) Intents.of(design(cutout), 1e-4).get(0);
    // Closed form: 298 by 98, less four corners of radius 4.
    assertThat(through.part().area()).isCloseTo(298 * 98 - (4 - Math.PI) * 16, within(0.01));
    Work.Bore bore =
        new Work.Bore(
            List.of(new Point(10, 49), new Point(288, 49)),
            3,
            Optional.empty(),
            FLAT,
            SourceSpan.NONE);
    List<Intent> holes = Intents.of(design(bore), 1e-4);
    assertThat(holes).hasSize(2);
    assertThat(((Intent.Hole) holes.get(1)).depthMm()).isInfinite();
    assertThat(((Intent.Hole) holes.get(1)).centre()).isEqualTo(new Point(288, 49));
  }
}
