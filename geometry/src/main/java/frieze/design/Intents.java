package frieze.design;

import frieze.curve.Affine;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.layout.Placement;
import frieze.region.FillRule;
import frieze.region.Region;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Works out what a design wants of the stock, from the artwork's own boundary and the placements.
 *
 * <p>Nothing here knows of offsets or toolpaths, so that the result can judge them.
 */
public final class Intents {
  /** Farther than any tool goes on beyond the end of a side. */
  private static final double PASSING_MM = 120;

  private Intents() {}

  /**
   * Lists the intents, in the order of the work list and of the placements.
   *
   * @param flattenMm the most by which a region departs from the drawn curves
   */
  public static List<Intent> of(Design design, double flattenMm) {
    Collector collector = new Collector(design, flattenMm);
    for (Work work : design.work()) {
      work.accept(collector);
    }
    return collector.intents;
  }

  /** A part that a torch frees from its sheet, with its openings. */
  public static Intent torchPart(String name, Region part, Work.TorchCut work) {
    return new Intent.Through(name, part, work.tool(), Work.Side.OUTSIDE, work.torch().kerfMm(), 0);
  }

  /** The name of the work at a placement, such as {@code recess ginkgo 3}. */
  public static String name(Work work, Placement placement) {
    return work.operation() + " " + placement.motif() + " " + placement.number();
  }

  private static final class Collector implements Work.Visitor<Void> {
    private final Design design;
    private final double flattenMm;
    private final List<Intent> intents = new ArrayList<>();

    Collector(Design design, double flattenMm) {
      this.design = design;
      this.flattenMm = flattenMm;
    }

    @Override
    @SuppressWarnings("NullAway") // the result of a visit that only collects
    public Void groove(Work.Groove groove) {
      for (Placement placement : design.placementsOf(groove.on().motif())) {
        Motif motif = design.motifAt(placement);
        List<Path> lines = Selection.lines(motif, groove.on());
        Map<Path, Double> widths = Selection.widthsMm(motif, groove.on());
        List<Path> all = lines.stream().map(placement.map()::apply).toList();
        String name = name(groove, placement);
        List<Double> insets = Selection.insetsMm(motif, groove.on());
        if (!insets.isEmpty() && groove.fade().isEmpty()) {
          double depth = groove.byWidth() ? groove.depthMm(widest(widths)) : groove.depthMm();
          insets.forEach(inset -> inside(name, inset, depth, groove));
        } else if (groove.byWidth()) {
          double scale = placement.map().affine().scale();
          Map<Path, List<Double>> varying = Selection.varyingMm(motif, groove.on(), scale);
          for (Path line : lines) {
            Path placed = placement.map().apply(line);
            if (varying.containsKey(line)) {
              List<Double> drawn = varying.get(line);
              intents.addAll(
                  FadingIntents.of(
                      name, placed, groove, l -> DepthAlong.byWidth(groove, drawn, l), flattenMm));
            } else {
              byWidth(name, placed, groove, groove.depthMm(widths.get(line) * scale));
            }
          }
        } else if (groove.fade().isEmpty()) {
          intents.add(new Intent.Groove(name, all, groove.depthMm(), groove.tool()));
        } else {
          Fade fade = groove.fade().get();
          for (Path line : all) {
            intents.addAll(
                FadingIntents.of(
                    name,
                    line,
                    groove,
                    l -> DepthAlong.fading(fade, l, groove.depthMm()),
                    flattenMm));
          }
        }
      }
      return null;
    }

    private static double widest(Map<Path, Double> widths) {
      return widths.values().stream().mapToDouble(w -> w).max().orElse(0);
    }

    /** By the outline alone, so that the line that was made of it is judged as well. */
    private void inside(String name, double insetMm, double depthMm, Work.Groove groove) {
      if (depthMm > 0) {
        Region part = Region.of(List.of(design.panel().outline()), FillRule.NONZERO, flattenMm);
        intents.add(new Intent.InsetGroove(name, part, insetMm, depthMm, groove.tool()));
      }
    }

