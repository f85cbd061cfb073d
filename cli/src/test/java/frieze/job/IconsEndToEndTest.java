package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import frieze.build.ReadBack;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Frame;
import frieze.curve.FrameMap;
import frieze.curve.Path;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Intent;
import frieze.design.Intents;
import frieze.design.Motif;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.DryRun;
import frieze.dryrun.ProgramText;
import frieze.dryrun.scene.Surroundings;
import frieze.fixtures.OpenIcons;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.layout.Placement;
import frieze.lower.FileNames;
import frieze.motion.Sequence;
import frieze.plan.Plan;
import frieze.plan.Planner;
import frieze.plan.Sequencer;
import frieze.post.Post;
import frieze.post.Posting;
import frieze.post.Posts;
import frieze.region.Region;
import frieze.region.Ring;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiConsumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Drawings by other people, 60 mm wide or high (fewer and smaller in each build), from file to
 * programs that passed their dry run: as a recess and as V-grooves in a square panel, and as the
 * outline of a panel that is cut out.
 *
 * <p>None may be dropped in silence: each gives programs, or a reason.
 */
class IconsEndToEndTest {
  private static final double SIZE_MM = 60;

  /** For the few of each build: a quarter of the area, and less than half of the time. */
  private static final double MEDIUM_MM = 30;

  /** As large as carved letters, which is quick. */
  private static final double SMALL_MM = 25;

  private static final double PANEL_MM = 76;

  /**
   * The cell of the simulated stock in each build: finer than that of an apron's, and a quarter of
   * the work that the usual cell of so small a panel is. Outlines are looked at closely anyway.
   */
  private static final double CELL_MM = 0.1;

  private static final double DEPTH_MM = 3;
  private static final SourceSpan HERE = SourceSpan.file("icon");

  private static final Shop SHOP = ShopReader.builtIn();
  private static final Tool SMALL = SHOP.tool("flat 1/16").orElseThrow();
  private static final Tool VEE_60 = SHOP.tool("vee 60").orElseThrow();
  private static final Tool VEE_90 = SHOP.tool("vee 90").orElseThrow();
  private static final double RIDGE_MM = 0.1;
  private static final double LAST_PASS_MM = 0.2;
  private static final Tool LARGE = SHOP.tool("flat 1/8").orElseThrow();

  @Test
  void forty_icons_are_carved_with_v_bits_of_two_angles() {
    Trial trial = new Trial(s -> DryRun.in(s).withCell(CELL_MM));
    trial.carve(40, SMALL_MM, List.of(List.of(VEE_60), List.of(VEE_90)));
    assertThat(trial.outcome.asked()).isEqualTo(40);
    assertThat(trial.outcome.unsafe()).as(trial.outcome::report).isEmpty();
    assertThat(trial.outcome.made()).as(trial.outcome::report).isEqualTo(40);
  }

  @Test
  @Tag("corpus")
  void three_hundred_icons_are_carved_with_v_bits_of_two_angles() {
    Trial trial = new Trial(DryRun::in);
    trial.carve(300, SIZE_MM, List.of(List.of(VEE_60, VEE_90)));
    System.out.println(trial.outcome.report());
    assertThat(trial.outcome.asked()).isEqualTo(600);
    assertThat(trial.outcome.unsafe()).as(trial.outcome::report).isEmpty();
    assertThat(trial.outcome.made()).as(trial.outcome::report).isGreaterThanOrEqualTo(500);
  }

  @Test
  void forty_icons_are_recessed_and_cut_out() {
    Trial trial = new Trial(s -> DryRun.in(s).withCell(CELL_MM));
    trial.tryAll(40, MEDIUM_MM, 4);
    assertThat(trial.outcome.asked()).isEqualTo(100);
    assertThat(trial.outcome.unsafe()).as(trial.outcome::report).isEmpty();
    assertThat(trial.outcome.made()).as(trial.outcome::report).isGreaterThanOrEqualTo(99);
  }

  @Test
  @Tag("corpus")
  void three_hundred_icons_are_recessed_and_cut_out() {
    Trial trial = new Trial(DryRun::in);
    trial.tryAll(300, SIZE_MM, 1);
    assertThat(trial.outcome.asked()).isEqualTo(1200);
    assertThat(trial.outcome.unsafe()).as(trial.outcome::report).isEmpty();
    assertThat(trial.outcome.made()).as(trial.outcome::report).isGreaterThanOrEqualTo(1000);
  }

  /** The filled area in the middle of a square panel, and the panel cut out of its stock. */
  private static Design recess(Artwork art) {
    Panel panel = new Opening(PANEL_MM, PANEL_MM, 0).panel("panel", 0, HERE);
    Bounds b = art.bounds();
    Affine map = Affine.translation(PANEL_MM / 2 - b.centre().x(), PANEL_MM / 2 - b.centre().y());
    return new Design(
        panel,
        List.of(new Motif("icon", art)),
        List.of(new Placement("icon", 1, new FrameMap<Frame.Artwork, Frame.Panel>(map))),
        List.of(
            new Work.Recess(
                new Work.Target("icon", Optional.empty()),
                SMALL,
                DEPTH_MM,
                0.4 * SMALL.diameterMm(),
                Work.Milling.CONVENTIONAL,
                HERE),
            cutout()));
  }

