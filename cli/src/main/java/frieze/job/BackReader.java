package frieze.job;

import frieze.curve.Affine;
import frieze.curve.Point;
import frieze.design.BorderLines;
import frieze.design.BoreWay;
import frieze.design.Work;
import frieze.diagnostic.Amounts;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Diagnostics;
import frieze.keys.JobCode;
import frieze.keys.Values;
import frieze.layout.Panel;
import frieze.shop.Flip;
import frieze.shop.KeepOut;
import frieze.shop.Stock;
import frieze.shop.Tool;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Adds the back of a panel: a setup of its own, on the same stock turned over. */
final class BackReader {
  /** What stays of the waste around the hole of a pin; common practice. */
  private static final double WEB_MM = 3;

  private final Shop shop;
  private final PlacingReader patterns;
  private final Diagnostics found;

  BackReader(Shop shop, PlacingReader patterns, Diagnostics found) {
    this.shop = shop;
    this.patterns = patterns;
    this.found = found;
  }

  /** The back and then the face, in the order in which they are made; none after an error. */
  List<Job.PanelJob> both(Job.PanelJob face, Optional<Values> asked) {
    Panel panel;
    try {
      panel = face.panel();
    } catch (BadInputException e) {
      found.addAll(e.diagnostics());
      return List.of();
    }
    if (face.steps().isPresent()) {
      found.error(
          JobCode.KEYS_EXCLUDE,
          face.steps().get().where(),
          "the panel \""
              + face.name()
              + "\" is carved in steps, so that its back can't be worked as well: the pins to turn"
              + " the board on would stand farther apart than the machine reaches, and the holes"
              + " that hold the steps of one side could meet those of the other",
          "bore from the front, leave out \"steps\" if the machine reaches over the whole panel, or"
              + " use one that does");
      return List.of();
    }
    boolean endToEnd = asked.map(v -> v.get(BackKeys.END_TO_END)).orElse(false);
    Flip turn = new Flip(endToEnd, true, Optional.empty());
    List<Job.Placing> placings =
        asked
            .flatMap(v -> v.find(BackKeys.DESIGN))
            .map(design -> patterns.read(name(face), design, false, List.of()))
            .orElse(List.of());
    Set<String> placed = new LinkedHashSet<>();
    placings.forEach(p -> placed.addAll(p.drawings()));
    List<BorderLines> lines =
        new LineReader(patterns.drawn(), found)
            .read(asked.flatMap(v -> v.find(BackKeys.BORDER_LINES)).orElse(Map.of()));
    lines.forEach(l -> placed.add(l.name()));
    WorkReader works = new WorkReader(shop, face.stock(), placed, patterns.drawn(), found);
    List<Work> work = new ArrayList<>(work(face, panel, turn, asked, works));
    Optional<Values> pinned = asked.flatMap(v -> v.find(BackKeys.PINS));
    Optional<Flip.Pins> pins = pinned.flatMap(v -> pins(v, face, panel, turn, works));
    if (pinned.isPresent() && pins.isEmpty()) {
      return List.of();
    }
    if (work.isEmpty()) {
      found.error(
          JobCode.NOTHING_TO_DO,
          asked.map(Values::where).orElse(face.where()),
          "nothing is cut on the back of \"" + face.name() + "\"",
          "give it \"work\", or screws with \"from: back\"; or leave \"back\" out");
      return List.of();
    }
    pins.ifPresent(p -> work.add(holes(p, pinned.orElseThrow(), face, panel, turn, works)));
    Flip flip = new Flip(endToEnd, true, pins);
    Job.PanelJob back = back(face, panel, flip, asked, placings, lines, work);
    return List.of(back, face.afterTurning(flip.otherSide()));
  }

  private static String name(Job.PanelJob face) {
    return face.name() + ", back";
  }

  private List<Work> work(
      Job.PanelJob face, Panel panel, Flip turn, Optional<Values> asked, WorkReader works) {
    List<Work> work = new ArrayList<>();
    asked.flatMap(v -> v.find(BackKeys.WORK)).map(works::read).ifPresent(work::addAll);
    for (Work item : work) {
      if (item instanceof Work.Cutout cutout && cutout.way().on().isEmpty()) {
        found.error(
            JobCode.KEYS_EXCLUDE,
            item.where(),
            "the panel is cut free from the front, after its back is done",
            "leave this cutout to the panel's own \"work\"");
      }
    }
    Affine map = turn.turned(panel.lengthMm(), panel.heightMm());
    face.screws()
        .filter(s -> s.pilot().fromBack())
        .map(s -> s.bore())
        .ifPresent(
            bore ->
                work.add(
                    new Work.Bore(
                        bore.centres().stream().map(map::apply).toList(),
                        bore.diameterMm(),
                        bore.depthMm(),
                        bore.tool(),
                        bore.way(),
                        bore.where())));
    return work;
  }

