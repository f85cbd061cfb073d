package frieze.sheet;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intent;
import frieze.design.Intents;
import frieze.design.Motif;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.scene.Surroundings;
import frieze.field.DepthMap;
import frieze.field.StockField;
import frieze.layout.Arrangement;
import frieze.layout.FriezeGroup;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.lower.FileNames;
import frieze.lower.Lowering;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.plan.Plan;
import frieze.plan.Planner;
import frieze.plan.Sequencer;
import frieze.plan.cut.Cut;
import frieze.post.Post;
import frieze.post.Posts;
import frieze.post.ProgramText;
import frieze.rs274.ReadingRules;
import frieze.shop.KeepOut;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** An apron with leaves, made by the real planner, writer and dry run, for tests of the papers. */
final class SampleJob {
  private static final String LEAF =
      """
      <svg xmlns="http://www.w3.org/2000/svg" width="60mm" height="80mm" viewBox="0 0 60 80">
        <path class="blade" d="M30 2A46 46 0 0 1 30 66A46 46 0 0 1 30 2Z"/>
        <g fill="none" stroke="black" stroke-width="0.8">
          <path class="vein" d="M30 12V78"/>
          <path class="vein" d="M30 52C36 48 39 43 41 38M30 52C24 48 21 43 19 38"/>
          <path class="vein" d="M30 38C35 34 37 30 38 26M30 38C25 34 23 30 22 26"/>
        </g>
      </svg>
      """;

  private static final Tool FLAT =
      new Tool(
          "flat 1/4",
          1,
          new ToolShape.Flat(6.35),
          2,
          25.4,
          32,
          true,
          OptionalDouble.of(3.2),
          OptionalDouble.empty(),
          24_000,
          2_500,
          500);
  private static final Tool SMALL =
      new Tool(
          "flat 1/8",
          2,
          new ToolShape.Flat(3.175),
          2,
          22,
          30,
          true,
          OptionalDouble.of(1.6),
          OptionalDouble.empty(),
          30_000,
          1_800,
          400);
  private static final Tool VEE =
      new Tool(
          "ball 1/16",
          3,
          new ToolShape.Ball(1.5875),
          2,
          6,
          15,
          true,
          OptionalDouble.of(0.8),
          OptionalDouble.empty(),
          30_000,
          1_500,
          400);

  private SampleJob() {}

  static Machine machine() {
    Machine.Axis axis = new Machine.Axis(3_000, 2_500, 200);
    List<Double> dial = List.of(10_000.0, 12_000.0, 17_000.0, 22_000.0, 27_000.0, 30_000.0);
    return new Machine(
        "benchtop router",
        "short-arcs",
        790,
        400,
        80,
        axis,
        axis,
        axis,
        new Machine.Spindle(true, 10_000, 30_000, dial, 3),
        false,
        true,
        0);
  }

  static SheetFacts facts(boolean inches) {
    return new SheetFacts(
        "Hall bench", "bench.yaml", inches, machine(), "short-arcs", List.of(panel()));
  }

  static PanelFacts panel() {
    Opening opening = new Opening(727.075, 133.35, 4.7625);
    Panel panel = opening.panel("front apron", 1.5875, SourceSpan.NONE);
    Artwork leaf =
        new SvgReader().read("leaf.svg", LEAF.getBytes(StandardCharsets.UTF_8)).withHeight(95);
    Arrangement along = new Arrangement(FriezeGroup.P2MG, 8, 12.7);
    Bounds size = leaf.bounds();
    Design design =
        new Design(
            panel,
            List.of(new Motif("leaf", leaf)),
            along.place("leaf", size, panel, SourceSpan.NONE),
            work(panel));
    Setup setup =
        new Setup(
            machine(),
            new Stock(
                new Material("white ash", Material.Kind.HARDWOOD),
                762,
                152.4,
                List.of(19.0, 19.1, 18.8, 19.05),
                false),
            Zero.LEFT_FRONT_TOP,
            19,
            11,
            12.7,
            0.5,
            List.of(
                new KeepOut("clamp", -20, 60, 9, 92, 8), new KeepOut("clamp", 753, 60, 782, 92, 8)),
            List.of(FLAT, SMALL, VEE));
    return built(design, opening, setup, size);
  }

  private static List<Work> work(Panel panel) {
    Work.Target blade = new Work.Target("leaf", Optional.of("blade"));
    Work.Target vein = new Work.Target("leaf", Optional.of("vein"));
    return List.of(
        new Work.Recess(blade, SMALL, 2.4, 1.3, Work.Milling.CLIMB, SourceSpan.NONE),
        new Work.Groove(vein, VEE, 3.6, SourceSpan.NONE),
        new Work.Bore(
            List.of(new Point(10, 65), new Point(panel.lengthMm() - 10, 65)),
            4.5,
            Optional.empty(),
            SMALL,
            SourceSpan.NONE),
        new Work.Cutout(
            FLAT, Optional.of(new Tabs(6, 6.35, 3.175)), Work.Milling.CLIMB, SourceSpan.NONE));
  }

  private static PanelFacts built(Design design, Opening opening, Setup setup, Bounds size) {
    List<Intent> intents = Intents.of(design, 0.002);
    Plan plan = Planner.plan(design, setup, Tolerances.DEFAULT);
    Post post = Posts.find("short-arcs").orElseThrow();
    Lowering.Request request =
        new Lowering.Request(
            setup,
            post.capabilities(),
            List.of("Hall bench"),
            new FileNames(post.capabilities().files()));
    List<ProgramText> programs =
        Lowering.lower(Sequencer.sequence(plan, setup, "front apron"), request).stream()
            .map(post::write)
            .toList();
    DryRunResult result =
        DryRun.in(Surroundings.of(setup))
            .run(
                programs.stream()
                    .map(
                        p ->
                            frieze.dryrun.ProgramText.of(
                                p.fileName(), p.bytes(), ReadingRules.REPORT))
                    .toList());
    return new PanelFacts(
        design,
        opening,
        1.5875,
        setup,
        intents,
        plan,
        programs,
        result,
        Optional.of(depths(plan, setup)),
        List.of(
            new PanelFacts.DrawingFacts(
                "leaf",
                "leaf.svg",
                "page of 60 x 80 mm, as the file says in mm",
                List.of(),
                size.width(),
                size.height())),
        Optional.empty());
  }

  private static DepthMap depths(Plan plan, Setup setup) {
    StockField field = StockField.of(setup.stock());
    for (Cut cut : plan.cuts()) {
      for (Cut.Move move : cut.moves()) {
        field.cut(onStock(move.path(), setup), cut.tool().shape());
      }
    }
    return field.depthMap(1_500);
  }

  private static Motion onStock(Motion path, Setup setup) {
    double dx = setup.panelXMm();
    double dy = setup.panelYMm();
    return path.accept(
        new Motion.Visitor<Motion>() {
          @Override
          public Motion straight(Motion.Straight s) {
            return new Motion.Straight(moved(s.from()), moved(s.to()));
          }

          @Override
          public Motion turn(Motion.Turn t) {
            return new Motion.Turn(
                moved(t.from()),
                moved(t.to()),
                t.plane(),
                t.centreU() + dx,
                t.centreV() + dy,
                t.sweepRad());
          }

          private Position moved(Position p) {
            return new Position(p.x() + dx, p.y() + dy, p.z());
          }
        });
  }
}
