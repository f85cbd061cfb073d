package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import frieze.build.ReadBack;
import frieze.curve.Affine;
import frieze.curve.FrameMap;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.BoreWay;
import frieze.design.Corners;
import frieze.design.CutoutWay;
import frieze.design.Design;
import frieze.design.Intents;
import frieze.design.Motif;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.Code;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.FindingCode;
import frieze.dryrun.scene.Surroundings;
import frieze.layout.Opening;
import frieze.layout.Placement;
import frieze.lower.FileNames;
import frieze.plan.Plan;
import frieze.plan.Planner;
import frieze.plan.Sequencer;
import frieze.post.Post;
import frieze.post.Posting;
import frieze.post.Posts;
import frieze.shop.FinishAllowance;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Each way of cutting, from the work list to a program that passed its dry run. */
class CutsEndToEndTest {
  private static final SourceSpan HERE = SourceSpan.file("cuts");
  private static final Shop SHOP = ShopReader.builtIn();
  static final Tool EIGHTH = SHOP.tool("flat 1/8").orElseThrow();
  static final Tool QUARTER = SHOP.tool("flat 1/4").orElseThrow();

  /** A shield: straight edges, square and rounded corners, a curve. */
  private static final String SHIELD =
      "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' height='50mm' viewBox='0 0 60 50'>"
          + "<path d='M0 0 H60 V25 C60 40 45 50 30 50 S0 40 0 25 Z"
          + " M20 12 a4 4 0 0 1 4 -4 h12 a4 4 0 0 1 4 4 v8 h-20 z' fill-rule='evenodd'/></svg>";

  /** Finer than an apron's, and less than half of the work that the usual cell here is. */
  private static final double CELL_MM = 0.1;

  static DryRunResult dryRun(Work... work) {
    return dryRun(FinishAllowance.NONE, FinishAllowance.NONE, work);
  }

  /**
   * @param left what the plan allows for
   * @param taken what the dry run is told of
   */
  private static DryRunResult dryRun(FinishAllowance left, FinishAllowance taken, Work... work) {
    return dryRun(SHOP.tools(), left, taken, work);
  }

  private static DryRunResult dryRun(
      List<Tool> tools, FinishAllowance left, FinishAllowance taken, Work... work) {
    Artwork art = new SvgReader().read("shield.svg", SHIELD.getBytes(StandardCharsets.UTF_8));
    Motif motif = new Motif("shield", art);
    Affine mirrored =
        Affine.scaling(-1, 1).then(Affine.rotation(0.3)).then(Affine.translation(80, 14));
    List<Placement> placements = List.of(new Placement("shield", 1, new FrameMap<>(mirrored)));
    Design design =
        new Design(
            new Opening(92, 84, 4).panel("panel", 0, HERE),
            List.of(motif),
            placements,
            List.of(work));
    Stock stock =
        new Stock(SHOP.material("white ash").orElseThrow(), 132, 124, List.of(12.0, 12.1), false);
    Setup setup =
        new Setup(
            SHOP.machine("benchtop router").orElseThrow(),
            stock,
            Zero.LEFT_FRONT_TOP,
            20,
            20,
            5,
            0.3,
            List.of(),
            tools);
    Plan plan = Planner.plan(design, setup.allowing(left), Tolerances.DEFAULT);
    Post post = Posts.find("rs274-full").orElseThrow();
    return DryRun.in(Surroundings.of(setup))
        .withCell(CELL_MM)
        .comparedWith(setup.allowing(taken), Intents.of(design, Tolerances.DEFAULT.flattenMm()))
        .run(
            ReadBack.texts(
                Posting.write(
                    Sequencer.sequence(plan, setup, "panel"),
                    setup,
                    post,
                    List.of(),
                    new FileNames(post.capabilities().files())),
                post));
  }

  static void assertSafe(DryRunResult result, String what) {
    assertThat(result.findings().stream().filter(Finding::isError)).as(what).isEmpty();
    assertThat(result.mayWrite()).as(what).isTrue();
  }

  static Work.Target shield() {
    return new Work.Target("shield", Optional.empty());
  }

