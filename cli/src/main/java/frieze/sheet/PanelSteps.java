package frieze.sheet;

import frieze.dryrun.ProgramReport;
import frieze.plan.cut.RimUse;
import frieze.post.ProgramText;
import frieze.shop.FinishAllowance;
import frieze.shop.Machine;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Tool;
import frieze.shop.ToolShape;
import frieze.shop.Zero;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Writes what the operator does: load, tools, programs. */
final class PanelSteps {
  private final SheetFacts facts;
  private final PanelFacts panel;
  private final Measures measures;
  private final Markup out;
  private final List<ToolUse> tools;

  PanelSteps(SheetFacts facts, PanelFacts panel, Markup out) {
    this.facts = facts;
    this.panel = panel;
    this.measures = new Measures(facts.inches());
    this.out = out;
    this.tools = ToolUse.of(panel.plan().cuts());
  }

  void write() {
    load();
    turning().ifPresent(t -> t.write(out));
    panel
        .torch()
        .ifPresentOrElse(
            plan -> new TorchSteps(panel.setup(), plan, measures, out).write(), this::tools);
    programs();
  }

  private Optional<FlipSteps> turning() {
    return panel.flip().map(flip -> new FlipSteps(panel.setup(), flip, measures));
  }

  private void load() {
    Setup setup = panel.setup();
    out.element("h2", "Load and set zero");
    out.open("div", "class", "load").open("ol");
    for (String item : loadItems(setup)) {
      out.element("li", item);
    }
    out.close();
    HeightsView heights = new HeightsView(setup, measures);
    double deepest = tools.stream().mapToDouble(ToolUse::deepestMm).max().orElse(0);
    out.raw(panel.torch().map(heights::torch).orElseGet(() -> heights.spindle(deepest)));
    out.close().line();
  }

  private List<String> loadItems(Setup setup) {
    Stock stock = setup.stock();
    List<String> items = new ArrayList<>();
    items.add(
        PanelPage.sentence(stock.material().name())
            + ", "
            + measures.number(stock.lengthMm())
            + " long \u00d7 "
            + measures.one(stock.widthMm())
            + " wide, length along X, "
            + turning().map(FlipSteps::faceUp).orElse("good face up")
            + ".");
    items.add(thickness(stock));
    boolean through = tools.stream().anyMatch(t -> t.deepestMm() > stock.thickestMm());
    if (through) {
      items.add(
          "A spoilboard under it: cuts go up to "
              + measures.one(setup.spoilboardMm())
              + " below the stock.");
    }
    items.add(
        setup.keepOuts().isEmpty()
            ? "Clamps or screws clear of every cut: NO CLAMPS WERE GIVEN, NONE WERE CHECKED."
            : "Clamps where the drawing hatches them, no higher than "
                + measures.one(highest(setup))
                + " above the stock.");
    items.addAll(new EdgeItems(measures).items(panel.design().work(), setup));
    panel.part().ifPresent(p -> items.addAll(new StepItems(p, setup, measures).items()));
    String place = PanelPage.zero(setup.zero()).replaceAll(",.*", "");
    if (setup.zero().pushedMm() > 0) {
      items.addAll(widths(stock));
      return items;
    }
    items.add(
        "X0 Y0 at the "
            + place
            + " of the stock; Z0 "
            + (setup.zero().z() == Zero.AlongZ.TOP ? "on its top" : "on the bed")
            + (panel.torch().isPresent() ? "." : ", again after every change of tool."));
    if (setup.zero().skewRad() != 0) {
      items.add(skewed(setup));
    }
    items.addAll(widths(stock));
    allowance(setup.allowance()).ifPresent(items::add);
    return items;
  }

  /** What is left for after cutting, and that sizes are those of the finished panel. */
  private Optional<String> allowance(FinishAllowance allowance) {
    List<String> parts = new ArrayList<>();
    if (allowance.faceMm() > 0) {
      parts.add(measures.one(allowance.faceMm()) + " off the face, and cuts are that much deeper");
    }
    if (allowance.wallsMm() > 0) {
      parts.add(measures.one(allowance.wallsMm()) + " off walls and edges, which stand proud");
    }
    return parts.isEmpty()
        ? Optional.empty()
        : Optional.of(
            "After cutting take "
                + String.join("; ", parts)
                + ". The sizes and depths on the drawing are those of the finished panel.");
  }

  /** How the stock must lie for programs that are turned. */
  private String skewed(Setup setup) {
    double degrees = Math.toDegrees(setup.zero().skewRad());
    double aside = setup.stock().lengthMm() * Math.abs(StrictMath.sin(setup.zero().skewRad()));
    return "THE PROGRAMS ARE TURNED by "
        + Measures.decimals(Math.abs(degrees), 2)
        + "\u00b0 "
        + (degrees > 0 ? "counter-clockwise" : "clockwise")
        + ", as the stock was touched: the right end of its front edge lies "
        + measures.about(aside)
        + (degrees > 0 ? " farther back" : " farther forward")
        + " than the left one. X0 Y0 lie at the corner itself, not where the edges were touched. If"
        + " the stock has moved since, touch it again; the drawing shows it straight.";
  }

