package frieze.dryrun;

import frieze.artwork.Artwork;
import frieze.artwork.Piece;
import frieze.curve.Affine;
import frieze.curve.Arc;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intent;
import frieze.design.Intents;
import frieze.design.Motif;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.scene.Surroundings;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.layout.Placement;
import frieze.lower.FileNames;
import frieze.lower.Lowering;
import frieze.motion.Sequence;
import frieze.plan.Plan;
import frieze.plan.Planner;
import frieze.plan.Sequencer;
import frieze.post.Post;
import frieze.post.Posts;
import frieze.region.FillRule;
import frieze.rs274.ReadingRules;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** A small apron with three leaves, planned and written by our own code. */
record Planned(Setup setup, List<Intent> intents, List<ProgramText> programs) {
  private static final Tool BIT = flat("flat 1/4", 1, 6.35, 3.1);
  private static final Tool SMALL = flat("flat 1/8", 2, 3.175, 1.6);
  private static final SourceSpan WHERE = SourceSpan.NONE;

  /** Plans and writes it for a post. */
  static Planned with(String postName, boolean byHand, boolean inches, Zero zero) {
    Post post = Posts.find(postName).orElseThrow();
    Setup setup = setup(postName, byHand, inches, zero);
    Design design = design();
    List<ProgramText> programs =
        Lowering.lower(
                sequence(setup),
                new Lowering.Request(
                    setup,
                    post.capabilities(),
                    List.of(),
                    new FileNames(post.capabilities().files())))
            .stream()
            .map(post::write)
            .map(p -> text(p.fileName(), p.text(), p.tools().get(0)))
            .toList();
    return new Planned(setup, Intents.of(design, Tolerances.DEFAULT.flattenMm()), programs);
  }

  static Setup setup(String postName, boolean byHand, boolean inches, Zero zero) {
    Stock stock =
        new Stock(
            new Material("white ash", Material.Kind.HARDWOOD), 260, 120, List.of(12.0), false);
    return new Setup(
        machine(postName, byHand, inches),
        stock,
        zero,
        15,
        15,
        6,
        0.4,
        List.of(),
        List.of(BIT, SMALL));
  }

  /** The whole plan for a setup, in order. */
  static Sequence sequence(Setup setup) {
    Plan plan = Planner.plan(design(), setup, Tolerances.DEFAULT);
    return Sequencer.sequence(plan, setup, "front apron");
  }

  static ProgramText text(String name, String text, Tool first) {
    ReadingRules rules =
        ReadingRules.REPORT
            .but()
            .start(ReadingRules.REPORT.start().withTool(first.number()))
            .build();
    return ProgramText.of(name, text.getBytes(java.nio.charset.StandardCharsets.US_ASCII), rules);
  }

  private static Design design() {
    Panel panel = new Opening(232, 92, 6).panel("front apron", 1, WHERE);
    Path leaf =
        new Path(
            List.of(
                new Arc(new Point(0, 20), new Point(40, 20), new Point(20, 5), Math.PI + lens()),
                new Arc(new Point(40, 20), new Point(0, 20), new Point(20, 35), Math.PI + lens())),
            true);
    Path vein =
        Path.polyline(List.of(new Point(2, 20), new Point(20, 22), new Point(38, 20)), false);
    Piece area =
        new Piece(
            "leaf",
            List.of(),
            List.of(leaf),
            Optional.of(FillRule.NONZERO),
            OptionalDouble.empty());
    Piece line =
        new Piece("vein", List.of(), List.of(vein), Optional.empty(), OptionalDouble.of(1));
    Motif motif =
        new Motif("leaf", new Artwork("leaf.svg", List.of(area, line), "millimetres", List.of()));
    List<Placement> placements =
        List.of(
            place(1, Affine.translation(20, 25)),
            place(2, Affine.translation(90, 25)),
            place(3, Affine.translation(160, 25)));
    Work.Target all = new Work.Target("leaf", Optional.empty());
    return new Design(
        panel,
        List.of(motif),
        placements,
        List.of(
            new Work.Recess(all, BIT, 3, 2.8, Work.Milling.CLIMB, WHERE),
            new Work.Groove(all, SMALL, 4.5, WHERE),
            new Work.Bore(
                List.of(new Point(8, 45), new Point(222, 45)), 5, Optional.empty(), SMALL, WHERE),
            new Work.Cutout(
                BIT, Optional.of(new Tabs(4, 8, 3)), Work.Milling.CONVENTIONAL, WHERE)));
  }

  /** The two arcs of a leaf 40 mm long, about centres 15 mm off its middle line. */
  private static double lens() {
    return -2 * Math.atan2(15, 20);
  }

  private static Placement place(int number, Affine map) {
    return new Placement("leaf", number, new FrameMap<>(map));
  }

  private static Tool flat(String name, int number, double diameterMm, double passMm) {
    return new Tool(
        name,
        number,
        new ToolShape.Flat(diameterMm),
        2,
        20,
        30,
        true,
        OptionalDouble.of(passMm),
        OptionalDouble.of(0.05),
        24_000,
        2_500,
        400);
  }

  private static Machine machine(String post, boolean byHand, boolean inches) {
    Machine.Axis plane = new Machine.Axis(5_000, 3_000, 300);
    Machine.Axis vertical = new Machine.Axis(2_000, 800, 150);
    return new Machine(
        "benchtop router",
        post,
        780,
        560,
        90,
        plane,
        plane,
        vertical,
        new Machine.Spindle(byHand, 8_000, 24_000, List.of(), 3),
        false,
        inches,
        0);
  }

  DryRunResult run() {
    return run(programs);
  }

  /** Runs other texts in the same place against the same design. */
  DryRunResult run(List<ProgramText> others) {
    return DryRun.in(Surroundings.of(setup)).comparedWith(setup, intents).run(others);
  }
}
