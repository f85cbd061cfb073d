package frieze.job;

import frieze.artwork.source.DrawingRequest;
import frieze.curve.Affine;
import frieze.curve.Bounds;
import frieze.curve.Path;
import frieze.curve.Point;
import frieze.curve.Tolerances;
import frieze.design.BorderLines;
import frieze.design.Motif;
import frieze.design.Variants;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostics;
import frieze.diagnostic.SourceSpan;
import frieze.layout.Alternation;
import frieze.layout.Avoidance;
import frieze.layout.Ground;
import frieze.layout.Hull;
import frieze.layout.LayoutCode;
import frieze.layout.Panel;
import frieze.layout.Pattern;
import frieze.layout.Placement;
import frieze.layout.Variation;
import frieze.region.FillRule;
import frieze.region.Offset;
import frieze.region.Region;
import frieze.screw.Screws;
import frieze.shop.FinishAllowance;
import frieze.shop.Flip;
import frieze.shop.KeepOut;
import frieze.shop.Machine;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import frieze.steps.Pins;
import frieze.trace.TraceSettings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

/**
 * A job as it is written, with its machine and tools found in the shop.
 *
 * @param source the job file, as the user named it
 * @param post the name of the post that writes its programs
 * @param inches whether the user writes bare numbers in inches
 */
