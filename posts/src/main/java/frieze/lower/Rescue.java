package frieze.lower;

import frieze.curve.Point;
import frieze.motion.Instruction;
import frieze.motion.Motion;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.motion.Step;
import frieze.shop.Setup;
import frieze.shop.Tool;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is left to do after a run broke off, with a safe way in.
 *
 * <p>A router goes back along its path for at least {@value #BACK_MM} mm of cutting, or to the
 * start of the cut if that is nearer, and cuts the stretch again: controllers show a line ahead of
 * the one that they cut. It enters straight down, at the speed of a plunge, at a place where the
 * tool has been in the broken run: there everything is gone that is in its way. A hole is drilled
 * again from its top. A torch would lose its arc over an open kerf; it is lit in the scrap beside
 * the place where the broken line starts, with the steps that started its cut, and comes in from
 * there; where the scrap has no room, it is lit in the end of the kerf, and the operator is told.
 *
 * <p><i>Guarantees:</i> where the lines before the break were done, entering takes no material, and
 * the stock is in the end as if nothing had happened.
 */
public final class Rescue {
  /** How much of the path, at least, is cut again before the broken line. */
  public static final double BACK_MM = 25;

  private static final double APPROACH_MM = 1;
  private static final double SAME_PLACE_MM = 1e-6;
  private static final double JUST_AHEAD = 1e-4;
  private static final String ENTRY = "way in";

  private final Sequence whole;
  private final Setup setup;
  private final boolean torch;
  private final RelightSpot relight;
  private final List<Instruction> instructions;

  /** Where the tool stands before each step. */
  private final List<Cursor> standing = new ArrayList<>();

  private Rescue(Sequence whole, Setup setup, Optional<RelightSpot> relight) {
    this.whole = whole;
    this.setup = setup;
    this.torch = relight.isPresent();
    this.relight = relight.orElse(RelightSpot.NONE);
    this.instructions = whole.steps().stream().map(Step::instruction).toList();
    Cursor cursor = new Cursor();
    for (Instruction instruction : instructions) {
      standing.add(cursor.copy());
      cursor.follow(instruction);
    }
  }

  /**
   * What is left.
   *
   * @param run asks for zero to be found again, on a spot of the stock's top that is still uncut
   */
  public record Left(Sequence sequence, Run run) {
    /** Whether there is anything to cut. */
    public boolean cuts() {
      return sequence.steps().stream()
          .map(Step::instruction)
          .anyMatch(
              i ->
                  i instanceof Instruction.Feed
                      || i instanceof Instruction.Turn
                      || i instanceof Instruction.Drill);
    }
  }

  /**
   * Works out what is left.
   *
   * @param whole everything that was to be done in this setup, {@link Lowering#drawn} already
   * @param broken the step that the run broke off in
   * @param last the last step of the program that broke off
   * @param torch where a torch that does the work may be lit; empty for a spindle
   */
  public static Left after(
      Sequence whole, int broken, int last, Setup setup, Optional<RelightSpot> torch) {
    if (!(0 <= broken && broken <= last && last < whole.steps().size())) {
      throw new IllegalArgumentException(
          "broken and last must be steps of the sequence but were " + broken + ", " + last);
    }
    return new Rescue(whole, setup, torch).left(broken, last);
  }

  private Left left(int broken, int last) {
    int entry = torch ? torchEntry(broken) : routerEntry(broken);
    if (torch && !startsAfresh(entry) && !cuts(entry)) {
      return new Left(new Sequence(whole.title(), List.of()), Run.USUAL);
    }
    List<Step> steps = new ArrayList<>(state(entry));
    Optional<Point> scrap = torch && !startsAfresh(entry) ? scrapBeside(entry) : Optional.empty();
    steps.addAll(torch ? lighting(entry, scrap) : wayIn(entry));
    steps.addAll(whole.steps().subList(entry, last + 1));
    boolean onTop = setup.zero().z() == Zero.AlongZ.TOP;
    Optional<Point> spot =
        onTop ? TouchSpot.choose(whole.steps().subList(0, last + 1), setup) : Optional.empty();
    String find = findZero(tool(entry), spot, onTop);
    String inKerf = torch && !startsAfresh(entry) && scrap.isEmpty() ? litInKerf(entry) : "";
    Run run = new Run(0, List.of(find + inKerf + ", THEN START"), spot.stream().toList());
    return new Left(new Sequence("rescue " + whole.title(), steps), run);
  }

  private String findZero(Optional<Tool> tool, Optional<Point> spot, boolean onTop) {
    boolean inches = setup.machine().inches();
    String where =
        spot.map(
                p ->
                    " AT X "
                        + NumberWords.coordinate(p.x(), inches)
                        + " Y "
                        + NumberWords.coordinate(p.y(), inches)
                        + ", WHERE THE TOP IS UNCUT")
            .orElse(onTop ? "" : " ON THE BED");
    String name = tool.map(t -> ", TOOL " + t.number() + ", " + t.name()).orElse("");
    return "RESCUE" + (torch ? "" : name) + ": FIND X AND Y ZERO AGAIN, THEN Z ZERO" + where;
  }

  private boolean cuts(int step) {
    Instruction i = instructions.get(step);
    return i instanceof Instruction.Feed || i instanceof Instruction.Turn;
  }

  private Motion path(int step) {
    Instruction i = instructions.get(step);
    String origin = whole.steps().get(step).origin();
    Position from = standing.get(step).position(origin);
    return i instanceof Instruction.Turn turn
        ? TurnPass.path(turn, standing.get(step), origin)
        : new Motion.Straight(from, ((Instruction.Feed) i).to());
  }

  private double feedMmPerMin(int step) {
    Instruction i = instructions.get(step);
    return i instanceof Instruction.Turn turn
        ? turn.feedMmPerMin()
        : ((Instruction.Feed) i).feedMmPerMin();
  }

  /** Whether work can start with a step without any way in. */
  private boolean startsAfresh(int step) {
    Instruction i = instructions.get(step);
    return i instanceof Instruction.RapidXy
        || i instanceof Instruction.Drill
        || i instanceof Instruction.ToolChange
        || (i instanceof Instruction.Spindle spindle && spindle.rpm().isPresent());
  }

  private int routerEntry(int broken) {
    double back = 0;
    int entry = broken;
    while (entry > 0 && !startsAfresh(entry) && !(cuts(entry) && back >= BACK_MM)) {
      entry--;
      back += cuts(entry) ? path(entry).lengthMm() : 0;
    }
    return entry;
  }

  /** The broken line, or the start of the piece of work if it has not cut sideways yet. */
  private int torchEntry(int broken) {
    int start = pieceStart(broken);
    for (int i = start; i < broken; i++) {
      if (cutsSideways(i)) {
        return cuts(broken) ? broken : afterCut(broken);
      }
    }
    return start;
  }

  /** The piece is cut already: what comes next is another one, if there is any. */
  private int afterCut(int broken) {
    int next = broken;
    while (next < instructions.size() - 1 && !startsAfresh(next) && !cuts(next)) {
      next++;
    }
    return next;
  }

  private int pieceStart(int step) {
    int start = step;
    while (start > 0 && !startsAfresh(start)) {
      start--;
    }
    return start;
  }

  private boolean cutsSideways(int step) {
    return cuts(step)
        && (instructions.get(step) instanceof Instruction.Turn
            || apart(standing.get(step), ((Instruction.Feed) instructions.get(step)).to()));
  }

  private static boolean apart(Cursor from, Position to) {
    return Math.hypot(from.x() - to.x(), from.y() - to.y()) > SAME_PLACE_MM;
  }

  /** The tool and the spindle that are in force before a step. */
  private List<Step> state(int entry) {
    List<Step> state = new ArrayList<>();
    if (instructions.get(entry) instanceof Instruction.ToolChange) {
      return state;
    }
    for (int i = 0; i < entry; i++) {
      Step step = whole.steps().get(i);
      if (step.instruction() instanceof Instruction.ToolChange) {
        state.clear();
        state.add(step);
      } else if (step.instruction() instanceof Instruction.Spindle spindle) {
        state.removeIf(s -> s.instruction() instanceof Instruction.Spindle);
        if (spindle.rpm().isPresent()) {
          state.add(step);
        }
      } else if (step.instruction() instanceof Instruction.Stop && !state.isEmpty()) {
        state.removeIf(s -> s.instruction() instanceof Instruction.Stop);
        state.add(step);
      }
    }
    return state;
  }

  private Optional<Tool> tool(int entry) {
    Optional<Tool> tool = Optional.empty();
    for (int i = 0; i <= entry; i++) {
      if (instructions.get(i) instanceof Instruction.ToolChange change) {
        tool = Optional.of(change.tool());
      }
    }
    return tool;
  }

  private List<Step> wayIn(int entry) {
    if (startsAfresh(entry) || entry == 0) {
      return List.of();
    }
    Position at = standing.get(entry).position(whole.steps().get(entry).origin());
    double top = -setup.stockZFromProgramZMm();
    double approach = top + Math.min(APPROACH_MM, setup.clearanceMm());
    List<Step> in = new ArrayList<>();
    add(in, new Instruction.RapidXy(at.x(), at.y()));
    add(in, new Instruction.RapidZ(top + setup.clearanceMm()));
    add(in, new Instruction.RapidZ(Math.max(approach, at.z())));
    if (at.z() < approach) {
      add(in, new Instruction.Feed(at, plungeMmPerMin(entry)));
    }
    return in;
  }

  private double plungeMmPerMin(int entry) {
    double machine = setup.machine().z().maxFeedMmPerMin();
    return tool(entry).map(t -> Math.min(t.maxPlungeMmPerMin(), machine)).orElse(machine);
  }

  /** A warning of an arc that is lit beside the part, for lack of room in the scrap. */
  private String litInKerf(int entry) {
    Cursor at = standing.get(entry);
    boolean inches = setup.machine().inches();
    return ". NO ROOM IN THE SCRAP: THE ARC IS LIT IN THE KERF AT X "
        + NumberWords.coordinate(at.x(), inches)
        + " Y "
        + NumberWords.coordinate(at.y(), inches)
        + " AND MAY MARK THE EDGE";
  }

  private Optional<Point> scrapBeside(int entry) {
    List<Motion> done = new ArrayList<>();
    for (int i = 0; i < entry; i++) {
      if (cutsSideways(i)) {
        done.add(path(i));
      }
    }
    Point at = standing.get(entry).position(whole.steps().get(entry).origin()).xy();
    Point ahead = path(entry).at(JUST_AHEAD).xy().minus(at);
    return ahead.norm() > 0 ? relight.find(at, ahead, done) : Optional.empty();
  }

  /** The steps that started the cut of a torch, moved to where it goes on, or beside it. */
  private List<Step> lighting(int entry, Optional<Point> scrap) {
    if (startsAfresh(entry)) {
      return List.of();
    }
    Position goesOn = standing.get(entry).position(whole.steps().get(entry).origin());
    Position at = scrap.map(p -> new Position(p, goesOn.z())).orElse(goesOn);
    List<Step> in = new ArrayList<>();
    add(in, new Instruction.RapidXy(at.x(), at.y()));
    for (int i = pieceStart(entry) + 1; i < entry && !cutsSideways(i); i++) {
      Instruction start = instructions.get(i);
      if (start instanceof Instruction.Probe probe) {
        add(
            in,
            new Instruction.Probe(
                at.withZ(probe.to().z()), probe.feedMmPerMin(), probe.tripsAtZMm()));
      } else if (start instanceof Instruction.Feed feed) {
        add(in, new Instruction.Feed(at.withZ(feed.to().z()), feed.feedMmPerMin()));
      } else {
        add(in, start);
      }
    }
    if (scrap.isPresent()) {
      add(in, new Instruction.Feed(goesOn, feedMmPerMin(entry)));
    }
    boolean follows = follows(instructions.subList(0, entry));
    if (follows != follows(in.stream().map(Step::instruction).toList())) {
      add(in, new Instruction.HeightControl(follows));
    }
    return in;
  }

  /** Whether the height control follows the sheet after some steps. */
  private static boolean follows(List<Instruction> steps) {
    boolean follows = false;
    for (Instruction step : steps) {
      follows = step instanceof Instruction.HeightControl control ? control.on() : follows;
    }
    return follows;
  }

  private static void add(List<Step> steps, Instruction instruction) {
    steps.add(new Step(instruction, ENTRY));
  }
}
