package frieze.post;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import frieze.lower.Command;
import frieze.lower.Grid;
import frieze.lower.Program;
import frieze.motion.Executed;
import frieze.motion.Motion;
import frieze.motion.Plane;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A move that a lowered program asks for, in millimetres, worked out without the post.
 *
 * @param to X, Y, Z; NaN where the program has not said
 * @param arc the centre and direction; empty for a straight move
 */
record ExpectedMove(
    Executed.Kind kind, List<Double> to, Optional<ArcFacts> arc, double feedMmPerMin) {

  /** In the radius format the reader works the centre out from rounded ends and radius. */
  private static final double RADIUS_FORMAT_MM = 0.003;

  /** Where an arc turns about. */
  record ArcFacts(
      Plane plane, boolean clockwise, boolean byRadius, double centreU, double centreV) {}

  static List<ExpectedMove> of(Program program) {
    Walk walk = new Walk(program);
    program.entries().forEach(e -> e.command().accept(walk));
    return walk.moves;
  }

  void compare(Executed.Move done, double toleranceMm, ProgramText text) {
    String where = done.span() + ": " + text.origin(done.span().line());
    assertThat(done.kind()).as(where).isEqualTo(kind);
    for (int axis = 0; axis < to.size(); axis++) {
      if (!to.get(axis).isNaN() && done.toKnown().get(axis)) {
        assertThat(done.path().to().get(axis))
            .as(where)
            .isEqualTo(to.get(axis), within(toleranceMm));
      }
    }
    if (kind == Executed.Kind.FEED) {
      assertThat(done.feedMmPerMin().orElseThrow()).as(where).isEqualTo(feedMmPerMin, within(1e-6));
    }
    assertThat(done.path() instanceof Motion.Turn).as(where).isEqualTo(arc.isPresent());
    if (arc.isPresent()) {
      Motion.Turn turn = (Motion.Turn) done.path();
      assertThat(turn.plane()).as(where).isEqualTo(arc.get().plane());
      assertThat(turn.sweepRad() < 0).as(where).isEqualTo(arc.get().clockwise());
      double slack = arc.get().byRadius() ? RADIUS_FORMAT_MM : toleranceMm;
      assertThat(turn.centreU()).as(where).isEqualTo(arc.get().centreU(), within(slack));
      assertThat(turn.centreV()).as(where).isEqualTo(arc.get().centreV(), within(slack));
    }
  }

  private static final class Walk implements Command.Visitor<Void> {
    private final Grid grid;
    private final Grid feedGrid;
    private final List<ExpectedMove> moves = new ArrayList<>();
    private List<Double> at = List.of(Double.NaN, Double.NaN, Double.NaN);

    Walk(Program program) {
      this.grid = program.grid();
      this.feedGrid = program.feedGrid();
    }

    private Void go(
        Executed.Kind kind, double x, double y, double z, Optional<ArcFacts> arc, long f) {
      List<Double> to = List.of(x, y, z);
      boolean stays = to.equals(at) && arc.isEmpty();
      at = to;
      if (!stays) {
        moves.add(new ExpectedMove(kind, to, arc, feedGrid.mm(f)));
      }
      return null;
    }

    private Void straight(Executed.Kind kind, double x, double y, double z, long feed) {
      return go(kind, x, y, z, Optional.empty(), feed);
    }

    @Override
    public Void raise(Command.Raise raise) {
      at = List.of(at.get(0), at.get(1), Double.NaN);
      return null;
    }

    @Override
    public Void rapidXy(Command.RapidXy rapid) {
      return straight(Executed.Kind.RAPID, grid.mm(rapid.x()), grid.mm(rapid.y()), at.get(2), 0);
    }

    @Override
    public Void rapidZ(Command.RapidZ rapid) {
      return straight(Executed.Kind.RAPID, at.get(0), at.get(1), grid.mm(rapid.z()), 0);
    }

    @Override
    public Void line(Command.Line line) {
      return straight(
          Executed.Kind.FEED, grid.mm(line.x()), grid.mm(line.y()), grid.mm(line.z()), line.feed());
    }

    @Override
    public Void arc(Command.Arc arc) {
      double u = at.get(arc.plane().first()) + grid.mm(arc.offsetU());
      double v = at.get(arc.plane().second()) + grid.mm(arc.offsetV());
      return go(
          Executed.Kind.FEED,
          grid.mm(arc.x()),
          grid.mm(arc.y()),
          grid.mm(arc.z()),
          Optional.of(new ArcFacts(arc.plane(), arc.clockwise(), arc.radius() != 0, u, v)),
          arc.feed());
    }

    /** As NISTIR 6556, 3.5.16.2 to 3.5.16.4, with G99. */
    @Override
    public Void drill(Command.Drill drill) {
      double x = grid.mm(drill.x());
      double y = grid.mm(drill.y());
      double top = grid.mm(drill.retractZ());
      long peck = drill.peck() > 0 ? drill.peck() : drill.retractZ() - drill.bottomZ();
      straight(Executed.Kind.RAPID, x, y, at.get(2), 0);
      straight(Executed.Kind.RAPID, x, y, top, 0);
      long reached = drill.retractZ();
      while (reached > drill.bottomZ()) {
        if (reached < drill.retractZ()) {
          straight(Executed.Kind.RAPID, x, y, top, 0);
          straight(Executed.Kind.RAPID, x, y, grid.mm(reached) + BACK_OFF_MM, 0);
        }
        reached = Math.max(drill.bottomZ(), reached - peck);
        straight(Executed.Kind.FEED, x, y, grid.mm(reached), drill.feed());
      }
      return straight(Executed.Kind.RAPID, x, y, top, 0);
    }

    /** What the reading rules take for "a bit" above the bottom reached. */
    private static final double BACK_OFF_MM = 0.1;

    @Override
    public Void probe(Command.Probe probe) {
      straight(
          Executed.Kind.PROBE,
          grid.mm(probe.x()),
          grid.mm(probe.y()),
          grid.mm(probe.z()),
          probe.feed());
      at = List.of(at.get(0), at.get(1), 0.0);
      return null;
    }

    @Override
    public Void toolChange(Command.ToolChange change) {
      return null;
    }

    @Override
    public Void spindleOn(Command.SpindleOn on) {
      return null;
    }

    @Override
    public Void spindleOff(Command.SpindleOff off) {
      return null;
    }

    @Override
    public Void dwell(Command.Dwell dwell) {
      return null;
    }

    @Override
    public Void stop(Command.Stop stop) {
      return null;
    }

    @Override
    public Void torch(Command.Torch torch) {
      return null;
    }

    @Override
    public Void heightControl(Command.HeightControl control) {
      return null;
    }

    @Override
    public Void remark(Command.Remark remark) {
      return null;
    }
  }
}
