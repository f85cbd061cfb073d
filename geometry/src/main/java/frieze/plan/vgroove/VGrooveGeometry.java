package frieze.plan.vgroove;

import frieze.curve.Affine;
import frieze.curve.Tolerances;
import frieze.design.Work;
import frieze.motion.Position;
import frieze.plan.recess.RecessGeometry;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.region.Ring;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All that is worked out of an area that a V-bit carves: what a flat tool clears first, the V-bit's
 * strokes for each pass, and what stays out of reach.
 *
 * <p>Guarantees: the cone at every point of every stroke stays inside the outline, and the cones
 * together reach it wherever the tip fits in, both within the tolerances; the flat tool keeps clear
 * of the walls; ridges on the part of the floor that the V-bit has to take are no higher than
 * asked.
 */
final class VGrooveGeometry {
  /** A flat tool that reaches at least this part of the floor is large enough. */
  private static final double ENOUGH = 0.8;

  private final Work.VGroove work;
  private final VCutter bit;
  private final double limitMm;
  private final Tolerances t;

  /**
   * What is cleared with a flat tool.
   *
   * @param tool empty if there is no floor, or no tool fits on it
   */
  record Floor(Optional<Tool> tool, List<RecessGeometry.Chain> chains) {}

  /**
   * What comes of an area.
   *
   * @param parts the strokes of each connected part, in order
   * @param deepestMm how deep the tip goes
   * @param widestMm the wall's largest distance from the axis that the shape would give
   * @param unreached what is narrower than the flat tip
   */
  record Result(
      Floor floor, List<List<Stroke>> parts, double deepestMm, double widestMm, Region unreached) {
    /** This result elsewhere; the map must not mirror. */
    Result placed(Affine map) {
      return new Result(
          new Floor(floor.tool(), floor.chains().stream().map(c -> c.placed(map)).toList()),
          parts.stream().map(strokes -> strokes.stream().map(s -> s.placed(map)).toList()).toList(),
          deepestMm,
          widestMm,
          unreached.transformed(map));
    }
  }

  /**
   * Prepares.
   *
   * @param limitMm the most that the V-bit takes in one pass
   * @param proudMm how much the stock's top stands above the finished face
   */
  VGrooveGeometry(Work.VGroove work, double limitMm, double proudMm, Tolerances tolerances) {
    this.work = work;
    this.bit = VCutter.of(work.tool(), work.floorMm(), proudMm);
    this.limitMm = limitMm;
    this.t = tolerances;
  }

  /** Works out an area. */
  Result of(Region area) {
    Region floor = Offset.offset(area, -bit.wallWidthMm(), t.offsetMm());
    // Clear of the wall by what the tolerances may add up to; the V-bit takes that too.
    Region flat = Offset.offset(floor, -t.totalMm(), t.offsetMm());
    Floor cleared = clear(flat);
    Region rest =
        floor.isEmpty() || cleared.tool().isEmpty()
            ? floor
            : RecessGeometry.leftover(flat, cleared.tool().get().radiusMm(), t);
    List<List<Stroke>> parts = new ArrayList<>();
    double deepest = 0;
    double widest = 0;
    for (Region part : area.parts()) {
      VNetwork network = network(part, rest);
      deepest = Math.max(deepest, network.deepestMm());
      widest = Math.max(widest, network.widestMm());
      List<Stroke> strokes = strokes(network);
      if (!strokes.isEmpty()) {
        parts.add(strokes);
      }
    }
    return new Result(cleared, parts, deepest, widest, unreached(area));
  }

  /** The largest tool that reaches most of the floor, or else the one that reaches most of all. */
  private Floor clear(Region floor) {
    Optional<Tool> best = Optional.empty();
    double reached = 0;
    List<Tool> candidates =
        work.floorTools().stream()
            .sorted(Comparator.comparingDouble(tool -> -tool.diameterMm()))
            .toList();
    for (Tool tool : floor.isEmpty() ? List.<Tool>of() : candidates) {
      double area = floor.area() - RecessGeometry.leftover(floor, tool.radiusMm(), t).area();
      boolean fits = !Offset.offset(floor, -tool.radiusMm(), t.offsetMm()).isEmpty();
      if (fits && area > reached) {
        best = Optional.of(tool);
        reached = area;
      }
      if (reached >= ENOUGH * floor.area()) {
        break;
      }
    }
    return new Floor(best, best.map(tool -> chains(floor, tool)).orElse(List.of()));
  }

  private List<RecessGeometry.Chain> chains(Region floor, Tool tool) {
    RecessGeometry.Cutter cutter =
        new RecessGeometry.Cutter(
            tool.radiusMm(), FLOOR_STEPOVER * tool.diameterMm(), work.milling());
    return RecessGeometry.of(floor, floor, cutter, t).chains();
  }

  /** The stepover on the floor, as a part of the diameter: common practice. */
  private static final double FLOOR_STEPOVER = 0.4;

  private VNetwork network(Region part, Region rest) {
    Region atFloor = Offset.offset(part, -bit.floorWallMm(), t.offsetMm());
    List<Ring> inner = new ArrayList<>();
    if (!atFloor.isEmpty() && !rest.isEmpty()) {
      double step = bit.stepoverMm(work.ridgeMm());
      Region near =
          Offset.offset(rest.intersection(part), step, t.offsetMm()).intersection(atFloor);
      for (Region level : Offset.inwardRings(near, 0, step, t.offsetMm())) {
        inner.addAll(level.equals(near) ? List.of() : level.rings());
      }
    }
    return VNetwork.of(part, atFloor, inner, bit, t, work.milling() == Work.Milling.CLIMB);
  }

  private List<Stroke> strokes(VNetwork network) {
    List<Stroke> strokes = new ArrayList<>();
    VLevel before = VLevel.NOTHING;
    SpaceFit fit = new SpaceFit(bit.tangent(), Math.min(t.arcFitMm(), FIT_MM));
    for (VLevel level : VLevel.of(network.deepestMm(), limitMm, work.lastPassMm())) {
      RailGraph graph = new RailGraph();
      Cleared cleared = new Cleared(level, before);
      for (Rail rail : network.rails()) {
        rail.cutBy(level, before).forEach(graph::add);
      }
      for (List<Rail> run : graph.strokes(p -> cleared.z(p) - p.z())) {
        strokes.add(stroke(run, cleared, fit));
      }
      before = level;
    }
    return strokes;
  }

  /** Less than the arcs' own budget, so that flattening and text still fit into 0.01 mm. */
  private static final double FIT_MM = 0.004;

  private static Stroke stroke(List<Rail> run, Cleared cleared, SpaceFit fit) {
    Position start = run.get(0).first();
    List<Stroke.Piece> pieces = new ArrayList<>();
    for (Rail rail : run) {
      if (rail.points().size() > 1) {
        pieces.addAll(fit.pieces(rail.points()));
      }
    }
    return new Stroke(start, cleared.z(start), pieces);
  }

  /** How deep the passes before have cut on a rail. */
  private record Cleared(VLevel level, VLevel before) {
    /** Z there, from the depth that the present pass goes to. */
    double z(Position p) {
      double cut = -p.z();
      // A pass that is capped is as deep as its cap; one that leaves a little asks for that more.
      double asked =
          cut >= level.mostMm() ? level.mostMm() + level.leaveMm() : cut + level.leaveMm();
      return -Math.min(cut, before.depthMm(asked));
    }
  }

  private Region unreached(Region area) {
    return bit.tipRadiusMm() == 0
        ? Region.EMPTY
        : RecessGeometry.leftover(area, bit.tipRadiusMm(), t);
  }
}
