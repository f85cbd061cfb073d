package frieze.plan.cut;

import frieze.motion.Motion;
import frieze.motion.Motions;
import frieze.motion.Plane;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.function.UnaryOperator;
import java.util.stream.IntStream;

/**
 * Lowers the feed of moves where more of the tool's rim stands in material than it may, and on
 * tight arcs along the inside of a wall.
 *
 * <p><i>Guarantees:</i> no feed is raised; paths stay the same, some in several pieces.
 *
 * <ul>
 *   <li>Beyond the limit the feed is (1 - cos limit) / (1 - cos angle) of the full one: what is
 *       removed in a minute stays what it is at the limit. Half the feed in a slot for a limit of
 *       90 degrees is common practice; the rule between is ours.
 *   <li>On an arc of the tool's middle of a radius of less than {@value #TIGHT} tool radii, with
 *       the wall outside or on the way down, the feed is that of {@link Feeds#insideOf}.
 *   <li>The lower feed begins and ends {@value #EARLY} radii before and after. Feeds change in
 *       steps of a twentieth of the full one, downward.
 * </ul>
 */
public final class Easing {
  /** Deeper than one diameter a tool may have this much of its rim engaged: common practice. */
  private static final double DEEP_LIMIT_RAD = Math.PI / 2;

  private static final double STEPS = 20;
  private static final double TIGHT = 4;
  private static final double EARLY = 0.5;
  private static final double ROUNDING = 1e-9;

  private final Tool tool;
  private final Feeds feeds;
  private final boolean wallOnRight;
  private final RimLoad load;
  private final RimUse.Tally tally = new RimUse.Tally();
  private boolean reports;

  /**
   * Prepares for the cuts of one area.
   *
   * @param wallOnRight of the travel
   * @param load knows what is cut
   */
  public Easing(Tool tool, Feeds feeds, boolean wallOnRight, RimLoad load) {
    this.tool = tool;
    this.feeds = feeds;
    this.wallOnRight = wallOnRight;
    this.load = load;
  }

  /** A stretch of a move, the fastest part of the full feed there, and its length. */
  private record Paced(int move, RimLoad.Stretch stretch, double part, double lengthMm) {}

  /**
   * The most of its rim that a tool may have in material at its full feed where it takes a depth.
   */
  static double limitRad(Tool tool, double takesMm) {
    if (tool.shape() instanceof ToolShape.Vee || tool.shape() instanceof ToolShape.Drill) {
      return Math.PI; // they cut all around by their shape
    }
    double usual = takesMm > tool.diameterMm() * (1 + ROUNDING) ? DEEP_LIMIT_RAD : Math.PI;
    return tool.engagementRad().orElse(usual);
  }

  /** The part of the full feed for an angle. */
  static double part(double rimRad, double limitRad) {
    return rimRad <= limitRad
        ? 1
        : (1 - StrictMath.cos(limitRad)) / (1 - StrictMath.cos(Math.min(Math.PI, rimRad)));
  }

  /** Cuts that may be made in one of several ways, each eased when it is asked for. */
  public static Block block(List<List<Cut>> ways, UnaryOperator<List<Cut>> eased) {
    return new Block(ways.stream().map(Block::ends).toList(), way -> eased.apply(ways.get(way)));
  }

  /** The feeds of a tool that cuts nothing but slots. */
  public static Feeds slots(Tool tool, Feeds feeds, double takesMm) {
    return feeds.slowed(steps(part(Math.PI, limitRad(tool, takesMm))));
  }

