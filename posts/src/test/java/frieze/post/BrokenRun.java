package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.dryrun.DryRun;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.scene.Surroundings;
import frieze.field.StockField;
import frieze.lower.Capabilities;
import frieze.lower.FileNames;
import frieze.motion.Executed;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.rs274.Interpreter;
import frieze.rs274.ReadingRules;
import frieze.shop.Setup;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Breaks the run of programs off at a line, rescues it, and looks at what comes of it. */
final class BrokenRun {
  /**
   * Heights are kept in single precision: a last digit of 3 mm, 0.24 nm, over the thousand cells of
   * 0.01 mm2 that a tool stands on. A tool that took a tenth of a micrometre would be noticed.
   */
  private static final double ROUNDING_MM3 = 2.4e-6;

  private static final String BROKEN = " broken off";
  private static final String WAY_IN = "way in";
  private static final double SAME_HEIGHT_MM = 0.001;
  private static final double NO_LENGTH_MM = 1e-9;

  private final Post post;
  private final Setup setup;
  private final List<ProgramText> programs;
  private final Rescuer rescuer;
  private final StockField whole;

  BrokenRun(Post post, Setup setup, Sequence sequence) {
    this.post = post;
    this.setup = setup;
    List<String> header = List.of("Hall bench");
    Capabilities.Files files = post.capabilities().files();
    this.rescuer = new Rescuer(sequence, setup, post, header, new FileNames(files));
    this.programs = Posting.write(sequence, setup, post, header, new FileNames(files));
    assertThat(rescuer.programs().stream().map(ProgramText::text))
        .containsExactlyElementsOf(programs.stream().map(ProgramText::text).toList());
    this.whole = dryRun(programs).stock().orElseThrow();
  }

  List<ProgramText> programs() {
    return programs;
  }

  /** Breaks a program off before a line; false when there is nothing left to rescue. */
  boolean rescuedFrom(int program, int line) {
    List<ProgramText> rescue = rescuer.from(program, line, List.of("Rescue"));
    if (rescue.isEmpty()) {
      return false;
    }
    List<ProgramText> all = new ArrayList<>(programs.subList(0, program));
    ProgramText broken = brokenOff(programs.get(program), line);
    all.add(broken);
    assertWayInTakesNothing(all, rescue.get(0));
    all.addAll(rescue);
    all.addAll(programs.subList(program + 1, programs.size()));
    DryRunResult result = dryRun(all);
    String where = programs.get(program).fileName() + ":" + line + "\n" + text(rescue);
    assertThat(result.findings().stream().filter(f -> !f.program().endsWith(BROKEN)))
        .as(where)
        .noneMatch(Finding::isError);
    assertSame(result.stock().orElseThrow(), where);
    if (post.capabilities().torch().present()) {
      assertThat(lit(List.of(broken), rescue))
          .as(where)
          .isEqualTo(lit(List.of(programs.get(program)), List.of()));
    }
    return true;
  }

  /** Going in, at the speed of a plunge, happens where the material is gone already. */
  private void assertWayInTakesNothing(List<ProgramText> before, ProgramText rescue) {
    int last = rescue.origins().lastIndexOf(WAY_IN);
    if (last < 0) {
      return;
    }
    List<ProgramText> all = new ArrayList<>(before);
    all.add(brokenOff(rescue, last + 2));
    assertThat(dryRun(all).stock().orElseThrow().removedVolumeMm3())
        .as(rescue.text())
        .isCloseTo(dryRun(before).stock().orElseThrow().removedVolumeMm3(), within(ROUNDING_MM3));
  }

  /** Whether breaking off before a line, without a rescue, leaves the stock unfinished. */
  boolean isMissedWithoutRescue(int program, int line) {
    List<ProgramText> all = new ArrayList<>(programs.subList(0, program));
    all.add(brokenOff(programs.get(program), line));
    all.addAll(programs.subList(program + 1, programs.size()));
    double gone = dryRun(all).stock().orElseThrow().removedVolumeMm3();
    return gone < whole.removedVolumeMm3();
  }