    private void byWidth(String name, Path line, Work.Groove groove, double depthMm) {
      if (depthMm > 0) {
        intents.add(new Intent.Groove(name, List.of(line), depthMm, groove.tool()));
      }
    }

    @Override
    @SuppressWarnings("NullAway") // the result of a visit that only collects
    public Void recess(Work.Recess recess) {
      for (Placement placement : design.placementsOf(recess.on().motif())) {
        Affine map = placement.map().affine();
        Region region = Selection.area(design.motifAt(placement), recess.on(), map, flattenMm);
        intents.add(
            new Intent.Recess(name(recess, placement), region, recess.depthMm(), recess.tool()));
      }
      return null;
    }

    @Override
    @SuppressWarnings("NullAway") // the result of a visit that only collects
    public Void vgroove(Work.VGroove vgroove) {
      for (Placement placement : design.placementsOf(vgroove.on().motif())) {
        Affine map = placement.map().affine();
        Region region = Selection.area(design.motifAt(placement), vgroove.on(), map, flattenMm);
        intents.add(
            new Intent.VRecess(
                name(vgroove, placement),
                region,
                vgroove.floorMm(),
                vgroove.tool(),
                vgroove.floorTools(),
                vgroove.ridgeMm()));
      }
      return null;
    }

    @Override
    @SuppressWarnings("NullAway") // the result of a visit that only collects
    public Void cutout(Work.Cutout cutout) {
      CutoutWay way = cutout.way();
      if (way.on().isEmpty()) {
        String name = "cutout " + design.panel().name();
        intents.add(
            through(
                cutout,
                name,
                Region.of(List.of(design.panel().outline()), FillRule.NONZERO, flattenMm)));
        return null;
      }
      for (Placement placement : design.placementsOf(way.on().get().motif())) {
        Affine map = placement.map().affine();
        Region area = Selection.area(design.motifAt(placement), way.on().get(), map, flattenMm);
        intents.add(through(cutout, name(cutout, placement), area));
      }
      return null;
    }

    /** A tool goes on beyond the end of a side; how far is not known here, so far enough. */
    @Override
    @SuppressWarnings("NullAway") // the result of a visit that only collects
    public Void edge(Work.Edge edge) {
      List<Path> runs = EdgeRuns.of(design.panel(), edge.sides(), flattenMm);
      intents.add(
          new Intent.Edge(
              edge.operation() + " " + design.panel().name(),
              Region.of(List.of(design.panel().outline()), FillRule.NONZERO, flattenMm),
              runs,
              edge.allRound()
                  ? runs
                  : runs.stream().map(r -> EdgeRuns.extended(r, PASSING_MM)).toList(),
              edge.shape(),
              edge.tool(),
              edge.shape().downMm() + edge.belowMm(),
              edge.axisMm()));
      return null;
    }

    /** What stays is known only once islands are tied: the plan tells it. */
    @Override
    @SuppressWarnings("NullAway") // the result of a visit that only collects
    public Void torchCut(Work.TorchCut torchCut) {
      return null;
    }

    private Intent through(Work.Cutout cutout, String name, Region part) {
      CutoutWay way = cutout.way();
      double slot = cutout.tool().diameterMm() + way.leaveMm();
      Region relieved = CornerRelief.relieved(part, cutout, flattenMm);
      return new Intent.Through(name, relieved, cutout.tool(), way.side(), slot, way.skinMm());
    }

    @Override
    @SuppressWarnings("NullAway") // the result of a visit that only collects
    public Void bore(Work.Bore bore) {
      int number = 0;
      for (Point centre : bore.centres()) {
        number++;
        intents.addAll(BoreIntents.of(bore, number, centre, flattenMm));
      }
      return null;
    }
  }
}
