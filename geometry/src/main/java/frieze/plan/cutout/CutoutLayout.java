package frieze.plan.cutout;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.CornerRelief;
import frieze.design.CutoutWay;
import frieze.design.Design;
import frieze.design.Tabs;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.plan.cut.AreaLayout;
import frieze.plan.cut.Block;
import frieze.plan.cut.Cut;
import frieze.plan.cut.DepthPasses;
import frieze.plan.cut.Easing;
import frieze.plan.cut.Entries;
import frieze.plan.cut.Feeds;
import frieze.plan.cut.Fitting;
import frieze.plan.cut.Outline;
import frieze.plan.cut.PlanCode;
import frieze.plan.cut.RimLoad;
import frieze.plan.cut.Track;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import frieze.shop.Setup;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Plans the outlines of one cutout: worked out once for each size, then placed and given tabs. */
public final class CutoutLayout {
  /** The finishing track may lie this many times the stock left away from the roughing one. */
  private static final double MOST_LEFT = 2;

  private static final double SAMPLE_MM = 0.5;

  private static final double ROUNDING = 1e-9;

  private final Design design;
  private final Work.Cutout cutout;
  private final Setup setup;
  private final Tolerances tolerances;
  private final Diagnostics found;
  private int geometryCalls;

  public CutoutLayout(
      Design design, Work.Cutout cutout, Setup setup, Tolerances tolerances, Diagnostics found) {
    this.design = design;
    this.cutout = cutout;
    this.setup = setup;
    this.tolerances = tolerances;
    this.found = found;
  }

  public int geometryCalls() {
    return geometryCalls;
  }

  /**
   * The tracks along one outline.
   *
   * @param rough the first one, which may leave something on the wall
   * @param finish those that creep up on the wall, the last one at it; empty if the first one is
   */
  record Lap(Track rough, List<Track> finish) {
    Lap {
      finish = List.copyOf(finish);
    }

    /** The same, begun at another place of the first track. */
    Lap from(double startMm) {
      return new Lap(rough.startingAt(startMm % rough.lengthMm()), finish);
    }

    Lap placed(Affine map) {
      return new Lap(moved(rough, map), finish.stream().map(f -> moved(f, map)).toList());
    }

    private static Track moved(Track track, Affine map) {
      Track there = track.transformed(map);
      return map.isMirroring() ? there.reversed() : there;
    }
  }

  /** The cuts of each outline. */
  public List<Block> blocks(Feeds feeds) {
    List<Block> blocks = new ArrayList<>();
    CutoutWay way = cutout.way();
    if (way.on().isEmpty()) {
      geometryCalls++;
      for (Lap lap : laps(design.panel().outline())) {
        blocks.add(block(ways("cutout " + design.panel().name(), lap, feeds), feeds));
      }
      return blocks;
    }
    AreaLayout<List<Lap>> layout =
        new AreaLayout<>(
            design,
            cutout.operation(),
            way.on().get(),
            tolerances,
            this::laps,
            (laps, map) -> laps.stream().map(l -> l.placed(map)).toList());
    for (AreaLayout.Item<List<Lap>> item : layout.items()) {
      block(item, feeds).ifPresent(blocks::add);
    }
    geometryCalls += layout.geometryCalls();
    return blocks;
  }

