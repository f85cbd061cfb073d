package frieze.job;

import frieze.artwork.source.DrawingRequest;
import frieze.curve.Bounds;
import frieze.curve.Point;
import frieze.design.Motif;
import frieze.design.Work;
import frieze.diagnostic.SourceSpan;
import frieze.layout.Hull;
import frieze.layout.Panel;
import frieze.layout.Pattern;
import frieze.layout.Placement;
import frieze.layout.Variation;
import frieze.shop.KeepOut;
import frieze.shop.Machine;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import frieze.trace.TraceSettings;
import java.util.List;
import java.util.Optional;

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
   * A drawing repeated on a panel.
   *
   * @param vary the differences between its motifs, if there are any
   * @param seed decides them; of this panel and this drawing alone
   */
  public record Placing(
      String drawing, Pattern pattern, Optional<Variation> vary, long seed, SourceSpan where) {
    /** Places the motif. */
    List<Placement> place(Motif motif, Panel panel) {
      Hull hull = Hull.of(motif.artwork());
      List<Placement> alike = pattern.place(motif.name(), hull, panel, seed, where);
      Bounds band = panel.outline().bounds().grown(-pattern.insetMm());
      return vary.map(v -> v.apply(alike, hull, band, seed)).orElse(alike);
    }
  }

  /**
   * One panel.
   *
   * @param insert what it goes into, and how
   * @param position where its lower left corner lies on the stock; empty for the middle
   * @param tools those that its work names, each once, by number
   * @param where the place of its name in the job
   * @param whereSize the place of its opening or size in the job
   */
  public record PanelJob(
      String name,
      Insert insert,
      Stock stock,
      Zero zero,
      Optional<Point> position,
      double clearanceMm,
      double spoilboardMm,
      List<KeepOut> keepOuts,
      List<Placing> placings,
      List<Work> work,
      List<Tool> tools,
      SourceSpan where,
      SourceSpan whereSize) {
    public PanelJob {
      keepOuts = List.copyOf(keepOuts);
      placings = List.copyOf(placings);
      work = List.copyOf(work);
      tools = List.copyOf(tools);
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
