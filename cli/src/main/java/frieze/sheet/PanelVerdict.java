package frieze.sheet;

import frieze.curve.Tolerances;
import frieze.diagnostic.Diagnostic;
import frieze.diagnostic.Severity;
import frieze.diagnostic.SourceSpan;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.NotChecked;
import frieze.shop.CutSquareness;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Writes what was found, what was not checked, what to expect, and the cautions. */
final class PanelVerdict {
  private static final int MOST_LINES = 6;

  private static final String SPINDLE_ERRORS =
      "the tool's true diameter and runout, on how flat the stock lies and how it moves with"
          + " moisture. As common practice, expect some tenths of a millimetre (about 0.01 in) on a"
          + " benchtop router in wood.";

  private static final String TORCH_ERRORS =
      "the true kerf, the height of the torch, worn parts of it, and heat that bends the sheet. The"
          + " cut's walls lean by a few degrees, one side of the kerf more than the other. As"
          + " common practice, expect half a millimetre (about 0.02 in).";

  private final PanelFacts panel;
  private final Measures measures;
  private final Markup out;

  PanelVerdict(SheetFacts facts, PanelFacts panel, Markup out) {
    this.panel = panel;
    this.measures = new Measures(facts.inches());
    this.out = out;
  }

  void write() {
    findings();
    notChecked();
    notes();
    exactness();
    cautions();
  }

  private void findings() {
    out.element("h2", "Found by the dry run");
    List<Finding> findings = panel.dryRun().findings();
    if (findings.isEmpty()) {
      out.element("p", "Nothing.");
      return;
    }
    out.open("table");
    Map<List<Object>, List<Finding>> alike = new LinkedHashMap<>();
    for (Finding f : findings) {
      List<Object> kind = List.of(f.severity(), f.code().id(), f.program(), f.message(), f.hint());
      alike.computeIfAbsent(kind, k -> new ArrayList<>()).add(f);
    }
    alike.values().forEach(this::alike);
    out.close().line();
  }

  /** One row for findings that differ in their lines only. */
  private void alike(List<Finding> findings) {
    Finding first = findings.get(0);
    List<String> lines =
        findings.stream().filter(f -> f.line() > 0).map(f -> Integer.toString(f.line())).toList();
    String place = first.program();
    if (!lines.isEmpty()) {
      String shown = String.join(", ", lines.subList(0, Math.min(MOST_LINES, lines.size())));
      String more =
          lines.size() > MOST_LINES ? " and " + (lines.size() - MOST_LINES) + " more" : "";
      place += (lines.size() == 1 ? " line " : " lines ") + shown + more;
    }
    row(first.severity(), first.code().id(), place, first.message(), first.hint());
  }

  private void row(Severity severity, String code, String place, String message, String hint) {
    out.open("tr");
    out.element("td", severity.name() + " " + code, "class", "kind");
    out.open("td").element("code", place).close();
    out.open("td").text(message + (hint.isEmpty() ? "" : ". " + PanelPage.sentence(hint) + "."));
    out.close().close();
  }

  private void notChecked() {
    List<NotChecked> open = panel.dryRun().notChecked();
    if (open.isEmpty()) {
      return;
    }
    out.element("h2", "Not checked");
    for (NotChecked n : open) {
      String head = n.what().toUpperCase(Locale.ROOT) + " NOT CHECKED";
      out.open("p", "class", n.canHurt() ? "warn" : "");
      out.element(
          "span",
          n.canHurt() ? head : PanelPage.sentence(n.what()) + " not checked",
          "class",
          n.canHurt() ? "not" : "");
      out.text(": " + n.why() + ".").close();
    }
    out.line();
  }

  private void notes() {
    List<Diagnostic> notes = panel.plan().notes();
    if (notes.isEmpty() && panel.drawings().isEmpty()) {
      return;
    }
    out.element("h2", "Worth knowing").open("table");
    for (PanelFacts.DrawingFacts d : panel.drawings()) {
      String size = measures.number(d.lengthMm()) + " \u00d7 " + measures.both(d.heightMm());
      String message = d.name() + " is used " + size + " large; in the file: " + d.sizeAssumed();
      row(Severity.NOTE, "", d.file(), message, "");
      d.text().forEach(words -> row(Severity.NOTE, "", d.file(), words, ""));
    }
    Map<List<Object>, List<Diagnostic>> alike = new LinkedHashMap<>();
    for (Diagnostic d : notes) {
      List<Object> kind = List.of(d.severity(), d.code().id(), place(d.where()), d.hint());
      alike.computeIfAbsent(kind, k -> new ArrayList<>()).add(d);
    }
    for (List<Diagnostic> group : alike.values()) {
      Diagnostic d = group.get(0);
      String more = group.size() > 1 ? " (and " + (group.size() - 1) + " more like this)" : "";
      row(d.severity(), d.code().id(), place(d.where()), d.message() + more, d.hint());
    }
    out.close().line();
  }

  /** The place without the folder, which may be another one on the next computer. */
  private static String place(SourceSpan where) {
    String text = where.toString();
    return text.substring(Math.max(text.lastIndexOf('/'), text.lastIndexOf('\\')) + 1);
  }

  private void exactness() {
    out.element("h2", "How exact");
    String arithmetic =
        Measures.decimals(Tolerances.DEFAULT.totalMm() * 1000, 0)
            + " \u00b5m ("
            + Measures.decimals(Tolerances.DEFAULT.totalMm() / 25.4, 4)
            + " in)";
    out.element(
        "p",
        "The programmed path is within "
            + arithmetic
            + " of the drawn one: that is arithmetic. What comes off the machine depends on its"
            + " stiffness, backlash and squareness, on "
            + (panel.torch().isPresent() ? TORCH_ERRORS + squareness() : SPINDLE_ERRORS)
            + " Measure a test cut before the real one.");
  }

  /** The ranges are those that people name for plasma: common practice. */
  private String squareness() {
    double thickness = panel.setup().stock().thickestMm();
    return " ISO 9013 (figures known by memory) grades how far a wall is out of square: at this"
        + " thickness up to "
        + Measures.decimals(CutSquareness.RANGE_3.mostMm(thickness), 2)
        + " mm in range 3 and "
        + Measures.decimals(CutSquareness.RANGE_4.mostMm(thickness), 2)
        + " mm in range 4, which are usual for plasma.";
  }

  private void cautions() {
    out.element("h2", "Cautions");
    out.open("p", "class", "warn").element("b", Cautions.MATCH).close();
    out.open("div", "class", "cols").element("p", Cautions.FIRST).open("ul");
    Cautions.ALWAYS.forEach(c -> out.element("li", c));
    List<String> own = panel.torch().isPresent() ? Cautions.TORCH : Cautions.ROUTING;
    own.forEach(c -> out.element("li", c));
    out.close().close().line();
  }
}
