package frieze.sheet;

import frieze.design.Work;
import java.util.List;
import java.util.TreeSet;

/** The depths that areas are cut to, and a tint for each: the deeper, the darker. */
final class Depths {
  /** The share of the scale that is used: neither too dark for lines nor too pale to see. */
  private static final double LIGHTEST = 0.92;

  private static final double DARKEST = 0.66;

  private final List<Double> depthsMm;

  /** Collects the depths of a work list, shallow first. */
  Depths(List<Work> work) {
    TreeSet<Double> all = new TreeSet<>();
    for (Work w : work) {
      double depth = w.accept(new DepthOf());
      if (depth > 0) {
        all.add(depth);
      }
    }
    depthsMm = List.copyOf(all);
  }

  List<Double> all() {
    return depthsMm;
  }

  /** The deepest floor or line asked for in a work list; the fallback if there is none. */
  static double deepestMm(List<Work> work, double fallbackMm) {
    double deepest = 0;
    for (Work w : work) {
      double line = w instanceof Work.Groove groove ? groove.depthMm() : 0;
      deepest = Math.max(deepest, Math.max(line, w.accept(new DepthOf())));
    }
    return deepest > 0 ? deepest : fallbackMm;
  }

  /** The tint of a depth. */
  String tint(double depthMm) {
    double most = depthsMm.isEmpty() ? depthMm : depthsMm.get(depthsMm.size() - 1);
    double share = most == 0 ? 0 : depthMm / most;
    return Cividis.css(LIGHTEST - (LIGHTEST - DARKEST) * share);
  }

  /** 0 for what has no floor. */
  private record DepthOf() implements Work.Visitor<Double> {
    @Override
    public Double groove(Work.Groove groove) {
      return 0.0;
    }

    @Override
    public Double recess(Work.Recess recess) {
      return recess.depthMm();
    }

    @Override
    public Double vgroove(Work.VGroove vgroove) {
      return vgroove.deepestMm().orElse(0);
    }

    @Override
    public Double cutout(Work.Cutout cutout) {
      return 0.0;
    }

    @Override
    public Double bore(Work.Bore bore) {
      return 0.0;
    }

    @Override
    public Double edge(Work.Edge edge) {
      return 0.0;
    }

    @Override
    public Double torchCut(Work.TorchCut torchCut) {
      return 0.0;
    }
  }
}
