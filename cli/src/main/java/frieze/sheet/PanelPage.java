package frieze.sheet;

import frieze.design.Work;
import frieze.diagnostic.Severity;
import frieze.dryrun.DryRunResult;
import frieze.dryrun.ProgramReport;
import frieze.shop.Machine;
import frieze.shop.Material;
import frieze.shop.Setup;
import frieze.shop.Stock;
import frieze.shop.Zero;
import java.util.Base64;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Writes the part of a setup sheet that belongs to one panel. */
final class PanelPage {
  private static final int SCALE_STOPS = 12;

  private final SheetFacts facts;
  private final PanelFacts panel;
  private final int number;
  private final Measures measures;
  private final Markup out;

  PanelPage(SheetFacts facts, PanelFacts panel, int number, Markup out) {
    this.facts = facts;
    this.panel = panel;
    this.number = number;
    this.measures = new Measures(facts.inches());
    this.out = out;
  }

  void write() {
    out.open("section", "class", "panel").line();
    head();
    keyFacts();
    panel.torch().ifPresent(t -> TorchSteps.coating(setup().stock(), out));
    pictures();
    panel.sitting().ifPresent(s -> new SittingTable(s, measures, out).write());
    new PanelSteps(facts, panel, out).write();
    panel.depths().ifPresent(this::depthFigure);
    new PanelVerdict(facts, panel, out).write();
    titleBlock();
    out.close().line();
  }

  private Setup setup() {
    return panel.setup();
  }

  private void head() {
    DryRunResult dryRun = panel.dryRun();
    out.open("header").open("div");
    out.element("p", facts.job() + " \u00b7 setup sheet", "class", "job");
    out.element("h1", sentence(panel.name())).close();
    long errors = count(Severity.ERROR);
    long warnings = count(Severity.WARNING);
    boolean good = dryRun.mayWrite();
    out.open("div", "class", good ? "verdict" : "verdict bad");
    out.text(good ? "\u2713 DRY RUN PASSED" : "\u2717 DRY RUN FAILED");
    String detail =
        good
            ? warnings == 0
                ? "nothing found"
                : warnings + plural(warnings, " warning") + ", see below"
            : errors + plural(errors, " error") + ": programs not written";
    out.element("small", detail).close().close().line();
  }

  private long count(Severity severity) {
    return panel.dryRun().findings().stream().filter(f -> f.severity() == severity).count();
  }

  static String plural(long count, String word) {
    return count == 1 ? word : word + "s";
  }

  static String sentence(String text) {
    return text.isEmpty()
        ? text
        : text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
  }

  private void keyFacts() {
    Stock stock = setup().stock();
    out.open("div", "class", "facts");
    fact(
        "Finished size",
        measures.number(panel.design().panel().lengthMm())
            + " \u00d7 "
            + measures.one(panel.design().panel().heightMm()));
    fact(
        stock.blank() ? "Stock (already sawn to size)" : "Stock",
        measures.number(stock.lengthMm())
            + " \u00d7 "
            + measures.number(stock.widthMm())
            + " \u00d7 "
            + measures.one(stock.thickestMm()));
    fact("Zero", zero(setup().zero()));
    fact(
        "Machine time",
        Measures.time(machineSeconds())
            + ", "
            + panel.programs().size()
            + plural(panel.programs().size(), " program"));
    out.close().line();
  }

  private double machineSeconds() {
    return panel.dryRun().time().totalSeconds() - panel.dryRun().time().handSeconds();
  }

  private void fact(String name, String value) {
    out.open("div").element("b", name).text(value).close();
  }

  /** Where zero is, in words. */
  static String zero(Zero zero) {
    String x =
        switch (zero.x()) {
          case LEFT -> "left";
          case CENTRE -> "centre";
          case RIGHT -> "right";
        };
    String y =
        switch (zero.y()) {
          case FRONT -> "front";
          case CENTRE -> "centre";
          case BACK -> "back";
        };
    String z = zero.z() == Zero.AlongZ.TOP ? "on top" : "on the bed";
    if (zero.pushedMm() > 0) {
      return "X0 Y0 as in step 1, Z0 " + z;
    }
    String place = x.equals("centre") && y.equals("centre") ? "centre" : x + " " + y;
    boolean corner = !x.equals("centre") && !y.equals("centre");
    return place + (corner ? " corner" : "") + ", Z0 " + z;
  }

  private void pictures() {
    panel.depths().ifPresent(this::relief);
    out.open("figure").raw(Drawing.inline(panel, facts.inches(), "p" + number + "-"));
    legend();
    out.close().line();
  }