  private Job.PanelJob back(
      Job.PanelJob face,
      Panel panel,
      Flip flip,
      Optional<Values> asked,
      List<Job.Placing> placings,
      List<BorderLines> lines,
      List<Work> work) {
    Stock stock = face.stock();
    List<KeepOut> clamps =
        asked
            .flatMap(v -> v.find(BackKeys.CLAMPS))
            .map(PanelReader::clamps)
            .orElseGet(() -> face.keepOuts().stream().map(k -> flip.turned(k, stock)).toList());
    return new Job.PanelJob(
        name(face),
        Insert.shaped(panel.turned(flip.turned(panel.lengthMm(), panel.heightMm()))),
        stock,
        face.allowance().ofBack(),
        flip.turned(face.zero()),
        Optional.of(corner(face, panel, flip)),
        face.clearanceMm(),
        flip.pins().map(Flip.Pins::depthMm).orElse(face.spoilboardMm()),
        clamps,
        placings,
        lines,
        work,
        Optional.empty(),
        Optional.of(flip),
        PanelReader.tools(work),
        Optional.empty(),
        face.where(),
        face.whereSize());
  }

  /** Where the lower left corner of the panel lies while the back is up. */
  private static Point corner(Job.PanelJob face, Panel panel, Flip flip) {
    Point at = PanelSetup.corner(face, panel);
    Point far = at.plus(new Point(panel.lengthMm(), panel.heightMm()));
    Affine map = flip.turned(face.stock().lengthMm(), face.stock().widthMm());
    Point one = map.apply(at);
    Point other = map.apply(far);
    return new Point(Math.min(one.x(), other.x()), Math.min(one.y(), other.y()));
  }

  /** Two places on the line of turning, in the middle of the waste at both of its ends. */
  private Optional<Flip.Pins> pins(
      Values v, Job.PanelJob face, Panel panel, Flip turn, WorkReader works) {
    Optional<Tool> tool = works.tool(v, BackKeys.Pins.TOOL);
    if (tool.isEmpty()) {
      return Optional.empty();
    }
    double diameter = v.find(BackKeys.Pins.DIAMETER).orElse(tool.get().diameterMm());
    Stock stock = face.stock();
    Point at = PanelSetup.corner(face, panel);
    double whole = turn.endToEnd() ? stock.widthMm() : stock.lengthMm();
    double before = turn.endToEnd() ? at.y() : at.x();
    double after = whole - before - (turn.endToEnd() ? panel.heightMm() : panel.lengthMm());
    double slot = slotMm(face.work());
    double needed = slot + diameter + 2 * WEB_MM;
    if (Math.min(before, after) < needed) {
      found.error(
          JobCode.NO_ROOM_FOR_PINS,
          v.where(),
          "a pin of "
              + Amounts.length(diameter)
              + " beside a cut of "
              + Amounts.length(slot)
              + " needs "
              + Amounts.length(needed)
              + " of waste "
              + (turn.endToEnd() ? "in front of and behind" : "at both ends of")
              + " the panel, but there are "
              + Amounts.length(before)
              + " and "
              + Amounts.length(after),
          "use a larger stock or thinner pins, or leave out \"pins\" and lay the board to its"
              + " edges");
      return Optional.empty();
    }
    double first = (before - slot) / 2;
    double second = whole - (after - slot) / 2;
    List<Point> places =
        turn.endToEnd()
            ? List.of(
                new Point(stock.lengthMm() / 2, first), new Point(stock.lengthMm() / 2, second))
            : List.of(
                new Point(first, stock.widthMm() / 2), new Point(second, stock.widthMm() / 2));
    return Optional.of(new Flip.Pins(places, diameter, v.get(BackKeys.Pins.DEPTH)));
  }

  /** How wide the cut around the panel is. */
  private static double slotMm(List<Work> work) {
    return work.stream()
        .filter(w -> w instanceof Work.Cutout)
        .map(w -> (Work.Cutout) w)
        .filter(c -> c.way().on().isEmpty())
        .mapToDouble(c -> c.tool().diameterMm() + c.way().leaveMm())
        .max()
        .orElse(0);
  }

  private static Work holes(
      Flip.Pins pins, Values v, Job.PanelJob face, Panel panel, Flip flip, WorkReader works) {
    Point corner = corner(face, panel, flip);
    Tool tool = works.tool(v, BackKeys.Pins.TOOL).orElseThrow();
    return new Work.Bore(
        pins.at().stream().map(p -> p.minus(corner)).toList(),
        pins.diameterMm(),
        Optional.empty(),
        tool,
        BoreWay.inWaste(works.mills(tool)),
        v.where());
  }
}
