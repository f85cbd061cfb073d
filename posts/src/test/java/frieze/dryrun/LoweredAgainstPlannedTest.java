package frieze.dryrun;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import frieze.curve.Tolerances;
import frieze.dryrun.CutTrace.Piece;
import frieze.dryrun.CutTrace.Run;
import frieze.lower.Capabilities;
import frieze.lower.Command;
import frieze.lower.FileNames;
import frieze.lower.Jobs;
import frieze.lower.Lowering;
import frieze.lower.Program;
import frieze.motion.Position;
import frieze.motion.Sequence;
import frieze.post.Post;
import frieze.post.Posts;
import frieze.shop.Setup;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * The whole of a sequence against the whole of the programs that it is lowered to, before there is
 * any text: the same cuts with the same tools in the same order, each from the same start to the
 * same end on the same way, none faster than planned.
 *
 * <p>Ends may be off by half a last digit along each axis. In between, a line for an arc may leave
 * it by the tolerance of the text, and an arc on the grid by two last digits ({@link Lowering}).
 */
class LoweredAgainstPlannedTest {
  private static final int SAMPLES = 16;
  private static final double BULGE_TICKS = 2;
  private static final double ROUNDING = 1e-6;

  /** What a piece may lose of its length when chords or rounded arcs draw it. */
  private static final double LENGTH = 0.005;

  private static final Sequence APRON = Planned.sequence(setup("rs274-full", false));

  private static Setup setup(String post, boolean inches) {
    return Planned.setup(post, false, inches, Zero.LEFT_FRONT_TOP);
  }

  private static List<Program> lower(Sequence sequence, Setup setup, Capabilities capabilities) {
    return Lowering.lower(
        sequence,
        new Lowering.Request(setup, capabilities, List.of(), new FileNames(capabilities.files())));
  }

  private static void compare(Sequence planned, List<Program> lowered) {
    List<Run> asked = CutTrace.of(planned).runs();
    List<Run> done = CutTrace.of(lowered).runs();
    assertThat(done).extracting(Run::origin).isEqualTo(asked.stream().map(Run::origin).toList());
    assertThat(done).extracting(Run::tool).isEqualTo(asked.stream().map(Run::tool).toList());
    for (int i = 0; i < asked.size(); i++) {
      new OneRun(lowered.get(0), asked.get(i), done.get(i)).compare();
    }
  }

  /** Goes along a planned run and takes from the lowered one what each of its pieces has become. */
  private static final class OneRun {
    private final Run asked;
    private final double tick;
    private final double feedTick;
    private final Iterator<Piece> done;
    private final Position start;

    OneRun(Program program, Run asked, Run done) {
      this.asked = asked;
      this.tick = program.grid().tickMm();
      this.feedTick = program.feedGrid().tickMm();
      this.done = done.pieces().iterator();
      this.start = done.from();
    }

    void compare() {
      same(start, asked.from(), tick / 2);
      for (Piece piece : asked.pieces()) {
        boolean roundsToNothing =
            piece.path().lengthMm() <= 2 * tick && onGrid(piece.path().from(), piece.path().to());
        if (!roundsToNothing) {
          compare(piece, take(piece));
        }
      }
      assertThat(done.hasNext()).as("%s goes on", asked.origin()).isFalse();
    }

    /** Whether two places are the same to the program. */
    private boolean onGrid(Position a, Position b) {
      return ticks(a.x()) == ticks(b.x())
          && ticks(a.y()) == ticks(b.y())
          && ticks(a.z()) == ticks(b.z());
    }

    private long ticks(double mm) {
      return Math.round(mm / tick);
    }

    private List<Piece> take(Piece piece) {
      double length = piece.path().lengthMm();
      double slack = LENGTH * length + 4 * tick;
      List<Piece> parts = new ArrayList<>();
      double taken = 0;
      // A full circle ends where it starts: the length tells how far it has come.
      while (taken < length - slack || !ends(parts, piece)) {
        assertThat(done.hasNext()).as("%s stops early", asked.origin()).isTrue();
        parts.add(done.next());
        taken += parts.get(parts.size() - 1).path().lengthMm();
      }
      assertThat(taken)
          .as("%s, length of %s", asked.origin(), piece)
          .isCloseTo(length, within(slack));
      return parts;
    }

    private boolean ends(List<Piece> parts, Piece piece) {
      return !parts.isEmpty()
          && parts.get(parts.size() - 1).path().to().distance(piece.path().to()) <= tick;
    }

