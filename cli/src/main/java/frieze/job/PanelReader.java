package frieze.job;

import frieze.curve.Point;
import frieze.design.BorderLines;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostics;
import frieze.keys.JobCode;
import frieze.keys.Key;
import frieze.keys.Located;
import frieze.keys.Suggestion;
import frieze.keys.Values;
import frieze.layout.ArchedOutline;
import frieze.layout.Opening;
import frieze.layout.Panel;
import frieze.screw.Screws;
import frieze.shop.FinishAllowance;
import frieze.shop.KeepOut;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Skew;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.Zero;
import frieze.steps.Pins;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Turns the section of one panel into a {@link Job.PanelJob}. */
final class PanelReader {
  /** The most by which readings of one board may differ, as a share of its thickness. */
  private static final double MOST_UNEVEN = 0.1;

  private final Shop shop;
  private final Machine machine;
  private final PlacingReader patterns;
  private final OutlineReader outlines;
  private final Diagnostics found;

  PanelReader(
      Shop shop,
      Machine machine,
      PlacingReader patterns,
      OutlineReader outlines,
      Diagnostics found) {
    this.shop = shop;
    this.machine = machine;
    this.patterns = patterns;
    this.outlines = outlines;
    this.found = found;
  }

  /** Reads a panel, its back before its face if both are cut; none after an error. */
  List<Job.PanelJob> read(String name, Located<Values> located) {
    Optional<Job.PanelJob> face = face(name, located);
    Optional<Values> back = located.value().find(JobKeys.Panel.BACK);
    boolean turned =
        back.isPresent()
            || face.flatMap(Job.PanelJob::screws).filter(s -> s.pilot().fromBack()).isPresent();
    return turned && face.isPresent()
        ? new BackReader(shop, patterns, found).both(face.get(), back)
        : face.stream().toList();
  }

  private Optional<Job.PanelJob> face(String name, Located<Values> located) {
    Values panel = located.value();
    Optional<Values> size = size(name, panel);
    Optional<Stock> stock = stock(panel.get(JobKeys.Panel.STOCK));
    if (size.isEmpty() || stock.isEmpty()) {
      return Optional.empty();
    }
    Optional<Insert> insert = insert(name, panel, size.get());
    if (insert.isEmpty()) {
      return Optional.empty();
    }
    Optional<Pins.Wanted> steps = panel.find(JobKeys.Panel.STEPS).flatMap(this::steps);
    checkFits(insert.get(), stock.get(), size.get(), panel.has(JobKeys.Panel.STEPS));
    List<Job.Placing> placings = patterns.read(name, panel, insert.get().lengthMm());
    Set<String> placed = new LinkedHashSet<>();
    placings.forEach(p -> placed.addAll(p.drawings()));
    List<BorderLines> lines =
        new LineReader(patterns.drawn(), found)
            .read(panel.find(JobKeys.Panel.BORDER_LINES).orElse(Map.of()));
    lines.forEach(l -> placed.add(l.name()));
    WorkReader works = new WorkReader(shop, stock.get(), placed, patterns.drawn(), found);
    List<Work> drawn = works.read(panel.get(JobKeys.Panel.WORK));
    Optional<Values> wanted = panel.find(JobKeys.Panel.SCREWS);
    Optional<Screws> listed = wanted.flatMap(new ScrewReader(works, found)::read);
    if (wanted.isPresent() && listed.isEmpty()) {
      return Optional.empty();
    }
    Optional<Values> touched = panel.find(JobKeys.Panel.TOUCHED);
    Optional<Skew> skew = touched.flatMap(v -> new TouchedReader(found).read(v, stock.get()));
    if (touched.isPresent() && skew.isEmpty()) {
      return Optional.empty();
    }
    double length = insert.get().lengthMm();
    boolean mirror = panel.get(JobKeys.Panel.MIRROR);
    List<Work> work =
        new ArrayList<>(mirror ? drawn.stream().map(w -> mirrored(w, length)).toList() : drawn);
    Optional<Screws> screws = mirror ? listed.map(s -> s.mirrored(length)) : listed;
    screws.filter(s -> !s.pilot().fromBack()).map(Screws::bore).ifPresent(work::add);
    return Optional.of(
        new Job.PanelJob(
            name,
            insert.get(),
            stock.get(),
            allowance(name, panel),
            zero(panel.get(JobKeys.Panel.ZERO)).skewed(skew.map(Skew::angleRad).orElse(0.0)),
            panel.find(JobKeys.Panel.POSITION).map(PanelReader::point),
            panel.get(JobKeys.Panel.CLEARANCE),
            panel.get(JobKeys.Panel.SPOILBOARD),
            panel.find(JobKeys.Panel.CLAMPS).map(PanelReader::clamps).orElse(List.of()),
            placings,
            lines,
            work,
            screws,
            Optional.empty(),
            tools(work, steps),
            steps,
            located.where(),
            size.get().where()));
  }

