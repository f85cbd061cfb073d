package frieze.sheet;

import java.util.List;

/**
 * Writes the setup sheet: one page of HTML that holds its pictures and needs no other file, for a
 * screen and for paper of A4 or Letter size.
 *
 * <p>For each panel it has, in the order of use at the machine: the verdict of the dry run, the
 * picture and the drawing, what to load, the tools, the programs, what was found and what was not
 * checked, and what accuracy to expect; the cautions come first.
 */
public final class SetupSheet {
  private SetupSheet() {}

  /** The whole page. */
  public static String html(SheetFacts facts) {
    Markup out = new Markup();
    out.raw("<!DOCTYPE html>\n").open("html", "lang", "en").line();
    out.open("head").raw("<meta charset=\"utf-8\"/>");
    out.raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>");
    out.element("title", facts.job() + ": setup sheet");
    out.open("style").raw(SheetStyle.CSS).close().close().line();
    out.open("body").line();
    List<PanelFacts> panels = facts.panels();
    for (int i = 0; i < panels.size(); i++) {
      new PanelPage(facts, panels.get(i), i + 1, out).write();
    }
    return out.close().close().line().toString();
  }
}
