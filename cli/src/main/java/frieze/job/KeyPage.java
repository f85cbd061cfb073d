package frieze.job;

import frieze.keys.Key;
import frieze.keys.Section;
import frieze.keys.UnitKind;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Writes the reference page of all keys, from the tables that drive the reading. */
public final class KeyPage {
  private static final String INTRO =
      """
      # Job file and shop file

      <!-- Written by `frieze keys --as page` from the table of keys; a test compares. Do not edit by hand. -->

      A job file is YAML 1.2. It names drawings, panels, and what to cut into them. `frieze new` writes one to
      start from. An unknown key, a key given twice, a wrong unit or a number out of its range is an error with
      its line and column.

      ## Numbers and units

      Write numbers as in the shop: `19 mm`, `3/4 in`, `5-1/4 in`, `5 1/4"`, `5¼ in`, `2 ft 4-5/8 in`, `0.748`.
      A bare number has the unit that `units` says. A number in quotes is the same as one without.

      """;
  private static final String SHOP_INTRO =
      """
      # Shop file

      `shop.yaml` in the folder of the job, or the file that the job names with `shop`, lists your machines,
      tools and materials. What is not in it comes from a generic shop that is built in; `frieze shop` lists
      all of it. Your own manuals, tools and tests come first: the built-in figures are common practice for
      small machines, kept low, and no recommendation.

      """;

  private KeyPage() {}

  /** The whole page, as Markdown. */
  public static String write() {
    StringBuilder page = new StringBuilder(INTRO);
    units(page);
    for (Section section : reachable(JobKeys.Root.SECTION)) {
      section(page, section);
    }
    page.append(SHOP_INTRO);
    for (Section section : reachable(ShopKeys.Root.SECTION)) {
      section(page, section);
    }
    return page.toString().stripTrailing() + "\n";
  }

  /** The sections below one, itself first, each once, in the order of the table. */
  static List<Section> reachable(Section root) {
    Set<Section> sections = new LinkedHashSet<>();
    collect(root, sections);
    return new ArrayList<>(sections);
  }

  private static void collect(Section section, Set<Section> sections) {
    if (sections.add(section)) {
      for (Key<?> key : section.keys()) {
        key.type().sections().forEach(s -> collect(s, sections));
      }
    }
  }

  private static void units(StringBuilder page) {
    page.append("| what | units | a bare number, with `units: mm` or `in` |\n|---|---|---|\n");
    for (UnitKind kind : UnitKind.values()) {
      List<String> names = kind.units().keySet().stream().filter(u -> !u.isEmpty()).toList();
      String bare = kind.bareUnit(false);
      String bareInch = kind.bareUnit(true);
      page.append("| ")
          .append(kind.label())
          .append(" | `")
          .append(String.join("` `", names))
          .append("` | ")
          .append(bare.isEmpty() ? "a fraction of 1" : bare)
          .append(bare.equals(bareInch) ? "" : " or " + bareInch)
          .append(" |\n");
    }
    page.append('\n');
  }

  private static void section(StringBuilder page, Section section) {
    page.append("## ").append(section.name()).append("\n\n").append(section.doc()).append("\n\n");
    page.append("| key | value | without it | meaning |\n|---|---|---|---|\n");
    for (Key<?> key : section.keys()) {
      row(page, key);
    }
    page.append('\n');
  }

  private static void row(StringBuilder page, Key<?> key) {
    page.append("| `").append(key.name()).append('`');
    if (!key.also().isEmpty()) {
      page.append(" (or `").append(key.also()).append("`)");
    }
    page.append(" | ").append(key.type().describe()).append(" | ").append(without(key));
    page.append(" | ").append(sentence(key.doc())).append(" |\n");
  }

  private static String without(Key<?> key) {
    return switch (key.need()) {
      case REQUIRED -> "**required**";
      case OPTIONAL -> key.fallback();
      case DEFAULT -> key.fallback().equals("{}") ? "its defaults" : "`" + key.fallback() + "`";
    };
  }

  private static String sentence(String doc) {
    String capital = doc.substring(0, 1).toUpperCase(Locale.ROOT) + doc.substring(1);
    return capital.endsWith(".") ? capital : capital + ".";
  }
}
