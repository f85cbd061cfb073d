package frieze.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import frieze.build.Build;
import frieze.build.Designed;
import frieze.diagnostic.BadInputException;
import frieze.keys.CsvText;
import frieze.layout.Placement;
import java.util.List;
import org.junit.jupiter.api.Test;

/** One panel for each row of a table. */
class TablePanelsTest {
  private static final String JOB =
      """
      job: Many
      units: mm
      artwork:
        leaf: {file: leaf.svg, height: 40}
      table: {file: openings.csv, like: model}
      panels:
        model:
          opening: {width: 400, height: 130}
          fit: {gap: 1}
          stock: {material: white ash, length: 420, width: 150, thickness: 19}
          design:
            - place: leaf
              along: {pitch: 50}
          work:
            - groove: {on: leaf, tool: vee 60, depth: 1}
      """;

  private static final String SVG =
      "<svg xmlns='http://www.w3.org/2000/svg' width='20mm' height='40mm' viewBox='0 0 20 40'>"
          + "<path id='vein' d='M0 0L20 10L10 40' fill='none' stroke='#000'/></svg>";

  private static List<Designed> designs(String csv) {
    MemoryFiles files =
        new MemoryFiles().with("job.yaml", JOB).with("leaf.svg", SVG).with("openings.csv", csv);
    return Build.designs(JobReader.read("job.yaml", files, List.of("short-arcs")), files);
  }

  @Test
  void each_row_gives_a_panel_that_fits_its_own_opening() {
    List<Designed> all =
        designs("panel,width,height\r\n\"one, left\",300,120\r\n\r\ntwo,250.5,110\r\n");
    assertThat(all).extracting(d -> d.asked().name()).containsExactly("model", "one, left", "two");
    assertThat(all.get(1).design().panel().lengthMm()).isCloseTo(298, within(1e-9));
    assertThat(all.get(2).design().panel().lengthMm()).isCloseTo(248.5, within(1e-9));
    assertThat(all.get(2).design().panel().heightMm()).isCloseTo(108, within(1e-9));
  }

  /** 1 + floor((298 - 20) / 50) = 6 and 1 + floor((248.5 - 20) / 50) = 5. */
  @Test
  void the_pattern_is_fitted_again_at_the_same_pitch() {
    List<Designed> all = designs("panel,width,height\none,300,120\ntwo,250.5,110\n");
    assertThat(all).extracting(d -> d.design().placements().size()).containsExactly(8, 6, 5);
    for (Designed panel : all) {
      List<Placement> row = panel.design().placements();
      for (int i = 1; i < row.size(); i++) {
        double step = row.get(i).map().affine().e() - row.get(i - 1).map().affine().e();
        assertThat(step).isCloseTo(50, within(1e-9));
      }
    }
  }

  @Test
  void semicolons_part_a_list() {
    Designed one = designs("panel,width,height,diagonals\none,300,120,322; 324\n").get(1);
    // Two diagonals tell a lean: (324^2 - 322^2) / (4 * 300) to the left, about 1.08 mm.
    double lean =
        Math.abs(one.asked().insert().sitting().orElseThrow().opening().outOfSquareLeftMm());
    assertThat(lean).isCloseTo((324.0 * 324 - 322 * 322) / (4 * 300), within(0.01));
  }

  @Test
  void tables_that_are_none_are_refused() {
    assertThat(failure("width,height\n300,120\n")).contains("no column \"panel\"");
    assertThat(failure("panel,width,height\none,300,120,5\n")).contains("more cells");
    assertThat(failure("panel,width,height\none,\"300,120\n")).contains("not closed");
    assertThat(failure("panel,wide,height\none,300,120\n")).contains("wide");
  }

  private static String failure(String csv) {
    BadInputException e = catchThrowableOfType(BadInputException.class, () -> designs(csv));
    assertThat(e).as("the table should be refused").isNotNull();
    return e.diagnostics().get(0).toString();
  }

  /** The places are counted by hand in the texts above them. */
  @Test
  void errors_point_at_the_row_and_the_column_of_the_table() {
    assertThat(failure("panel,width,height\r\none,300,120\r\n\r\ntwo, 25O.5,110\r\n"))
        .startsWith("openings.csv:4:6: ");
    assertThat(failure("panel,width,height,diagonals\none,300,120,\"322; 32x\"\n"))
        .startsWith("openings.csv:2:19: ");
    assertThat(failure("panel,wide,height\none,300,120\n")).startsWith("openings.csv:1:7: ");
    assertThat(failure("panel,width,height\none,300,120,5\n")).startsWith("openings.csv:2:13: ");
    assertThat(failure("panel,width,height\none,\"300,120\n")).startsWith("openings.csv:2:5: ");
    assertThat(failure("panel,width,height\none,300,\n")).startsWith("openings.csv:2:1: ");
    assertThat(failure("\"panel\",like,width,height\n\"one\",modle,300,120\n"))
        .startsWith("openings.csv:2:7: ");
  }

  /** Examples in the manner of RFC 4180, section 2. */
  @Test
  void cells_are_split_as_the_standard_says() throws CsvText.OpenQuoteException {
    assertThat(cells("aaa,bbb,ccc\r\nzzz,yyy,xxx"))
        .containsExactly(List.of("aaa", "bbb", "ccc"), List.of("zzz", "yyy", "xxx"));
    assertThat(cells("\"aaa\",\"b\r\nbb\",\"c\"\"cc\"\r\nzzz,,\r\n"))
        .containsExactly(List.of("aaa", "b\r\nbb", "c\"cc"), List.of("zzz", "", ""));
    assertThatThrownBy(() -> CsvText.rows("a,\"b")).isInstanceOf(CsvText.OpenQuoteException.class);
  }

  private static List<List<String>> cells(String text) throws CsvText.OpenQuoteException {
    return CsvText.rows(text).stream()
        .map(row -> row.stream().map(CsvText.Cell::text).toList())
        .toList();
  }
}