public record Job(
    String source,
    String name,
    boolean inches,
    Machine machine,
    String post,
    List<Drawing> drawings,
    List<PanelJob> panels) {
  public Job {
    drawings = List.copyOf(drawings);
    panels = List.copyOf(panels);
  }

  /**
   * A drawing.
   *
   * @param file as found from the job's folder
   * @param trace how its outlines are found, if it is a picture
   * @param asked its size, and what of it is wanted
   * @param where the place of the file's name in the job
   */
  public record Drawing(
      String name,
      String file,
      Optional<TraceSettings> trace,
      DrawingRequest asked,
      SourceSpan where) {}

  /**
   * Drawings repeated on a panel.
   *
   * @param drawings one, or several that take turns
   * @param mirrored whether the pattern is mirrored left for right
   * @param clipMm how far from the panel's outline motifs are cut that reach over it; empty for
   *     whole motifs only
   * @param vary the differences between its motifs, if there are any
   * @param avoid how they keep clear of holes and of what is kept free, if they do
   * @param keptFree what is kept free, beside holes
   * @param seed decides them; of this panel and this drawing alone
   */
  public record Placing(
      List<String> drawings,
      Pattern pattern,
      boolean mirrored,
      OptionalDouble clipMm,
      Optional<Variation> vary,
      Optional<Avoidance> avoid,
      List<Bounds> keptFree,
      long seed,
      SourceSpan where) {
    public Placing {
      drawings = List.copyOf(drawings);
      keptFree = List.copyOf(keptFree);
    }

    /**
     * Places the motifs of the drawings, in their order.
     *
     * @param drawings finds any drawing of the job by its name
     * @param work whose holes they keep clear of
     * @param variants takes the shapes of motifs that are bent or cut
     * @param notes takes which motifs are left out
     */
    public List<Placement> place(
        Function<String, Motif> drawings,
        Panel panel,
        List<Work> work,
        Variants variants,
        Diagnostics notes) {
      List<Motif> motifs = this.drawings.stream().map(drawings).toList();
      Alternation turns =
          new Alternation(this.drawings, motifs.stream().map(m -> Hull.of(m.artwork())).toList());
      Hull hull = turns.together();
      Pattern resolved = pattern.resolved(other -> drawings.apply(other).artwork(), where);
      Ground ground = new Ground(panel, pattern.insetMm(), fences(resolved, panel));
      List<Placement> placed = varied(resolved, ground, hull);
      List<Hull> places = new ArrayList<>();
      keptFree.forEach(b -> places.add(Avoidance.rectangle(b)));
      work.forEach(w -> places.addAll(holes(w)));
      places.addAll(Avoidance.notches(panel));
      List<Placement> clear =
          avoid.map(a -> a.within(ground, placed, hull, places, where)).orElse(placed);
      avoid.flatMap(a -> a.leftOut(placed, clear, hull, places, where)).ifPresent(notes::add);
      List<Placement> shaped =
          turns.dealt(clear, pattern).stream()
              .map(p -> variants.bent(p, drawings.apply(p.motif())))
              .toList();
      return clipMm.isPresent() ? clipped(shaped, drawings, panel, variants) : shaped;
    }

    /** Cuts off what is nearer to the panel's outline than the margin, or beyond it. */
    private List<Placement> clipped(
        List<Placement> placed, Function<String, Motif> drawings, Panel panel, Variants variants) {
      Region outline =
          Region.of(List.of(panel.outline()), FillRule.NONZERO, Tolerances.DEFAULT.flattenMm());
      double marginMm = clipMm.orElseThrow();
      Region window =
          marginMm == 0
              ? outline
              : Offset.offset(outline, -marginMm, Tolerances.DEFAULT.offsetMm());
      List<Placement> left =
          placed.stream()
              .flatMap(p -> variants.cut(p, drawings.apply(p.motif()), window).stream())
              .toList();
      if (left.isEmpty()) {
        throw BadInputException.of(
            LayoutCode.NOTHING_PLACED,
            where,
            "no part of a motif lies "
                + Amounts.length(marginMm)
                + " or more inside the panel's outline",
            "make the margin of `clip` smaller");
      }
      return left;
    }

    /** The lines that motifs keep between, mirrored as they are. */
    private List<Path> fences(Pattern resolved, Panel panel) {
      Affine mirror = Affine.scaling(-1, 1).then(Affine.translation(panel.lengthMm(), 0));
      return mirrored
          ? resolved.fences(panel.mirrored()).stream().map(f -> f.transformed(mirror)).toList()
          : resolved.fences(panel);
    }

    /** Places them as if nothing were in their way, unless they are not to avoid it. */
    private List<Placement> varied(Pattern resolved, Ground ground, Hull hull) {
      Panel panel = ground.panel();
      boolean freely = avoid.isPresent() && !pattern.picksPlaces();
      Panel shape = freely ? panel.withoutNotches() : panel;
      String name = String.join(" and ", this.drawings);
      Panel facing = mirrored ? shape.mirrored() : shape;
      List<Placement> alike =
          clipMm.isPresent()
              ? resolved.reachingOver(name, hull, facing, where)
              : resolved.place(name, hull, facing, seed, where);
      List<Placement> turned =
          mirrored ? alike.stream().map(p -> mirrored(p, panel)).toList() : alike;
      Ground free = new Ground(shape, ground.insetMm(), ground.fences());
      return vary.map(v -> v.apply(turned, hull, free, seed)).orElse(turned);
    }

    /** The same on a panel. */
    Placing on(boolean mirrorIt, List<Bounds> free, long seedOfItem) {
      return new Placing(drawings, pattern, mirrorIt, clipMm, vary, avoid, free, seedOfItem, where);
    }

    private static List<Hull> holes(Work work) {
      return work instanceof Work.Bore bore
          ? bore.centres().stream().map(c -> Avoidance.round(c, bore.reachMm())).toList()
          : List.of();
    }

    private static Placement mirrored(Placement p, Panel panel) {
      Affine map =
          p.map()
              .affine()
              .then(Affine.scaling(-1, 1))
              .then(Affine.translation(panel.lengthMm(), 0));
      return p.at(map);
    }
  }

  /**
   * One panel.
   *
   * @param insert what it goes into, and how
   * @param allowance what is taken off it after it is cut
   * @param position where its lower left corner lies on the stock; empty for the middle
   * @param lines that run round it
   * @param screws that hold it in its frame; the pilots are among its work
   * @param flip which of two sides it is, if the stock is turned over
   * @param tools those that its work names, each once, by number
   * @param steps the pins for carving it in steps, if it is longer than the machine
   * @param where the place of its name in the job
   * @param whereSize the place of its opening or size in the job
   */
  public record PanelJob(
      String name,
      Insert insert,
      Stock stock,
      FinishAllowance allowance,
      Zero zero,
      Optional<Point> position,
      double clearanceMm,
      double spoilboardMm,
      List<KeepOut> keepOuts,
      List<Placing> placings,
      List<BorderLines> lines,
      List<Work> work,
      Optional<Screws> screws,
      Optional<Flip> flip,
      List<Tool> tools,
      Optional<Pins.Wanted> steps,
      SourceSpan where,
      SourceSpan whereSize) {
    public PanelJob {
      keepOuts = List.copyOf(keepOuts);
      placings = List.copyOf(placings);
      lines = List.copyOf(lines);
      work = List.copyOf(work);
      tools = List.copyOf(tools);
    }

    /** Whether this is the back of a panel that stands on its own in the job. */
    public boolean isBack() {
      return flip.filter(Flip::backUp).isPresent();
    }

    /** The same as the second of two sides. */
    PanelJob afterTurning(Flip turned) {
      return new PanelJob(
          name,
          insert,
          stock,
          allowance,
          zero,
          position,
          clearanceMm,
          spoilboardMm,
          keepOuts,
          placings,
          lines,
          work,
          screws,
          Optional.of(turned),
          tools,
          steps,
          where,
          whereSize);
    }

    /**
     * The finished panel.
     *
     * @throws frieze.diagnostic.BadInputException if nothing is left of the opening
     */
    public Panel panel() {
      return insert.panel(name, whereSize);
    }
  }
}
