package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;

import frieze.artwork.Artwork;
import frieze.artwork.svg.SvgReader;
import frieze.bridge.Pieces;
import frieze.build.PlannedPanel;
import frieze.build.ReadBack;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Frame;
import frieze.curve.FrameMap;
import frieze.curve.Tolerances;
import frieze.design.Design;
import frieze.design.Motif;
import frieze.design.TorchWay;
import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.scene.Surroundings;
import frieze.fixtures.OpenIcons;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.layout.Placement;
import frieze.lower.FileNames;
import frieze.motion.Sequence;
import frieze.post.Post;
import frieze.post.Posting;
import frieze.post.Posts;
import frieze.region.BoundaryDistance;
import frieze.region.Region;
import frieze.shop.CutChart;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Torch;
import frieze.shop.Zero;
import frieze.torch.TorchPath;
import frieze.torch.TorchPlan;
import frieze.torch.TorchPlanner;
import frieze.torch.TorchSequencer;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Drawings by other people as openings of a steel panel: from file to a program that passed the dry
 * run of a torch, which knows the part and nothing of the plan.
 *
 * <p>The rule: the longer side is 110 mm, in the middle of a panel 150 mm square of 3 mm steel.
 * None may be dropped in silence: each gives a program, or a reason.
 */
class IconPanelsTest {
  private static final double SIZE_MM = 110;
  private static final double PANEL_MM = 150;
  private static final double MARGIN_MM = 25;
  private static final double ROUNDING_MM = 1e-6;
  private static final SourceSpan HERE = SourceSpan.file("icon");
  private static final Shop SHOP = ShopReader.builtIn();
  private static final Post POST = Posts.find("plasma-touch").orElseThrow();

  /** Kerf and heights are usual ones for 3 mm at 45 A (common practice). */
  private static final Torch TORCH =
      new Torch("air", new CutChart.Row(3, 1.5, 3000, 3.8, 1.5, 0.3, 6), 0.5);

  @Test
  void forty_icons_become_openings_of_steel_panels() {
    Trial trial = new Trial();
    trial.attemptAll(40);
    assertThat(trial.outcome.asked()).isEqualTo(40);
    assertThat(trial.outcome.unsafe()).as(trial.outcome::report).isEmpty();
    assertThat(trial.outcome.made()).as(trial.outcome::report).isGreaterThanOrEqualTo(40);
  }

  @Test
  @Tag("corpus")
  void three_hundred_icons_become_openings_of_steel_panels() {
    Trial trial = new Trial();
    trial.attemptAll(300);
    assertThat(trial.outcome.asked()).isEqualTo(300);
    assertThat(trial.outcome.unsafe()).as(trial.outcome::report).isEmpty();
    assertThat(trial.outcome.made()).as(trial.outcome::report).isGreaterThanOrEqualTo(295);
  }

  /**
   * Its lens is drawn with an arc that leaves dust beside an opening: dust is dropped, and told.
   */
  @Test
  @Tag("corpus")
  void an_icon_with_dust_beside_its_opening_is_made() {
    Trial trial = new Trial();
    OpenIcons.drawings().entrySet().stream()
        .filter(
            i -> i.getKey().contains("/bootstrap-icons/") && i.getKey().endsWith("/zoom-in.svg"))
        .forEach(i -> trial.attempt(i.getKey(), i.getValue()));
    assertThat(trial.outcome.unsafe()).as(trial.outcome::report).isEmpty();
    assertThat(trial.outcome.made()).as(trial.outcome::report).isEqualTo(1);
  }

  private static Design design(Artwork art) {
    Panel panel = new Opening(PANEL_MM, PANEL_MM, 3).panel("panel", 0, HERE);
    Bounds b = art.bounds();
    Affine map = Affine.translation(PANEL_MM / 2 - b.centre().x(), PANEL_MM / 2 - b.centre().y());
    return new Design(
        panel,
        List.of(new Motif("icon", art)),
        List.of(new Placement("icon", 1, new FrameMap<Frame.Artwork, Frame.Panel>(map))),
        List.of(
            new Work.TorchCut(
                List.of(new Work.Target("icon", Optional.empty())), TORCH, TorchWay.USUAL, HERE)));
  }

  private static Setup setup() {
    Stock stock =
        new Stock(
            SHOP.material("mild steel").orElseThrow(),
            PANEL_MM + 2 * MARGIN_MM,
            PANEL_MM + 2 * MARGIN_MM,
            List.of(3.0),
            false);
    return new Setup(
        SHOP.machine("plasma table").orElseThrow(),
        stock,
        Zero.LEFT_FRONT_TOP,
        MARGIN_MM,
        MARGIN_MM,
        20,
        0.5,
        List.of(),
        List.of(TORCH.asTool()));
  }

  /** What became of each icon. */
  private static final class Trial {
    private final IconOutcome outcome = new IconOutcome();

    /** On both cores: no icon knows of another. */
    void attemptAll(int count) {
      Map<String, byte[]> icons = OpenIcons.sample(count);
      outcome.ask(icons.size());
      icons.entrySet().parallelStream().forEach(i -> attempt(i.getKey(), i.getValue()));
    }

    private void attempt(String name, byte[] content) {
      try {
        Artwork art = new SvgReader().read(name, content);
        Bounds b = art.bounds();
        Artwork sized = b.width() > b.height() ? art.withWidth(SIZE_MM) : art.withHeight(SIZE_MM);
        Setup setup = setup();
        TorchPlan plan = TorchPlanner.plan(design(sized), setup, Tolerances.DEFAULT);
        look(name, plan);
        outcome.judge(name, run(plan, setup));
      } catch (BadInputException e) {
        outcome.refuse(name, e);
      }
    }

    /** Counts pieces and measures pierces with code that shares nothing with the plan. */
    private void look(String name, TorchPlan plan) {
      for (Region part : plan.parts()) {
        int pieces = Pieces.count(part);
        if (pieces != 1) {
          outcome.blame(name, "comes out in " + pieces + " pieces");
        }
        BoundaryDistance edge = BoundaryDistance.of(part);
        for (TorchPath path : plan.paths()) {
          boolean onPurpose = path.pieces().isEmpty();
          if (!onPurpose && edge.signed(path.pierce()) > ROUNDING_MM - TORCH.leastPierceMm()) {
            outcome.blame(name, path.origin() + " is pierced at or in the part");
          }
        }
      }
    }

    private static DryRunResult run(TorchPlan plan, Setup setup) {
      Sequence sequence = TorchSequencer.sequence(plan, setup, "panel");
      FileNames names = new FileNames(POST.capabilities().files());
      return DryRun.in(Surroundings.of(setup))
          .withTorch(PlannedPanel.facts(plan, setup))
          .run(ReadBack.texts(Posting.write(sequence, setup, POST, List.of(), names), POST));
    }
  }
}
