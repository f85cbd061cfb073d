package frieze.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import frieze.curve.Tolerances;
import frieze.dryrun.finding.Finding;
import frieze.dryrun.finding.NotChecked;
import frieze.plan.Plan;
import frieze.post.ProgramText;
import frieze.shop.FinishAllowance;
import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** The papers of an apron that was really planned, written and read back. */
class SetupSheetTest {
  private static SheetFacts facts;
  private static PanelFacts panel;
  private static String html;

  @BeforeAll
  static void write() {
    panel = SampleJob.panel();
    facts =
        new SheetFacts(
            "Bench <script>alert(1)</script> & \"more\"",
            "bench.yaml",
            true,
            SampleJob.machine(),
            "short-arcs",
            List.of(panel));
    html = SetupSheet.html(facts);
  }

  private static Document parse(String xml) throws Exception {
    DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
    return factory.newDocumentBuilder().parse(new InputSource(new StringReader(xml)));
  }

  @Test
  void the_sheet_is_well_formed_and_needs_nothing_from_outside() throws Exception {
    Document document = parse(html);
    NodeList all = document.getElementsByTagName("*");
    for (int i = 0; i < all.getLength(); i++) {
      String tag = all.item(i).getNodeName();
      assertThat(tag).isNotIn("script", "link", "iframe", "object");
      for (String name : List.of("src", "href")) {
        var attribute = all.item(i).getAttributes().getNamedItem(name);
        if (attribute != null) {
          assertThat(attribute.getNodeValue()).matches("(?s)(#|data:image/png;base64,).*");
        }
      }
    }
    assertThat(html.replaceAll("base64,[^\"]*", "").replace("http://www.w3.org/2000/svg", ""))
        .doesNotContain("http")
        .doesNotContain("url(")
        .doesNotContain("@import");
  }

  @Test
  void sheet_and_report_tell_what_is_to_come_off_after_cutting() {
    PanelFacts charred =
        new PanelFacts(
            panel.design(),
            panel.opening(),
            panel.gapMm(),
            panel.setup().allowing(new FinishAllowance(0.6, 0.25)),
            panel.intents(),
            panel.plan(),
            panel.programs(),
            panel.dryRun(),
            Optional.empty(),
            panel.drawings(),
            panel.sitting());
    SheetFacts job =
        new SheetFacts(
            "bench", "bench.yaml", false, SampleJob.machine(), "short-arcs", List.of(charred));
    assertThat(SetupSheet.html(job))
        .contains(
            "After cutting take 0.6 mm off the face, and cuts are that much deeper; 0.25 mm off"
                + " walls and edges, which stand proud.");
    assertThat(html).doesNotContain("After cutting take");
    assertThat(ReportJson.text(job))
        .contains("\"allowanceFace\" : 0.6", "\"allowanceWalls\" : 0.25");
  }

  @Test
  void what_users_write_stays_text() {
    assertThat(html).contains("Bench &lt;script&gt;alert(1)&lt;/script&gt; &amp; &quot;more&quot;");
  }

  @Test
  void the_sheet_tells_what_the_dry_run_found_and_what_it_did_not_look_at() {
    assertThat(html).contains(panel.dryRun().mayWrite() ? "DRY RUN PASSED" : "DRY RUN FAILED");
    for (Finding finding : panel.dryRun().findings()) {
      assertThat(html).contains(finding.message());
    }
    for (NotChecked open : panel.dryRun().notChecked()) {
      assertThat(html)
          .contains(
              open.canHurt()
                  ? open.what().toUpperCase(Locale.ROOT) + " NOT CHECKED"
                  : " not checked");
    }
    for (ProgramText program : panel.programs()) {
      assertThat(html).contains(program.fileName());
    }
    assertThat(html)
        .contains(Math.round(Tolerances.DEFAULT.totalMm() * 1000) + " \u00b5m")
        .contains(Cautions.MATCH)
        .contains("left front corner");
    Cautions.ROUTING.forEach(c -> assertThat(html).contains(c));
  }

  @Test
  void the_same_facts_give_the_same_bytes() {
    assertThat(SetupSheet.html(facts)).isEqualTo(html);
    assertThat(ReportJson.text(facts)).isEqualTo(ReportJson.text(facts));
  }

  @Test
  void the_drawing_is_at_its_scale_and_shows_every_placement_and_tab() throws Exception {
    String svg = Drawing.svg(panel, false);
    Document document = parse(svg);
    assertThat(document.getDocumentElement().getAttribute("width")).isEqualTo("184mm");
    assertThat(document.getElementsByTagName("use").getLength())
        .isEqualTo(2 * panel.design().placements().size());
    assertThat(svg).contains("Scale 1:5").contains(">762<").contains(">723.9<").contains(">130.2<");
    Plan plan = panel.plan();
    assertThat(TabMarks.of(plan.cuts())).hasSize(6);
    double length = 762 / 5.0;
    double stockWidth =
        Double.parseDouble(
            ((org.w3c.dom.Element) document.getElementsByTagName("rect").item(0))
                .getAttribute("width"));
    assertThat(stockWidth).isCloseTo(length, within(0.001));
  }

  @Test
  void the_report_has_the_same_facts_in_a_fixed_order() throws IOException {
    String json = ReportJson.text(facts);
    List<String> top = new ArrayList<>();
    List<String> panelKeys = new ArrayList<>();
    int lines = 0;
    try (JsonParser parser = new JsonFactory().createParser(json)) {
      int depth = 0;
      for (JsonToken token = parser.nextToken(); token != null; token = parser.nextToken()) {
        depth += token.isStructStart() ? 1 : token.isStructEnd() ? -1 : 0;
        if (token == JsonToken.FIELD_NAME && depth == 1) {
          top.add(parser.currentName());
        } else if (token == JsonToken.FIELD_NAME && depth == 3) {
          panelKeys.add(parser.currentName());
        } else if (token == JsonToken.VALUE_NUMBER_INT && "lines".equals(parser.currentName())) {
          lines += parser.getIntValue();
        }
      }
    }
    assertThat(top).containsExactly("job", "file", "machine", "post", "unit", "panels");
    assertThat(panelKeys)
        .containsExactly(
            "name",
            "passed",
            "length",
            "height",
            "opening",
            "setup",
            "drawings",
            "tools",
            "programs",
            "time",
            "findings",
            "notChecked",
            "leftUncut",
            "engagement");
    assertThat(lines).isEqualTo(panel.programs().stream().mapToInt(p -> p.origins().size()).sum());
  }
}