  private void relief(frieze.field.DepthMap map) {
    boolean steel = setup().stock().material().kind() == Material.Kind.STEEL;
    Shading shading = Shading.of(panel, map);
    out.open("figure");
    out.open("div", "class", "pic");
    out.empty(
        "img", "alt", "Simulated stock after all programs", "src", png(shading.relief(steel)));
    out.close();
    out.element(
        "figcaption",
        (panel.part().isPresent()
                ? "The stock as the dry run leaves it after this clamping"
                : "The stock as the dry run leaves it")
            + ", from the text of the programs; light from the upper"
            + " left. One dot is "
            + Measures.decimals(map.cellMm(), 2)
            + " mm wide. Dark: cut through.");
    out.close();
  }

  private void depthFigure(frieze.field.DepthMap map) {
    Shading shading = Shading.of(panel, map);
    out.element("h2", "Depths, as the dry run leaves them").open("figure");
    out.open("div", "class", "pic");
    out.empty("img", "alt", "Depths below the stock's top", "src", png(shading.depths())).close();
    StringBuilder stops = new StringBuilder("background:linear-gradient(to right");
    for (int i = 0; i <= SCALE_STOPS; i++) {
      stops.append(',').append(Cividis.css(1 - (double) i / SCALE_STOPS));
    }
    out.open("div", "class", "scale").text("top of the stock, 0");
    out.element("span", "", "class", "bar", "style", stops.append(')').toString());
    out.text(measures.both(shading.deepestMm()) + " below it, and deeper; white: cut through")
        .close();
    out.close().line();
  }

  private static String png(byte[] bytes) {
    return "data:image/png;base64," + Base64.getEncoder().encodeToString(bytes);
  }

  private void legend() {
    out.open("div", "class", "legend");
    Depths depths = new Depths(panel.design().work());
    for (double depth : depths.all()) {
      out.open("span").element("i", "", "style", "background:" + depths.tint(depth));
      out.text(measures.one(depth) + " deep").close();
    }
    for (String depth : grooveDepths()) {
      out.open("span").element("i", "", "style", bar(PlanView.GROOVE));
      out.text("line, " + depth).close();
    }
    for (Work work : panel.design().work()) {
      if (work instanceof Work.Edge edge) {
        out.open("span").element("i", "", "style", "height:1.5mm;vertical-align:.4mm");
        out.text("edge: " + new EdgeItems(measures).name(edge)).close();
      }
    }
    if (!TabMarks.of(panel.plan().cuts()).isEmpty()) {
      out.open("span").element("i", "", "style", bar("#111"));
      out.text("tab").close();
    }
    int uncut = UncutMarks.count(panel);
    if (uncut > 0) {
      out.open("span").element("i", "", "style", bar(UncutMarks.COLOUR));
      out.text(
              (panel.torch().isPresent() ? "beyond the kerf" : "not reached")
                  + ": "
                  + places(uncut))
          .close();
    }
    if (!setup().keepOuts().isEmpty()) {
      String names =
          setup().keepOuts().stream()
              .map(k -> k.name())
              .distinct()
              .collect(Collectors.joining(", "));
      String hatch = "background:repeating-linear-gradient(135deg,#fff 0 2px,#111 2px 2.6px)";
      out.open("span").element("i", "", "style", hatch).text("keep out: " + names).close();
    }
    if (!setup().stock().blank()) {
      out.open("span").element("i", "", "style", "border-style:dashed;background:#faf7f1");
      out.text("stock before cutting").close();
    }
    out.close();
  }

  private static String places(int count) {
    return count == 1 ? "1 place" : count + " places";
  }

  private static String bar(String colour) {
    return "height:1.5mm;vertical-align:.4mm;background:" + colour;
  }

  /** How deep lines are cut, such as {@code 4.3 deep, fading to 3.2}; the shallowest first. */
  private List<String> grooveDepths() {
    return panel.design().work().stream()
        .filter(Work.Groove.class::isInstance)
        .map(Work.Groove.class::cast)
        .sorted(Comparator.comparingDouble(Work.Groove::depthMm))
        .map(
            groove ->
                (groove.byWidth() ? "up to " : "")
                    + measures.one(groove.depthMm())
                    + " deep"
                    + groove.fade().map(f -> ", fading to " + measures.one(f.toMm())).orElse(""))
        .distinct()
        .toList();
  }

  private void titleBlock() {
    Machine machine = facts.machine();
    out.open("div", "class", "block");
    cell("Title", facts.job() + ": " + panel.name());
    cell("Document type", "Setup sheet");
    cell("Made from", facts.jobFile());
    cell("Sheet", number + " / " + facts.panels().size());
    cell("Machine, post", machine.name() + ", " + facts.post());
    cell("Set up by", "");
    cell("Checked by, date", "");
    cell("Scale", Drawing.scale(panel, facts.inches()));
    out.close().line();
  }

  private void cell(String name, String value) {
    out.open("div").element("b", name).text(value).close();
  }

  /** The reports of the programs in running order. */
  static List<ProgramReport> reports(PanelFacts panel) {
    return panel.dryRun().programs();
  }
}
