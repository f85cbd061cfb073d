package frieze.post;

import frieze.lower.FileNames;
import frieze.lower.Lowering;
import frieze.lower.RelightSpot;
import frieze.lower.Rescue;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Writes a program that goes on where the run of another one broke off.
 *
 * <p>The sequence is written once more with the number of each step in the place of its origin;
 * that tells which step each line comes from, with any post.
 */
public final class Rescuer {
  private final Sequence drawn;
  private final Setup setup;
  private final Post post;
  private final List<ProgramText> numbered;

  /**
   * Makes one for the programs of a setup.
   *
   * @param header the lines at the top of the programs that were run
   * @param names gives those programs their names; what is taken is taken
   */
  public Rescuer(Sequence sequence, Setup setup, Post post, List<String> header, FileNames names) {
    this.drawn = Lowering.drawn(sequence, post.capabilities());
    this.setup = setup;
    this.post = post;
    List<Step> steps = new ArrayList<>();
    for (Step step : drawn.steps()) {
      steps.add(new Step(step.instruction(), String.valueOf(steps.size())));
    }
    this.numbered =
        Posting.write(new Sequence(sequence.title(), steps), setup, post, header, names);
  }

  /** The programs that were run; their texts are those of {@link Posting#write}. */
  public List<ProgramText> programs() {
    return numbered;
  }

  /**
   * Writes what is left of a program.
   *
   * @param program which of {@link #programs()}
   * @param line the line that the run broke off in, from 1; those before it are done
   * @return the programs that do the rest, usually one; none when nothing is left to cut
   */
  public List<ProgramText> from(int program, int line, List<String> header) {
    return from(program, line, header, RelightSpot.NONE);
  }

  /**
   * Writes what is left of a program.
   *
   * @param program which of {@link #programs()}
   * @param line the line that the run broke off in, from 1; those before it are done
   * @param relight where a torch may be lit again
   * @return the programs that do the rest, usually one; none when nothing is left to cut
   */
  public List<ProgramText> from(int program, int line, List<String> header, RelightSpot relight) {
    Optional<Integer> broken = step(program, line);
    if (broken.isEmpty()) {
      return List.of();
    }
    Optional<RelightSpot> torch =
        Optional.of(relight).filter(r -> post.capabilities().torch().present());
    Rescue.Left left = Rescue.after(drawn, broken.get(), lastStep(program), setup, torch);
    if (!left.cuts()) {
      return List.of();
    }
    FileNames names = new FileNames(post.capabilities().files());
    Lowering.Request request =
        new Lowering.Request(setup, post.capabilities(), header, names, left.run());
    return Posting.write(left.sequence(), request, post);
  }

  /** The step that a line belongs to; of a line that lowering added, that of the next one. */
  private Optional<Integer> step(int program, int line) {
    ProgramText text = numbered.get(program);
    int before = program == 0 ? -1 : lastStep(program - 1);
    for (int i = line; i <= text.origins().size(); i++) {
      String origin = text.origin(i);
      if (!origin.isEmpty() && Integer.parseInt(origin) > before) {
        return Optional.of(Integer.parseInt(origin));
      }
    }
    return Optional.empty();
  }

  private int lastStep(int program) {
    return numbered.get(program).origins().stream()
        .filter(o -> !o.isEmpty())
        .mapToInt(Integer::parseInt)
        .max()
        .orElse(-1);
  }
}
