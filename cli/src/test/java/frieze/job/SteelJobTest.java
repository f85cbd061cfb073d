package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.design.Work;
import frieze.diagnostic.BadInputException;
import frieze.diagnostic.Code;
import frieze.diagnostic.Diagnostic;
import frieze.keys.JobCode;
import frieze.torch.TorchCode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a job says of sheet steel and of the chart for it. */
class SteelJobTest {
  private static final String GOOD =
      """
      job: Steel
      units: mm
      machine: plasma table
      artwork:
        fern: {file: fern.svg, height: 60}
      panels:
        end:
          size: {width: 140, height: 120}
          stock: {material: mild steel, length: 200, width: 180, thickness: 3}
          clearance: 20
          design:
            - place: fern
              along: {count: 1}
          work:
            - torchcut: {chart: air 45 A, on: fern}
      """;

  private static Job read(String text) {
    MemoryFiles files = new MemoryFiles().with("ends.yaml", text).with("fern.svg", "<svg/>");
    return JobReader.read("ends.yaml", files, List.of("plasma-touch", "plasma-plain"));
  }

  private static Diagnostic failure(String text) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> read(text));
    assertThat(e).as("the job should be refused").isNotNull();
    return e.diagnostics().get(0);
  }

  /** 0.1046 and 0.1084 in are printed for 12 gauge; a caliper reading wins. */
  @ParameterizedTest
  @CsvSource(
      delimiter = ';',
      value = {
        "12 ga steel; 2.6568",
        "12 ga galvanized steel; 2.7534",
        "3 mm; 3",
        "1/8 in; 3.175",
        "[12 ga steel, 2.71]; 2.71"
      })
  void thickness_may_be_a_gauge_with_its_metal_a_length_or_a_reading(
      String written, double thicknessMm) {
    Job.PanelJob panel =
        read(GOOD.replace("thickness: 3}", "thickness: " + written + "}")).panels().get(0);
    assertThat(panel.stock().thickestMm()).isCloseTo(thicknessMm, within(1e-3));
    assertThat(panel.work())
        .singleElement()
        .isInstanceOfSatisfying(
            Work.TorchCut.class,
            w -> assertThat(w.torch().thicknessMm()).isCloseTo(thicknessMm, within(1e-3)));
  }

  private static void assertRefused(String text, Code code, String line, String... words) {
    Diagnostic first = failure(text);
    assertThat(first.code()).isEqualTo(code);
    assertThat(first.where().toString()).startsWith("ends.yaml:" + line + ":");
    assertThat(first.message() + " " + first.hint()).contains(words);
  }

  @Test
  void gauges_that_mean_nothing_are_refused_where_they_stand() {
    assertRefused(
        GOOD.replace("thickness: 3}", "thickness: 99 ga steel}"),
        JobCode.NO_SUCH_GAUGE,
        "9",
        "no gauge 99 of ",
        "the table has 3 to 30");
    assertRefused(
        GOOD.replace("thickness: 3}", "thickness: 12 ga}"),
        JobCode.GAUGE_WITHOUT_METAL,
        "9",
        "gauge 12 of what metal?",
        "12 ga galvanized steel");
    assertRefused(
        GOOD.replace("thickness: 3}", "thickness: 12 ga copper}"),
        JobCode.GAUGE_WITHOUT_METAL,
        "9",
        "no gauge table for \"copper\"");
  }

  @Test
  void a_sheet_beyond_the_chart_or_of_another_metal_is_refused_at_the_chart() {
    assertRefused(
        GOOD.replace("thickness: 3}", "thickness: 8}"),
        JobCode.BEYOND_CHART,
        "15",
        "8 mm (0.315 in)",
        "goes from 1 mm",
        "nothing is guessed");
    assertRefused(
        GOOD.replace("mild steel", "galvanized steel"),
        TorchCode.WRONG_CHART,
        "15",
        "for mild steel, and the sheet is galvanized steel");
  }

  @Test
  void a_sheet_smaller_than_the_panel_is_refused_at_the_panel() {
    assertRefused(
        GOOD.replace("length: 200", "length: 130"),
        JobCode.PANEL_TOO_LARGE,
        "8",
        "the panel is 140 mm",
        "10 mm (0.394 in) too little");
  }
}
