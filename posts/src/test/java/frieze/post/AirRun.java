package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.scene.Surroundings;
import frieze.lower.FileNames;
import frieze.lower.Lowering;
import frieze.lower.Run;
import frieze.motion.Executed;
import frieze.motion.Executed.Kind;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.rs274.Interpreter;
import frieze.rs274.ProgramSummary;
import frieze.rs274.ReadingRules;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;

/** The programs of a sequence as they are, and raised into the air. */
final class AirRun {
  private static final double LIFT_MM = 25.4;
  private static final double SAME_MM = 1e-6;

  private final Post post;
  private final Setup setup;
  private final List<ProgramText> usual;
  private final List<ProgramText> air;

  AirRun(Post post, Setup setup, Sequence sequence) {
    this.post = post;
    this.setup = setup;
    boolean torch = post.capabilities().torch().present();
    this.usual = write(sequence, Run.USUAL);
    this.air = write(sequence, Run.air(LIFT_MM, torch));
  }

  private List<ProgramText> write(Sequence sequence, Run run) {
    return Posting.write(
        sequence,
        new Lowering.Request(
            setup,
            post.capabilities(),
            List.of("Hall bench"),
            new FileNames(post.capabilities().files()),
            run),
        post);
  }

  private ReadingRules rules(ProgramText text) {
    ReadingRules rules = post.reading();
    return rules.but().start(rules.start().withTool(text.tools().get(0).number())).build();
  }

  /** Where moves start and end, without those that feel for the sheet. */
  private List<Executed.Move> moves(ProgramText text) {
    List<Executed.Move> moves = new ArrayList<>();
    ProgramSummary summary =
        Interpreter.run(
            text.fileName(),
            text.text(),
            rules(text),
            event -> {
              if (event instanceof Executed.Move move) {
                assertThat(move.state().torchOn()).isFalse();
                assertThat(move.state().rotation()).isEqualTo(Executed.Rotation.STOPPED);
                moves.add(move);
              }
            });
    assertThat(summary.diagnostics()).isEmpty();
    return moves;
  }

  private List<Executed.Move> usualMoves(ProgramText text) {
    List<Executed.Move> moves = new ArrayList<>();
    Interpreter.run(
        text.fileName(),
        text.text(),
        rules(text),
        event -> {
          if (event instanceof Executed.Move move && move.kind() != Kind.PROBE) {
            moves.add(move);
          }
        });
    return moves;
  }

  void assertSamePath() {
    assertThat(air).hasSameSizeAs(usual);
    for (int i = 0; i < air.size(); i++) {
      List<Executed.Move> low = usualMoves(usual.get(i));
      List<Executed.Move> high = moves(air.get(i));
      assertThat(high).as(air.get(i).text()).hasSameSizeAs(low);
      for (int k = 0; k < high.size(); k++) {
        assertSame(high.get(k), low.get(k), air.get(i));
      }
    }
  }

  private static void assertSame(Executed.Move high, Executed.Move low, ProgramText text) {
    String where = high.span() + " of\n" + text.text();
    assertThat(high.kind()).as(where).isEqualTo(low.kind());
    assertThat(high.feedMmPerMin()).as(where).isEqualTo(low.feedMmPerMin());
    assertThat(high.path().getClass()).as(where).isEqualTo(low.path().getClass());
    if (high.path() instanceof Motion.Turn a && low.path() instanceof Motion.Turn b) {
      assertThat(a.sweepRad()).as(where).isEqualTo(b.sweepRad(), within(SAME_MM));
    }
    boolean known = high.toKnown().z() && low.toKnown().z();
    Position up = high.path().to();
    Position down = low.path().to();
    assertThat(up.x()).as(where).isEqualTo(down.x(), within(SAME_MM));
    assertThat(up.y()).as(where).isEqualTo(down.y(), within(SAME_MM));
    if (known) {
      assertThat(up.z()).as(where).isEqualTo(down.z() + LIFT_MM, within(SAME_MM));
    }
  }

  void assertNothingIsCut() {
    DryRunResult result = dryRun(air);
    assertThat(result.stock().orElseThrow().removedVolumeMm3()).isZero();
    assertThat(result.findings()).noneMatch(Finding::isError);
  }

  private DryRunResult dryRun(List<ProgramText> texts) {
    return DryRun.in(Surroundings.of(setup))
        .run(
            texts.stream()
                .map(p -> frieze.dryrun.ProgramText.of(p.fileName(), p.bytes(), rules(p)))
                .toList());
  }
}
