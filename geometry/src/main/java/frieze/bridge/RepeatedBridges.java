package frieze.bridge;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Ties the islands of a panel whose openings are motifs, so that bridges repeat with the motif.
 *
 * <p>Each distinct motif is tied once, in a frame of its own as if it stood alone in a large sheet;
 * a placement moves or mirrors the finished bridges. What is still loose on the panel (islands
 * between motifs that overlap) is tied afterwards, each where it is.
 */
public final class RepeatedBridges {
  /** Sizes of one motif that differ by less are one size. */
  private static final double SAME_SCALE = 1e-9;

  /** Openings that overlap by less touch by rounding. */
  private static final double NOTHING_MM2 = 1e-3;

  private RepeatedBridges() {}

  /**
   * A motif that is cut out, once or several times.
   *
   * @param name for messages
   * @param opening what is cut out, in the motif's frame; islands are its holes
   * @param veins centre lines in the same frame
   * @param placements from the motif's frame to the panel's; similarities
   */
  public record Cutting(String name, Region opening, List<Path> veins, List<Affine> placements) {
    public Cutting {
      veins = List.copyOf(veins);
      placements = List.copyOf(placements);
      for (Affine map : placements) {
        if (!map.isSimilarity()) {
          throw new IllegalArgumentException("placements must be similarities but one is " + map);
        }
      }
    }
  }

  /**
   * Cuts motifs out of a panel and ties what would fall.
   *
   * @param panel the area within the panel's outline
   * @param where the place in the job to name
   */
  public static Bridged tie(
      Region panel, List<Cutting> cuttings, BridgeRules rules, SourceSpan where) {
    Diagnostics found = new Diagnostics();
    Region material = material(panel, cuttings, where, found);
    if (material.isEmpty()) {
      found.error(BridgeCode.NO_MATERIAL, where, "the openings leave nothing of the panel", "");
      return new Bridged(material, List.of(), 0, found.sorted());
    }
    Bridged tied = tieWithin(material, cuttings, rules, where);
    found.addAll(tied.found());
    return new Bridged(tied.material(), tied.held(), tied.pieces(), found.sorted());
  }

  /**
   * Ties what would fall in a material that the motifs have been cut out of already.
   *
   * @param material the panel less the openings of all placements
   * @param where the place in the job to name
   */
  public static Bridged tieWithin(
      Region material, List<Cutting> cuttings, BridgeRules rules, SourceSpan where) {
    Region tied = material;
    List<Bridged.Held> held = new ArrayList<>();
    for (Cutting cutting : cuttings) {
      for (Bridged.Held one : placed(cutting, rules, where)) {
        held.add(one);
        for (Bridge bridge : one.bridges()) {
          tied = tied.union(bridge.area());
        }
      }
    }
    List<Path> veins = new ArrayList<>();
    for (Cutting cutting : cuttings) {
      for (Affine map : cutting.placements()) {
        cutting.veins().forEach(v -> veins.add(v.transformed(map)));
      }
    }
    Bridged rest = Bridges.tie(tied, veins, rules, where);
    held.addAll(rest.held());
    return new Bridged(rest.material(), held, rest.pieces(), rest.found());
  }

  /** The islands of all placements with bridges that were planned once for each size. */
  private static List<Bridged.Held> placed(Cutting cutting, BridgeRules rules, SourceSpan where) {
    Map<Long, Bridged> bySize = new LinkedHashMap<>();
    List<Bridged.Held> held = new ArrayList<>();
    for (Affine map : cutting.placements()) {
      double scale = map.scale();
      long key = Math.round(Math.log(scale) / SAME_SCALE);
      Bridged alone = bySize.computeIfAbsent(key, k -> alone(cutting, scale, rules, where));
      Affine rest = Affine.scaling(1 / scale, 1 / scale).then(map);
      for (Bridged.Held one : alone.held()) {
        List<Bridge> moved = one.bridges().stream().map(b -> b.transformed(rest)).toList();
        held.add(new Bridged.Held(one.island().transformed(rest), moved, one.loadN()));
      }
    }
    return held;
  }

  private static Bridged alone(Cutting cutting, double scale, BridgeRules rules, SourceSpan where) {
    Affine size = Affine.scaling(scale, scale);
    Region opening = cutting.opening().transformed(size);
    Region sheet = Region.ofRing(opening.bounds().grown(4 * rules.widthMm()).corners());
    List<Path> veins = cutting.veins().stream().map(v -> v.transformed(size)).toList();
    return Bridges.tie(sheet.minus(opening), veins, rules, where);
  }

  /** The panel less all openings; tells of openings that touch the outline or each other. */
  private static Region material(
      Region panel, List<Cutting> cuttings, SourceSpan where, Diagnostics found) {
    Region cut = Region.EMPTY;
    for (Cutting cutting : cuttings) {
      int number = 0;
      for (Affine map : cutting.placements()) {
        number++;
        Region opening = cutting.opening().transformed(map);
        String name = cutting.name() + " " + number;
        Region shared = opening.intersection(cut);
        if (shared.area() > NOTHING_MM2) {
          Point at = shared.bounds().centre();
          found.warning(
              BridgeCode.OPENINGS_OVERLAP,
              where,
              "the opening "
                  + name
                  + " overlaps another by "
                  + Amounts.area(shared.area())
                  + " at "
                  + Amounts.place(at.x(), at.y()),
              "they are cut as one; move them apart to keep metal between them");
        }
        cut = cut.union(opening);
        touches(panel, opening, name, where, found);
      }
    }
    return panel.minus(cut);
  }

  private static void touches(
      Region panel, Region opening, String name, SourceSpan where, Diagnostics found) {
    if (opening.isEmpty()) {
      return;
    }
    frieze.region.BoundaryDistance outline = frieze.region.BoundaryDistance.of(panel);
    double least = Double.POSITIVE_INFINITY;
    Point at = Point.ORIGIN;
    for (frieze.region.Ring ring : opening.rings()) {
      for (Point p : ring.points()) {
        double d = outline.signed(p);
        if (d < least) {
          least = d;
          at = p;
        }
      }
    }
    if (least <= Pieces.CONTACT_MM) {
      found.error(
          BridgeCode.TOUCHES_OUTLINE,
          where,
          "the opening "
              + name
              + (least < -Pieces.CONTACT_MM
                  ? " reaches " + Amounts.length(-least) + " beyond"
                  : " touches")
              + " the outline at "
              + Amounts.place(at.x(), at.y()),
          "make the motif smaller, or the inset larger");
    }
  }
}
