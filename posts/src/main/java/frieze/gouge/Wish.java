package frieze.gouge;

import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.design.Intent;
import frieze.design.Work;
import frieze.field.Profile;
import frieze.region.FillRule;
import frieze.region.Region;
import frieze.shop.Setup;
import java.util.List;

/**
 * What one intent permits and asks for, as depths by the distance from its outline, in the stock
 * frame.
 *
 * @param edges the outline, or the lines of a groove
 * @param inside whether a point lies within the outline; never for a groove
 * @param reachMm farther from the edges than this, the laws are constant on either side
 * @param outsideMm farther outside than this, nothing is permitted
 * @param most the deepest cut permitted at a signed distance, positive inside
 * @param least the depth that the tool could have taken for sure; by the signed distance, or, if
 *     there is an {@code openingMm}, by the distance from the nearest place where the tool's axis
 *     may stand
 * @param openingMm the distance that the tool's axis keeps from the outline; 0 for no such rule
 * @param wallAtMm the signed distance at which the wall stands; 0 unless it is finished later
 * @param outline what encloses the area, where the edges are only a part of it
 */
record Wish(
    Intent intent,
    Edges edges,
    Region.Locator inside,
    double reachMm,
    double outsideMm,
    Law most,
    Law least,
    double openingMm,
    double wallAtMm,
    Edges outline) {
  /** Edges that are a whole outline. */
  Wish(
      Intent intent,
      Edges edges,
      Region.Locator inside,
      double reachMm,
      double outsideMm,
      Law most,
      Law least,
      double openingMm,
      double wallAtMm) {
    this(intent, edges, inside, reachMm, outsideMm, most, least, openingMm, wallAtMm, edges);
  }

  /** Walls that stay where the outline is. */
  Wish(
      Intent intent,
      Edges edges,
      Region.Locator inside,
      double reachMm,
      double outsideMm,
      Law most,
      Law least,
      double openingMm) {
    this(intent, edges, inside, reachMm, outsideMm, most, least, openingMm, 0);
  }

  /** A depth by a distance, both in millimetres. */
  @FunctionalInterface
  interface Law {
    double depthMm(double distanceMm);
  }

  private static final Law NOTHING = distance -> 0;

  /** The most by which a curve of an intent departs from its edges here. */
  private static final double FLATTEN_MM = 0.0005;

  /** Whether the edges are an outline. */
  boolean enclosing() {
    return !(intent instanceof Intent.Groove);
  }

  Bounds bounds() {
    return edges.bounds().grown(outsideMm);
  }

  /**
   * How far a place lies outside of where this permits anything, 0 inside.
   *
   * @param fromEdges the distance of the place from the edges
   */
  double outside(Point place, double fromEdges) {
    boolean within = inside.contains(place);
    if (intent instanceof Intent.Through through) {
      double reach = outsideMm;
      return switch (through.side()) {
        case OUTSIDE -> within ? fromEdges : Math.max(0, fromEdges - reach);
        case INSIDE -> within ? Math.max(0, fromEdges - reach) : fromEdges;
        case ON_LINE -> Math.max(0, fromEdges - reach);
      };
    }
    if (intent instanceof Intent.InsetGroove groove && within) {
      double reach = reachMm - groove.insetMm();
      return Math.max(0, Math.abs(fromEdges - groove.insetMm()) - reach);
    }
    if (intent instanceof Intent.Edge edge) {
      return Math.max(0, fromEdges - (within ? edge.shape().widthMm() : outsideMm));
    }
    return within ? 0 : Math.max(0, fromEdges - (enclosing() ? 0 : outsideMm));
  }

  /** The deepest cut permitted at a place. */
  double permittedMm(Point place) {
    double reach =
        Math.min(reachMm, edges.near(Bounds.of(place), reachMm).distance(place.x(), place.y()));
    return most.depthMm(inside.contains(place) ? reach : -reach);
  }

  /** The wishes of an intent, at least one. */
  static List<Wish> of(Intent intent, Setup setup, double wallMm) {
    return intent.accept(new FromIntent(setup, wallMm));
  }

  private static final class FromIntent implements Intent.Visitor<List<Wish>> {
    private final Affine toStock;
    private final double through;
    private final double thickness;
    private final double thinnest;
    private final double wall;
    private final double face;
    private final double walls;

    FromIntent(Setup setup, double wallMm) {
      this.toStock = setup.stockFromPanel().affine();
      this.thickness = setup.stock().thickestMm();
      this.thinnest = setup.stock().thinnestMm();
      this.through = thickness + setup.spoilboardMm();
      this.wall = wallMm;
      this.face = setup.allowance().faceMm();
      this.walls = setup.allowance().wallsMm();
    }

    /** Straight and ball walls stand on the outline; a flank leans inwards from it. */
    @Override
    public List<Wish> recess(Intent.Recess r) {
      Region region = r.region().transformed(toStock);
      Profile tool = Profile.of(r.tool().shape());
      double depth = r.depthMm() + face;
      double proud = r.asCut() ? 0 : walls;
      if (tool.slope() > 0) {
        double lean = depth / tool.slope() + tool.kneeMm();
        return List.of(
            new Wish(
                r,
                Edges.of(region),
                region.locator(),
                lean + 2 * wall + proud,
                wall,
                d -> clamp(tool.slope() * (d - proud + wall), depth),
                d -> clamp(tool.slope() * (d - proud - wall - tool.kneeMm()), depth),
                0,
                proud));
      }
      return List.of(
          new Wish(
              r,
              Edges.of(region),
              region.locator(),
              tool.radiusMm() + 2 * wall + proud,
              wall,
              d -> d >= proud - wall ? depth : 0,
              d -> d + wall <= tool.radiusMm() ? depth - tool.heightAtMm(d + wall) : 0,
              tool.radiusMm() + proud,
              proud));
    }

    /**
     * Walls lean inwards from the outline. On the floor ridges may stay, but not where a flat tool
     * fits: the largest that may be used is taken, so any smaller one reaches there too. Above the
     * finished face the walls lean on beyond the outline; what stays there is taken by finishing.
     */
    @Override
    public List<Wish> vrecess(Intent.VRecess v) {
      Region region = v.region().transformed(toStock);
      Profile bit = Profile.of(v.tool().shape());
      double floor = v.floorMm();
      double lean = floor / bit.slope() + bit.kneeMm();
      double beyond = wall + face / bit.slope();
      double inside = wall + bit.kneeMm();
      Law most = d -> clamp(face + bit.slope() * (d + wall), face + floor);
      Law least =
          d ->
              d < inside ? 0 : clamp(face + bit.slope() * (d - inside), face + floor - v.ridgeMm());
      Edges edges = Edges.of(region);
      double reach = Math.max(lean + 2 * wall, beyond + wall);
      Wish sloping = new Wish(v, edges, region.locator(), reach, beyond, most, least, 0);
      double flat = v.floorTools().stream().mapToDouble(t -> t.radiusMm()).max().orElse(0);
      if (flat == 0) {
        return List.of(sloping);
      }
      return List.of(
          sloping,
          new Wish(
              v,
              edges,
              region.locator(),
              Math.max(floor / bit.slope() + flat + 2 * wall, beyond + wall),
              beyond,
              most,
              d -> d + 2 * wall <= flat ? face + floor : 0,
              floor / bit.slope() + flat));
    }

    @Override
    public List<Wish> groove(Intent.Groove g) {
      List<Path> lines = g.lines().stream().map(p -> p.transformed(toStock)).toList();
      Profile tool = Profile.of(g.tool().shape());
      double depth = g.depthMm() + face;
      double radius = tool.upTo(depth).radiusMm();
      double least = g.leastMm() + face;
      return List.of(
          new Wish(
              g,
              Edges.of(lines, FLATTEN_MM),
              p -> false,
              radius + 2 * wall,
              radius + wall,
              d ->
                  -d <= radius + wall
                      ? clamp(depth - tool.heightAtMm(Math.max(0, -d - wall)), depth)
                      : 0,
              d -> -d + wall <= radius ? clamp(least - tool.heightAtMm(-d + wall), least) : 0,
              0));
    }

    @Override
    public List<Wish> through(Intent.Through t) {
      Region part = t.part().transformed(toStock);
      double slot = t.side() == Work.Side.ON_LINE ? t.tool().radiusMm() : t.slotMm();
      double depth = t.skinMm() > 0 ? thinnest - t.skinMm() : through;
      double proud = t.asCut() ? 0 : proudOutwardsMm(t.side());
      double in = (t.side() == Work.Side.OUTSIDE ? wall : slot + wall) - proud;
      double out = (t.side() == Work.Side.INSIDE ? wall : slot + wall) + proud;
      return List.of(
          new Wish(
              t,
              Edges.of(part),
              part.locator(),
              slot + 2 * wall + walls,
              slot + wall + walls,
              d -> d <= in && d >= -out ? depth : 0,
              NOTHING,
              0,
              -proud));
    }

    /** How far outwards an outline's wall stands before it is finished. */
    private double proudOutwardsMm(Work.Side side) {
      return switch (side) {
        case OUTSIDE -> walls;
        case INSIDE -> -walls;
        case ON_LINE -> 0;
      };
    }

    @Override
    public List<Wish> hole(Intent.Hole h) {
      Path circle = Path.circle(h.centre(), h.diameterMm() / 2).transformed(toStock);
      Region region = Region.of(List.of(circle), FillRule.NONZERO, FLATTEN_MM);
      Profile tool = Profile.of(h.tool().shape());
      double tip = face + h.depthMm() + tool.heightAtMm(tool.radiusMm());
      boolean intoTheBoard = h.depthMm() > thickness && Double.isFinite(h.depthMm());
      double most = intoTheBoard ? tip : Math.min(tip, through);
      double least = Math.min(face + h.depthMm(), thickness);
      boolean fits = tool.radiusMm() <= h.diameterMm() / 2 + wall;
      return List.of(
          new Wish(
              h,
              Edges.of(region),
              region.locator(),
              2 * wall,
              wall,
              d -> d >= -wall ? most : 0,
              d -> fits && d >= wall ? least : 0,
              0));
    }

    /**
     * By the distance from the outline. On its inner side each point of the groove is as far from
     * the line as its distance tells, so that all of it can be asked for; on the outer side corners
     * stay rounder.
     */
    @Override
    public List<Wish> insetGroove(Intent.InsetGroove g) {
      Region part = g.part().transformed(toStock);
      double depth = g.depthMm() + face;
      Profile tool = Profile.of(g.tool().shape()).upTo(depth);
      double radius = tool.radiusMm();
      double inset = g.insetMm();
      return List.of(
          new Wish(
              g,
              Edges.of(part),
              part.locator(),
              inset + radius + 2 * wall,
              wall,
              d ->
                  d >= 0 && Math.abs(d - inset) <= radius + wall
                      ? clamp(
                          depth - tool.heightAtMm(Math.max(0, Math.abs(d - inset) - wall)), depth)
                      : 0,
              d ->
                  d >= inset && d - inset + wall <= radius
                      ? clamp(depth - tool.heightAtMm(d - inset + wall), depth)
                      : 0,
              0,
              inset));
    }

    @Override
    public List<Wish> edge(Intent.Edge e) {
      return EdgeWishes.of(e, toStock, face, wall);
    }

    private static double clamp(double depth, double most) {
      return Math.max(0, Math.min(most, depth));
    }
  }
}