  private static ProgramText brokenOff(ProgramText text, int line) {
    StringBuilder done = new StringBuilder();
    text.text().lines().limit(line - 1).forEach(l -> done.append(l).append('\n'));
    return new ProgramText(
        text.fileName() + BROKEN,
        text.tools(),
        text.inches(),
        text.touchSpots(),
        done.toString(),
        text.origins().subList(0, line - 1));
  }

  private static String text(List<ProgramText> rescue) {
    StringBuilder all = new StringBuilder();
    rescue.forEach(p -> all.append(p.text()));
    return all.substring(0, Math.min(all.length(), 4_000));
  }

  private DryRunResult dryRun(List<ProgramText> texts) {
    return DryRun.in(Surroundings.of(setup))
        .run(
            texts.stream()
                .map(p -> frieze.dryrun.ProgramText.of(p.fileName(), p.bytes(), rules(p)))
                .toList());
  }

  private ReadingRules rules(ProgramText text) {
    ReadingRules rules = post.reading();
    return rules.but().start(rules.start().withTool(text.tools().get(0).number())).build();
  }

  /** Every cell is as high as some cell next to it was, or between. */
  private void assertSame(StockField rescued, String where) {
    assertThat(rescued.removedVolumeMm3())
        .as(where)
        .isCloseTo(whole.removedVolumeMm3(), org.assertj.core.data.Percentage.withPercentage(0.01));
    float[] is = new float[whole.columns()];
    float[] was = new float[whole.columns()];
    for (int row = 0; row < whole.rows(); row++) {
      rescued.copyRow(row, is);
      whole.copyRow(row, was);
      for (int column = 0; column < is.length; column++) {
        float off = Math.abs(is[column] - was[column]);
        if (off > SAME_HEIGHT_MM && !isNear(rescued, column, row)) {
          throw new AssertionError(
              "cell " + column + ", " + row + " is " + off + " mm off after " + where);
        }
      }
    }
  }

  private boolean isNear(StockField rescued, int column, int row) {
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (int r = Math.max(0, row - 1); r <= Math.min(whole.rows() - 1, row + 1); r++) {
      for (int c = Math.max(0, column - 1); c <= Math.min(whole.columns() - 1, column + 1); c++) {
        low = Math.min(low, whole.cellHeightMm(c, r));
        high = Math.max(high, whole.cellHeightMm(c, r));
      }
    }
    double height = rescued.cellHeightMm(column, row);
    return height >= low - SAME_HEIGHT_MM && height <= high + SAME_HEIGHT_MM;
  }

  /** What is cut by a lit torch, sideways. */
  private List<String> lit(List<ProgramText> first, List<ProgramText> then) {
    List<String> lit = new ArrayList<>();
    for (List<ProgramText> texts : List.of(first, then)) {
      for (ProgramText text : texts) {
        Interpreter.run(
            text.fileName(),
            new java.io.ByteArrayInputStream(text.text().getBytes(StandardCharsets.US_ASCII)),
            rules(text),
            event -> {
              if (event instanceof Executed.Move move
                  && move.kind() == Executed.Kind.FEED
                  && move.state().torchOn()
                  && move.path().from().xy().distance(move.path().at(0.5).xy()) > NO_LENGTH_MM) {
                lit.add(words(move.path()));
              }
            });
      }
    }
    return lit;
  }

  /** To a nanometre, which hides the last bits of sums. */
  private static String words(Motion path) {
    StringBuilder words = new StringBuilder();
    for (double fraction : new double[] {0, 0.5, 1}) {
      Position p = path.at(fraction);
      words.append(String.format(Locale.ROOT, "%.6f %.6f %.6f; ", p.x(), p.y(), p.z()));
    }
    return words.toString();
  }
}