  @Test
  void every_kind_of_cutout_passes_its_dry_run() {
    List<Optional<Tabs>> holds =
        List.of(
            Optional.empty(), Optional.of(new Tabs(3, 4, 2)), Optional.of(new Tabs(3, 4, 2, true)));
    int tried = 0;
    for (Work.Side side : Work.Side.values()) {
      for (double leave : new double[] {0, 0.3}) {
        for (Optional<Tabs> hold : holds) {
          if (hold.isEmpty() && leave > 0) {
            continue;
          }
          Work.Milling milling = tried % 2 == 0 ? Work.Milling.CLIMB : Work.Milling.CONVENTIONAL;
          CutoutWay way = new CutoutWay(Optional.of(shield()), side, leave, 0);
          Work cutout = new Work.Cutout(EIGHTH, hold, milling, way, HERE);
          assertSafe(dryRun(cutout), side + " " + leave + " " + hold + " " + milling);
          tried++;
        }
      }
    }
    assertThat(tried).isEqualTo(15);
  }

  /** Inside it are the shield's own corners, outside those of its window. */
  @Test
  void relieved_corners_pass_their_dry_run() {
    for (Work.Side side : List.of(Work.Side.INSIDE, Work.Side.OUTSIDE)) {
      for (Corners kind : List.of(Corners.EAR, Corners.ALONG_SIDE)) {
        CutoutWay way = new CutoutWay(Optional.of(shield()), side, 0.3, 1, 0, kind);
        Work cutout =
            new Work.Cutout(EIGHTH, Optional.of(new Tabs(3, 4, 2)), Work.Milling.CLIMB, way, HERE);
        DryRunResult result = dryRun(cutout);
        assertSafe(result, side + " " + kind);
        assertThat(engaged(result)).as("the finishing lap into a corner is slowed").isZero();
      }
    }
  }

  @Test
  void a_panel_with_openings_is_cut_out_with_a_finishing_pass_or_down_to_a_skin() {
    for (double skin : new double[] {0, 0.5}) {
      List<Work> work = new ArrayList<>();
      work.add(
          new Work.Cutout(
              EIGHTH,
              Optional.empty(),
              Work.Milling.CLIMB,
              new CutoutWay(Optional.of(shield()), Work.Side.INSIDE, 0, 0.5),
              HERE));
      work.add(
          new Work.Cutout(
              QUARTER,
              skin > 0 ? Optional.empty() : Optional.of(new Tabs(5, 6, 3, true)),
              Work.Milling.CONVENTIONAL,
              new CutoutWay(Optional.empty(), Work.Side.OUTSIDE, 0.4, skin),
              HERE));
      assertSafe(dryRun(work.toArray(Work[]::new)), "skin " + skin);
    }
  }

  @Test
  void sunk_holes_slots_and_holes_milled_for_a_slow_drill_pass_their_dry_run() {
    Tool vee = SHOP.tool("vee 90").orElseThrow();
    BoreWay.Countersink sink = new BoreWay.Countersink(9, Math.toRadians(90), vee);
    BoreWay sunk = new BoreWay(Optional.of(sink), Optional.empty(), List.of(), Optional.empty());
    assertSafe(dryRun(bore(5, Optional.of(6.0), EIGHTH, sunk)), "sunk");
    BoreWay.Slot slot = new BoreWay.Slot(18, Math.toRadians(30));
    BoreWay drawn = new BoreWay(Optional.empty(), Optional.of(slot), List.of(), Optional.empty());
    for (double width : new double[] {QUARTER.diameterMm(), 9}) {
      assertSafe(dryRun(bore(width, Optional.of(6.0), QUARTER, drawn)), "blind slot " + width);
      assertSafe(dryRun(bore(width, Optional.empty(), QUARTER, drawn)), "slot " + width);
    }
    Tool drill = SHOP.tool("drill 4 mm").orElseThrow();
    BoreWay mills =
        new BoreWay(Optional.empty(), Optional.empty(), List.of(EIGHTH), Optional.empty());
    assertSafe(dryRun(bore(4, Optional.of(6.0), drill, mills)), "milled");
  }

  private static long engaged(DryRunResult result) {
    return result.findings().stream().filter(f -> f.code() == FindingCode.ENGAGED_TOO_FAR).count();
  }

  /** A tool that may have 100 degrees: what the plan slows is what the dry run would object to. */
  @Test
  void moves_beyond_a_tools_limit_are_slowed_and_found_where_they_are_not() {
    Tool limited = EIGHTH.withEngagement(Math.toRadians(100));
    List<Tool> tools = SHOP.tools().stream().map(t -> t.equals(EIGHTH) ? limited : t).toList();
    for (boolean slowed : new boolean[] {true, false}) {
      Work recess =
          new Work.Recess(
              shield(), slowed ? limited : EIGHTH, 1.5, 1.4, Work.Milling.CONVENTIONAL, HERE);
      DryRunResult result = dryRun(tools, FinishAllowance.NONE, FinishAllowance.NONE, recess);
      assertSafe(result, "slowed " + slowed);
      assertThat(engaged(result) == 0).as("slowed " + slowed).isEqualTo(slowed);
    }
  }

