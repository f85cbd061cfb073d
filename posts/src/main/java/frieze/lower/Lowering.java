package frieze.lower;

import frieze.curve.Tolerances;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.shop.Setup;
import java.util.ArrayList;
import java.util.List;

/**
 * Lowers a sequence to the programs of one controller.
 *
 * <p>The passes, in order; each takes steps and gives steps, and keeps the origin of each:
 *
 * <ol>
 *   <li>{@link TurnSplit}: turns of at most one revolution, or half of one;
 *   <li>{@link ArcsToLines}: lines for arcs that the controller does not draw;
 *   <li>{@link ToolSplit}: one list of steps for each program;
 *   <li>{@link TorchPass}: nothing that the torch cannot do;
 *   <li>{@link AirPass}: in an air pass, no spindle, no torch, no waiting;
 *   <li>{@link SafeShape}: a start that can only rise, spindle and stops, retract before travel,
 *       park and spindle off at the end;
 *   <li>{@link DrillsToMoves}: drilling as plain moves where the controller has no such cycle;
 *   <li>{@link ByHand}: stops with a message for what the operator does;
 *   <li>{@link Turned}: everything turned about zero, if the stock lies turned;
 *   <li>{@link Rounding}: every number on the controller's grid, centres chosen after the ends;
 *   <li>{@link Lift}: in an air pass, everything higher by the same number of last digits.
 * </ol>
 *
 * <p><i>Approximation:</i> ends of moves lie within half a last digit along each axis; {@link
 * ArcCentre} states how far an arc may bulge from the one asked for; an arc turned into lines stays
 * within {@link Tolerances#flattenMm()}.
 */
public final class Lowering {
  private Lowering() {}

  /**
   * What a sequence is lowered for.
   *
   * @param header short lines that the caller wants at the top: job, panel, zero, stock
   * @param names gives the files their names; one for each job
   * @param run what is special about the run
   */
  public record Request(
      Setup setup, Capabilities capabilities, List<String> header, FileNames names, Run run) {
    public Request {
      header = List.copyOf(header);
    }

    /** A usual run. */
    public Request(Setup setup, Capabilities capabilities, List<String> header, FileNames names) {
      this(setup, capabilities, header, names, Run.USUAL);
    }

    /** The same with other names for the files. */
    public Request withNames(FileNames other) {
      return new Request(setup, capabilities, header, other, run);
    }

    /** What happens at a tool change, with this controller on this machine. */
    Capabilities.ToolChanging toolChanging() {
      Capabilities.ToolChanging wish = capabilities.toolChanging();
      boolean noChanger =
          wish == Capabilities.ToolChanging.CHANGER && !setup.machine().toolChanger();
      return noChanger ? Capabilities.ToolChanging.SEPARATE_PROGRAMS : wish;
    }

    /** Whether the operator switches the spindle. */
    boolean spindleByHand() {
      return setup.machine().spindle().byHand() || !capabilities.spindle();
    }

    boolean inches() {
      return setup.machine().inches();
    }

    /** The height, in the program's Z, at which the tool may travel anywhere. */
    double travelZMm() {
      return setup.clearanceMm() - setup.stockZFromProgramZMm();
    }
  }

  /**
   * Lowers a sequence.
   *
   * @throws IllegalArgumentException when the sequence cuts before it has a tool, a position or a
   *     turning spindle
   */
  public static List<Program> lower(Sequence sequence, Request request) {
    return lower(sequence, request, Integer.MAX_VALUE);
  }

  /**
   * Lowers a sequence to programs of limited size.
   *
   * @param mostSteps a program with more steps is split where the tool travels
   */
  public static List<Program> lower(Sequence sequence, Request request, int mostSteps) {
    List<Step> drawn = drawn(sequence, request.capabilities()).steps();
    List<ToolSplit.Part> parts = ToolSplit.shorten(ToolSplit.split(drawn, request), mostSteps);
    List<Program> programs = new ArrayList<>();
    List<Step> before = new ArrayList<>();
    for (int i = 0; i < parts.size(); i++) {
      ToolSplit.Part part = parts.get(i);
      List<String> header = header(sequence, part, i + 1, parts.size(), request);
      programs.add(program(request.names().next(sequence.title()), header, part, before, request));
      before.addAll(part.steps());
    }
    return List.copyOf(programs);
  }

  /**
   * The first passes alone: every turn as the controller draws it. To do it again changes nothing.
   */
  public static Sequence drawn(Sequence sequence, Capabilities capabilities) {
    List<Step> steps = new TurnSplit(capabilities.arcs()).apply(sequence.steps());
    steps = new ArcsToLines(capabilities.arcs(), Tolerances.DEFAULT).apply(steps);
    return new Sequence(sequence.title(), steps);
  }

  /**
   * Lowers one part.
   *
   * @param before what the parts before it do
   */
  private static Program program(
      String fileName,
      List<String> header,
      ToolSplit.Part part,
      List<Step> before,
      Request request) {
    Capabilities has = request.capabilities();
    List<Step> steps = new TorchPass(has.torch()).apply(part.steps());
    steps = request.run().isAir() ? new AirPass().apply(steps) : steps;
    steps = new SafeShape(request).apply(steps);
    steps = new DrillsToMoves(has).apply(steps);
    ByHand byHand = new ByHand(request, before);
    steps = byHand.apply(steps);
    steps = new Turned(request.setup().zero().skewRad()).apply(steps);
    Rounding rounding = new Rounding(has, request.inches());
    List<Program.Entry> entries =
        Lift.by(rounding.grid().ticks(request.run().liftMm()), rounding.apply(steps));
    return new Program(
        fileName,
        header,
        part.tools(),
        rounding.grid(),
        rounding.feedGrid(),
        byHand.touchSpots(),
        entries);
  }

  private static List<String> header(
      Sequence sequence, ToolSplit.Part part, int number, int of, Request request) {
    List<String> lines = new ArrayList<>(request.header());
    lines.add(sequence.title() + ", program " + number + " of " + of);
    part.tools().forEach(t -> lines.add("tool " + t.number() + ": " + t.name()));
    return lines;
  }
}