    private void compare(Piece piece, List<Piece> parts) {
      same(parts.get(parts.size() - 1).path().to(), piece.path().to(), tick / 2);
      double whole = parts.stream().mapToDouble(p -> p.path().lengthMm()).sum();
      double off = Tolerances.DEFAULT.textMm() + (BULGE_TICKS + 1) * tick;
      double before = 0;
      for (Piece part : parts) {
        for (int i = 0; i <= SAMPLES; i++) {
          double share = (double) i / SAMPLES;
          double at = (before + share * part.path().lengthMm()) / whole;
          Position expected = piece.path().at(Math.min(1, at));
          assertThat(part.path().at(share).distance(expected))
              .as("%s, %s at %s", asked.origin(), part, expected)
              .isLessThan(off);
        }
        before += part.path().lengthMm();
        assertThat(part.feedMmPerMin())
            .as("%s, feed of %s", asked.origin(), part)
            .isLessThanOrEqualTo(piece.feedMmPerMin() + ROUNDING)
            .isGreaterThan(piece.feedMmPerMin() - feedTick - ROUNDING);
      }
    }

    private void same(Position a, Position b, double most) {
      for (int axis = 0; axis < 3; axis++) {
        assertThat(a.get(axis))
            .as("%s, axis %d at %s", asked.origin(), axis, b)
            .isCloseTo(b.get(axis), within(most + ROUNDING));
      }
    }
  }

  @Test
  void every_post_gets_the_apron_as_it_was_planned() {
    int compared = 0;
    for (Post post : Posts.all()) {
      if (!post.capabilities().torch().present()) {
        for (boolean inches : new boolean[] {false, true}) {
          compare(APRON, lower(APRON, setup(post.id(), inches), post.capabilities()));
          compared++;
        }
      }
    }
    assertThat(compared).isGreaterThanOrEqualTo(6);
  }

  /** Helices of two turns, leaves of two arcs and pecked holes; or holes cut by a torch. */
  @Test
  void every_post_gets_small_jobs_as_they_were_planned() {
    for (Post post : Posts.all()) {
      Sequence work = Jobs.fitting(post.capabilities(), "small");
      for (boolean inches : new boolean[] {false, true}) {
        for (boolean changer : new boolean[] {false, true}) {
          Setup setup = Jobs.setup(Jobs.machine(false, changer, inches));
          compare(work, lower(work, setup, post.capabilities()));
        }
      }
    }
  }

  /** A comparison that lets a fault pass is worth nothing. */
  @Test
  void a_fault_in_the_lowered_programs_is_seen() {
    Post post = Posts.find("rs274-full").orElseThrow();
    List<Program> good = lower(APRON, setup(post.id(), false), post.capabilities());
    compare(APRON, good);
    int line = first(good.get(0), Command.Line.class, 3);
    int arc = first(good.get(0), Command.Arc.class, 1);
    refused(good, line, c -> line((Command.Line) c, 1, 0, 0));
    refused(good, line, c -> line((Command.Line) c, 0, 2, 0));
    refused(good, line, c -> line((Command.Line) c, 0, 0, 1));
    refused(good, line, c -> line((Command.Line) c, 0, 0, -2));
    refused(good, arc, c -> arc((Command.Arc) c, true, 0));
    refused(good, arc, c -> arc((Command.Arc) c, false, 1));
    Program first = good.get(0);
    List<Program.Entry> dropped = new ArrayList<>(first.entries());
    dropped.remove(line);
    assertThatThrownBy(() -> compare(APRON, with(good, dropped)))
        .isInstanceOf(AssertionError.class);
    List<Program> turned = new ArrayList<>(good);
    java.util.Collections.reverse(turned);
    assertThatThrownBy(() -> compare(APRON, turned)).isInstanceOf(AssertionError.class);
  }

  private static int first(Program program, Class<? extends Command> kind, int after) {
    int seen = 0;
    for (int i = 0; i < program.entries().size(); i++) {
      if (kind.isInstance(program.entries().get(i).command()) && ++seen > after) {
        return i;
      }
    }
    throw new AssertionError("no " + kind);
  }

  /** Further by a hundredth along X, or faster, or slower by last digits. */
  private static Command line(Command.Line l, long far, long fast, long slow) {
    return new Command.Line(l.x() + 10 * far, l.y(), l.z(), l.feed() + fast - 2 * Math.abs(slow));
  }

  private static Command arc(Command.Arc a, boolean turned, long fast) {
    return new Command.Arc(
        a.x(),
        a.y(),
        a.z(),
        a.plane(),
        a.clockwise() != turned,
        a.offsetU(),
        a.offsetV(),
        a.radius(),
        a.feed() + fast);
  }

  private static void refused(List<Program> good, int at, UnaryOperator<Command> fault) {
    List<Program.Entry> entries = new ArrayList<>(good.get(0).entries());
    Program.Entry entry = entries.get(at);
    entries.set(at, new Program.Entry(fault.apply(entry.command()), entry.origin()));
    assertThatThrownBy(() -> compare(APRON, with(good, entries)))
        .as("%s", entry)
        .isInstanceOf(AssertionError.class);
  }

  private static List<Program> with(List<Program> programs, List<Program.Entry> entries) {
    Program p = programs.get(0);
    List<Program> changed = new ArrayList<>(programs);
    changed.set(
        0,
        new Program(
            p.fileName(), p.header(), p.tools(), p.grid(), p.feedGrid(), p.touchSpots(), entries));
    return changed;
  }
}