  /** Tells that a tool is slowed in slots; empty if it is not. */
  public static Optional<String> slotNote(String work, Tool tool, double takesMm) {
    double limit = limitRad(tool, takesMm);
    return limit == Math.PI
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "%s: %s has 180 deg of its rim in a slot and may have %.0f; it is slowed to %.0f%%"
                    + " of its feed",
                work,
                tool.name(),
                Math.toDegrees(limit),
                100 * steps(part(Math.PI, limit))));
  }

  /** Tells how much is slowed and by how much. */
  public static String note(RimUse rim) {
    RimUse.Beyond beyond = rim.beyond();
    return String.format(
        Locale.ROOT,
        "%s: %s has up to %.0f deg of its rim in material where it may have %.0f; on %s of its way"
            + " it is slowed, down to %.0f%% of its feed (along half of its way it has no more than"
            + " %.0f deg)",
        rim.work(),
        rim.tool().name(),
        Math.toDegrees(beyond.mostRad()),
        Math.toDegrees(beyond.limitRad()),
        beyond.part() < 0.01
            ? "less than 1%"
            : String.format(Locale.ROOT, "%.0f%%", 100 * beyond.part()),
        100 * beyond.slowest(),
        Math.toDegrees(rim.usualRad()));
  }

  /** What was met so far. */
  public RimUse.Tally tally() {
    return tally;
  }

  /** Measures also where nothing comes of it, at the floors of cuts, for a report. */
  public Easing reporting() {
    reports = true;
    return this;
  }

  /**
   * The next cut with its feeds lowered.
   *
   * @param takesMm the depth that it takes at once
   */
  public Cut eased(Cut cut, double takesMm) {
    return eased(cut, i -> takesMm);
  }

  /**
   * The next cut with its feeds lowered.
   *
   * @param takesMm the depth that each move takes at once
   */
  public Cut eased(Cut cut, IntToDoubleFunction takesMm) {
    int count = cut.moves().size();
    boolean asked =
        IntStream.range(0, count).anyMatch(i -> limitRad(tool, takesMm.applyAsDouble(i)) < Math.PI);
    double floor = cut.end().z();
    List<Paced> paced = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      Motion path = cut.moves().get(i).path();
      double limit = limitRad(tool, takesMm.applyAsDouble(i));
      boolean atFloor = path.from().z() == floor && path.to().z() == floor;
      if (limit < Math.PI || (reports && atFloor)) {
        measured(i, path, limit, paced);
      } else {
        if (asked) {
          load.pass(path);
        }
        paced.add(new Paced(i, RimLoad.Stretch.UNKNOWN, steps(turning(path)), path.lengthMm()));
      }
    }
    double[] parts = widened(paced);
    List<Cut.Move> moves = new ArrayList<>();
    for (int from = 0; from < parts.length; ) {
      int to = from + 1;
      while (to < parts.length
          && parts[to] == parts[from]
          && paced.get(to).move() == paced.get(from).move()) {
        to++;
      }
      Cut.Move whole = cut.moves().get(paced.get(from).move());
      double end = paced.get(to - 1).stretch().to();
      moves.add(piece(whole, paced.get(from).stretch().from(), end, parts[from]));
      from = to;
    }
    return new Cut(cut.origin(), cut.tool(), cut.spindleRpm(), moves, cut.peckMm());
  }

  private void measured(int move, Motion path, double limit, List<Paced> into) {
    double turning = turning(path);
    for (RimLoad.Stretch stretch : load.next(path)) {
      double length = path.lengthMm() * (stretch.to() - stretch.from());
      double part = steps(Math.min(turning, part(stretch.rimRad(), limit)));
      into.add(new Paced(move, stretch, part, length));
      tally.add(stretch.rimRad(), length, limit, steps(part(stretch.rimRad(), limit)));
    }
  }

  private Cut.Move piece(Cut.Move whole, double from, double to, double part) {
    double feed = Math.min(whole.feedMmPerMin(), part * feeds.feedMmPerMin());
    Motion path = from == 0 && to == 1 ? whole.path() : Motions.part(whole.path(), from, to);
    return new Cut.Move(path, part == 1 ? whole.feedMmPerMin() : feed);
  }

  /** The part for the turning of a move. */
  private double turning(Motion path) {
    boolean tight =
        path instanceof Motion.Turn turn
            && turn.plane() == Plane.XY
            && (turn.sweepRad() > 0 == wallOnRight || turn.to().z() < turn.from().z())
            && turn.radiusMm() < TIGHT * tool.radiusMm();
    return tight
        ? feeds.insideOf(((Motion.Turn) path).radiusMm(), tool.radiusMm()).feedMmPerMin()
            / feeds.feedMmPerMin()
        : 1;
  }

  private static double steps(double part) {
    return Math.max(1, Math.floor(part * STEPS + ROUNDING)) / STEPS;
  }

  /** The parts, each the least of those nearby. */
  private double[] widened(List<Paced> paced) {
    double near = EARLY * tool.radiusMm();
    double[] parts = new double[paced.size()];
    for (int i = 0; i < parts.length; i++) {
      parts[i] = paced.get(i).part();
      double back = 0;
      for (int k = i - 1; k >= 0 && back < near; k--) {
        parts[i] = Math.min(parts[i], paced.get(k).part());
        back += paced.get(k).lengthMm();
      }
      double on = 0;
      for (int k = i + 1; k < parts.length && on < near; k++) {
        parts[i] = Math.min(parts[i], paced.get(k).part());
        on += paced.get(k).lengthMm();
      }
    }
    return parts;
  }
}