  /** The filled area carved with a V-bit, with a flat floor where it is wide; nothing cut out. */
  private static Design carved(Artwork art, Tool bit) {
    Design recessed = recess(art);
    Work work =
        new Work.VGroove(
            new Work.Target("icon", Optional.empty()),
            bit,
            OptionalDouble.of(DEPTH_MM),
            List.of(LARGE),
            RIDGE_MM,
            LAST_PASS_MM,
            Work.Milling.CONVENTIONAL,
            HERE);
    return new Design(recessed.panel(), recessed.motifs(), recessed.placements(), List.of(work));
  }

  /** A panel in the shape of the drawing's largest outline. */
  private static Design cutout(Artwork art) {
    Region filled = art.filled(Tolerances.DEFAULT.flattenMm());
    Ring largest =
        filled.rings().stream()
            .filter(r -> !r.hole())
            .max(Comparator.comparingDouble(r -> Region.ofRing(r.points()).area()))
            .orElseThrow();
    Path outline = Path.polyline(largest.points(), true);
    Bounds b = outline.bounds();
    Panel panel = new Panel("panel", outline.transformed(Affine.translation(-b.minX(), -b.minY())));
    return new Design(panel, List.of(), List.of(), List.of(cutout()));
  }

  private static Work cutout() {
    return new Work.Cutout(LARGE, Optional.of(new Tabs(2, 5, 2)), Work.Milling.CONVENTIONAL, HERE);
  }

  private static Sequence sequence(Design design, Setup setup) {
    Plan plan = Planner.plan(design, setup, Tolerances.DEFAULT);
    return Sequencer.sequence(plan, setup, "panel");
  }

  private static List<ProgramText> texts(Sequence sequence, Setup setup, Post post) {
    FileNames names = new FileNames(post.capabilities().files());
    return ReadBack.texts(Posting.write(sequence, setup, post, List.of(), names), post);
  }

  private static Setup setup(Panel panel) {
    double margin = 12;
    Stock stock =
        new Stock(
            SHOP.material("white ash").orElseThrow(),
            panel.lengthMm() + 2 * margin,
            panel.heightMm() + 2 * margin,
            List.of(10.0),
            false);
    return new Setup(
        SHOP.machine("benchtop router").orElseThrow(),
        stock,
        Zero.LEFT_FRONT_TOP,
        margin,
        margin,
        5,
        0.3,
        List.of(),
        SHOP.tools());
  }

  private static final List<Post> POSTS =
      Stream.of("rs274-full", "short-arcs").map(id -> Posts.find(id).orElseThrow()).toList();

  /** What became of each icon, operation and post; two icons at a time. */
  private static final class Trial {
    private final IconOutcome outcome = new IconOutcome();
    private final Function<Surroundings, DryRun> dryRunIn;

    Trial(Function<Surroundings, DryRun> dryRunIn) {
      this.dryRunIn = dryRunIn;
    }

    /** All with the first post, and one of a few with the others too. */
    void tryAll(int count, double sizeMm, int othersEach) {
      eachOf(
          count,
          (i, icon) -> {
            List<Post> posts = i % othersEach == 0 ? POSTS : POSTS.subList(0, 1);
            Artwork sized = sized(icon.getKey(), icon.getValue(), sizeMm);
            attempt(icon.getKey() + " recess", () -> recess(sized), posts);
            attempt(icon.getKey() + " cutout", () -> cutout(sized), posts);
          });
    }

    /**
     * Carves each icon with the bits of one list; the lists take turns. Read with the first post.
     */
    void carve(int count, double sizeMm, List<List<Tool>> turns) {
      eachOf(
          count,
          (i, icon) -> {
            Artwork sized = sized(icon.getKey(), icon.getValue(), sizeMm);
            for (Tool bit : turns.get(i % turns.size())) {
              String what = icon.getKey() + " " + bit.name();
              attempt(what, () -> carved(sized, bit), POSTS.subList(0, 1));
            }
          });
    }

    private static void eachOf(int count, BiConsumer<Integer, Map.Entry<String, byte[]>> trial) {
      List<Map.Entry<String, byte[]>> icons = List.copyOf(OpenIcons.sample(count).entrySet());
      IntStream.range(0, icons.size()).parallel().forEach(i -> trial.accept(i, icons.get(i)));
    }

    private static Artwork sized(String name, byte[] content, double sizeMm) {
      Artwork art = new SvgReader().read(name, content);
      Bounds b = art.bounds();
      return b.width() > b.height() ? art.withWidth(sizeMm) : art.withHeight(sizeMm);
    }

    /** Writes and reads back with each post; the first is compared with the design too. */
    private void attempt(String what, Supplier<Design> design, List<Post> posts) {
      outcome.ask(posts.size());
      try {
        Design asDrawn = design.get();
        Setup setup = setup(asDrawn.panel());
        Sequence sequence = sequence(asDrawn, setup);
        DryRun dryRun = dryRunIn.apply(Surroundings.of(setup));
        List<Intent> intents = Intents.of(asDrawn, Tolerances.DEFAULT.flattenMm());
        for (Post post : posts) {
          boolean first = post.equals(POSTS.get(0));
          DryRun with = first ? dryRun.comparedWith(setup, intents) : dryRun;
          outcome.judge(what + " " + post.id(), with.run(texts(sequence, setup, post)));
        }
      } catch (BadInputException e) {
        outcome.refuse(what, e);
      }
    }
  }
}