  /** The holes of the other one of a pair; all else lies where its drawings lie. */
  private static Work mirrored(Work work, double lengthMm) {
    if (work instanceof Work.Edge edge) {
      return EdgeReader.mirrored(edge);
    }
    return work instanceof Work.Bore bore ? bore.mirrored(lengthMm) : work;
  }

  /** A rectangle with one gap all round is made as such; anything else is fitted. */
  private Optional<Insert> insert(String name, Values panel, Values size) {
    Values fit = panel.get(JobKeys.Panel.FIT);
    if (panel.has(JobKeys.Panel.OUTLINE)) {
      return outlines
          .read(name, size)
          .map(p -> panel.get(JobKeys.Panel.MIRROR) ? p.mirrored() : p)
          .flatMap(p -> new OpeningReader(found).drawn(p, fit));
    }
    if (panel.has(JobKeys.Panel.SIZE)) {
      if (size.get(FitKeys.Size.ARCHED_TOP) + size.get(FitKeys.Size.ARCHED_BOTTOM) > 0) {
        return arched(name, size, fit);
      }
      if (!OpeningReader.isOneGap(fit)) {
        found.error(
            JobCode.KEYS_EXCLUDE,
            fit.where(),
            "the panel \"" + name + "\" has a size, and \"fit\" needs an opening to fit it into",
            "give \"opening\" instead of \"size\", or one \"gap\" alone");
        return Optional.empty();
      }
      return Optional.of(
          Insert.plain(
              new Opening(
                  size.get(FitKeys.Size.WIDTH),
                  size.get(FitKeys.Size.HEIGHT),
                  size.get(FitKeys.Size.CORNER)),
              OpeningReader.gaps(fit).map(g -> g.get(0)).orElse(0.0)));
    }
    if (OpeningReader.isPlain(size, fit)) {
      return Optional.of(
          Insert.plain(
              new Opening(
                  size.get(FitKeys.Opening.WIDTH).get(0),
                  size.get(FitKeys.Opening.HEIGHT).get(0),
                  size.get(FitKeys.Opening.CORNER)),
              OpeningReader.gaps(fit).orElseThrow().get(0)));
    }
    return new OpeningReader(found).read(name, size, fit).map(Insert::fitted);
  }

