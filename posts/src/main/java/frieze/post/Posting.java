package frieze.post;

import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.SourceSpan;
import frieze.lower.FileNames;
import frieze.lower.Lowering;
import frieze.lower.Program;
import frieze.motion.Sequence;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;

/** Lowers and writes a sequence: the way from instructions to texts. */
public final class Posting {
  /** The share of the largest file that a split aims at. */
  private static final double FILLED = 0.9;

  private static final int FEWEST_STEPS = 20;

  private Posting() {}

  /**
   * Writes the programs of a sequence for a usual run.
   *
   * @param header short lines that the caller wants at the top: job, panel, zero, stock
   * @param names gives the files their names; one for each job
   * @throws BadInputException when one piece of work alone is larger than the controller takes
   */
  public static List<ProgramText> write(
      Sequence sequence, Setup setup, Post post, List<String> header, FileNames names) {
    return write(sequence, new Lowering.Request(setup, post.capabilities(), header, names), post);
  }

  /**
   * Writes the programs of a sequence, in running order. A program that is larger than its
   * controller takes is split where the tool travels.
   *
   * @param request for the capabilities of the post
   * @throws BadInputException when one piece of work alone is larger than the controller takes
   */
  public static List<ProgramText> write(Sequence sequence, Lowering.Request request, Post post) {
    Sequence drawn = Lowering.drawn(sequence, request.capabilities());
    int mostSteps = Math.max(drawn.steps().size(), FEWEST_STEPS);
    while (true) {
      List<ProgramText> texts = attempt(drawn, request, post, mostSteps);
      long largest = texts.stream().mapToLong(t -> t.text().length()).max().orElse(0);
      long most = post.capabilities().files().maxBytes();
      if (largest <= most) {
        texts.forEach(t -> request.names().next(sequence.title()));
        return texts;
      }
      int fewer = (int) (mostSteps * Math.min(FILLED, FILLED * most / largest));
      if (fewer < FEWEST_STEPS) {
        throw tooLarge(sequence, largest, most);
      }
      mostSteps = fewer;
    }
  }

  private static List<ProgramText> attempt(
      Sequence drawn, Lowering.Request request, Post post, int mostSteps) {
    Lowering.Request trial = request.withNames(request.names().copy());
    List<ProgramText> texts = new ArrayList<>();
    for (Program program : Lowering.lower(drawn, trial, mostSteps)) {
      texts.add(post.write(program));
    }
    return texts;
  }

  private static BadInputException tooLarge(Sequence sequence, long bytes, long most) {
    return new BadInputException(
        Diagnostic.error(
            PostCode.TOO_LARGE,
            SourceSpan.NONE,
            "one piece of work on "
                + sequence.title()
                + " alone makes a program of more than "
                + most
                + " bytes ("
                + bytes
                + ")",
            "choose a post whose controller draws arcs, or work with a larger tool"));
  }
}