  /** What an error in height does to the width of grooves, for each V-bit. */
  private List<String> widths(Stock stock) {
    double uneven = stock.thickestMm() - stock.thinnestMm();
    List<String> items = new ArrayList<>();
    for (ToolUse use : tools) {
      if (use.tool().shape() instanceof ToolShape.Vee vee) {
        String factor = Measures.decimals(vee.widensBy(), 2);
        String bySurface =
            uneven > 0
                ? " The readings differ by "
                    + measures.about(uneven)
                    + ": that alone is "
                    + measures.about(uneven * vee.widensBy())
                    + " of width."
                : "";
        items.add(
            "Grooves of "
                + use.tool().name()
                + " change width by "
                + factor
                + " times an error in height: set Z0 where they come."
                + bySurface);
      }
    }
    return items;
  }

  private static double highest(Setup setup) {
    return setup.keepOuts().stream().mapToDouble(k -> k.topMm()).max().orElse(0);
  }

  private String thickness(Stock stock) {
    String readings =
        stock.thicknessReadingsMm().stream().map(measures::one).collect(Collectors.joining(", "));
    return stock.thicknessReadingsMm().size() == 1
        ? "Thickness as measured: " + measures.both(stock.thickestMm()) + ". Measure again."
        : "Thickness as measured: " + readings + ". Through cuts are set for the thickest reading.";
  }

  private void tools() {
    Machine.Spindle spindle = facts.machine().spindle();
    out.open("h2").text("Tools, in the order of use");
    if (spindle.byHand()) {
      out.element("small", "the spindle is set and switched by hand: the program stops for it");
    }
    out.close();
    out.open("table", "class", "whole").open("tr");
    for (String name :
        List.of(
            "T",
            "Tool",
            "Cutting diameter",
            "Flutes",
            "Sticks out",
            "Spindle",
            "Feed up to",
            "Deepest",
            "For")) {
      out.element("th", name);
    }
    out.close();
    for (ToolUse use : tools) {
      Tool tool = use.tool();
      out.open("tr");
      out.element("td", "T" + tool.number());
      out.element("td", tool.name());
      out.element("td", measures.both(tool.diameterMm()) + shape(tool.shape()));
      out.element("td", Integer.toString(tool.flutes()));
      out.element("td", measures.one(tool.reachMm()));
      out.element("td", use.setting(spindle));
      out.element("td", measures.feed(use.fastestMmPerMin()));
      out.element("td", measures.one(use.deepestMm()));
      out.element("td", String.join(", ", use.works()));
      out.close();
    }
    out.close().line();
    for (RimUse rim : panel.plan().rims()) {
      out.element("p", rimText(rim));
    }
  }

  /** How much of a tool's rim stands in material. */
  private static String rimText(RimUse rim) {
    String usual =
        rim.tool().name()
            + ", "
            + rim.work()
            + ": no more than "
            + Math.round(Math.toDegrees(rim.usualRad()))
            + "\u00b0 of the rim in material along half of the way, "
            + Math.round(Math.toDegrees(rim.mostRad()))
            + "\u00b0 at most";
    return rim.beyond().part() == 0
        ? usual + "."
        : usual + "; slowed on " + Math.round(100 * rim.beyond().part()) + "% of it.";
  }

  private String shape(ToolShape shape) {
    return shape.accept(
        new ToolShape.Visitor<String>() {
          @Override
          public String flat(ToolShape.Flat flat) {
            return "";
          }

          @Override
          public String ball(ToolShape.Ball ball) {
            return ", round nose";
          }

          @Override
          public String vee(ToolShape.Vee vee) {
            return ", " + Measures.decimals(Math.toDegrees(vee.angleRad()), 1) + "\u00b0 V";
          }

          @Override
          public String tapered(ToolShape.Tapered tapered) {
            return ", tapered";
          }

          @Override
          public String drill(ToolShape.Drill drill) {
            return ", drill";
          }

          @Override
          public String roundOver(ToolShape.RoundOver bit) {
            return ", rounds over "
                + measures.one(bit.cornerMm())
                + ", tip "
                + measures.one(bit.tipMm());
          }
        });
  }

  private void programs() {
    out.open("h2").text("Programs, in the order of running");
    out.element("small", "do not move the stock or its zero between them").close();
    out.open("div", "class", "strip");
    List<ProgramReport> reports = PanelPage.reports(panel);
    for (int i = 0; i < panel.programs().size(); i++) {
      ProgramText program = panel.programs().get(i);
      out.open("div", "class", "step");
      out.element("div", Integer.toString(i + 1), "class", "no");
      out.open("div", "class", "what");
      out.element("code", program.fileName()).raw("<br/>");
      out.text(
          program.tools().stream()
              .map(t -> "T" + t.number() + " " + t.name())
              .collect(Collectors.joining(", ")));
      if (i < reports.size()) {
        step(reports.get(i));
      }
      out.close().close();
    }
    out.close().line();
  }

  private void step(ProgramReport report) {
    double machine = report.time().totalSeconds() - report.time().handSeconds();
    out.raw("<br/>").text(Measures.time(machine) + ", cuts " + measures.travelled(report.feedMm()));
    out.raw("<br/>");
    if (panel.torch().isEmpty()) { // The lowest move of a torch feels for the sheet.
      report.deepestMm().ifPresent(d -> out.text("down to " + measures.one(d) + ", "));
    }
    out.text(report.lines() + " lines");
  }
}