  private static final FinishAllowance CHARRED = new FinishAllowance(0.6, 0.25);

  private static Set<Code> against(FinishAllowance left, FinishAllowance taken, Work... work) {
    Set<Code> told = new HashSet<>();
    dryRun(left, taken, work).findings().forEach(f -> told.add(f.code()));
    told.retainAll(Set.of(FindingCode.GOUGE, FindingCode.LEFT_STANDING));
    return told;
  }

  @Test
  void what_is_left_for_finishing_passes_and_leaving_it_out_or_adding_it_is_found() {
    Tool vee = SHOP.tool("vee 60").orElseThrow();
    OptionalDouble three = OptionalDouble.of(3);
    Work vgroove =
        new Work.VGroove(shield(), vee, three, List.of(EIGHTH), 0.1, 0.2, Work.Milling.CLIMB, HERE);
    Work opening =
        new Work.Cutout(
            EIGHTH,
            Optional.of(new Tabs(3, 4, 2)),
            Work.Milling.CLIMB,
            new CutoutWay(Optional.of(shield()), Work.Side.INSIDE, 0.2, 0),
            HERE);
    Work panel =
        new Work.Cutout(QUARTER, Optional.of(new Tabs(3, 4, 2)), Work.Milling.CONVENTIONAL, HERE);
    Work recess = new Work.Recess(shield(), EIGHTH, 2, 1.4, Work.Milling.CLIMB, HERE);
    Work groove = new Work.Groove(shield(), vee, 1.5, HERE);
    assertThat(against(CHARRED, CHARRED, vgroove, panel)).isEmpty();
    assertThat(against(CHARRED, CHARRED, opening)).isEmpty();
    assertThat(against(CHARRED, CHARRED, recess, groove, slot(), sunk())).isEmpty();
    assertThat(against(FinishAllowance.NONE, CHARRED, vgroove, panel))
        .containsExactlyInAnyOrder(FindingCode.GOUGE, FindingCode.LEFT_STANDING);
  }

  /** The relief grows with the walls when they are finished, and still meets the drawn corner. */
  @Test
  void relieved_corners_that_are_finished_afterwards_pass_their_dry_run() {
    for (Work.Side side : List.of(Work.Side.INSIDE, Work.Side.OUTSIDE)) {
      for (Corners kind : List.of(Corners.EAR, Corners.ALONG_SIDE)) {
        CutoutWay way = new CutoutWay(Optional.of(shield()), side, 0.3, 1, 0, kind);
        Optional<Tabs> tabs = Optional.of(new Tabs(3, 4, 2));
        Work finished = new Work.Cutout(EIGHTH, tabs, Work.Milling.CLIMB, way.finished(0.25), HERE);
        assertThat(against(CHARRED, CHARRED, finished)).as(side + " " + kind).isEmpty();
        assertThat(against(FinishAllowance.NONE, CHARRED, finished))
            .as(side + " " + kind + ", cut to size at once")
            .contains(FindingCode.GOUGE);
      }
    }
  }

  private static Work slot() {
    BoreWay.Slot slot = new BoreWay.Slot(18, Math.toRadians(30));
    BoreWay drawn = new BoreWay(Optional.empty(), Optional.of(slot), List.of(), Optional.empty());
    return bore(9, Optional.of(6.0), QUARTER, drawn);
  }

  private static Work sunk() {
    BoreWay.Countersink sink =
        new BoreWay.Countersink(8, Math.toRadians(90), SHOP.tool("vee 90").orElseThrow());
    BoreWay sunk = new BoreWay(Optional.of(sink), Optional.empty(), List.of(), Optional.empty());
    return new Work.Bore(List.of(new Point(10, 10)), 5, Optional.of(6.0), EIGHTH, sunk, HERE);
  }

  private static Work bore(double diameterMm, Optional<Double> depthMm, Tool tool, BoreWay way) {
    return new Work.Bore(List.of(new Point(46, 42)), diameterMm, depthMm, tool, way, HERE);
  }
}