  /** All outlines of an area stay together; a single one may be entered at several places. */
  private Optional<Block> block(AreaLayout.Item<List<Lap>> item, Feeds feeds) {
    List<List<CutoutPlanner.Made>> ways =
        item.result().stream().map(lap -> ways(item.name(), lap, feeds)).toList();
    if (ways.size() == 1) {
      return Optional.of(block(ways.get(0), feeds));
    }
    List<CutoutPlanner.Made> all = ways.stream().map(w -> w.get(0)).toList();
    return all.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Easing.block(
                List.of(all.stream().map(CutoutPlanner.Made::cut).toList()),
                cuts -> all.stream().map(m -> eased(m, feeds)).toList()));
  }

  private Block block(List<CutoutPlanner.Made> ways, Feeds feeds) {
    return new Block(
        ways.stream().map(w -> Block.ends(List.of(w.cut()))).toList(),
        way -> List.of(eased(ways.get(way), feeds)));
  }

  /** The cut slowed where its finishing laps or its slot take too much at once. */
  private Cut eased(CutoutPlanner.Made made, Feeds feeds) {
    Tool tool = cutout.tool();
    double pass = DepthPasses.limitMm(tool, setup.stock().material());
    double whole = -made.cut().moves().stream().mapToDouble(m -> m.path().to().z()).min().orElse(0);
    boolean wallOnRight = cutout.milling() == Work.Milling.CLIMB;
    return new Easing(tool, feeds, wallOnRight, new RimLoad(tool.radiusMm(), p -> true))
        .eased(made.cut(), i -> i < made.roughMoves() ? pass : whole);
  }

  private List<Lap> laps(Path outline) {
    CutoutWay way = cutout.way();
    if (way.side() == Work.Side.INSIDE) {
      return laps(Region.of(List.of(outline), FillRule.NONZERO, tolerances.flattenMm()));
    }
    if (way.side() == Work.Side.ON_LINE) {
      return Fitting.track(outline, tolerances).stream()
          .map(t -> new Lap(directed(t), List.of()))
          .toList();
    }
    double radius = cutout.tool().radiusMm() + setup.allowance().wallsMm();
    Region area = Region.of(List.of(outline), FillRule.NONZERO, tolerances.flattenMm());
    tellLeftRound(area);
    Track wall = outside(outline, area, radius);
    if (way.leaveMm() == 0) {
      return List.of(new Lap(wall, List.of()));
    }
    List<List<Track>> laps = new ArrayList<>();
    for (double left : left()) {
      laps.add(List.of(outside(outline, area, radius + left)));
    }
    return List.of(paired(wall, laps));
  }

  private Track outside(Path outline, Region area, double distanceMm) {
    Track track = Outline.outside(outline, distanceMm, tolerances);
    return directed(Reliefs.into(track, reliefs(area, distanceMm)));
  }

  private List<CornerRelief.Place> reliefs(Region area, double distanceMm) {
    CutoutWay way = cutout.way();
    double radius = cutout.tool().radiusMm();
    double proud = setup.allowance().wallsMm();
    CornerRelief.Lap lap = new CornerRelief.Lap(way.corners(), radius, distanceMm - radius, proud);
    return CornerRelief.of(area, way.side(), lap).places();
  }

  private void tellLeftRound(Region area) {
    CutoutWay way = cutout.way();
    double proud = setup.allowance().wallsMm();
    CornerRelief.Lap lap =
        new CornerRelief.Lap(way.corners(), cutout.tool().radiusMm(), proud, proud);
    List<Point> round = CornerRelief.of(area, way.side(), lap).leftRound();
    if (!round.isEmpty()) {
      found.warning(
          PlanCode.CORNERS_LEFT_ROUND,
          cutout.where(),
          round.size()
              + " inside corners stay round, the first at "
              + Amounts.place(round.get(0).x(), round.get(0).y())
              + " of the outline",
          "corners are relieved that turn 45 to 120 degrees between sides that the tool touches");
    }
  }

  private List<Lap> laps(Region area) {
    tellLeftRound(area);
    CutoutWay way = cutout.way();
    double sign =
        switch (way.side()) {
          case OUTSIDE -> 1;
          case INSIDE -> -1;
          case ON_LINE -> 0;
        };
    double radius = cutout.tool().radiusMm() + setup.allowance().wallsMm();
    List<Track> walls = tracks(area, sign, radius);
    List<List<Track>> laps = new ArrayList<>();
    for (double left : sign == 0 ? List.<Double>of() : left()) {
      laps.add(tracks(area, sign, radius + left));
    }
    return walls.stream()
        .map(w -> laps.isEmpty() ? new Lap(w, List.of()) : paired(w, laps))
        .toList();
  }

  /**
   * What each lap but the last leaves on the wall, the roughing one first; none to leave nothing.
   */
  private List<Double> left() {
    List<Double> left = new ArrayList<>();
    double all = cutout.way().leaveMm();
    int steps = cutout.way().steps();
    for (int i = steps; i > 0 && all > 0; i--) {
      left.add(all * i / steps);
    }
    return left;
  }

  /** The inner outlines come first, while what they are in is not yet free. */
  private List<Track> tracks(Region area, double sign, double distanceMm) {
    Region region = Offset.offset(area, sign * distanceMm, tolerances.offsetMm());
    List<CornerRelief.Place> reliefs = reliefs(area, distanceMm);
    List<Track> tracks = new ArrayList<>();
    for (boolean holes : new boolean[] {true, false}) {
      for (Ring ring : region.rings()) {
        if (ring.hole() == holes) {
          Track track = new Track(Fitting.fit(ring.points(), true, tolerances));
          tracks.add(directed(Reliefs.into(track, reliefs)));
        }
      }
    }
    return tracks;
  }

  /** Turns a track that has what it encloses on its left. */
  private Track directed(Track track) {
    boolean climb = cutout.milling() == Work.Milling.CLIMB;
    boolean wallOnLeft = cutout.way().side() != Work.Side.INSIDE;
    return climb == wallOnLeft ? track.reversed() : track;
  }

  /** The wall's track with the laps beside it; alone where none runs beside all of it. */
  private Lap paired(Track wall, List<List<Track>> laps) {
    List<Track> beside = new ArrayList<>();
    for (List<Track> lap : laps) {
      lap.stream().filter(c -> runsBeside(c, wall)).findFirst().ifPresent(beside::add);
    }
    if (beside.size() == laps.size()) {
      List<Track> finish = new ArrayList<>(beside.subList(1, beside.size()));
      finish.add(wall);
      return new Lap(beside.get(0), finish);
    }
    found.warning(
        PlanCode.NO_ROOM_TO_FINISH,
        cutout.where(),
        "there is no room to leave "
            + Amounts.length(cutout.way().leaveMm())
            + " on the wall and take it last: the outline is cut at once to its size",
        "use a smaller tool, or leave less");
    return new Lap(wall, List.of());
  }

  private boolean runsBeside(Track candidate, Track wall) {
    double most = MOST_LEFT * cutout.way().leaveMm();
    for (double s = 0; s < wall.lengthMm(); s += SAMPLE_MM) {
      Point p = wall.pointAt(s);
      if (candidate.pointAt(candidate.nearestMm(p)).distance(p) > most) {
        return false;
      }
    }
    return true;
  }

  /**
   * The cut along an outline, begun behind each of its tabs, or where it has none at several
   * places.
   */
  private List<CutoutPlanner.Made> ways(String origin, Lap lap, Feeds feeds) {
    Tool tool = cutout.tool();
    double skin = cutout.way().skinMm();
    double depth =
        skin > 0
            ? setup.stock().thinnestMm() - skin
            : setup.stock().thickestMm() + setup.spoilboardMm();
    double limit = DepthPasses.limitMm(tool, setup.stock().material());
    Optional<Tabs> tabs = cutout.tabs().map(t -> sized(origin, t, lap, feeds, limit));
    double tabDepth = setup.stock().thinnestMm() - tabs.map(Tabs::thicknessMm).orElse(0.0);
    boolean wanted = tabs.map(Tabs::ramped).orElse(false);
    double slope = wanted ? (depth - tabDepth) / StrictMath.tan(CutoutPlanner.TAB_SLOPE_RAD) : 0;
    TabPlaces places = new TabPlaces(cutout, setup, found);
    if (skin > 0 && tabs.isEmpty()) {
      places.checkSkin(lap.rough());
    }
    Optional<List<TabPlan.Zone>> sloping =
        wanted ? tabs.flatMap(t -> places.place(t, lap.rough(), slope)) : Optional.empty();
    if (wanted && sloping.isEmpty()) {
      upright(origin);
    }
    List<TabPlan.Zone> zones =
        sloping.orElseGet(() -> tabs.map(t -> places.upright(t, lap.rough())).orElse(List.of()));
    CutoutPlanner.Passes passes =
        new CutoutPlanner.Passes(
            DepthPasses.depths(depth, limit), limit, zones, tabDepth, sloping.isPresent());
    List<Double> starts =
        zones.isEmpty()
            ? Entries.of(lap.rough(), tool.diameterMm())
            : zones.stream().map(TabPlan.Zone::toMm).toList();
    double round = lap.rough().lengthMm();
    return starts.stream()
        .map(s -> new CutoutPlanner(tool, feeds, passes.from(s, round)).cut(origin, lap.from(s)))
        .toList();
  }

  /** The tabs, as wide as the pull of the bit and the weight of what they hold ask for. */
  private Tabs sized(String origin, Tabs tabs, Lap lap, Feeds feeds, double passMm) {
    double area = TabLoad.areaMm2(lap.rough(), tolerances.flattenMm());
    double needed = TabLoad.neededMm2(cutout.tool(), feeds, passMm, setup.stock(), area);
    Tabs sized = TabLoad.sized(tabs, needed);
    if (TabLoad.isWeak(sized, needed * (1 - ROUNDING))) {
      found.warning(
          PlanCode.TABS_WEAK,
          cutout.where(),
          TabLoad.weakText(origin, sized, needed),
          "ask for more, wider or thicker tabs, or leave their width to the load");
    }
    return sized;
  }

  private void upright(String origin) {
    found.warning(
        PlanCode.TABS_UPRIGHT,
        cutout.where(),
        origin + ": the tabs of a short outline have upright ends, as ramped ones do not fit",
        "ask for fewer or thinner tabs");
  }
}