  private Optional<Insert> arched(String name, Values size, Values fit) {
    if (size.get(FitKeys.Size.CORNER) > 0) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          size.where(),
          "a panel with an arched edge has square corners",
          "leave out \"corner\", and ease the corners by hand");
      return Optional.empty();
    }
    ArchedOutline arched =
        new ArchedOutline(
            size.get(FitKeys.Size.WIDTH),
            size.get(FitKeys.Size.HEIGHT),
            size.get(FitKeys.Size.ARCHED_TOP),
            size.get(FitKeys.Size.ARCHED_BOTTOM));
    try {
      return new OpeningReader(found).drawn(new Panel(name, arched.path(size.where())), fit);
    } catch (BadInputException e) {
      found.addAll(e.diagnostics());
      return Optional.empty();
    }
  }

  private Optional<Values> size(String name, Values panel) {
    List<Key<Values>> given =
        Stream.of(JobKeys.Panel.OPENING, JobKeys.Panel.SIZE, JobKeys.Panel.OUTLINE)
            .filter(panel::has)
            .toList();
    if (given.size() > 1) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          panel.where(given.get(1)),
          "the panel \""
              + name
              + "\" has "
              + (given.get(0).equals(JobKeys.Panel.SIZE) ? "a size" : "an opening")
              + " and "
              + (given.get(1).equals(JobKeys.Panel.SIZE) ? "a size" : "an outline"),
          "give one of them");
      return Optional.empty();
    }
    if (given.isEmpty()) {
      found.error(
          JobCode.MISSING_KEY,
          panel.where(),
          "the panel \"" + name + "\" needs \"opening\", \"size\" or \"outline\"",
          "opening: {width: ..., height: ...} as measured in the frame");
      return Optional.empty();
    }
    return panel.find(given.get(0));
  }

  private FinishAllowance allowance(String name, Values panel) {
    Values v = panel.get(JobKeys.Panel.ALLOWANCE);
    double walls = v.get(FitKeys.Allowance.WALLS);
    double sanded = panel.get(JobKeys.Panel.FIT).get(FitKeys.Fit.SANDED);
    if (walls > 0 && sanded > 0) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          v.where(FitKeys.Allowance.WALLS),
          "the panel \""
              + name
              + "\" would be cut larger twice, by "
              + Amounts.length(walls)
              + " for its walls and by "
              + Amounts.length(sanded)
              + " for \"sanded\" of its fit",
          "leave out \"sanded\": the allowance for walls is for the edge too");
    }
    return new FinishAllowance(v.get(FitKeys.Allowance.FACE), walls);
  }

  private Optional<Stock> stock(Values v) {
    String name = v.get(JobKeys.Board.MATERIAL);
    Optional<Material> material = shop.material(name);
    if (material.isEmpty()) {
      found.error(
          JobCode.NO_SUCH_MATERIAL,
          v.where(JobKeys.Board.MATERIAL),
          "no material named \"" + name + "\" in the shop",
          Suggestion.hint(name, shop.materialNames()));
    }
    checkEven(v.get(JobKeys.Board.THICKNESS), v);
    return material.map(
        m ->
            new Stock(
                m,
                v.get(JobKeys.Board.LENGTH),
                v.get(JobKeys.Board.WIDTH),
                v.get(JobKeys.Board.THICKNESS),
                v.get(JobKeys.Board.BLANK)));
  }

  /** A through cut is set for the thickest reading and would go far into the bed at a thin one. */
  private void checkEven(List<Double> readingsMm, Values board) {
    double thick = readingsMm.stream().mapToDouble(t -> t).max().orElse(0);
    double thin = readingsMm.stream().mapToDouble(t -> t).min().orElse(0);
    if (thick - thin > MOST_UNEVEN * thick) {
      found.error(
          JobCode.UNEVEN_STOCK,
          board.where(JobKeys.Board.THICKNESS),
          "the thickness readings differ by "
              + Amounts.length(thick - thin)
              + ", from "
              + Amounts.length(thin)
              + " to "
              + Amounts.length(thick),
          "measure again; if it is so, plane the board first");
    }
  }

  /** Says early what no later stage could mend: a panel beyond its stock or its machine. */
  private void checkFits(Insert insert, Stock stock, Values size, boolean inSteps) {
    double width = insert.lengthMm();
    double height = insert.heightMm();
    checkFits("the panel", width, "the stock is", stock.lengthMm(), size, FitKeys.Size.WIDTH);
    checkFits("the panel", height, "the stock is", stock.widthMm(), size, FitKeys.Size.HEIGHT);
    String travel = "the machine \"" + machine.name() + "\" travels";
    checkFits(
        "the panel", inSteps ? 0 : width, travel, machine.travelXMm(), size, FitKeys.Size.WIDTH);
    checkFits("the panel", height, travel, machine.travelYMm(), size, FitKeys.Size.HEIGHT);
  }

  private void checkFits(
      String what, double needMm, String other, double haveMm, Values size, Key<Double> key) {
    if (needMm > haveMm) {
      found.error(
          JobCode.PANEL_TOO_LARGE,
          size.where(key),
          what
              + " is "
              + Amounts.length(needMm)
              + " along "
              + (key.equals(FitKeys.Size.WIDTH) ? "X" : "Y")
              + ", but "
              + other
              + " "
              + Amounts.length(haveMm)
              + ": "
              + Amounts.length(needMm - haveMm)
              + " too little",
          other.startsWith("the stock")
              ? "use a larger stock, or measure again"
              : key.equals(FitKeys.Size.WIDTH)
                  ? "use a machine that reaches farther, or carve the panel in \"steps\""
                  : "use a machine that reaches farther");
    }
  }

  private static Zero zero(Values v) {
    return new Zero(v.get(JobKeys.ZeroAt.X), v.get(JobKeys.ZeroAt.Y), v.get(JobKeys.ZeroAt.Z));
  }

  static Point point(Values v) {
    return new Point(v.get(JobKeys.Place.X), v.get(JobKeys.Place.Y));
  }

  static List<KeepOut> clamps(List<Values> all) {
    List<KeepOut> clamps = new ArrayList<>();
    for (Values v : all) {
      double x = v.get(JobKeys.Clamp.X);
      double y = v.get(JobKeys.Clamp.Y);
      clamps.add(
          new KeepOut(
              v.get(JobKeys.Clamp.NAME),
              x,
              y,
              x + v.get(JobKeys.Clamp.WIDTH),
              y + v.get(JobKeys.Clamp.DEPTH),
              v.get(JobKeys.Clamp.ABOVE)));
    }
    return clamps;
  }

  private Optional<Pins.Wanted> steps(Values v) {
    String name = v.get(StepKeys.TOOL);
    Optional<Tool> tool = shop.tool(name);
    if (tool.isEmpty()) {
      found.error(
          JobCode.NO_SUCH_TOOL,
          v.where(StepKeys.TOOL),
          "no tool named \"" + name + "\" in the shop",
          Suggestion.hint(name, shop.toolNames()));
    }
    return tool.map(t -> new Pins.Wanted(v.get(StepKeys.PIN), v.get(StepKeys.DEEP), t, v.where()));
  }

  static List<Tool> tools(List<Work> work) {
    return tools(work, Optional.empty());
  }

  private static List<Tool> tools(List<Work> work, Optional<Pins.Wanted> steps) {
    return Stream.concat(
            work.stream().flatMap(w -> w.tools().stream()), steps.stream().map(s -> s.tool()))
        .distinct()
        .sorted(Comparator.comparingInt(Tool::number))
        .toList();
  }
}
